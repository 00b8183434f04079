/**
 * Places in the store for squares that live from their front to the one above: each takes the lowest free stretch.
 * @param from where the squares begin
 */
export const squareRoom = (from: number) => {
  const taken: { readonly start: number; readonly end: number; readonly piece: number }[] = [];
  const state = { most: from };
  return {
    take: (piece: number, length: number): number => {
      let start = from;
      for (const it of taken) {
        if (it.start - start >= length) break;
        start = Math.max(start, it.end);
      }
      taken.push({ start, end: start + length, piece });
      taken.sort((a, b) => a.start - b.start);
      state.most = Math.max(state.most, start + length);
      return start;
    },
    free: (piece: number): void => {
      taken.splice(
        taken.findIndex((it) => it.piece === piece),
        1,
      );
    },
    end: (): number => state.most,
  };
};
