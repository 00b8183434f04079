import type {} from '../../renderer/client/transport.ts';
import { _electron, expect, test } from '@playwright/test';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { presentRuntime } from '../../electron/scripts/electronRuntime.ts';
import { projectRoot } from '../../electron/scripts/fingerprint.ts';

const executable = presentRuntime();
const hasScreen = process.platform !== 'linux' || Boolean(process.env['DISPLAY'] ?? process.env['WAYLAND_DISPLAY']);
const obstacle =
  executable === null ? 'its runtime is not on this machine' : hasScreen ? null : 'there is no screen on this machine';

test('the window of Electron shows the app and keeps a project', async () => {
  if (obstacle !== null) console.log(`Electron’s window is not tested: ${obstacle}.`);
  test.skip(obstacle !== null || executable === null, obstacle ?? '');
  const data = mkdtempSync(join(tmpdir(), 'lullwright-electron-'));
  const asRoot = process.getuid?.() === 0 ? ['--no-sandbox'] : [];
  const app = await _electron.launch({
    executablePath: executable ?? '',
    args: [projectRoot, ...asRoot],
    env: { ...process.env, LULLWRIGHT_DATA: data },
  });
  try {
    const page = await app.firstWindow();
    await expect(page).toHaveTitle(/Lullwright/);
    expect(page.url()).toBe('app://lullwright/index.html');
    const made = await page.evaluate(() =>
      window.lullwright?.call({
        method: 'projects.create',
        params: { document: { format: 'lullwright/project@1', name: 'Garage', assemblies: {}, surfaces: [] } },
      }),
    );
    expect(made).toMatchObject({ ok: true, value: { revision: 1 } });
    expect(await page.evaluate(() => 'require' in window || 'process' in window)).toBe(false);
  } finally {
    await app.close();
    rmSync(data, { recursive: true, force: true });
  }
});
