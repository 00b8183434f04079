import { describe, expect, it } from 'vitest';
import { checkProject } from '../../src/project/check.ts';
import { commands } from '../../src/project/commands/index.ts';
import { createLongClient, type LongWorkerPort } from '../../src/worker/longClient.ts';
import type { LongRequest, LongResponse, LongTasks } from '../../src/worker/protocol.ts';
import { createLongWork } from '../../src/worker/uncertainty/createLongWork.ts';
import document from '../support/exampleDocument.json' with { type: 'json' };

const checked = checkProject(document);
if (!checked.ok) throw new Error('example');
const { project } = checked;
const ask: LongTasks['uncertainty']['ask'] = {
  project,
  samples: 300,
  start: 1,
  whole: true,
  predict: ['wall-b', 'gone'],
};

/** A worker whose slices run when the test says so; its clock makes each step a slice of its own. */
const createBench = () => {
  const slices: (() => void)[] = [];
  const clock = { now: 0 };
  const worker: LongWorkerPort = { postMessage: () => undefined, onmessage: null, onerror: null };
  const work = createLongWork({
    respond: (response: LongResponse) =>
      worker.onmessage?.({ data: structuredClone(response) } as MessageEvent<LongResponse>),
    later: (slice) => slices.push(slice),
    now: () => (clock.now += 50),
  });
  worker.postMessage = (message) => work(message as LongRequest);
  const step = (): boolean => {
    const slice = slices.shift();
    slice?.();
    return slice !== undefined;
  };
  const finish = (): void => {
    while (step());
  };
  return { client: createLongClient(worker), step, finish, worker };
};

describe('the worker for long work', () => {
  it('draws the room and the make-ups asked for, telling how far it is', async () => {
    const { client, finish } = createBench();
    const progress: number[] = [];
    const answer = client.run(ask, (done) => progress.push(done));
    finish();
    const sampled = await answer;
    expect(sampled?.samples).toBe(300);
    expect(Object.keys(sampled?.assemblies ?? {})).toEqual(['wall-b']);
    expect(Object.keys(sampled?.shell?.parts ?? {}).length).toBeGreaterThan(1);
    expect(progress.length).toBeGreaterThan(5);
    expect(progress).toEqual(progress.toSorted((a, b) => a - b));
    expect(Math.max(...progress)).toBeLessThanOrEqual(1);
  });

  it('draws make-ups alone where the room is known already', async () => {
    const { client, finish } = createBench();
    const answer = client.run({ ...ask, whole: false }, () => undefined);
    finish();
    expect(await answer).toMatchObject({ shell: null, samples: 300 });
  });

  it('stops when it is cancelled', async () => {
    const { client, step, finish } = createBench();
    const progress: number[] = [];
    const answer = client.run(ask, (done) => progress.push(done));
    step();
    client.cancel();
    const before = progress.length;
    finish();
    expect(await answer).toBeNull();
    expect(progress).toHaveLength(before);
  });

  it('lets a newer ask take the place of the one in work', async () => {
    const { client, step, finish } = createBench();
    const first = client.run(ask, () => undefined);
    step();
    const careful = commands.setWorkmanship.apply(project, { patch: { joints: 'careful' } });
    const second = client.run({ ...ask, project: careful, predict: [] }, () => undefined);
    finish();
    expect(await first).toBeNull();
    expect((await second)?.assemblies).toEqual({});
  });

  it('says in a sentence what went wrong', async () => {
    const { client, worker } = createBench();
    const broken = client.run(ask, () => undefined);
    worker.onerror?.({} as ErrorEvent);
    await expect(broken).rejects.toThrow('fault of ours');
  });
});
