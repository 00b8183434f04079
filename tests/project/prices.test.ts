import { describe, expect, it } from 'vitest';
import { assemblyPrice, candidatePrice } from '../../src/project/prices.ts';
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

describe('the price of a candidate', () => {
  const [now, then, own] = [
    { id: 'now', name: 'Now' },
    { id: 'then', name: 'Then' },
    { id: 'own', name: 'Own' },
  ];
  const lined: LayerEntry[] = [
    board('mine', 20),
    board('mine', 10),
    cavity({ stud: 'timber', arrangement: 'twin', fixing: 'direct' }),
    board('brick', 102.5),
  ];
  const candidates = [
    { ...now, assembly: 'bare' },
    { ...then, assembly: 'lined' },
    { ...own, assembly: 'lined', price_each: 7 },
  ];
  const seal = { ...then, sealed: true } as const;
  const built: Project = {
    ...project,
    assemblies: { bare: { name: 'Bare', layers: [board('brick', 102.5)] }, lined: { name: 'Lined', layers: lined } },
    surfaces: [
      {
        id: 'north',
        name: 'North',
        kind: 'wall',
        width_m: 4,
        height_m: 2,
        assembly: 'bare',
        candidates,
        openings: [
          {
            id: 'gap',
            name: 'Gap',
            kind: 'slit',
            length_mm: 1000,
            width_mm: 5,
            depth_mm: 40,
            candidates: [{ ...seal }],
          },
          { id: 'hole', name: 'Hole', kind: 'hole', diameter_mm: 20, depth_mm: 100, candidates: [{ ...seal }] },
        ],
      },
    ],
  };
  const priceOfCandidate = (id: string) => {
    const found = candidates.find((one) => one.id === id);
    if (!found) throw new Error(`no candidate ${id}`);
    return candidatePrice(built, found, 8);
  };
  it('counts only layers that are not there yet: standing masonry is not bought again', () => {
    expect(priceOfCandidate('now')).toEqual({ materials: 0, labour: null, illustrative: false });
    expect(priceOfCandidate('then').materials).toBeCloseTo(8 * (20 + 10 + 11.5), 9);
    expect(priceOfCandidate('own')).toEqual({ materials: 7, labour: null, illustrative: false });
  });
  it('has an illustrative figure for closing a gap', () => {
    const [slit, hole] = built.surfaces[0]?.openings ?? [];
    const prices = [slit, hole].map((gap) => {
      const candidate = gap?.candidates?.[0];
      return candidate ? candidatePrice(built, candidate, 0.005) : null;
    });
    expect(prices).toEqual([
      { materials: 55, labour: null, illustrative: true },
      { materials: 6, labour: null, illustrative: true },
    ]);
  });
});
