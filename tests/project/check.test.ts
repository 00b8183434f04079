import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkProject } from '../../src/project/check.ts';
import { LARGEST_FILE, readProject } from '../../src/project/readProject.ts';
import document from '../support/exampleDocument.json' with { type: 'json' };
import { repeatable } from '../support/repeatable.ts';

type Step = string | number;

/** The example with one place changed; undefined takes the place out. */
const changed = (path: readonly Step[], value: unknown, within: unknown = document): unknown => {
  const [step, ...rest] = path;
  if (step === undefined) return value;
  if (Array.isArray(within)) {
    const list: unknown[] = [...(within as unknown[])];
    list[Number(step)] = changed(rest, value, list[Number(step)]);
    return list;
  }
  const entries = new Map<string, unknown>(Object.entries(within ?? {}));
  const next = changed(rest, value, entries.get(String(step)));
  if (next === undefined) entries.delete(String(step));
  else entries.set(String(step), next);
  return Object.fromEntries(entries);
};

const wall = ['assemblies', 'wall-a', 'layers'] as const;
const north = ['surfaces', 0] as const;
const opening = (i: number): readonly Step[] => [...north, 'openings', i];
const board = { kind: 'board', material: 'osb', thickness_mm: 18 };
const curve = { bands_Hz: [100, 125, 160], R_dB: [20, 21, 22] };

interface Bad {
  readonly what: string;
  readonly at: readonly Step[];
  readonly value: unknown;
  /** where the fault is said to be, when not at the changed place */
  readonly path: string;
  readonly says: string;
}

const bad = (what: string, at: readonly Step[], value: unknown, path: string, says: string): Bad => ({
  what,
  at,
  value,
  path,
  says,
});

