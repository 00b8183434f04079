import { holeTransmissions } from './hole.ts';
import { sealLengths } from './sealLengths.ts';
import { slitTransmissions } from './slit.ts';
import type { Fittings, SealQuality, Seals } from './doorFittings.ts';

/** One leak of a part. */
export interface Leak {
  readonly name: string;
  /** S·τ per band, m² */
  readonly openArea: readonly number[];
}

/**
 * Sound reduction of a closed joint, Rs for 1 m² and 1 m of joint, dB.
 * @source form: EN ISO 10140-1:2021, annex on joints; values common practice for well-adjusted seals
 */
export const JOINT_REDUCTION: Readonly<Record<Exclude<SealQuality, 'none'>, number>> = {
  brush: 24,
  foam: 30,
  compression: 40,
  'double-compression': 48,
  magnetic: 44,
  drop: 38,
  'double-drop': 44,
};

/** Thickness of an ordinary leaf, m. */
const LEAF = 0.044;
/** A keyhole as a round hole of its area, m. @source common practice */
const KEYHOLE = 0.008;
/** A letter plate, m², and R of its flap. @source common practice: a flap without seal 10 dB, with an inner flap 20 dB */
const LETTER_PLATE = 0.25 * 0.04;
const FLAP = { plain: 10, double: 20 } as const;

const jointLeak = (name: string, quality: SealQuality, length: number, gap: number, bands: readonly number[]): Leak => {
  if (quality === 'none') {
    const tau = slitTransmissions(gap, LEAF, true, bands, 'diffuse');
    return { name, openArea: tau.map((t) => length * gap * t) };
  }
  const passed = length * 10 ** (-JOINT_REDUCTION[quality] / 10);
  return { name, openArea: bands.map(() => passed) };
};

/**
 * Leaks of the joints round a leaf: S·τ = l·10^(−Rs/10), open gaps as slits along an edge.
 * @param seals of the leaf; null: as good as the leaf
 * @param width of the leaf, m, > 0
 * @param height m, > 0
 * @param bands nominal third octaves, Hz
 * @source EN ISO 10140-1:2021 (form); Gomperts & Kihlman (1967) for open gaps
 */
export const sealLeaks = (seals: Seals | null, width: number, height: number, bands: readonly number[]): Leak[] => {
  if (seals === null) return [];
  const lengths = sealLengths(width, height);
  return [
    jointLeak('Joint at sides and head', seals.perimeter, lengths.perimeter, seals.perimeterGap, bands),
    jointLeak('Joint at the threshold', seals.threshold, lengths.threshold, seals.thresholdGap, bands),
  ];
};

/** Leaks of keyhole and letter plate. */
export const furnitureLeaks = ({ keyhole, letterPlate }: Fittings, bands: readonly number[]): Leak[] => [
  ...(keyhole
    ? [
        {
          name: 'Keyhole',
          openArea: holeTransmissions(KEYHOLE, LEAF, bands, 'diffuse').map((t) => (Math.PI / 4) * KEYHOLE ** 2 * t),
        },
      ]
    : []),
  ...(letterPlate === 'none'
    ? []
    : [{ name: 'Letter plate', openArea: bands.map(() => LETTER_PLATE * 10 ** (-FLAP[letterPlate] / 10)) }]),
];
