import { AIR_IMPEDANCE, SOUND_SPEED, exactCentre, sectionArea, toTransmission } from '../quantities/index.ts';
import type { Complex, Section } from '../quantities/index.ts';
import { BOX_BANDS } from './box/index.ts';
import { ductWavenumber, lossRate, slabWavenumber } from './ductMode.ts';
import { STRAIGHT, chained, massOf, poleLoss, seriesPole, stubPole, wavePole } from './fourPole.ts';
import type { FourPole } from './fourPole.ts';
import { tabulated } from './tabulated.ts';
import type { BoxSound } from './ventBoxSound.ts';
import { elbowLoss, turnsLoss } from './ventElbow.ts';
import type { VentBox, VentPort } from './ventElement.ts';

/** One leg of a lined box never shows more, dB. @source engineering judgement: what passes beside it in the box */
const MOST_PER_LEG = 25;
/** Series mass on either side of a gap, in widths of the narrower way. @source fitted to 18 wave solutions, 50-200 Hz */
const GAP_MASS = 0.9;
const PORT_MASS = 0.4;
/** Shortest leg, m: an airway is as long as it is wide even where two gaps face each other. */
const SHORTEST = 0.02;

/** A stretch of the way through the box. */
interface Leg {
  readonly width: number;
  readonly length: number;
  /** closed end beside the way, m */
  readonly stub: number;
  /** gap that leads on, m; null before the outlet */
  readonly gap: number | null;
}

/** A box without partitions is one leg along it; otherwise each compartment is a leg across it. */
const legsOf = ({ length, width, partitions, lining }: VentBox): Leg[] => {
  const t = lining?.thickness ?? 0;
  const across = width - 2 * t;
  if (partitions.length === 0) return [{ width: across, length: length - 2 * t, stub: 0, gap: null }];
  const edges = [0, ...partitions.flatMap(({ at, thickness }) => [at, at + thickness]), length];
  return Array.from({ length: partitions.length + 1 }, (_, i) => {
    const gap = partitions[i]?.gap ?? null;
    const end = i === 0 || i === partitions.length;
    const clear = (edges[2 * i + 1] ?? length) - (edges[2 * i] ?? 0) - 2 * t;
    const leg = end ? across / 2 : across - (gap ?? 0);
    return { width: Math.max(SHORTEST, clear), length: Math.max(SHORTEST, leg), stub: end ? across / 2 : 0, gap };
  });
};

const clearHeight = ({ height, lining }: VentBox): number =>
  lining?.faces === true ? height - 2 * lining.thickness : height;

const legWavenumber = (box: VentBox, width: number, frequency: number): Complex => {
  const section: Section = { shape: 'rectangular', width, height: clearHeight(box) };
  const { lining } = box;
  if (lining === null || lining.faces) return ductWavenumber(frequency, section, lining);
  return slabWavenumber(frequency, width, lining);
};

const portMass = ({ section }: VentPort, { height }: VentBox, frequency: number): FourPole => {
  const area = sectionArea(section);
  return seriesPole(massOf(2 * Math.PI * frequency, (PORT_MASS * area) / height, area));
};

/** Plane-wave chain: mass at the ports, lined legs, closed ends beside them, mass on both sides of each gap. */
const chainOf = (box: VentBox, frequency: number, wavenumber: Wavenumber): FourPole => {
  const clear = clearHeight(box);
  const legs = legsOf(box).reduce((pole, { width, length, stub, gap }) => {
    const k = wavenumber(width, frequency);
    const area = width * clear;
    const leg = chained(chained(pole, stubPole(frequency, k, area, stub)), wavePole(frequency, k, area, length));
    if (gap === null) return leg;
    const mass = massOf(2 * Math.PI * frequency, 2 * GAP_MASS * Math.min(gap, width), gap * clear);
    return chained(leg, seriesPole(mass));
  }, STRAIGHT);
  const [first, second] = box.ports;
  return chained(chained(portMass(first, box, frequency), legs), portMass(second, box, frequency));
};

/** What legs take by their lining, each at most 25 dB, and the turns between them, two round each partition. */
const alongLegs = (box: VentBox, frequency: number, wavenumber: Wavenumber): number => {
  const legs = legsOf(box);
  const lining = legs.reduce((sum, { width, length }) => {
    return sum + Math.min(MOST_PER_LEG, lossRate(wavenumber(width, frequency)) * length);
  }, 0);
  const gap = Math.min(...box.partitions.map((it) => it.gap));
  const turns = 2 * box.partitions.length;
  if (turns === 0) return lining;
  const lined = box.lining !== null;
  return lining + turnsLoss(turns, elbowLoss(frequency, gap, lined ? 'lined' : 'bare'), lined);
};

type Wavenumber = (width: number, frequency: number) => Complex;

/** Wavenumbers of the box's airways, each worked out once per third octave. */
const wavenumbersOf = (box: VentBox): Wavenumber => {
  const tables = new Map<number, (frequency: number) => Complex>();
  return (width, frequency) => {
    const table = tables.get(width) ?? tabulated((f) => legWavenumber(box, width, f));
    tables.set(width, table);
    return table(frequency);
  };
};

/**
 * A baffled box by a plane-wave chain: fast enough to follow the hand, good to ±2.4 dB from 50 to 200 Hz and to
 * ±12 dB above.
 * @param box m
 * @returns its sound, marked as an estimate
 * @validity rough above 200 Hz; from the airways' cross mode on only what their lining takes
 * @source plane-wave chain; its masses fitted to wave solutions of 18 lined boxes
 */
export const estimatedBoxSound = (box: VentBox): BoxSound => {
  const [Z1 = 1, Z2 = 1] = box.ports.map(({ section }) => AIR_IMPEDANCE / sectionArea(section));
  const widest = Math.max(...legsOf(box).map(({ width }) => width));
  const cross = SOUND_SPEED / (2 * widest);
  const wavenumber = wavenumbersOf(box);
  const mostPerBox = MOST_PER_LEG * legsOf(box).length;
  return {
    pole: (frequency) => chainOf(box, frequency, wavenumber),
    bands: BOX_BANDS,
    transmission: BOX_BANDS.map((band) => {
      const frequency = exactCentre(band);
      const plane = poleLoss(chainOf(box, frequency, wavenumber), Z1, Z2);
      const energy = alongLegs(box, frequency, wavenumber);
      const share = Math.min(1, Math.max(0, Math.log2(frequency / cross)));
      const loss = (1 - share) * Math.min(plane, mostPerBox) + share * energy;
      return Math.min(1, toTransmission(Math.max(0, loss)));
    }),
    meanSquare: null,
    estimate: true,
  };
};
