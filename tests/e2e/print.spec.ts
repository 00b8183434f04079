import AxeBuilder from '@axe-core/playwright';
import type { Locator, Page } from '@playwright/test';
import cellar from '../../assets/examples/cellar.json' with { type: 'json' };
import boatStore from '../../assets/examples/boat-store.json' with { type: 'json' };
import { checkProject } from '../../src/project/check.ts';
import { commands } from '../../src/project/commands/index.ts';
import type { Project } from '../../src/project/schema.ts';
import { expect, test, type App } from './support/app.ts';

const checked = (document: unknown): Project => {
  const found = checkProject(document);
  if (!found.ok) throw new Error(found.faults[0]?.sentence);
  return found.project;
};

/** The example with a box in its fresh-air vent and seals round its doors, and without what could be changed. */
const fitted = (): Project => {
  const seals = { perimeter: 'compression', threshold: 'drop' } as const;
  const boxed = commands.adoptCandidate.apply(checked(boatStore), { part: 'vent-in', candidate: 'vent-in-short-box' });
  const sealed = commands.setSeals.apply(boxed, { opening: 'doors', leaf: 'first', seals });
  const surfaces = sealed.surfaces.map((surface) => ({
    ...surface,
    candidates: [],
    openings: (surface.openings ?? []).map((opening) => ({ ...opening, candidates: [] })),
  }));
  return { ...sealed, surfaces, options: [] };
};

/** Opens a project and turns to its pages. */
const print = async (app: App, document: Project): Promise<Locator> => {
  const { page } = app;
  const tour = page.getByRole('dialog');
  await tour.waitFor();
  await page.keyboard.press('Escape');
  await tour.waitFor({ state: 'hidden' });
  const { id } = await app.call('projects.create', { document });
  await page.evaluate((project) => {
    sessionStorage.setItem('lullwright.project', project);
  }, id);
  await page.reload();
  await expect(page.getByText('Limits the room')).toBeVisible();
  await page.keyboard.press('Control+p');
  await expect(page.getByText(/Pages as they will be printed|Ready to print/)).toBeVisible({ timeout: 30_000 });
  return page.getByRole('article');
};

const pdfText = async (page: Page): Promise<string> => {
  const pdf = await page.pdf({ preferCSSPageSize: true, tagged: true, printBackground: true });
  expect(pdf.subarray(0, 5).toString()).toBe('%PDF-');
  expect(pdf.length).toBeGreaterThan(50_000);
  return pdf.toString('latin1');
};

