import type { AssemblyIntervals, ShellIntervals } from '../contract/uncertaintyResults.ts';
import { chanceOfTarget } from '../engine/uncertainty/index.ts';
import type { CurveIntervals, Interval, SampledResult, SampledShell } from '../engine/uncertainty/index.ts';
import { doubtName } from '../project/doubtWords.ts';
import type { Project } from '../project/schema.ts';
import { toTarget } from '../project/toWorkmanship.ts';

const hundredths = (value: number): number => Number(value.toFixed(2));

const toInterval = ({ p5, p25, p50, p75, p95 }: Interval) => ({
  p5: hundredths(p5),
  p25: hundredths(p25),
  p50: hundredths(p50),
  p75: hundredths(p75),
  p95: hundredths(p95),
});

const toCurve = ({ p5, p25, p50, p75, p95 }: CurveIntervals) => ({
  p5: p5.map(hundredths),
  p25: p25.map(hundredths),
  p50: p50.map(hundredths),
  p75: p75.map(hundredths),
  p95: p95.map(hundredths),
});

const toRatings = ({ figures }: SampledResult): AssemblyIntervals['ratings'] => ({
  Rw: toInterval(figures.Rw),
  Rw_plus_C50_5000: toInterval(figures.Rw_plus_C50_5000),
  STC: toInterval(figures.STC),
  bass: toInterval(figures.bass),
});

/** How many builds were drawn, and from which start of chance. */
type Drawing = Pick<SampledShell, 'samples' | 'start'>;

/** A drawn result as the contract gives it. @param beyond of the prediction: per band why it is outside its range */
export const toIntervals = (
  drawn: SampledResult,
  { samples, start }: Drawing,
  beyond: readonly (string | null)[],
): AssemblyIntervals => ({
  samples,
  start,
  beyond: [...beyond],
  ratings: toRatings(drawn),
  R_dB: toCurve(drawn.R),
  doubts: drawn.doubts.map((doubt) => ({
    what: doubtName(doubt),
    Rw_dB: hundredths(doubt.figures.Rw),
    Rw_plus_C50_5000_dB: hundredths(doubt.figures.Rw_plus_C50_5000),
    STC_dB: hundredths(doubt.figures.STC),
    bass_dB: hundredths(doubt.figures.bass),
    R_dB: doubt.R.map(hundredths),
  })),
});

/** A drawn room as the contract gives it, with the chance of the project's target. */
export const toShellIntervals = (
  drawn: SampledShell,
  beyond: readonly (string | null)[],
  project: Project,
): ShellIntervals => {
  const target = toTarget(project);
  return {
    ...toIntervals(drawn.whole, drawn, beyond),
    parts: Object.fromEntries(Object.entries(drawn.parts).map(([id, part]) => [id, { ratings: toRatings(part) }])),
    target: target && {
      rating: target.figure,
      value_dB: target.value,
      chance: Number(chanceOfTarget(drawn.whole.tallies[target.figure], target.value).toFixed(4)),
    },
  };
};
