import { describe, expect, it } from 'vitest';
import { createEvaluator } from '../../../src/engine/evaluate.ts';
import { checkProject } from '../../../src/project/check.ts';
import { toBuild } from '../../../src/project/toEngine.ts';
import { ventedRoom } from './ventedRoom.ts';

const withDoor = (fittings: object, kind = 'door') => {
  const { vents: _vents, ...room } = ventedRoom();
  const [surface, floor] = room.surfaces;
  const door = { ...surface?.openings?.[2], kind, ...fittings };
  return { ...room, surfaces: [{ ...surface, openings: [door] }, floor] };
};
const evaluator = createEvaluator();
const doorOf = (document: object) => {
  const checked = checkProject(document);
  if (!checked.ok) throw new Error(checked.faults.map(({ sentence }) => sentence).join(' '));
  return evaluator.shell(toBuild(checked.project), 'draft').parts.find(({ id }) => id === 'door');
};
const faultOf = (document: object): string => {
  const checked = checkProject(document);
  return checked.ok ? '' : checked.faults.map(({ sentence }) => sentence).join(' ');
};
const Rw = (document: object): number => doorOf(document)?.ratings?.Rw ?? 0;
const good = { perimeter: 'compression', threshold: 'drop' };

describe('a door in a document', () => {
  it('keeps its results where it has no fittings', () => {
    const door = doorOf(withDoor({}));
    expect(door?.ways).toBeUndefined();
    expect(
      toBuild(JSON.parse(JSON.stringify(withDoor({}))) as Parameters<typeof toBuild>[0]).parts[1]?.element,
    ).not.toHaveProperty('fittings');
  });

  it('loses by its joints, and tells them apart', () => {
    const door = doorOf(withDoor({ seals: good, keyhole: true }));
    expect(door?.ways?.map(({ name }) => name)).toEqual([
      'The leaf itself',
      'Joint at sides and head',
      'Joint at the threshold',
      'Keyhole',
    ]);
    const at1kHz = (document: object): number => doorOf(document)?.R[16] ?? 0;
    expect(at1kHz(withDoor({ seals: good }))).toBeLessThan(at1kHz(withDoor({})));
    expect(Rw(withDoor({ seals: good }))).toBeLessThanOrEqual(Rw(withDoor({})));
    expect(Rw(withDoor({ seals: { perimeter: 'none', threshold: 'none' } }))).toBeLessThan(
      Rw(withDoor({ seals: good })) - 5,
    );
  });

  it('gains by a second one behind it', () => {
    const pair = withDoor({ seals: good, second: { assembly: 'leaf', gap_mm: 200, lined: true, seals: good } });
    expect(Rw(pair)).toBeGreaterThan(Rw(withDoor({ seals: good })) + 10);
  });

  it('may be a window with a second pane, or a service panel with cables and sockets', () => {
    expect(doorOf(withDoor({ second: { assembly: 'wall', gap_mm: 100 } }, 'window'))?.ways).toHaveLength(1);
    const panel = withDoor(
      {
        items: [
          { kind: 'cable', count: 3 },
          { kind: 'socket-back-to-back', count: 2 },
        ],
      },
      'service',
    );
    expect(doorOf(panel)?.ways?.map(({ name }) => name)).toEqual(['The leaf itself', 'Cables', 'Sockets back to back']);
  });

  it.each([
    ['seals on a service panel', withDoor({ seals: good }, 'service'), 'seals on a door or window'],
    ['a keyhole in a window', withDoor({ keyhole: true }, 'window'), 'keyhole on a door'],
    ['a second leaf that is none', withDoor({ second: { assembly: 'laef', gap_mm: 100 } }), 'Did you mean leaf?'],
    [
      'a pipe thicker than its hole',
      withDoor({ items: [{ kind: 'pipe', count: 1, hole_mm: 20, through_mm: 30 }] }, 'service'),
      'at most the hole, 20 mm',
    ],
    ['a quality of seal that is none', withDoor({ seals: { perimeter: 'rubber', threshold: 'drop' } }), 'compression'],
    [
      'joints of a measured door',
      withDoor({ assembly: undefined, measured: { bands_Hz: [100, 200, 400], R_dB: [20, 22, 25] }, seals: good }),
      'holds its joints already',
    ],
  ])('refuses %s with a way out', (_what, document, sentence) => {
    expect(faultOf(JSON.parse(JSON.stringify(document)) as object)).toContain(sentence);
  });
});
