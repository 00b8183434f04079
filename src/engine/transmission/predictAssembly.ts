import { THIRD_OCTAVES, createMemory } from '../quantities/index.ts';
import { massAirMassResonances, structureOf, surfaceMass, totalThickness } from '../assembly/index.ts';
import type { Assembly } from '../assembly/index.ts';
import { rateThirdOctaves } from '../ratings/index.ts';
import { angleGrid } from './angleGrid.ts';
import type { AngleGrid } from './angleGrid.ts';
import { angularField } from './angularField.ts';
import type { AngularField } from './angularField.ts';
import { besselTable } from './besselTable.ts';
import { capTransmission } from './cap.ts';
import { constructionClass } from './constructionClass.ts';
import { throughWindow } from './diffuseField.ts';
import type { FieldResult } from './diffuseField.ts';
import { heldTogether } from './heldTogether.ts';
import type { HeldTogether } from './heldTogether.ts';
import { fineness, laboratorySize } from './laboratory.ts';
import { leafSummaries } from './leafSummary.ts';
import type { Prediction, Resolution, TransmissionPath } from './prediction.ts';
import { ratingSpread, spreadOf } from './spread.ts';
import type { Stack } from './stack.ts';
import { stackOf } from './stackOf.ts';
import { validityOf } from './validity.ts';
import { SPLIT } from './windowSums.ts';
import { frameTransmission } from './windowFrame.ts';
import { windowTable } from './windowTable.ts';
import type { WindowTable } from './windowTable.ts';

export interface PredictOptions {
  /** width and height, m; a laboratory's opening when absent */
  readonly size?: readonly [number, number];
  readonly resolution?: Resolution;
}

/** Predicts assemblies one after another and keeps the tables they share. */
export interface Predictor {
  predict(assembly: Assembly, options?: PredictOptions): Prediction;
}

const KEPT_WINDOWS = 40;
/** Make-ups whose angular fields are kept: 1.7 MB each at full resolution, and the sizes of one come one after another.
 * Panes have one for each size, as their air knows where its edges are. */
const KEPT_FIELDS = 4;

const pathSum = (result: FieldResult, b: number): number =>
  (result.cavity[b] ?? 0) + (result.resonant[b] ?? 0) + (result.links[b] ?? 0) + (result.perimeter[b] ?? 0);

/** What gets through while stiff studs hold leaves together, beyond what the leaves by themselves let through. */
const addHeldTogether = (
  result: FieldResult,
  joined: FieldResult,
  held: HeldTogether,
  bands: readonly number[],
): void => {
  bands.forEach((band, b) => {
    const more = Math.max(0, pathSum(joined, b) - pathSum(result, b));
    result.links[b] = (result.links[b] ?? 0) + held.share(band) * more;
  });
};

const PATH_NAMES: Record<TransmissionPath['key'], string> = {
  cavity: 'Through the leaves and the air between them',
  resonant: 'Free waves of the leaf',
  links: 'Along the frame',
  perimeter: 'Around the edges',
  frame: 'Through the window frame',
  cap: 'Seams, seals and flanking',
};

/**
 * A predictor with tables for the sizes it has met.
 * @returns predictor; the same assembly and options give the same prediction
 * @source see Predictor.predict
 */
export const createPredictor = (): Predictor => {
  const grids = createMemory<AngleGrid>(8);
  const windows = createMemory<WindowTable>(KEPT_WINDOWS);
  const fields = createMemory<AngularField>(KEPT_FIELDS);
  const bessel = besselTable(SPLIT * 8.2);
  const gridOf = (count: number): AngleGrid => grids.recall(String(count), () => angleGrid(count));
  const windowOf = (size: readonly [number, number], grid: AngleGrid): WindowTable =>
    windows.recall(`${size[0]} ${size[1]} ${grid.count}`, () => windowTable(size[0], size[1], grid, bessel));

  const predict = (assembly: Assembly, options: PredictOptions = {}): Prediction => {
    const structure = structureOf(assembly);
    if (structure.leaves.length === 0)
      throw new RangeError(`assembly must have at least one board, got none in "${assembly.name}"`);
    const resolution = options.resolution ?? 'full';
    const size = options.size ?? laboratorySize(assembly);
    const stack = stackOf(structure, size);
    const [lines, angles] = fineness(structure, stack, resolution);
    const grid = gridOf(angles);
    const bands = THIRD_OCTAVES;
    const window = windowOf(size, grid);
    const through = (part: string, built: Stack): FieldResult => {
      const key = JSON.stringify([part, assembly.layers, built.gaps.map((gap) => gap.layers), lines, angles]);
      return throughWindow(
        built,
        fields.recall(key, () => angularField(built, bands, lines, grid)),
        window,
        size,
      );
    };
    const result = through('apart', stack);
    const held = heldTogether(structure);
    if (held) addHeldTogether(result, through('held', stackOf(held.structure, size)), held, bands);
    const cap = bands.map((band) => capTransmission(structure, band));
    const frame = bands.map((band) => frameTransmission(structure, size, band));
    const tau = bands.map((_, b) => Math.min(1, pathSum(result, b) + (frame[b] ?? 0) + (cap[b] ?? 0)));
    const R = tau.map((t) => -10 * Math.log10(t));
    const kind = constructionClass(structure);
    const paths = (['cavity', 'resonant', 'links', 'perimeter'] as const).flatMap((key) =>
      result[key].some((value) => value > 0) ? [{ key, name: PATH_NAMES[key], tau: [...result[key]] }] : [],
    );
    const beside = (
      [
        ['frame', frame],
        ['cap', cap],
      ] as const
    ).flatMap(([key, values]) =>
      values.some((value) => value > 0) ? [{ key, name: PATH_NAMES[key], tau: values }] : [],
    );
    return {
      bands,
      R,
      spread: spreadOf(kind, bands),
      extrapolated: validityOf(structure, bands),
      ratings: rateThirdOctaves({ bands, values: R }),
      ratingSpread: ratingSpread(kind),
      surfaceMass: surfaceMass(assembly),
      thickness: totalThickness(assembly),
      resonances: massAirMassResonances(assembly),
      criticalFrequencies: stack.leaves.flatMap((leaf) =>
        leaf.criticalFrequency === null ? [] : [leaf.criticalFrequency],
      ),
      leaves: leafSummaries(structure, stack),
      paths: [...paths, ...beside],
      constructionClass: kind,
      resolution,
      notes: [],
    };
  };
  return { predict };
};

/**
 * Sound reduction index of one assembly in third octaves, 25 Hz to 10 kHz, with everything that explains it. For many
 * assemblies keep a createPredictor().
 * @param assembly layers from the room outwards, at least one board
 * @param options size (m) and resolution; a laboratory's size and full resolution when absent
 * @returns prediction; `notes` empty
 * @throws RangeError when there is no board or the size is not > 0
 * @validity sealed parts as in a laboratory; bands outside the model's reach are marked
 * @source transfer matrices with finite window (Allard and Atalla 2009; Villot et al. 2001), Mindlin plates, linked
 *   leaves by reciprocity; constants fitted to measured constructions, tests/reference/tl
 * @example predictAssembly(wall).ratings.Rw
 */
export const predictAssembly = (assembly: Assembly, options: PredictOptions = {}): Prediction =>
  createPredictor().predict(assembly, options);
