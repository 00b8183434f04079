import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { createAnswerTask } from '../../../src/worker/answerTask.ts';
import { newBuild } from '../../../src/project/newBuild.ts';
import type { WorkerRequest, WorkerResponse } from '../../../src/worker/protocol.ts';
import { Results } from '../../../renderer/store/results.svelte.ts';

const project = newBuild({
  name: 'Shed',
  length_m: 4,
  width_m: 3,
  height_m: 2.3,
  shell: 'brick-garage',
  source: null,
  neighbour_m: 9,
  budget: null,
  currency: '',
});
const wider = { ...project, name: 'Wider' };

/** A worker that computes at once and answers when the test lets it. */
const held: (() => void)[] = [];
const answer = createAnswerTask(() => 0);
class HeldWorker {
  onmessage: ((event: { data: WorkerResponse }) => void) | null = null;
  onerror = null;
  postMessage(request: WorkerRequest): void {
    const response: WorkerResponse = { sequence: request.sequence, ok: true, answer: answer(request) };
    held.push(() => this.onmessage?.({ data: response }));
  }
}
const settle = async (): Promise<void> => {
  held.shift()?.();
  await vi.advanceTimersByTimeAsync(0);
};

beforeEach(() => {
  held.length = 0;
  vi.useFakeTimers();
  vi.stubGlobal('Worker', HeldWorker);
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

describe('figures of the project on screen', () => {
  it('are late only when they keep one waiting, and the plan for itself', async () => {
    const results = new Results();
    void results.update(project, 'full');
    expect([results.stale, results.late]).toEqual([true, false]);
    await vi.advanceTimersByTimeAsync(200);
    expect(results.late).toBe(true);
    await settle();
    expect([results.stale, results.late, results.planLate]).toEqual([false, false, true]);
    await settle();
    expect(results.planLate).toBe(false);
    expect(results.plan?.rungs.length).toBeGreaterThan(0);
  });

  it('keep the last good result while a newer one is on its way', async () => {
    const results = new Results();
    void results.update(project, 'draft');
    await settle();
    const first = results.shell;
    expect(first).not.toBeNull();
    void results.update(wider, 'draft');
    expect(results.shell).toBe(first);
    expect(results.stale).toBe(true);
  });

  it('are not taken for those of the newest edit when they answer an older one', async () => {
    const results = new Results();
    void results.update(project, 'draft');
    void results.update(wider, 'draft');
    await settle();
    expect(results.stale).toBe(true);
    await settle();
    expect(results.stale).toBe(false);
  });
});
