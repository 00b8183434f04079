import type { PathFlow } from '../../../src/engine/airflow/index.ts';
import type { VentElement } from '../../../src/engine/openings/index.ts';
import type { LengthUnits } from '../../store/preferences.svelte.ts';
import { showSpeed } from '../../text/showFlow.ts';

/** Speeds that stay quiet, m/s. @source common practice: 2.5 in ducts, 1.5 in a grille (about NC 20) */
export const QUIET = { duct: 2.5, grille: 1.5 } as const;

/** One piece of a vent as a line of a table. */
export interface PieceRow {
  readonly name: string;
  /** place among the pieces of the vent's flow */
  readonly piece: number;
  /** place in the path; null between pieces */
  readonly element: number | null;
  /** Pa */
  readonly loss: number;
  /** m/s */
  readonly speed: number | null;
  /** the speed that it would have to keep to so as to be quiet, m/s; null where it does */
  readonly fast: number | null;
}

/** How fast the air may be in a kind of part and stay quiet, m/s; null where speed is not what makes it heard. */
export const quietSpeed = (kind: VentElement['kind'] | undefined): number | null => {
  if (kind === undefined || kind === 'fan' || kind === 'cowl') return null;
  return kind === 'grille' || kind === 'mesh' ? QUIET.grille : QUIET.duct;
};

/** Losses and speeds along a vent, in the direction of the air. */
export const pieceRows = (elements: readonly VentElement[], flow: PathFlow): readonly PieceRow[] =>
  flow.pieces.map(({ name, element, loss, speed }, piece) => {
    const most = element === null ? null : quietSpeed(elements[element]?.kind);
    const fast = speed !== null && most !== null && speed > most * 1.02;
    return { name, piece, element, loss, speed, fast: fast ? most : null };
  });

/** Why the air is too fast, in words; nothing where it is not. */
export const tooFastWords = ({ fast }: PieceRow, units: LengthUnits): string =>
  fast === null ? '' : `too fast: over ${showSpeed(fast, units)} it is heard`;

/** Under each part of the drawing: how fast the air is in it. */
export const speedLabels = (
  elements: readonly VentElement[],
  flow: PathFlow | undefined,
  shown: (speed: number) => string,
): readonly ({ readonly text: string; readonly fast: boolean } | null)[] => {
  const rows = flow && flow.flow !== 0 ? pieceRows(elements, flow) : [];
  return elements.map(({ kind }, index) => {
    const row = rows.find(({ element, speed }) => element === index && speed !== null);
    return row?.speed == null || kind === 'transition' ? null : { text: shown(row.speed), fast: row.fast !== null };
  });
};
