import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkProject } from '../../src/project/check.ts';
import { commands, CommandRefusal, type CommandArguments, type CommandName } from '../../src/project/commands/index.ts';
import { findPart, partsOf } from '../../src/project/parts.ts';
import type { Project } from '../../src/project/schema.ts';
import document from '../support/exampleDocument.json' with { type: 'json' };
import { repeatable } from '../support/repeatable.ts';

const checked = checkProject(document);
if (!checked.ok) throw new Error(checked.faults.map((fault) => fault.sentence).join('\n'));
const project = checked.project;

const run = <C extends CommandName>(before: Project, name: C, args: CommandArguments<C>): Project =>
  commands[name].apply(before, args);

const faultsOf = (after: unknown): readonly string[] => {
  const result = checkProject(after);
  return result.ok ? [] : result.faults.map((fault) => fault.sentence);
};

const wool = { kind: 'porous', name: 'Felt', density_kg_m3: 60, flow_resistivity_Pa_s_m2: 2e4 } as const;
const board = { kind: 'board', material: 'osb', thickness_mm: 12 } as const;

type Case = { [C in CommandName]: readonly [C, CommandArguments<C>] }[CommandName];

/** Each command once with arguments that change something. */
const changing: readonly Case[] = [
  ['renameProject', { name: 'Barn' }],
  ['setNote', { note: 'Ask the carpenter' }],
  ['setSource', { source: null }],
  ['setCurrency', { currency: '€' }],
  ['setCompare', { compare: ['door-a', 'door-a', 'wall-a'] }],
  ['setTarget', { target: { rating: 'Rw', value_dB: 50 } }],
  ['setWorkmanship', { patch: { joints: 'careful' } }],
  ['addSurface', { surface: { name: 'North wall', kind: 'wall', width_m: 4, height_m: 2, assembly: 'wall-b' } }],
  [
    'addSurfaces',
    {
      surfaces: [{ name: 'Floor', kind: 'floor', width_m: 4, height_m: 2, assembly: 'slab' }],
      assemblies: { slab: { name: 'Slab', layers: [board] } },
    },
  ],
  ['removeSurface', { surface: 'north' }],
  ['setSurface', { surface: 'north', patch: { width_m: 6, side: undefined } }],
  [
    'setSurfaces',
    {
      changes: [
        { surface: 'north', patch: { width_m: 6 } },
        { surface: 'roof', patch: { width_m: 6 } },
      ],
    },
  ],
  [
    'addOpening',
    { surface: 'roof', opening: { name: 'Door', kind: 'window', width_m: 1, height_m: 1, assembly: 'door-a' } },
  ],
  [
    'addMadeOpening',
    {
      surface: 'roof',
      opening: { name: 'Hatch', kind: 'door', width_m: 1, height_m: 1, assembly: 'hatch' },
      assemblies: { hatch: { name: 'Hatch', layers: [board] } },
    },
  ],
  ['removeOpening', { opening: 'gap' }],
  ['setOpening', { opening: 'door', patch: { kind: 'window', height_m: 1.9 } }],
  ['moveOpening', { opening: 'door', x_m: 2, y_m: 0 }],
  ['moveOpenings', { moves: [{ opening: 'door', x_m: 1, y_m: 0 }] }],
  ['rehangOpening', { opening: 'door', surface: 'roof' }],
  ['setPart', { part: 'lab', assembly: 'door-a' }],
  ['setSeals', { opening: 'door', leaf: 'first', seals: { perimeter: 'foam', threshold: 'drop' } }],
  ['setDoorHoles', { opening: 'door', patch: { keyhole: true, letter_plate: 'plain' } }],
  ['setSecondLeaf', { opening: 'door', second: { assembly: 'door-a', gap_mm: 150, lined: true } }],
  ['addCandidate', { part: 'roof', candidate: { name: 'Separate', assembly: 'wall-b' } }],
  ['removeCandidate', { part: 'gap', candidate: 'closed' }],
  ['setCandidate', { part: 'gap', candidate: 'closed', patch: { price_each: 50 } }],
  ['adoptCandidate', { part: 'gap', candidate: 'closed' }],
  [
    'addFlanking',
    {
      path: {
        name: 'Roof boards into the barn',
        kind: 'soffit-through',
        past: 'north',
        inside: { surface: 'roof' },
        beyond: { assembly: 'wall-b' },
        junction: 'lightweight',
        run: 'straight',
        length_m: 5.2,
      },
    },
  ],
  ['addOption', { name: 'Seal and separate', swaps: { gap: 'narrow' } }],
  ['removeOption', { option: 'both' }],
  ['setOptionSwap', { option: 'both', part: 'gap', candidate: null }],
  ['renameOption', { option: 'both', name: 'All' }],
  ['adoptOption', { option: 'both' }],
  ['addAssembly', { assembly: { name: 'Wall A', layers: [board] } }],
  ['duplicateAssembly', { assembly: 'wall-a' }],
  ['renameAssembly', { assembly: 'wall-a', name: 'Best wall' }],
  ['setAssemblyNote', { assembly: 'wall-a', note: 'First' }],
  ['setAssemblyPrice', { assembly: 'wall-a', price_per_m2: 40, labour_per_m2: null }],
  ['insertLayer', { assembly: 'wall-a', index: 5, layer: board }],
  ['removeLayer', { assembly: 'wall-b', index: 4 }],
  ['moveLayer', { assembly: 'wall-a', from: 3, to: 4 }],
  ['setLayer', { assembly: 'wall-a', index: 0, layer: board }],
  ['addMaterial', { material: wool }],
  ['setMaterial', { material: 'my-wool', entry: wool }],
  ['applyRemedy', { assembly: 'wall-a', remedy: { kind: 'deepen', label: 'Deeper', cavity: 3, depth: 0.15 } }],
];

