import { describe, expect, it } from 'vitest';
import type { Assembly } from '../../../src/engine/assembly/index.ts';
import { assemblyNotes, remedied, shellNotes } from '../../../src/engine/plan/index.ts';
import type { Note, NoteCode } from '../../../src/engine/quantities/index.ts';
import { THIRD_OCTAVES } from '../../../src/engine/quantities/index.ts';
import type { Part } from '../../../src/engine/shell/index.ts';
import { evaluateShell, partTransmission } from '../../../src/engine/shell/index.ts';
import { build, curve, level, part, shellOf } from '../shell/builds.ts';
import {
  assembly,
  board,
  brick,
  dense,
  filled,
  fleece,
  foam,
  gap,
  glass,
  remembering,
  studs,
  wool,
} from './assemblies.ts';

const predict = remembering();
const notes = (one: Assembly): Note[] => assemblyNotes(one, predict);
const noteOf = (one: Assembly, code: NoteCode): Note => {
  const found = notes(one).find((note) => note.code === code);
  if (!found) throw new Error(`no note ${code}`);
  return found;
};
const figure = (note: Note, term: string): number => {
  const found = note.figures.find((one) => one.term === term);
  if (!found) throw new Error(`${note.code} has no figure "${term}"`);
  return found.value;
};
const codes = (one: Assembly): NoteCode[] => notes(one).map((note) => note.code);
const R = (one: Assembly, band: number): number => predict(one).R[THIRD_OCTAVES.indexOf(band)] ?? Number.NaN;

describe('third leaf (four boards of 8.4 kg/m² with gaps of 90, 25, 90 mm)', () => {
  const quadruple = assembly(
    board(),
    gap(0.09, filled(0.09)),
    board(),
    gap(0.025),
    board(),
    gap(0.09, filled(0.09)),
    board(),
  );
  const note = noteOf(quadruple, 'third-leaf');
  it('resonates at 64, 97 and 199 Hz; as two leaves at 45 Hz (closed form of the chain, within 1 Hz)', () => {
    const now = note.figures.filter(({ term }) => term === 'resonance now').map(({ value }) => value);
    expect(now).toHaveLength(3);
    [64, 97, 199].forEach((expected, i) => {
      expect(Math.abs((now[i] ?? 0) - expected)).toBeLessThan(1);
    });
    expect(Math.abs(figure(note, 'resonance of two leaves') - 45)).toBeLessThan(1);
  });
  it('is a mistake, and its figures are what the remedy, once built, is predicted to gain', () => {
    expect(note.severity).toBe('mistake');
    if (!note.remedy) throw new Error('no remedy');
    const built = remedied(quadruple, note.remedy);
    expect(built.layers.map(({ kind }) => kind)).toEqual([
      'board',
      'board',
      'cavity',
      'cavity',
      'cavity',
      'board',
      'board',
    ]);
    for (const band of [63, 100, 125])
      expect(figure(note, `gain of two leaves at ${band} Hz`)).toBeCloseTo(R(built, band) - R(quadruple, band), 9);
    expect(figure(note, 'gain of two leaves at 63 Hz')).toBeGreaterThan(6);
    const gains = [63, 100, 125].map((band) => figure(note, `gain of two leaves at ${band} Hz`));
    expect(note.sentence).toContain(`cost you ${Math.round(Math.max(...gains))} dB at `);
  });
  it('a frame that filled only its own gap stands free once the gaps are one', () => {
    const framed = assembly(board(), gap(0.09, { frame: studs }), board(), gap(0.05), board(0.1025, brick));
    const { remedy } = noteOf(framed, 'third-leaf');
    if (!remedy) throw new Error('no remedy');
    const built = remedied(framed, remedy);
    const [frame] = built.layers.flatMap((layer) => (layer.kind === 'cavity' && layer.frame ? [layer.frame] : []));
    expect(frame?.arrangement).toBe('twin');
    expect(built.layers.at(-1)).toEqual(board(0.1025, brick));
  });
  it('linings on both faces of a wall go to one face; the wall is not turned round', () => {
    const lined = assembly(board(), gap(0.025), board(0.1025, brick), gap(0.025), board());
    const { remedy } = noteOf(lined, 'third-leaf');
    if (!remedy) throw new Error('no remedy');
    expect(
      remedied(lined, remedy).layers.map((layer) => (layer.kind === 'board' ? layer.material.name : layer.kind)),
    ).toEqual(['Plasterboard', 'Plasterboard', 'cavity', 'cavity', 'Brick']);
  });
  it('two leaves raise no such note', () => {
    expect(codes(assembly(board(), gap(0.1), board()))).not.toContain('third-leaf');
  });
});

