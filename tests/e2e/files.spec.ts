import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { expect, test } from './support/app.ts';

const save = async (page: Page, button: RegExp, item: string): Promise<Buffer> => {
  await page.getByRole('button', { name: button }).click();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('menuitem', { name: item }).click(),
  ]);
  return readFileSync(await download.path());
};

test('drawings and charts are saved with their typefaces, tables with their headings', async ({ app: { page } }) => {
  await page.getByRole('button', { name: 'Leave the tour' }).click();
  const svg = (await save(page, /^Save as: .* laid out/, 'Drawing (SVG)')).toString();
  const holds = (text: string): boolean => svg.includes(text);
  expect(svg.slice(0, 4)).toBe('<svg');
  expect(holds('xmlns="http://www.w3.org/2000/svg"')).toBe(true);
  expect(holds('@font-face{font-family:"Barlow Semi Condensed"')).toBe(true);
  expect(holds('src:url(data:font/woff2;base64,')).toBe(true);
  // nothing that only the page's style sheet or the page itself could resolve
  expect(holds('var(--ink') || holds('class="') || holds('aria-describedby')).toBe(false);
  const png = await save(page, /^Save as: R of the whole room/, 'Picture (PNG)');
  expect(png.subarray(1, 4).toString()).toBe('PNG');
  expect(png.readUInt32BE(16)).toBeGreaterThan(800);
  const csv = (await save(page, /^Save as: .* laid out/, 'Table (CSV)')).toString();
  expect(csv).toContain('part,kind,on,made of');
  expect(csv).toContain('Double door');
});
