import AxeBuilder from '@axe-core/playwright';
import type { Locator, Page } from '@playwright/test';
import type { OpeningEntry, Project } from '../../src/project/schema.ts';
import { expect, test, type App } from './support/app.ts';

const empty: Project = { format: 'lullwright/project@1', name: 'Garden room', assemblies: {}, surfaces: [] };

/** Opens the window on a room with one opening in its north wall. */
const begin = async (app: App, kind: string): Promise<string> => {
  const { page } = app;
  const tour = page.getByRole('dialog');
  await tour.waitFor();
  await page.keyboard.press('Escape');
  await tour.waitFor({ state: 'hidden' });
  const { id } = await app.call('projects.create', { document: empty });
  await page.evaluate((project) => {
    sessionStorage.setItem('lullwright.project', project);
  }, id);
  await page.reload();
  await page.getByRole('button', { name: 'Lay out this room' }).click();
  await part(page, /^North wall/).click();
  await page.getByRole('button', { name: 'Add an opening to North wall' }).click();
  await page.getByRole('menuitem', { name: kind, exact: true }).click();
  return id;
};

const part = (page: Page, name: RegExp): Locator =>
  page.getByRole('group', { name: /^The room unfolded/ }).getByRole('button', { name });
const opening = async (app: App, id: string): Promise<OpeningEntry | undefined> =>
  ((await app.call('projects.open', { id })).document as Project).surfaces[0]?.openings?.[0];
const rated = async (region: Locator): Promise<number> => {
  const text = await region.innerText();
  return Number(/Rw (\d+) dB/.exec(text)?.[1] ?? Number.NaN);
};

