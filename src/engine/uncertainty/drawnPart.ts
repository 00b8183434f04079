import { REFERENCE_AREA } from '../openings/index.ts';
import type { Part, PartTransmission } from '../shell/index.ts';
import { THIRD_OCTAVES } from '../quantities/index.ts';
import type { UncertainInput } from './input.ts';
import { uncertainInput } from './input.ts';
import type { Surrogate } from './surrogate.ts';
import { surrogateInto } from './surrogate.ts';

const BANDS = THIRD_OCTAVES.length;

/** dB to ln τ */
export const NEPERS = Math.LN10 / 10;

/** Of an open slit or hole, dB: the size of a gap is never known well. @source engineering judgement, as the shell's quick estimate */
const OPENING_SPREAD = 3;

/** One part of the whole, ready to be drawn many times. */
export interface DrawnPart {
  readonly id: string;
  readonly name: string;
  /** m² */
  readonly area: number;
  /** area that its own R is told for: a small element's Dn,e goes by 10 m² */
  readonly ratedArea: number;
  /** S·τ per band as predicted, m² */
  readonly openArea: readonly number[];
  /** ln τ per band as predicted */
  readonly middle: Float64Array;
  readonly surrogate: Surrogate | null;
  /** of the surrogate's inputs, or of the opening, among all inputs of the whole */
  readonly inputs: readonly UncertainInput[];
  /** name of the family whose error it shares; null for openings and what is sealed */
  readonly family: string | null;
  /** metres of joint to be sealed */
  readonly joints: number;
  /** error of the surrogate per band, dB */
  readonly residual: Float64Array;
}

/**
 * Metres of joint of a part: half the outline of a wall, roof or ceiling (the other half is counted with its neighbour), the
 * whole outline of doors, windows, vents and services; none of a floor, whose edges are the walls', nor of a way past.
 * @source engineering judgement
 */
export const jointLength = ({ kind, width, height }: Part): number => {
  if (kind === 'floor' || kind === 'slit' || kind === 'hole' || kind === 'flanking') return 0;
  const outline = 2 * (width + height);
  return kind === 'wall' || kind === 'roof' || kind === 'ceiling' ? outline / 2 : outline;
};

/** A part with what it is drawn from. @param surrogate of its make-up, where it has one */
export const drawnPart = (part: Part, passes: PartTransmission, surrogate: Surrogate | null): DrawnPart => {
  const { element } = part;
  const opening = element.kind === 'slit' || element.kind === 'hole';
  const smallElement = element.kind === 'measured' && element.quantity === 'Dne';
  return {
    id: part.id,
    name: part.name,
    area: passes.area,
    ratedArea: passes.reference ?? (smallElement ? REFERENCE_AREA : passes.area),
    openArea: passes.openArea,
    middle: Float64Array.from(passes.openArea, (passed) => (surrogate ? Math.log(passed / passes.area) : 0)),
    surrogate,
    inputs: surrogate ? surrogate.inputs : opening ? [uncertainInput('opening', part.name)] : [],
    family: opening || element.kind === 'sealed' ? null : passes.family,
    joints: element.kind === 'sealed' ? 0 : jointLength(part),
    residual: Float64Array.from(THIRD_OCTAVES, (_, b) => (surrogate?.residual[b] ?? 0) / NEPERS),
  };
};

/** Errors of a part's family in one draw, dB per band, and what it leaves room for in S·τ, m². */
export interface PartDraw {
  readonly bandError: Float64Array;
  readonly ratingError: Float64Array;
  /** S·τ as curves go by it, and as Rw and STC go by it */
  readonly openArea: Float64Array;
  readonly ratedOpenArea: Float64Array;
}

/**
 * S·τ of a part in one draw, written into `out`.
 * @param columns of its inputs, in their order
 * @param leak open area per metre of joint in this draw, m²/m; sound passes it as an open window
 */
export const drawInto = (
  part: DrawnPart,
  columns: readonly (Float64Array | undefined)[],
  draw: number,
  scale: number,
  leak: number,
  out: PartDraw,
): void => {
  const { surrogate, openArea, middle, area, joints } = part;
  const { bandError, ratingError } = out;
  const open = leak * joints;
  if (surrogate) {
    surrogateInto(surrogate, middle, columns, draw, scale, out.openArea);
    for (let b = 0; b < BANDS; b += 1) {
      const tau = out.openArea[b] ?? 0;
      out.openArea[b] = area * Math.exp(Math.min(0, tau - NEPERS * (bandError[b] ?? 0))) + open;
      out.ratedOpenArea[b] = area * Math.exp(Math.min(0, tau - NEPERS * (ratingError[b] ?? 0))) + open;
    }
    return;
  }
  const opening = part.family === null ? Math.exp(NEPERS * OPENING_SPREAD * scale * (columns[0]?.[draw] ?? 0)) : 1;
  for (let b = 0; b < BANDS; b += 1) {
    const passed = (openArea[b] ?? 0) * opening;
    out.openArea[b] = passed * Math.exp(-NEPERS * (bandError[b] ?? 0)) + open;
    out.ratedOpenArea[b] = passed * Math.exp(-NEPERS * (ratingError[b] ?? 0)) + open;
  }
};
