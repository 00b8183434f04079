import type { Layer } from '../../assembly/index.ts';
import { massAirMassResonance } from '../../assembly/index.ts';
import { AIR_BULK_MODULUS } from '../../quantities/index.ts';
import type { Remedy } from '../../quantities/index.ts';
import type { Rule } from './look.ts';
import { bandOf, gainAt } from './look.ts';
import { isThinLining } from './thinLining.ts';
import { figure, lengthFigure } from './figure.ts';
import { decibels, hertz, millimetres } from './wording.ts';

/** Below this the resonance lies under the lowest notes of most music, Hz. @source common practice */
const LOWEST_MUSIC = 45;
/** From here on the resonance is worth a change of plan. @source engineering judgement */
const GRAVE_FREQUENCY = 80;
const GRAVE_COST = 3;
/** Nobody gives a wall more room than this, m. @source common practice */
const DEEPEST = 0.3;
/** Nobody makes both leaves heavier than so many times. @source common practice */
const HEAVIEST = 3;

/** cavity depth that moves the resonance to a frequency, m */
const depthFor = (first: number, second: number, frequency: number): number =>
  (AIR_BULK_MODULUS * (first + second)) / (first * second * (2 * Math.PI * frequency) ** 2);

const toCentimetre = (depth: number): number => Math.ceil(depth * 100 - 1e-6) / 100;

/**
 * Mass-air-mass resonance of two leaves inside the music: what it costs against the same boards without the cavity,
 * and what depth or mass would move it out.
 * @source Fahy, Sound and Structural Vibration (1985), ch. 4; the limit of 45 Hz is common practice
 */
export const resonanceInMusic: Rule = ({ assembly, structure, prediction, predict }) => {
  const [first, second] = structure.leaves;
  const [cavity] = structure.cavities;
  if (structure.leaves.length !== 2 || !first || !second || !cavity || isThinLining(first, second, cavity)) return [];
  const f0 = massAirMassResonance(first.surfaceMass, second.surfaceMass, cavity.depth);
  if (f0 <= LOWEST_MUSIC * 1.05) return [];
  const solid = predict({ ...assembly, layers: assembly.layers.filter((layer: Layer) => layer.kind !== 'cavity') });
  const cost = gainAt(prediction, solid, f0);
  const needed = depthFor(first.surfaceMass, second.surfaceMass, LOWEST_MUSIC);
  const heavier = (f0 / LOWEST_MUSIC) ** 2;
  const offered = toCentimetre(Math.min(needed, Math.max(DEEPEST, cavity.depth)));
  const reached = massAirMassResonance(first.surfaceMass, second.surfaceMass, offered);
  const [layer, ...others] = cavity.layers;
  const canDeepen = offered > cavity.depth * 1.1 && layer !== undefined && others.length === 0 && !first.glass;
  const remedy: Remedy | null = canDeepen
    ? { kind: 'deepen', label: `gap ${millimetres(offered)} deep`, cavity: layer, depth: offered }
    : null;
  const costs = cost >= 1;
  const grave = cost >= GRAVE_COST && f0 >= GRAVE_FREQUENCY;
  return [
    {
      code: 'resonance-in-music',
      severity: grave ? 'mistake' : 'hint',
      sentence:
        `The two leaves bounce on the air between them at ${hertz(f0)}, where there is music` +
        (costs
          ? `: in the ${bandOf(prediction, f0)} Hz band the part is ${decibels(cost)} worse than the same boards with no gap at all. `
          : '. ') +
        `To bring it down to ${LOWEST_MUSIC} Hz the gap would have to be ${millimetres(needed)} instead of ` +
        `${millimetres(cavity.depth)}${heavier <= HEAVIEST ? `, or both leaves ${heavier.toFixed(1)} times as heavy` : ''}.` +
        (remedy && offered < needed - 0.005 ? ` A gap of ${millimetres(offered)} brings it to ${hertz(reached)}.` : ''),
      figures: [
        figure('resonance', 'resonance of the two leaves', f0),
        figure('gain', 'loss against the boards without a gap', cost),
        lengthFigure(`gap needed for ${LOWEST_MUSIC} Hz`, needed),
        figure('ratio', 'mass needed instead, times the present', heavier),
        ...(remedy ? [figure('resonance', `resonance with a gap of ${millimetres(offered)}`, reached)] : []),
      ],
      about: { layers: [...first.layers, ...cavity.layers, ...second.layers] },
      ...(remedy && { remedy }),
    },
  ];
};
