import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { CALL_CHANNEL } from '../../electron/channels.ts';
import { run } from '../../src/host/cli/run.ts';
import { createHost, type Host } from '../../src/host/createHost.ts';
import { createLoopback, type Loopback } from '../../src/host/loopback/createLoopback.ts';
import { root } from '../architecture/sourceFiles.ts';
import type { Response as Envelope } from '../../src/contract/client.ts';

const { record, electron } = await vi.hoisted(async () =>
  (await import('./electron/fakeElectron.ts')).createFakeElectron(),
);
vi.mock('electron', () => electron);
const { startApp } = await import('../../electron/startApp.ts');

type Entrance = (request: unknown) => Promise<Envelope>;

describe('one contract, four entrances', () => {
  const folder = mkdtempSync(join(tmpdir(), 'lullwright-parity-'));
  const places = { pages: folder, runtime: 'test' };
  const example = join(root, 'assets/examples/cellar.json');
  const document: unknown = JSON.parse(readFileSync(example, 'utf8'));
  let host: Host;
  let loopback: Loopback;
  let cookie: string;

  const inProcess: Entrance = (request) => host.answer(request);
  const overHttp: Entrance = async (request) => {
    const { origin } = new URL(loopback.address);
    const headers = { cookie, origin, 'content-type': 'application/json' };
    const answer = await fetch(`${origin}/call`, { method: 'POST', headers, body: JSON.stringify(request) });
    return (await answer.json()) as Envelope;
  };
  const overElectron: Entrance = (request) => {
    const handler = record.answers.get(CALL_CHANNEL);
    if (!handler) throw new Error('nothing answers calls');
    return handler({ senderFrame: record.frame }, structuredClone(request)) as Promise<Envelope>;
  };

  beforeAll(async () => {
    host = createHost({ ...places, folder: join(folder, 'one') });
    loopback = await createLoopback(createHost({ ...places, folder: join(folder, 'two') }));
    const entered = await fetch(loopback.address, { redirect: 'manual' });
    cookie = entered.headers.getSetCookie()[0]?.split(';')[0] ?? '';
    await startApp({ pages: folder, preload: '', data: join(folder, 'three') });
  });
  afterAll(async () => {
    record.appEvents.get('will-quit')?.();
    host.close();
    await loopback.close();
    rmSync(folder, { recursive: true });
  });

  it.each([
    ['a prediction', { method: 'predict', params: { document } }],
    ['a whole shell', { method: 'shell', params: { document } }],
    ['the ratings of a curve', { method: 'rate', params: { csv: '100,30\n125,33\n160,36\n' } }],
    ['the list of examples', { method: 'examples.list', params: {} }],
    ['an unknown method', { method: 'predikt', params: {} }],
    ['parameters of another form', { method: 'shell', params: { documents: {} } }],
    ['a document with faults', { method: 'shell', params: { document: { format: 'lullwright/project@1', name: 7 } } }],
    ['a missing project', { method: 'projects.open', params: { id: 'gone' } }],
    ['nothing to undo', { method: 'projects.undo', params: { id: 'gone', revision: 1 } }],
  ])('gives the same answer to %s', async (_what, request) => {
    const answer = await inProcess(request);
    expect(await overHttp(request)).toEqual(answer);
    expect(await overElectron(request)).toEqual(answer);
  });

  it.each(['predict', 'shell'])('prints the same from the command line (%s)', async (method) => {
    const answer = await inProcess({ method, params: { document } });
    const { out, status } = await run([method, example, '--json'], 80, '0');
    expect({ ok: true, value: JSON.parse(out) as unknown }).toEqual(answer);
    expect(status).toBe(0);
  });

  it('says the same of a faulty document on the command line', async () => {
    const faulty = { format: 'lullwright/project@1', name: '', assemblies: {}, surfaces: [], colour: 'red' };
    const file = join(folder, 'faulty.json');
    writeFileSync(file, JSON.stringify(faulty));
    const answer = await inProcess({ method: 'shell', params: { document: faulty } });
    const faults = answer.ok ? [] : (answer.error.faults ?? []);
    const { sentences, status } = await run(['shell', file, '--json'], 80, '0');
    expect(faults.length).toBeGreaterThan(1);
    expect(sentences).toEqual(faults.map((fault) => fault.sentence));
    expect(status).toBe(2);
  });
});
