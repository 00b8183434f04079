import { GROUPS } from '../tl/errorRecord.ts';
import type { Covered } from './coverage.ts';

/** How many of some figures the stated intervals held. */
export interface CoverageRow {
  readonly name: string;
  readonly cases: number;
  readonly figures: number;
  readonly in90: number;
  readonly in50: number;
  /** mean width of the 90 % interval, dB */
  readonly width: number;
  /** held to 85 to 95 of 100: the totals, and every kind and class of construction with 20 cases or more */
  readonly gated: boolean;
}

/** A kind with fewer cases proves nothing by itself. */
const ENOUGH = 20;

const share = (covered: readonly Covered[], held: (it: Covered) => boolean): number =>
  covered.filter(held).length / covered.length;

const row = (name: string, covered: readonly Covered[]): CoverageRow => {
  const cases = new Set(covered.map((it) => it.id)).size;
  return {
    name,
    cases,
    figures: covered.length,
    in90: share(covered, (it) => it.in90),
    in50: share(covered, (it) => it.in50),
    width: covered.reduce((sum, it) => sum + it.width, 0) / covered.length,
    gated: cases >= ENOUGH,
  };
};

/** Coverage over all, by kind of construction, and by the finer classes whose record is used. */
export const coverageRows = (covered: readonly Covered[]): readonly CoverageRow[] => {
  const kinds = [...new Set(covered.map((it) => it.constructionClass))].sort();
  return [
    row('all', covered),
    row(
      'all ratings',
      covered.filter((it) => it.band === null),
    ),
    row(
      'all bands',
      covered.filter((it) => it.band !== null),
    ),
    ...GROUPS.map((group) =>
      row(
        group,
        covered.filter((it) => it.group === group),
      ),
    ),
    ...kinds.map((kind) =>
      row(
        `  ${kind}`,
        covered.filter((it) => it.constructionClass === kind),
      ),
    ),
  ];
};

const holds = ({ gated, in90 }: CoverageRow): boolean => {
  const percent = Math.round(100 * in90);
  return !gated || (percent >= 85 && percent <= 95);
};

/** Rows that are gated and do not hold, to whole per cent, in words. */
export const failedCoverage = (rows: readonly CoverageRow[]): string[] =>
  rows
    .filter((it) => !holds(it))
    .map(
      (it) =>
        `${it.name.trim()}: the stated 90 % interval holds ${(100 * it.in90).toFixed(1)} % of ${it.figures} figures`,
    );

const percent = (value: number): string => (100 * value).toFixed(0).padStart(7);

/** The table as lines of text. */
export const coverageLines = (rows: readonly CoverageRow[]): readonly string[] => [
  `${'Stated intervals, each case left out (%)'.padEnd(42)}  cases  figures  in 90  in 50   width`,
  ...rows.map(
    (it) =>
      `${it.name.padEnd(42)}${String(it.cases).padStart(7)}${String(it.figures).padStart(9)}` +
      `${percent(it.in90)}${percent(it.in50)}${it.width.toFixed(1).padStart(8)}${it.gated ? '  85 to 95' : ''}`,
  ),
];
