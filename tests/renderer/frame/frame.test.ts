import { cleanup, fireEvent, render, screen, waitFor } from '@testing-library/svelte';
import { tick } from 'svelte';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { createEvaluator } from '../../../src/engine/evaluate.ts';
import { newBuild } from '../../../src/project/newBuild.ts';
import type { Project } from '../../../src/project/schema.ts';
import { toBuild } from '../../../src/project/toEngine.ts';
import { explain } from '../../../src/worker/explain/explain.ts';
import { actionOfKey } from '../../../renderer/actions/windowActions.ts';
import { frame } from '../../../renderer/store/frame.svelte.ts';
import { preferences } from '../../../renderer/store/preferences.svelte.ts';
import { studio } from '../../../renderer/store/studio.svelte.ts';
import Banners from '../../../renderer/views/frame/Banners.svelte';
import Strip from '../../../renderer/views/frame/Strip.svelte';
import NewBuildDialog from '../../../renderer/views/start/NewBuildDialog.svelte';
import Tour from '../../../renderer/views/start/Tour.svelte';

const project = newBuild({
  name: 'Shed',
  length_m: 4,
  width_m: 3,
  height_m: 2.3,
  shell: 'block-garage',
  source: null,
  neighbour_m: 9,
  budget: null,
  currency: '£',
});
const evaluator = createEvaluator();
const shell = evaluator.shell(toBuild(project), 'draft');
const plan = evaluator.plan(toBuild(project), 'draft');
const head = { id: 'a', revision: 3, savedAt: '2026-03-02T14:03:00Z', undoLabel: null, redoLabel: null };

beforeEach(() => {
  studio.project = project;
  studio.saving.begin(head);
  studio.results.shell = shell;
  studio.results.plan = plan;
});
afterEach(() => {
  cleanup();
  studio.close();
  studio.refusal = null;
  studio.otherWindows.overtakenBy = null;
  studio.results.fault = null;
  frame.tourStep = null;
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
});

describe('the strip', () => {
  it('names the part that limits the room with its share in words and figures', () => {
    render(Strip);
    const limiting = shell.parts.find((part) => part.id === shell.limiting);
    const figure = screen.getByRole('button', { name: new RegExp(`Limits the room.*${limiting?.name ?? '?'}`) });
    expect(figure.classList.contains('limit')).toBe(true);
    expect(
      screen.getByText(`${Math.round(100 * (limiting?.share ?? 0))} % of what gets out`, { exact: false }),
    ).toBeTruthy();
  });

  it('always shows the bass beside the rating, and STC when asked', async () => {
    render(Strip);
    expect(screen.getByRole('button', { name: /Whole room, Rw/ }).textContent).toContain(String(shell.ratings.Rw));
    expect(screen.getByRole('button', { name: /Bass, 50–100 Hz/ }).textContent).toContain(
      String(Math.round(shell.bassR)),
    );
    expect(screen.queryByText('STC')).toBeNull();
    await fireEvent.click(screen.getByRole('button', { name: 'STC beside it' }));
    expect(screen.getByText('STC')).toBeTruthy();
    frame.americanRatings = false;
  });

  it('leads to the part of the next best step', async () => {
    render(Strip);
    const shows = screen.getAllByRole('button', { name: 'Show it' });
    await fireEvent.click(shows.at(-1) ?? document.body);
    expect(studio.selectedPart).toBe(plan.next?.part);
    expect(screen.getByText(/the most for its money|the largest gain/)).toBeTruthy();
    expect(studio.station).toBe('layOut');
  });

  it('greys and dates figures that are not of the project as it stands', async () => {
    render(Strip);
    studio.results.answeredAt = new Date('2026-03-02T14:05:00');
    studio.results.fault = 'The calculation stopped.';
    await tick();
    expect(screen.getByText(/^\s*Figures of 14:05\s*$/)).toBeTruthy();
    expect(document.querySelector('.strip.dated')).not.toBeNull();
  });

  it('shows the working of a figure when it is pressed', async () => {
    vi.spyOn(studio.results, 'explain').mockImplementation((what) =>
      Promise.resolve(explain(evaluator, project, what)),
    );
    render(Strip);
    await fireEvent.click(screen.getByRole('button', { name: /Bass, 50–100 Hz/ }));
    await waitFor(() => expect(screen.getByText(/EN 12354-3/)).toBeTruthy());
    const dialog = screen.getByRole('dialog');
    expect(dialog.textContent).toContain('How far off');
    await fireEvent.click(screen.getByRole('button', { name: 'Close' }));
    expect(screen.queryByRole('dialog')).toBeNull();
  });
});

