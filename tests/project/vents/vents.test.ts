import { describe, expect, it } from 'vitest';
import { createEvaluator } from '../../../src/engine/evaluate.ts';
import { checkProject } from '../../../src/project/check.ts';
import { commands, CommandRefusal } from '../../../src/project/commands/index.ts';
import type { Project } from '../../../src/project/schema.ts';
import { toBuild } from '../../../src/project/toEngine.ts';
import { ventsInUse } from '../../../src/project/toVents.ts';
import { withTriedVent } from '../../../src/project/triedVent.ts';
import { ventedRoom } from './ventedRoom.ts';

const read = (document: unknown): Project => {
  const result = checkProject(document);
  if (!result.ok) throw new Error(result.faults.map((fault) => fault.sentence).join(' '));
  return result.project;
};
const faultsOf = (document: unknown): readonly string[] => {
  const result = checkProject(document);
  return result.ok ? [] : result.faults.map((fault) => fault.sentence);
};
type Room = ReturnType<typeof ventedRoom>;
const changed = (change: (room: Room) => void): Room => {
  const room = ventedRoom();
  change(room);
  return room;
};
const room = read(ventedRoom());

describe('a document with vents', () => {
  it('is a project', () => expect(faultsOf(ventedRoom())).toEqual([]));

  it.each<[string, (room: Room) => void, string]>([
    [
      'an opening of two makes',
      ({ surfaces }) => Object.assign(surfaces[0]?.openings?.[0] ?? {}, { assembly: 'wall' }),
      'exactly one of assembly, measured and path',
    ],
    [
      'a path that is none',
      ({ surfaces }) => Object.assign(surfaces[0]?.openings?.[0] ?? {}, { path: 'suply' }),
      'Did you mean supply?',
    ],
    [
      'a door made of a path',
      ({ surfaces }) => Object.assign(surfaces[0]?.openings?.[2] ?? {}, { path: 'supply' }),
      'Only a vent is made of a path',
    ],
    [
      'a vent of another opening',
      ({ vents }) => Object.assign(vents[0] ?? {}, { opening: 'out' }),
      'belongs to the opening out',
    ],
    [
      'a lining of boards',
      ({ vents }) => Object.assign(vents[1]?.elements[0] ?? {}, { lining: { material: 'osb', thickness_mm: 20 } }),
      'porous',
    ],
    [
      'a casing that is none',
      ({ vents }) => Object.assign(vents[0]?.elements[1] ?? {}, { casing: 'boxes' }),
      'Did you mean box?',
    ],
    [
      'a fan curve that rises',
      ({ vents }) =>
        Object.assign(vents[0]?.elements[3] ?? {}, {
          curve: [
            { flow_L_s: 0, pressure_Pa: 10 },
            { flow_L_s: 9, pressure_Pa: 20 },
          ],
        }),
      'less pressure the more air',
    ],
    [
      'a partition that closes the box',
      ({ vents }) =>
        Object.assign(vents[0]?.elements[1] ?? {}, { partitions: [{ at_m: 0.9, gap_mm: 100, side: 'far' }] }),
      'ascending from 0 to 0.6 m',
    ],
    [
      'a duct beside the box',
      ({ vents }) =>
        Object.assign(vents[0]?.elements[1] ?? {}, {
          ports: [
            { side: 'left', at_m: 0.5, section: { shape: 'round', diameter_mm: 125 } },
            { side: 'right', at_m: 0.2, section: { shape: 'round', diameter_mm: 125 } },
          ],
        }),
      'within 0 to 0.4 m along side W',
    ],
  ])('refuses %s with a way out', (_what, change, sentence) => {
    const faults = faultsOf(changed(change)).join(' ');
    expect(faults).toContain(sentence);
  });

  it('puts the vents into the shell with their ways', () => {
    const shell = createEvaluator().shell(toBuild(room), 'draft');
    const vent = shell.parts.find(({ id }) => id === 'in');
    expect(vent?.ways?.map(({ name }) => name)).toEqual([
      'Along the air',
      'Through the boards of Baffle box',
      'Joints and board edges',
    ]);
    const ways = (vent?.ways ?? []).reduce((sum, { openArea }) => sum + (openArea[10] ?? 0), 0);
    expect(-10 * Math.log10(ways / (vent?.area ?? 1))).toBeCloseTo(vent?.R[10] ?? 0, 6);
  });
});

