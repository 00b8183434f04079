import { describe, expect, it } from 'vitest';
import { checkProject } from '../../src/project/check.ts';
import type { Project } from '../../src/project/schema.ts';
import { toAssembly, toBuild } from '../../src/project/toEngine.ts';
import document from '../support/exampleDocument.json' with { type: 'json' };

const accepted = (value: unknown): Project => {
  const result = checkProject(value);
  if (!result.ok) throw new Error(result.faults.map((fault) => fault.sentence).join('\n'));
  return result.project;
};
const project = accepted(document);
const partOf = (build: ReturnType<typeof toBuild>, id: string) => {
  const part = build.parts.find((it) => it.id === id);
  if (!part) throw new Error(`no part ${id}`);
  return part;
};
const entry = (id: string) => {
  const assembly = project.assemblies[id];
  if (!assembly) throw new Error(`no assembly ${id}`);
  return toAssembly(assembly, project);
};

describe('an assembly for the engine', () => {
  it('is in SI, with the project’s own materials first and frames filled in', () => {
    const { name, layers } = entry('wall-b');
    expect(name).toBe('My board on separate frames');
    expect(layers[0]).toEqual({
      kind: 'board',
      thickness: 0.0125,
      material: {
        kind: 'board',
        family: 'gypsum',
        name: 'My board',
        density: 850,
        youngsModulus: 2.5e9,
        poissonRatio: 0.3,
        lossFactor: 0.02,
      },
    });
    expect(layers[1]).toMatchObject({
      kind: 'interlayer',
      thickness: 0.001,
      material: { shearModulus: 5e5, lossFactor: 0.8 },
    });
    expect(layers[3]).toEqual({
      kind: 'cavity',
      depth: 0.2,
      fill: { thickness: 0.15, material: { kind: 'porous', name: 'My wool', density: 20, airflowResistivity: 8000 } },
      frame: { stud: 'timber', arrangement: 'twin', fixing: 'direct', spacing: 0.6, barSpacing: 0.6, gauge: 0.0005 },
    });
  });

  it('bonds with rigid adhesive', () => {
    expect(entry('door-a').layers[1]).toEqual({ kind: 'interlayer', material: 'rigid', thickness: 0 });
  });

  it('takes a material of the project in place of a library one of the same id', () => {
    const osb = {
      kind: 'board',
      name: 'Heavy OSB',
      density_kg_m3: 900,
      youngs_GPa: 4,
      poisson: 0.3,
      loss_factor: 0.02,
    };
    const own = accepted({ ...document, materials: { ...document.materials, osb } });
    const assembly = own.assemblies['wall-a'];
    expect(assembly && toAssembly(assembly, own).layers[4]).toMatchObject({ material: { density: 900 } });
  });
});

describe('a build for the engine', () => {
  const build = toBuild(project);

  it('takes the openings off their surface, gaps apart', () => {
    expect(build.parts.map((part) => part.id)).toEqual(['north', 'door', 'lab', 'gap', 'hole', 'roof']);
    expect(partOf(build, 'north').area).toBeCloseTo(5.2 * 2.4 - 0.9 * 2 - 1, 10);
    expect(partOf(build, 'door')).toMatchObject({ surface: 'north', width: 0.9, height: 2, kind: 'door' });
    expect(partOf(build, 'gap').area).toBeCloseTo(0.9 * 0.003, 12);
    expect(partOf(build, 'hole').area).toBeCloseTo((Math.PI / 4) * 0.02 ** 2, 12);
  });

  it('has curves, gaps and holes as they are', () => {
    expect(partOf(build, 'lab').element).toMatchObject({
      kind: 'measured',
      quantity: 'R',
      curve: { bands: document.surfaces[0]?.openings?.[1]?.measured?.bands_Hz },
    });
    expect(partOf(build, 'gap').element).toEqual({
      kind: 'slit',
      length: 0.9,
      width: 0.003,
      depth: 0.044,
      edge: false,
    });
    expect(partOf(build, 'hole').element).toEqual({ kind: 'hole', diameter: 0.02, depth: 0.12 });
  });

  it('has candidates with their own sizes and the part’s others', () => {
    expect(partOf(build, 'gap').candidates.map((it) => it.element)).toEqual([
      { kind: 'sealed' },
      { kind: 'slit', length: 0.9, width: 0.001, depth: 0.044, edge: false },
    ]);
    expect(build.options).toEqual([
      { id: 'both', name: 'Seal and separate', swaps: { north: 'separate', gap: 'closed' } },
    ]);
  });

  it('weighs by the source, and evenly without one', () => {
    expect(build.source.bands).toHaveLength(27);
    expect(new Set(build.source.values).size).toBeGreaterThan(3);
    const { source: _, ...silent } = document;
    expect(new Set(toBuild(accepted(silent)).source.values)).toEqual(new Set([0]));
  });
});

describe('the price of a candidate', () => {
  const priceWith = (candidate: object, assembly: object = {}, standing = 'wall-a') => {
    const north = {
      ...document.surfaces[0],
      assembly: standing,
      candidates: [{ id: 'it', name: 'It', assembly: 'wall-a', ...candidate }],
    };
    const wall = { ...document.assemblies['wall-a'], ...assembly };
    const changed = {
      ...document,
      options: [],
      assemblies: { ...document.assemblies, 'wall-a': wall },
      surfaces: [north, document.surfaces[1]],
    };
    return partOf(toBuild(accepted(changed)), 'north').candidates[0]?.price;
  };
  const area = 5.2 * 2.4 - 0.9 * 2 - 1;

  it('is the candidate’s own before its make-up’s before the library’s', () => {
    expect(priceWith({ price_per_m2: 10, price_each: 5, labour_each: 7 }, { price_per_m2: 20 })).toEqual({
      materials: 10 * area + 5,
      labour: 7,
      illustrative: false,
    });
    expect(priceWith({}, { price_per_m2: 20, labour_per_m2: 3 })).toEqual({
      materials: 20 * area,
      labour: 3 * area,
      illustrative: false,
    });
    const fromLibrary = priceWith({}, {}, 'wall-b');
    expect(fromLibrary).toMatchObject({ labour: null, illustrative: true });
    // two boards of 15 mm at 660, compound of 0.5 mm, wool of 75 mm and OSB of 18 mm: tens of pounds per m²
    expect((fromLibrary?.materials ?? 0) / area).toBeGreaterThan(2 * 0.015 * 660);
    expect((fromLibrary?.materials ?? 0) / area).toBeLessThan(100);
  });

  it('is unknown where a material of one’s own has none', () => {
    expect(priceWith({ assembly: 'wall-b' })).toEqual({ materials: null, labour: null, illustrative: true });
  });
});
