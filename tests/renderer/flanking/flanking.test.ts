import { cleanup, fireEvent, render, screen } from '@testing-library/svelte';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { flankingMarks } from '../../../renderer/drawings/netFlanking.ts';
import { net } from '../../../renderer/drawings/net.ts';
import { studio } from '../../../renderer/store/studio.svelte.ts';
import { flankingDraft } from '../../../renderer/views/flanking/flankingDraft.ts';
import FlankingDialog from '../../../renderer/views/flanking/FlankingDialog.svelte';
import FlankingTable from '../../../renderer/views/flanking/FlankingTable.svelte';
import { partTableContent } from '../../../renderer/views/layOut/partTableContent.ts';
import { boxRoom } from '../../../renderer/views/layOut/newRoom.ts';
import { createEvaluator } from '../../../src/engine/evaluate.ts';
import { checkProject } from '../../../src/project/check.ts';
import { commands } from '../../../src/project/commands/index.ts';
import type { Project } from '../../../src/project/schema.ts';
import { toBuild } from '../../../src/project/toEngine.ts';

const empty: Project = { format: 'lullwright/project@1', name: 'Room', assemblies: {}, surfaces: [] };
const room = commands.addSurfaces.apply(empty, boxRoom(empty, 5, 4, 2.4));
const KINDS = ['slab-through', 'soffit-through', 'wall-into-building'] as const;
const withPath = (kind: (typeof KINDS)[number], past: string): Project => {
  const path = flankingDraft(room, kind, past);
  if (!path) throw new Error('no draft');
  return commands.addFlanking.apply(room, { path });
};

beforeEach(() => {
  HTMLDialogElement.prototype.showModal = () => undefined;
  HTMLDialogElement.prototype.close = () => undefined;
  studio.project = room;
  studio.refusal = null;
});
afterEach(cleanup);

describe('a way round', () => {
  it.each(KINDS)('of the kind %s begins as a path that the format accepts, past every wall', (kind) => {
    for (const wall of room.surfaces.filter((surface) => surface.kind === 'wall')) {
      const project = withPath(kind, wall.id);
      const checked = checkProject(project);
      expect(checked.ok ? '' : checked.faults[0]?.sentence).toBe('');
    }
  });
  it('is as long as the edge it crosses: the wall’s width at a floor, its height at a wall', () => {
    expect(flankingDraft(room, 'slab-through', 'north-wall')?.length_m).toBe(5);
    expect(flankingDraft(room, 'wall-into-building', 'north-wall')?.length_m).toBe(2.4);
  });
  it('is not offered where there is nothing to go past', () => {
    expect(flankingDraft(empty, 'slab-through')).toBeNull();
  });
  it('crosses on the net the edge that the wall shares with what carries it, from the room outwards', () => {
    const [mark] = flankingMarks(net(room.surfaces, 1.5), withPath('slab-through', 'east-wall').flanking ?? []);
    const laid = net(room.surfaces, 1.5);
    const east = laid.surfaces.find(({ entry }) => entry.id === 'east-wall');
    expect(mark?.from.x).toBeCloseTo(east?.box.x ?? NaN, 9);
    expect(mark?.to.x).toBeCloseTo(laid.middle.x + laid.middle.width, 9);
    expect(Math.abs((mark?.to.y ?? 0) - (mark?.from.y ?? 0))).toBeCloseTo(4, 9);
    expect(mark?.out).toEqual({ x: 1, y: 0 });
  });
  it('is marked no longer than its junction', () => {
    const project = withPath('slab-through', 'north-wall');
    const short = project.flanking?.map((path) => ({ ...path, length_m: 1.5 })) ?? [];
    const [mark] = flankingMarks(net(project.surfaces, 1.5), short);
    expect(Math.abs((mark?.to.x ?? 0) - (mark?.from.x ?? 0))).toBeCloseTo(1.5, 9);
    expect(mark?.out).toEqual({ x: 0, y: -1 });
  });
});

describe('the dialog for a way round', () => {
  it('asks in plain words and adds the path', async () => {
    render(FlankingDialog, { project: room, path: null, onclose: () => undefined });
    expect(screen.getByText('Does a slab or soffit run through to the house?')).toBeTruthy();
    await fireEvent.click(screen.getByText('Add this way round'));
    expect(studio.project?.flanking?.map(({ kind, inside }) => [kind, inside.surface])).toEqual([
      ['slab-through', 'floor'],
    ]);
  });
});

describe('the table of ways round', () => {
  it('goes into the file of all parts, as wide as its headings', () => {
    const project = withPath('slab-through', 'east-wall');
    const { headings, rows } = partTableContent(project, createEvaluator().shell(toBuild(project), 'draft'), []);
    expect(rows).toHaveLength(room.surfaces.length + 1);
    expect(rows.at(-1)).toHaveLength(headings.length);
    expect(rows.at(-1)?.slice(0, 3)).toEqual(['Floor slab into the house', 'Way round', 'East wall']);
    expect(rows.at(-1)?.[headings.indexOf('R_4000_Hz_dB')]).toBeGreaterThan(30);
  });
  it('gives share and R of each', () => {
    const project = withPath('slab-through', 'east-wall');
    const shell = createEvaluator().shell(toBuild(project), 'draft');
    render(FlankingTable, { project, shell });
    const cells = screen.getAllByRole('cell').map((cell) => cell.textContent.trim());
    expect(cells[0]).toMatch(/^(< )?\d+ %$/);
    expect(cells.slice(5, 12).every((text) => Number(text) > 0)).toBe(true);
  });
});
