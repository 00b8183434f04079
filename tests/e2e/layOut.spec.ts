import AxeBuilder from '@axe-core/playwright';
import type { Locator, Page } from '@playwright/test';
import type { Project } from '../../src/project/schema.ts';
import { expect, test, type App } from './support/app.ts';

const empty: Project = { format: 'lullwright/project@1', name: 'Garden room', assemblies: {}, surfaces: [] };

const leaveTour = async (page: Page): Promise<void> => {
  const tour = page.getByRole('dialog');
  await tour.waitFor();
  await page.keyboard.press('Escape');
  await tour.waitFor({ state: 'hidden' });
};

/** Opens the window on a project without surfaces. */
const begin = async (app: App): Promise<string> => {
  const { page } = app;
  await leaveTour(page);
  const { id } = await app.call('projects.create', { document: empty });
  await page.evaluate((project) => {
    sessionStorage.setItem('lullwright.project', project);
  }, id);
  await page.reload();
  await expect(page.getByRole('region', { name: 'Begin the room' })).toBeVisible();
  return id;
};

const layOutRoom = async (page: Page): Promise<void> => {
  await page.getByRole('button', { name: 'Lay out this room' }).click();
  await expect(part(page, /^North wall, 5 m × 2.4 m, Rw/)).toBeVisible();
};

const part = (page: Page, name: RegExp): Locator =>
  page.getByRole('group', { name: /^The room unfolded/ }).getByRole('button', { name });
const limits = (page: Page): Locator => page.getByRole('region', { name: 'Where the build stands' });
const project = async (app: App, id: string): Promise<Project> =>
  (await app.call('projects.open', { id })).document as Project;

