import { describe, expect, it } from 'vitest';
import { fittedPanel } from '../../../../src/engine/openings/index.ts';
import type { Fittings, Leaf, Seals } from '../../../../src/engine/openings/index.ts';
import { THIRD_OCTAVES } from '../../../../src/engine/quantities/index.ts';
import { pieceResults } from '../../../../src/engine/shell/pieceResult.ts';
import { massLaw } from '../../../../src/engine/transmission/index.ts';

const size = { width: 0.9, height: 2 };
const area = size.width * size.height;
const leaf: Leaf = { R: massLaw(30, THIRD_OCTAVES).values.map((R) => Math.min(R, 33)), surfaceMass: 30 };
const seals: Seals = { perimeter: 'compression', threshold: 'none', perimeterGap: 0.003, thresholdGap: 0.006 };
const single: Fittings = { seals, keyhole: true, letterPlate: 'none', second: null, items: [] };
const second = { assembly: { name: 'Second', layers: [] }, gap: 0.15, lined: true, seals };
const energy = THIRD_OCTAVES.map((band) => (band >= 50 && band <= 5000 ? 1 : 0));
const of = (fittings: Fittings) => {
  const panel = fittedPanel(leaf, fittings, size, THIRD_OCTAVES, () => leaf);
  return { panel, pieces: pieceResults(panel.pieces, panel.openArea, area, energy) };
};

describe('pieces of a door', () => {
  it('share out what it lets through, and the threshold without a seal lets out more than the leaf', () => {
    const { pieces } = of(single);
    expect(pieces.reduce((sum, piece) => sum + piece.share, 0)).toBeCloseTo(1, 9);
    const [through, , threshold] = pieces;
    expect(threshold?.name).toBe('Joint at the threshold');
    expect(threshold?.share ?? 0).toBeGreaterThan(through?.share ?? 1);
  });

  it('taken away leave what the others let through', () => {
    const { panel } = of(single);
    for (const { openArea, without } of panel.pieces)
      without.forEach((left, b) => expect(left + (openArea[b] ?? 0)).toBeCloseTo(panel.openArea[b] ?? 0, 12));
  });

  it('taken away never make a door worse, of one leaf or of two', () => {
    for (const fittings of [single, { ...single, second }]) {
      const { panel, pieces } = of(fittings);
      expect(pieces.length).toBeGreaterThan(3);
      for (const { without } of panel.pieces)
        without.forEach((left, b) => expect(left).toBeLessThanOrEqual((panel.openArea[b] ?? 0) * (1 + 1e-9)));
      for (const { Rw, without } of pieces) expect(without.Rw ?? 99).toBeGreaterThanOrEqual(Rw ?? 0);
    }
  });

  it('are shared out leaf by leaf where there are two', () => {
    const { pieces } = of({ ...single, second });
    for (const one of ['first', 'second'] as const) {
      const mine = pieces.filter((piece) => piece.leaf === one);
      expect(mine.reduce((sum, piece) => sum + piece.share, 0)).toBeCloseTo(1, 9);
    }
  });

  it('leave no rating where a door has nothing but its leaf and that is taken away', () => {
    const [alone] = of({ ...single, seals: null, keyhole: false }).pieces;
    expect(alone).toMatchObject({ share: 1, without: { Rw: null } });
  });
});
