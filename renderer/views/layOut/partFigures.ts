import type { Spectrum } from '../../../src/engine/quantities/index.ts';
import { octaveReduction, octaveShares } from '../../../src/engine/shell/octaveBands.ts';
import type { PartResult, ShellResult } from '../../../src/engine/shell/index.ts';
import type { BandChoice } from './bandChoice.ts';
import { sharePercent, shareStep } from './shareWords.ts';

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

/** The figures of every part, largest share first. @param source the spectrum that weighs the shares; null is flat */
export const partFigures = (
  shell: ShellResult,
  source: Spectrum | null,
  band: BandChoice,
): ReadonlyMap<string, PartFigure> => {
  const shares = band === 'whole' ? null : octaveShares(shell, source, band);
  const sorted = shell.parts
    .map((result) => ({ result, share: shares ? (shares[result.id] ?? 0) : result.share }))
    .sort((a, b) => b.share - a.share);
  const limiting = band === 'whole' ? shell.limiting : sorted[0] && sorted[0].share > 0 ? sorted[0].result.id : null;
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
