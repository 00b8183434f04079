import type { BoxInWork } from '../../store/solvingBoxes.svelte.ts';

/** How well the sound in a box is known by now, in a sentence. */
export const solvingWords = (key: string, solved: boolean, work: BoxInWork | null, stopped: boolean): string => {
  if (solved) return 'Solved on the fine grid (10 mm): within about 1 dB of the wave equation up to 2.5 kHz.';
  const coarse = 'Curves from the coarse grid (20 mm), about 1.5 dB.';
  if (work?.key === key) {
    const done = work.band === null ? 'begun' : `done up to ${work.band} Hz`;
    const left = work.left === null ? '' : `, about ${Math.max(1, Math.round(work.left))} s left`;
    return `${coarse} Fine grid ${done}${left}.`;
  }
  if (stopped) return `${coarse} The fine one is stopped.`;
  return `${coarse} The fine one ${work ? `waits for ${work.name}` : 'follows'}.`;
};
