import { describe, expect, it } from 'vitest';
import type { Working } from '../../src/engine/quantities/index.ts';
import { checkProject } from '../../src/project/check.ts';
import { commands } from '../../src/project/commands/index.ts';
import type { Project } from '../../src/project/schema.ts';
import { createAnswerTask } from '../../src/worker/answerTask.ts';
import type { Explained, TaskName, Tasks } from '../../src/worker/protocol.ts';
import document from '../support/exampleDocument.json' with { type: 'json' };

const checked = checkProject(document);
if (!checked.ok) throw new Error('example');
const { project } = checked;
const clock = { now: 0 };
const answerTask = createAnswerTask(() => (clock.now += 7));
const ask = <T extends TaskName>(task: T, what: Tasks[T]['ask']): Tasks[T]['answer'] =>
  answerTask({ sequence: 1, task, ask: what }) as Tasks[T]['answer'];
const explain = (what: Explained, of: Project = project): Working => ask('explain', { project: of, what });

const figures = {
  assembly: ['Rw', 'STC', 'bass', 'mass', 'resonance', 'coincidence'],
  shell: ['Rw', 'STC', 'OITC', 'bass'],
  part: ['share', 'ifPerfect'],
} as const;

describe('the worker’s tasks', () => {
  it('evaluate the shell and the make-ups asked for, and say how long it took', () => {
    const { shell, predictions, milliseconds } = ask('evaluate', {
      project,
      resolution: 'full',
      predict: ['wall-b', 'gone'],
    });
    expect(shell?.parts).toHaveLength(6);
    expect(Object.keys(predictions)).toEqual(['wall-b']);
    expect(milliseconds).toBe(7);
  });

  it('find no shell where there is no surface', () => {
    const empty: Project = { ...project, surfaces: [], options: [] };
    expect(ask('evaluate', { project: empty, resolution: 'draft', predict: ['wall-a'] }).shell).toBeNull();
    expect(() => explain({ kind: 'shell', figure: 'Rw' }, empty)).toThrow('there is no surface');
  });

  it('rank the swaps of a plan and add up its options', () => {
    const plan = ask('plan', { project });
    expect(plan.rungs.map((rung) => `${rung.part} ${rung.candidate}`).sort()).toEqual([
      'gap closed',
      'gap narrow',
      'north separate',
    ]);
    expect(plan.options.map((option) => option.id)).toEqual(['both']);
  });

  it('draw the mass law: 20 lg(m·f) − 47 dB, 6 dB more an octave', () => {
    const { massLaw, contourRw, contourSTC } = ask('guides', { project, assembly: 'wall-a' });
    const at = (band: number): number => massLaw.values[massLaw.bands.indexOf(band)] ?? Number.NaN;
    expect(at(500)).toBeCloseTo(20 * Math.log10(41.155 * 500) - 47, 2);
    expect(at(1000) - at(500)).toBeCloseTo(6.02, 2);
    expect(contourRw?.bands[0]).toBe(100);
    expect(contourSTC?.bands[0]).toBe(125);
  });
});

