import { CONSTRUCTION_CLASSES } from '../../../src/engine/transmission/index.ts';
import { structureOf } from '../../../src/engine/assembly/index.ts';
import type { ErrorEntry } from './errorRecord.ts';
import { secondRecord } from './secondRecord.ts';
import { assemblyOf, measuredCases, type MeasuredCase } from './measuredCases.ts';
import { trendRecord } from './trendRecord.ts';

const round = (value: number): number => Math.round(value * 10) / 10;

const hasFrame = (it: MeasuredCase, fits: (frame: { fixing: string; arrangement: string }) => boolean): boolean =>
  it.assembly.layers.some((layer) => layer.kind === 'cavity' && layer.frame !== undefined && fits(layer.frame));

/** Ways of building that cut across the classes, and how many measured constructions have them. */
const FEATURES: readonly (readonly [string, (it: MeasuredCase) => boolean])[] = [
  ['three leaves or more', (it) => structureOf(assemblyOf(it)).leaves.length > 2],
  ['boards on a damping sheet', (it) => it.assembly.layers.some((layer) => layer.kind === 'interlayer')],
  ['isolating clips', (it) => hasFrame(it, ({ fixing }) => fixing === 'isolating-clip')],
  [
    'foam in a cavity',
    (it) =>
      it.assembly.layers.some(
        (layer) =>
          layer.kind === 'cavity' && layer.fill !== undefined && it.materials[layer.fill.material]?.kind === 'board',
      ),
  ],
];

/** One row: class, group, band in Hz (null for a rating), measured and predicted, dB. */
type Row = readonly [number, string, number | null, number, number];

const rowOf = ({ constructionClass, group, band, measured, error }: ErrorEntry): Row => [
  CONSTRUCTION_CLASSES.indexOf(constructionClass),
  group,
  band,
  round(measured),
  Math.round((measured + error) * 100) / 100,
];

/** The whole comparison with measured constructions as the program shows it: one row a line. */
export const evidenceText = (record: readonly ErrorEntry[]): string => {
  const cases = measuredCases();
  const lists = {
    classes: CONSTRUCTION_CLASSES,
    features: FEATURES.map(([name, has]) => ({ name, cases: cases.filter(has).length })),
    trends: trendRecord(record).map((trend) => ({
      ...trend,
      published: round(trend.published),
      predicted: round(trend.predicted),
    })),
    second: secondRecord(cases),
    rows: record.map(rowOf),
  };
  const list = (name: string, entries: readonly unknown[]): string =>
    `  "${name}": [\n${entries.map((entry) => `    ${JSON.stringify(entry)}`).join(',\n')}\n  ]`;
  return `{
  "made": "by npm run docs from tests/reference/tl; not edited by hand",
  "constructions": ${cases.length},
${Object.entries(lists)
  .map(([name, entries]) => list(name, entries))
  .join(',\n')}
}
`;
};
