import type { Evaluator } from '../../engine/evaluate.ts';
import { toTransmission, type Working, type WorkingLine } from '../../engine/quantities/index.ts';
import type { PartResult, ShellResult } from '../../engine/shell/index.ts';
import { commands } from '../../project/commands/index.ts';
import { findPart } from '../../project/parts.ts';
import type { Project } from '../../project/schema.ts';
import { shellOf, shellTaken } from './shellWorking.ts';
import { figure, likely, ratio, signed } from './wording.ts';

const SOURCE = 'EN 12354-3:2000, clause 4';
/** The band by which the exchange is shown; all bands go the same way. */
const SHOWN = 500;

/** Area that as good as nothing gets through, m²: what is sealed for good. */
const NOTHING = 1e-12;

const partIn = (shell: ShellResult, id: string): PartResult | null => shell.parts.find((it) => it.id === id) ?? null;

const exchangeLine = (before: ShellResult, after: ShellResult, id: string): WorkingLine => {
  const i = before.bands.indexOf(SHOWN);
  const [old, changed] = [partIn(before, id), partIn(after, id)];
  const letThrough = (part: PartResult | null): string => {
    const open = part ? part.area * toTransmission(part.R[i] ?? 0) : 0;
    return open < NOTHING ? '0' : ratio(open);
  };
  return {
    what: `Area times what it lets through, exchanged in the sum over all parts, band by band; at ${SHOWN} Hz as an example.`,
    equation: 'R_after = −10 lg (10^(−R_now/10) − (S·τ_now − S·τ_new) / ΣS)',
    numbers: `S·τ from ${letThrough(old)} to ${letThrough(changed)} m² of ${figure(before.area)} m²: R from ${figure(before.R[i] ?? 0)} to ${figure(after.R[i] ?? 0)} dB`,
    source: SOURCE,
  };
};

/** What one change of a part would bring the whole shell, worked out. */
export const swapWorking = (evaluator: Evaluator, project: Project, id: string, candidateId: string): Working => {
  const part = findPart(project, id);
  const candidate = part?.candidates?.find((it) => it.id === candidateId);
  if (!part || !candidate) throw new Error('this change is no longer among the candidates of the project');
  const before = shellOf(evaluator, project);
  const after = shellOf(evaluator, commands.adoptCandidate.apply(project, { part: id, candidate: candidateId }));
  const [now, then] = [before.ratings.Rw, after.ratings.Rw];
  const bass = after.bassR - before.bassR;
  const next = partIn(after, after.limiting ?? '');
  return {
    title: `${part.name}: ${candidate.name}`,
    value: `${now === null || then === null ? 'not rated' : `${signed(then - now)} dB Rw`}; ${signed(bass, 1)} dB in the bass`,
    lines: [
      exchangeLine(before, after, id),
      {
        what: 'The whole rated now and after the change.',
        equation: 'gain = Rw(after) − Rw(now)',
        numbers: `${then ?? '–'} − ${now ?? '–'} = ${now === null || then === null ? '–' : signed(then - now)} dB`,
        source: 'ISO 717-1:2020, 4.4',
      },
      {
        what: 'The bass figure now and after the change.',
        equation: 'gain = R_bass(after) − R_bass(now)',
        numbers: `${figure(after.bassR)} − ${figure(before.bassR)} = ${signed(bass, 1)} dB`,
        source: 'energy mean of R over 50, 63, 80 and 100 Hz; engineering judgement',
      },
      ...(next
        ? [
            {
              what: 'What limits the room after that.',
              equation: 'the largest share of what gets out',
              numbers: `${next.name}, ${figure(100 * next.share, 0)} %`,
              source: SOURCE,
            },
          ]
        : []),
    ],
    assumptions: [...shellTaken(project), 'this change alone; gains of several changes do not add up'],
    likelyError: `${likely(after.ratingSpread, 'the rating of the changed shell')} A difference between two predictions of one build is surer than either.`,
  };
};
