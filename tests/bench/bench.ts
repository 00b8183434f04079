import { buildApp } from '../../electron/scripts/buildApp.ts';
import { findBrowser } from '../../electron/scripts/findBrowser.ts';
import { isFresh } from '../../electron/scripts/fingerprint.ts';
import { boxSpeeds } from './box.ts';
import { kernelBench } from './kernel.ts';
import { pageSize } from './pageSize.ts';
import { shellBench } from './shellBench.ts';
import { uncertaintyBench } from './uncertaintyBench.ts';
import { windowBench } from './windowBench.ts';

/** Speeds that a change may not lose unseen: run it before and after, on a quiet machine. */
const asJson = process.argv.includes('--json');

const rows = kernelBench();
const row = (name: string): number => {
  const found = rows.find((it) => it.name === name);
  if (!found) throw new Error(`the kernel's bench has no row “${name}”`);
  return found.value;
};

if (!isFresh()) await buildApp();
const browser = process.argv.includes('--no-browser') ? null : findBrowser();
const results = {
  kernel_ns_per_point: row('point of frequency and angle'),
  assembly_ms: row('curve at full resolution, size known'),
  assembly_draft_ms: row('curve at draft resolution, size known'),
  ...shellBench(),
  ...uncertaintyBench(),
  ...boxSpeeds(),
  ...pageSize(),
  ...(browser === null ? {} : await windowBench(browser)),
};

const shown = (value: number): string => value.toFixed(value < 10 ? 2 : value < 100 ? 1 : 0);
if (asJson) console.log(JSON.stringify(results));
else
  for (const [name, value] of Object.entries(results)) {
    const text =
      typeof value === 'number'
        ? shown(value)
        : `median ${shown(value.median)}, 95th percentile ${shown(value.p95)} (${value.samples} inputs)`;
    console.log(`${name.padEnd(22)} ${text}`);
  }
if (!asJson && browser === null) console.log('The window was not timed: no browser of the Chromium family was found.');
