import { describe, expect, it } from 'vitest';
import type { Assembly, Layer } from '../../../src/engine/assembly/index.ts';
import type { BoardMaterial, ViscoelasticMaterial } from '../../../src/engine/materials/index.ts';
import { predictAssembly } from '../../../src/engine/transmission/index.ts';

const stiff: BoardMaterial = {
  kind: 'board',
  family: 'other',
  name: 'board',
  density: 800,
  youngsModulus: 3e9,
  poissonRatio: 0.3,
  lossFactor: 0.02,
};
const limp: BoardMaterial = { ...stiff, name: 'sheet', youngsModulus: 0 };
const compound: ViscoelasticMaterial = {
  kind: 'viscoelastic',
  name: 'compound',
  density: 1000,
  shearModulus: 1e6,
  lossFactor: 0.5,
};
const board = (material: BoardMaterial): Layer => ({ kind: 'board', material, thickness: 0.0125 });
const sheet: Layer = { kind: 'interlayer', material: compound, thickness: 0.001 };
const R = (...layers: Layer[]): readonly number[] => {
  const assembly: Assembly = { name: 'leaf', layers };
  return predictAssembly(assembly, { resolution: 'draft' }).R;
};

describe('a limp sheet on a damping compound', () => {
  it.each([
    ['behind a board', [board(stiff), sheet, board(limp)]],
    ['before a board', [board(limp), sheet, board(stiff)]],
    ['between two boards', [board(stiff), sheet, board(limp), sheet, board(stiff)]],
    ['on another limp sheet', [board(limp), sheet, board(limp)]],
    ['under a third', [board(limp), sheet, board(limp), sheet, board(limp)]],
  ])('is predicted in every band: %s', (_, layers) => {
    for (const value of R(...layers)) expect(Number.isFinite(value)).toBe(true);
  });

  it('adds its mass and no stiffness: as much as the same sheet hung loose', () => {
    const glued = R(board(stiff), sheet, board(limp));
    const heavier: BoardMaterial = { ...limp, density: limp.density + 1000 * (0.001 / 0.0125) };
    const loose = R(board(stiff), board(heavier));
    glued.slice(6, 17).forEach((value, i) => expect(Math.abs(value - (loose[i + 6] ?? 0))).toBeLessThan(1));
  });
});
