import { energySum, exactCentre, sectionArea, toLevel, toReduction } from '../quantities/index.ts';
import { NOISE_OCTAVES } from '../ratings/index.ts';
import { mouthImpedance } from './box/index.ts';
import { pieceTransmission } from './ventEnergy.ts';
import { ventSections } from './ventElement.ts';
import type { FanType, VentElement, VentPath } from './ventElement.ts';
import type { VentPorts } from './ventSound.ts';

/** Of the fan's whole power, octaves 63 Hz to 8 kHz, dB. @source published table of fan noise by type */
const BY_TYPE: Readonly<Record<FanType, readonly number[]>> = {
  axial: [-7, -9, -7, -7, -8, -11, -16, -18],
  backward: [-4, -6, -9, -11, -13, -16, -19, -22],
  forward: [-2, -6, -13, -18, -19, -22, -25, -30],
  radial: [-3, -5, -7, -7, -8, -11, -16, -18],
};
const SQUARE_FEET = 10.7639;
const FEET = 3.28084;

/**
 * Sound power of a fan without a data sheet: Lw = 40 + 10 lg q + 20 lg p.
 * @param flow q, m³/s, > 0
 * @param pressure p, Pa, > 0
 * @returns dB re 1 pW
 * @validity at its best point; a data sheet is better
 * @source published table of fan noise (three forms that agree at 50 % efficiency)
 * @example fanPower(0.05, 100) // 67.0
 */
export const fanPower = (flow: number, pressure: number): number => 40 + toLevel(flow) + 2 * toLevel(pressure);

/** Per octave 63 Hz to 8 kHz, dB re 1 pW. @param flow m³/s @param pressure Pa */
export const fanOctaves = (type: FanType, flow: number, pressure: number): number[] =>
  BY_TYPE[type].map((share) => fanPower(flow, Math.max(1, pressure)) + share);

/**
 * Sound power of air in a grille: Lw = 10 lg S + 30 lg ξ + 60 lg u − 31.3 (S ft², u ft/s), spread about 48.8·u Hz.
 * @param area S of the face, m², > 0
 * @param loss ξ, its loss coefficient, > 0
 * @param speed u before it, m/s, > 0
 * @returns dB re 1 pW per octave 63 Hz to 8 kHz
 * @validity clean flow towards the grille
 * @source Beranek & Vér, Noise and Vibration Control Engineering (1992); ASHRAE (from memory)
 * @example grilleOctaves(0.02, 6, 1)[3] // 7.7
 */
export const grilleOctaves = (area: number, loss: number, speed: number): number[] => {
  const u = speed * FEET;
  const whole = toLevel(area * SQUARE_FEET) + 3 * toLevel(loss) + 6 * toLevel(u) - 31.3;
  const peak = Math.log2((48.8 * u) / 1000);
  return NOISE_OCTAVES.map((octave) => {
    const away = peak - Math.log2(octave / 1000);
    return whole - 5.82 - 0.15 * away - 1.13 * away ** 2;
  });
};

/** What a vent sends into the room and outdoors by itself, dB re 1 pW per octave 63 Hz to 8 kHz. */
export interface VentNoise {
  readonly intoRoom: readonly number[];
  readonly outwards: readonly number[];
  /** true where a fan's power is estimated for want of a data sheet */
  readonly estimated: boolean;
}

/** Power that a mouth throws back into its duct, dB. */
const endLoss = (octave: number, area: number): number => {
  const z = mouthImpedance(exactCentre(octave), area);
  return toReduction((4 * z.re) / ((1 + z.re) ** 2 + z.im ** 2));
};

/** Thirds of an octave on average: what pieces take between two places. */
const taken = (elements: readonly VentElement[], octave: number, ports: VentPorts): number =>
  elements.reduce((sum, element) => {
    const sound = element.kind === 'box' ? ports.boxSound(element.box) : null;
    return sum + toReduction(Math.max(1e-9, pieceTransmission(element, sound, octave)));
  }, 0);

const SILENT = -100;

/**
 * Noise of fan and flow that leaves a vent at both ends: half of the fan's power each way, less what the pieces on the
 * way take and the mouth throws back; grilles at the ends as they stand.
 * @param path from the room outwards
 * @param flow m³/s, ≥ 0
 * @param working what each piece does at the flow: pressure of a fan, loss coefficient and face speed of a grille
 * @param ports as for the sound through the vent
 * @validity noise of bends and dampers left out: keep the air slow
 * @source fanPower, grilleOctaves; end reflection of a piston in a wall
 */
export const ventNoise = (
  path: VentPath,
  flow: number,
  working: {
    readonly fanPressure: (element: number) => number;
    readonly grilleLoss: (freeShare: number) => number;
  },
  ports: VentPorts,
): VentNoise => {
  const { elements } = path;
  const [first, last] = [elements[0], elements.at(-1)];
  const silent = NOISE_OCTAVES.map(() => SILENT);
  if (!first || !last || flow <= 0) return { intoRoom: silent, outwards: silent, estimated: false };
  const areas = [sectionArea(ventSections(first)[0]), sectionArea(ventSections(last)[1])] as const;
  const side = (inwards: boolean): number[] => {
    const fans = elements.flatMap((element, i) => {
      if (element.kind !== 'fan') return [];
      const power = element.soundPower ?? fanOctaves(element.type, flow, working.fanPressure(i));
      const between = inwards ? elements.slice(0, i) : elements.slice(i + 1);
      const area = inwards ? areas[0] : areas[1];
      return [
        power.map((level, o) => {
          const octave = NOISE_OCTAVES[o] ?? 1000;
          return level - (element.soundPower ? 0 : 3) - taken(between, octave, ports) - endLoss(octave, area);
        }),
      ];
    });
    const end = inwards ? first : last;
    const grille =
      end.kind === 'grille' && end.freeShare < 1
        ? [grilleOctaves(sectionArea(end.section), working.grilleLoss(end.freeShare), flow / sectionArea(end.section))]
        : [];
    return NOISE_OCTAVES.map((_, o) =>
      energySum([SILENT, ...[...fans, ...grille].map((levels) => levels[o] ?? SILENT)]),
    );
  };
  const estimated = elements.some((element) => element.kind === 'fan' && element.soundPower === null);
  return { intoRoom: side(true), outwards: side(false), estimated };
};

/**
 * Level in a room from a power in it, far from the source: Lp = Lw + 10 lg(4/A), A = 0.161·V/T.
 * @param power dB re 1 pW per octave
 * @param volume V, m³, > 0
 * @param reverberation T, s, > 0
 * @source Sabine; EN 12354-5:2009 (form)
 */
export const levelInRoom = (power: readonly number[], volume: number, reverberation: number): number[] =>
  power.map((level) => level + toLevel((4 * reverberation) / (0.161 * volume)));
