import { octaveReduction, octaveShare } from '../../../src/engine/quantities/index.ts';
import type { PartResult, ShellResult } from '../../../src/engine/shell/index.ts';
import { sharePercent } from '../../text/shareWords.ts';
import type { BandChoice } from './bandChoice.ts';
import { shareStep } from './shareWords.ts';

/** What the net and the tables show of a part at the chosen band. */
export interface PartFigure {
  readonly result: PartResult;
  readonly share: number;
  /** 0 to 4: density of the hatch */
  readonly step: number;
  readonly limiting: boolean;
  /** "Rw 54" or "R 31"; null for what has no area of its own */
  readonly reduction: string | null;
  readonly percent: string;
}

const hasArea = (part: PartResult): boolean => part.kind !== 'slit' && part.kind !== 'hole';

const reductionOf = (shell: ShellResult, part: PartResult, band: BandChoice): string | null => {
  if (!hasArea(part)) return null;
  if (band === 'whole') return part.ratings?.Rw === null || !part.ratings ? null : `Rw ${part.ratings.Rw}`;
  const R = octaveReduction(shell.bands, part.R, band);
  return R === null ? null : `R ${Math.round(R)}`;
};

/** The figures of every part, largest share first. */
export const partFigures = (shell: ShellResult, band: BandChoice): ReadonlyMap<string, PartFigure> => {
  const shareIn = (part: PartResult): number =>
    band === 'whole' ? part.share : octaveShare(shell.bands, shell.R, part.shareByBand, band);
  const sorted = shell.parts.map((result) => ({ result, share: shareIn(result) })).sort((a, b) => b.share - a.share);
  const most = sorted[0] && sorted[0].share > 0 ? sorted[0].result.id : null;
  const limiting = band === 'whole' ? shell.limiting : most;
  return new Map(
    sorted.map(({ result, share }) => [
      result.id,
      {
        result,
        share,
        step: shareStep(share),
        limiting: result.id === limiting,
        reduction: reductionOf(shell, result, band),
        percent: sharePercent(share),
      },
    ]),
  );
};
