import { describe, expect, it } from 'vitest';
import { checkProject } from '../../src/project/check.ts';
import { designTask } from '../../src/worker/breathe/designTask.ts';
import { ventedRoom } from '../project/vents/ventedRoom.ts';

const checked = checkProject(ventedRoom());
if (!checked.ok) throw new Error('the room is faulty');
const { project } = checked;

describe('the smallest box for a vent of the project', () => {
  it('is one that does it, told of on the way, and can travel to the window', { timeout: 120_000 }, () => {
    const solved: (readonly [number, number])[] = [];
    const found = designTask({ project, opening: 'in', mostCost: 1, bass: false }, (...told) => solved.push(told));
    expect(found.enough).toBe(true);
    expect(found.count).toBe(2);
    expect(found.vent?.cost).toBeLessThanOrEqual(1);
    expect(found.vent?.speed).toBeLessThanOrEqual(2.5);
    expect(found.vent?.weight).toBeGreaterThan(0);
    expect(solved.at(-1)).toEqual([found.tried.coarse, found.tried.boxes]);
    expect(structuredClone(found)).toEqual(found);
  });

  it('is refused for an opening that is in no wall', () => {
    expect(() => designTask({ project, opening: 'nowhere', mostCost: 1, bass: false }, () => undefined)).toThrow(
      /no wall/,
    );
  });
});
