import type { Assembly, BoardLayer, CavityLayer, Frame, Layer } from '../../src/engine/assembly/index.ts';
import type { BoardFamily, BoardMaterial, PorousMaterial } from '../../src/engine/materials/index.ts';

const board = (
  family: BoardFamily,
  name: string,
  density: number,
  gigapascal: number,
  poissonRatio: number,
  lossFactor: number,
): BoardMaterial => ({
  kind: 'board',
  family,
  name,
  density,
  youngsModulus: gigapascal * 1e9,
  poissonRatio,
  lossFactor,
});

/** Materials of the tests, in SI. */
export const GYPSUM = board('gypsum', 'gypsum board', 700, 2.1, 0.3, 0.0125);
export const OSB = board('wood', 'OSB', 600, 3.6, 0.3, 0.01);
export const GLASS = board('glass', 'glass', 2500, 64, 0.24, 0.006);
export const BLOCK = board('mineral', 'dense block', 2000, 18, 0.2, 0.01);
export const TOPPING = board('mineral', 'topping', 1760, 10.5, 0.2, 0.01);
export const LIMP = board('other', 'limp sheet', 2000, 0, 0.3, 0);
export const WOOL: PorousMaterial = { kind: 'porous', name: 'wool', density: 14, airflowResistivity: 8000 };

export const sheet = (material: BoardMaterial, millimetres: number): BoardLayer => ({
  kind: 'board',
  material,
  thickness: millimetres / 1000,
});

export const frame = (changes: Partial<Frame> = {}): Frame => ({
  stud: 'timber',
  arrangement: 'common',
  fixing: 'direct',
  spacing: 0.4,
  barSpacing: 0.6,
  gauge: 0.0005,
  ...changes,
});

export const cavity = (millimetres: number, wool = 0, studs?: Frame): CavityLayer => ({
  kind: 'cavity',
  depth: millimetres / 1000,
  ...(wool > 0 && { fill: { material: WOOL, thickness: wool / 1000 } }),
  ...(studs && { frame: studs }),
});

export const layup = (...layers: readonly Layer[]): Assembly => ({ name: 'layup', layers });
