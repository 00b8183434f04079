import { Refusal } from '../../contract/client.ts';
import type { Handlers } from '../../contract/dispatcher.ts';
import type { Result } from '../../contract/methods.ts';
import type { Evaluator } from '../../engine/evaluate.ts';
import { createSampler } from '../../engine/sampler.ts';
import { parseCurve } from '../../engine/openings/index.ts';
import { rateCurve, type Ratings } from '../../engine/ratings/index.ts';
import type { ShellResult } from '../../engine/shell/index.ts';
import type { Prediction } from '../../engine/transmission/index.ts';
import { complete } from '../../engine/uncertainty/index.ts';
import { fault } from '../../project/fault.ts';
import { toAssembly, toBuild } from '../../project/toEngine.ts';
import { toWorkmanship } from '../../project/toWorkmanship.ts';
import { checkedProject } from '../checkedProject.ts';
import { toIntervals, toShellIntervals } from '../toIntervals.ts';

/** To a given number of decimals: no more than a reader can use. */
const rounded = (value: number, decimals: number): number => Number(value.toFixed(decimals));
const roundedAll = (values: readonly number[], decimals: number): number[] => values.map((it) => rounded(it, decimals));

/** In the order in which they are read: the usual ones first, then the other enlarged ranges. */
const toRatings = (ratings: Ratings): Result<'rate'>['ratings'] => {
  const { Rw, C, Ctr, C50_5000, Ctr50_5000, STC, OITC, ...others } = ratings;
  return { Rw, C, Ctr, C50_5000, Ctr50_5000, STC, OITC, ...others };
};

const toCurve = ({ bands, R, ratings, spread }: Prediction | ShellResult) => ({
  bands_Hz: [...bands],
  R_dB: roundedAll(R, 2),
  ratings: toRatings(ratings),
  spread_dB: roundedAll(spread, 2),
});

const toPredicted = (prediction: Prediction): Result<'predict'>['assemblies'][string] => ({
  ...toCurve(prediction),
  surface_mass_kg_m2: rounded(prediction.surfaceMass, 3),
  thickness_mm: rounded(prediction.thickness * 1000, 3),
  resonances_Hz: roundedAll(prediction.resonances, 2),
  critical_Hz: roundedAll(prediction.criticalFrequencies, 1),
});

const toShell = (shell: ShellResult): Result<'shell'> => ({
  ...toCurve(shell),
  parts: shell.parts.map((part) => ({
    id: part.id,
    area_m2: rounded(part.area, 6),
    share: rounded(part.share, 6),
    share_by_band: roundedAll(part.shareByBand, 6),
    if_perfect_Rw_gain_dB: part.ifPerfect.RwGain,
  })),
  limiting: shell.limiting,
});

/** The reckoning methods, on documents that need not be kept in the store. */
export const acousticHandlers = (evaluator: Evaluator): Pick<Handlers, 'predict' | 'shell' | 'rate'> => ({
  predict: ({ document, uncertainty }) => {
    const project = checkedProject(document);
    const predicted = Object.entries(project.assemblies).map(([id, entry]) => {
      const assembly = toAssembly(entry, project);
      const prediction = evaluator.predict(assembly, 'full');
      const predicted = toPredicted(prediction);
      if (!uncertainty) return [id, predicted] as const;
      const options = { ...uncertainty, workmanship: toWorkmanship(project) };
      const drawn = complete(createSampler().assembly(assembly, options));
      return [id, { ...predicted, intervals: toIntervals(drawn, uncertainty, prediction.extrapolated) }] as const;
    });
    return { assemblies: Object.fromEntries(predicted) };
  },
  shell: ({ document, uncertainty }) => {
    const project = checkedProject(document);
    if (project.surfaces.length === 0) {
      const empty = fault(['surfaces'], [], 'at least one surface', 'Add the walls, floor and roof of the room.');
      throw new Refusal({ code: 'bad-document', sentence: empty.sentence, faults: [empty] });
    }
    const build = toBuild(project);
    const evaluated = evaluator.shell(build, 'full');
    const shell = toShell(evaluated);
    if (!uncertainty) return shell;
    const drawn = complete(createSampler().shell(build, { ...uncertainty, workmanship: toWorkmanship(project) }));
    return { ...shell, intervals: toShellIntervals(drawn, evaluated.extrapolated, project) };
  },
  rate: ({ csv }) => {
    const read = parseCurve(csv);
    if (read.ok) return { ratings: toRatings(rateCurve(read.curve)) };
    const faults = read.faults.map((sentence) => ({
      path: '',
      value: '',
      allowed: 'two columns, Hz and dB',
      sentence,
    }));
    throw new Refusal({ code: 'bad-document', sentence: read.faults.join(' '), faults });
  },
});
