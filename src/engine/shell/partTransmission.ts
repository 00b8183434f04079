import type { Assembly } from '../assembly/index.ts';
import {
  REFERENCE_AREA,
  bringToThirdOctaves,
  fittedPanel,
  holeTransmissions,
  slitTransmissions,
} from '../openings/index.ts';
import type { BoxSound, FittedPiece, VentBox } from '../openings/index.ts';
import { SOUND_SPEED, THIRD_OCTAVES, toReduction, toTransmission } from '../quantities/index.ts';
import type { Ratings } from '../ratings/index.ts';
import { rateThirdOctaves } from '../ratings/index.ts';
import type { Prediction } from '../transmission/index.ts';
import { APERTURE_SPREAD, MEASURED_RATING_SPREAD, measuredSpread } from './elementSpread.ts';
import { flankingTransmission } from './flankingTransmission.ts';
import type { Part } from './part.ts';
import { pathTransmission, solvedBox } from './pathTransmission.ts';

/** Clear size of a part, m. */
export interface PartSize {
  readonly width: number;
  readonly height: number;
}

/** Handed in: R of an assembly built at a size; null for the size of a laboratory. */
export type Predictor = (assembly: Assembly, size: PartSize | null) => Prediction;

/** One way through a part: S·τ per band, m². */
export interface PartWay {
  readonly name: string;
  readonly openArea: readonly number[];
}

/** What one part lets through, before it meets the others. */
export interface PartTransmission {
  /** own area S, m²; 0 for a flanking path, which takes none of the envelope */
  readonly area: number;
  /** area to which R is related where that is not its own, m² */
  readonly reference?: number;
  /** S·τ per third octave 25 Hz to 10 kHz, m²: the area of an open window that would pass as much */
  readonly openArea: readonly number[];
  readonly spread: readonly number[];
  readonly extrapolated: readonly (string | null)[];
  /** of a part made of an assembly or curve; null for slits, holes and sealed parts */
  readonly ratings: Ratings | null;
  readonly ratingSpread: number;
  readonly surfaceMass: number | null;
  readonly thickness: number | null;
  /** parts of one family err together */
  readonly family: string;
  /** ways that add up to `openArea`; only of vents with a path and of panels with fittings */
  readonly ways?: readonly PartWay[];
  /** leaves, joints and holes of a panel with fittings, each by itself */
  readonly pieces?: readonly FittedPiece[];
}

const requireArea = (part: Part): void => {
  if (!(Number.isFinite(part.area) && part.area > 0))
    throw new RangeError(
      `area of ${part.name} must be > 0 m², got ${String(part.area)}: ` +
        'make its openings smaller or the surface larger',
    );
};

const none = { spread: THIRD_OCTAVES.map(() => 0), extrapolated: THIRD_OCTAVES.map(() => null) };
const noPanel = { ratings: null, surfaceMass: null, thickness: null };
const aperture = { ...noPanel, spread: APERTURE_SPREAD, ratingSpread: 3 };

/** why the theory of an endless, narrow slit does not hold in a band; null where it does */
const slitDoubt = (band: number, length: number, width: number): string | null => {
  const k = (2 * Math.PI * band) / SOUND_SPEED;
  if (k * length < Math.PI) return 'Shorter than half a wavelength, taken as endless: it lets through less than this.';
  return k * width > 1 ? 'Wide against the wavelength, taken as nearly open.' : null;
};

/**
 * What a part lets through: S·τ per band. Slits and holes by their own area; small elements by A0·10^(−Dn,e/10).
 * @param part the part; its area (m²) with openings taken off
 * @param predict predicts an assembly at the part's size
 * @param boxSound the sound of a vent's box; solved on the fine grid where not given
 * @returns S·τ per third octave 25 Hz to 10 kHz with its spread and doubts
 * @throws RangeError where the openings leave a surface no area, or a curve or size is out of range
 * @validity as the model of each element
 * @source EN 12354-3:2000, clause 4 (Dn,e, A0 = 10 m²); openings: Wilson & Soroka 1965, Gomperts & Kihlman 1967
 */
export const partTransmission = (
  part: Part,
  predict: Predictor,
  boxSound: (box: VentBox) => BoxSound = solvedBox,
): PartTransmission => {
  const { element } = part;
  if (element.kind === 'slit') {
    const { length, width, depth, edge } = element;
    const area = length * width;
    const tau = slitTransmissions(width, depth, edge, THIRD_OCTAVES, 'diffuse');
    const extrapolated = THIRD_OCTAVES.map((band) => slitDoubt(band, length, width));
    return { ...aperture, area, openArea: tau.map((t) => area * t), extrapolated, family: 'slit' };
  }
  if (element.kind === 'hole') {
    const area = (Math.PI * element.diameter ** 2) / 4;
    const tau = holeTransmissions(element.diameter, element.depth, THIRD_OCTAVES, 'diffuse');
    return { ...aperture, area, openArea: tau.map((t) => area * t), extrapolated: none.extrapolated, family: 'hole' };
  }
  requireArea(part);
  const { area } = part;
  if (element.kind === 'sealed')
    return { ...none, ...noPanel, area, openArea: THIRD_OCTAVES.map(() => 0), ratingSpread: 0, family: 'sealed' };
  if (element.kind === 'measured') {
    const { values, extrapolated } = bringToThirdOctaves(element.curve);
    const reference = element.quantity === 'Dne' ? REFERENCE_AREA : area;
    return {
      ...noPanel,
      area,
      openArea: values.map((value) => reference * toTransmission(value)),
      spread: measuredSpread(extrapolated),
      extrapolated,
      ratings: rateThirdOctaves({ bands: THIRD_OCTAVES, values }),
      ratingSpread: MEASURED_RATING_SPREAD,
      family: `measured ${values.join(' ')}`,
    };
  }
  if (element.kind === 'path') return pathTransmission(element.path, area, predict, boxSound);
  if (element.kind === 'flanking') return flankingTransmission(element, area, predict);
  const prediction = predict(element.assembly, { width: part.width, height: part.height });
  const { spread, extrapolated, ratings, ratingSpread, surfaceMass, thickness, constructionClass } = prediction;
  const fitted =
    element.fittings &&
    fittedPanel(prediction, element.fittings, part, THIRD_OCTAVES, (assembly) => predict(assembly, part));
  const openArea = fitted?.openArea ?? prediction.R.map((R) => area * toTransmission(R));
  return {
    area,
    openArea,
    spread,
    extrapolated,
    ratings: fitted
      ? rateThirdOctaves({ bands: THIRD_OCTAVES, values: openArea.map((passed) => toReduction(passed / area)) })
      : ratings,
    ratingSpread,
    surfaceMass,
    thickness,
    family: constructionClass,
    ...(fitted && { ways: fitted.ways, pieces: fitted.pieces }),
  };
};
