import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { request as httpRequest } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import type { Host } from '../../../src/host/host.ts';
import { createLoopback, type Loopback } from '../../../src/host/loopback/createLoopback.ts';
import { readPage } from '../../../src/host/pages/index.ts';

interface Answer {
  readonly status: number;
  readonly headers: Readonly<Record<string, string | string[] | undefined>>;
  readonly body: string;
}

/** Node's own client, because fetch hides redirects, forbids Host and mends paths. */
const ask = (
  port: number,
  path: string,
  headers: Record<string, string> = {},
  method = 'GET',
  body?: string | Buffer,
): Promise<Answer> =>
  new Promise((resolve, reject) => {
    const request = httpRequest({ host: '127.0.0.1', port, path, method, headers }, (response) => {
      const pieces: Buffer[] = [];
      response.on('data', (piece: Buffer) => pieces.push(piece));
      response.on('end', () => {
        resolve({
          status: response.statusCode ?? 0,
          headers: response.headers,
          body: Buffer.concat(pieces).toString('utf8'),
        });
      });
    });
    request.on('error', reject);
    request.end(body);
  });

describe('loopback host', () => {
  let folder: string;
  let loopback: Loopback;
  let calls: unknown[];
  const open: Loopback[] = [];

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'lullwright-pages-'));
    mkdirSync(join(folder, 'page', 'assets'), { recursive: true });
    writeFileSync(join(folder, 'page', 'index.html'), '<!doctype html><title>Lullwright</title>');
    writeFileSync(join(folder, 'page', 'assets', 'barlow-1a2b.woff2'), 'font');
    writeFileSync(join(folder, 'secret.txt'), 'not for the page');
    loopback = await createLoopback(host());
  });
  afterAll(async () => {
    await loopback.close();
    rmSync(folder, { recursive: true });
  });
  afterEach(async () => {
    for (const other of open.splice(0)) await other.close();
  });
  const host = (): Host => {
    calls = [];
    return {
      answer: (request) => {
        calls.push(request);
        return Promise.resolve({ ok: true, value: { got: request } });
      },
      readPage: (pathname) => readPage(join(folder, 'page'), pathname),
      close: () => undefined,
    };
  };
  const enter = async (to: Loopback = loopback): Promise<string> => {
    const url = new URL(to.address);
    const { headers } = await ask(to.port, `${url.pathname}${url.search}`);
    return String(headers['set-cookie']?.[0]).split(';')[0] ?? '';
  };
  const callHeaders = (cookie: string): Record<string, string> => ({
    cookie,
    origin: `http://127.0.0.1:${loopback.port}`,
    'content-type': 'application/json',
  });

  it('hands over a session cookie that scripts cannot read, once the first address is opened', async () => {
    const url = new URL(loopback.address);
    expect(url.hostname).toBe('127.0.0.1');
    const { status, headers } = await ask(loopback.port, `${url.pathname}${url.search}`);
    expect(status).toBe(303);
    expect(headers['location']).toBe('/');
    expect(headers['set-cookie']?.[0]).toMatch(/; HttpOnly; SameSite=Strict; Path=\/$/);
  });

  it('refuses a page without token or cookie, and with a wrong one', async () => {
    expect((await ask(loopback.port, '/')).status).toBe(403);
    expect((await ask(loopback.port, '/?token=guess')).status).toBe(403);
    expect((await ask(loopback.port, '/', { cookie: `lullwright-${loopback.port}=guess` })).status).toBe(403);
  });

  it('serves page and fonts with their types, the policy and no sniffing', async () => {
    const cookie = await enter();
    const page = await ask(loopback.port, '/', { cookie });
    expect(page.status).toBe(200);
    expect(page.headers['content-type']).toBe('text/html; charset=utf-8');
    expect(page.headers['content-security-policy']).toMatch(/^default-src 'none'; script-src 'self'/);
    expect(page.headers['x-content-type-options']).toBe('nosniff');
    const font = await ask(loopback.port, '/assets/barlow-1a2b.woff2', { cookie });
    expect(font.headers['content-type']).toBe('font/woff2');
    expect(font.headers['cache-control']).toContain('immutable');
    expect((await ask(loopback.port, '/nothing.js', { cookie })).status).toBe(404);
  });

  it.each(['/../secret.txt', '/%2e%2e/secret.txt', '/assets/..%2f..%2fsecret.txt', '/..%5csecret.txt', '/%00', '/%zz'])(
    'does not let %s out of the page folder',
    async (path) => {
      const answer = await ask(loopback.port, path, { cookie: await enter() });
      expect([403, 404]).toContain(answer.status);
      expect(answer.body).not.toContain('not for the page');
    },
  );

  it('answers under its own address only, so that a renamed address cannot reach it', async () => {
    const cookie = await enter();
    expect((await ask(loopback.port, '/', { cookie, host: 'lullwright.example' })).status).toBe(421);
    expect((await ask(loopback.port, '/', { cookie, host: `localhost:${loopback.port}` })).status).toBe(421);
  });

  it('carries a call and its answer in the envelope', async () => {
    const body = JSON.stringify({ method: 'app.info', params: {} });
    const answer = await ask(loopback.port, '/call', callHeaders(await enter()), 'POST', body);
    expect(answer.status).toBe(200);
    expect(JSON.parse(answer.body)).toEqual({ ok: true, value: { got: { method: 'app.info', params: {} } } });
  });

  it('refuses calls of other pages, without origin, without cookie and by other verbs', async () => {
    const cookie = await enter();
    const before = calls.length;
    const { origin: _, ...withoutOrigin } = callHeaders(cookie);
    expect((await ask(loopback.port, '/call', withoutOrigin, 'POST', '{}')).status).toBe(403);
    const foreign = { ...callHeaders(cookie), origin: 'http://127.0.0.1:1' };
    expect((await ask(loopback.port, '/call', foreign, 'POST', '{}')).status).toBe(403);
    expect((await ask(loopback.port, '/call', callHeaders(''), 'POST', '{}')).status).toBe(403);
    expect((await ask(loopback.port, '/call', callHeaders(cookie), 'PUT', '{}')).status).toBe(405);
    const form = { ...callHeaders(cookie), 'content-type': 'text/plain' };
    expect((await ask(loopback.port, '/call', form, 'POST', '{}')).status).toBe(415);
    expect(calls.length).toBe(before);
  });

  it('answers a call that is not JSON, or over 25 MB, with a sentence', async () => {
    const cookie = await enter();
    const broken = await ask(loopback.port, '/call', callHeaders(cookie), 'POST', '{"method":');
    expect(broken.status).toBe(400);
    expect(JSON.parse(broken.body)).toMatchObject({ ok: false, error: { code: 'bad-request' } });
    const large = await ask(
      loopback.port,
      '/call',
      callHeaders(cookie),
      'POST',
      Buffer.alloc(25 * 1024 * 1024 + 1, 32),
    );
    expect(large.status).toBe(413);
    expect(JSON.parse(large.body)).toMatchObject({ ok: false, error: { code: 'too-large' } });
  });

  it('takes another port where the preferred one is taken, and keeps the two sessions apart', async () => {
    const second = await createLoopback(host(), loopback.port);
    open.push(second);
    expect(second.port).not.toBe(loopback.port);
    const cookie = await enter();
    expect((await ask(second.port, '/', { cookie })).status).toBe(403);
    const both = `${cookie}; ${await enter(second)}`;
    expect((await ask(second.port, '/', { cookie: both })).status).toBe(200);
    expect((await ask(loopback.port, '/', { cookie: both })).status).toBe(200);
  });
});
