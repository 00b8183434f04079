import { massAirMassResonance } from '../../assembly/index.ts';
import type { Cavity, Leaf } from '../../assembly/index.ts';
import type { Note, Remedy } from '../../quantities/index.ts';
import type { Look, Rule } from './look.ts';
import { RwGainOf, bandsWhere, gainAt } from './look.ts';
import { remedied } from './remedied.ts';
import { figure } from './figure.ts';
import { bandRange, betterOrWorse, decibels, hertz, millimetres } from './wording.ts';

/** A lining on battens, dabs or bars. @source common practice */
const THINNEST = 0.005;
const THICKEST = 0.04;
const HEAVY = 80;
/** A gap that a lining should have, m. @source common practice: 75 to 100 mm with wool */
const PROPER = 0.1;
/** How far from its resonance a lining can be to blame, as a ratio of frequencies. */
const AROUND = 2;
/** Less is not worth a word, dB. */
const TELLING = 0.5;

/** Whether a light leaf stands 5 to 40 mm off a heavy one. */
export const isThinLining = (first: Leaf, second: Leaf, { depth }: Cavity): boolean =>
  depth >= THINNEST &&
  depth <= THICKEST &&
  Math.max(first.surfaceMass, second.surfaceMass) > HEAVY &&
  Math.min(first.surfaceMass, second.surfaceMass) <= HEAVY;

const noteOn = (look: Look, cavity: number, lining: Leaf, f0: number): Note | null => {
  const { assembly, structure, prediction, predict } = look;
  const gap = structure.cavities[cavity];
  if (!gap) return null;
  const added = [...lining.layers, ...gap.layers];
  const bare = predict({ ...assembly, layers: assembly.layers.filter((_, i) => !added.includes(i)) });
  const than = structure.leaves.length === 2 ? 'bare' : 'without it';
  const worse = bandsWhere(prediction, f0 / AROUND, f0 * AROUND, (band) => gainAt(bare, prediction, band) < -TELLING);
  const most = worse.reduce((least, band) => Math.min(least, gainAt(bare, prediction, band)), 0);
  const [layer, ...others] = gap.layers;
  const remedy: Remedy | null =
    layer !== undefined && others.length === 0
      ? { kind: 'deepen', label: `lining ${millimetres(PROPER)} off the wall`, cavity: layer, depth: PROPER }
      : null;
  const proper = remedy ? predict(remedied(assembly, remedy)) : null;
  const offWall = proper
    ? ` Stood ${millimetres(PROPER)} off the wall it would be ${betterOrWorse(gainAt(prediction, proper, f0))} there.`
    : '';
  return {
    code: 'thin-lining',
    severity: worse.length > 0 ? 'mistake' : 'hint',
    sentence:
      `This lining stands only ${millimetres(gap.depth)} off a heavy wall and bounces on that air at ${hertz(f0)}` +
      (worse.length > 0
        ? `: ${bandRange(worse)} the wall is up to ${decibels(most)} worse than ${than}.`
        : '; it gains little in the bass.') +
      offWall,
    figures: [
      figure('resonance', 'resonance of the lining', f0),
      figure('gain', 'largest loss against the wall without it', -most),
      ...(worse.length > 0
        ? [
            figure('frequency', 'worse than without it from', worse[0] ?? 0),
            figure('frequency', 'worse than without it to', worse.at(-1) ?? 0),
          ]
        : []),
      figure('gain', 'change of Rw against the wall without it', RwGainOf(bare, prediction)),
      ...(proper ? [figure('gain', `gain of a ${millimetres(PROPER)} gap in Rw`, RwGainOf(prediction, proper))] : []),
    ],
    about: { layers: added },
    ...(remedy && { remedy }),
  };
};

/**
 * A thin lining close to masonry: worse than the wall without it around its resonance; on both faces each is told.
 * @source common practice (25 mm and one 12.5 mm board: 111 to 134 Hz); the comparison is predicted
 */
export const thinLining: Rule = (look) =>
  look.structure.cavities.flatMap((cavity, i) => {
    const [near, far] = [look.structure.leaves[i], look.structure.leaves[i + 1]];
    if (!near || !far || !isThinLining(near, far, cavity)) return [];
    const lining = near.surfaceMass < far.surfaceMass ? near : far;
    const f0 = massAirMassResonance(near.surfaceMass, far.surfaceMass, cavity.depth);
    const note = noteOn(look, i, lining, f0);
    return note ? [note] : [];
  });
