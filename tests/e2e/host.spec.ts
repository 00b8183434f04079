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