const TABLE: readonly Bad[] = [
  bad('a name left empty', ['name'], '', 'name', 'at least 1 letter'),
  bad(
    'an unknown key',
    ['colour'],
    'red',
    'colour',
    'colour ("red") is not a key that the format knows here. Correct "colour" or take it out.',
  ),
  bad('a mistyped key', [...north, 'heigth_m'], 2.4, 'surfaces[0].heigth_m', 'Did you mean height_m?'),
  bad(
    'a missing key',
    [...north, 'height_m'],
    undefined,
    'surfaces[0].height_m',
    'surfaces[0].height_m is missing. Add "height_m"',
  ),
  bad(
    'a number as text',
    [...north, 'width_m'],
    '5.2',
    'surfaces[0].width_m',
    'is "5.2"; allowed: a number from 0.1 to 200 m. Write the number without quotation marks.',
  ),
  bad(
    'a number out of range',
    [...wall, 0, 'thickness_mm'],
    -1,
    'assemblies.wall-a.layers[0].thickness_mm',
    'is -1; allowed: a number from 0.05 to 3000 mm',
  ),
  bad(
    'a density without sense',
    ['materials', 'my-board', 'density_kg_m3'],
    1e9,
    'materials.my-board.density_kg_m3',
    'a number from 1 to 25000 kg/m³',
  ),
  bad(
    'infinity',
    [...wall, 0, 'thickness_mm'],
    Number.POSITIVE_INFINITY,
    'assemblies.wall-a.layers[0].thickness_mm',
    'Infinity is not a number',
  ),
  bad('not a number', [...north, 'width_m'], Number.NaN, 'surfaces[0].width_m', 'NaN is not a number'),
  bad('a date', ['note'], new Date(0), 'note', 'not a plain object'),
  bad(
    'a typed array',
    [...opening(1), 'measured', 'R_dB'],
    new Float64Array(3),
    'surfaces[0].openings[1].measured.R_dB',
    'not a plain object',
  ),
  bad(
    'an unknown kind of layer',
    [...wall, 0, 'kind'],
    'bord',
    'assemblies.wall-a.layers[0].kind',
    'board, interlayer or cavity. Did you mean board?',
  ),
  bad(
    'an unknown kind of surface',
    [...north, 'kind'],
    'wal',
    'surfaces[0].kind',
    'wall, roof, ceiling or floor. Did you mean wall?',
  ),
  bad(
    'an id with a blank',
    [...north, 'id'],
    'north wall',
    'surfaces[0].id',
    'letters, digits, dot, dash or underscore',
  ),
  bad(
    'a key with a blank',
    ['assemblies', 'wall b'],
    { name: 'B', layers: [board] },
    'assemblies["wall b"]',
    'an id of letters',
  ),
  bad('assemblies as a list', ['assemblies'], [], 'assemblies', 'an object with an id for each entry'),
  bad('materials as a list', ['materials'], [], 'materials', 'an object with an id for each entry'),
  bad(
    'an id that objects carry',
    ['assemblies', 'constructor'],
    { name: 'B', layers: [board] },
    'assemblies.constructor',
    '"constructor" cannot be used as a name',
  ),
  bad('no layers', wall, [], 'assemblies.wall-a.layers', 'at least 1 entry'),
  bad(
    'an assembly without a board',
    wall,
    [{ kind: 'cavity', depth_mm: 100 }],
    'assemblies.wall-a.layers',
    'at least one board',
  ),
  bad(
    'an unknown material',
    [...wall, 0, 'material'],
    'plasterbord-dense',
    'assemblies.wall-a.layers[0].material',
    'Did you mean plasterboard-dense?',
  ),
  bad(
    'wool as a board',
    [...wall, 0, 'material'],
    'mineral-wool-45',
    'assemblies.wall-a.layers[0].material',
    'its place is the filling of a cavity',
  ),
  bad(
    'a board as an interlayer',
    [...wall, 1, 'material'],
    'osb',
    'assemblies.wall-a.layers[1].material',
    'a material of kind viscoelastic',
  ),
  bad(
    'a bond as a board',
    [...wall, 0, 'material'],
    'rigid-adhesive',
    'assemblies.wall-a.layers[0].material',
    'an interlayer between two boards',
  ),
  bad(
    'a compound as a filling',
    [...wall, 3, 'fill', 'material'],
    'damping-compound',
    'assemblies.wall-a.layers[3].fill.material',
    'a material of kind porous or board',
  ),
  bad(
    'a filling thicker than its cavity',
    [...wall, 3, 'fill', 'thickness_mm'],
    101,
    'assemblies.wall-a.layers[3].fill.thickness_mm',
    'at most the depth of the cavity, 100 mm',
  ),
  bad(
    'an interlayer beside a cavity',
    [...wall, 2],
    { kind: 'interlayer', material: 'damping-compound', thickness_mm: 1 },
    'assemblies.wall-a.layers[1].kind',
    'a board directly on each side',
  ),
  bad(
    'an own material called as the bond',
    ['materials', 'rigid-adhesive'],
    document.materials['my-goo'],
    'materials.rigid-adhesive',
    'rename the material',
  ),
  bad(
    'an unknown stud',
    [...wall, 3, 'frame', 'stud'],
    'bamboo',
    'assemblies.wall-a.layers[3].frame.stud',
    'timber, steel or none',
  ),
  bad(
    'an unknown assembly',
    [...north, 'assembly'],
    'wall-c',
    'surfaces[0].assembly',
    'wall-a, wall-b, door-a. Did you mean wall-a?',
  ),
  bad('neither assembly nor curve', [...north, 'assembly'], undefined, 'surfaces[0]', 'Say what North wall is made of'),
  bad(
    'both assembly and curve',
    [...opening(0), 'measured'],
    curve,
    'surfaces[0].openings[0]',
    'exactly one of assembly and measured',
  ),
  bad(
    'a vent made of nothing',
    opening(0),
    { id: 'v', name: 'Vent', kind: 'vent', width_m: 0.1, height_m: 0.1 },
    'surfaces[0].openings[0]',
    'Say what Vent is made of',
  ),
  bad(
    'a slit with an assembly',
    [...opening(2), 'assembly'],
    'door-a',
    'surfaces[0].openings[2].assembly',
    'is not a key that the format knows here',
  ),
  bad(
    'a slit without its width',
    [...opening(2), 'width_mm'],
    undefined,
    'surfaces[0].openings[2].width_mm',
    'is missing',
  ),
  bad(
    'a curve of two quantities',
    [...opening(1), 'measured', 'Dne_dB'],
    [1, 2, 3],
    'surfaces[0].openings[1].measured',
    'exactly one of R_dB and Dne_dB',
  ),
  bad(
    'a curve of no quantity',
    [...opening(1), 'measured', 'R_dB'],
    undefined,
    'surfaces[0].openings[1].measured',
    'Add the figures of the test report',
  ),
  bad(
    'a curve with a figure too few',
    [...opening(1), 'measured', 'R_dB'],
    [1, 2, 3],
    'surfaces[0].openings[1].measured.R_dB',
    'as many figures as there are bands, 21',
  ),
  bad(
    'bands that go back',
    [...opening(1), 'measured'],
    { bands_Hz: [100, 160, 125], R_dB: [1, 2, 3] },
    'surfaces[0].openings[1].measured.bands_Hz[2]',
    'a band above the one before it, 160 Hz',
  ),
  bad(
    'a band that is none',
    [...opening(1), 'measured'],
    { bands_Hz: [100, 140, 160], R_dB: [1, 2, 3] },
    'surfaces[0].openings[1].measured.bands_Hz[1]',
    'the centre of a third-octave band',
  ),
  bad('an id used by two surfaces', ['surfaces', 1, 'id'], 'north', 'surfaces[1].id', 'such as north-2'),
  bad(
    'an id used by an opening and a surface',
    [...opening(3), 'id'],
    'north',
    'surfaces[0].openings[3].id',
    'no other surface or opening',
  ),
  bad(
    'a door wider than its wall',
    [...opening(0), 'width_m'],
    6,
    'surfaces[0].openings[0].width_m',
    'at most that of North wall, 5.2 m',
  ),
  bad('a door placed beyond its wall', [...opening(0), 'x_m'], 4.5, 'surfaces[0].openings[0].x_m', 'at most 4.3 m'),
  bad(
    'openings that leave nothing',
    opening(1),
    { id: 'lab', name: 'Glass', kind: 'window', width_m: 5.2, height_m: 2.4, assembly: 'door-a' },
    'surfaces[0].openings',
    'They take 14.28 m² of it',
  ),
  bad(
    'candidates of one id',
    [...opening(2), 'candidates', 1, 'id'],
    'closed',
    'surfaces[0].openings[2].candidates[1].id',
    'no other candidate',
  ),
  bad(
    'a wall that is sealed',
    [...north, 'candidates', 0],
    { id: 'x', name: 'X', sealed: true },
    'surfaces[0].candidates[0].sealed',
    'A wall cannot be built that way',
  ),
  bad(
    'a slit of an assembly',
    [...opening(2), 'candidates', 0],
    { id: 'x', name: 'X', assembly: 'door-a' },
    'surfaces[0].openings[2].candidates[0].assembly',
    'sealed, or the sizes of the gap',
  ),
  bad(
    'a slit sealed and narrower',
    [...opening(2), 'candidates', 0, 'width_mm'],
    1,
    'surfaces[0].openings[2].candidates[0]',
    'either sealed or other sizes',
  ),
  bad(
    'a slit changed in nothing',
    [...opening(2), 'candidates', 0, 'sealed'],
    undefined,
    'surfaces[0].openings[2].candidates[0]',
    'either sealed or other sizes',
  ),
  bad(
    'a candidate of an unknown assembly',
    [...north, 'candidates', 0, 'assembly'],
    'wall-z',
    'surfaces[0].candidates[0].assembly',
    'an id under "assemblies"',
  ),
  bad(
    'an option for an unknown part',
    ['options', 0, 'swaps', 'nort'],
    'x',
    'options[0].swaps.nort',
    'Did you mean north?',
  ),
  bad(
    'an option for an unknown candidate',
    ['options', 0, 'swaps', 'north'],
    'seperate',
    'options[0].swaps.north',
    'Did you mean separate?',
  ),
  bad('options of one id', ['options', 1], document.options[0], 'options[1].id', 'no other option'),
  bad('a comparison with nothing', ['compare', 0], 'wall-x', 'compare[0]', 'Did you mean wall-a?'),
  bad(
    'a comparison of five',
    ['compare'],
    ['wall-a', 'wall-b', 'wall-a', 'wall-b', 'wall-a'],
    'compare',
    'at most 4 entries',
  ),
  bad('an unknown source', ['source'], 'drumkit', 'source', 'Did you mean drum-kit-hard?'),
];