describe('thin lining (25 mm and one 12.5 mm board on a brick wall)', () => {
  const lined = assembly(board(), gap(0.025, filled(0.025)), board(0.1025, brick));
  const note = noteOf(lined, 'thin-lining');
  it('resonates between 111 and 134 Hz (mass-air-mass rule, isothermal and adiabatic)', () => {
    expect(figure(note, 'resonance of the lining')).toBeGreaterThan(111);
    expect(figure(note, 'resonance of the lining')).toBeLessThan(134.5);
  });
  it('is worse than the bare wall around it, as a comparison of the two predictions shows', () => {
    expect(note.severity).toBe('mistake');
    const bare = assembly(board(0.1025, brick));
    const from = figure(note, 'worse than without it from');
    expect(R(lined, from)).toBeLessThan(R(bare, from));
    expect(from).toBeGreaterThanOrEqual(63);
    expect(figure(note, 'worse than without it to')).toBeLessThanOrEqual(250);
  });
  it('a lining 100 mm off the wall raises no such note', () => {
    expect(codes(assembly(board(), gap(0.1, filled(0.1)), board(0.1025, brick)))).not.toContain('thin-lining');
  });
  it('on both faces each lining is told, with what the wall loses against the one without it', () => {
    const both = assembly(board(), gap(0.013), board(0.1025, brick), gap(0.013), board());
    const told = notes(both).filter(({ code }) => code === 'thin-lining');
    expect(told.map(({ about }) => about.layers)).toEqual([
      [0, 1],
      [4, 3],
    ]);
    const one = assembly(board(0.1025, brick), gap(0.013), board());
    const [first] = told;
    if (!first) throw new Error('no note');
    expect(first.severity).toBe('mistake');
    const from = figure(first, 'worse than without it from');
    expect(R(both, from)).toBeLessThan(R(one, from));
    expect(first.sentence).toContain('worse than without it');
  });
});

describe('resonance in the music', () => {
  it('4/16/4 glazing resonates at 212 Hz (rule 60·√(…), 3 %) and that is a mistake', () => {
    const note = noteOf(assembly(board(0.004, glass), gap(0.016), board(0.004, glass)), 'resonance-in-music');
    expect(Math.abs(figure(note, 'resonance of the two leaves') / 212 - 1)).toBeLessThan(0.03);
    expect(note.severity).toBe('mistake');
  });
  it('the depth it asks for moves the resonance to 45 Hz, and so does the mass', () => {
    const wall = assembly(board(), gap(0.09, filled(0.09)), board());
    const note = noteOf(wall, 'resonance-in-music');
    const deep = assembly(board(), gap(figure(note, 'gap needed for 45 Hz') / 1000), board());
    const times = figure(note, 'mass needed instead, times the present');
    const heavy = assembly(board(0.0125 * times), gap(0.09), board(0.0125 * times));
    expect(predict(deep).resonances[0]).toBeCloseTo(45, 6);
    expect(predict(heavy).resonances[0]).toBeCloseTo(45, 6);
    expect(note.remedy?.kind).toBe('deepen');
  });
  it('leaves that would have to be many times heavier are not asked for', () => {
    const narrow = noteOf(assembly(board(), gap(0.02), board()), 'resonance-in-music');
    expect(narrow.sentence).not.toContain('times as heavy');
    const wide = noteOf(assembly(board(0.03), gap(0.1), board(0.03)), 'resonance-in-music');
    expect(wide.sentence).toContain('times as heavy');
  });
  it('two heavy leaves 200 mm apart raise no such note', () => {
    const wide = assembly(board(0.03), gap(0.25, filled(0.2)), board(0.03));
    expect(codes(wide)).not.toContain('resonance-in-music');
  });
});

