import { energySum, exactCentre, sectionArea, toLevel, toReduction } from '../quantities/index.ts';
import type { Section } from '../quantities/index.ts';
import { NOISE_OCTAVES, noiseRating } from '../ratings/index.ts';
import { mouthImpedance } from './box/index.ts';
import { pieceTransmission } from './ventEnergy.ts';
import { ventSections } from './ventElement.ts';
import type { FanType, VentBox, VentElement, VentPath } from './ventElement.ts';
import { bendOctaves, ductOctaves, grilleOctaves, usualVanes } from './ventFlowNoise.ts';
import type { VentPorts } from './ventSound.ts';

/** Of the fan's whole power, octaves 63 Hz to 8 kHz, dB. @source published table of fan noise by type */
const BY_TYPE: Readonly<Record<FanType, readonly number[]>> = {
  axial: [-7, -9, -7, -7, -8, -11, -16, -18],
  backward: [-4, -6, -9, -11, -13, -16, -19, -22],
  forward: [-2, -6, -13, -18, -19, -22, -25, -30],
  radial: [-3, -5, -7, -7, -8, -11, -16, -18],
};

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

/** Noise of one piece as it leaves the vent, dB re 1 pW per octave 63 Hz to 8 kHz. */
export interface PieceNoise {
  /** place in the path */
  readonly element: number;
  readonly name: string;
  readonly intoRoom: readonly number[];
  readonly outwards: readonly number[];
}

/** What a vent sends into the room and outdoors by itself, dB re 1 pW per octave 63 Hz to 8 kHz. */
export interface VentNoise {
  readonly intoRoom: readonly number[];
  readonly outwards: readonly number[];
  /** of the pieces that make any */
  readonly pieces: readonly PieceNoise[];
  /** the piece that the highest noise rating in the room comes from; null without flow */
  readonly loudest: PieceNoise | null;
  /** true where a fan's power is estimated for want of a data sheet */
  readonly estimated: boolean;
}

/** What each piece does at the flow. */
export interface VentWorking {
  readonly fanPressure: (element: number) => number;
  readonly grilleLoss: (freeShare: number) => number;
}

/** Power that a mouth throws back into its duct, dB. */
const endLoss = (octave: number, area: number): number => {
  const z = mouthImpedance(exactCentre(octave), area);
  return toReduction((4 * z.re) / ((1 + z.re) ** 2 + z.im ** 2));
};

const SILENT = -100;

const widthOf = (section: Section): number => (section.shape === 'round' ? section.diameter : section.width);

const together = (sources: readonly (readonly number[])[]): number[] =>
  NOISE_OCTAVES.map((_, o) => energySum([SILENT, ...sources.map((levels) => levels[o] ?? SILENT)]));

/** Round each partition of a box the air turns twice, as in a bend of its gap. */
const boxOctaves = ({ partitions, height, lining }: VentBox, flow: number): number[] => {
  const clear = height - (lining?.faces === true ? 2 * lining.thickness : 0);
  const turns = partitions.map(({ gap }) =>
    bendOctaves({ shape: 'rectangular', width: gap, height: clear }, flow / (gap * clear), null),
  );
  return together([...turns, ...turns]);
};

/** Sound power of one piece towards either side. @returns null for a piece that makes none */
const powerOf = (element: VentElement, at: number, flow: number, working: VentWorking): readonly number[] | null => {
  if (element.kind === 'box') return element.box.partitions.length > 0 ? boxOctaves(element.box, flow) : null;
  const area = sectionArea(element.section);
  const speed = flow / area;
  switch (element.kind) {
    case 'fan':
      return element.soundPower ?? fanOctaves(element.type, flow, working.fanPressure(at)).map((level) => level - 3);
    case 'grille':
    case 'mesh':
      return element.freeShare < 1 ? grilleOctaves(area, working.grilleLoss(element.freeShare), speed) : null;
    case 'cowl':
      return element.loss > 0 ? grilleOctaves(area, element.loss, speed) : null;
    case 'duct':
      return ductOctaves(area, speed);
    case 'bend': {
      const vanes = element.form === 'vaned' ? usualVanes(widthOf(element.section)) : null;
      const share = toLevel(Math.max(1e-6, Math.min(90, element.angle) / 90));
      return bendOctaves(element.section, speed, vanes).map((level) => level + share);
    }
    case 'transition':
      return null;
  }
};

/** A grille at the very end gives its noise straight to the air before it. */
const radiates = ({ kind }: VentElement): boolean => kind === 'grille' || kind === 'mesh' || kind === 'cowl';

/**
 * Noise of fan and flow that leaves a vent at both ends, piece by piece: half of an estimated fan's power each way, all
 * of a bend's, duct's or grille's, less what the pieces on the way take and the mouth throws back.
 * @param path from the room outwards
 * @param flow m³/s, ≥ 0
 * @param working what each piece does at the flow
 * @param ports as for the sound through the vent
 * @validity dampers, whistling edges and pieces close to one another left out: up to 10 dB more where a fan or bend
 * stands right behind a grille
 * @source fanPower, grilleOctaves, bendOctaves, ductOctaves; end reflection of a piston in a wall
 */
export const ventNoise = (path: VentPath, flow: number, working: VentWorking, ports: VentPorts): VentNoise => {
  const { elements } = path;
  const [first, last] = [elements[0], elements.at(-1)];
  const silent = NOISE_OCTAVES.map(() => SILENT);
  const none: VentNoise = { intoRoom: silent, outwards: silent, pieces: [], loudest: null, estimated: false };
  if (!first || !last || flow <= 0) return none;
  const taken = elements.map((element) => {
    const sound = element.kind === 'box' ? ports.boxSound(element.box) : null;
    return NOISE_OCTAVES.map((octave) => toReduction(Math.max(1e-9, pieceTransmission(element, sound, octave))));
  });
  const mouths = [sectionArea(ventSections(first)[0]), sectionArea(ventSections(last)[1])] as const;
  const leaving = (power: readonly number[], at: number, inwards: boolean): number[] => {
    const between = inwards ? taken.slice(0, at) : taken.slice(at + 1);
    const end = inwards ? first : last;
    const open = between.length === 0 && radiates(end);
    return NOISE_OCTAVES.map((octave, o) => {
      const way = between.reduce((sum, losses) => sum + (losses[o] ?? 0), 0);
      const thrownBack = open ? 0 : endLoss(octave, inwards ? mouths[0] : mouths[1]);
      return Math.max(SILENT, (power[o] ?? SILENT) - way - thrownBack);
    });
  };
  const pieces = elements.flatMap((element, at): PieceNoise[] => {
    const power = powerOf(element, at, flow, working);
    if (!power) return [];
    const { name } = element;
    return [{ element: at, name, intoRoom: leaving(power, at, true), outwards: leaving(power, at, false) }];
  });
  const rated = pieces.map((piece) => ({ piece, rating: noiseRating(piece.intoRoom) }));
  const loudest = rated.reduce<(typeof rated)[number] | null>(
    (most, it) => (most === null || it.rating > most.rating ? it : most),
    null,
  );
  return {
    intoRoom: together(pieces.map(({ intoRoom }) => intoRoom)),
    outwards: together(pieces.map(({ outwards }) => outwards)),
    pieces,
    loudest: loudest?.piece ?? null,
    estimated: elements.some((element) => element.kind === 'fan' && element.soundPower === null),
  };
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