const refusal = (value: unknown) => {
  const result = checkProject(value);
  if (result.ok) throw new Error('was accepted');
  return result;
};

describe('a project with a fault', () => {
  it.each(TABLE.map((one) => [one.what, one] as const))('is refused: %s', (_, { at, value, path, says }) => {
    const { code, faults } = refusal(changed(at, value));
    expect(code).toBe('bad-document');
    const found = faults.find((fault) => fault.path === path);
    expect(faults.map((fault) => fault.path)).toContain(path);
    expect(found?.sentence).toContain(says);
    expect(found?.sentence).toMatch(/[.?]$/);
    expect(found?.allowed).not.toBe('');
  });

  it('names every fault, up to fifty', () => {
    const faulty = changed([...north, 'width_m'], 0, changed(['surfaces', 1, 'width_m'], 0));
    expect(refusal(faulty).faults.map((fault) => fault.path)).toEqual(['surfaces[0].width_m', 'surfaces[1].width_m']);
    const strange = changed(
      [...wall, 0, 'colour'],
      'grey',
      changed([...north, 'width_m'], 0, { ...document, a: 1, b: [2] }),
    );
    expect(
      refusal(strange)
        .faults.map((fault) => fault.path)
        .sort(),
    ).toEqual(['a', 'b', 'assemblies.wall-a.layers[0].colour', 'surfaces[0].width_m'].sort());
    const keys = Object.fromEntries(Array.from({ length: 80 }, (_, i) => [`extra${i}`, i]));
    expect(refusal({ ...document, ...keys }).faults).toHaveLength(50);
    const surfaces = Array.from({ length: 55 }, (_, i) => ({ ...document.surfaces[1], id: `roof-${i}`, width_m: 0 }));
    expect(refusal({ ...document, surfaces }).faults).toHaveLength(50);
  });

  it('of very many kinds is refused before long', () => {
    const layers = Array.from({ length: 36 }, () => ({ ...board, material: 'osbx-something-else' }));
    const assemblies = Object.fromEntries(
      Array.from({ length: 4000 }, (_, i) => [`wall-${i}`, { name: 'Wall', layers }]),
    );
    expect(refusal({ format: document.format, name: 'Much', assemblies, surfaces: [] }).faults).toHaveLength(50);
  }, 10_000);

  it('that contains itself, or is nested without end, is refused', () => {
    const circle: Record<string, unknown> = { ...document };
    circle['note'] = circle;
    expect(refusal(circle).faults[0]?.sentence).toContain('it contains itself');
    const deep = Array.from({ length: 5000 }).reduce<unknown>((inner) => [inner], 0);
    expect(refusal({ ...document, note: deep }).faults[0]?.sentence).toContain('nested more than 60 levels');
  });

  it('never makes the check itself fail', () => {
    const values = fc.oneof(
      fc.anything({ withBigInt: true, withDate: true, withTypedArray: true }),
      fc.json().map((text): unknown => JSON.parse(text)),
    );
    const places = fc.constantFrom(...TABLE.map((one) => one.at));
    fc.assert(
      fc.property(places, values, (place, value) => {
        expect(typeof checkProject(changed(place, value)).ok).toBe('boolean');
      }),
      repeatable(5, 300),
    );
  });
});

