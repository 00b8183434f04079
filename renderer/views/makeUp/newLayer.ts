import type { BoardLayerEntry, LayerEntry } from '../../../src/project/schema.ts';

const USUAL_BOARD: BoardLayerEntry = { kind: 'board', material: 'plasterboard-standard', thickness_mm: 12.5 };
const USUAL_CAVITY: LayerEntry = { kind: 'cavity', depth_mm: 50 };
const USUAL_INTERLAYER: LayerEntry = { kind: 'interlayer', material: 'damping-compound', thickness_mm: 0.55 };

/** One thing that a plus sign can put in, or why it cannot stand there. */
export interface Insertion {
  readonly key: 'board' | 'cavity' | 'interlayer';
  readonly label: string;
  readonly layers: readonly LayerEntry[];
  readonly unfit: string | null;
}

/** What can be inserted before the layer at an index; at the ends a cavity brings the board that closes it. */
export const insertions = (layers: readonly LayerEntry[], index: number): readonly Insertion[] => {
  const [before, after] = [layers[index - 1], layers[index]];
  const board = [before, after].find((layer) => layer?.kind === 'board') ?? USUAL_BOARD;
  const next = (kind: LayerEntry['kind']): boolean => before?.kind === kind || after?.kind === kind;
  const noCavity = next('interlayer')
    ? 'A damping layer needs a board on each side; take it out first.'
    : 'There is a cavity here already; put a board in first.';
  const cavity: Insertion =
    before && after
      ? {
          key: 'cavity',
          label: 'Cavity',
          layers: [USUAL_CAVITY],
          unfit: next('cavity') || next('interlayer') ? noCavity : null,
        }
      : {
          key: 'cavity',
          label: 'Cavity and board',
          layers: before ? [USUAL_CAVITY, board] : [board, USUAL_CAVITY],
          unfit: null,
        };
  return [
    { key: 'board', label: 'Board', layers: [board], unfit: null },
    cavity,
    {
      key: 'interlayer',
      label: 'Damping layer',
      layers: [USUAL_INTERLAYER],
      unfit: before?.kind === 'board' && after?.kind === 'board' ? null : 'A damping layer needs a board on each side.',
    },
  ];
};
