import { test as base, expect, type Page } from '@playwright/test';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { startHost, type RunningHost } from '../../../electron/scripts/startHost.ts';
import type { MethodName, Params, Result } from '../../../src/contract/methods.ts';

/** The running app of one test: its own host on its own data folder, and a window on it. */
export interface App {
  readonly page: Page;
  /** folder in which this test's projects are kept */
  readonly data: string;
  /** A call past the window, as another entrance would make it. @throws Error with the refusal's sentence */
  call<M extends MethodName>(method: M, params: Params<M>): Promise<Result<M>>;
  /** Another window on the same host. */
  openWindow(): Promise<Page>;
  /** Ends the host at once, as a power cut would (SIGKILL). The window stays open. */
  kill(): Promise<void>;
  /** Starts a host on the same data and opens it in the window. */
  restart(): Promise<void>;
  /** Errors the page wrote to its console or threw; must be empty at the end, unless the test killed the host. */
  readonly faults: string[];
}

const ended = (host: RunningHost): Promise<void> =>
  new Promise((resolve) => {
    if (host.process.exitCode !== null || host.process.signalCode !== null) resolve();
    host.process.once('exit', () => {
      resolve();
    });
  });

const collectFaults = (page: Page, faults: string[]): void => {
  page.on('console', (message) => {
    if (message.type() === 'error') faults.push(message.text());
  });
  page.on('pageerror', (fault) => faults.push(fault.message));
};

export const test = base.extend<{ app: App }>({
  app: async ({ page, context }, use) => {
    const data = mkdtempSync(join(tmpdir(), 'lullwright-e2e-'));
    const start = (): Promise<RunningHost> => startHost({ ...process.env, LULLWRIGHT_DATA: data });
    const faults: string[] = [];
    const run = { host: await start(), killed: false };
    const origin = (): string => new URL(run.host.address).origin;
    const kill = async (): Promise<void> => {
      run.killed = true;
      run.host.process.kill('SIGKILL');
      await ended(run.host);
    };
    collectFaults(page, faults);
    await page.goto(run.host.address);
    await use({
      page,
      data,
      faults,
      kill,
      async call(method, params) {
        const headers = { Origin: origin() };
        const answer = await context.request.post(`${origin()}/call`, { data: { method, params }, headers });
        const envelope = (await answer.json()) as
          { ok: true; value: never } | { ok: false; error: { sentence: string } };
        if (!envelope.ok) throw new Error(envelope.error.sentence);
        return envelope.value;
      },
      async openWindow() {
        const window = await context.newPage();
        collectFaults(window, faults);
        await window.goto(origin());
        return window;
      },
      async restart() {
        await kill();
        run.host = await start();
        await page.goto(run.host.address);
      },
    });
    // what the window says once its host is being ended is no fault of the test
    const seen = [...faults];
    run.host.process.kill('SIGTERM');
    await ended(run.host);
    rmSync(data, { recursive: true, force: true });
    if (!run.killed) expect(seen, 'errors on the page').toEqual([]);
  },
});

export { expect };
