import { pathLoss, pieceLosses } from './airflow/index.ts';
import { overallReduction } from './breathe.ts';
import { designGrid, designPath } from './designGrid.ts';
import type { DesignBase, DesignCandidate } from './designGrid.ts';
import { QUIET_SPEED } from './designTerms.ts';
import { estimatedBoxSound, ventTransmission, withVents } from './openings/index.ts';
import type { VentPath, VentPorts, VentSound } from './openings/index.ts';
import { requirePositive } from './quantities/index.ts';

/** What a vent is to do. */
export interface DesignWish extends DesignBase {
  /** air through this vent, m³/s, > 0 */
  readonly flow: number;
  /** pressure that it may take, Pa, > 0 */
  readonly mostLoss: number;
  /** what it may cost the wall, dB A-weighted over 100 Hz to 3.15 kHz, > 0 */
  readonly mostCost: number;
  /** R per third octave 25 Hz to 10 kHz and area (m²) of the wall, and how many such vents it has */
  readonly wallR: readonly number[];
  readonly wallArea: number;
  readonly count: number;
}

/** The smallest vent of the grid that does it. */
export interface VentDesign {
  readonly candidate: DesignCandidate;
  readonly path: VentPath;
  readonly sound: VentSound;
  /** Pa at the wished flow */
  readonly loss: number;
  /** m/s, fastest in a duct or box */
  readonly speed: number;
  /** dB, of all vents of the wall together */
  readonly cost: number;
}

export interface DesignAnswer {
  /** null where no box of the grid does it */
  readonly design: VentDesign | null;
  /** the nearest to it, where none does */
  readonly nearest: VentDesign | null;
  /** boxes of the grid, those that carry the air, and those solved on the coarse and on the fine grid */
  readonly tried: { readonly all: number; readonly airy: number; readonly coarse: number; readonly fine: number };
}

/** An estimate, and a coarse solution, that miss by more than this are not followed, dB. @source engineering judgement */
const HOPELESS = 3;
const NEARLY = 0.3;
/** Boxes solved at most on the coarse grid (a tenth of a second each) and on the fine one (a second each). */
const MOST_COARSE = 40;
const MOST_FINE = 6;
/** Wider ducts only make a larger box that lets more through: the narrowest that carry the air are tried. */
const DIAMETERS_TRIED = 2;

/**
 * The smallest box with its duct that gives the air and costs its wall no more than wished: a grid of sizes, smallest
 * first; those too narrow for the air left out, the rest estimated, the promising ones solved on a coarse grid, and
 * what passes that on the fine one.
 * @param wish air, pressure, cost, wall
 * @param ports solves boxes finely and predicts casings
 * @param coarse solves boxes on a coarse grid
 * @param onsolved told how many boxes have been solved by now
 * @returns the design, or the nearest to it
 * @throws RangeError for a flow, pressure or cost ≤ 0
 * @validity as ventTransmission; the bass below 100 Hz is not in the cost
 * @source search over a grid; the models are those of breathe
 */
export const designVent = (
  wish: DesignWish,
  ports: VentPorts,
  coarse: VentPorts['boxSound'],
  onsolved: (boxes: number) => void = () => undefined,
): DesignAnswer => {
  requirePositive('flow', wish.flow, 'm³/s');
  requirePositive('pressure', wish.mostLoss, 'Pa');
  requirePositive('cost', wish.mostCost, 'dB');
  const bare = overallReduction(wish.wallR);
  const costOf = ({ normalisedDifference }: VentSound): number => {
    const whole = wish.wallR.map((R, b) => {
      const each = Array.from({ length: wish.count }, () => normalisedDifference[b] ?? 0);
      return withVents(R, wish.wallArea, each);
    });
    return bare - overallReduction(whole);
  };
  const grid = designGrid(wish.airflowResistivity);
  const carrying = grid.flatMap((candidate) => {
    const path = designPath(candidate, wish);
    const loss = pathLoss(path, wish.flow);
    const speeds = pieceLosses(path, wish.flow).flatMap(({ element, speed }) => {
      const kind = element === null ? undefined : path.elements[element]?.kind;
      return speed !== null && (kind === 'duct' || kind === 'box') ? [speed] : [];
    });
    const speed = Math.max(...speeds);
    return loss <= wish.mostLoss && speed <= QUIET_SPEED ? [{ candidate, path, loss, speed }] : [];
  });
  const diameters = [...new Set(carrying.map(({ candidate }) => candidate.diameter))].sort((a, b) => a - b);
  const airy = carrying.filter(({ candidate }) => diameters.indexOf(candidate.diameter) < DIAMETERS_TRIED);
  /** the best of the estimates with its sound solved, so that what is shown is not a guess */
  const solved = (rough: VentDesign): VentDesign => {
    const sound = ventTransmission(rough.path, { ...ports, boxSound: coarse });
    return { ...rough, sound, cost: costOf(sound) };
  };
  const tried = { all: grid.length, airy: airy.length, coarse: 0, fine: 0 };
  let nearest: VentDesign | null = null;
  let promising: VentDesign | null = null;
  for (const { candidate, path, loss, speed } of airy) {
    if (tried.coarse >= MOST_COARSE || tried.fine >= MOST_FINE) break;
    const costWith = (boxSound: VentPorts['boxSound']): VentDesign => {
      const sound = ventTransmission(path, { ...ports, boxSound });
      return { candidate, path, sound, loss, speed, cost: costOf(sound) };
    };
    const rough = costWith(estimatedBoxSound);
    if (promising === null || rough.cost < promising.cost) promising = rough;
    if (rough.cost > wish.mostCost + HOPELESS) continue;
    tried.coarse += 1;
    const drafted = costWith(coarse);
    onsolved(tried.coarse + tried.fine);
    if (nearest === null || drafted.cost < nearest.cost) nearest = drafted;
    if (drafted.cost > wish.mostCost + NEARLY) continue;
    tried.fine += 1;
    const design = costWith(ports.boxSound);
    onsolved(tried.coarse + tried.fine);
    if (design.cost <= wish.mostCost) return { design, nearest: null, tried };
  }
  return { design: null, nearest: nearest ?? (promising && solved(promising)), tried };
};
