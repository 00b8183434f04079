import type { PartResult, ShellResult } from '../../shell/index.ts';
import type { ShellRule } from './shellNotes.ts';
import { figure, percentFigure } from './figure.ts';
import { decibels, percent } from './wording.ts';

/** Smaller shares are not worth a word. */
const TELLING_SHARE = 0.01;
const LOWEST = 50;
const HIGHEST = 5000;

/** the band from 50 Hz to 5 kHz in which sealing the opening gains most, Hz and dB */
const bestBand = (part: PartResult, shell: ShellResult): { readonly band: number; readonly gain: number } => {
  const gains = shell.bands
    .map((band, b) => ({ band, gain: (part.ifPerfect.R[b] ?? 0) - (shell.R[b] ?? 0) }))
    .filter(({ band }) => band >= LOWEST && band <= HIGHEST);
  return gains.reduce((best, one) => (one.gain > best.gain ? one : best), { band: LOWEST, gain: 0 });
};

const words = (part: PartResult, shell: ShellResult, now: number, sealed: number): string => {
  const { band, gain } = bestBand(part, shell);
  const opening = part.kind === 'slit' ? 'gap' : 'hole';
  return (
    `${percent(part.share)} of what gets out goes through the open ${opening} "${part.name}". ` +
    (sealed > now
      ? `Sealed, the whole would have Rw ${sealed} instead of ${now}: ${decibels(sealed - now)} for a little sealant or a seal.`
      : `Sealing it leaves Rw at ${now}, since other parts let out more; most is gained at ${band} Hz, ${gain.toFixed(1)} dB.`)
  );
};

/**
 * Open slits and holes: the whole with and without them.
 * @source EN 12354-3:2000, clause 4; openings: Gomperts & Kihlman 1967, Wilson & Soroka 1965
 */
export const openGap: ShellRule = (_build, shell) =>
  shell.parts
    .filter((part) => (part.kind === 'slit' || part.kind === 'hole') && part.share >= TELLING_SHARE)
    .flatMap((part) => {
      const now = shell.ratings.Rw;
      const sealed = part.ifPerfect.ratings.Rw;
      if (now === null || sealed === null) return [];
      return [
        {
          code: 'open-gap' as const,
          severity: sealed > now ? ('mistake' as const) : ('hint' as const),
          sentence: words(part, shell, now, sealed),
          figures: [
            percentFigure('share of what gets out', part.share),
            figure('weightedReduction', 'Rw with the opening', now),
            figure('weightedReduction', 'Rw without it', sealed),
          ],
          about: { part: part.id },
        },
      ];
    });
