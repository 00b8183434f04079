import type { Note } from '../../quantities/index.ts';
import type { PartResult, ShellResult } from '../../shell/index.ts';
import { equalEnergyReduction } from '../../shell/index.ts';
import type { ShellRule } from './shellNotes.ts';
import { figure, percentFigure } from './figure.ts';
import { decibels, percent } from './wording.ts';

/** A part is out of proportion when it lets out this many times what its area would. @source engineering judgement */
const OUT_OF_PROPORTION = 2;
const TELLING_SHARE = 0.3;

/** A way round the parts caps the whole whatever the parts are. */
const wayRound = (part: PartResult, shell: ShellResult): Note | null => {
  const [now, without] = [shell.ratings.Rw, part.ifPerfect.ratings.Rw];
  const gain = part.ifPerfect.RwGain ?? 0;
  if (part.share < TELLING_SHARE || now === null || without === null || gain < 1) return null;
  return {
    code: 'part-caps-whole',
    severity: 'mistake',
    sentence:
      `${percent(part.share)} of what gets out goes round the parts by "${part.name}". The whole has Rw ${now}; without ` +
      `this way it would have ${without}, ${decibels(gain)} more, and no better wall makes up for it. Put a floating ` +
      'floor or a lining on it, stand the wall on elastic strips, or cut it through.',
    figures: [
      percentFigure('share of what gets out', part.share),
      figure('weightedReduction', 'Rw of the whole', now),
      figure('weightedReduction', 'Rw of the whole without it', without),
    ],
    about: { part: part.id },
  };
};

const noteOn = (part: PartResult, shell: ShellResult): Note | null => {
  if (part.kind === 'flanking') return wayRound(part, shell);
  if (part.kind === 'slit' || part.kind === 'hole' || part.share < TELLING_SHARE) return null;
  if (part.share < (OUT_OF_PROPORTION * part.area) / shell.area) return null;
  const now = shell.ratings.Rw;
  const perfect = part.ifPerfect.ratings.Rw;
  const own = part.ratings?.Rw ?? null;
  const gain = part.ifPerfect.RwGain ?? 0;
  if (now === null || perfect === null || gain < 1) return null;
  const needed = Math.round(equalEnergyReduction(perfect, shell.area, part.area));
  return {
    code: 'part-caps-whole',
    severity: 'mistake',
    sentence:
      `${percent(part.share)} of what gets out leaves by "${part.name}", which is ${percent(part.area / shell.area)} of the ` +
      `area. The whole has Rw ${now}; if this part were perfect it would have ${perfect}, ${decibels(gain)} more. ` +
      `To let out no more than all the rest it needs about Rw ${needed}` +
      (own === null ? '.' : `; it has ${own}.`),
    figures: [
      percentFigure('share of what gets out', part.share),
      figure('weightedReduction', 'Rw of the whole', now),
      figure('weightedReduction', 'Rw of the whole if it were perfect', perfect),
      figure('weightedReduction', 'Rw that the part needs', needed),
      ...(own === null ? [] : [figure('weightedReduction', 'Rw that the part has', own)]),
    ],
    about: { part: part.id },
  };
};

/**
 * Parts that cap the whole: the R that one needs so as to let out no more than all the rest,
 * R_part = R_rest − 10 lg(S/S_part), R_rest of the whole with the part perfect.
 * @source follows from EN 12354-3:2000, clause 4
 */
export const partCapsWhole: ShellRule = (_build, shell) => shell.parts.flatMap((part) => noteOn(part, shell) ?? []);