describe('bars and clips', () => {
  const barred = (depth: number, more = {}) =>
    assembly(board(), board(), gap(depth, { frame: { ...studs, fixing: 'resilient-bar' }, ...more }), board(), board());
  it('bars that work carry the warning of what a screw through them costs', () => {
    const wall = barred(0.106, filled(0.1));
    const note = noteOf(wall, 'short-circuited-bars');
    const direct = assembly(board(), board(), gap(0.106, { frame: studs, ...filled(0.1) }), board(), board());
    expect(note.severity).toBe('hint');
    expect(figure(note, 'Rw with bars that work')).toBe(predict(wall).ratings.Rw);
    expect(figure(note, 'Rw fixed directly')).toBe(predict(direct).ratings.Rw);
    expect(figure(note, 'loss in Rw')).toBeGreaterThanOrEqual(3);
  });
  it('bars in a gap shallower than they are high, or behind a stiff fill, are a mistake', () => {
    const squashed = assembly(
      board(),
      gap(0.01, { frame: { ...studs, stud: 'none', fixing: 'resilient-bar' } }),
      board(0.1, brick),
    );
    expect(noteOf(squashed, 'short-circuited-bars').sentence).toContain('squashed flat');
    const stuffed = barred(0.106, { fill: { material: foam, thickness: 0.1 } });
    expect(noteOf(stuffed, 'short-circuited-bars').severity).toBe('mistake');
  });
  it('a direct frame raises no such note', () => {
    expect(codes(assembly(board(), gap(0.09, { frame: studs }), board()))).not.toContain('short-circuited-bars');
  });
});

describe('fill', () => {
  it('an empty gap between free leaves is a mistake; the figures are those of the filled part', () => {
    const free = { frame: { ...studs, arrangement: 'twin' } } as const;
    const empty = assembly(board(), board(), gap(0.15, free), board(), board());
    const note = noteOf(empty, 'cavity-without-absorber');
    expect(note.severity).toBe('mistake');
    expect(note.sentence).not.toContain('two doors');
    if (!note.remedy) throw new Error('no remedy');
    const built = remedied(empty, note.remedy);
    expect(figure(note, 'gain of wool at 125 Hz')).toBeCloseTo(R(built, 125) - R(empty, 125), 9);
  });
  it('a gap without a frame, as between two doors, is a hint that tells what can be done there', () => {
    const lobby = assembly(board(0.044), gap(0.5), board(0.044));
    const note = noteOf(lobby, 'cavity-without-absorber');
    expect(note.severity).toBe('hint');
    expect(note.sentence).toContain('two doors or panes');
    const lining = assembly(board(), gap(0.1), board(0.215, brick));
    expect(noteOf(lining, 'cavity-without-absorber').sentence).not.toContain('two doors');
  });
  it('wool takes after the wool of another gap', () => {
    const two = assembly(board(), gap(0.09), board(), gap(0.09, filled(0.09)), board());
    const built = remedied(two, { kind: 'fill-cavity', label: '', cavity: 1 });
    expect(built.layers[1]).toEqual(gap(0.09, { fill: { material: wool, thickness: 0.09 } }));
  });
  it('closed-cell foam is told from wool, and panes are left alone', () => {
    const foamed = assembly(board(), gap(0.09, { fill: { material: foam, thickness: 0.09 } }), board());
    expect(noteOf(foamed, 'closed-cell-fill').remedy).toEqual({
      kind: 'fill-cavity',
      label: 'wool instead of foam',
      cavity: 1,
    });
    expect(codes(foamed)).not.toContain('cavity-without-absorber');
    expect(codes(assembly(board(0.004, glass), gap(0.05), board(0.006, glass)))).not.toContain(
      'cavity-without-absorber',
    );
  });
});

describe('coincidence shared by both faces', () => {
  it('equal panes share a dip; the thicker outer pane parts them', () => {
    const equal = assembly(board(0.006, glass), gap(0.016), board(0.006, glass));
    const note = noteOf(equal, 'shared-coincidence');
    expect(figure(note, 'gain in the dip by unequal faces')).toBeGreaterThan(
      figure(note, 'of which by mass alone') + 2,
    );
    expect(note.remedy).toMatchObject({ kind: 'thicken', layer: 2 });
  });
  it('panes of 6 and 10 mm do not', () => {
    expect(codes(assembly(board(0.006, glass), gap(0.016), board(0.01, glass)))).not.toContain('shared-coincidence');
  });
});

describe('layers that isolate nothing', () => {
  it('a light board on the face gains next to nothing, and the note says how little', () => {
    const faced = assembly(board(0.02, fleece), board(0.1025, brick));
    const note = noteOf(faced, 'light-layer');
    expect(figure(note, 'mass of the layer')).toBeCloseTo(1.2, 6);
    expect(Math.abs(figure(note, 'mean gain of the layer'))).toBeLessThan(1.5);
    expect(note.about.layers).toEqual([0]);
  });
  it('a film is left alone', () => {
    expect(codes(assembly(board(0.0002, foam), board(), gap(0.09, { frame: studs }), board()))).not.toContain(
      'light-layer',
    );
  });
});

