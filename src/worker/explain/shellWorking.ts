import type { Evaluator } from '../../engine/evaluate.ts';
import type { Working, WorkingLine } from '../../engine/quantities/index.ts';
import type { ShellResult } from '../../engine/shell/index.ts';
import type { Project } from '../../project/schema.ts';
import { toBuild } from '../../project/toEngine.ts';
import type { Explained } from '../protocol.ts';
import { partLines, strongestParts } from './partLines.ts';
import { bassFigure, classFigure, outdoorFigure, weightedFigure } from './ratingLines.ts';
import { figure, likely } from './wording.ts';

type Figure = Extract<Explained, { kind: 'shell' }>['figure'];

const TITLES: Readonly<Record<Figure, string>> = {
  Rw: 'Weighted sound reduction index',
  STC: 'Sound transmission class',
  OITC: 'Outdoor-indoor transmission class',
  bass: 'Bass figure',
};
const FIGURES = { Rw: weightedFigure, STC: classFigure, OITC: outdoorFigure, bass: bassFigure } as const;

/** Evaluated at full resolution. @throws Error where there is no shell yet */
export const shellOf = (evaluator: Evaluator, project: Project): ShellResult => {
  if (project.surfaces.length === 0) throw new Error('there is no surface in this project yet');
  return evaluator.shell(toBuild(project), 'full');
};

/** What every figure of a shell takes for granted. */
export const shellTaken = (project: Project): readonly string[] => [
  project.flanking?.length
    ? 'of the ways round the parts (flanking) only the ones in the list; any other is left out'
    : 'sound goes through the parts only, not round them along floors, roofs or ground (flanking)',
  'the sound inside meets all parts alike',
  'each part at its own size, sealed where no gap is drawn',
];

/** The band by which the sum is shown, and how many parts of it by name. */
const [SHOWN, NAMED] = [500, 4];

/** How parts become the whole, at one band as an example. */
const compositeLine = (shell: ShellResult): WorkingLine => {
  const i = shell.bands.indexOf(SHOWN);
  const at = (part: ShellResult['parts'][number]): string =>
    `${figure(part.area, part.area < 0.1 ? 4 : 1)} m² · 10^(${figure(-(part.R[i] ?? 0))}/10)`;
  const most = strongestParts(shell, SHOWN, NAMED);
  const rest = shell.parts.length - most.length;
  return {
    what: `The parts by area and sound reduction, band by band. At ${SHOWN} Hz the ones that let most through: ${most.map((part) => part.name).join(', ')}.`,
    equation: 'R = −10 lg (Σ Sᵢ · 10^(−Rᵢ/10) / Σ Sᵢ)',
    numbers: `(${most.map(at).join(' + ')}${rest > 0 ? ` + ${rest} more` : ''}) / ${figure(shell.area)} m²: ${figure(shell.R[i] ?? 0)} dB`,
    source: 'EN 12354-3:2000, clause 4',
  };
};

/** A figure of the whole shell, worked out. */
export const shellWorking = (evaluator: Evaluator, project: Project, which: Figure): Working => {
  const shell = shellOf(evaluator, project);
  const { value, lines } = FIGURES[which]({ bands: shell.bands, values: shell.R });
  const low = shell.spread[shell.bands.indexOf(63)] ?? shell.ratingSpread;
  return {
    title: `${TITLES[which]} of the whole shell`,
    value,
    lines: [
      ...strongestParts(shell, SHOWN, NAMED).flatMap((part) => partLines(evaluator, project, shell, part)),
      compositeLine(shell),
      ...lines,
    ],
    assumptions: shellTaken(project),
    likelyError:
      which === 'bass' ? likely(low, 'one band near 63 Hz of this shell') : likely(shell.ratingSpread, 'this shell'),
  };
};
