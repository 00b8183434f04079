import type { Assembly, CavityLayer, Frame } from '../../assembly/index.ts';
import type { Note } from '../../quantities/index.ts';
import type { Look, Rule } from './look.ts';
import { RwGainOf, gainAt } from './look.ts';
import { figure } from './figure.ts';
import { decibels, millimetres } from './wording.ts';

/** Lowest resilient bar on the market, m; a gap without this room squashes it. @source common practice: 13 to 16 mm */
const BAR_HEIGHT = 0.013;
/** Wool denser than this is stiff enough to push the board off its bars, kg/m³. @source common practice */
const STIFF_WOOL = 80;
/** Straight battens or furring channels stand in gaps no deeper than this, m. */
const FURRING = 0.04;
/** Less is not worth a word, dB. */
const TELLING = 3;
const BANDS: readonly number[] = [250, 500, 1000];

const refixed = (assembly: Assembly, index: number, frame: Frame): Assembly => ({
  ...assembly,
  layers: assembly.layers.map((layer, i) => (i === index && layer.kind === 'cavity' ? { ...layer, frame } : layer)),
});

/** what keeps the bars from moving, in words; null where nothing in the drawing does */
const circuitOf = ({ depth, fill }: CavityLayer, fixing: string): string | null => {
  if (depth < BAR_HEIGHT)
    return `the gap is ${millimetres(depth)} deep and a ${fixing} needs ${millimetres(BAR_HEIGHT)} or more, so it is squashed flat`;
  if (!fill) return null;
  const stiff = fill.material.kind === 'board' || fill.material.density > STIFF_WOOL;
  return stiff && fill.thickness > depth - BAR_HEIGHT
    ? `the stiff fill (${millimetres(fill.thickness)} in a gap of ${millimetres(depth)}) touches both faces`
    : null;
};

const noteOn = (look: Look, cavity: CavityLayer, index: number, frame: Frame): Note | null => {
  const { assembly, prediction, predict } = look;
  const direct = predict(refixed(assembly, index, { ...frame, fixing: 'direct', ...studsFor(frame) }));
  const loss = RwGainOf(direct, prediction);
  const worst = BANDS.reduce((a, b) => (gainAt(direct, prediction, b) > gainAt(direct, prediction, a) ? b : a));
  const fixing = frame.fixing === 'resilient-bar' ? 'resilient bar' : 'isolating clip';
  const circuit = circuitOf(cavity, fixing);
  if (!circuit && loss < 1 && gainAt(direct, prediction, worst) < TELLING) return null;
  const [before, after] = [prediction.ratings.Rw ?? 0, direct.ratings.Rw ?? 0];
  const pair = `Rw ${before} becomes ${after} and ${worst} Hz loses ${decibels(gainAt(direct, prediction, worst))}`;
  return {
    code: 'short-circuited-bars',
    severity: circuit ? 'mistake' : 'hint',
    sentence: circuit
      ? `The ${fixing}s cannot work: ${circuit}. Counted as if screwed straight to the frame, ${pair}.`
      : `Keep the ${fixing}s free: one screw that reaches the frame behind, a shelf fixed through, or a board tight to the ` +
        `floor undoes them. Without them ${pair}.`,
    figures: [
      figure('weightedReduction', 'Rw with bars that work', prediction.ratings.Rw ?? 0),
      figure('weightedReduction', 'Rw fixed directly', direct.ratings.Rw ?? 0),
      figure('gain', 'loss in Rw', loss),
      ...BANDS.map((band) => figure('gain', `loss at ${band} Hz`, gainAt(direct, prediction, band))),
    ],
    about: { layers: [index] },
  };
};

/** Bars on masonry fixed directly are battens. */
const studsFor = (frame: Frame): Partial<Frame> => (frame.stud === 'none' ? { stud: 'timber' } : {});

const furringNote = (look: Look, index: number, frame: Frame): Note | null => {
  const { assembly, prediction, predict } = look;
  const barred = predict(refixed(assembly, index, { ...frame, fixing: 'resilient-bar' }));
  const gain = RwGainOf(prediction, barred);
  const most = Math.max(...BANDS.map((band) => gainAt(prediction, barred, band)));
  if (gain < 1 && most < TELLING) return null;
  return {
    code: 'short-circuited-bars',
    severity: 'hint',
    sentence:
      'Straight battens or furring channels are not resilient bars: they tie the board to the wall and gain nothing. ' +
      `Resilient bars in the same gap would change Rw from ${prediction.ratings.Rw ?? 0} to ${barred.ratings.Rw ?? 0} and ` +
      `gain up to ${decibels(most)} from 250 to 1000 Hz.`,
    figures: [
      figure('weightedReduction', 'Rw on furring', prediction.ratings.Rw ?? 0),
      figure('weightedReduction', 'Rw on resilient bars', barred.ratings.Rw ?? 0),
      figure('gain', 'gain in Rw', gain),
    ],
    about: { layers: [index] },
  };
};

/**
 * Resilient bars and clips that cannot move, or would stop moving: the part with and without them; furring taken for bars.
 * @source common practice; bar heights 13 to 16 mm; the comparison is predicted
 */
export const shortCircuitedBars: Rule = (look) =>
  look.assembly.layers.flatMap((layer, index) => {
    if (layer.kind !== 'cavity' || layer.frame?.arrangement !== 'common') return [];
    const { frame } = layer;
    const between = look.structure.cavities.some(({ layers }) => layers.includes(index));
    const furring = between && layer.depth <= FURRING && frame.stud !== 'none';
    const note =
      frame.fixing !== 'direct' ? noteOn(look, layer, index, frame) : furring ? furringNote(look, index, frame) : null;
    return note ? [note] : [];
  });
