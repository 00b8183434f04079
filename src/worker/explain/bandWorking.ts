import type { Evaluator } from '../../engine/evaluate.ts';
import { toReduction, type Working } from '../../engine/quantities/index.ts';
import type { TransmissionPath } from '../../engine/transmission/index.ts';
import type { Project } from '../../project/schema.ts';
import { taken } from './assemblyWorking.ts';
import { builtLines } from './builtLines.ts';
import { assemblyOf, predicted } from './predicted.ts';
import { figure, likely, ratio } from './wording.ts';

const SOURCES: Readonly<Record<TransmissionPath['key'], string>> = {
  cavity:
    'transfer matrices, Allard and Atalla (2009), ch. 11; finite size: Villot, Guigou and Gagliardini, J. Sound Vib. 245 (2001)',
  resonant: 'ISO 12354-1:2017, annex B',
  links:
    'line and point impedances: Cremer, Heckl and Petersson (2005); rigid lines: Davy, J. Acoust. Soc. Am. 90 (1991)',
  perimeter: 'as the links, for the plates and edges that all leaves share; fitted to measured constructions',
  cap: 'engineering judgement: fitted to measured constructions',
};

const EQUATIONS: Readonly<Record<TransmissionPath['key'], string>> = {
  cavity: 'τ = Σ_θ w(θ) · τ∞(θ) · σ(θ), mean over the lines of the third octave; R = −10 lg τ',
  resonant: 'τ = (2ρ₀c₀/ωm′)² · (π · f_c/2f) · σ²/η; R = −10 lg τ',
  links: 'τ = ρ₀² · c₀ · ω · V₁ · V₂/(b · |Y|²), of points n · ρ₀² · ω² · V₁ · V₂/(π · |Y|²); R = −10 lg τ',
  perimeter: 'τ = ρ₀² · c₀ · ω · V₁ · V₂/(b · |Y|²), b and Y of the plates; R = −10 lg τ',
  cap: 'τ = 10^(−R_cap/10), the same in every band; R = −10 lg τ',
};

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
      equation: EQUATIONS[path.key],
      numbers: `τ = ${ratio(tau)}: ${figure(toReduction(tau))} dB`,
      source: SOURCES[path.key],
    }));
  const whole = {
    what: 'All ways together; they add as energy.',
    equation: 'R = −10 lg Σ τ_path',
    numbers: `−10 lg ${ratio(sum)} = ${figure(R)} dB`,
    source: 'ISO 12354-1:2017, 4.2',
  };
  const doubt = prediction.extrapolated[i];
  const built = builtLines(assemblyOf(project, id), prediction, band);
  return {
    title: `${project.assemblies[id]?.name ?? id} at ${band} Hz`,
    value: `R ${figure(R)} dB`,
    lines: [...built, ...lines, whole],
    assumptions: [...taken(prediction), ...(doubt ? [`outside the model's range here: ${doubt}`] : [])],
    likelyError: likely(spread, `a band of a part of the kind “${prediction.constructionClass}”`),
  };
};
