import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { readFileSync } from 'node:fs';
import { expect, test } from './support/app.ts';

const tour = (page: Page) => page.getByRole('dialog', { name: 'This is a room, unfolded' });
const leaveTour = async (page: Page): Promise<void> => {
  await expect(tour(page)).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(tour(page)).toBeHidden();
};
const choose = async (page: Page, item: RegExp): Promise<void> => {
  await page.getByRole('banner').getByRole('button').first().click();
  await page.getByRole('menuitem', { name: item }).click();
};
const rename = async (page: Page, name: string): Promise<void> => {
  await choose(page, /^Name and note/);
  const field = page.getByRole('dialog').getByLabel('Name', { exact: true });
  await field.fill(name);
  await field.press('Enter');
  await page.getByRole('dialog').getByRole('button', { name: 'Done' }).click();
  await expect(page.getByRole('dialog')).toBeHidden();
};
const strip = (page: Page) => page.getByRole('region', { name: 'Where the build stands' });

test.describe('the frame', () => {
  test('a first start shows the example with a tour that can be left and does not come back', async ({ app }) => {
    const { page } = app;
    await expect(tour(page)).toBeVisible();
    for (let step = 0; step < 4; step += 1)
      await page.getByRole('button', { name: 'Next', exact: true }).press('Enter');
    await page.getByRole('button', { name: 'Begin' }).press('Enter');
    await expect(page.getByRole('dialog')).toBeHidden();
    await expect(page).toHaveTitle(/Boat store .* Saved \d\d:\d\d/);
    await page.reload();
    await expect(strip(page)).toContainText('Limits the room');
    await expect(tour(page)).toBeHidden();
  });

  test('a note on the project is kept, undone like any edit, and printed', async ({ app }) => {
    const { page } = app;
    await leaveTour(page);
    await choose(page, /^Name and note/);
    const note = page.getByRole('dialog').getByLabel('Note', { exact: true });
    await expect(note).toHaveValue(/Rehearsal room of a brass group/);
    await note.fill('Ask the neighbour about Thursdays');
    await page.getByRole('dialog').getByRole('button', { name: 'Done' }).click();
    await page.keyboard.press('Control+p');
    await expect(page.getByRole('article')).toContainText('Ask the neighbour about Thursdays');
    await page.getByRole('button', { name: 'Back to the build' }).click();
    await page.getByRole('button', { name: /^Undo/ }).click();
    await choose(page, /^Name and note/);
    await expect(note).toHaveValue(/Rehearsal room of a brass group/);
  });

  test('every figure of the strip shows its working with a source and its likely error', async ({ app }) => {
    const { page } = app;
    await leaveTour(page);
    await strip(page).getByRole('button', { name: 'STC beside it' }).click();
    for (const name of [/Whole room, Rw/, /Bass/, /C 50/, /^STC \d/, /OITC/, /Limits the room/, /Next best step/]) {
      await strip(page).getByRole('button', { name }).click();
      const working = page.getByRole('dialog');
      await expect(working).toContainText('How far off such a figure usually is');
      await expect(working).toContainText(/ISO|ASTM|EN /);
      await page.keyboard.press('Escape');
      await expect(working).toBeHidden();
    }
  });

  test('undo and redo bring names back, also after a power cut', async ({ app }) => {
    const { page } = app;
    await leaveTour(page);
    await rename(page, 'Canal store');
    await expect(page).toHaveTitle(/^Canal store · Saved/);
    await page.keyboard.press('Control+z');
    await expect(page).toHaveTitle(/^Boat store/);
    await app.restart();
    await expect(page).toHaveTitle(/^Boat store/);
    await page.keyboard.press('Control+y');
    await expect(page).toHaveTitle(/^Canal store/);
  });

  test('a deleted project comes back by one press, or from the list', async ({ app }) => {
    const { page } = app;
    await leaveTour(page);
    await choose(page, /^Save a copy/);
    await expect(page).toHaveTitle(/\(copy\)/);
    await choose(page, /^Delete/);
    await expect(page).not.toHaveTitle(/\(copy\)/);
    await page.getByRole('status').getByRole('button', { name: 'Undo' }).click();
    await expect(page).toHaveTitle(/\(copy\)/);
    await page.keyboard.press('Control+o');
    const dialog = page.getByRole('dialog', { name: 'Projects' });
    await dialog.getByRole('button', { name: 'More for Boat store by the canal (copy)' }).click();
    await dialog.getByRole('menuitem', { name: 'Delete' }).click();
    await dialog.getByText('Deleted (1)').click();
    await dialog.getByRole('button', { name: /Bring back/ }).click();
    await expect(dialog.getByText('Deleted (1)')).toBeHidden();
    await expect(dialog.getByRole('button', { name: 'Boat store by the canal (copy)', exact: true })).toBeVisible();
  });

  test('a project goes out as a file and comes in again; a foreign file is refused with a sentence', async ({
    app,
  }) => {
    const { page } = app;
    await leaveTour(page);
    const download = page.waitForEvent('download');
    await choose(page, /^Export/);
    const text = readFileSync(await (await download).path(), 'utf8');
    await page.keyboard.press('Control+o');
    const dialog = page.getByRole('dialog', { name: 'Projects' });
    const offer = async (name: string, content: string): Promise<void> => {
      const chooser = page.waitForEvent('filechooser');
      await dialog.getByRole('button', { name: /^Choose a file/ }).click();
      await (await chooser).setFiles({ name, mimeType: 'application/json', buffer: Buffer.from(content) });
    };
    await offer('cut off.json', text.slice(0, 300));
    await expect(dialog.getByRole('alert')).toContainText('not complete JSON');
    await offer('odd.json', text.replace('"name"', '"colour": 1, "name"'));
    await expect(dialog.getByRole('alert')).toContainText('colour');
    await offer('good.json', text);
    await expect(dialog).toBeHidden();
    expect(await app.call('projects.list', {})).toHaveLength(2);
  });

  test('two windows on one project end in a choice, and nothing is lost', async ({ app }) => {
    const { page } = app;
    await leaveTour(page);
    const other = await app.openWindow();
    await expect(strip(other)).toBeVisible();
    await rename(other, 'Theirs');
    await expect(other).toHaveTitle(/^Theirs · Saved/);
    await page.bringToFront();
    await expect(page.getByText('Another window has changed this project.')).toBeVisible();
    await rename(page, 'Mine');
    await expect(page).toHaveTitle(/^Mine · Not saved/);
    await page.getByRole('button', { name: 'Keep mine as a copy' }).click();
    await expect(page).toHaveTitle(/^Mine \(this window\) · Saved/);
    const names = (await app.call('projects.list', {})).map((each) => each.name);
    expect(names.sort()).toEqual(['Mine (this window)', 'Theirs']);
  });

  test('with the host out of reach the window says so, keeps everything and saves it at the next try', async ({
    app,
  }) => {
    const { page } = app;
    await leaveTour(page);
    await page.route('**/call', (route) => route.abort());
    await rename(page, 'Kept in the window');
    await expect(page).toHaveTitle(/^Kept in the window · Not saved/);
    await expect(page.getByText(/host does not answer/)).toBeVisible();
    await rename(page, 'Kept twice');
    await expect(strip(page)).toContainText('Limits the room');
    await page.unroute('**/call');
    await page.getByRole('button', { name: 'Try again' }).click();
    await expect(page).toHaveTitle(/^Kept twice · Saved/);
    await expect(page.getByText(/host does not answer/)).toBeHidden();
    await page.reload();
    await expect(page).toHaveTitle(/^Kept twice/);
    // The refused calls are the point of this test; the browser writes each into its console.
    expect(app.faults.splice(0).every((fault) => fault.includes('ERR_FAILED'))).toBe(true);
  });

  test('five questions make a build whose next best step is known', async ({ app }) => {
    const { page } = app;
    await leaveTour(page);
    await choose(page, /^New build/);
    const dialog = page.getByRole('dialog', { name: 'New build: five questions' });
    await dialog.getByLabel('Name of the project').fill('Drum shed');
    await dialog.getByLabel('Length').fill('16 ft 5 in');
    await dialog.getByLabel('Existing shell').selectOption('timber-shed');
    await dialog.getByLabel('Loudest source').selectOption('drum-kit-hard');
    await dialog.getByRole('button', { name: 'Begin the build' }).click();
    await expect(page).toHaveTitle(/^Drum shed/);
    await expect(strip(page)).toContainText(/Next best step: \w+/);
    await expect(strip(page)).toContainText('kick and bass go straight through');
  });

  for (const theme of ['light', 'dark'] as const)
    test(`has no accessibility fault in ${theme}`, async ({ app }) => {
      const { page } = app;
      await leaveTour(page);
      if (theme === 'dark') await page.getByRole('button', { name: 'Dark' }).click();
      const check = async (what: string): Promise<void> => {
        const { violations } = await new AxeBuilder({ page }).analyze();
        expect(violations.map((each) => `${what}: ${each.id} at ${each.nodes[0]?.target.join(' ') ?? ''}`)).toEqual([]);
      };
      await check('Lay out');
      await page.keyboard.press('Control+o');
      await expect(page.getByRole('dialog', { name: 'Projects' })).toBeVisible();
      await check('Projects');
      await page.keyboard.press('Escape');
      await choose(page, /^New build/);
      await check('New build');
      await page.keyboard.press('Escape');
      await strip(page).getByRole('button', { name: /Bass/ }).click();
      await expect(page.getByRole('dialog')).toContainText('How far off');
      await check('Working');
    });

  test('at 200 % zoom nothing is cut off sideways', async ({ app }) => {
    const { page } = app;
    await leaveTour(page);
    await page.setViewportSize({ width: 640, height: 400 });
    for (const station of [/Lay out/, /Make up/]) {
      await page.getByRole('navigation').getByRole('button', { name: station }).click();
      const beyond = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
      expect(beyond).toBeLessThanOrEqual(0);
    }
  });
});