/** Each command with arguments that ask for what is so already. */
const idle: readonly Case[] = [
  ['renameProject', { name: ` ${project.name} ` }],
  ['setSource', { source: 'drum-kit-hard' }],
  ['setCurrency', { currency: '£' }],
  ['setCompare', { compare: ['wall-a', 'wall-b'] }],
  ['setTarget', { target: null }],
  ['setWorkmanship', { patch: { damp: undefined } }],
  ['setSurface', { surface: 'north', patch: { width_m: 5.2, assembly: 'wall-a' } }],
  ['setOpening', { opening: 'door', patch: { name: 'Door', width_m: 0.9 } }],
  ['moveOpening', { opening: 'door', x_m: 0.5, y_m: 0 }],
  ['rehangOpening', { opening: 'door', surface: 'north' }],
  ['setPart', { part: 'north', assembly: 'wall-a' }],
  ['setSeals', { opening: 'door', leaf: 'first', seals: null }],
  ['setDoorHoles', { opening: 'door', patch: { keyhole: false, letter_plate: null } }],
  ['setSecondLeaf', { opening: 'door', second: null }],
  ['setCandidate', { part: 'gap', candidate: 'closed', patch: { sealed: true } }],
  ['setOptionSwap', { option: 'both', part: 'gap', candidate: 'closed' }],
  ['setOptionSwap', { option: 'both', part: 'door', candidate: null }],
  ['setAssemblyPrice', { assembly: 'wall-a', price_per_m2: null }],
  ['moveLayer', { assembly: 'wall-a', from: 2, to: 2 }],
  ['moveLayer', { assembly: 'wall-a', from: 0, to: 0 }],
  [
    'setLayer',
    { assembly: 'wall-a', index: 0, layer: { kind: 'board', thickness_mm: 15, material: 'plasterboard-dense' } },
  ],
];

const apply = ([name, args]: Case, before = project): Project =>
  (commands[name] as { apply(project: Project, args: unknown): Project }).apply(before, args);

const frozen = (value: unknown): boolean =>
  typeof value !== 'object' || value === null || (Object.isFrozen(value) && Object.values(value).every(frozen));

