import { describe, expect, it } from 'vitest';
import { assemblyPrice } from '../../src/project/prices.ts';
import { frameRows } from '../../src/project/frameRows.ts';
import type { CavityLayerEntry, LayerEntry, Project } from '../../src/project/schema.ts';

const project: Project = {
  format: 'lullwright/project@1',
  name: 'Prices',
  materials: {
    mine: {
      kind: 'board',
      family: 'wood',
      name: 'Mine',
      density_kg_m3: 600,
      youngs_GPa: 3,
      poisson: 0.3,
      loss_factor: 0.01,
      price_per_m3: 1000,
    },
  },
  assemblies: {},
  surfaces: [],
};
const board = (material: string, thickness_mm: number): LayerEntry => ({ kind: 'board', material, thickness_mm });
const cavity = (frame?: CavityLayerEntry['frame']): LayerEntry => ({
  kind: 'cavity',
  depth_mm: 100,
  ...(frame ? { frame } : {}),
});
const priceOf = (layers: readonly LayerEntry[]) => assemblyPrice(project, { name: 'A', layers: [...layers] });
const wall = (frame?: CavityLayerEntry['frame']) => [board('mine', 10), cavity(frame), board('mine', 10)];

describe('the price of a make-up', () => {
  it('adds up its layers; from one’s own prices alone it is not illustrative', () => {
    expect(priceOf(wall())).toEqual({ price: 20, illustrative: false });
  });
  it('counts studs by the row, bars and clips once, and says that they are illustrative', () => {
    const one = priceOf(wall({ stud: 'timber', arrangement: 'common', fixing: 'direct' }));
    const staggered = priceOf(wall({ stud: 'timber', arrangement: 'staggered', fixing: 'direct' }));
    const twin = priceOf(wall({ stud: 'timber', arrangement: 'twin', fixing: 'direct' }));
    const bars = priceOf(wall({ stud: 'timber', arrangement: 'common', fixing: 'resilient-bar' }));
    const clips = priceOf(wall({ stud: 'none', arrangement: 'common', fixing: 'isolating-clip' }));
    expect([one.price, staggered.price, twin.price, bars.price, clips.price]).toEqual([31.5, 31.5, 43, 36, 41]);
    expect(one.illustrative).toBe(true);
  });
  it('needs no studs for a leaf of masonry, which stands by itself', () => {
    const frame = { stud: 'timber', arrangement: 'twin', fixing: 'direct' } as const;
    const lining = [board('mine', 10), cavity(frame), board('brick', 102.5)];
    expect(frameRows(project, lining, 1)).toEqual({ room: true, outside: false });
    expect(frameRows(project, [...lining].reverse(), 1)).toEqual({ room: false, outside: true });
    expect(frameRows(project, wall(frame), 1)).toEqual({ room: true, outside: true });
    expect(frameRows(project, wall(), 1)).toBeNull();
    const bare = priceOf([board('mine', 10), cavity(), board('brick', 102.5)]);
    expect((priceOf(lining).price ?? 0) - (bare.price ?? 0)).toBeCloseTo(11.5, 9);
  });
  it('is unknown where a material of one’s own has no price', () => {
    const { mine } = project.materials ?? {};
    if (!mine) throw new Error('the material is there');
    const { price_per_m3: _, ...unpriced } = mine;
    const without = { ...project, materials: { mine: unpriced } };
    expect(assemblyPrice(without, { name: 'A', layers: wall() }).price).toBeNull();
  });
});
