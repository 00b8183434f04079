import { describe, expect, it } from 'vitest';
import { checkProject } from '../../src/project/check.ts';
import { createWorkerClient, type WorkerPort } from '../../src/worker/client.ts';
import type { Tasks, WorkerRequest, WorkerResponse } from '../../src/worker/protocol.ts';
import document from '../support/exampleDocument.json' with { type: 'json' };

const checked = checkProject(document);
if (!checked.ok) throw new Error('example');
const { project } = checked;
const draft: Tasks['evaluate']['ask'] = { project, resolution: 'draft', predict: [] };

/** A worker that answers when it is told to. */
const createFake = () => {
  const posted: WorkerRequest[] = [];
  const worker: WorkerPort = {
    postMessage: (message) => posted.push(message as WorkerRequest),
    onmessage: null,
    onerror: null,
  };
  const respond = (response: WorkerResponse): unknown =>
    worker.onmessage?.({ data: response } as MessageEvent<WorkerResponse>);
  const answerLast = (answer: unknown): unknown =>
    respond({ sequence: posted.at(-1)?.sequence ?? 0, ok: true, answer });
  return { posted, worker, respond, answerLast, tasks: () => posted.map(({ task }) => task) };
};

describe('the worker’s client', () => {
  it('asks one thing at a time and gives each its own answer', async () => {
    const { posted, worker, answerLast } = createFake();
    const client = createWorkerClient(worker);
    const first = client.ask('guides', { project, assembly: 'wall-a' });
    const second = client.ask('guides', { project, assembly: 'wall-b' });
    expect(posted).toHaveLength(1);
    answerLast('first');
    expect(await first).toBe('first');
    expect(posted).toHaveLength(2);
    answerLast('second');
    expect(await second).toBe('second');
  });

  it('drops evaluations that a later one has overtaken, and answers the one in work', async () => {
    const { posted, worker, answerLast } = createFake();
    const client = createWorkerClient(worker);
    const asks = [1, 2, 3, 4].map(() => client.ask('evaluate', draft));
    expect(await asks[1]).toBeNull();
    expect(await asks[2]).toBeNull();
    answerLast('one');
    answerLast('four');
    expect(await asks[0]).toBe('one');
    expect(await asks[3]).toBe('four');
    expect(posted).toHaveLength(2);
  });

  it('lets an evaluation go before what else is waiting', () => {
    const { worker, answerLast, tasks } = createFake();
    const client = createWorkerClient(worker);
    void client.ask('plan', { project });
    void client.ask('guides', { project, assembly: 'wall-a' });
    void client.ask('evaluate', draft);
    answerLast(null);
    answerLast(null);
    expect(tasks()).toEqual(['plan', 'evaluate', 'guides']);
  });

  it('fails with the worker’s sentence, and goes on', async () => {
    const { worker, respond, answerLast, posted } = createFake();
    const client = createWorkerClient(worker);
    const failing = client.ask('plan', { project });
    const next = client.ask('guides', { project, assembly: 'wall-a' });
    respond({ sequence: posted[0]?.sequence ?? 0, ok: false, sentence: 'This cannot be worked out.' });
    await expect(failing).rejects.toThrow('This cannot be worked out.');
    answerLast('next');
    expect(await next).toBe('next');
  });

  it('fails plainly when the worker itself breaks, and when a question cannot be posted', async () => {
    const { worker } = createFake();
    const client = createWorkerClient(worker);
    const broken = client.ask('plan', { project });
    worker.onerror?.({} as ErrorEvent);
    await expect(broken).rejects.toThrow('a fault of ours');
    worker.postMessage = () => {
      throw new Error('could not be cloned');
    };
    await expect(client.ask('plan', { project })).rejects.toThrow('could not be cloned');
  });

  it('takes no notice of answers that it did not ask for', async () => {
    const { worker, respond, answerLast } = createFake();
    const client = createWorkerClient(worker);
    const asked = client.ask('plan', { project });
    respond({ sequence: 99, ok: true, answer: 'stray' });
    answerLast('right');
    expect(await asked).toBe('right');
    respond({ sequence: 1, ok: true, answer: 'again' });
  });
});
