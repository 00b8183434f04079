import { describe, expect, it } from 'vitest';
import { checkProject } from '../../src/project/check.ts';
import { examples } from '../../src/project/examples.ts';
import type { Project } from '../../src/project/schema.ts';
import { toVentPath } from '../../src/project/toVents.ts';
import { createEvaluator } from '../../src/engine/evaluate.ts';
import { solveBoxCoarse, ventBoxGeometry } from '../../src/engine/openings/index.ts';
import { createAnswerTask } from '../../src/worker/answerTask.ts';
import type { AirFigure, Explained, TaskName, Tasks } from '../../src/worker/protocol.ts';

const example = (): Project => {
  const checked = checkProject(examples[0]?.document);
  if (!checked.ok) throw new Error('the example is faulty');
  return checked.project;
};
const project = example();
const answer = createAnswerTask(() => 0);
const ask = <T extends TaskName>(task: T, what: Tasks[T]['ask']): Tasks[T]['answer'] =>
  answer({ sequence: 1, task, ask: what }) as Tasks[T]['answer'];
const explained = (what: Explained) => ask('explain', { project, what });

describe('what Breathe is answered', () => {
  const told = ask('breathe', { project, resolution: 'full' });
  const [vent] = told.result.vents;

  it('has a curve for every way of every vent, together as loud as the whole', () => {
    expect(told.drawn.map(({ id }) => id)).toEqual(told.result.vents.map(({ id }) => id));
    told.result.vents.forEach(({ sound }, v) => {
      const { along, walls, joints } = told.drawn[v] ?? { along: [], walls: null, joints: null };
      sound.bands.forEach((_, b) => {
        const passed = [along, walls, joints].reduce((sum, way) => sum + (way ? 10 ** (-(way[b] ?? 0) / 10) : 0), 0);
        expect(-10 * Math.log10(passed)).toBeCloseTo(sound.normalisedDifference[b] ?? 0, 2);
      });
    });
  });
  it('puts the operating point on the fan’s curve, and never a wall above itself without vents', () => {
    for (const { id, flow, fanPressure } of told.result.air?.paths ?? []) {
      const fan = told.drawn.find((it) => it.id === id)?.fan;
      if (!fan) continue;
      const next = fan.flows.findIndex((q) => q >= flow);
      const [high, low] = [fan.fan[next - 1] ?? Infinity, fan.fan[next] ?? 0];
      expect(fanPressure).toBeLessThanOrEqual(high + 1e-6);
      expect(fanPressure).toBeGreaterThanOrEqual(low - 1e-6);
    }
    for (const { surface, withAll } of told.walls) {
      const wallR = told.result.vents.find(({ cost }) => cost?.surface === surface)?.cost?.wallR ?? [];
      withAll.forEach((R, b) => expect(R).toBeLessThanOrEqual((wallR[b] ?? 0) + 1e-9));
    }
  });
  it('works out each piece of a vent so that its numbers can be done again by hand', () => {
    const paths = told.result.air?.paths ?? [];
    expect(paths.length).toBeGreaterThan(1);
    for (const { id, pieces } of paths)
      pieces.forEach(({ loss, speed, element }, piece) => {
        const { value, lines } = explained({ kind: 'vent-piece', vent: id, piece });
        expect(value).toBe(`${loss.toFixed(1)} Pa${speed === null ? '' : `, ${speed.toFixed(2)} m/s`}`);
        const sum = lines.find(({ equation }) => equation.startsWith('Δp = Σ'))?.numbers;
        const coefficient = lines
          .map(({ numbers }) => /ζ ([\d.]+)(?:;| ·).*?([\d.]+) Pa(?: at|$| =)/.exec(numbers))
          .find(Boolean);
        if (coefficient) {
          const [, zeta, pressure] = coefficient.map(Number);
          expect(Math.abs((zeta ?? NaN) * (pressure ?? NaN) - loss)).toBeLessThan(0.05 + 0.02 * loss);
        }
        if (element === null && loss > 0) expect(coefficient).toBeDefined();
        if (sum === undefined) return;
        const [terms = ''] = sum.split(' Pa = ');
        const done = terms.split(' + ').reduce((all, term) => {
          const [zeta = NaN, pressure = NaN] = term.split(' · ').map(Number);
          return all + zeta * pressure;
        }, 0);
        expect(Math.abs(done - loss)).toBeLessThan(0.02 + 0.02 * loss);
        expect(element).not.toBeNull();
      });
    expect(() => explained({ kind: 'vent-piece', vent: 'gone', piece: 0 })).toThrow('piece number 1');
  });
  it('explains every figure that can be pressed, with its source and how far off it may be', () => {
    const figures: readonly AirFigure[] = [
      'planned',
      'least',
      'flow',
      'peak',
      'fan-off',
      'heat',
      'cooling',
      'moisture',
    ];
    const all = [
      ...figures.map((figure) => explained({ kind: 'air', figure })),
      ...(['Dne', 'cost', 'noise'] as const).map((figure) => explained({ kind: 'vent', vent: vent?.id ?? '', figure })),
      explained({ kind: 'vent-band', vent: vent?.id ?? '', band: 125 }),
    ];
    for (const { title, value, lines, likelyError } of all) {
      expect(`${title}: ${value}`).toMatch(/\d/);
      expect(lines.length).toBeGreaterThan(0);
      for (const line of lines)
        expect(line.source.length * line.numbers.length * line.equation.length).toBeGreaterThan(0);
      expect(likelyError.length).toBeGreaterThan(10);
      expect(JSON.stringify(lines)).not.toMatch(/NaN|undefined|Infinity/);
    }
  });
  it('refuses to explain a vent that is gone', () => {
    expect(() => explained({ kind: 'vent', vent: 'gone', figure: 'Dne' })).toThrow(/no vent "gone"/);
  });
});

describe('box solutions told by the box worker', () => {
  it('take the place of the coarse grid in the vent and in the whole room', () => {
    const boxed = (project.vents ?? []).find(({ elements }) => elements.some(({ kind }) => kind === 'box'));
    if (!boxed) throw new Error('the example has no vent with a box');
    const built: Project = {
      ...project,
      surfaces: project.surfaces.map((surface) => ({
        ...surface,
        ...(surface.openings && {
          openings: surface.openings.map((it) =>
            it.id === boxed.opening && 'path' in it ? { ...it, path: boxed.id } : it,
          ),
        }),
      })),
    };
    const element = toVentPath(built, boxed).elements.find(({ kind }) => kind === 'box');
    if (element?.kind !== 'box') throw new Error('no box');
    const insertion = () =>
      ask('breathe', { project: built, resolution: 'full' }).result.vents.find(({ id }) => id === boxed.id)?.fanOff;
    const room = () => ask('evaluate', { project: built, resolution: 'full', predict: [] }).shell?.R;
    const before = [insertion(), room()];
    const other = solveBoxCoarse(ventBoxGeometry({ ...element.box, height: element.box.height * 1.5 }));
    ask('learn', { boxes: [{ box: element.box, result: other }] });
    expect(insertion()).not.toEqual(before[0]);
    expect(room()).not.toEqual(before[1]);
    // another evaluator knows nothing of it; it takes the air as still
    expect(createEvaluator(() => null).vent(toVentPath(built, boxed), 'full').insertionLoss).toEqual(before[0]);
  });
});