describe('a project without a fault', () => {
  it('is accepted, with what the format assumes filled in', () => {
    const result = checkProject(changed(['materials', 'my-board', 'family'], undefined));
    expect(result.ok && result.project.materials?.['my-board']).toMatchObject({ family: 'other' });
  });

  it('may use an absorber in front of a board, and a foam board as filling', () => {
    const layers = [{ kind: 'cavity', depth_mm: 50, fill: { material: 'pir', thickness_mm: 50 } }, board];
    expect(checkProject(changed(wall, layers)).ok).toBe(true);
  });

  it('may be empty but for its name', () => {
    expect(checkProject({ format: 'lullwright/project@1', name: 'New', assemblies: {}, surfaces: [] }).ok).toBe(true);
  });
});

describe('another kind of file', () => {
  it.each([
    [null],
    [[]],
    ['text'],
    [3],
    [undefined],
    [{}],
    [{ format: 'other@1' }],
    [{ format: 'lullwright/project@0' }],
    [{ format: 1 }],
  ])('%j is not a project', (value) => {
    expect(refusal(value).code).toBe('not-a-project');
  });

  it('of a newer Lullwright is refused with a way out', () => {
    const { code, faults } = refusal({ ...document, format: 'lullwright/project@2', anything: 1 });
    expect(code).toBe('newer-document');
    expect(faults[0]?.sentence).toContain('saved by a newer Lullwright');
  });

  it('cut off, empty, or too large is said to be so', () => {
    const text = JSON.stringify(document);
    const reading = (given: string) => {
      const result = readProject(given);
      return result.ok ? 'accepted' : `${result.code}: ${result.faults[0]?.sentence ?? ''}`;
    };
    expect(reading(text)).toBe('accepted');
    expect(reading(`\uFEFF${text}`)).toBe('accepted');
    expect(reading(text.slice(0, -20))).toContain(
      'not-a-project: This is not a Lullwright project: it is not complete JSON',
    );
    expect(reading('')).toContain('it is empty');
    expect(reading(' '.repeat(LARGEST_FILE + 1))).toContain(
      'too-large: This file has 20.1 MB; a project has at most 20 MB',
    );
  });
});