test.describe('Lay out', () => {
  test('builds a room from nothing through the table and finds what limits it', async ({ app }) => {
    const { page } = app;
    await begin(app);
    await page.getByRole('button', { name: 'Add surfaces one by one' }).click();
    const table = page.getByRole('region', { name: 'All surfaces and openings' });
    for (const side of ['North', 'East', 'South', 'West']) {
      await page.getByRole('button', { name: 'Wall', exact: true }).click();
      await expect(table.getByRole('textbox', { name: `Name of ${side} wall` })).toBeVisible();
    }
    await page.getByRole('button', { name: 'Ceiling', exact: true }).click();
    await page.getByRole('button', { name: 'Floor', exact: true }).click();
    const width = table.getByRole('textbox', { name: 'North wall: width' });
    await width.fill('5,2');
    await width.press('Enter');
    await expect(width).toHaveValue('5.2');
    await table.getByRole('button', { name: 'Add an opening to North wall' }).click();
    await page.getByRole('menuitem', { name: 'Door' }).click();
    await expect(table.getByRole('textbox', { name: 'Name of Door' })).toBeFocused();
    await table.getByRole('button', { name: 'Add an opening to North wall' }).click();
    await page.getByRole('menuitem', { name: 'Gap' }).click();
    const gap = table.getByRole('textbox', { name: 'Gap: width of the gap' });
    await gap.fill('10 mm');
    await gap.press('Enter');
    await expect(limits(page)).toContainText('Ceiling');
    await expect(table.getByText(/^Ceiling · .* – limits$/)).toBeVisible();
    await table.getByRole('combobox', { name: 'Ceiling: made of' }).selectOption({ label: 'Concrete slab, 150 mm' });
    await expect(limits(page)).toContainText('Gap');
    await expect(table.getByText(/^Gap · .* – limits$/)).toBeVisible();
    const first = page.getByRole('tabpanel').getByRole('listitem').first();
    await expect(first).toContainText('Gap');
    await expect(first).toContainText(/leaves by the gap/i);
  });

  test('names another limiting part at another octave', async ({ app: { page } }) => {
    await leaveTour(page);
    await expect(page.getByRole('tabpanel').getByRole('listitem').first()).toContainText('limits');
    const slider = page.getByRole('slider', { name: /Octave/ });
    await slider.focus();
    await page.keyboard.press('End');
    await expect(slider).toHaveAttribute('aria-valuetext', /^4000 hertz octave: cymbals/);
    await expect(page.getByText('octave 4k Hz')).toBeVisible();
    await expect(part(page, /, R -?−?\d+ dB, .* of what gets out/).first()).toBeAttached();
  });

  test('drags an opening in one step of the history and takes it back', async ({ app }) => {
    const { page } = app;
    const id = await begin(app);
    await layOutRoom(page);
    const wall = part(page, /^North wall/);
    await part(page, /^South wall/).click();
    await wall.click();
    await expect(page.getByRole('menu')).toBeHidden();
    await wall.click({ position: { x: 60, y: 60 } });
    await page.getByRole('menuitem', { name: 'Door' }).click();
    const door = part(page, /^Door/);
    await expect(door).toBeFocused();
    const before = await door.boundingBox();
    if (!before) throw new Error('the door is not drawn');
    await page.mouse.move(before.x + before.width / 2, before.y + before.height / 2);
    await page.mouse.down();
    await page.mouse.move(before.x + before.width / 2 + 30, before.y + before.height / 2, { steps: 6 });
    await page.mouse.move(before.x + before.width / 2 + 80, before.y + before.height / 2, { steps: 6 });
    await page.mouse.up();
    const after = await door.boundingBox();
    expect(Math.abs((after?.x ?? 0) - before.x - 80)).toBeLessThan(3);
    await expect(page.getByRole('button', { name: /^Undo/ })).toContainText('Move an opening');
    await page.getByRole('button', { name: /^Undo/ }).click();
    await expect.poll(async () => Math.round((await door.boundingBox())?.x ?? 0)).toBe(Math.round(before.x));
    const stored = await project(app, id);
    expect(stored.surfaces[0]?.openings).toHaveLength(1);
  });

  test('changes a measure of the whole room on its dimension line', async ({ app }) => {
    const { page } = app;
    const id = await begin(app);
    await layOutRoom(page);
    await page.getByRole('button', { name: /^Measure of .*Floor: 5 m\. Press to change/ }).click();
    const field = page.getByRole('textbox', { name: 'New measure' });
    await expect(field).toBeFocused();
    await field.fill('6');
    await field.press('Enter');
    await expect(part(page, /^South wall, 6 m × 2.4 m/)).toBeVisible();
    await expect
      .poll(async () => (await project(app, id)).surfaces.filter((surface) => surface.width_m === 6).map((it) => it.id))
      .toEqual(['north-wall', 'south-wall', 'ceiling', 'floor']);
    await page.keyboard.press('Control+z');
    await expect(part(page, /^South wall, 5 m × 2.4 m/)).toBeVisible();
  });

  test('can be used with the keyboard alone', async ({ app }) => {
    const { page } = app;
    await begin(app);
    await page.getByRole('button', { name: 'Lay out this room' }).focus();
    await page.keyboard.press('Enter');
    await part(page, /^North wall/).focus();
    await page.keyboard.press('ArrowDown');
    await expect(part(page, /^Floor/)).toBeFocused();
    await page.keyboard.press('ArrowLeft');
    await expect(part(page, /^West wall/)).toBeFocused();
    await page.keyboard.press('Enter');
    await expect(page.getByRole('menuitem', { name: 'Door' })).toBeFocused();
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    const window = part(page, /^Window/);
    await expect(window).toBeFocused();
    const left = page.getByRole('textbox', { name: 'From left' });
    const start = Number(await left.inputValue());
    await page.keyboard.press('Shift+ArrowUp');
    await expect(left).toHaveValue(String(Number((start + 0.1).toFixed(3))));
    await page.keyboard.press('ArrowDown');
    await expect(left).toHaveValue(String(Number((start + 0.09).toFixed(3))));
    await page.keyboard.press('Delete');
    await expect(window).toBeHidden();
    await expect(part(page, /^West wall/)).toBeFocused();
    await page.keyboard.press('Control+z');
    await expect(window).toBeVisible();
  });

  test('weighs a candidate, tries it in an option and adopts it', async ({ app }) => {
    const { page } = app;
    const id = await begin(app);
    await layOutRoom(page);
    await part(page, /^Ceiling/).click();
    const panel = page.getByRole('tabpanel');
    await panel.getByRole('button', { name: 'Add another way' }).click();
    const dialog = page.getByRole('dialog');
    await dialog.getByRole('combobox', { name: 'Make-up' }).selectOption({ label: 'Concrete slab, 150 mm' });
    await dialog.getByRole('textbox', { name: 'Material per m²' }).fill('40');
    await dialog.getByRole('button', { name: 'Add it' }).click();
    await expect(panel.getByText(/dB less gets out/)).toBeVisible();
    await page.getByRole('tab', { name: 'What would help most' }).click();
    await panel.getByRole('button', { name: /^Try Ceiling: Concrete slab/ }).click();
    await page.getByRole('menuitem', { name: 'in a new option' }).click();
    await expect(panel.getByText('Ceiling: Concrete slab, 150 mm')).toBeVisible();
    await panel.getByRole('button', { name: 'Adopt Option 1' }).click();
    await expect
      .poll(async () => (await project(app, id)).surfaces.find((it) => it.id === 'ceiling'))
      .toMatchObject({
        assembly: 'concrete-slab-150-mm',
        candidates: [{ name: 'Plasterboard under boards' }],
      });
  });

  test('fits a 1280 x 800 window without scrolling the page, light and dark, and passes axe', async ({
    app: { page },
  }) => {
    await leaveTour(page);
    for (const scheme of ['light', 'dark']) {
      const toggle = page.getByRole('button', { name: scheme === 'dark' ? 'Dark' : 'Light', exact: true });
      if (await toggle.isVisible()) await toggle.click();
      const overflow = await page.evaluate(() => {
        const main = document.querySelector('main');
        return [
          document.documentElement.scrollHeight - innerHeight,
          document.documentElement.scrollWidth - innerWidth,
          (main?.scrollHeight ?? 0) - (main?.clientHeight ?? 0),
        ];
      });
      expect(Math.max(...overflow)).toBeLessThanOrEqual(0);
      for (const shown of ['What would help most', 'What gets out']) {
        await page.getByRole('tab', { name: shown }).click();
        expect(
          (await new AxeBuilder({ page }).analyze()).violations.map((it) => `${it.id}: ${it.nodes[0]?.html}`),
        ).toEqual([]);
      }
      await page.getByRole('radio', { name: 'Table' }).check({ force: true });
      const table = page.getByRole('region', { name: 'All surfaces and openings' });
      expect(await table.evaluate((it) => it.scrollWidth - it.clientWidth), 'the table fits').toBeLessThanOrEqual(0);
      expect(
        (await new AxeBuilder({ page }).analyze()).violations.map((it) => `${it.id}: ${it.nodes[0]?.html}`),
      ).toEqual([]);
      await page.getByRole('radio', { name: 'Drawing' }).check({ force: true });
    }
  });
});
