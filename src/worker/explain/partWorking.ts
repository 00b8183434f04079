import type { Evaluator } from '../../engine/evaluate.ts';
import { toTransmission, type Working, type WorkingLine } from '../../engine/quantities/index.ts';
import { sourceEnergy, type PartResult, type ShellResult } from '../../engine/shell/index.ts';
import type { Project } from '../../project/schema.ts';
import { sources } from '../../project/sources.ts';
import { toBuild } from '../../project/toEngine.ts';
import type { Explained } from '../protocol.ts';
import { partLines } from './partLines.ts';
import { shellOf, shellTaken } from './shellWorking.ts';
import { figure, likely, ratio, signed } from './wording.ts';

type Figure = Extract<Explained, { kind: 'part' }>['figure'];

const SOURCE = 'follows from EN 12354-3:2000, clause 4';

const shareLines = (project: Project, shell: ShellResult, part: PartResult): readonly WorkingLine[] => {
  const energy = sourceEnergy(toBuild(project).source);
  const weighed = part.R.map((R, i) => part.area * toTransmission(R) * (energy[i] ?? 0));
  const out = weighed.reduce((sum, value) => sum + value, 0);
  const strongest = weighed.indexOf(Math.max(...weighed));
  const band = shell.bands[strongest] ?? 0;
  const name = sources[project.source ?? 'flat']?.name ?? 'all bands alike';
  return [
    {
      what: `What gets out through it in each band, weighed by the source (${name}) from 50 Hz to 5 kHz. Most of it near ${band} Hz, where R is ${figure(part.R[strongest] ?? 0)} dB.`,
      equation: 'W = Σ_b S · 10^(−R_b/10) · E_b',
      numbers: `S = ${figure(part.area, part.area < 0.1 ? 4 : 2)} m²: W = ${ratio(out)}`,
      source: SOURCE,
    },
    {
      what: 'Its share of what gets out through all parts together.',
      equation: 'share = W / Σ W_parts',
      numbers: part.share > 0 ? `${ratio(out)} / ${ratio(out / part.share)} = ${figure(100 * part.share)} %` : '0 %',
      source: SOURCE,
    },
  ];
};

const perfectLines = (shell: ShellResult, part: PartResult): readonly WorkingLine[] => {
  const i = shell.bands.indexOf(500);
  const share = part.shareByBand[i] ?? 0;
  return [
    {
      what: 'The whole again without what gets out through this part, band by band; at 500 Hz as an example.',
      equation: 'R_perfect = R − 10 lg (1 − share_b)',
      numbers: `${figure(shell.R[i] ?? 0)} − 10 lg (1 − ${figure(share, 3)}) = ${figure(part.ifPerfect.R[i] ?? 0)} dB`,
      source: SOURCE,
    },
    {
      what: 'Rated before and after.',
      equation: 'gain = Rw(without it) − Rw(now)',
      numbers: `${part.ifPerfect.ratings.Rw ?? '–'} − ${shell.ratings.Rw ?? '–'} = ${part.ifPerfect.RwGain === null ? '–' : signed(part.ifPerfect.RwGain)} dB; bass ${signed(part.ifPerfect.bassGain, 1)} dB`,
      source: 'ISO 717-1:2020, 4.4',
    },
  ];
};

/** Share of a part in what gets out, or what the whole would gain without it, worked out. */
export const partWorking = (evaluator: Evaluator, project: Project, id: string, which: Figure): Working => {
  const shell = shellOf(evaluator, project);
  const part = shell.parts.find((it) => it.id === id);
  if (!part) throw new Error(`there is no part "${id}" in this project any more`);
  const gain = part.ifPerfect.RwGain;
  return {
    title: which === 'share' ? `Share of ${part.name} in what gets out` : `The whole if ${part.name} were perfect`,
    value:
      which === 'share' ? `${figure(100 * part.share, 0)} %` : gain === null ? 'not rated' : `${signed(gain)} dB Rw`,
    lines:
      which === 'share'
        ? [...partLines(evaluator, project, shell, part), ...shareLines(project, shell, part)]
        : perfectLines(shell, part),
    assumptions: shellTaken(project),
    likelyError: `${likely(shell.ratingSpread, 'the rating of this shell')} Which part comes first is surer than the figures, unless two are close.`,
  };
};
