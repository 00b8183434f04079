/** What a neighbour makes of a rating; common practice in the trade, in steps of about 5 dB. */
const STEPS: readonly (readonly [number, string])[] = [
  [20, 'talk is plainly understood'],
  [30, 'normal speech is understood'],
  [35, 'loud speech is understood'],
  [40, 'loud speech is heard, not understood'],
  [45, 'loud speech is a murmur'],
  [50, 'loud speech is hardly heard'],
  [55, 'loud speech is not heard'],
  [60, 'loud voices and most instruments are not heard'],
];

/** Rw or STC of at least 60. */
const BEST = 'little is heard but bass';

/**
 * A rating in words, of speech on the far side against a quiet background. Bass is another matter: see `bassWords`.
 * @source common practice
 */
export const ratingWords = (rating: number): string => STEPS.find(([below]) => rating < below)?.[1] ?? BEST;

const BASS: readonly (readonly [number, string])[] = [
  [15, 'kick and bass go straight through'],
  [25, 'kick and bass are clear next door'],
  [35, 'kick and bass are heard next door'],
  [45, 'kick is faint next door'],
];

/**
 * The bass figure (50 to 100 Hz) in words, of a drum kit or amplified band beside a quiet bedroom.
 * @source common practice
 */
export const bassWords = (bass: number): string => BASS.find(([below]) => bass < below)?.[1] ?? 'kick is hardly heard';

export const WORDS_ARE_COMMON_PRACTICE =
  'Words for a rating are common practice, for a quiet background on the far side; they are no promise.';