describe('commands', () => {
  it('are all tried here', () => {
    const names = new Set<string>(changing.map(([name]) => name));
    expect(Object.keys(commands).filter((name) => !names.has(name))).toEqual([
      // services and vents have tests of their own
      'addServiceItem',
      'setServiceItem',
      'removeServiceItem',
      'setFlanking',
      'removeFlanking',
      'removeAssembly',
      'removeMaterial',
      'addVent',
      'addVentIn',
      'removeVent',
      'setVent',
      'addVentElement',
      'removeVentElement',
      'moveVentElement',
      'setVentElement',
      'putVentDesign',
      'setAir',
    ]);
  });

  it.each(changing.map((one) => [one[0], one] as const))(
    '%s gives a valid, frozen project and leaves the old one',
    (_, one) => {
      const before = JSON.stringify(project);
      const after = apply(one);
      expect(after).not.toBe(project);
      expect(faultsOf(after)).toEqual([]);
      expect(frozen(after)).toBe(true);
      expect(JSON.stringify(project)).toBe(before);
      expect((commands[one[0]] as { label(args: unknown): string }).label(one[1])).toMatch(/^[A-Z].{3,}/);
    },
  );

  it.each(idle.map((one) => [JSON.stringify(one), one] as const))(
    '%s changes nothing and gives the same project',
    (_, one) => {
      expect(apply(one)).toBe(project);
    },
  );

  it('share what they do not touch', () => {
    const after = run(project, 'setSurface', { surface: 'roof', patch: { width_m: 6 } });
    expect(after.surfaces[0]).toBe(project.surfaces[0]);
    expect(after.assemblies).toBe(project.assemblies);
  });

  it('keep a project valid in any order', () => {
    fc.assert(
      fc.property(fc.shuffledSubarray([...changing], { maxLength: 12 }), (cases) => {
        const after = cases.reduce((before, one) => {
          try {
            const next = apply(one, before);
            return faultsOf(next).length === 0 ? next : before;
          } catch (fault) {
            expect(fault).toBeInstanceOf(CommandRefusal);
            return before;
          }
        }, project);
        const ids = partsOf(after).map((part) => part.id);
        expect(new Set(ids).size).toBe(ids.length);
        expect(faultsOf(after)).toEqual([]);
      }),
      repeatable(11, 60),
    );
  });

  it('copy their arguments and drop keys without a value', () => {
    const surface = {
      name: 'Gable',
      kind: 'wall' as const,
      width_m: 3,
      height_m: 2,
      assembly: 'wall-a',
      side: undefined,
    };
    const after = run(project, 'addSurface', { surface });
    surface.width_m = 99;
    expect(after.surfaces.at(-1)).toEqual({
      id: 'gable',
      name: 'Gable',
      kind: 'wall',
      width_m: 3,
      height_m: 2,
      assembly: 'wall-a',
    });
    expect(Object.keys(after.surfaces.at(-1) ?? {})).not.toContain('side');
  });
});

describe('ids made by commands', () => {
  it('come from the name and are never used twice', () => {
    const added = run(project, 'addSurface', {
      surface: { name: 'Róof!', kind: 'roof', width_m: 1, height_m: 1, assembly: 'wall-a' },
    });
    expect(added.surfaces.at(-1)?.id).toBe('roof-2');
    const door = run(added, 'addOpening', {
      surface: 'roof-2',
      opening: { name: '門', kind: 'hole', diameter_mm: 20, depth_mm: 30 },
    });
    expect(partsOf(door).at(-1)?.id).toBe('item');
  });

  it('avoid the keys that objects carry by themselves', () => {
    const after = run(project, 'addAssembly', { assembly: { name: 'Constructor', layers: [board] } });
    expect(Object.keys(after.assemblies)).toContain('constructor-2');
  });
});

describe('adopting', () => {
  it('swaps the part and the candidate, and back again', () => {
    const closed = run(project, 'adoptCandidate', { part: 'gap', candidate: 'closed' });
    expect(findPart(closed, 'gap')).toMatchObject({ sealed: true, width_mm: 3, price_each: 35 });
    expect(findPart(closed, 'gap')?.candidates?.[0]).toEqual({
      id: 'gap-of-3-mm',
      name: 'Gap of 3 mm',
      width_mm: 3,
      depth_mm: 44,
    });
    const open = run(closed, 'adoptCandidate', { part: 'gap', candidate: 'gap-of-3-mm' });
    const again = findPart(open, 'gap');
    expect(again).toMatchObject({ width_mm: 3, depth_mm: 44 });
    expect(again).not.toHaveProperty('sealed');
    expect(again).not.toHaveProperty('price_each');
    expect(again?.candidates?.[0]).toEqual({
      id: 'sealed',
      name: 'Sealed',
      sealed: true,
      price_each: 35,
      labour_each: 0,
    });
  });

  it('keeps the name of the former make-up and takes the swap out of the options', () => {
    const after = run(project, 'adoptCandidate', { part: 'north', candidate: 'separate' });
    expect(findPart(after, 'north')).toMatchObject({ assembly: 'wall-b', labour_per_m2: 40 });
    expect(findPart(after, 'north')?.candidates).toEqual([
      { id: 'timber-frame-two-dense-boards-inside', name: 'Timber frame, two dense boards inside', assembly: 'wall-a' },
    ]);
    expect(after.options?.[0]?.swaps).toEqual({ gap: 'closed' });
  });

  it('of an option makes all its swaps and ends the option', () => {
    const after = run(project, 'adoptOption', { option: 'both' });
    expect(findPart(after, 'north')).toMatchObject({ assembly: 'wall-b' });
    expect(findPart(after, 'gap')).toMatchObject({ sealed: true });
    expect(after.options).toBeUndefined();
  });
});

