import type { Note, Remedy } from '../../quantities/index.ts';
import type { Look, Rule } from './look.ts';
import { bandOf, gainAt, reductionAt } from './look.ts';
import { remedied } from './remedied.ts';
import { figure } from './figure.ts';
import { decibels, hertz, millimetres } from './wording.ts';

/** Critical frequencies nearer than this ratio fall into one dip. @source common practice: thickness ratio below 1.25 */
const ALIKE = 1.25;
const LOWEST = 200;
const HIGHEST = 5000;
const THICKER = 1.5;
/** Gain at the dip beyond what the added mass explains, dB. */
const TELLING = 2;
/** A dip as high as this troubles nobody, dB. */
const HIGH_ENOUGH = 60;

const noteOn = ({ assembly, structure, prediction, predict }: Look, i: number): Note | null => {
  const [first, second] = [prediction.leaves[i], prediction.leaves[i + 1]];
  const leaf = structure.leaves[i + 1];
  if (
    !first ||
    !second ||
    !leaf ||
    leaf.masonry ||
    first.criticalFrequency === null ||
    second.criticalFrequency === null
  )
    return null;
  const [low, high] = [first.criticalFrequency, second.criticalFrequency].sort((a, b) => a - b);
  if (low === undefined || high === undefined || high / low >= ALIKE || low < LOWEST || high > HIGHEST) return null;
  const thickest = leaf.boards.reduce((best, board) => (board.thickness > best.thickness ? board : best));
  const layer = assembly.layers.indexOf(thickest);
  if (layer < 0) return null;
  const thickness = Math.round(thickest.thickness * THICKER * 1000) / 1000;
  const remedy: Remedy = {
    kind: 'thicken',
    label: `outer ${thickest.material.name.toLowerCase()} ${millimetres(thickness)}`,
    layer,
    thickness,
  };
  const unequal = predict(remedied(assembly, remedy));
  const dip = [low, high, Math.sqrt(low * high)].reduce((worst, f) =>
    reductionAt(prediction, f) < reductionAt(prediction, worst) ? f : worst,
  );
  const gain = gainAt(prediction, unequal, dip);
  const byMass = 20 * Math.log10(unequal.surfaceMass / prediction.surfaceMass);
  if (gain - byMass < TELLING || reductionAt(prediction, dip) > HIGH_ENOUGH) return null;
  return {
    code: 'shared-coincidence',
    severity: 'hint',
    sentence:
      `Both faces let sound through best at the same pitch, ${hertz(low)}` +
      (high - low > 5 ? ` and ${hertz(high)}` : '') +
      `: the curve falls to ${Math.round(reductionAt(prediction, dip))} dB at ${bandOf(prediction, dip)} Hz. ` +
      `With the outer one ${millimetres(thickness)} instead of ${millimetres(thickest.thickness)} thick it would be ` +
      `${Math.round(reductionAt(unequal, dip))} dB there, ${decibels(gain)} better.`,
    figures: [
      figure('criticalFrequency', 'critical frequency of the inner face', first.criticalFrequency),
      figure('criticalFrequency', 'critical frequency of the outer face', second.criticalFrequency),
      figure('soundReductionIndex', 'R in the shared dip', reductionAt(prediction, dip)),
      figure('gain', 'gain in the dip by unequal faces', gain),
      figure('gain', 'of which by mass alone', byMass),
    ],
    about: { layers: [...first.layers, ...second.layers] },
    remedy,
  };
};

/**
 * Two faces alike: they share one coincidence dip, which unequal thicknesses would part.
 * @source common practice; the comparison is predicted
 */
export const sharedCoincidence: Rule = (look) =>
  look.structure.cavities
    .flatMap((_, i) => {
      const note = noteOn(look, i);
      return note ? [note] : [];
    })
    .slice(0, 1);
