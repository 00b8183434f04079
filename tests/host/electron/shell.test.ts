import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { CALL_CHANNEL } from '../../../electron/channels.ts';
import { smallProject } from '../sqlite/smallProject.ts';

const { record, electron } = await vi.hoisted(async () => (await import('./fakeElectron.ts')).createFakeElectron());
vi.mock('electron', () => electron);
const { startApp } = await import('../../../electron/startApp.ts');

interface Item {
  readonly label?: string;
  readonly role?: string;
  readonly accelerator?: string;
  readonly registerAccelerator?: boolean;
  readonly click?: () => void;
  readonly submenu?: readonly Item[];
}

describe('Electron shell', () => {
  const folder = mkdtempSync(join(tmpdir(), 'lullwright-shell-'));
  const pages = join(folder, 'pages');
  const call = (request: unknown, senderFrame: unknown = record.frame): Promise<unknown> => {
    const handler = record.answers.get(CALL_CHANNEL);
    if (!handler) throw new Error('nothing answers calls');
    return handler({ senderFrame }, request);
  };
  const get = (url: string, method = 'GET'): Promise<Response> => {
    if (!record.serve) throw new Error('nothing serves the page');
    return record.serve({ url, method } as Request);
  };

  beforeAll(async () => {
    mkdirSync(pages);
    writeFileSync(join(pages, 'index.html'), '<!doctype html><title>Lullwright</title>');
    writeFileSync(join(folder, 'secret.txt'), 'not for the page');
    await startApp({ pages, preload: join(folder, 'preload.cjs'), data: join(folder, 'data') });
  });
  afterAll(() => {
    record.appEvents.get('will-quit')?.();
    rmSync(folder, { recursive: true });
  });

  it('opens one window without Node, isolated and in the sandbox', () => {
    expect(record.loaded).toEqual(['app://lullwright/index.html']);
    expect(record.options).toMatchObject({
      webPreferences: { contextIsolation: true, sandbox: true, nodeIntegration: false, webviewTag: false },
    });
  });

  it('declares its scheme before the app is ready', () => {
    expect(record.schemesBeforeReady).toBe(true);
    expect(record.schemes).toMatchObject([{ scheme: 'app', privileges: { standard: true, secure: true } }]);
  });

  it('opens no other window, stays on its page, embeds none and is granted nothing', () => {
    expect(record.openHandler?.({ url: 'https://example.org' })).toEqual({ action: 'deny' });
    const stopped = (name: string, url: string): boolean => {
      const preventDefault = vi.fn();
      record.pageEvents.get(name)?.({ url, preventDefault });
      return preventDefault.mock.calls.length === 1;
    };
    expect(stopped('will-navigate', 'https://example.org/')).toBe(true);
    expect(stopped('will-navigate', 'app://lullwright.example.org/')).toBe(true);
    expect(stopped('will-navigate', 'app://lullwright/index.html')).toBe(false);
    expect(stopped('will-attach-webview', '')).toBe(true);
    const decide = vi.fn();
    record.permissionRequest?.(null, 'media', decide);
    expect(decide).toHaveBeenCalledExactlyOnceWith(false);
    expect(record.permissionCheck?.()).toBe(false);
  });

  it('closes over an unsaved edit only when its user says so', () => {
    const close = (answer: number): boolean => {
      const preventDefault = vi.fn();
      record.messageBox.mockReturnValueOnce(answer);
      record.pageEvents.get('will-prevent-unload')?.({ url: '', preventDefault });
      return preventDefault.mock.calls.length === 1;
    };
    expect(close(0)).toBe(false);
    expect(close(1)).toBe(true);
    expect(record.messageBox.mock.lastCall?.[1]).toMatchObject({ defaultId: 0, cancelId: 0 });
  });

  it('serves its page with the policy and nothing beside it', async () => {
    const page = await get('app://lullwright/index.html?x#y');
    expect(page.status).toBe(200);
    expect(page.headers.get('content-security-policy')).toMatch(/^default-src 'none'/);
    expect(await page.text()).toContain('Lullwright');
    for (const path of ['/../secret.txt', '/%2e%2e/secret.txt', '/..%2fsecret.txt'])
      expect((await get(`app://lullwright${path}`)).status).toBe(403);
    expect((await get('app://elsewhere/index.html')).status).toBe(403);
    expect((await get('app://lullwright/index.html', 'POST')).status).toBe(405);
  });

  it('answers calls of its own page from a real store', async () => {
    const made = await call({ method: 'projects.create', params: { document: smallProject('Garage') } });
    expect(made).toMatchObject({ ok: true, value: { revision: 1, document: { name: 'Garage' } } });
    expect(await call({ method: 'projects.list', params: {} })).toMatchObject({
      ok: true,
      value: [{ name: 'Garage' }],
    });
  });

  it('refuses calls of other frames, of other pages and of another form', async () => {
    const request = { method: 'projects.list', params: {} };
    for (const sender of [null, { url: record.frame.url }, { url: 'https://example.org/' }])
      expect(await call(request, sender)).toMatchObject({ ok: false, error: { code: 'bad-request' } });
    for (const odd of [null, 'projects.list', { params: {} }, { method: 'nonsense', params: {} }, { method: 7 }])
      expect(await call(odd)).toMatchObject({ ok: false, error: { code: 'bad-request' } });
  });

  it('prints to the file the user chooses, or not at all', async () => {
    const print = (params: unknown): Promise<unknown> => call({ method: 'print', params });
    const file = join(folder, 'report.pdf');
    record.printToPDF.mockResolvedValue(Buffer.from('%PDF-1.7'));
    record.saveDialog.mockResolvedValueOnce({ canceled: true, filePath: '' });
    expect(await print({ fileName: 'report' })).toEqual({ ok: true, value: { saved: false } });
    expect(record.printToPDF).not.toHaveBeenCalled();
    record.saveDialog.mockResolvedValueOnce({ canceled: false, filePath: file });
    expect(await print({ fileName: '../../report' })).toEqual({ ok: true, value: { saved: true, file } });
    expect(record.saveDialog.mock.lastCall?.[1]).toMatchObject({ defaultPath: 'report.pdf' });
    expect(record.printToPDF).toHaveBeenCalledWith({
      preferCSSPageSize: true,
      printBackground: true,
      generateTaggedPDF: true,
    });
    expect(readFileSync(file, 'utf8')).toBe('%PDF-1.7');
    record.saveDialog.mockResolvedValueOnce({ canceled: false, filePath: join(folder, 'no', 'such', 'folder.pdf') });
    expect(await print({ fileName: 'report' })).toMatchObject({ ok: false, error: { code: 'internal' } });
    expect(await print({})).toMatchObject({ ok: false, error: { code: 'bad-request' } });
    expect(existsSync(join(folder, 'no'))).toBe(false);
  });

  it('passes menu items to the page, and leaves the keys of fields to the fields', () => {
    const items = (record.menu as Item[]).flatMap((menu) => menu.submenu ?? []);
    for (const item of items) item.click?.();
    expect(record.sent.map((message) => (message as [string, string])[1])).toEqual([
      'new-project',
      'open-project',
      'import-project',
      'export-project',
      'print',
      'undo',
      'redo',
      'show-tour',
    ]);
    expect(items.filter((item) => item.accelerator && item.registerAccelerator !== false)).toEqual([]);
  });

  it('gives the page one call and printing, nothing else', async () => {
    await import('../../../electron/preload.ts');
    expect(Object.keys(record.exposed)).toEqual(['lullwright']);
    const bridge = record.exposed['lullwright'] as Record<string, (argument: unknown) => Promise<unknown>>;
    expect(Object.keys(bridge).sort()).toEqual(['call', 'onAction', 'printPdf']);
    await bridge['printPdf']?.('report');
    expect(record.invoked).toEqual([[CALL_CHANNEL, { method: 'print', params: { fileName: 'report' } }]]);
  });

  it('opens no window where its folder cannot be made, and says which', async () => {
    const data = join(folder, 'secret.txt', 'data');
    await startApp({ pages, preload: '', data });
    expect(record.errorBox.mock.lastCall?.[1]).toContain(data);
    expect(record.exits).toEqual([1]);
    expect(record.loaded).toHaveLength(1);
  });

  it('brings the running window forward instead of starting twice', async () => {
    record.appEvents.get('second-instance')?.();
    expect(record.focused).toBe(1);
    record.locked = false;
    await startApp({ pages, preload: '', data: join(folder, 'data') });
    expect(record.quits).toBe(1);
    expect(record.loaded).toHaveLength(1);
  });
});
