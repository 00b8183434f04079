import { chromium, type Page } from '@playwright/test';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { startHost } from '../../electron/scripts/startHost.ts';
import { median, quantile } from './median.ts';

/** Kept by the page while the bench drives it. */
interface Stopwatch {
  input: number | null;
  readonly taken: number[];
  /** where the curve must be: a selector */
  within: string;
}
declare global {
  interface Window {
    stopwatch: Stopwatch;
  }
}

const LONGEST = 1_000;

/** Takes the time from an input to the first frame after a curve was redrawn because of it. */
const placeStopwatch = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const watch: Stopwatch = { input: null, taken: [], within: 'svg' };
    window.stopwatch = watch;
    for (const kind of ['pointermove', 'keydown'])
      addEventListener(kind, (event) => (watch.input ??= event.timeStamp), { capture: true });
    new MutationObserver((changes) => {
      const { input } = watch;
      const curve = changes.some(
        ({ target }) =>
          target instanceof SVGPathElement &&
          target.getAttribute('fill') === 'none' &&
          target.closest(watch.within) !== null,
      );
      if (input === null || !curve) return;
      watch.input = null;
      requestAnimationFrame(() => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => watch.taken.push(performance.now() - input);
        port2.postMessage(null);
      });
    }).observe(document.body, { subtree: true, attributes: true, attributeFilter: ['d'] });
  });

/** One input after the other, each waited for; an input that redraws nothing is not a sample. */
const sample = async (page: Page, inputs: number, act: (index: number) => Promise<void>) => {
  await page.evaluate(() => window.stopwatch.taken.splice(0));
  for (let index = 0; index < inputs; index += 1) {
    const before = await page.evaluate(() => {
      window.stopwatch.input = null;
      return window.stopwatch.taken.length;
    });
    await act(index);
    await page
      .waitForFunction((count) => window.stopwatch.taken.length > count, before, { timeout: LONGEST, polling: 5 })
      .catch(() => undefined);
  }
  const taken = await page.evaluate(() => window.stopwatch.taken);
  return { median: median(taken), p95: quantile(taken, 0.95), samples: taken.length };
};

const openMakeUp = async (page: Page): Promise<void> => {
  const station = page.getByRole('button', { name: /Make up/ });
  await station.waitFor();
  await page.keyboard.press('Escape');
  await station.click();
  await page.locator('.handle').last().waitFor();
  await page.waitForTimeout(1_500);
};

/** The plan of a new box in Breathe, the sound in it drawn and solved on the fine grid. */
const openBoxPlan = async (page: Page): Promise<void> => {
  await page.getByRole('button', { name: /Breathe/ }).click();
  await page.getByRole('button', { name: '+ Vent' }).click();
  await page.getByRole('button', { name: 'Add the vent' }).click();
  await page.getByRole('button', { name: /^Part 2 of/ }).focus();
  await page.getByLabel('Sound inside').selectOption('500');
  await page.getByRole('status').filter({ hasText: 'Solved on the fine grid' }).waitFor();
  await page.waitForTimeout(1_500);
};

/** Dragging a partition: from the pointer's move to the sound in the box drawn anew. */
const boxDrag = async (page: Page) => {
  await openBoxPlan(page);
  const box = await page.getByRole('button', { name: /^Partition 1 of/ }).boundingBox();
  if (!box) throw new Error('the plan shows no partition to drag');
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.evaluate(() => (window.stopwatch.within = '[aria-label^="Plan of"]'));
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 6, y);
  await page.waitForTimeout(300);
  const drag = await sample(page, 30, (index) => page.mouse.move(x + 8 + 2 * index, y));
  await page.mouse.up();
  return drag;
};

const firstPaint = async (page: Page, address: string): Promise<number> => {
  await page.goto(address);
  await page.waitForTimeout(600);
  return page.evaluate(() => performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? NaN);
};

/** The window as its user has it: first paint, dragging a layer's handle, single edits by key, dragging in a box. */
export const windowBench = async (browserPath: string) => {
  const data = mkdtempSync(join(tmpdir(), 'lullwright-bench-'));
  const host = await startHost({ ...process.env, LULLWRIGHT_DATA: data });
  const args = process.getuid?.() === 0 ? ['--no-sandbox'] : [];
  const browser = await chromium.launch({ executablePath: browserPath, args });
  try {
    const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
    const paints = [await firstPaint(page, host.address)];
    for (let run = 0; run < 4; run += 1) paints.push(await firstPaint(page, new URL(host.address).origin));
    await openMakeUp(page);
    await placeStopwatch(page);
    const box = await page.locator('.handle').last().boundingBox();
    if (!box) throw new Error('the section shows no handle to drag');
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x + 6, y);
    await page.waitForTimeout(300);
    const drag = await sample(page, 40, (index) => page.mouse.move(x + 7 + index, y));
    await page.mouse.up();
    await page.waitForTimeout(1_000);
    await page
      .getByRole('button', { name: /^Layer 1 of/ })
      .first()
      .focus();
    const edit = await sample(page, 12, (index) => page.keyboard.press(index < 6 ? '+' : '-'));
    const boxDragged = await boxDrag(page);
    return {
      first_paint_ms: median(paints),
      input_to_paint_ms: drag,
      edit_to_paint_ms: edit,
      box_drag_to_paint_ms: boxDragged,
    };
  } finally {
    await browser.close();
    host.process.kill('SIGTERM');
    rmSync(data, { recursive: true, force: true });
  }
};
