import { SOUND_SPEED, exactCentre, sectionArea, toTransmission } from '../quantities/index.ts';
import type { BoardMaterial } from '../materials/index.ts';
import { boardCriticalFrequency, monolithicReduction } from '../transmission/index.ts';
import { liningAbsorption, nearestBand } from './ventEnergy.ts';
import type { VentBox } from './ventElement.ts';
import type { BoxSound } from './ventBoxSound.ts';

/** What partitions are made of. @source common practice: OSB or plywood, 600 to 650 kg/m³ */
const BOARD: BoardMaterial = {
  kind: 'board',
  family: 'wood',
  name: 'Wood-based board',
  density: 635,
  youngsModulus: 3.82e9,
  poissonRatio: 0.3,
  lossFactor: 0.01,
};
/** Loss factor once its edges are fixed, and with wool against both faces. @source engineering judgement */
const LOSS = { bare: 0.03, lined: 0.1 } as const;
/** Openings and mouths take a compartment's sound even where nothing absorbs it. */
const BARE = 0.02;

interface Partition {
  /** face, m² */
  readonly area: number;
  readonly thickness: number;
}

const liningDepth = ({ lining }: VentBox): number => lining?.thickness ?? 0;

const partitionsOf = (box: VentBox): readonly Partition[] =>
  box.partitions.map(({ thickness, gap }) => ({
    area: Math.max(0, box.width - gap - liningDepth(box)) * box.height,
    thickness,
  }));

/** τ of a partition by its own R. */
const passed = ({ thickness }: Partition, { width, height, lining }: VentBox, frequency: number): number => {
  const critical = boardCriticalFrequency({ kind: 'board', material: BOARD, thickness });
  if (critical === null) return 1;
  const R = monolithicReduction(
    {
      surfaceMass: BOARD.density * thickness,
      criticalFrequency: critical,
      lossFactor: lining ? LOSS.lined : LOSS.bare,
      wallImpedance: null,
      size: [Math.max(width, height), Math.min(width, height)],
    },
    frequency,
  );
  return toTransmission(R);
};

/** Absorption of each compartment with the gaps and ducts that lead out of it, m². */
const absorptions = (box: VentBox, partitions: readonly Partition[], frequency: number): number[] => {
  const { length, width, height, lining, ports } = box;
  const share = lining ? liningAbsorption(frequency, lining) : BARE;
  const edges = [0, ...box.partitions.flatMap(({ at, thickness }) => [at, at + thickness]), length];
  return Array.from({ length: partitions.length + 1 }, (_, i) => {
    const along = (edges[2 * i + 1] ?? length) - (edges[2 * i] ?? 0);
    const [before, after] = [partitions[i - 1], partitions[i]];
    const end = width * height;
    const faces = lining?.faces === true ? 2 * along * width : 0;
    const lined = 2 * along * height + (before?.area ?? end) + (after?.area ?? end) + faces;
    const gaps = [box.partitions[i - 1], box.partitions[i]].reduce((sum, it) => sum + (it?.gap ?? 0) * height, 0);
    const mouths = (before ? 0 : sectionArea(ports[0].section)) + (after ? 0 : sectionArea(ports[1].section));
    return share * lined + gaps + mouths;
  });
};

/**
 * By how much partitions that pass sound themselves raise what passes a box: Π(1 + κ·τp·Sp), each compartment a small
 * room; κ such that with every gap closed √(S1·S2)·Π(τp·Sp)/ΠA would pass, A the absorption of each compartment.
 * @param sound of the box with rigid partitions
 * @param band nominal third octave, Hz
 * @returns factor on the power, ≥ 1; 1 without partitions and below the box's first mode
 * @validity wood-based boards; an estimate above the first mode; joints at the partitions' edges tight
 * @source Sabine's energy balance of coupled rooms (derived); R: ISO 12354-1:2017, annex B
 */
export const partitionFactor = (box: VentBox, sound: BoxSound, band: number): number => {
  const frequency = exactCentre(band);
  const first = SOUND_SPEED / (2 * Math.max(box.length, box.width));
  if (box.partitions.length === 0 || frequency < first) return 1;
  const partitions = partitionsOf(box);
  const round = Math.max(1e-12, sound.transmission[nearestBand(sound.bands, band)] ?? 1);
  const [one, other] = box.ports.map(({ section }) => sectionArea(section));
  const absorbed = absorptions(box, partitions, frequency).reduce((product, A) => product * A, 1);
  const stage = (Math.sqrt((one ?? 1) * (other ?? 1)) / (absorbed * round)) ** (1 / partitions.length);
  return partitions.reduce((product, it) => product * (1 + stage * it.area * passed(it, box, frequency)), 1);
};
