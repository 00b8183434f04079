import { describe, expect, it } from 'vitest';
import { checkProject } from '../../src/project/check.ts';
import { newBuild, type NewBuildAnswers } from '../../src/project/newBuild.ts';
import { STARTING_SHELLS, type StartingShellKey } from '../../src/project/startingShells.ts';

const answers: NewBuildAnswers = {
  name: 'Drum shed',
  length_m: 5,
  width_m: 3.2,
  height_m: 2.3,
  shell: 'timber-shed',
  source: 'drum-kit-hard',
  neighbour_m: 9,
  budget: 4000,
  currency: '£',
};
const shells = Object.keys(STARTING_SHELLS) as StartingShellKey[];

describe('five answers make a project', () => {
  it.each(shells)('of a %s that keeps every rule of the document', (shell) => {
    const checked = checkProject(newBuild({ ...answers, shell }));
    expect(checked.ok ? [] : checked.faults).toEqual([]);
  });

  it.each([
    [1.2, 1.2, 1.9],
    [50, 30, 6],
  ])('even at the least and greatest size asked for (%d × %d × %d m)', (length_m, width_m, height_m) => {
    const checked = checkProject(newBuild({ ...answers, length_m, width_m, height_m }));
    expect(checked.ok ? [] : checked.faults).toEqual([]);
  });

  it('with walls folded to their sides in the sizes given', () => {
    const project = newBuild(answers);
    const size = (id: string) => {
      const surface = project.surfaces.find((each) => each.id === id);
      return [surface?.width_m, surface?.height_m, surface?.side];
    };
    expect(size('north')).toEqual([5, 2.3, 'north']);
    expect(size('east')).toEqual([3.2, 2.3, 'east']);
    expect(size('top')).toEqual([5, 3.2, undefined]);
  });

  it('keeps distance and budget in the note', () => {
    expect(newBuild(answers).note).toMatch(/9 m away.*£ 4000/);
    expect(newBuild({ ...answers, budget: null }).note).toMatch(/Budget: not set/);
  });

  it('weighs a light outer skin down before it is lined, and leaves a heavy one', () => {
    const candidates = (shell: StartingShellKey) =>
      newBuild({ ...answers, shell })
        .surfaces.find((each) => each.id === 'north')
        ?.candidates?.map((each) => each.id);
    expect(candidates('timber-shed')).toEqual(['north-lined', 'north-heavier']);
    expect(candidates('brick-garage')).toEqual(['north-lined']);
  });

  it.each(shells)('offers a whole inner room in a %s, door and gap included', (shell) => {
    const swaps = newBuild({ ...answers, shell }).options?.[0]?.swaps;
    expect(Object.keys(swaps ?? {}).sort()).toEqual(['door', 'door-gap', 'east', 'north', 'south', 'top', 'west']);
  });

  it('lines a framed wall without leaving a third leaf', () => {
    const project = newBuild({ ...answers, shell: 'garden-room' });
    const cavities = project.assemblies['wall-lined']?.layers.filter((layer) => layer.kind === 'cavity');
    expect(cavities).toHaveLength(1);
  });
});