describe('advice as a whole', () => {
  it('puts the gravest first and only repeats what was predicted: every figure finite', () => {
    const all = notes(assembly(board(), gap(0.09), board(), gap(0.025), board(), gap(0.09), board()));
    const order = all.map(({ severity }) => ['mistake', 'caution', 'hint'].indexOf(severity));
    expect(order).toEqual([...order].sort((a, b) => a - b));
    expect(all.flatMap(({ figures }) => figures).every(({ value }) => Number.isFinite(value))).toBe(true);
  });
});

describe('advice on the whole shell', () => {
  const wall = part('wall', 68, level(55));
  const of = (parts: readonly Part[], code: NoteCode): Note => {
    const found = shellNotes(build(parts), shellOf(parts)).find((note) => note.code === code);
    if (!found) throw new Error(`no note ${code}`);
    return found;
  };
  const codesOf = (parts: readonly Part[]): NoteCode[] =>
    shellNotes(build(parts), shellOf(parts)).map(({ code }) => code);

  it('a 2 m² door of 30 dB in 70 m² of 55 dB caps the whole at 45 and needs 39.7 (rule of the trade)', () => {
    const note = of([wall, part('door', 2, level(30), 'door')], 'part-caps-whole');
    expect(figure(note, 'Rw of the whole')).toBe(45);
    expect(Math.abs(figure(note, 'Rw that the part needs') - 39.7)).toBeLessThan(0.8);
    expect(figure(note, 'share of what gets out')).toBeCloseTo(90.3, 0);
    expect(note.about.part).toBe('door');
  });
  it('parts in proportion to their area cap nothing', () => {
    expect(codesOf([wall, part('roof', 20, level(55), 'roof')])).not.toContain('part-caps-whole');
  });
  it('an open gap is told with and without', () => {
    const gapPart: Part = {
      ...part('gap', 0.009, { kind: 'slit', length: 0.9, width: 0.01, depth: 0.044, edge: true }, 'slit'),
    };
    const note = of([part('door', 2, level(32), 'door'), gapPart], 'open-gap');
    expect(note.severity).toBe('mistake');
    expect(figure(note, 'Rw without it')).toBeGreaterThan(figure(note, 'Rw with the opening'));
  });
  it('a small hole in a weak wall leaves the rating and names the band in which sealing it gains most', () => {
    const hole = part('hole', 0.00008, { kind: 'hole', diameter: 0.01, depth: 0.1 }, 'hole');
    const parts = [part('wall', 20, level(40.2)), hole];
    const shell = shellOf(parts);
    const note = shellNotes(build(parts), shell).find(({ code }) => code === 'open-gap');
    const gains = THIRD_OCTAVES.map((_, b) => (shell.parts[1]?.ifPerfect.R[b] ?? 0) - (shell.R[b] ?? 0));
    const best = THIRD_OCTAVES[gains.indexOf(Math.max(...gains.slice(3, 24)))];
    expect(note?.severity).toBe('hint');
    expect(note?.sentence).toContain(`most is gained at ${best} Hz`);
  });
  it('a roof 10 dB weaker than the walls at 63 Hz is named, with its share there', () => {
    const weak = curve(THIRD_OCTAVES.map((band) => (band < 200 ? 45 : 55)));
    const note = of([wall, part('roof', 20, weak, 'roof')], 'weak-roof');
    expect(figure(note, 'largest lack against the walls')).toBeCloseTo(10, 6);
    expect(figure(note, 'share of what gets out at 63 Hz')).toBeCloseTo((100 * 200) / 268, 1);
    expect(codesOf([wall, part('roof', 20, level(54), 'roof')])).not.toContain('weak-roof');
  });
  it('two dense 15 mm boards overhead weigh 0.25 kN/m² (closed form) and call for an engineer', () => {
    const heavy = assembly(board(0.015, dense), board(0.015, dense));
    const ceiling = part('ceiling', 12, { kind: 'assembly', assembly: heavy }, 'ceiling');
    const shell = evaluateShell(build([ceiling]), (one) => partTransmission(one, predict));
    const note = shellNotes(build([ceiling]), shell).find(({ code }) => code === 'load-overhead');
    if (!note) throw new Error('no caution');
    expect(note.severity).toBe('caution');
    expect(figure(note, 'load of the layers')).toBeCloseTo(0.25, 2);
    expect(figure(note, 'mass in all')).toBeCloseTo(2 * 0.015 * 860 * 12, 6);
    expect(note.sentence).toContain('structural engineer');
  });
});
