import { bassReduction, THIRD_OCTAVES } from '../quantities/index.ts';
import type { FittedPiece } from '../openings/index.ts';
import { weightedReduction } from '../ratings/index.ts';
import { reductionOf } from './composite.ts';
import { escaping, shareOf } from './shares.ts';

/** A leaf, joint, lock or service of a panel: what comes through it, and what the panel were without it. */
export interface PieceResult {
  readonly name: string;
  /** which of two leaves it belongs to; null where there is one leaf, or it goes past both */
  readonly leaf: 'first' | 'second' | null;
  /** S·τ of the piece by itself per band, m² */
  readonly openArea: readonly number[];
  /** share of what its leaf (of two) or the whole panel lets through, 0 to 1, for the chosen source */
  readonly share: number;
  /** rating of the whole panel as it is, dB */
  readonly Rw: number | null;
  /** R of the whole panel if nothing came through this piece, dB per band, and its figures */
  readonly without: {
    readonly R: readonly number[];
    readonly Rw: number | null;
    /** gain of the energy mean of R over 50, 63, 80, 100 Hz, dB */
    readonly bassGain: number;
  };
}

/** R that is still told from nothing getting through at all, dB. */
const TOLD = 100;

/**
 * The pieces of a panel with their part in what it lets through.
 * @param pieces as the panel gives them
 * @param openArea S·τ of the whole panel per band, m²
 * @param area of the panel, m²
 * @param energy E_b of the source
 * @returns pieces in the panel's order
 * @source sums of open areas: EN 12354-3:2000, clause 4; ratings: ISO 717-1:2020
 */
export const pieceResults = (
  pieces: readonly FittedPiece[],
  openArea: readonly number[],
  area: number,
  energy: readonly number[],
): readonly PieceResult[] => {
  const rate = (passed: readonly number[]): { R: number[]; Rw: number | null; bass: number } => {
    const R = passed.map((open) => reductionOf(open, area));
    const curve = { bands: THIRD_OCTAVES, values: R };
    return { R, Rw: Math.min(...R) > TOLD ? null : weightedReduction(curve), bass: bassReduction(curve) };
  };
  const now = rate(openArea);
  return pieces.map(({ name, leaf, openArea: own, without }) => {
    const beside = pieces.filter((piece) => piece.leaf === leaf);
    const whole = leaf === null ? escaping(openArea, energy) : 0;
    const through = whole || beside.reduce((sum, piece) => sum + escaping(piece.openArea, energy), 0);
    const then = rate(without);
    return {
      name,
      leaf,
      openArea: own,
      share: shareOf(escaping(own, energy), through),
      Rw: now.Rw,
      without: { R: then.R, Rw: then.Rw, bassGain: then.bass - now.bass },
    };
  });
};
