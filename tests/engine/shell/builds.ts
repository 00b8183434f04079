import { THIRD_OCTAVES } from '../../../src/engine/quantities/index.ts';
import type { Build, Part, PartElement, Predictor } from '../../../src/engine/shell/index.ts';
import { evaluateShell, partTransmission, sources } from '../../../src/engine/shell/index.ts';

export const flat = sources[0]?.spectrum ?? { bands: [], values: [] };

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
