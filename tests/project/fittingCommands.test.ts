import { describe, expect, it } from 'vitest';
import { checkProject } from '../../src/project/check.ts';
import { commands, type CommandArguments, type CommandName } from '../../src/project/commands/index.ts';
import { findPart } from '../../src/project/parts.ts';
import { toBuild } from '../../src/project/toEngine.ts';
import type { Project } from '../../src/project/schema.ts';
import document from '../support/exampleDocument.json' with { type: 'json' };

const checked = checkProject(document);
if (!checked.ok) throw new Error(checked.faults.map((fault) => fault.sentence).join('\n'));

const run = <C extends CommandName>(before: Project, name: C, args: CommandArguments<C>): Project => {
  const after = commands[name].apply(before, args);
  expect(checkProject(after)).toMatchObject({ ok: true });
  return after;
};
const project = run(checked.project, 'addOpening', {
  surface: 'north',
  opening: { id: 'sockets', name: 'Sockets', kind: 'service', width_m: 0.2, height_m: 0.1, assembly: 'wall-a' },
});
const socket = { kind: 'socket-recessed', count: 2, sealed: false } as const;

describe('services in a wall', () => {
  it('are added, changed and removed one by one', () => {
    const one = run(project, 'addServiceItem', { opening: 'sockets', item: socket });
    const two = run(one, 'addServiceItem', { opening: 'sockets', item: { kind: 'cable', count: 1, sealed: true } });
    const changed = run(two, 'setServiceItem', { opening: 'sockets', at: 0, patch: { count: 3, sealed: true } });
    expect(findPart(changed, 'sockets')).toMatchObject({
      items: [
        { kind: 'socket-recessed', count: 3, sealed: true },
        { kind: 'cable', count: 1 },
      ],
    });
    expect(run(changed, 'setServiceItem', { opening: 'sockets', at: 0, patch: { count: 3 } })).toBe(changed);
    const last = run(changed, 'removeServiceItem', { opening: 'sockets', at: 0 });
    expect(findPart(last, 'sockets')).toMatchObject({ items: [{ kind: 'cable' }] });
    expect(findPart(run(last, 'removeServiceItem', { opening: 'sockets', at: 0 }), 'sockets')).not.toHaveProperty(
      'items',
    );
  });

  it('that are not there are refused with a sentence', () => {
    expect(() => commands.removeServiceItem.apply(project, { opening: 'sockets', at: 0 })).toThrow(
      'Sockets has no service number 1.',
    );
    expect(() => commands.addServiceItem.apply(project, { opening: 'gap', item: socket })).toThrow(
      'has no seals or fittings',
    );
  });
});

describe('a door', () => {
  const second = { assembly: 'door-a', gap_mm: 150, lined: false };
  const seals = { perimeter: 'foam', threshold: 'drop' } as const;

  it('keeps the seals of each leaf by themselves', () => {
    expect(() => commands.setSeals.apply(project, { opening: 'door', leaf: 'second', seals })).toThrow(
      'has no second leaf',
    );
    const lobby = run(project, 'setSecondLeaf', { opening: 'door', second });
    const sealed = run(lobby, 'setSeals', { opening: 'door', leaf: 'second', seals });
    const lined = run(sealed, 'setSecondLeaf', { opening: 'door', second: { ...second, lined: true } });
    expect(findPart(lined, 'door')).toMatchObject({ second: { lined: true, seals } });
    expect(findPart(lined, 'door')).not.toHaveProperty('seals');
    expect(run(lined, 'setSecondLeaf', { opening: 'door', second: null }).surfaces).toEqual(project.surfaces);
  });

  it('loses its fittings when a test report stands for it, which has them in it', () => {
    const sealed = run(project, 'setSeals', { opening: 'door', leaf: 'first', seals });
    const holed = run(sealed, 'setDoorHoles', { opening: 'door', patch: { keyhole: true } });
    const tested = run(holed, 'setPart', {
      part: 'door',
      measured: { bands_Hz: [100, 500, 2000], R_dB: [20, 30, 32] },
    });
    expect(findPart(tested, 'door')).not.toHaveProperty('seals');
    expect(findPart(tested, 'door')).not.toHaveProperty('keyhole');
  });
});

describe('a candidate with fittings of its own', () => {
  const better = { id: 'better', name: 'Better seals', assembly: 'door-a' };
  const fittings = { seals: { perimeter: 'compression', threshold: 'drop' } } as const;
  const leaky = run(project, 'setSeals', {
    opening: 'door',
    leaf: 'first',
    seals: { perimeter: 'none', threshold: 'none', gap_mm: 4 },
  });
  const offered = run(leaky, 'addCandidate', { part: 'door', candidate: { ...better, fittings } });

  it('is weighed with them, and one without keeps those of the door', () => {
    const both = run(offered, 'addCandidate', { part: 'door', candidate: { name: 'Same leaf', assembly: 'door-a' } });
    const door = toBuild(both).parts.find(({ id }) => id === 'door');
    const fitted = door?.candidates.map(({ element }) =>
      element.kind === 'assembly' ? element.fittings?.seals : null,
    );
    expect(fitted).toMatchObject([{ perimeter: 'compression' }, { perimeter: 'none', perimeterGap: 0.004 }]);
  });

  it('gives the door its seals when it is adopted, and the old ones when that is taken back', () => {
    const adopted = run(offered, 'adoptCandidate', { part: 'door', candidate: 'better' });
    expect(findPart(adopted, 'door')).toMatchObject(fittings);
    const [former] = findPart(adopted, 'door')?.candidates ?? [];
    expect(former).toMatchObject({ assembly: 'door-a', fittings: { seals: { gap_mm: 4 } } });
    const back = run(adopted, 'adoptCandidate', { part: 'door', candidate: former?.id ?? '' });
    expect(findPart(back, 'door')).toMatchObject({ seals: { perimeter: 'none', gap_mm: 4 } });
  });

  it('of a test report takes the seals out, and brings them back', () => {
    const tested = { id: 'tested', name: 'Tested', measured: { bands_Hz: [100, 500, 2000], R_dB: [20, 30, 32] } };
    const given = run(leaky, 'addCandidate', { part: 'door', candidate: tested });
    const adopted = run(given, 'adoptCandidate', { part: 'door', candidate: 'tested' });
    expect(findPart(adopted, 'door')).not.toHaveProperty('seals');
    const [former] = findPart(adopted, 'door')?.candidates ?? [];
    const back = run(adopted, 'adoptCandidate', { part: 'door', candidate: former?.id ?? '' });
    expect(findPart(back, 'door')).toMatchObject({ seals: { gap_mm: 4 } });
  });

  it('has no price but the builder’s own', () => {
    const [candidate] = toBuild(offered).parts.find(({ id }) => id === 'door')?.candidates ?? [];
    expect(candidate?.price).toEqual({ materials: null, labour: null, illustrative: false });
  });

  it('is refused on a wall and with a measured curve', () => {
    const wall = commands.addCandidate.apply(project, {
      part: 'north',
      candidate: { name: 'Sealed', assembly: 'wall-b', fittings },
    });
    const measured = { bands_Hz: [100, 500, 2000], R_dB: [20, 30, 32] };
    const curve = commands.addCandidate.apply(project, {
      part: 'door',
      candidate: { name: 'Sealed', measured, fittings },
    });
    for (const wrong of [wall, curve]) expect(checkProject(wrong)).toMatchObject({ ok: false });
  });
});
