import { pathLoss, pieceLosses } from './airflow/index.ts';
import { shapeOf, type DesignCandidate } from './designGrid.ts';
import type { Trial } from './designSearch.ts';
import { DESIGN_TERMS, QUIET_SPEED } from './designTerms.ts';
import type { VentPath } from './openings/index.ts';
import { createMemory } from './quantities/index.ts';

/** What there is to choose among, the one that takes least room first, and how each is put together. */
export interface DesignSpace {
  readonly candidates: readonly DesignCandidate[];
  readonly pathOf: (candidate: DesignCandidate) => VentPath;
}

/** Wider ducts only make a larger box that lets more through: the narrowest that carry the air are tried. */
const DIAMETERS_TRIED = 2;

/** Pa, and m/s where the air is fastest in a duct or box. */
const airOf = (path: VentPath, flow: number): { readonly loss: number; readonly speed: number } => {
  const speeds = pieceLosses(path, flow).flatMap(({ element, speed }) => {
    const kind = element === null ? undefined : path.elements[element]?.kind;
    return speed !== null && (kind === 'duct' || kind === 'box') ? [speed] : [];
  });
  return { loss: pathLoss(path, flow), speed: Math.max(...speeds) };
};

/**
 * The candidates that carry the air quietly through the two narrowest ducts that do, in the order of the space.
 * @param flow m³/s
 * @validity speeds up to QUIET_SPEED and losses up to the usual share of a small fan's pressure
 * @source common practice, as DESIGN_TERMS
 */
export const carrying = ({ candidates, pathOf }: DesignSpace, flow: number): readonly Trial[] => {
  const airs = createMemory<ReturnType<typeof airOf>>(candidates.length + 1);
  const quiet = candidates.flatMap((candidate): Trial[] => {
    const path = pathOf(candidate);
    const { loss, speed } = airs.recall(shapeOf(candidate), () => airOf(path, flow));
    if (loss > DESIGN_TERMS.mostLoss || speed > QUIET_SPEED) return [];
    return [{ candidate, path, loss, speed, step: 0, leastLeak: 0 }];
  });
  const diameters = [...new Set(quiet.map(({ candidate }) => candidate.diameter))].sort((a, b) => a - b);
  return quiet.filter(({ candidate }) => diameters.indexOf(candidate.diameter) < DIAMETERS_TRIED);
};