describe('banners', () => {
  it('offer two ways out when another window was faster', async () => {
    const take = vi.spyOn(studio.otherWindows, 'takeNewer').mockResolvedValue();
    studio.otherWindows.overtakenBy = 4;
    render(Banners);
    expect(screen.getByRole('button', { name: 'Keep mine as a copy' })).toBeTruthy();
    await fireEvent.click(screen.getByRole('button', { name: 'Take the newer version' }));
    expect(take).toHaveBeenCalledOnce();
  });

  it('say why a project is not saved and try again on demand', async () => {
    const flush = vi.spyOn(studio.saving, 'flush').mockResolvedValue();
    studio.saving.refusal = { code: 'store-full', sentence: 'The disk is full. Free some space.' };
    render(Banners);
    expect(screen.getByText(/The disk is full/)).toBeTruthy();
    await fireEvent.click(screen.getByRole('button', { name: 'Try again' }));
    expect(flush).toHaveBeenCalledOnce();
  });
});

describe('the tour', () => {
  it('has five steps by keyboard and is remembered', async () => {
    preferences.tourSeen = false;
    frame.tourStep = 0;
    render(Tour);
    const titles = [];
    for (let step = 0; step < 5; step += 1) {
      titles.push(screen.getByRole('heading').textContent);
      await fireEvent.keyDown(window, { key: 'ArrowRight' });
    }
    expect(new Set(titles).size).toBe(5);
    expect(frame.tourStep).toBeNull();
    expect(preferences.tourSeen).toBe(true);
  });

  it('can be left at any step', async () => {
    frame.tourStep = 2;
    render(Tour);
    await fireEvent.keyDown(window, { key: 'Escape' });
    expect(frame.tourStep).toBeNull();
  });
});

describe('five questions', () => {
  it('become a project of the size given', async () => {
    const created: Project[] = [];
    vi.stubGlobal(
      'Worker',
      class {
        postMessage(): void {
          // never answers: this test is about the document
        }
      },
    );
    vi.spyOn(studio.client, 'call').mockImplementation((method, params) => {
      if (method !== 'projects.create') return Promise.reject(new Error(method));
      const { document } = params as { document: Project };
      created.push(document);
      return Promise.resolve({ ...head, id: 'new', document });
    });
    const onclose = vi.fn();
    render(NewBuildDialog, { onclose });
    const length = screen.getByLabelText('Length, east to west');
    await fireEvent.input(length, { target: { value: '6 m' } });
    await fireEvent.blur(length);
    await fireEvent.change(screen.getByLabelText('Existing shell'), { target: { value: 'cellar' } });
    await fireEvent.click(screen.getByRole('button', { name: 'Begin the build' }));
    await waitFor(() => expect(onclose).toHaveBeenCalled());
    expect(created[0]?.surfaces.find((surface) => surface.id === 'north')?.width_m).toBe(6);
    expect(created[0]?.surfaces.find((surface) => surface.id === 'top')?.kind).toBe('ceiling');
    expect(studio.project?.name).toBe('My room');
  });
});

describe('keys of the window', () => {
  const press = (key: string, target: HTMLElement, shiftKey = false): KeyboardEvent => {
    const event = new KeyboardEvent('keydown', { key, ctrlKey: true, shiftKey, bubbles: true });
    target.dispatchEvent(event);
    return event;
  };
  it('undo and redo everywhere but inside a text being written', () => {
    expect(actionOfKey(press('z', document.body))).toBe('undo');
    expect(actionOfKey(press('Z', document.body, true))).toBe('redo');
    expect(actionOfKey(press('y', document.body))).toBe('redo');
    const field = document.body.appendChild(document.createElement('input'));
    expect(actionOfKey(press('z', field))).toBeNull();
    expect(actionOfKey(press('p', field))).toBe('print');
    field.dataset['state'] = 'kept';
    expect(actionOfKey(press('z', field))).toBe('undo');
    field.remove();
  });
});
