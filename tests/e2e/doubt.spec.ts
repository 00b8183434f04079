import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { checkProject } from '../../src/project/check.ts';
import { examples } from '../../src/project/examples.ts';
import { expect, test, type App } from './support/app.ts';

const leaveTour = async (page: Page): Promise<void> => {
  await page.getByRole('dialog').waitFor();
  await page.keyboard.press('Escape');
};
const strip = (page: Page) => page.getByRole('region', { name: 'Where the build stands' });
const drawn = (page: Page) =>
  expect(
    strip(page)
      .getByText(/dB \(\d+–\d+\)/)
      .first(),
  ).toBeVisible({ timeout: 30_000 });

/** The first example with every door, vent and hole walled up, opened in the window: there the joints count. */
const openWalledUp = async (app: App): Promise<void> => {
  const checked = checkProject(examples[0]?.document);
  if (!checked.ok) throw new Error('the first example breaks its own schema');
  const { vents: _vents, options: _options, ...project } = checked.project;
  const surfaces = project.surfaces.map(({ openings: _openings, ...surface }) => surface);
  const { id } = await app.call('projects.create', { document: { ...project, surfaces } });
  await app.page.evaluate((opened) => {
    sessionStorage.setItem('lullwright.project', opened);
  }, id);
  await app.page.reload();
};

test.describe('Doubt', () => {
  test('a target shows its chance, which falls as it rises', async ({ app }) => {
    const { page } = app;
    await leaveTour(page);
    await drawn(page);
    // the example sets one that its open vents miss
    await expect(strip(page).getByText('Chance of Rw 42 dB')).toBeVisible();
    await expect(strip(page).getByText('under 1 %')).toBeVisible({ timeout: 30_000 });
    await strip(page).getByRole('button', { name: 'Change it' }).click();
    const dialog = page.getByRole('dialog', { name: 'Target of the whole room' });
    const least = dialog.getByRole('textbox', { name: 'At least' });
    const chanceOf = async (dB: string): Promise<string> => {
      await least.fill(dB);
      await least.press('Enter');
      const words = dialog.getByText(/of the builds reach it/);
      await expect(words).toBeVisible({ timeout: 30_000 });
      return (await words.textContent()) ?? '';
    };
    expect(await chanceOf('20')).toContain('over 99 %');
    expect(await chanceOf('60')).toContain('under 1 %');
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
    await dialog.getByRole('button', { name: 'Close', exact: true }).last().click();
    await expect(strip(page).getByText('Chance of Rw 60 dB')).toBeVisible();
    await page.keyboard.press('Control+z');
    await expect(strip(page).getByText('Chance of Rw 20 dB')).toBeVisible();
  });

  test('the doubt about STC and about one band is told, and what stands behind the low ones', async ({ app }) => {
    const { page } = app;
    await leaveTour(page);
    await drawn(page);
    await page.getByRole('tab', { name: 'How sure?' }).click();
    const panel = page.getByRole('tabpanel');
    const sources = panel.getByRole('list').last();
    const first = (): Promise<string | null> => sources.getByRole('listitem').first().textContent();
    await panel.getByRole('radio', { name: 'STC' }).check({ force: true });
    await expect(panel.getByRole('row', { name: /^STC/ })).toHaveClass(/chosen/);
    const ofClass = await first();
    await panel.getByRole('radio', { name: 'one band' }).check({ force: true });
    await panel.getByRole('combobox', { name: 'Third octave' }).selectOption('50 Hz');
    await expect(panel.getByRole('row', { name: /^50 Hz/ })).toContainText(/\d+–\d+ dB/);
    await expect.poll(first).not.toBe(ofClass);
    await expect(panel.getByText('Below 100 Hz.')).toBeVisible();
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  });

  test('drawing can be stopped and taken up again, and more builds drawn', async ({ app }) => {
    const { page } = app;
    await leaveTour(page);
    await drawn(page);
    await page.getByRole('tab', { name: 'How sure?' }).click();
    await page.getByRole('button', { name: /^Draw 10/ }).click();
    await page.getByRole('tabpanel').getByRole('button', { name: 'Stop' }).click();
    await expect(page.getByRole('tabpanel').getByText(/^From 2.000 builds/)).toBeVisible();
    await page.getByRole('button', { name: /^Draw 10/ }).click();
    await expect(page.getByRole('tabpanel').getByText(/^From 10.000 builds/)).toBeVisible({ timeout: 40_000 });
  });

  test('rough joints change the interval, and the sources of doubt are told in words', async ({ app }) => {
    const { page } = app;
    await leaveTour(page);
    await drawn(page);
    await page.getByRole('tab', { name: 'How sure?' }).click();
    const panel = page.getByRole('tabpanel');
    await expect(panel.getByText(/^True size of Gap under the doors$/i)).toBeVisible();
    await openWalledUp(app);
    await page.getByRole('tab', { name: 'How sure?' }).click();
    await drawn(page);
    const interval = (): Promise<string | null> =>
      strip(page)
        .getByText(/dB \(\d+–\d+\)/)
        .first()
        .textContent();
    const usual = await interval();
    await panel.getByRole('combobox', { name: 'Sealing of joints' }).selectOption('rough');
    await expect.poll(interval, { timeout: 30_000 }).not.toBe(usual);
    await expect(panel.getByText('how well the joints are sealed')).toBeVisible({ timeout: 30_000 });
    await page.getByRole('button', { name: '50 and 90 of 100' }).click();
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  });

  test('a make-up shows where its doubt comes from', async ({ app }) => {
    const { page } = app;
    await leaveTour(page);
    await page
      .getByRole('button', { name: /Make up/ })
      .first()
      .click();
    await page.getByRole('tab', { name: 'Where the doubt comes from' }).click();
    await expect(page.getByText(/how well the method predicts: masonry with lining/)).toBeVisible({ timeout: 30_000 });
    await expect(page.getByRole('rowheader', { name: /90 of 100, Rw/ })).toBeVisible();
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  });
});
