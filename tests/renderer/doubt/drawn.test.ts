import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { AUTOMATIC, Drawn, ON_DEMAND } from '../../../renderer/store/drawn.svelte.ts';
import { checkProject } from '../../../src/project/check.ts';
import { commands } from '../../../src/project/commands/index.ts';
import type { LongRequest, LongResponse } from '../../../src/worker/protocol.ts';
import document from '../../support/exampleDocument.json' with { type: 'json' };

const checked = checkProject(document);
if (!checked.ok) throw new Error('example');
const { project } = checked;
const edited = commands.setWorkmanship.apply(project, { patch: { joints: 'careful' } });

/** A worker that answers when the test says so. */
class QuietWorker {
  static last: QuietWorker | null = null;
  readonly posted: LongRequest[] = [];
  onmessage: ((event: { data: LongResponse }) => void) | null = null;
  onerror: (() => void) | null = null;
  constructor() {
    QuietWorker.last = this;
  }
  postMessage(request: LongRequest): void {
    this.posted.push(request);
  }
}
const worker = (): QuietWorker => {
  if (!QuietWorker.last) throw new Error('no worker was started');
  return QuietWorker.last;
};
const asked = (): LongRequest | undefined => worker().posted.at(-1);
const respond = (response: LongResponse extends infer R ? (R extends unknown ? Omit<R, 'sequence'> : never) : never) =>
  worker().onmessage?.({ data: { ...response, sequence: asked()?.sequence ?? 0 } });
const answer = (samples: number) => respond({ kind: 'answer', answer: { shell: null, assemblies: {}, samples } });

describe('builds drawn in the background', () => {
  beforeEach(() => {
    vi.useFakeTimers();
    vi.stubGlobal('Worker', QuietWorker);
    QuietWorker.last = null;
  });
  afterEach(() => {
    vi.useRealTimers();
    vi.unstubAllGlobals();
  });

  it('wait until nothing has changed for a while', async () => {
    const drawn = new Drawn();
    drawn.follow(project, []);
    await vi.advanceTimersByTimeAsync(500);
    drawn.follow(edited, []);
    await vi.advanceTimersByTimeAsync(500);
    expect(QuietWorker.last).toBeNull();
    await vi.advanceTimersByTimeAsync(500);
    expect(asked()).toMatchObject({ task: 'uncertainty', ask: { samples: AUTOMATIC, project: edited, whole: true } });
  });

  it('are given up by an edit and shown no more', async () => {
    const drawn = new Drawn();
    drawn.follow(project, []);
    await vi.advanceTimersByTimeAsync(1000);
    answer(AUTOMATIC);
    await vi.advanceTimersByTimeAsync(0);
    expect(drawn.samples).toBe(AUTOMATIC);
    drawn.follow(edited, []);
    expect(drawn.samples).toBe(0);
    await vi.advanceTimersByTimeAsync(1000);
    drawn.follow(project, []);
    expect(asked()).toMatchObject({ task: 'cancel' });
    expect(drawn.progress).toBeNull();
  });

  it('tell how far they are and about how long it takes yet', async () => {
    const drawn = new Drawn();
    drawn.follow(project, []);
    await vi.advanceTimersByTimeAsync(1000);
    await vi.advanceTimersByTimeAsync(2000);
    respond({ kind: 'progress', done: 0.25 });
    expect(drawn.progress).toBe(0.25);
    expect(drawn.remaining).toBeGreaterThan(5);
    expect(drawn.remaining).toBeLessThan(8);
  });

  it('stay stopped until the next edit', async () => {
    const drawn = new Drawn();
    drawn.follow(project, []);
    await vi.advanceTimersByTimeAsync(1000);
    drawn.cancel();
    drawn.follow(project, ['wall-a']);
    await vi.advanceTimersByTimeAsync(2000);
    expect(worker().posted.map(({ task }) => task)).toEqual(['uncertainty', 'cancel']);
    drawn.follow(edited, ['wall-a']);
    await vi.advanceTimersByTimeAsync(2000);
    expect(asked()).toMatchObject({ task: 'uncertainty', ask: { predict: ['wall-a'] } });
  });

  it('draw only the make-ups that come into view where the room is drawn already', async () => {
    const drawn = new Drawn();
    drawn.follow(project, []);
    void drawn.run(ON_DEMAND);
    answer(ON_DEMAND);
    await vi.advanceTimersByTimeAsync(0);
    drawn.follow(project, ['wall-a']);
    await vi.advanceTimersByTimeAsync(10);
    expect(asked()).toMatchObject({ ask: { whole: false, predict: ['wall-a'], samples: ON_DEMAND } });
  });

  it('say what went wrong', async () => {
    const drawn = new Drawn();
    drawn.follow(project, []);
    await vi.advanceTimersByTimeAsync(1000);
    respond({ kind: 'fault', sentence: 'The uncertainty cannot be worked out: no board.' });
    await vi.advanceTimersByTimeAsync(0);
    expect(drawn.fault).toContain('no board');
    expect(drawn.progress).toBeNull();
  });
});
