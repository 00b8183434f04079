import { describe, expect, it } from 'vitest';
import { checkProject } from '../../src/project/check.ts';
import { commands } from '../../src/project/commands/index.ts';
import { newBuild } from '../../src/project/newBuild.ts';
import type { FlankingEntry, Project } from '../../src/project/schema.ts';
import { toBuild } from '../../src/project/toEngine.ts';

const room = newBuild({
  name: 'Garage beside the house',
  length_m: 5,
  width_m: 4,
  height_m: 2.4,
  shell: 'block-garage',
  source: null,
  neighbour_m: 5,
  budget: null,
  currency: '',
});
const path: FlankingEntry = {
  id: 'slab',
  name: 'Slab into the house',
  kind: 'slab-through',
  past: 'east',
  inside: { surface: 'floor' },
  beyond: { assembly: 'floor', area_m2: 12 },
  junction: 'rigid-t',
  run: 'straight',
  length_m: 4,
};
const withPath = (entry: FlankingEntry): Project => ({ ...room, flanking: [entry] });
const faultOf = (project: Project): string => {
  const checked = checkProject(project);
  return checked.ok ? '' : (checked.faults[0]?.sentence ?? '');
};

describe('flanking paths of the document', () => {
  it('are accepted and become parts of the build, in SI', () => {
    const checked = checkProject(
      withPath({ ...path, inside: { surface: 'floor', lining: { mass_kg_m2: 80, stiffness_MN_m3: 8 } } }),
    );
    expect(checked.ok).toBe(true);
    if (!checked.ok) return;
    const part = toBuild(checked.project).parts.at(-1);
    expect(part).toMatchObject({
      id: 'slab',
      kind: 'flanking',
      surface: 'east',
      area: 9.6,
      element: { kind: 'flanking', length: 4, inside: { part: 'floor', area: 20 }, beyond: { part: null, area: 12 } },
    });
    expect(part?.element).toMatchObject({ inside: { lining: { surfaceMass: 80, stiffness: 8 } } });
  });
  it.each([
    ['a surface that is not there', { ...path, past: 'eest' }, 'flanking[0].past is "eest"', 'Did you mean east?'],
    ['an end without element', { ...path, inside: {} }, 'flanking[0].inside', 'Say which surface it is'],
    [
      'an end with two',
      { ...path, beyond: { surface: 'floor', assembly: 'floor' } },
      'flanking[0].beyond',
      'exactly one',
    ],
    [
      'an unknown make-up',
      { ...path, beyond: { assembly: 'slab' } },
      'flanking[0].beyond.assembly is "slab"',
      'an id under',
    ],
    ['an id of a part', { ...path, id: 'door' }, 'flanking[0].id is "door"', 'Choose another id'],
    ['a path past itself', { ...path, inside: { surface: 'east' } }, 'flanking[0].inside.surface', 'runs straight on'],
    ['no length', { ...path, length_m: 0 }, 'flanking[0].length_m is 0', 'from 0.05 to 200'],
  ])('are refused with %s', (_, entry, where, says) => {
    const sentence = faultOf(withPath(entry));
    expect(sentence).toContain(where);
    expect(sentence).toContain(says);
  });
  it('need K along a surface that is known by a curve alone', () => {
    const measured = { bands_Hz: [100, 500, 3150], R_dB: [40, 50, 60] };
    const project = commands.setPart.apply(withPath(path), { part: 'floor', measured });
    expect(faultOf(project)).toContain('The mass of floor is not known');
    const known = commands.setFlanking.apply(project, { path: 'slab', patch: { vibration_reduction_dB: 8 } });
    expect(faultOf(known)).toBe('');
  });
  it('are added with an id of their own, changed and removed', () => {
    const { id, ...added } = path;
    const one = commands.addFlanking.apply(room, { path: added });
    expect(one.flanking?.[0]?.id).toBe('slab-into-the-house');
    const shorter = commands.setFlanking.apply(one, { path: 'slab-into-the-house', patch: { length_m: 2 } });
    expect(shorter.flanking?.[0]?.length_m).toBe(2);
    expect(commands.setFlanking.apply(shorter, { path: 'slab-into-the-house', patch: { length_m: 2 } })).toBe(shorter);
    const none = commands.removeFlanking.apply(shorter, { path: 'slab-into-the-house' });
    expect('flanking' in none).toBe(false);
    expect(() => commands.removeFlanking.apply(none, { path: id })).toThrow('There is no flanking path');
  });
  it('go with the surface they need, and keep the make-up they use', () => {
    const without = commands.removeSurface.apply(withPath(path), { surface: 'east' });
    expect(without.flanking).toBeUndefined();
    expect(faultOf(without)).toBe('');
    const used = commands.addAssembly.apply(withPath({ ...path, beyond: { assembly: 'wall' } }), {
      id: 'alone',
      assembly: { name: 'Alone', layers: [{ kind: 'board', material: 'brick', thickness_mm: 100 }] },
    });
    const path2 = commands.setFlanking.apply(used, { path: 'slab', patch: { beyond: { assembly: 'alone' } } });
    expect(() => commands.removeAssembly.apply(path2, { assembly: 'alone' })).toThrow('Slab into the house');
  });
});
