import { THIRD_OCTAVES } from '../../../src/engine/quantities/index.ts';
import type { Spectrum } from '../../../src/engine/quantities/index.ts';
import type { Build, Part, PartElement, Predictor } from '../../../src/engine/shell/index.ts';
import { evaluateShell, partTransmission } from '../../../src/engine/shell/index.ts';

export const flat: Spectrum = { bands: THIRD_OCTAVES, values: THIRD_OCTAVES.map(() => 0) };

const fromOctaves = (octaves: readonly number[]): Spectrum => ({
  bands: THIRD_OCTAVES,
  values: THIRD_OCTAVES.map((_, i) => octaves[Math.floor(i / 3)] ?? 0),
});

/** two sources unlike each other: octave levels 31.5 Hz to 8 kHz, dB, invented */
export const bassHeavy = fromOctaves([88, 98, 98, 92, 84, 76, 68, 60, 50]);
export const trebleHeavy = fromOctaves([40, 50, 60, 80, 90, 94, 91, 84, 75]);

export const curve = (values: readonly number[]): PartElement => ({
  kind: 'measured',
  quantity: 'R',
  curve: { bands: THIRD_OCTAVES, values },
});

/** the same R in every band */
export const level = (R: number): PartElement => curve(THIRD_OCTAVES.map(() => R));

export const part = (id: string, area: number, element: PartElement, kind: Part['kind'] = 'wall'): Part => ({
  id,
  name: id,
  kind,
  surface: id,
  width: area,
  height: 1,
  area,
  element,
  candidates: [],
});

export const build = (parts: readonly Part[], source = flat): Build => ({ parts, options: [], source });

export const noAssemblies: Predictor = () => {
  throw new Error('this build has no assemblies');
};

export const shellOf = (parts: readonly Part[], source = flat) =>
  evaluateShell(build(parts, source), (one) => partTransmission(one, noAssemblies));