test.describe('Print', () => {
  test('prints parts, curves, limits and cautions', async ({ app }) => {
    const sheet = await print(app, checked(boatStore));
    for (const words of [
      'Parts, by what they let out',
      'What could be changed, best first',
      'What the prediction rests on',
      'Weight overhead',
      'Third-octave bands',
    ])
      await expect(sheet).toContainText(words);
    await expect(sheet.getByRole('table', { name: /third-octave bands, table 1/ }).getByRole('row')).toHaveCount(28);
    await pdfText(app.page);
  });

  test('prints each vent to scale, with its parts, its sound by band and a plan to saw its box by', async ({ app }) => {
    const sheet = await print(app, fitted());
    await expect(sheet.getByRole('img', { name: /Fresh air, short box from the room.*to scale/ })).toBeVisible();
    const parts = sheet.getByRole('table', { name: 'Parts of Fresh air, short box, from the room outwards' });
    await expect(parts.getByRole('row', { name: /Short box/ })).toContainText('800 × 500 × 200 mm inside');
    await expect(parts.getByRole('row', { name: /Room grille/ })).toContainText('344');
    const bands = sheet.getByRole('table', { name: 'Dn,e of Fresh air, short box in third-octave bands' });
    await expect(bands.getByRole('row')).toHaveCount(28);
    await expect(bands.getByRole('columnheader')).toHaveText(['Hz', 'Dn,e', '±', 'limited by', 'wanted', 'costs wall']);

    const plan = sheet.getByRole('img', { name: 'Plan of Short box with the measures to build it by, millimetres' });
    for (const measure of ['394', '800', '500', '160', 'to the room', 'outwards'])
      await expect(plan).toContainText(measure);
    // the library's board of 635 kg/m³
    const casing = sheet.getByRole('table', { name: /^Casing/ });
    await expect(casing.getByRole('row', { name: /^OSB/ })).toContainText((635 * 0.018).toFixed(1));
    // one board of 18 mm: flat faces 836 x 536 mm
    await expect(sheet.getByRole('row', { name: /^Flat face/ })).toContainText('836 × 536 mm');
  });

  test('prints the air: people, session, CO2, noise, and cautions beside them, once', async ({ app }) => {
    const sheet = await print(app, fitted());
    await expect(sheet.getByText(/9 people need 72 L\/s of fresh air/)).toBeVisible();
    await expect(sheet.getByRole('table', { name: 'The session' }).getByRole('row')).toHaveCount(4);
    await expect(sheet.getByRole('table', { name: /^Noise of fans and air/ })).toContainText('NR');
    await expect(sheet.getByText('Take care with air and vents')).toBeVisible();
    for (const about of ['Fresh air', 'Fumes', 'Fire', 'Wiring', 'Weight overhead'])
      await expect(sheet.getByRole('term').filter({ hasText: new RegExp(`^${about}$`) })).toHaveCount(1);
  });

  test('prints the joints of a door with their metres, their leak and what they cost', async ({ app }) => {
    const sheet = await print(app, fitted());
    const table = sheet.getByRole('table', { name: 'What Double door lets out, piece by piece' });
    // 1.8 x 2.1 m: two sides and the head
    await expect(table.getByRole('row', { name: /^Joint at sides and head/ })).toContainText('6.0');
    await expect(table.getByRole('row', { name: /^Joint at sides and head/ })).toContainText('Compression seal');
    await expect(table.getByRole('row', { name: /^Joint at the threshold/ })).toContainText(/Rw \d+/);
    // and 1.8 m below
    await expect(sheet.getByText('Seal to buy: 7.8 m')).toBeVisible();
  });

  test('has no pages for what a project does not have', async ({ app }) => {
    const { air: _, ...bare } = checked(cellar);
    const sheet = await print(app, bare);
    await expect(sheet.getByText('Fresh air and vents')).toHaveCount(0);
    await expect(sheet.getByText('Doors, windows and services: seals and what is let in')).toBeVisible();
    await expect(sheet.getByRole('term').filter({ hasText: /^Fresh air$/ })).toHaveCount(1);
  });

  test('keeps every drawing and row on one page, on A4 and on Letter, black on white in the dark theme', async ({
    app,
  }) => {
    const { page } = app;
    const sheet = await print(app, fitted());
    expect(await pdfText(page)).toMatch(/\/MediaBox \[0 0 59\d(\.\d+)? 84\d/);
    await page.getByRole('radio', { name: 'Letter' }).check({ force: true });
    expect(await pdfText(page)).toMatch(/\/MediaBox \[0 0 612 792\]/);
    await page.emulateMedia({ media: 'print' });
    const torn = await sheet.evaluate((article) => {
      const kept = (element: Element | null): Element | null =>
        element === null || element === article
          ? null
          : getComputedStyle(element).breakInside === 'avoid'
            ? element
            : kept(element.parentElement);
      // what does not fit on a sheet of Letter less its margins would be torn all the same
      const most = ((279.4 - 32) / 25.4) * 96;
      return [...article.querySelectorAll('svg, tr')].filter((element) => {
        const whole = kept(element);
        return whole === null || whole.getBoundingClientRect().height > most;
      }).length;
    });
    expect(torn).toBe(0);
    await page.emulateMedia({ media: 'screen' });
    await page.evaluate(() => {
      document.documentElement.dataset['theme'] = 'dark';
    });
    await page.emulateMedia({ media: 'print' });
    const colours = await page.evaluate(() => {
      const [root, article] = [document.documentElement, document.querySelector('article')];
      return (
        article && [
          getComputedStyle(root).backgroundColor,
          getComputedStyle(article).backgroundColor,
          getComputedStyle(root).colorScheme,
        ]
      );
    });
    expect(colours).toEqual(['rgb(255, 255, 255)', 'rgb(255, 255, 255)', 'light']);
  });

  test('has no accessibility fault', async ({ app }) => {
    test.slow();
    await print(app, fitted());
    const { violations } = await new AxeBuilder({ page: app.page }).analyze();
    expect(violations.map((each) => `${each.id} at ${each.nodes[0]?.target.join(' ') ?? ''}`)).toEqual([]);
  });
});
