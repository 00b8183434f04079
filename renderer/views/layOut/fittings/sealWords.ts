import { ORDINARY_SEALS, type SealsEntry } from '../../../../src/project/schema.ts';
import { sealAsGap } from '../../../../src/project/sealLeaks.ts';

type Quality = SealsEntry['threshold'];

const NAMES: Readonly<Record<Quality, string>> = {
  none: 'No seal, open joint',
  brush: 'Brush strip',
  foam: 'Foam strip',
  compression: 'Compression seal',
  'double-compression': 'Two compression seals',
  magnetic: 'Magnetic seal',
  drop: 'Drop seal',
  'double-drop': 'Two drop seals',
};
/** What a seal is called. */
export const sealName = (quality: Quality): string => NAMES[quality];

const PERIMETER = ['none', 'brush', 'foam', 'compression', 'double-compression', 'magnetic'] as const;
const THRESHOLD = [...PERIMETER, 'drop', 'double-drop'] as const;

/** Two figures that count, without a tail of noughts. */
export const shortFigure = (value: number): string => String(Number(value.toPrecision(value < 10 ? 2 : 3)));

/** What a metre of the joint leaks, in words. */
export const leakWords = (quality: Quality): string => {
  const gap = sealAsGap(quality);
  return gap === null
    ? 'As wide as you write beside it.'
    : `Each metre leaks ${shortFigure(10 * gap)} cm², like a slit ${shortFigure(gap)} mm wide that is quite open.`;
};

const optionOf = <Q extends Quality>(value: Q): { readonly value: Q; readonly label: string } => {
  const gap = sealAsGap(value);
  return { value, label: gap === null ? NAMES[value] : `${NAMES[value]} (as a ${shortFigure(gap)} mm slit)` };
};
export const PERIMETER_SEALS = PERIMETER.map((quality) => optionOf(quality));
export const THRESHOLD_SEALS = THRESHOLD.map((quality) => optionOf(quality));

const isOrdinary = ({ perimeter, threshold }: SealsEntry): boolean =>
  perimeter === ORDINARY_SEALS.perimeter && threshold === ORDINARY_SEALS.threshold;

/** What the description of the joints amounts to; nothing where the seals speak for themselves. */
export const jointsWords = (seals: SealsEntry | undefined, window: boolean): string => {
  if (!seals) return `Counts every joint as tight as the ${window ? 'pane' : 'leaf'}, which few are.`;
  return isOrdinary(seals) && !window ? 'Ordinary seals, as a new door usually comes with.' : '';
};

/** Seals in a phrase: "compression seal, drop seal below". */
export const sealsInWords = (seals: SealsEntry | undefined): string =>
  seals
    ? `${NAMES[seals.perimeter].toLowerCase()} at sides and head, ${NAMES[seals.threshold].toLowerCase()} below${
        isOrdinary(seals) ? ': ordinary seals' : ''
      }`
    : 'joints not described, taken as tight';
