import type { Handlers } from '../../contract/dispatcher.ts';
import { solveBox } from '../../engine/openings/index.ts';
import { checkedBox } from '../checkedBox.ts';

const rounded = (values: readonly number[]): number[] => values.map((value) => Number(value.toFixed(3)));

/** One baffled box by wave solution, on one grid for all bands. */
export const boxHandlers: Pick<Handlers, 'box'> = {
  box: ({ document }) => {
    const { geometry, cellSize } = checkedBox(document);
    const solved = solveBox(geometry, { cellSize });
    if (solved === null) throw new Error('nothing could have stopped the box, and yet it stopped');
    return {
      bands_Hz: solved.bands.map(({ band }) => band),
      TL_plane_dB: rounded(solved.bands.map(({ planeLoss }) => planeLoss)),
      TL_multimode_dB: rounded(solved.bands.map(({ multimodeLoss }) => multimodeLoss)),
      unknowns: solved.unknowns,
    };
  },
};
