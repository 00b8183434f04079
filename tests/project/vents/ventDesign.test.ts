import { describe, expect, it } from 'vitest';
import { createEvaluator } from '../../../src/engine/evaluate.ts';
import { checkProject } from '../../../src/project/check.ts';
import { CommandRefusal, commands } from '../../../src/project/commands/index.ts';
import { examples } from '../../../src/project/examples.ts';
import type { Project, VentElementEntry } from '../../../src/project/schema.ts';
import { toBreathe } from '../../../src/project/toBreathe.ts';
import { toVentTasks, type VentTask } from '../../../src/project/toDesign.ts';
import { toBuild } from '../../../src/project/toEngine.ts';
import { toVentPath } from '../../../src/project/toVents.ts';
import { designVentOf, type VentDesignFound } from '../../../src/project/ventDesign/designVents.ts';
import { designFrame, fittingEnd } from '../../../src/project/ventDesign/frame.ts';
import { ventedRoom } from './ventedRoom.ts';

const checkedOf = (document: unknown): Project => {
  const checked = checkProject(document);
  if (!checked.ok) throw new Error(checked.faults[0]?.sentence);
  return checked.project;
};
const room = checkedOf(ventedRoom());
const taskOf = (project: Project, opening: string): VentTask => {
  const task = toVentTasks(project).find((it) => it.opening === opening);
  if (!task) throw new Error(`no vent opening ${opening}`);
  return task;
};
const kinds = (elements: readonly VentElementEntry[]): string => elements.map(({ kind }) => kind).join(' ');

/** The station's figures of the vent, each box solved on the fine grid, once it is put in. */
const putIn = (project: Project, { found }: VentDesignFound) => {
  if (!found) throw new Error('something carries the air');
  const next = checkedOf(commands.putVentDesign.apply(project, found.entry));
  const report = createEvaluator()
    .breathe(toBuild(next), toBreathe(next), 'full')
    .vents.find(({ id }) => id === found.entry.vent.id);
  return { next, report, found, vent: next.vents?.find(({ id }) => id === found.entry.vent.id) };
};

describe('a designed vent that is put in', () => {
  it('is told by the station as it was by the design, and keeps what is not designed', { timeout: 240_000 }, () => {
    const answer = designVentOf(room, taskOf(room, 'in'), { mostCost: 0.1, bass: false });
    const { report, found, vent, next } = putIn(room, answer);
    expect(answer.answer.design).not.toBeNull();
    expect(report?.cost?.lostOverall).toBeCloseTo(found.inPlace.cost?.lostOverall ?? NaN, 2);
    expect(report?.sound.ratings.Rw).toBe(found.inPlace.sound.ratings.Rw);
    // the search reckons with standing air, where nothing damps the bass
    const still = createEvaluator().vent(toVentPath(next, vent ?? found.entry.vent), 'full');
    still.normalisedDifference.forEach((Dne, b) =>
      expect(Dne).toBeCloseTo(found.design.sound.normalisedDifference[b] ?? NaN, 6),
    );
    expect(report?.cost?.lostOverall).toBeLessThanOrEqual(found.design.costAlone + 0.1);

    const before = room.vents?.[0];
    expect([vent?.name, vent?.direction, vent?.opening]).toEqual(['Supply', 'supply', 'in']);
    expect(vent?.elements.find(({ kind }) => kind === 'fan')).toEqual(before?.elements.at(-1));
    expect(vent?.elements[0]).toEqual(before?.elements[0]);
    expect(kinds(vent?.elements ?? [])).toMatch(/^grille box (duct )?duct fan( box)?$/);
  });

  it('is the same for a heavy wall, where the nearest is put in', { timeout: 300_000 }, () => {
    const project = checkedOf(examples[0]?.document);
    const [task] = toVentTasks(project);
    if (!task) throw new Error('the example has a vent opening');
    const answer = designVentOf(project, task, { mostCost: 1, bass: false });
    expect(answer.answer.design).toBeNull();
    expect(answer.answer.floor).toBeGreaterThan(1);
    const { report, found, vent, next } = putIn(project, answer);
    expect(report?.cost?.lostOverall).toBeCloseTo(found.inPlace.cost?.lostOverall ?? NaN, 1);
    expect(report?.sound.ratings.Rw).toBe(found.inPlace.sound.ratings.Rw);
    expect(kinds(vent?.elements ?? [])).toMatch(/^grille box (duct )?duct fan (box )?bend grille$/);
    const casings = vent?.elements.flatMap((it) => (it.kind === 'box' ? [it.casing ?? ''] : [])) ?? [];
    expect(Object.keys(next.assemblies)).toEqual(expect.arrayContaining(casings));
  });

  it('is one step of the history, and puts a vent into an opening that has none', { timeout: 120_000 }, () => {
    const bare = { ...ventedRoom(), vents: undefined };
    bare.surfaces[0]?.openings?.splice(0, 2, {
      id: 'in',
      name: 'Fresh air',
      kind: 'vent',
      width_m: 0.13,
      height_m: 0.13,
      assembly: 'wall',
    } as never);
    const project = checkedOf(JSON.parse(JSON.stringify(bare)));
    const answer = designVentOf(project, taskOf(project, 'in'), { mostCost: 20, bass: false });
    const { vent, next, found } = putIn(project, answer);
    expect(commands.putVentDesign.label(found.entry)).toBe('Put the designed box into Fresh air');
    expect(kinds(vent?.elements ?? [])).toBe('grille box duct grille');
    expect(next.surfaces[0]?.openings?.[0]).toMatchObject({ id: 'in', path: vent?.id });
    expect(commands.putVentDesign.apply(next, found.entry)).toBe(next);
  });

  it('goes into vents only', () => {
    const [supply] = room.vents ?? [];
    if (!supply) throw new Error('the room has a vent');
    const entry = { vent: { ...supply, opening: 'door' }, assemblies: {} };
    expect(() => commands.putVentDesign.apply(room, entry)).toThrow(CommandRefusal);
  });
});

describe('what stays of a vent', () => {
  it('is its ends, its fans on their side of the wall, and the bare duct through it', () => {
    const [north] = room.surfaces;
    const [supply, extract] = room.vents ?? [];
    if (!north || !supply || !extract) throw new Error('the room has two vents');
    const frame = designFrame(room, north, supply);
    expect([kinds(frame.inner), kinds(frame.outer), frame.fansInside.length, frame.fansOutside.length]).toEqual([
      'grille',
      '',
      0,
      1,
    ]);
    expect(frame.wallDepth).toBe(0.3);
    expect(kinds(designFrame(room, north, extract).outer)).toBe('cowl');
    expect(designFrame(room, north, null).wallDepth).toBe(0.02);
  });

  it('is made wider only where it has less open area than the duct', () => {
    const grille: VentElementEntry = {
      kind: 'grille',
      section: { shape: 'round', diameter_mm: 200 },
      free_percent: 70,
    };
    expect(fittingEnd(grille, 150)).toBe(grille);
    expect(fittingEnd(grille, 200)).toEqual({ ...grille, section: { shape: 'round', diameter_mm: 240 } });
    const cowl: VentElementEntry = { kind: 'cowl', section: { shape: 'round', diameter_mm: 125 } };
    expect(fittingEnd(cowl, 125)).toBe(cowl);
    expect(fittingEnd(cowl, 150)).toEqual({ ...cowl, section: { shape: 'round', diameter_mm: 150 } });
  });
});