test.describe('Doors, windows and services', () => {
  test('a door without seals leaks at the threshold, says so, and gains by a drop seal and a lobby', async ({
    app,
  }) => {
    const { page } = app;
    const id = await begin(app, 'Door');
    const strip = page.getByRole('region', { name: 'Selected: Door' });
    await strip.getByRole('button', { name: 'Seals and lock of Door' }).click();
    const dialog = page.getByRole('dialog');
    const outcome = dialog.getByRole('region', { name: 'What comes of it' });
    const sides = dialog.getByRole('combobox', { name: 'Sides and head' });
    const threshold = dialog.getByRole('combobox', { name: 'At the threshold' });
    await expect(outcome).toContainText('The leaf lets out most');
    const ordinary = await rated(outcome);
    await sides.selectOption('none');
    await threshold.selectOption('none');
    await expect(outcome).toContainText(/lets out more than the leaf itself: without that leak/);
    const open = await rated(outcome);
    expect(open).toBeLessThan(ordinary - 5);
    await sides.selectOption({ label: 'Compression seal (as a 0.1 mm slit)' });
    await expect(outcome).toContainText('The threshold lets out more than the leaf itself');
    await threshold.selectOption('drop');
    await expect(outcome).toContainText('The leaf lets out most');
    const sealed = await rated(outcome);
    expect(sealed).toBeGreaterThan(open + 5);
    await expect(dialog.getByRole('table', { name: /What Door lets out/ }).getByRole('row')).toHaveCount(4);
    await dialog.getByRole('radio', { name: 'A second door behind it' }).check({ force: true });
    await dialog.getByRole('radio', { name: 'Lined with absorber' }).check({ force: true });
    await expect(dialog.getByRole('table')).toHaveCount(2);
    await expect(dialog.getByText('Both doors of a lobby must open from inside without a key')).toBeVisible();
    await expect.poll(() => rated(outcome)).toBeGreaterThan(sealed + 8);
    await page.keyboard.press('Escape');
    await expect(strip.getByRole('button', { name: 'Seals and lock of Door' })).toBeFocused();
    await expect
      .poll(() => opening(app, id))
      .toMatchObject({
        seals: { perimeter: 'compression', threshold: 'drop' },
        second: { gap_mm: 300, lined: true },
      });
    await page.getByRole('button', { name: /^Undo/ }).click();
    await expect.poll(() => opening(app, id)).toMatchObject({ second: { lined: false } });
    const panel = page.getByRole('tabpanel');
    await panel.getByRole('button', { name: 'Weigh better fittings of Door' }).click();
    await page.getByRole('menuitem', { name: 'Lobby lined' }).click();
    await panel.getByRole('button', { name: 'Adopt Lobby lined' }).click();
    await expect
      .poll(() => opening(app, id))
      .toMatchObject({ second: { lined: true }, candidates: [{ fittings: { second: { lined: false } } }] });
  });

  test('services are the usual ones, and sealing them brings back what they took', async ({ app }) => {
    const { page } = app;
    const id = await begin(app, 'Sockets');
    await page.getByRole('button', { name: 'Services of Sockets' }).first().click();
    const dialog = page.getByRole('dialog');
    const outcome = dialog.getByRole('region', { name: 'What comes of it' });
    await dialog.getByRole('combobox', { name: 'Service 1' }).selectOption({ label: 'Sockets back to back' });
    await expect(outcome).toContainText('Sockets back to back: more comes through here');
    const open = await rated(outcome);
    await dialog.getByRole('radio', { name: 'Yes' }).check({ force: true });
    await expect.poll(() => rated(outcome)).toBeGreaterThan(open + 5);
    await dialog.getByRole('button', { name: 'Add a service to Sockets' }).click();
    await page.getByRole('menuitem', { name: 'Pipe' }).click();
    const hole = dialog.getByRole('textbox', { name: 'Hole across' });
    await hole.fill('10');
    await hole.press('Enter');
    await expect(dialog.getByRole('alert')).toContainText('at most the hole');
    await hole.fill('50');
    await hole.press('Enter');
    await expect(dialog.getByRole('alert')).toBeHidden();
    await expect
      .poll(() => opening(app, id))
      .toMatchObject({ kind: 'service', items: [{ kind: 'socket-back-to-back', sealed: true }, { hole_mm: 50 }] });
    await dialog.getByRole('button', { name: 'Remove service 2, Pipe, not sealed' }).click();
    await expect(dialog.getByRole('listitem')).toHaveCount(1);
  });

  test('secondary glazing is set by keyboard alone, from the table', async ({ app }) => {
    const { page } = app;
    const id = await begin(app, 'Window');
    await page.getByRole('radio', { name: 'Table' }).check({ force: true });
    await page.getByRole('button', { name: 'Seals and panes of Window' }).first().focus();
    await page.keyboard.press('Enter');
    const dialog = page.getByRole('dialog');
    expect(await dialog.evaluate((sheet) => sheet.scrollWidth - sheet.clientWidth)).toBeLessThanOrEqual(0);
    await dialog.getByRole('radio', { name: 'One window' }).focus();
    await page.keyboard.press('ArrowRight');
    const gap = dialog.getByRole('textbox', { name: 'Clear between the panes' });
    await gap.focus();
    await page.keyboard.press('ControlOrMeta+A');
    await page.keyboard.type('20 cm');
    await page.keyboard.press('Enter');
    await expect(gap).toHaveValue('200');
    await expect.poll(() => opening(app, id)).toMatchObject({ second: { gap_mm: 200, lined: false } });
    await page.keyboard.press('Control+z');
    await expect(gap).toHaveValue('150');
    await expect(dialog).toBeVisible();
  });

  test('passes axe, light and dark', async ({ app }) => {
    const { page } = app;
    await begin(app, 'Door');
    for (const scheme of ['Light', 'Dark']) {
      const toggle = page.getByRole('button', { name: scheme, exact: true });
      if (await toggle.isVisible()) await toggle.click();
      await part(page, /^Door/).click();
      await page
        .getByRole('region', { name: 'Selected: Door' })
        .getByRole('button', { name: /^Seals and lock/ })
        .click();
      const dialog = page.getByRole('dialog');
      await dialog.getByRole('radio', { name: 'Described here' }).first().check({ force: true });
      await dialog.getByRole('radio', { name: 'A second door behind it' }).check({ force: true });
      await expect(dialog.getByRole('table')).toHaveCount(2);
      const found = await new AxeBuilder({ page }).analyze();
      expect(found.violations.map((it) => `${it.id}: ${it.nodes[0]?.html}`)).toEqual([]);
      await page.keyboard.press('Escape');
      const closed = await new AxeBuilder({ page }).analyze();
      expect(closed.violations.map((it) => `${it.id}: ${it.nodes[0]?.html}`)).toEqual([]);
    }
  });
});
