import type { Assembly } from '../assembly/index.ts';
import { structureOf, surfaceMass } from '../assembly/index.ts';
import { bringToThirdOctaves } from '../openings/index.ts';
import { THIRD_OCTAVES, toTransmission } from '../quantities/index.ts';
import { rateThirdOctaves } from '../ratings/index.ts';
import { measuredSpread } from './elementSpread.ts';
import type { FlankingElement, FlankingMake, FlankingSide } from './flankingElement.ts';
import { leastVibrationReduction, lightweightDifference, vibrationReduction } from './flankingJunction.ts';
import { liningImprovement } from './flankingLining.ts';
import { flankingReduction } from './flankingReduction.ts';
import type { PartTransmission, Predictor } from './partTransmission.ts';

/** More than this no lining brings on a flanking path, dB. @source engineering judgement: edges and other ways carry */
const MOST_IMPROVEMENT = 35;

/** Of a junction, dB, one standard deviation. @source engineering judgement: scatter of measured K_ij about the formulas */
const JUNCTION_SPREAD = 3;

/** Why the junction is doubtful in a band. */
const LOW = 100;
const LOW_DOUBT = 'Below 100 Hz walls and slabs have too few resonances for the rules of junctions.';

/** The heavy leaf of a lined wall or slab, which carries the vibration, by itself; the assembly where there is none. */
export const carrierOf = (assembly: Assembly): Assembly => {
  const { leaves } = structureOf(assembly);
  const heavy = leaves.find((leaf) => leaf.masonry);
  if (!heavy || leaves.length === 1) return assembly;
  return { name: assembly.name, layers: heavy.layers.flatMap((i) => assembly.layers[i] ?? []) };
};

/** Mass that the junction feels, kg/m²; null where only a curve is known. */
export const carriedMass = (make: FlankingMake): number | null =>
  make.kind === 'assembly' ? surfaceMass(carrierOf(make.assembly)) : null;

interface Carrying {
  /** of the element that carries the vibration */
  readonly R: readonly number[];
  /** by what is built before it */
  readonly improvement: readonly number[];
  readonly spread: readonly number[];
  readonly doubts: readonly (string | null)[];
}

const carryingOf = (side: FlankingSide, predict: Predictor): Carrying => {
  const added = THIRD_OCTAVES.map((band) => (side.lining ? liningImprovement(side.lining, band, MOST_IMPROVEMENT) : 0));
  if (side.make.kind === 'measured') {
    const { values, extrapolated } = bringToThirdOctaves(side.make.curve);
    return { R: values, improvement: added, spread: measuredSpread(extrapolated), doubts: extrapolated };
  }
  const whole = predict(side.make.assembly, null);
  const carrier = carrierOf(side.make.assembly);
  const bare = carrier === side.make.assembly ? whole : predict(carrier, null);
  const improvement = added.map((gain, b) => Math.min(MOST_IMPROVEMENT, gain + (whole.R[b] ?? 0) - (bare.R[b] ?? 0)));
  return { R: bare.R, improvement, spread: whole.spread, doubts: whole.extrapolated };
};

/** K_ij or Dv,n of the path per band, dB, not below what areas and length allow. */
export const junctionCurve = (element: FlankingElement): number[] => {
  const { junction, run, inside, beyond, crossing, length } = element;
  const least = leastVibrationReduction(length, inside.area, beyond.area);
  const [mass, across] = [carriedMass(inside.make), carriedMass(run === 'straight' ? crossing.make : beyond.make)];
  return THIRD_OCTAVES.map((band) => {
    const known = element.vibrationReduction;
    if (known !== null) return Math.max(least, known);
    if (junction === 'lightweight') return Math.max(least, lightweightDifference(run, band));
    if (mass === null || across === null)
      throw new RangeError('mass of both elements at a junction must be known where its K is not, got a curve alone');
    return Math.max(least, vibrationReduction(junction, run, mass, across, band));
  });
};

/** The curves that R of a path is made of, dB per third octave. */
export interface FlankingCurves {
  /** R_i and R_j of the elements that carry the vibration */
  readonly inside: readonly number[];
  readonly beyond: readonly number[];
  /** ΔR of what is built before them, together */
  readonly improvement: readonly number[];
  /** K_ij or Dv,n */
  readonly junction: readonly number[];
  readonly spread: readonly number[];
  readonly extrapolated: readonly (string | null)[];
}

/** What R of a flanking path is made of. @param predict predicts an assembly as a laboratory would */
export const flankingCurves = (element: FlankingElement, predict: Predictor): FlankingCurves => {
  const [inside, beyond] = [carryingOf(element.inside, predict), carryingOf(element.beyond, predict)];
  return {
    inside: inside.R,
    beyond: beyond.R,
    improvement: inside.improvement.map((gain, b) => gain + (beyond.improvement[b] ?? 0)),
    junction: junctionCurve(element),
    spread: THIRD_OCTAVES.map((_, b) =>
      Math.hypot((inside.spread[b] ?? 0) / 2, (beyond.spread[b] ?? 0) / 2, JUNCTION_SPREAD),
    ),
    extrapolated: THIRD_OCTAVES.map(
      (band, b) => inside.doubts[b] ?? beyond.doubts[b] ?? (band < LOW ? LOW_DOUBT : null),
    ),
  };
};

/**
 * What one flanking path lets through: S·τ = l0·l_ij·10^(−((R_i + R_j)/2 + ΔR + K_ij)/10), which does not depend on the
 * part it goes past. Of a lined wall or slab the heavy leaf carries, and the lining is its ΔR.
 * @param element the two elements, their junction, its length (m)
 * @param separating S_s, m², area of the part that the path goes past: R of the path is written for it
 * @param predict predicts an assembly as a laboratory would
 * @returns S·τ per third octave 25 Hz to 10 kHz; its own area counts nothing to the shell
 * @throws RangeError where neither masses nor K_ij are known, or a length or area is not > 0
 * @validity first-order paths of elements that run on into a building; R of laboratories stands for resonant R
 * @source EN 12354-1:2000, 4.4 and annex E; ISO 12354-1:2017, annex L
 */
export const flankingTransmission = (
  element: FlankingElement,
  separating: number,
  predict: Predictor,
): PartTransmission => {
  const { inside, beyond, improvement, junction, spread, extrapolated } = flankingCurves(element, predict);
  const R = THIRD_OCTAVES.map((_, b) =>
    flankingReduction(
      {
        first: inside[b] ?? 0,
        second: beyond[b] ?? 0,
        junction: junction[b] ?? 0,
        length: element.length,
        improvement: improvement[b] ?? 0,
      },
      separating,
    ),
  );
  return {
    area: 0,
    reference: separating,
    openArea: R.map((value) => separating * toTransmission(value)),
    spread,
    extrapolated,
    ratings: rateThirdOctaves({ bands: THIRD_OCTAVES, values: R }),
    ratingSpread: JUNCTION_SPREAD,
    surfaceMass: null,
    thickness: null,
    family: 'flanking',
  };
};
