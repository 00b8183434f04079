/** What the tints and labels of the net stand for: the whole spectrum, or one octave (Hz). */
export type BandChoice = 'whole' | number;

export const BAND_CHOICES: readonly BandChoice[] = ['whole', 63, 125, 250, 500, 1000, 2000, 4000];

export const bandChoiceName = (band: BandChoice): string =>
  band === 'whole' ? 'whole' : band < 1000 ? String(band) : `${band / 1000}k`;

/** What one hears there, so that a band means something to someone who plays. */
export const bandMeaning = (band: BandChoice): string => {
  if (band === 'whole') return 'everything from 50 Hz to 5 kHz';
  if (band <= 63) return 'kick drum, low bass strings';
  if (band <= 125) return 'bass, floor tom';
  if (band <= 250) return 'toms, low guitar, cello';
  if (band <= 500) return 'snare body, voice';
  if (band <= 1000) return 'voice, brass';
  if (band <= 2000) return 'guitar edge, snare crack';
  return 'cymbals, hiss';
};
