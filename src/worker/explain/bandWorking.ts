import type { Evaluator } from '../../engine/evaluate.ts';
import { toReduction, type Working } from '../../engine/quantities/index.ts';
import type { Project } from '../../project/schema.ts';
import { taken } from './assemblyWorking.ts';
import { builtLines, placeLine } from './builtLines.ts';
import { assemblyOf, predicted } from './predicted.ts';
import { WAY_EQUATIONS, WAY_SOURCES } from './wayLines.ts';
import { figure, likely, ratio } from './wording.ts';

/** R of a make-up in one band: what each way through contributes. @param band nominal third octave, Hz */
export const bandWorking = (evaluator: Evaluator, project: Project, id: string, band: number): Working => {
  const prediction = predicted(evaluator, project, id);
  const i = prediction.bands.indexOf(band);
  const [R, spread] = [prediction.R[i], prediction.spread[i]];
  if (R === undefined || spread === undefined)
    throw new Error(`there is no third octave of ${band} Hz in the prediction`);
  const taus = prediction.paths.map((path) => ({ path, tau: path.tau[i] ?? 0 }));
  const sum = taus.reduce((total, { tau }) => total + tau, 0);
  const lines = taus
    .filter(({ tau }) => tau > 0)
    .sort((a, b) => b.tau - a.tau)
    .map(({ path, tau }) => ({
      what: `${path.name}: ${figure((100 * tau) / sum, 0)} % of what gets through.`,
      equation: WAY_EQUATIONS[path.key],
      numbers: `τ = ${ratio(tau)}: ${figure(toReduction(tau))} dB`,
      source: WAY_SOURCES[path.key],
    }));
  const whole = {
    what: 'All ways together; they add as energy.',
    equation: 'R = −10 lg Σ τ_path',
    numbers: `−10 lg ${ratio(sum)} = ${figure(R)} dB`,
    source: 'ISO 12354-1:2017, 4.2',
  };
  const doubt = prediction.extrapolated[i];
  const built = [...builtLines(assemblyOf(project, id), prediction), placeLine(prediction, band)];
  return {
    title: `${project.assemblies[id]?.name ?? id} at ${band} Hz`,
    value: `R ${figure(R)} dB`,
    lines: [...built, ...lines, whole],
    assumptions: [...taken(prediction), ...(doubt ? [`outside the model's range here: ${doubt}`] : [])],
    likelyError: likely(spread, `a band of a part of the kind “${prediction.constructionClass}”`),
  };
};