describe('commands on vents', () => {
  const pipe = {
    kind: 'duct',
    section: { shape: 'round', diameter_mm: 125 },
    length_m: 0.5,
    type: 'smooth',
    pulled: 'straight',
    place: 'wall',
  } as const;
  const valid = (project: Project): Project => read(JSON.parse(JSON.stringify(project)));

  it('add, change, move and remove pieces', () => {
    const more = commands.addVentElement.apply(room, { vent: 'extract', element: pipe, at: 1 });
    expect(more.vents?.[1]?.elements.map(({ kind }) => kind)).toEqual(['duct', 'duct', 'duct', 'cowl']);
    expect(more.vents?.[0]).toBe(room.vents?.[0]);
    const longer = commands.setVentElement.apply(more, { vent: 'extract', at: 1, element: { ...pipe, length_m: 2 } });
    expect(longer.vents?.[1]?.elements[1]).toMatchObject({ length_m: 2 });
    expect(commands.setVentElement.apply(longer, { vent: 'extract', at: 1, element: { ...pipe, length_m: 2 } })).toBe(
      longer,
    );
    const moved = commands.moveVentElement.apply(longer, { vent: 'extract', at: 3, to: 0 });
    expect(moved.vents?.[1]?.elements[0]?.kind).toBe('cowl');
    const fewer = commands.removeVentElement.apply(moved, { vent: 'extract', at: 0 });
    expect(valid(fewer).vents?.[1]?.elements).toHaveLength(3);
  });

  it('add a vent to its opening, and refuse to remove one in use', () => {
    const without = commands.setPart.apply(room, { part: 'out', assembly: 'wall' });
    const gone = commands.removeVent.apply(without, { vent: 'extract' });
    expect(gone.vents).toHaveLength(1);
    const back = commands.addVent.apply(gone, {
      vent: { name: 'Plain pipe', opening: 'out', direction: 'extract', elements: [pipe] },
    });
    expect(valid(back).surfaces[0]?.openings?.[1]).toMatchObject({ path: 'plain-pipe' });
    expect(back.surfaces[0]?.openings?.[1]).not.toHaveProperty('assembly');
    expect(() => commands.removeVent.apply(back, { vent: 'plain-pipe' })).toThrow(CommandRefusal);
    expect(() =>
      commands.addVent.apply(gone, { vent: { name: 'X', opening: 'door', direction: 'extract', elements: [pipe] } }),
    ).toThrow('is not a vent');
  });

  it('add a vent with a new opening for it in one step', () => {
    const opening = { id: 'hatch', name: 'Hatch', kind: 'vent', width_m: 0.2, height_m: 0.2 } as const;
    const both = commands.addVentIn.apply(room, {
      surface: 'north',
      opening: { ...opening, measured: { bands_Hz: [500], R_dB: [0], source: 'open' } },
      vent: { name: 'Third', direction: 'supply', elements: [pipe] },
    });
    expect(valid(both).surfaces[0]?.openings?.at(-1)).toMatchObject({ id: 'hatch', path: 'third' });
    expect(both.surfaces[0]?.openings?.at(-1)).not.toHaveProperty('measured');
    expect(both.vents?.at(-1)).toMatchObject({ id: 'third', opening: 'hatch' });
  });

  it('try a vent as if it were built in, without touching the document', () => {
    const other = commands.addVent.apply(room, {
      vent: { name: 'Plain pipe', opening: 'out', direction: 'extract', elements: [pipe] },
    });
    const tried = withTriedVent(other, 'extract');
    expect(ventsInUse(other).map(({ id }) => id)).toEqual(['supply', 'plain-pipe']);
    expect(ventsInUse(tried).map(({ id }) => id)).toEqual(['supply', 'extract']);
    expect(valid(tried).vents).toEqual(other.vents);
    for (const vent of ['plain-pipe', 'gone', null]) expect(withTriedVent(other, vent)).toBe(other);
  });

  it('take a vent along when its opening or wall goes', () => {
    expect(valid(commands.removeOpening.apply(room, { opening: 'in' })).vents?.map(({ id }) => id)).toEqual([
      'extract',
    ]);
    expect(valid(commands.removeSurface.apply(room, { surface: 'north' })).vents).toBeUndefined();
  });

  it('keep make-ups and materials that a vent needs', () => {
    expect(() => commands.removeAssembly.apply(room, { assembly: 'box' })).toThrow('Supply');
  });

  it('name a vent and set what is known of the air', () => {
    const named = commands.setVent.apply(room, { vent: 'supply', patch: { name: 'Fresh', note: 'through the loft' } });
    expect(named.vents?.[0]).toMatchObject({ name: 'Fresh', note: 'through the loft' });
    const warmer = commands.setAir.apply(room, { patch: { room_C: 23 } });
    expect(valid(warmer).air?.room_C).toBe(23);
    expect(commands.setAir.apply(warmer, { patch: { room_C: 23 } })).toBe(warmer);
  });
});
