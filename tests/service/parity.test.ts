import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { text } from 'node:stream/consumers';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { CALL_CHANNEL } from '../../electron/channels.ts';
import type { Request, Response, Transport } from '../../src/contract/client.ts';
import { createHost } from '../../src/host/createHost.ts';
import { createLoopback, type Loopback } from '../../src/host/loopback/createLoopback.ts';
import { examples } from '../../src/project/examples.ts';
import exampleDocument from '../support/exampleDocument.json' with { type: 'json' };

const { record, electron } = await vi.hoisted(async () =>
  (await import('../host/electron/fakeElectron.ts')).createFakeElectron(),
);
vi.mock('electron', () => electron);
const { startApp } = await import('../../electron/startApp.ts');

const folder = mkdtempSync(join(tmpdir(), 'lullwright-parity-'));
const host = createHost({ folder: join(folder, 'direct'), pages: folder, runtime: 'test' });
const web = createHost({ folder: join(folder, 'web'), pages: folder, runtime: 'test' });
const open: { loopback?: Loopback; cookie?: string } = {};

const inProcess: Transport = (request) => host.answer(request);

/** Electron's channel copies by structured clone on the way in and on the way out. */
const overElectron: Transport = async (request) => {
  const handler = record.answers.get(CALL_CHANNEL);
  if (!handler) throw new Error('nothing answers calls');
  return structuredClone(await handler({ senderFrame: record.frame }, structuredClone(request))) as Response;
};

/** A connection of its own for each call: the calls on the command line in between outlast a kept one. */
const overHttp: Transport = ({ method, params }) =>
  new Promise((resolve, reject) => {
    const port = open.loopback?.port ?? 0;
    const origin = `http://127.0.0.1:${port}`;
    const headers = { 'Content-Type': 'application/json', Origin: origin, Cookie: open.cookie ?? '' };
    const call = request(
      { host: '127.0.0.1', port, path: '/call', method: 'POST', headers, agent: false },
      (answer) => {
        text(answer).then((body) => {
          resolve(JSON.parse(body) as Response);
        }, reject);
      },
    );
    call.on('error', reject);
    call.end(JSON.stringify({ method, params }));
  });

beforeAll(async () => {
  writeFileSync(join(folder, 'index.html'), '<!doctype html><title>Lullwright</title>');
  await startApp({ pages: folder, preload: join(folder, 'preload.cjs'), data: join(folder, 'window') });
  open.loopback = await createLoopback(web);
  const first = await fetch(open.loopback.address, { redirect: 'manual' });
  open.cookie = first.headers.get('set-cookie')?.split(';')[0] ?? '';
});
afterAll(async () => {
  record.appEvents.get('will-quit')?.();
  await open.loopback?.close();
  host.close();
  web.close();
  rmSync(folder, { recursive: true });
});

const csv =
  '100;20\n125;22,5\n160;24\n200;25\n250;27\n315;29\n400;31\n500;33\n630;35\n800;36\n1000;38\n1250;39\n1600;40\n2000;41\n2500;42\n3150;43\n';
const faulty = { ...exampleDocument, source: 'kazoo', compare: ['none'] };

const calls: readonly Request[] = [
  { method: 'predict', params: { document: exampleDocument } },
  { method: 'shell', params: { document: exampleDocument } },
  { method: 'shell', params: { document: examples[0]?.document } },
  { method: 'rate', params: { csv } },
  { method: 'rate', params: { csv: 'nothing' } },
  { method: 'predict', params: { document: faulty } },
  { method: 'shell', params: { document: {} } },
  { method: 'examples.list', params: {} },
  { method: 'projects.open', params: { id: 'none' } },
  { method: 'projects.opne', params: {} },
];

describe('the same call', () => {
  it.each(calls.map((call) => [`${call.method} ${JSON.stringify(call.params).slice(0, 40)}`, call] as const))(
    'is answered alike in process, by Electron’s channel and over HTTP: %s',
    async (_, call) => {
      const direct = await inProcess(call);
      expect(await overElectron(call)).toEqual(direct);
      expect(await overHttp(call)).toEqual(direct);
    },
  );

  it.each([
    ['predict', exampleDocument],
    ['shell', exampleDocument],
    ['shell', examples[0]?.document],
  ] as const)('is answered alike on the command line: %s', async (method, document) => {
    const direct = await inProcess({ method, params: { document } });
    const main = new URL('../../src/host/cli/main.ts', import.meta.url).pathname;
    const { stdout } = spawnSync(process.execPath, [main, method, '-', '--json'], {
      input: JSON.stringify(document),
      encoding: 'utf8',
    });
    expect(JSON.parse(stdout)).toEqual(direct.ok && direct.value);
  });

  it('keeps and undoes alike', async () => {
    for (const transport of [inProcess, overElectron, overHttp]) {
      const ask = async (method: string, params: unknown): Promise<Record<string, unknown>> => {
        const response = await transport({ method, params });
        if (!response.ok) throw new Error(response.error.sentence);
        return response.value as Record<string, unknown>;
      };
      const { id, document } = await ask('projects.create', { document: exampleDocument });
      const renamed = { ...(document as object), name: 'Barn' };
      expect(await ask('projects.save', { id, revision: 1, label: 'Rename', document: renamed })).toMatchObject({
        revision: 2,
        undoLabel: 'Rename',
      });
      expect(await ask('projects.undo', { id, revision: 2 })).toMatchObject({
        revision: 3,
        document,
        redoLabel: 'Rename',
      });
    }
  });
});
