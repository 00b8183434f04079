import { describe, expect, it } from 'vitest';
import { betterWays } from '../../../../renderer/views/layOut/fittings/betterFittings.ts';
import { fittingCautions } from '../../../../renderer/views/layOut/fittings/fittingCautions.ts';
import { fittingsInWords } from '../../../../renderer/views/layOut/fittings/fittingsInWords.ts';
import { pieceFindings, pieceGroups } from '../../../../renderer/views/layOut/fittings/pieceWords.ts';
import { leakWords, PERIMETER_SEALS, THRESHOLD_SEALS } from '../../../../renderer/views/layOut/fittings/sealWords.ts';
import { newOpening, OPENING_KINDS } from '../../../../renderer/views/layOut/newPart.ts';
import { boxRoom } from '../../../../renderer/views/layOut/newRoom.ts';
import { createEvaluator } from '../../../../src/engine/evaluate.ts';
import type { PieceResult } from '../../../../src/engine/shell/index.ts';
import { checkProject } from '../../../../src/project/check.ts';
import { commands } from '../../../../src/project/commands/index.ts';
import type { OpeningEntry, Project } from '../../../../src/project/schema.ts';
import { toBuild } from '../../../../src/project/toEngine.ts';

const piece = (name: string, share: number, without: number, leaf: PieceResult['leaf'] = null): PieceResult => ({
  name,
  leaf,
  share,
  openArea: [],
  Rw: 24,
  without: { R: [], Rw: without, bassGain: 1.24 },
});
type Panel = Exclude<OpeningEntry, { kind: 'slit' | 'hole' }>;
const door: Panel = { id: 'd', name: 'Door', kind: 'door', width_m: 0.9, height_m: 2, assembly: 'leaf' };
const project: Project = {
  format: 'lullwright/project@1',
  name: 'Room',
  assemblies: {
    leaf: { name: 'Solid leaf', layers: [{ kind: 'board', material: 'door-solid-core', thickness_mm: 44 }] },
  },
  surfaces: [],
};

describe('seals in plain words', () => {
  it('say what a metre leaks, and as how wide a slit', () => {
    expect(leakWords('foam')).toBe('Each metre leaks 10 cm², like a slit 1 mm wide that is quite open.');
    expect(leakWords('compression')).toBe('Each metre leaks 1 cm², like a slit 0.1 mm wide that is quite open.');
    expect(leakWords('none')).toBe('As wide as you write beside it.');
  });

  it('offer drop seals below only', () => {
    expect(PERIMETER_SEALS.map(({ value }) => value)).not.toContain('drop');
    expect(THRESHOLD_SEALS.map(({ value }) => value)).toContain('double-drop');
  });

  it('read as one line with lock and second leaf', () => {
    expect(fittingsInWords(project, door)).toBe(
      'Joints not described, taken as tight: the figure is that of the leaf alone.',
    );
    expect(
      fittingsInWords(project, {
        ...door,
        seals: { perimeter: 'foam', threshold: 'drop' },
        keyhole: true,
        second: { assembly: 'leaf', gap_mm: 300, lined: true },
      }),
    ).toBe(
      'Foam strip at sides and head, drop seal below, open keyhole. Then 300 mm of air, lined, and a second door: Solid leaf, joints not described, taken as tight.',
    );
  });
});