describe('removing', () => {
  it('refuses an assembly that is used, and names its users', () => {
    expect(() => run(project, 'removeAssembly', { assembly: 'wall-b' })).toThrow(
      'My board on separate frames cannot be removed: it is used by the candidate Separate frames of North wall.',
    );
    const unused = run(project, 'removeCandidate', { part: 'north', candidate: 'separate' });
    const after = run(unused, 'removeAssembly', { assembly: 'wall-b' });
    expect(Object.keys(after.assemblies)).toEqual(['wall-a', 'door-a']);
    expect(after.compare).toEqual(['wall-a']);
  });

  it('refuses a material that is used, and lets go of one that is not', () => {
    expect(() => run(project, 'removeMaterial', { material: 'my-wool' })).toThrow(
      'it is used in My board on separate frames',
    );
    const added = run(project, 'addMaterial', { material: wool });
    expect(run(added, 'removeMaterial', { material: 'felt' }).materials).toEqual(project.materials);
  });

  it('takes the swaps of a surface and its openings out of the options', () => {
    expect(run(project, 'removeSurface', { surface: 'north' }).options?.[0]?.swaps).toEqual({});
  });

  it('of a thing that is not there is a sentence', () => {
    expect(() => run(project, 'removeOpening', { opening: 'cat-flap' })).toThrow(
      'There is no part "cat-flap" in this project.',
    );
    expect(() => run(project, 'removeLayer', { assembly: 'wall-a', index: 9 })).toThrow(
      'has 5 layers; there is no place 10 in it',
    );
  });
});

describe('a remedy', () => {
  const remedied = (remedy: CommandArguments<'applyRemedy'>['remedy']) => {
    const after = run(project, 'applyRemedy', { assembly: 'wall-a', remedy });
    expect(faultsOf(after)).toEqual([]);
    const key = after.compare?.at(-1) ?? '';
    expect(after.compare).toEqual(['wall-a', 'wall-b', key]);
    expect(after.assemblies['wall-a']).toBe(project.assemblies['wall-a']);
    return after.assemblies[key]?.layers ?? [];
  };

  it('puts layers into another order, with another depth where it says so', () => {
    const layers = remedied({
      kind: 'reorder',
      label: 'All boards inside',
      layers: [{ keep: 4 }, { keep: 0 }, { keep: 3, depth: 0.06 }, { keep: 2 }],
    });
    expect(layers.map((layer) => layer.kind)).toEqual(['board', 'board', 'cavity', 'board']);
    expect(layers[2]).toMatchObject({ depth_mm: 60, fill: { thickness_mm: 60 } });
  });

  it('thickens a board, deepens and fills a cavity', () => {
    expect(remedied({ kind: 'thicken', label: 'Thicker', layer: 4, thickness: 0.025 })[4]).toMatchObject({
      thickness_mm: 25,
    });
    expect(remedied({ kind: 'deepen', label: 'Deeper', cavity: 3, depth: 0.1234 })[3]).toMatchObject({
      depth_mm: 123.4,
    });
    expect(remedied({ kind: 'fill-cavity', label: 'With wool', cavity: 3 })[3]).toMatchObject({
      fill: { material: 'mineral-wool-45', thickness_mm: 100 },
    });
  });

  it('refuses what no longer fits the assembly', () => {
    expect(() => remedied({ kind: 'deepen', label: 'Deeper', cavity: 0, depth: 0.1 })).toThrow(
      'layer 1 is no longer a cavity',
    );
  });
});
