import { readFileSync, readdirSync } from 'node:fs';
import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { materialSchema } from '../../src/project/schema.ts';

const hatches = [
  'plasterboard',
  'timber',
  'sheet-wood',
  'masonry',
  'concrete',
  'glass',
  'metal',
  'wool',
  'foam',
  'membrane',
  'interlayer',
  'plaster',
  'air',
] as const;
const provenance = v.strictObject({
  how: v.picklist(['published', 'computed', 'memory', 'common practice', 'engineering judgement']),
  source: v.pipe(v.string(), v.minLength(3), v.maxLength(300)),
});
const libraryKeys = v.strictObject({
  thicknesses_mm: v.pipe(v.array(v.pipe(v.number(), v.minValue(0.05), v.maxValue(1000))), v.minLength(1)),
  hatch: v.picklist(hatches),
  group: v.pipe(v.string(), v.minLength(3)),
  sources: v.record(v.string(), provenance),
});
const librarySchema = v.strictObject({
  about: v.string(),
  materials: v.record(v.string(), v.record(v.string(), v.unknown())),
});

const folder = new URL('../../assets/materials/', import.meta.url);
const reference = new URL('../reference/materials/', import.meta.url);
const readJson = (file: URL): unknown => JSON.parse(readFileSync(file, 'utf8'));
const files = readdirSync(folder).filter((name) => name.endsWith('.json'));

const entries = files.flatMap((file) =>
  Object.entries(v.parse(librarySchema, readJson(new URL(file, folder))).materials).map(([id, entry]) => {
    const { thicknesses_mm, hatch, group, sources, ...document } = entry;
    return {
      id,
      file,
      document: v.safeParse(materialSchema, document),
      library: v.safeParse(libraryKeys, { thicknesses_mm, hatch, group, sources }),
      numbers: Object.keys(entry).filter((key) => typeof entry[key] === 'number' || key === 'thicknesses_mm'),
      sourced: typeof sources === 'object' && sources !== null ? Object.keys(sources) : [],
    };
  }),
);

const boardOf = (id: string) => {
  const found = entries.find((entry) => entry.id === id)?.document;
  if (found?.success !== true || found.output.kind !== 'board') throw new Error(`${id} is not a board of the library`);
  return found.output;
};
/** thickness × critical frequency of a thin plate, c0²/(2π)·√(12ρ(1−ν²)/E), m·Hz */
const thicknessTimesCriticalFrequency = (id: string): number => {
  const { density_kg_m3: density, youngs_GPa: stiffness, poisson } = boardOf(id);
  return (343.2 ** 2 / (2 * Math.PI)) * Math.sqrt((12 * density * (1 - poisson ** 2)) / (stiffness * 1e9));
};

const criticalRows = v.object({
  rows: v.array(v.object({ row: v.string(), h_fc_m_Hz: v.number(), materials: v.array(v.string()) })),
});
const massRows = v.object({
  tolerance: v.number(),
  rows: v.array(
    v.object({
      material: v.string(),
      thickness_mm: v.number(),
      least_kg_m2: v.number(),
      most_kg_m2: v.number(),
    }),
  ),
});
const bibliography = v.parse(
  v.object({
    sources: v.record(
      v.string(),
      v.object({
        cite: v.string(),
        title: v.string(),
        authors: v.string(),
        year: v.number(),
        edition: v.string(),
        taken: v.string(),
      }),
    ),
  }),
  readJson(new URL('../../assets/sources/sources.json', import.meta.url)),
);
const cites = Object.values(bibliography.sources).map((source) => source.cite);

describe('the material library', () => {
  it('holds at least 75 materials in nine files, each id once', () => {
    expect(files).toHaveLength(9);
    expect(entries.length).toBeGreaterThanOrEqual(75);
    expect(new Set(entries.map((entry) => entry.id)).size).toBe(entries.length);
  });

  it('holds the materials that documents refer to by name', () => {
    const ids = entries.map((entry) => entry.id);
    expect(ids).toEqual(expect.arrayContaining(['plasterboard-dense', 'damping-compound', 'mineral-wool-45', 'osb']));
    expect(ids).not.toContain('rigid-adhesive');
  });

  it.each(entries)('$file: $id is valid in a document once the library-only keys are taken off', (entry) => {
    expect(entry.document.issues?.map((issue) => `${v.getDotPath(issue) ?? ''} ${issue.message}`)).toBeUndefined();
    expect(entry.library.issues?.map((issue) => `${v.getDotPath(issue) ?? ''} ${issue.message}`)).toBeUndefined();
    expect(entry.id).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
  });

  it.each(entries)('$file: every number of $id has a source, and no source is idle', (entry) => {
    expect([...entry.sourced].sort()).toEqual([...entry.numbers].sort());
  });

  it('cites as published only what the bibliography lists', () => {
    const unlisted = entries.flatMap((entry) =>
      entry.library.success
        ? Object.values(entry.library.output.sources)
            .filter((source) => source.how === 'published' && !cites.some((cite) => source.source.startsWith(cite)))
            .map((source) => `${entry.id}: ${source.source}`)
        : [],
    );
    expect(unlisted).toEqual([]);
  });
});

describe('against outside values', () => {
  const hopkins = v.parse(criticalRows, readJson(new URL('hopkinsA2.json', reference)));
  const long = v.parse(criticalRows, readJson(new URL('long91.json', reference)));
  const masses = v.parse(massRows, readJson(new URL('surfaceMasses.json', reference)));
  const critical = [...hopkins.rows, ...long.rows].flatMap((row) => row.materials.map((id) => ({ ...row, id })));

  it('compares with at least 20 printed rows and 50 usual masses', () => {
    expect(hopkins.rows.length).toBeGreaterThanOrEqual(20);
    expect(masses.rows.length).toBeGreaterThanOrEqual(50);
  });

  it.each(critical)('critical frequency of $id is within 10 % of "$row"', ({ id, h_fc_m_Hz }) => {
    const ratio = thicknessTimesCriticalFrequency(id) / h_fc_m_Hz;
    expect(ratio).toBeGreaterThan(0.9);
    expect(ratio).toBeLessThan(1.1);
  });

  it.each(masses.rows)('$thickness_mm mm of $material weighs what it usually weighs', (row) => {
    const mass = (boardOf(row.material).density_kg_m3 * row.thickness_mm) / 1000;
    expect(mass).toBeGreaterThanOrEqual(row.least_kg_m2 * (1 - masses.tolerance));
    expect(mass).toBeLessThanOrEqual(row.most_kg_m2 * (1 + masses.tolerance));
  });
});