describe('the breakdown of a door', () => {
  const pieces = [
    piece('The leaf itself', 0.3, 25),
    piece('Joint at sides and head', 0.1, 24),
    piece('Joint at the threshold', 0.6, 32),
  ];

  it('begins with what stands out', () => {
    expect(pieceFindings(pieces, 'door')).toEqual([
      'The threshold lets out more than the leaf itself: without that leak all of it would be Rw 32 instead of 24.',
    ]);
    expect(pieceFindings(pieces, 'window')[0]).toMatch(/^The joint at the sill lets out more than the pane itself/);
    expect(pieceFindings([piece('The leaf itself', 0.9, 40), piece('Keyhole', 0.1, 24)], 'door')).toEqual([
      'The leaf lets out most; better seals would bring less than a heavier leaf.',
    ]);
    expect(pieceFindings([piece('The leaf itself', 1, 99)], 'door')).toEqual([]);
  });

  it('lists the pieces by share, with the whole door without each', () => {
    const [group] = pieceGroups(pieces, 'door');
    expect(group?.title).toBeNull();
    expect(group?.rows.map(({ name, percent, without }) => [name, percent, without])).toEqual([
      ['Joint at the threshold', '60 %', 'Rw 32 (+8 dB), bass +1.2 dB'],
      ['The leaf itself', '30 %', 'Rw 25 (+1 dB), bass +1.2 dB'],
      ['Joint at sides and head', '10 %', 'Rw 24, bass +1.2 dB'],
    ]);
  });

  it('keeps two leaves apart', () => {
    const lobby = [piece('First leaf', 1, 30, 'first'), piece('Second leaf', 1, 30, 'second')];
    expect(pieceGroups(lobby, 'window').map(({ title, rows }) => [title, rows[0]?.name])).toEqual([
      ['What comes through the first pane and its joints', 'First pane'],
      ['What comes through the second pane and its joints', 'Second pane'],
    ]);
  });
});

describe('cautions', () => {
  it('stand where they matter', () => {
    expect(fittingCautions(door)[0]).toMatch(/open from inside without a key/);
    expect(fittingCautions({ ...door, second: { assembly: 'leaf', gap_mm: 300, lined: false } })[0]).toMatch(/^Both/);
    expect(fittingCautions({ ...door, letter_plate: 'plain' }).join(' ')).toMatch(/smoke/);
    const service: Panel = { ...door, kind: 'service', items: [{ kind: 'cable', count: 1, sealed: false }] };
    expect(fittingCautions(service).join(' ')).toMatch(/licensed electrician.*fire stop/);
    expect(fittingCautions({ ...service, items: [{ kind: 'pipe', count: 1, sealed: true }] })).toHaveLength(1);
  });
});

describe('better fittings', () => {
  it('are offered as candidates that the rules accept and that let out less than an unsealed door', () => {
    const empty: Project = { ...project, assemblies: {} };
    const room = commands.addSurfaces.apply(empty, boxRoom(empty, 5, 4, 2.4));
    const leaky = { ...door, seals: { perimeter: 'none', threshold: 'none' } as const };
    const wall = room.surfaces[0]?.id ?? '';
    const built = commands.addMadeOpening.apply(room, {
      surface: wall,
      opening: leaky,
      assemblies: project.assemblies,
    });
    const ways = betterWays(leaky);
    expect(ways).toHaveLength(3);
    const offered = ways.reduce(
      (next, candidate) => commands.addCandidate.apply(next, { part: 'd', candidate }),
      built,
    );
    expect(checkProject(offered)).toMatchObject({ ok: true });
    const { rungs } = createEvaluator().plan(toBuild(offered), 'draft');
    const gains = rungs.filter((rung) => rung.part === 'd').map((rung) => rung.energyGain);
    expect(gains).toHaveLength(3);
    expect(Math.min(...gains)).toBeGreaterThan(0.5);
  });

  it('are not offered twice, nor for a tested door', () => {
    const [first] = betterWays(door);
    expect(betterWays({ ...door, candidates: [{ id: 'c', name: first?.name ?? '', assembly: 'leaf' }] })).toHaveLength(
      2,
    );
    const { assembly: _leaf, ...tested } = door;
    expect(betterWays(tested)).toEqual([]);
  });
});

describe('services', () => {
  it('are added as pieces of the wall they stand in, the usual ones first', () => {
    const empty: Project = { ...project, assemblies: {} };
    const room = commands.addSurfaces.apply(empty, boxRoom(empty, 5, 4, 2.4));
    const wall = room.surfaces[0];
    if (!wall) throw new Error('no wall');
    const starts = OPENING_KINDS.filter(({ kind }) => newOpening(room, wall, kind, null).kind === 'service');
    expect(starts.map(({ label }) => label)).toEqual([
      'Sockets',
      'Cable',
      'Pipe',
      'Recessed light',
      'Other service, open',
    ]);
    expect(newOpening(room, wall, 'sockets', null)).toMatchObject({
      assembly: wall.assembly,
      items: [{ kind: 'socket-recessed', count: 1 }],
    });
  });
});
