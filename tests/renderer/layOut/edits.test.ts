import { describe, expect, it } from 'vitest';
import { candidateOfDraft, draftOf, waysOf } from '../../../renderer/views/layOut/candidateDraft.ts';
import { fittingsInWords } from '../../../renderer/views/layOut/fittings/fittingsInWords.ts';
import { nearestSurface } from '../../../renderer/views/layOut/nearestSurface.ts';
import { newOpening, OPENING_KINDS, starterMake } from '../../../renderer/views/layOut/newPart.ts';
import { boxRoom, oneSurface } from '../../../renderer/views/layOut/newRoom.ts';
import { rungsBy } from '../../../renderer/views/layOut/rungOrder.ts';
import { net } from '../../../renderer/drawings/net.ts';
import { checkProject } from '../../../src/project/check.ts';
import { commands } from '../../../src/project/commands/index.ts';
import type { Rung } from '../../../src/engine/plan/index.ts';
import type { Project } from '../../../src/project/schema.ts';

const empty: Project = { format: 'lullwright/project@1', name: 'Room', assemblies: {}, surfaces: [] };
const room = commands.addSurfaces.apply(empty, boxRoom(empty, 5, 4, 2.4));

describe('new parts', () => {
  it('make a room that passes the document’s rules, each surface with a make-up', () => {
    expect(checkProject(room)).toMatchObject({ ok: true });
    expect(room.surfaces.map((surface) => surface.name)).toEqual([
      'North wall',
      'East wall',
      'South wall',
      'West wall',
      'Ceiling',
      'Floor',
    ]);
  });

  it('can all be added to a wall, wherever it is pressed', () => {
    const wall = room.surfaces[0];
    if (!wall) throw new Error('no wall');
    const filled = OPENING_KINDS.reduce((project, { kind }) => {
      const surface = project.surfaces[0] ?? wall;
      const opening = newOpening(project, surface, kind, { u: 4.9, v: 2.3 });
      const make = kind === 'door' || kind === 'window' ? starterMake(project, kind) : null;
      return commands.addMadeOpening.apply(project, {
        surface: wall.id,
        opening,
        assemblies: make?.assembly ? { [make.id]: make.assembly } : {},
      });
    }, room);
    expect(checkProject(filled)).toMatchObject({ ok: true });
    expect(filled.surfaces[0]?.openings).toHaveLength(OPENING_KINDS.length);
  });

  it('hang a new door with the seals it usually comes with, and no seals on a window', () => {
    const wall = room.surfaces[0];
    if (!wall) throw new Error('no wall');
    const door = newOpening(room, wall, 'door', null);
    expect(door).toMatchObject({ seals: { perimeter: 'foam', threshold: 'brush' } });
    expect(newOpening(room, wall, 'window', null)).not.toHaveProperty('seals');
    if (door.kind !== 'door') throw new Error('no door');
    expect(fittingsInWords(room, door)).toBe('Foam strip at sides and head, brush strip below: ordinary seals.');
  });

  it('give the next wall the side that is missing and the size of the one facing it', () => {
    const north = commands.addSurfaces.apply(empty, oneSurface(empty, 'wall'));
    expect(north.surfaces[0]).toMatchObject({ name: 'North wall', side: 'north' });
    const without = commands.removeSurface.apply(room, { surface: 'south-wall' });
    expect(oneSurface(without, 'wall').surfaces[0]).toMatchObject({ name: 'South wall', side: 'south', width_m: 5 });
  });

  it('resize the room in one step', () => {
    const changes = [
      { surface: 'floor', patch: { width_m: 6 } },
      { surface: 'north-wall', patch: { width_m: 6 } },
    ];
    const larger = commands.setSurfaces.apply(room, { changes });
    expect(larger.surfaces.filter((surface) => surface.width_m === 6).map((it) => it.id)).toEqual([
      'north-wall',
      'floor',
    ]);
    expect(commands.setSurfaces.apply(larger, { changes })).toBe(larger);
  });
});

describe('another way to build a part', () => {
  const gap = { id: 'g', name: 'Gap', kind: 'slit' as const, length_mm: 900, width_mm: 5, depth_mm: 44 };

  it('is sealing or another size for a gap, a make-up or a test report for a wall', () => {
    expect(waysOf(gap)).toEqual(['sealed', 'size']);
    const [wall] = room.surfaces;
    expect(wall && waysOf(wall)).toEqual(['assembly', 'curve']);
  });

  it('becomes a candidate that the document takes', () => {
    const draft = { ...draftOf(room, gap, null), way: 'size' as const, size_mm: 1, price_each: 20 };
    const found = candidateOfDraft(room, gap, draft);
    expect(found).toEqual({ ok: true, made: { name: 'Gap of 1 mm', width_mm: 1, depth_mm: 44, price_each: 20 } });
    const withGap = commands.addOpening.apply(room, { surface: 'north-wall', opening: gap });
    if (!found.ok) throw new Error(found.sentence);
    const next = commands.addCandidate.apply(withGap, { part: 'g', candidate: found.made });
    expect(checkProject(next)).toMatchObject({ ok: true });
  });

  it('says what is missing', () => {
    const [wall] = room.surfaces;
    if (!wall) throw new Error('no wall');
    const draft = { ...draftOf(room, wall, null), way: 'curve' as const };
    expect(candidateOfDraft(room, wall, draft)).toEqual({ ok: false, sentence: 'Give the laboratory curve first.' });
  });
});

describe('arrow keys on the net', () => {
  it('go from the floor to the wall on that side and from the east wall to the ceiling', () => {
    const { surfaces } = net(room.surfaces, 1.5);
    const from = (id: string, arrow: readonly [number, number]): string | undefined => {
      const surface = surfaces.find((it) => it.entry.id === id);
      return surface && nearestSurface(surfaces, surface, arrow)?.entry.id;
    };
    expect(from('floor', [0, -1])).toBe('north-wall');
    expect(from('floor', [0, 1])).toBe('south-wall');
    expect(from('floor', [-1, 0])).toBe('west-wall');
    expect(from('floor', [1, 0])).toBe('east-wall');
    expect(from('east-wall', [1, 0])).toBe('ceiling');
    expect(from('west-wall', [-1, 0])).toBeUndefined();
  });
});

describe('the ladder of changes', () => {
  const rung = (name: string, energyGain: number, cost: number | null, gainPerCost: number | null): Rung => ({
    part: name,
    candidate: name,
    name,
    RwGain: null,
    bassGain: 0,
    energyGain,
    cost,
    illustrative: false,
    addedThickness: null,
    addedMass: null,
    gainPerCost,
    gainPerThickness: null,
    gainPerMass: null,
    nextLimiting: null,
    nextLimitingShare: 0,
  });
  const rungs = [rung('door', 3, 900, 0.003), rung('gap', 2, 20, 0.1), rung('wall', 5, null, null)];
  const names = (sorted: readonly Rung[]): string[] => sorted.map((it) => it.name);

  it('puts the largest gain first, the lowest price first, the unknown last', () => {
    expect(names(rungsBy(rungs, 'energyGain'))).toEqual(['wall', 'door', 'gap']);
    expect(names(rungsBy(rungs, 'cost'))).toEqual(['gap', 'door', 'wall']);
    expect(names(rungsBy(rungs, 'gainPerCost'))).toEqual(['gap', 'door', 'wall']);
    expect(names(rungsBy(rungs, 'cost', true))).toEqual(['door', 'gap', 'wall']);
  });
});