describe('a figure’s working', () => {
  const asked: readonly Explained[] = [
    ...figures.assembly.flatMap((figure) =>
      ['wall-a', 'wall-b', 'door-a'].map((assembly): Explained => ({ kind: 'assembly', assembly, figure })),
    ),
    ...[25, 500, 10000].map((band): Explained => ({ kind: 'assembly-band', assembly: 'wall-a', band })),
    ...figures.shell.map((figure): Explained => ({ kind: 'shell', figure })),
    ...figures.part.flatMap((figure) =>
      ['north', 'gap', 'lab'].map((part): Explained => ({ kind: 'part', part, figure })),
    ),
  ];

  it.each(asked.map((what) => [JSON.stringify(what), what] as const))('is whole: %s', (_, what) => {
    const { title, value, lines, likelyError } = explain(what);
    for (const text of [title, value, likelyError]) expect(text).toMatch(/\S/);
    for (const { what: step, equation, numbers, source } of lines) {
      for (const text of [step, equation, numbers, source]) expect(text).toMatch(/\S/);
      expect(`${step} ${numbers}`).not.toMatch(/NaN|Infinity|undefined|null|\u2212\u2212| -\d/);
    }
    if (!value.startsWith('none')) expect(lines.length).toBeGreaterThan(0);
  });

  it('gives the figure that the evaluation gives', () => {
    const { shell, predictions } = ask('evaluate', { project, resolution: 'full', predict: ['wall-a'] });
    const wall = predictions['wall-a'];
    expect(explain({ kind: 'assembly', assembly: 'wall-a', figure: 'Rw' }).value).toContain(
      `Rw ${wall?.ratings.Rw ?? '?'} `,
    );
    expect(explain({ kind: 'shell', figure: 'STC' }).value).toBe(`STC ${shell?.ratings.STC ?? '?'}`);
    expect(explain({ kind: 'shell', figure: 'bass' }).value).toBe(
      `${shell?.bassR.toFixed(1) ?? '?'} dB from 50 to 100 Hz`,
    );
    const gap = shell?.parts.find((part) => part.id === 'gap');
    expect(explain({ kind: 'part', part: 'gap', figure: 'share' }).value).toBe(
      `${((gap?.share ?? 0) * 100).toFixed(0)} %`,
    );
  });

  it('adds the mass up layer by layer, each with its source', () => {
    const { lines, value } = explain({ kind: 'assembly', assembly: 'wall-a', figure: 'mass' });
    expect(value).toBe('41.2 kg/m²');
    expect(lines).toHaveLength(6);
    expect(lines[0]?.numbers).toBe('860 kg/m³ · 0.015 m = 12.90 kg/m²');
  });

  it('of a band names leaves, stiffness, critical frequencies, resonance and every way through, each with its source', () => {
    const { lines, value } = explain({ kind: 'assembly-band', assembly: 'wall-a', band: 500 });
    const said = lines.map(({ what, equation }) => `${what} ${equation}`).join('\n');
    for (const needed of [
      'm′ = Σ ρᵢ · hᵢ',
      'f_c = (c₀²/2π)',
      'f₀ = (1/2π)',
      'through the leaves and the air',
      'along the frame',
      'around the edges',
    ])
      expect(said.toLowerCase()).toContain(needed.toLowerCase());
    const { paths, R, bands } =
      ask('evaluate', { project, resolution: 'full', predict: ['wall-a'] }).predictions['wall-a'] ?? {};
    const b = bands?.indexOf(500) ?? -1;
    const carrying = paths?.filter(({ tau }) => (tau[b] ?? 0) > 0) ?? [];
    expect(lines.filter(({ what }) => what.includes('% of what gets through'))).toHaveLength(carrying.length);
    expect(value).toBe(`R ${R?.[b]?.toFixed(1)} dB`);
    expect(lines.every(({ source, equation, numbers }) => source && equation && numbers)).toBe(true);
  });

  it.each(['Rw', 'STC', 'bass'] as const)(
    'of %s names the same, and what each way through costs the rating: without the way that counts it is higher',
    (figure) => {
      const { lines, value } = explain({ kind: 'assembly', assembly: 'wall-a', figure });
      const band = explain({ kind: 'assembly-band', assembly: 'wall-a', band: 500 });
      for (const start of ['m′ = Σ ρᵢ · hᵢ', 'f_c = (c₀²/2π)', 'f₀ = (1/2π)']) {
        const of = (list: typeof lines) => list.filter(({ equation }) => equation.startsWith(start));
        expect(of(lines).length).toBeGreaterThan(0);
        expect(of(lines)).toEqual(of(band.lines));
      }
      const shut = lines.flatMap(({ numbers }) => {
        const found = /^(.*?) as it stands; (.*) with this way shut$/.exec(numbers);
        return found ? [found.slice(1).map((said) => Number(/[\d.]+/.exec(said)?.[0]))] : [];
      });
      expect(shut.length).toBeGreaterThan(1);
      for (const [now, without] of shut) {
        expect(value).toContain(String(now));
        expect(without).toBeGreaterThanOrEqual(now ?? NaN);
      }
      expect(Math.max(...shut.map(([now, without]) => (without ?? NaN) - (now ?? NaN)))).toBeGreaterThan(0.4);
    },
  );

  it('of the whole says of the parts that let most through what they are made of', () => {
    const { lines } = explain({ kind: 'shell', figure: 'Rw' });
    const sum = lines.findIndex(({ source }) => source === 'EN 12354-3:2000, clause 4');
    const named = /let most through: (.*)\.$/.exec(lines[sum]?.what ?? '')?.[1]?.split(', ') ?? [];
    expect(named.length).toBeGreaterThan(1);
    for (const name of named) expect(lines.slice(0, sum).some(({ what }) => what.includes(name))).toBe(true);
  });

  it('come by a second method too, with the bands in which the two contradict each other', () => {
    const opinion = ask('secondMethod', { project, assembly: 'wall-a' });
    expect(opinion?.method.R).toHaveLength(27);
    const first = ask('evaluate', { project, resolution: 'full', predict: ['wall-a'] }).predictions['wall-a'];
    for (const { band, difference } of opinion?.contradictions ?? []) {
      const b = opinion?.method.bands.indexOf(band) ?? -1;
      expect(difference).toBeCloseTo((opinion?.method.R[b] ?? 0) - (first?.R[b] ?? 0), 9);
      expect(Math.abs(difference)).toBeGreaterThan(5);
      expect(band).toBeGreaterThanOrEqual(100);
      expect(band).toBeLessThanOrEqual(3150);
    }
  });

  it('of a resonance can be checked by hand', () => {
    const { lines } = explain({ kind: 'assembly', assembly: 'wall-a', figure: 'resonance' });
    const f0 = Number(/= ([\d.]+) Hz/.exec(lines[0]?.numbers ?? '')?.[1]);
    // the rule of thumb 60·√((m1+m2)/(m1·m2·d)) of the handbooks
    expect(f0).toBeCloseTo(60 * Math.sqrt((26.35 + 11.43) / (26.35 * 11.43 * 0.1)), -0.5);
  });

  it('of what is gone is a sentence’s end', () => {
    expect(() => explain({ kind: 'part', part: 'gone', figure: 'share' })).toThrow('there is no part "gone"');
    const without = commands.removeOpening.apply(project, { opening: 'gap' });
    expect(() => explain({ kind: 'part', part: 'gap', figure: 'share' }, without)).toThrow('any more');
    expect(() => explain({ kind: 'assembly', assembly: 'gone', figure: 'Rw' })).toThrow('there is no make-up "gone"');
    expect(() => explain({ kind: 'assembly-band', assembly: 'wall-a', band: 101 })).toThrow(
      'no third octave of 101 Hz',
    );
  });
});
