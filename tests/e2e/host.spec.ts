import type { Project } from '../../src/project/schema.ts';
import { expect, test } from './support/app.ts';

const document: Project = { format: 'lullwright/project@1', name: 'Garage', assemblies: {}, surfaces: [] };

test('the page loads from the loopback host under its policy without an error', async ({ app }) => {
  await expect(app.page).toHaveTitle(/Lullwright/);
  const policy = await app.page.evaluate(async () => (await fetch('./')).headers.get('content-security-policy'));
  expect(policy).toContain("default-src 'none'");
});

test('a project made before a power cut is there after it', async ({ app }) => {
  const { id } = await app.call('projects.create', { document });
  await app.call('projects.save', { id, revision: 1, label: 'renamed', document: { ...document, name: 'Garage 2' } });
  await app.restart();
  expect(await app.call('projects.open', { id })).toMatchObject({ revision: 2, document: { name: 'Garage 2' } });
  expect(await app.call('projects.undo', { id, revision: 2 })).toMatchObject({ document: { name: 'Garage' } });
});

test('a page from elsewhere cannot call the host', async ({ app, context }) => {
  const origin = new URL(app.page.url()).origin;
  const answer = await context.request.post(`${origin}/call`, {
    data: { method: 'projects.list', params: {} },
    headers: { Origin: 'http://127.0.0.1:1' },
  });
  expect(answer.status()).toBe(403);
});

test('an edit made in the window outlives a power cut, and can still be undone after it', async ({ app }) => {
  const { page } = app;
  await page.getByRole('button', { name: /Make up/ }).waitFor();
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: /Make up/ }).click();
  const layer = page.getByRole('button', { name: /^Layer 1 of/ }).first();
  const before = await layer.getAttribute('aria-label');
  await layer.focus();
  await page.keyboard.press('+');
  const revision = async (): Promise<number> => (await app.call('projects.list', {}))[0]?.revision ?? 0;
  await expect.poll(revision).toBe(2);
  const after = await layer.getAttribute('aria-label');
  expect(after).not.toBe(before);
  await app.restart();
  await page.getByRole('button', { name: /Make up/ }).click();
  await expect(layer).toHaveAttribute('aria-label', after ?? '');
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(layer).toHaveAttribute('aria-label', before ?? '');
  expect(await revision()).toBe(3);
});
