import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { expect, test } from './support/app.ts';

const enter = async (page: Page): Promise<void> => {
  const tour = page.getByRole('dialog');
  await tour.waitFor();
  await page.keyboard.press('Escape');
  await tour.waitFor({ state: 'hidden' });
  await page.getByRole('button', { name: /Breathe/ }).click();
  await page.getByRole('tab', { name: 'Sound' }).click();
  await expect(page.getByRole('heading', { name: 'Which box would do?' })).toBeVisible();
};
const allow = async (page: Page, decibels: string): Promise<void> => {
  const field = page.getByLabel('May cost the wall');
  await field.fill(decibels);
  await field.press('Enter');
  await page.getByRole('button', { name: 'Look for it' }).click();
};

test.describe('Which box would do?', () => {
  test('finds a box, puts it into the vent as one step, and the station agrees with it', async ({ app: { page } }) => {
    test.setTimeout(180_000);
    await enter(page);
    await allow(page, '15');
    const put = page.getByRole('button', { name: /^Put th/ });
    await expect(put).toBeVisible({ timeout: 120_000 });
    await expect(page.getByText(/not more than the 15 dB asked for/)).toBeVisible();
    await expect(page.getByText(/were solved by the wave equation at 20 mm/)).toBeVisible();
    const promised = await page.getByRole('row', { name: /^Once it is in/ }).textContent();
    const [, rating, cost] = /Dn,e,w (\d+) dB, costs the wall ([\d.]+) dB/.exec(promised ?? '') ?? [];
    expect(Number(cost)).toBeGreaterThan(0);

    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      const { violations } = await new AxeBuilder({ page })
        .include('section[aria-labelledby="design-title"]')
        .withTags(['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa'])
        .analyze();
      expect(
        violations.map(({ id, nodes }) => [id, nodes.map((node) => node.target)]),
        colorScheme,
      ).toEqual([]);
    }

    const parts = page.getByRole('button', { name: /^Part \d+ of/ });
    const before = await parts.count();
    await put.click();
    await expect(page.getByText('It is in the vent now. Undo takes it out again.')).toBeVisible();
    await expect(parts).not.toHaveCount(before);
    await expect(page.getByRole('button', { name: /^Part 2 of.*Box in the room/ })).toBeVisible();
    await expect(page.getByRole('button', { name: /^Keeps in, Dn,e,w/ })).toContainText(String(rating), {
      timeout: 90_000,
    });
    await expect(page.getByRole('button', { name: /^Costs North wall/ })).toContainText(String(cost), {
      timeout: 90_000,
    });

    await page.keyboard.press('Control+z');
    await expect(parts).toHaveCount(before);
    await expect(page.getByText('The project has changed since. Look again.')).toBeVisible();
  });

  test('finishes one vent before it looks for another, and says so', async ({ app: { page } }) => {
    await enter(page);
    await allow(page, '1');
    await page.getByLabel('Vent', { exact: true }).selectOption({ label: 'Used air, pipe with a bend and a grille' });
    await expect(page.getByText('Waits: a box for Fresh air vent is looked for first.')).toBeVisible();
    await expect(page.getByRole('button', { name: 'Look for it' })).toBeDisabled();
    await page.getByRole('button', { name: 'Stop that' }).click();
    await expect(page.getByRole('button', { name: 'Look for it' })).toBeEnabled();
  });
});
