import { cleanup, fireEvent, render, screen, within } from '@testing-library/svelte';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { studio } from '../../../renderer/store/studio.svelte.ts';
import type { BandChoice } from '../../../renderer/views/layOut/bandChoice.ts';
import { boxRoom } from '../../../renderer/views/layOut/newRoom.ts';
import { partFigures } from '../../../renderer/views/layOut/partFigures.ts';
import WhatGetsOut from '../../../renderer/views/layOut/WhatGetsOut.svelte';
import { createEvaluator } from '../../../src/engine/evaluate.ts';
import { commands } from '../../../src/project/commands/index.ts';
import type { OpeningEntry, Project } from '../../../src/project/schema.ts';
import { toBuild } from '../../../src/project/toEngine.ts';

const gap: OpeningEntry = { id: 'gap', name: 'Gap', kind: 'slit', length_mm: 900, width_mm: 10, depth_mm: 44 };
const empty: Project = { format: 'lullwright/project@1', name: 'Room', assemblies: {}, surfaces: [] };
const walls = commands.addSurfaces.apply(empty, boxRoom(empty, 5, 4, 2.4));
const withGap = commands.addOpening.apply(walls, { surface: 'south-wall', opening: gap });
const project = commands.addCandidate.apply(withGap, {
  part: 'gap',
  candidate: { name: 'Sealed for good', sealed: true, price_each: 15 },
});
const evaluator = createEvaluator();
const build = toBuild(project);
const shell = evaluator.shell(build, 'draft');
const plan = evaluator.plan(build, 'draft');

const show = (band: BandChoice): HTMLElement[] => {
  render(WhatGetsOut, { project, shell, plan, figures: partFigures(shell, band), band });
  return screen.getAllByRole('listitem').filter((row) => row.querySelector('h2'));
};

beforeEach(() => {
  HTMLElement.prototype.scrollIntoView = () => undefined;
  studio.project = project;
  studio.selectedPart = null;
});
afterEach(cleanup);

describe('what gets out, as listed', () => {
  it('is shared out completely at the whole and at every octave', () => {
    for (const band of ['whole', 63, 250, 1000, 4000] as const) {
      const figures = [...partFigures(shell, band).values()];
      expect(figures.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 6);
      expect(figures.map(({ share }) => share)).toEqual(figures.map(({ share }) => share).toSorted((a, b) => b - a));
      expect(figures.filter(({ limiting }) => limiting)).toEqual([figures[0]]);
    }
  });

  it('names the ceiling in the bass and the gap among the cymbals', () => {
    expect(show(63)[0]?.textContent).toContain('Ceiling');
    cleanup();
    expect(show(4000)[0]?.textContent).toContain('leaves by the gap');
  });

  it('opens a part to its sizes, what it would gain if perfect, and what its candidate buys', async () => {
    const row = show('whole').find((it) => it.textContent.includes('by the gap'));
    if (!row) throw new Error('the gap is not listed');
    await fireEvent.click(within(row).getByRole('button', { name: /Gap/ }));
    expect(row.textContent).toContain('Open gap 10 mm wide, 900 mm long, 44 mm deep');
    expect(row.textContent).toMatch(/If this were perfect, the room would gain/);
    expect(row.textContent).toMatch(/Sealed for good.*dB less gets out.* 15/);
    expect(studio.selectedPart).toBe('gap');
  });

  it('adopts a candidate: the gap is sealed, and what it was becomes the candidate', async () => {
    const row = show('whole').find((it) => it.textContent.includes('by the gap'));
    if (!row) throw new Error('the gap is not listed');
    await fireEvent.click(within(row).getByRole('button', { name: /Gap/ }));
    await fireEvent.click(within(row).getByRole('button', { name: 'Adopt Sealed for good' }));
    const adopted = studio.project?.surfaces.flatMap((surface) => surface.openings ?? [])[0];
    expect(adopted).toMatchObject({ sealed: true, candidates: [{ name: 'Gap of 10 mm', width_mm: 10 }] });
  });
});
