import {
  absorptionLength,
  liningImprovement,
  situFlankingReduction,
  situVelocityDifference,
  structuralReverberation,
  vibrationReduction,
} from '../../../src/engine/shell/index.ts';
import { monolithicReduction } from '../../../src/engine/transmission/index.ts';
import { BANDS, column, ELEMENTS, EXAMPLE_AIR, value, type ElementName } from './printed.ts';

/** The example building of ISO 12354-1:2017, annex L, worked through by our own formulas from its printed inputs. */

export const critical = (name: ElementName): number =>
  EXAMPLE_AIR.soundSpeed ** 2 / (1.8 * ELEMENTS[name].cL * ELEMENTS[name].t);

/** Loss factors as printed; of the outer wall of 11 m² with its R, of the others in a column of their own. */
export const lossOf = (name: ElementName): number[] =>
  column(name === 'ext1' ? 'iso12354-1-L3-R-ext1' : `iso12354-1-L3-eta-${name}`, 'eta_tot');

export const reductionOf = (name: ElementName): number[] => {
  const { m, rho, cL, l1, l2 } = ELEMENTS[name];
  const loss = lossOf(name);
  return BANDS.map((band, i) =>
    monolithicReduction(
      {
        surfaceMass: m,
        criticalFrequency: critical(name),
        lossFactor: loss[i] ?? Number.NaN,
        wallImpedance: rho * cL,
        size: [l1, l2],
      },
      band,
      EXAMPLE_AIR,
    ),
  );
};

export const absorptionOf = (name: ElementName): number[] => {
  const loss = lossOf(name);
  return BANDS.map((band, i) =>
    absorptionLength(
      ELEMENTS[name].S,
      structuralReverberation(band, loss[i] ?? Number.NaN),
      band,
      EXAMPLE_AIR.soundSpeed,
    ),
  );
};

const mass = (name: ElementName): number => ELEMENTS[name].m;
const inner = (name: ElementName): boolean => name.startsWith('int');

/** K of wall to floor or wall to wall: T at the outer walls, cross at the inner ones. */
export const junctionOf = (wall: ElementName, straight: boolean): number =>
  straight
    ? vibrationReduction(inner(wall) ? 'rigid-cross' : 'rigid-t', 'straight', mass(wall), mass('floor'), 500)
    : vibrationReduction(inner(wall) ? 'rigid-cross' : 'rigid-t', 'corner', mass('floor'), mass(wall), 500);

export const differenceOf = (from: ElementName, to: ElementName, K: number, length: number): number[] => {
  const [a, b] = [absorptionOf(from), absorptionOf(to)];
  return BANDS.map((_, i) => situVelocityDifference(K, length, a[i] ?? Number.NaN, b[i] ?? Number.NaN));
};

export const floating = {
  surfaceMass: value('iso12354-1-L4-delta', 'm'),
  stiffness: value('iso12354-1-L4-delta', 's'),
};
const improvement = BANDS.map((band) => liningImprovement(floating, band));

const pathOf = (from: ElementName, to: ElementName, K: number, length: number, floated: boolean): number[] => {
  const [R, other, difference] = [reductionOf(from), reductionOf(to), differenceOf(from, to, K, length)];
  const areas = { separating: value('iso12354-1-L1-path-Dd', 'Ss'), first: ELEMENTS[from].S, second: ELEMENTS[to].S };
  return BANDS.map(
    (_, i) =>
      situFlankingReduction(R[i] ?? 0, other[i] ?? 0, difference[i] ?? 0, areas) +
      (floated ? (improvement[i] ?? 0) : 0),
  );
};

const WALLS: readonly (readonly [string, ElementName, number])[] = [
  ['1', 'ext1', 4],
  ['2', 'ext2', 5],
  ['3', 'int1', 4],
  ['4', 'int2', 5],
];

/** The thirteen paths: through the floor with its floating floor, and by each wall into the floor, out of it, and past it. */
export const paths: Readonly<Record<string, readonly number[]>> = {
  Dd: reductionOf('floor').map((R, i) => R + (improvement[i] ?? 0)),
  ...Object.fromEntries(
    WALLS.flatMap(([key, wall, length]) => [
      [`D${key}`, pathOf('floor', wall, junctionOf(wall, false), length, true)],
      [`${key}d`, pathOf(wall, 'floor', junctionOf(wall, false), length, false)],
      [`${key}${key}`, pathOf(wall, wall, junctionOf(wall, true), length, false)],
    ]),
  ),
};
