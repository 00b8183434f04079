/** Moves positions apart so that none are nearer than `apart`, in their order, as near their wish as that allows. */
export const spread = (wanted: readonly number[], apart: number, least: number, most: number): readonly number[] => {
  const groups: { start: number; members: number[] }[] = [];
  const place = (members: readonly number[]): number => {
    const mean = members.reduce((sum, at, i) => sum + at - i * apart, 0) / members.length;
    const room = most - (members.length - 1) * apart;
    return Math.max(least, Math.min(room, mean));
  };
  for (const at of wanted) {
    groups.push({ start: place([at]), members: [at] });
    for (let last = groups.at(-1), before = groups.at(-2); last && before; before = groups.at(-2)) {
      if (before.start + before.members.length * apart <= last.start) break;
      const members = [...before.members, ...last.members];
      groups.splice(-2, 2, { start: place(members), members });
      last = groups.at(-1);
      if (!last) break;
    }
  }
  return groups.flatMap((group) => group.members.map((_, i) => group.start + i * apart));
};
