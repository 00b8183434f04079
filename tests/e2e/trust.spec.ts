import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { newBuild } from '../../src/project/newBuild.ts';
import { expect, test, type App } from './support/app.ts';

const WCAG = ['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa'];

const violations = async (page: Page, within: string): Promise<unknown> => {
  const { violations: found } = await new AxeBuilder({ page }).include(within).withTags(WCAG).analyze();
  return found.map(({ id, nodes }) => [id, nodes.map((node) => node.target)]);
};

const leaveTour = async (page: Page): Promise<void> => {
  const tour = page.getByRole('dialog');
  await tour.waitFor();
  await page.keyboard.press('Escape');
  await tour.waitFor({ state: 'hidden' });
};

/** A block garage against a house, opened in the window. */
const openGarage = async (app: App): Promise<string> => {
  const { page } = app;
  const document = newBuild({
    name: 'Garage beside the house',
    length_m: 5,
    width_m: 4,
    height_m: 2.4,
    shell: 'block-garage',
    source: 'rock-band',
    neighbour_m: 5,
    budget: null,
    currency: '',
  });
  await leaveTour(page);
  const { id } = await app.call('projects.create', { document });
  await page.evaluate((opened) => {
    sessionStorage.setItem('lullwright.project', opened);
  }, id);
  await page.reload();
  await expect(page.getByRole('heading', { name: /^Roof/ })).toBeVisible();
  return id;
};

test.describe('Trust', () => {
  test('a slab into the house is asked for in plain words, carries a share, is marked on the net and can be undone', async ({
    app,
  }) => {
    const { page } = app;
    const id = await openGarage(app);
    await page.getByRole('button', { name: 'Does a slab or soffit run through to the house? …' }).click();
    const dialog = page.getByRole('dialog');
    await dialog.getByLabel('Past which surface').selectOption({ label: 'East wall' });
    expect(await violations(page, 'dialog')).toEqual([]);
    await dialog.getByRole('button', { name: 'Add this way round' }).click();
    const row = page.getByRole('heading', { name: /Floor slab into the house/ });
    await expect(row).toContainText('%');
    await expect(
      page.getByRole('button', { name: /Floor slab into the house, way round, .*% of what gets out/ }),
    ).toBeVisible();

    await page.getByRole('button', { name: /^Share/ }).click();
    const working = page.getByRole('dialog');
    await expect(working).toContainText('EN 12354-1:2000, annex E.3');
    await expect(working).toContainText('ISO 12354-1:2017');
    await page.keyboard.press('Escape');

    await page.getByText('Table', { exact: true }).click();
    const table = page.getByRole('region', { name: 'Ways round the parts' });
    await expect(table.getByRole('rowheader')).toHaveText('Floor slab into the house');
    await page.getByText('Drawing', { exact: true }).click();
    await page.getByRole('button', { name: /^Undo/ }).click();
    await expect(row).toBeHidden();
    await page.getByRole('button', { name: /^Redo/ }).click();
    await expect(row).toBeVisible();
    await expect
      .poll(async () => (await app.call('projects.open', { id })).document)
      .toMatchObject({ flanking: [{ kind: 'slab-through', past: 'east', inside: { surface: 'floor' } }] });
  });

  test('how far to trust this: from Help and from a working, by class, in light and dark', async ({
    app: { page },
  }) => {
    await leaveTour(page);
    await page.getByRole('button', { name: 'Help' }).click();
    await page.getByRole('menuitem', { name: 'How far to trust this' }).click();
    const dialog = page.getByRole('dialog', { name: 'How far to trust this' });
    await expect(dialog.getByRole('img', { name: /^Predicted against measured: \d+ figures/ })).toBeVisible();
    await dialog.getByRole('button', { name: 'masonry with lining', exact: true }).click();
    await expect(dialog).toContainText('No measured curve of this class was at hand');
    await expect(dialog).toContainText('isolating clips: none');
    await expect(dialog).toContainText('next to no evidence');
    expect(await violations(page, 'dialog')).toEqual([]);
    await page.keyboard.press('Escape');
    await expect(dialog).toBeHidden();

    await page.getByRole('button', { name: 'Dark', exact: true }).click();
    await page.getByRole('button', { name: /^Whole room, Rw/ }).click();
    await page.getByRole('button', { name: 'How far to trust this' }).click();
    await expect(dialog).toBeVisible();
    expect(await violations(page, 'dialog')).toEqual([]);
    await page.setViewportSize({ width: 640, height: 800 });
    const excess = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(excess).toBeLessThanOrEqual(0);
  });

  test('a second method is drawn on demand, and where the two contradict each other is said by band', async ({
    app: { page },
  }) => {
    await leaveTour(page);
    await page.getByRole('button', { name: /Make up/ }).click();
    const compare = page.getByRole('button', { name: 'Compare A with a second method' });
    await compare.click();
    await expect(
      page.getByText(/Two methods differ by more than 5 dB at|Both methods agree within 5 dB/),
    ).toBeVisible();
    const curve = page
      .getByRole('group', { name: 'Shown on the chart' })
      .getByRole('button', { name: 'second method' });
    await expect(curve).toHaveAttribute('aria-pressed', 'true');
    expect(await violations(page, 'main')).toEqual([]);
    await compare.click();
    await expect(curve).toBeHidden();
  });
});
