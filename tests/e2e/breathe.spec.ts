import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { expect, test } from './support/app.ts';

const enter = async (page: Page): Promise<void> => {
  const tour = page.getByRole('dialog');
  await tour.waitFor();
  await page.keyboard.press('Escape');
  await tour.waitFor({ state: 'hidden' });
  await page.getByRole('button', { name: /Breathe/ }).click();
  await expect(page.getByText(/people need .* of fresh air/)).toBeVisible();
};

/** A vent through the opening of the example, begun as one of the starting points. */
const add = async (page: Page, way: RegExp, start: string): Promise<void> => {
  await page.getByRole('button', { name: '+ Vent' }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('radio', { name: way }).check({ force: true });
  await dialog.getByLabel('Begin with').selectOption({ label: start });
  await dialog.getByRole('button', { name: 'Add the vent' }).click();
  await dialog.waitFor({ state: 'hidden' });
};
const part = (page: Page, number: number) => page.getByRole('button', { name: new RegExp(`^Part ${number} of`) });

test.describe('Breathe', () => {
  test('says how much fresh air is needed, what the fan off means, and where the air is too fast', async ({
    app: { page },
  }) => {
    await enter(page);
    await expect(
      page.getByText(/9 people need 72 L\/s of fresh air; \d+ L\/s come in\. Enough to plan with/),
    ).toBeVisible();
    await page.getByRole('button', { name: /^Fan off: 1500 ppm after/ }).click();
    const working = page.getByRole('dialog');
    await expect(working).toContainText('Persily');
    await expect(working).toContainText('C(t)');
    await page.keyboard.press('Escape');

    const count = page.getByLabel(/^How many:/);
    await count.fill('60');
    await count.press('Enter');
    await expect(page.getByText(/60 people need 480 L\/s .*too little to stay in/)).toBeVisible();
    await expect(page.getByText(/do not save air for the sake of sound/)).toBeVisible();

    await page.getByRole('tab', { name: 'Fan and speed' }).click();
    await expect(page.getByRole('slider', { name: /Fan against losses/ })).toBeVisible();
    await expect(page.getByRole('row', { name: /too fast: over 2.5 m\/s/ }).first()).toBeVisible();
  });

  test('reckons with a high outlet and wind, and shows what they move while the fan stands', async ({
    app: { page },
  }) => {
    await enter(page);
    const alone = page.getByRole('button', { name: /^Fan off: comes in/ });
    await expect(alone).toBeHidden();
    await page.getByText('Room and climate').click();
    await expect(page.getByText('Wind blows on')).toBeHidden();
    for (const [label, value] of [
      ['Outlet higher than inlet by', '2.5'],
      ['Wind', '4'],
    ] as const) {
      const field = page.getByLabel(label, { exact: true });
      await field.fill(value);
      await field.press('Enter');
    }
    await expect(alone).toBeVisible();
    await expect(page.getByText('warmth 1.7 Pa, wind 7.2 Pa')).toBeVisible();
    await expect(page.getByText(/Warmth and wind are reckoned to move \d+ L\/s/)).toBeVisible();
    await page.getByLabel('Wind blows on').selectOption({ label: 'the used air’s side' });
    await expect(page.getByText('warmth 1.7 Pa, wind −7.2 Pa')).toBeVisible();
    await alone.click();
    await expect(page.getByRole('dialog')).toContainText('EN 16798-7');
    await page.keyboard.press('Escape');
    await page.getByRole('tab', { name: 'Sound' }).click();
    await expect(page.getByText(/most of it from Duct fan/)).toBeVisible();
  });

  test('begins without vents with the air that is lacking', async ({ app: { page } }) => {
    await enter(page);
    for (const vent of ['Fresh air vent', 'Used air vent']) {
      await page.getByRole('button', { name: /^More about/ }).click();
      await page.getByRole('menuitem', { name: 'Remove this vent and its opening' }).click();
      await expect(page.getByText(`through ${vent}`)).toBeHidden();
    }
    await expect(page.getByText(/There is no way for fresh air in and no way for used air out/)).toBeVisible();
    await page.getByRole('button', { name: 'Undo', exact: false }).first().click();
    await expect(page.getByText('through Used air vent')).toBeVisible();
  });

  test('changes a vent by keyboard, and undo takes it back one by one', async ({ app: { page } }) => {
    await enter(page);
    await add(page, /in: fresh air/, 'A lined duct');
    await expect(part(page, 2)).toHaveAttribute('aria-label', /Duct.*1500 mm long/);
    await part(page, 2).focus();
    await page.keyboard.press('+');
    await expect(part(page, 2)).toHaveAttribute('aria-label', /1550 mm long/);
    await page.keyboard.press('PageUp');
    await expect(part(page, 2)).toHaveAttribute('aria-label', /diameter 150 mm/);
    await page.keyboard.press('Alt+ArrowLeft');
    await expect(part(page, 1)).toHaveAttribute('aria-label', /Duct/);
    for (const expected of [/Grille/, /Grille/, /Grille/]) {
      await page.keyboard.press('Control+z');
      await expect(part(page, 1)).toHaveAttribute('aria-label', expected);
    }
    await expect(part(page, 2)).toHaveAttribute('aria-label', /1500 mm long.*125 mm/);
  });

  test('drags a partition in the plan: the drawing and the curves follow, as one step', async ({ app: { page } }) => {
    test.setTimeout(60_000);
    await enter(page);
    await add(page, /in: fresh air/, 'One lined box');
    await part(page, 2).focus();
    const partition = page.getByRole('button', { name: /^Partition 1 of 2/ });
    await expect(partition).toHaveAttribute('aria-label', /400 mm from the left/);
    await page.getByRole('tab', { name: 'Sound' }).click();
    const rating = page.getByRole('button', { name: /^Keeps in, Dn,e,w/ });
    await expect(rating).toBeVisible();
    const box = await partition.boundingBox();
    if (!box) throw new Error('the partition is not drawn');
    await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    await page.mouse.down();
    await page.mouse.move(box.x + box.width / 2 + 40, box.y + box.height / 2, { steps: 4 });
    await page.mouse.up();
    await expect(partition).not.toHaveAttribute('aria-label', /400 mm from the left/);
    await page.keyboard.press('Control+z');
    await expect(partition).toHaveAttribute('aria-label', /400 mm from the left/);

    await page.getByLabel('Sound inside').selectOption({ label: '500 Hz' });
    await expect(page.getByText('The more ink, the louder')).toBeVisible();
    await expect(page.getByRole('status').filter({ hasText: 'Solved on the fine grid' })).toBeVisible({
      timeout: 40_000,
    });
    await page.getByRole('radio', { name: 'Against an open hole' }).check({ force: true });
    await page.getByRole('button', { name: 'as a table' }).click();
    await expect(page.getByRole('columnheader', { name: /between endless ducts/ })).toBeVisible();
  });

  test('keeps the sound in the box drawn while a partition is dragged, and lets it follow', async ({
    app: { page },
  }) => {
    test.setTimeout(60_000);
    await enter(page);
    await add(page, /in: fresh air/, 'One lined box');
    await part(page, 2).focus();
    await page.getByLabel('Sound inside').selectOption({ label: '500 Hz' });
    await expect(page.getByText('The more ink, the louder')).toBeVisible();
    const plan = page.getByRole('group', { name: /^Plan of/ });
    const field = plan.locator('path[stroke-opacity="0.7"]');
    const before = await field.getAttribute('d');
    // every drawing of the plan from now on: whether the sound is in it, and which
    await plan.evaluate((drawing) => {
      const seen: (string | null)[] = [];
      Object.assign(window, { seen });
      new MutationObserver(() =>
        seen.push(drawing.querySelector('path[stroke-opacity="0.7"]')?.getAttribute('d') ?? null),
      ).observe(drawing, { subtree: true, childList: true, attributes: true });
    });
    const partition = page.getByRole('button', { name: /^Partition 1 of 2/ });
    const box = await partition.boundingBox();
    if (!box) throw new Error('the partition is not drawn');
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x + 30, y, { steps: 10 });
    await expect(field).not.toHaveAttribute('d', before ?? '');
    const moved = await field.getAttribute('d');
    await page.mouse.move(x + 60, y, { steps: 10 });
    await expect(field).not.toHaveAttribute('d', moved ?? '');
    const seen = await page.evaluate(() => (window as unknown as { seen: (string | null)[] }).seen);
    expect(seen.length).toBeGreaterThan(4);
    expect(seen.filter((drawn) => drawn === null)).toEqual([]);
    await page.mouse.up();
    await page.keyboard.press('Control+z');
    await expect(partition).toHaveAttribute('aria-label', /400 mm from the left/);
  });

  test('shows a candidate as if it were built in, and a new opening with its vent is one step', async ({
    app: { page },
  }) => {
    await enter(page);
    await page.getByRole('tab', { name: 'Sound' }).click();
    const choice = page.getByLabel('Vent', { exact: true });
    await choice.selectOption({ label: 'Fresh air, long box' });
    await expect(page.getByText(/is not built in: the figures here are as if it stood in place of/)).toBeVisible();
    await page.getByRole('button', { name: /^Keeps in, Dn,e,w/ }).click();
    await expect(page.getByRole('dialog')).toContainText('A = τ · S');
    await page.keyboard.press('Escape');
    await page.getByRole('tab', { name: 'Fan and speed' }).click();
    await page
      .getByRole('button', { name: /: takes/ })
      .nth(1)
      .click();
    await expect(page.getByRole('dialog')).toContainText('Δp =');
    await page.keyboard.press('Escape');

    await page.getByRole('button', { name: '+ Vent' }).click();
    const dialog = page.getByRole('dialog');
    await dialog.getByLabel('Through').selectOption('new:north');
    await dialog.getByRole('button', { name: 'Add the vent' }).click();
    await dialog.waitFor({ state: 'hidden' });
    await page.keyboard.press('Control+z');
    await expect(page.getByText(/^through Vent/)).toBeHidden();
    await expect(page.getByRole('button', { name: /^Undo/ })).toBeDisabled();
  });

  test('stops the fine solution on demand and goes on with it', async ({ app: { page } }) => {
    await enter(page);
    await add(page, /in: fresh air/, 'One lined box');
    await part(page, 2).focus();
    await page
      .getByRole('region', { name: /^Plan of/ })
      .getByRole('button', { name: 'Stop' })
      .click();
    await expect(page.getByText('The fine one is stopped.')).toBeVisible();
    await page.getByRole('button', { name: 'Solve it finely' }).click();
    await expect(page.getByRole('progressbar', { name: /Fine solution/ })).toBeVisible();
  });

  test('looks for the smallest box that would do, off the window’s thread, and can be stopped', async ({
    app: { page },
  }) => {
    test.setTimeout(90_000);
    await enter(page);
    await page.getByRole('tab', { name: 'Sound' }).click();
    const help = page.getByRole('region', { name: 'Which box would do?' });
    await help.getByLabel('May cost the wall').fill('20');
    await help.getByLabel('May cost the wall').press('Enter');
    await help.getByRole('button', { name: 'Look for it' }).click();
    await help.getByRole('button', { name: 'Stop' }).click();
    await expect(help.getByRole('table')).toBeHidden();
    await help.getByRole('button', { name: 'Look for it' }).click();
    await expect(help.getByText(/^This one costs the wall/)).toBeVisible({ timeout: 60_000 });
    await expect(help).toContainText('Below 100 Hz nothing is counted');
    await expect(help.getByRole('row', { name: /^Box, inside .* mm × .* mm × .* mm/ })).toBeVisible();
  });

  test('fits a 1280 x 800 window without scrolling the page and passes axe, light and dark', async ({
    app: { page },
  }) => {
    test.setTimeout(90_000);
    await enter(page);
    await add(page, /in: fresh air/, 'Two lined boxes and a fan');
    await part(page, 2).focus();
    for (const scheme of ['light', 'dark']) {
      const toggle = page.getByRole('button', { name: scheme === 'dark' ? 'Dark' : 'Light', exact: true });
      if (await toggle.isVisible()) await toggle.click();
      for (const tab of ['Air', 'Sound', 'Fan and speed', 'Heat and damp', 'Take care']) {
        await page.getByRole('tab', { name: tab, exact: true }).click();
        const overflow = await page.evaluate(() => {
          const main = document.querySelector('main');
          return [
            document.documentElement.scrollHeight - innerHeight,
            document.documentElement.scrollWidth - innerWidth,
            (main?.scrollHeight ?? 0) - (main?.clientHeight ?? 0),
            (main?.scrollWidth ?? 0) - (main?.clientWidth ?? 0),
          ];
        });
        expect(Math.max(...overflow), `${tab}: ${overflow.join(', ')}`).toBeLessThanOrEqual(0);
        const { violations } = await new AxeBuilder({ page })
          .include('main')
          .withTags(['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa'])
          .analyze();
        expect(
          violations.map(({ id, nodes }) => [id, nodes.map((node) => node.target)]),
          `${scheme}, ${tab}`,
        ).toEqual([]);
      }
    }
    await page.getByRole('radio', { name: 'Table' }).check({ force: true });
    const { violations } = await new AxeBuilder({ page })
      .include('main')
      .withTags(['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa'])
      .analyze();
    expect(violations.map(({ id, nodes }) => [id, nodes.map((node) => node.target)])).toEqual([]);
  });
});
