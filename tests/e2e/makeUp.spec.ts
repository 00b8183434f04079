import AxeBuilder from '@axe-core/playwright';
import type { Locator, Page } from '@playwright/test';
import { expect, test } from './support/app.ts';

const layer = (page: Page, number: number): Locator =>
  page.getByRole('button', { name: new RegExp(`^Layer ${number} of`) });
const figure = (page: Page, name: string): Locator => page.getByRole('button', { name: new RegExp(`^${name}`) });

/** Decibels of a cell, whatever stands around them. */
const decibels = async (cell: Locator): Promise<number> => {
  const text = (await cell.locator('.value').textContent()) ?? '';
  return Number(/\d+/.exec(text)?.[0]);
};

const enter = async (page: Page): Promise<void> => {
  const tour = page.getByRole('dialog');
  await tour.waitFor();
  await page.keyboard.press('Escape');
  await tour.waitFor({ state: 'hidden' });
  await page.getByRole('button', { name: /Make up/ }).click();
  await expect(figure(page, 'Rw \\(C; Ctr\\) of A')).toBeVisible();
};

test.describe('Make up', () => {
  test('compares two layups: figures, differences, curves', async ({ app: { page } }) => {
    await enter(page);
    const region = page.getByRole('region', { name: 'Make-ups side by side' });
    await expect(region.getByRole('columnheader')).toHaveCount(2);
    for (const column of ['A', 'B']) {
      await expect(figure(page, `Rw \\(C; Ctr\\) of ${column}`)).toBeVisible();
      await expect(figure(page, `Bass 50–100 Hz of ${column}`)).toBeVisible();
    }
    const bass = region.getByRole('row', { name: /Bass/ });
    const difference =
      (await decibels(figure(page, 'Bass 50–100 Hz of B'))) - (await decibels(figure(page, 'Bass 50–100 Hz of A')));
    await expect(bass).toContainText(difference < 0 ? `−${-difference}` : String(difference));

    await page.getByRole('button', { name: 'as a table' }).click();
    const table = page.getByRole('region', { name: 'Sound reduction index R, as a table' });
    await expect(table.getByRole('row')).toHaveCount(28);
    await page.getByRole('button', { name: 'as a table' }).click();
    const reader = page.getByRole('slider', { name: /read by band/ });
    await reader.focus();
    await page.keyboard.press('Home');
    await expect(reader).toHaveAttribute('aria-valuetext', /^25 Hz: A .* dB, B .* dB$/);
  });

  test('fits a 1280 x 800 window without scrolling the page, light and dark, and passes axe', async ({
    app: { page },
  }) => {
    await enter(page);
    for (const scheme of ['light', 'dark']) {
      const toggle = page.getByRole('button', { name: scheme === 'dark' ? 'Dark' : 'Light', exact: true });
      if (await toggle.isVisible()) await toggle.click();
      const overflow = await page.evaluate(() => {
        const main = document.querySelector('main');
        return [
          document.documentElement.scrollHeight - innerHeight,
          document.documentElement.scrollWidth - innerWidth,
          (main?.scrollHeight ?? 0) - (main?.clientHeight ?? 0),
          (main?.scrollWidth ?? 0) - (main?.clientWidth ?? 0),
        ];
      });
      for (const excess of overflow) expect(excess).toBeLessThanOrEqual(0);
      const { violations } = await new AxeBuilder({ page })
        .include('main')
        .withTags(['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa'])
        .analyze();
      expect(violations.map(({ id, nodes }) => [id, nodes.map((node) => node.target)])).toEqual([]);
    }
  });

  test('a board more and a thicker board by keyboard raise the mass, and undo takes them back one by one', async ({
    app: { page },
  }) => {
    await enter(page);
    const mass = figure(page, 'Mass of A');
    const before = await decibels(mass);
    await layer(page, 1).focus();
    await page.keyboard.press('Insert');
    await page.getByRole('button', { name: 'Board', exact: true }).press('Enter');
    await expect(layer(page, 1)).toHaveAccessibleName(/of 5: Plasterboard, dense, 12.5 mm/);
    await expect.poll(() => decibels(mass)).toBeGreaterThan(before);
    const boarded = await decibels(mass);

    await layer(page, 1).focus();
    await page.keyboard.press('+');
    await expect(layer(page, 1)).toHaveAccessibleName(/15 mm/);
    await expect.poll(() => decibels(mass)).toBeGreaterThan(boarded);

    const undo = page.getByRole('button', { name: /^Undo/ });
    await undo.click();
    await expect(layer(page, 1)).toHaveAccessibleName(/of 5: .*12.5 mm/);
    await undo.click();
    await expect(layer(page, 1)).toHaveAccessibleName(/of 4/);
    await expect.poll(() => decibels(mass)).toBe(before);
  });

  test('dragging a handle thickens a layer with the hand, in one step of the history', async ({ app: { page } }) => {
    await enter(page);
    const brick = layer(page, 4);
    await expect(brick).toHaveAccessibleName(/215 mm/);
    const box = await page.locator('.handle').last().boundingBox();
    if (!box) throw new Error('The last layer has no handle.');
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    for (let step = 1; step <= 6; step += 1) await page.mouse.move(x + step * 4, y);
    await expect(brick).not.toHaveAccessibleName(/215 mm/);
    await page.mouse.up();
    await page.getByRole('button', { name: /^Undo/ }).click();
    await expect(brick).toHaveAccessibleName(/215 mm/);
  });

  test('a third leaf is called out, and its remedy becomes a column that can be undone', async ({ app: { page } }) => {
    await enter(page);
    await page.getByRole('button', { name: /old lining kept/ }).click();
    const notes = page.getByRole('region', { name: /What the physics says of B/ });
    await expect(notes).toContainText('third leaf');
    const bass = await decibels(figure(page, 'Bass 50–100 Hz of B'));
    await notes.getByRole('button', { name: 'Try it as a new column' }).first().click();
    const letters = page.getByRole('region', { name: 'Make-ups side by side' }).locator('thead .letter');
    await expect(letters).toHaveText(['A', 'B', 'C']);
    await expect.poll(() => decibels(figure(page, 'Bass 50–100 Hz of C'))).toBeGreaterThan(bass);
    await page.getByRole('button', { name: /^Undo/ }).click();
    await expect(letters).toHaveCount(2);
  });

  test('a material of one’s own is added, used and shown with its source', async ({ app: { page } }) => {
    await enter(page);
    await page.locator('.material button').first().click();
    await page.getByRole('button', { name: 'Make my own from this' }).click();
    await page.getByLabel('Name', { exact: true }).fill('Leftover boards');
    await page.getByLabel('Density').fill('9e9');
    await page.getByLabel('Density').press('Tab');
    await expect(page.getByText(/Density:.*Write 1 kg\/m³ to 25000 kg\/m³/)).toBeVisible();
    await page.getByLabel('Density').fill('910');
    await page.getByLabel('Where the values come from').fill('weighed on the bathroom scales');
    await page.getByRole('button', { name: 'Add it' }).click();
    await expect(page.getByText('weighed on the bathroom scales').first()).toBeVisible();
    await page.getByRole('button', { name: 'Use it' }).click();
    await expect(layer(page, 1)).toHaveAccessibleName(/Leftover boards/);
  });

  test('a material of one’s own that nothing uses is removed; one in use is kept and its users named', async ({
    app: { page },
  }) => {
    await enter(page);
    await page.locator('.material button').first().click();
    const dialog = page.getByRole('dialog');
    const addOwn = async (name: string): Promise<void> => {
      await dialog.getByRole('button', { name: 'Make my own from this' }).click();
      await dialog.getByLabel('Name').fill(name);
      await dialog.getByRole('button', { name: 'Add it' }).click();
      await expect(dialog.getByRole('button', { name, exact: true })).toHaveAttribute('aria-pressed', 'true');
    };
    await addOwn('Left-over board');
    await dialog.getByRole('button', { name: 'Remove it' }).click();
    await expect(dialog.getByRole('button', { name: 'Left-over board' })).toHaveCount(0);
    await dialog.getByRole('button', { name: /\(now\)$/ }).click();
    await addOwn('Board in use');
    await dialog.getByRole('button', { name: 'Use it' }).click();
    await page.locator('.material button').first().click();
    await dialog.getByRole('button', { name: 'Board in use (now)' }).click();
    await dialog.getByRole('button', { name: 'Remove it' }).click();
    await expect(dialog.getByRole('alert')).toContainText(/Board in use cannot be removed: it is used in Brick wall/);
  });

  test('a note on a make-up and the currency of all prices are kept', async ({ app: { page } }) => {
    await enter(page);
    const section = page.getByRole('region', { name: /^Section and layers/ });
    const note = section.getByLabel(/^Note on/);
    await note.fill('Boards by the lorry, not by hand');
    await note.blur();
    const currency = section.getByLabel('Currency of all prices');
    await currency.fill('EUR');
    await currency.press('Enter');
    await expect(section.getByLabel('Material, your price')).toBeVisible();
    await expect(section.getByText('EUR/m²').first()).toBeVisible();
    await page.reload();
    await page.getByRole('button', { name: /Make up/ }).click();
    await expect(page.getByLabel(/^Note on/)).toHaveValue('Boards by the lorry, not by hand');
    await expect(page.getByLabel('Currency of all prices')).toHaveValue('EUR');
  });

  test('every figure shows its working', async ({ app: { page } }) => {
    await enter(page);
    await figure(page, 'Rw \\(C; Ctr\\) of A').click();
    const working = page.getByRole('dialog');
    await expect(working).toContainText('ISO 717-1');
    await expect(working).toContainText('How far off such a figure usually is');
    await page.keyboard.press('Escape');
    await expect(working).toBeHidden();

    await page.getByRole('slider', { name: /read by band/ }).focus();
    for (const key of ['End', 'Enter']) await page.keyboard.press(key);
    await expect(page.getByRole('dialog')).toContainText(/at 10.?000 Hz|at 10 kHz|at 10k Hz/);
    await expect(page.getByRole('dialog')).toContainText('of what gets through');
  });

  test('Enter on a layer opens its thickness, which takes numbers as people write them', async ({ app: { page } }) => {
    await enter(page);
    await layer(page, 1).focus();
    await page.keyboard.press('Enter');
    await page.keyboard.type('1,5 cm');
    await page.keyboard.press('Tab');
    await expect(layer(page, 1)).toHaveAccessibleName(/15 mm/);
    await layer(page, 3).focus();
    await page.getByLabel('Arrangement').selectOption({ label: 'one stud touches both sides' });
    await expect(page.locator('svg[role=group] title', { hasText: 'rigid link' }).first()).toBeAttached();
  });

  test('columns are added from a starting point, copied, taken away and deleted', async ({ app: { page } }) => {
    await enter(page);
    const letters = page.getByRole('region', { name: 'Make-ups side by side' }).locator('thead .letter');
    await page.getByRole('button', { name: '+ column' }).click();
    const dialog = page.getByRole('dialog', { name: 'Add a column' });
    await dialog.getByRole('button', { name: /^Secondary glazing/ }).click();
    await dialog.getByLabel('Name of the new make-up').fill('Window of two panes');
    await dialog.getByRole('button', { name: 'Make it' }).click();
    await expect(letters).toHaveCount(3);
    await expect(page.getByLabel('Name of make-up C')).toHaveValue('Window of two panes');
    await expect(figure(page, 'Rw \\(C; Ctr\\) of C')).toBeVisible();

    const choose = async (column: string, item: string): Promise<void> => {
      await page.getByRole('button', { name: `Column ${column}`, exact: true }).click();
      await page.getByRole('menuitem', { name: item }).click();
    };
    await choose('C', 'Copy as a new column');
    await expect(letters).toHaveCount(4);
    await expect(page.getByLabel('Name of make-up D')).toHaveValue('Window of two panes (copy)');
    await choose('D', 'Delete this make-up');
    await expect(letters).toHaveCount(3);
    await choose('C', 'Take the column away');
    await expect(letters).toHaveCount(2);
    await choose('A', 'Delete this make-up');
    await expect(page.getByText(/cannot be removed: it is used by North wall/)).toBeVisible();
    await expect(letters).toHaveCount(2);
  });

  test('dialogs pass axe', async ({ app: { page } }) => {
    await enter(page);
    const check = async (): Promise<void> => {
      const { violations } = await new AxeBuilder({ page }).include('dialog').analyze();
      expect(violations.map(({ id, nodes }) => [id, nodes.map((node) => node.target)])).toEqual([]);
    };
    await page.locator('.material button').first().click();
    await check();
    await page.getByRole('button', { name: 'Make my own from this' }).click();
    await check();
    await page.keyboard.press('Escape');
    await page.getByRole('button', { name: '+ column' }).click();
    await check();
  });
});
