import { SOUND_SPEED, complex, toReduction } from '../../quantities/index.ts';
import { REFERENCE_AREA } from '../measured.ts';
import { bandFrequencies } from './bandFrequencies.ts';
import type { BoxBand, BoxLine, PlaneScattering } from './boxResult.ts';
import { complexSpline } from './cubicSpline.ts';
import { planeGain } from './ductEnds.ts';
import type { DuctEnd } from './ductEnds.ts';

/** Lines per band with the ends attached: their resonances are narrow, S without them is smooth. */
const LINES = 48;

/** A box between two rooms, per band. */
export interface BetweenRooms {
  readonly bands: readonly number[];
  /** of the box with its ducts, on the area of the first duct, dB */
  readonly reduction: readonly number[];
  /** of the plain hole in its place, dB */
  readonly holeReduction: readonly number[];
  /** R of the box less R of the hole, dB */
  readonly insertionLoss: readonly number[];
  /** element-normalised level difference of the way through the air, dB */
  readonly normalisedDifference: readonly number[];
}

/** What the travelling modes of a band carry besides plane to plane, mean of its lines. */
interface HigherModes {
  /** travelling modes of the first port */
  readonly count: number;
  /** power from all of them into all of the second port, mouths matched, without plane to plane */
  readonly share: number;
}

const higherModes = ({ lines }: BoxBand): HigherModes => {
  const mean = (value: (line: BoxLine) => number): number =>
    lines.reduce((sum, line) => sum + value(line), 0) / lines.length;
  return {
    count: mean(({ modal }) => modal.length),
    share: mean(({ modal, planeToPlane }) => modal.reduce((sum, it) => sum + it, 0) - planeToPlane),
  };
};

/** Available power of a mouth per mode, against the power incident on its area: Q = max(1, 4π/k²S). */
const available = (frequency: number, area: number): number =>
  Math.max(1, (4 * Math.PI) / (((2 * Math.PI * frequency) / SOUND_SPEED) ** 2 * area));

/** R on the area of the first duct: −10 lg of Q times the mean gain over the travelling modes, mean of the lines. */
const reductionIn = (
  band: number,
  plane: (frequency: number) => PlaneScattering,
  higher: HigherModes,
  ends: readonly [DuctEnd, DuctEnd],
): number => {
  const tau = (f: number): number =>
    (available(f, ends[0].area) * (planeGain(plane(f), f, ends) + higher.share)) / higher.count;
  return toReduction(bandFrequencies(band, LINES).reduce((sum, f) => sum + tau(f), 0) / LINES);
};

/** S of the plane modes at any frequency between the solved ones. */
const planeBetween = (bands: readonly BoxBand[]): ((frequency: number) => PlaneScattering) => {
  const lines = bands.flatMap((band) => band.lines);
  const at = lines.map(({ frequency }) => Math.log(frequency));
  const spline = (key: keyof PlaneScattering) =>
    complexSpline(
      at,
      lines.map(({ plane }) => plane[key]),
    );
  const [s11, s12, s21, s22] = [spline('s11'), spline('s12'), spline('s21'), spline('s22')];
  return (frequency) => {
    const x = Math.log(frequency);
    return { s11: s11(x), s12: s12(x), s21: s21(x), s22: s22(x) };
  };
};

const OPEN: PlaneScattering = { s11: complex(0), s12: complex(1), s21: complex(1), s22: complex(0) };

/**
 * What a box with its two ducts does between two rooms: τ_S = Q·<g>, with S of the box interpolated by a cubic spline
 * over ln f and the mouths attached at 48 lines a band. D_n,e = 10 lg(A0/(τ_S·S1)).
 * @param bands of solveBox, ascending, at least two lines in all
 * @param ends ducts at the first and the second port
 * @param holeLength of the plain hole in the place of the box, m; of its higher modes all pass
 * @validity both rooms taken as diffuse half spaces; below 160 Hz the box resonates between its ducts and can be worse
 * than the open hole; partitions, lining edges and leaks are not in it
 * @source derived; checked with a plain hole (4.3 dB at 50 Hz, −4.7 dB at 1 kHz for 125 mm through 100 mm)
 */
export const betweenRooms = (
  bands: readonly BoxBand[],
  ends: readonly [DuctEnd, DuctEnd],
  holeLength: number,
): BetweenRooms => {
  const [{ area }] = ends;
  const hole: readonly [DuctEnd, DuctEnd] = [
    { area, length: holeLength, resistance: 0 },
    { area, length: 0, resistance: 0 },
  ];
  const between = planeBetween(bands);
  const higher = bands.map(higherModes);
  const per = (compute: (band: number, modes: HigherModes) => number): number[] =>
    bands.map(({ band }, i) => compute(band, higher[i] ?? { count: 1, share: 0 }));
  const reduction = per((band, modes) => reductionIn(band, between, modes, ends));
  const holeReduction = per((band, { count }) => reductionIn(band, () => OPEN, { count, share: count - 1 }, hole));
  return {
    bands: bands.map(({ band }) => band),
    reduction,
    holeReduction,
    insertionLoss: reduction.map((R, i) => R - (holeReduction[i] ?? 0)),
    normalisedDifference: reduction.map((R) => R + 10 * Math.log10(REFERENCE_AREA / area)),
  };
};
