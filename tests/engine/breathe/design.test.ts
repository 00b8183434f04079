import { describe, expect, it } from 'vitest';
import { designGrid } from '../../../src/engine/designGrid.ts';
import { designVent } from '../../../src/engine/designVent.ts';
import type { DesignWish } from '../../../src/engine/designVent.ts';
import { boxFaults, solveBoxCoarse, ventBoxGeometry, waveBoxSound } from '../../../src/engine/openings/index.ts';
import type { VentBox } from '../../../src/engine/openings/index.ts';
import { THIRD_OCTAVES } from '../../../src/engine/quantities/index.ts';
import { massLaw } from '../../../src/engine/transmission/index.ts';

const coarse = (box: VentBox) => waveBoxSound(box, solveBoxCoarse);
const ports = { boxSound: coarse, reduction: () => [] };
const wish: DesignWish = {
  direction: 'supply',
  wallDepth: 0.3,
  airflowResistivity: 10_000,
  casing: { assembly: null, surfaceMass: 25 },
  flow: 0.024,
  mostLoss: 30,
  mostCost: 1,
  wallR: massLaw(25, THIRD_OCTAVES).values,
  wallArea: 12,
  count: 1,
};

describe('the smallest box for a vent', () => {
  it('is sought among boxes that can be built, the smallest first', () => {
    const grid = designGrid(10_000);
    expect(grid.length).toBeGreaterThan(100);
    expect(grid.filter(({ box }) => boxFaults(ventBoxGeometry(box)).length > 0)).toEqual([]);
    grid.forEach(({ volume }, i) => expect(volume).toBeGreaterThanOrEqual(grid[i - 1]?.volume ?? 0));
  });

  it('carries the air quietly and costs the wall no more than asked', () => {
    const { design } = designVent(wish, ports, coarse);
    expect(design?.cost).toBeLessThanOrEqual(1);
    expect(design?.loss).toBeLessThanOrEqual(30);
    expect(design?.speed).toBeLessThanOrEqual(2.5);
  });

  it('is larger for more air', () => {
    const small = designVent(wish, ports, coarse).design;
    const large = designVent({ ...wish, flow: 0.06 }, ports, coarse).design;
    expect(large?.candidate.diameter).toBeGreaterThan(small?.candidate.diameter ?? 1);
    expect(large?.candidate.volume).toBeGreaterThan(small?.candidate.volume ?? 1);
  });

  it('is none for air that no duct of the grid carries quietly', () => {
    const { design, nearest, tried } = designVent({ ...wish, flow: 0.5 }, ports, coarse);
    expect([design, nearest, tried.airy]).toEqual([null, null, 0]);
  });

  it('is asked for with a flow, a pressure and a cost', () => {
    expect(() => designVent({ ...wish, flow: 0 }, ports, coarse)).toThrow('flow must be > 0 m³/s, got 0');
    expect(() => designVent({ ...wish, mostCost: -1 }, ports, coarse)).toThrow('cost must be > 0 dB, got -1');
  });
});
