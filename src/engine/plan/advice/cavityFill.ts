import type { CavityLayer, Frame } from '../../assembly/index.ts';
import type { Note, Remedy } from '../../quantities/index.ts';
import type { Look, Rule } from './look.ts';
import { RwGainOf, gainAt } from './look.ts';
import { remedied } from './remedied.ts';
import { figure } from './figure.ts';
import { betterOrWorse } from './wording.ts';

/** Too shallow for wool, m. */
const SHALLOWEST = 0.02;
const BANDS: readonly number[] = [63, 125, 500];
/** Gain in Rw from which the missing wool is a mistake rather than a hint, dB. */
const TELLING = 3;
/** Less, in Rw and at 500 Hz, is not worth the wool, dB. */
const LEAST_GAIN = 1;
/** Neither doors nor panes weigh as much, kg/m². @source common practice */
const HEAVY = 80;

const fillFigures = (look: Look, remedy: Remedy) => {
  const filled = look.predict(remedied(look.assembly, remedy));
  const gain = RwGainOf(look.prediction, filled);
  const at = (band: number): string => `${betterOrWorse(gainAt(look.prediction, filled, band))} at ${band} Hz`;
  return {
    gain,
    middle: gainAt(look.prediction, filled, 500),
    words: `Rw ${filled.ratings.Rw ?? 0} instead of ${look.prediction.ratings.Rw ?? 0} and be ${at(125)} and ${at(500)}`,
    figures: [
      figure('gain', 'gain of wool in Rw', gain),
      ...BANDS.map((band) => figure('gain', `gain of wool at ${band} Hz`, gainAt(look.prediction, filled, band))),
    ],
  };
};

const isTied = (frame: Frame): boolean =>
  frame.arrangement === 'common' && frame.fixing === 'direct' && frame.stud !== 'none';
const TIED =
  ' Studs that tie both faces together pass much of the sound, so wool does less here than between free leaves.';
const UNFRAMED =
  ' Between two doors or panes the gap has to stay open: line its edges with wool behind cloth or pierced board, which ' +
  'brings a part of that.';

/** @param light both leaves may be doors or panes */
const emptyNote = (look: Look, index: number, frame: Frame | undefined, light: boolean): Note | null => {
  const remedy: Remedy = { kind: 'fill-cavity', label: 'wool in the gap', cavity: index };
  const { gain, middle, words, figures } = fillFigures(look, remedy);
  if (gain < LEAST_GAIN && middle < LEAST_GAIN) return null;
  return {
    code: 'cavity-without-absorber',
    severity: frame && gain >= TELLING ? 'mistake' : 'hint',
    sentence:
      `The gap is empty. Filled with mineral wool the part would have ${words}.` +
      (frame ? (isTied(frame) ? TIED : '') : light ? UNFRAMED : ''),
    figures,
    about: { layers: [index] },
    remedy,
  };
};

const foamNote = (look: Look, index: number, foam: string): Note => {
  const remedy: Remedy = { kind: 'fill-cavity', label: 'wool instead of foam', cavity: index };
  const { words, figures } = fillFigures(look, remedy);
  return {
    code: 'closed-cell-fill',
    severity: 'mistake',
    sentence:
      `${foam} keeps heat, not sound: air cannot move through it, so it soaks up nothing. ` +
      `With mineral wool in its place the part would have ${words}.`,
    figures,
    about: { layers: [index] },
    remedy,
  };
};

/**
 * Cavities without wool, and with closed-cell foam instead of it.
 * @source common practice (wool: 0 to 3 dB on rigid studs, 6 to 10 dB between free leaves); the comparison is predicted
 */
export const cavityFill: Rule = (look) =>
  look.structure.cavities.flatMap(({ layers, depth }, i) => {
    const [near, far] = [look.structure.leaves[i], look.structure.leaves[i + 1]];
    if (depth < SHALLOWEST || (near?.glass === true && far?.glass === true)) return [];
    const cavities = layers.flatMap((index): { index: number; cavity: CavityLayer }[] => {
      const layer = look.assembly.layers[index];
      return layer?.kind === 'cavity' ? [{ index, cavity: layer }] : [];
    });
    const foamed = cavities.flatMap(({ index, cavity }) =>
      cavity.fill?.material.kind === 'board' ? [foamNote(look, index, cavity.fill.material.name)] : [],
    );
    if (foamed.length > 0) return foamed;
    const [first] = cavities;
    const frame = cavities.find(({ cavity }) => cavity.frame)?.cavity.frame;
    const light = Math.max(near?.surfaceMass ?? 0, far?.surfaceMass ?? 0) < HEAVY;
    const note =
      first && cavities.every(({ cavity }) => !cavity.fill) ? emptyNote(look, first.index, frame, light) : null;
    return note ? [note] : [];
  });
