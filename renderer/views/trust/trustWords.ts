import type { BandError } from '../../drawings/errorBands.ts';
import { bandErrors, classRows, comparisons, constructions, ENOUGH, features, type ClassRow } from './evidence.ts';

const MINUS = '\u2212';
export const signed = (value: number, decimals = 1): string => {
  const text = Math.abs(value).toFixed(decimals);
  return Number(text) === 0 ? text : `${value < 0 ? MINUS : '+'}${text}`;
};
export const percent = (share: number): string => `${Math.round(100 * share)} %`;

const enough = (part: ClassRow['ratings']): boolean => part !== null && part.count >= ENOUGH;

/** Classes of which neither ratings nor curves suffice to say anything by themselves. */
export const unproven: readonly string[] = classRows
  .filter(({ ratings, bands }) => !enough(ratings) && !enough(bands))
  .map(({ kind }) => kind);

/** Classes that were compared by their rating alone, so that nothing is known band by band. */
export const ratedOnly: readonly string[] = classRows
  .filter(({ ratings, bands }) => enough(ratings) && !enough(bands))
  .map(({ kind }) => kind);

/** Classes that were compared band by band, but by few ratings. */
export const bandsOnly: readonly string[] = classRows
  .filter(({ ratings, bands }) => !enough(ratings) && enough(bands))
  .map(({ kind }) => kind);

export const lead = (): string => {
  const all = classRows[0];
  const [ratings, bands] = [all?.ratings, all?.bands];
  if (!ratings || !bands) return '';
  return (
    `The prediction was compared with ${constructions} measured constructions from handbooks, standards, code tables and test reports: ` +
    `${ratings.count} single ratings and ${bands.count} octave bands. ` +
    `Of the ratings ${percent(ratings.within3)} lie within 3 dB, of the bands ${percent(bands.within3)}. ` +
    'The constants of the model were chosen on the same constructions, so a wall that is not among them will fare somewhat worse.'
  );
};

/** Classes of one leaf. */
const SINGLE: readonly string[] = ['single board', 'glass', 'masonry'];

/** What is known below 100 Hz, said plainly. */
export const bassEvidence = (): string => {
  const low = comparisons.filter(({ band }) => band !== null && band < 100);
  const octave = bandErrors(comparisons)[0];
  const third = low.filter(({ band }) => band !== 63).length;
  const single = low.filter(({ kind }) => SINGLE.includes(kind)).length;
  if (!octave || low.length === 0)
    return 'Nothing measured below 100 Hz was at hand: there the figures are bare theory.';
  return (
    `From 50 to 100 Hz there are ${low.length} figures, all of the 63 Hz octave${third === 0 ? ', none in third octaves' : ''}: ` +
    `${single} of them of single leaves. Their errors scatter by ${octave.deviation.toFixed(1)} dB. ` +
    `For walls of two leaves that is ${low.length - single} figures: next to no evidence. Laboratories themselves differ there by 4 to 7 dB ` +
    '(ISO 12999-1). The room’s own resonances come on top. Take a bass figure as good to about 6 dB.'
  );
};

/** What of a class was measured below 100 Hz, or that nothing was. @param byBand its errors octave by octave */
export const lowWords = (byBand: readonly BandError[]): string => {
  const low = byBand.find(({ band }) => band === 63);
  if (!low || low.count === 0)
    return 'Nothing of this was measured below 100 Hz: at 50, 63 and 80 Hz the figures are theory alone.';
  const spread = low.count > 1 ? `, spread ${low.deviation.toFixed(1)} dB` : '';
  return `Below 100 Hz ${low.count === 1 ? 'one figure' : `${low.count} figures`}, at 63 Hz: mean error ${signed(low.bias)} dB${spread}. That is little.`;
};

/** Ways of building with little or no evidence. */
export const rareFeatures = (): readonly string[] =>
  features
    .filter(({ cases }) => cases < 10)
    .map(({ name, cases }) => (cases === 0 ? `${name}: none` : `${name}: ${cases}`));

/** Kinds of figure that no entry of the record is about. @source the record itself; nothing of the kind is in it */
export const NEVER_COMPARED: readonly string[] = [
  'Whole rooms as built: every figure of the record is a laboratory’s, of one part, sealed all round.',
  'Gaps, holes and vents as built: they are checked against worked examples and other calculations, not against tests.',
  'Doors with their seals, tiled and felted roofs, steel-faced foam panels.',
  'Ways round the parts: checked against the worked examples of ISO 12354-1 only.',
];
