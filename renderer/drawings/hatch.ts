/**
 * Section hatches, drawn here in the spirit of ISO 128-3:2022 (hatching of cuts and sections): thin lines at 45 degrees
 * for solids, and for each group of materials the sign that drawing practice uses for it (common practice).
 */
export const HATCH_NAMES = [
  'plasterboard',
  'plaster',
  'timber',
  'sheet-wood',
  'masonry',
  'concrete',
  'glass',
  'metal',
  'wool',
  'foam',
  'membrane',
  'interlayer',
  'air',
] as const;
export type HatchName = (typeof HATCH_NAMES)[number];

/** One tile of a hatch; paths and dots in px of the tile. */
export interface HatchTile {
  readonly width: number;
  readonly height: number;
  readonly paths: readonly { readonly d: string; readonly width: number }[];
  readonly dots: readonly { readonly x: number; readonly y: number; readonly r: number }[];
  /** share of ink laid under the hatch, 0 to 1: heavy materials stand darker */
  readonly tone: number;
  /** what the sign stands for */
  readonly words: string;
}

/** 45 degree lines that join from tile to tile. */
const diagonals = (size: number): string =>
  `M0,${size}L${size},0M${-size / 4},${size / 4}L${size / 4},${-size / 4}M${(size * 3) / 4},${(size * 5) / 4}L${(size * 5) / 4},${(size * 3) / 4}`;
const counter = (size: number): string =>
  `M0,0L${size},${size}M${-size / 4},${(size * 3) / 4}L${size / 4},${(size * 5) / 4}M${(size * 3) / 4},${-size / 4}L${(size * 5) / 4},${size / 4}`;

const tile = (
  words: string,
  width: number,
  height: number,
  paths: HatchTile['paths'],
  dots: HatchTile['dots'] = [],
  tone = 0,
): HatchTile => ({ width, height, paths, dots, tone, words });

export const HATCHES: Readonly<Record<HatchName, HatchTile>> = {
  plasterboard: tile(
    'plasterboard',
    8,
    8,
    [],
    [
      { x: 1.5, y: 1.6, r: 0.6 },
      { x: 5.4, y: 3.4, r: 0.6 },
      { x: 2.6, y: 6.2, r: 0.6 },
      { x: 6.9, y: 7, r: 0.5 },
    ],
  ),
  plaster: tile(
    'plaster or render',
    6,
    6,
    [],
    [
      { x: 1, y: 1, r: 0.7 },
      { x: 4, y: 2.4, r: 0.5 },
      { x: 2.4, y: 4.4, r: 0.7 },
      { x: 5.3, y: 5.2, r: 0.5 },
    ],
    0.06,
  ),
  timber: tile(
    'timber',
    14,
    18,
    [{ d: 'M-1,4C3,-1 11,-1 15,4M-1,9C3,3 11,3 15,9M-1,14C3,8 11,8 15,14M-1,19C3,13 11,13 15,19', width: 0.7 }],
    [],
    0.03,
  ),
  'sheet-wood': tile('wood-based board', 7, 10, [{ d: 'M0,2H4.5M2,5H7M0,8H3M5,8.4H7', width: 0.8 }], [], 0.04),
  masonry: tile('masonry', 10, 10, [{ d: diagonals(10), width: 0.8 }], [], 0.05),
  concrete: tile(
    'concrete, cement board',
    20,
    20,
    [
      { d: diagonals(20), width: 0.8 },
      { d: 'M12,13l3.4,0.8l-2,2.8z M4,5l2.4,0.4l-1.4,2z', width: 0.7 },
    ],
    [
      { x: 8.5, y: 3, r: 0.7 },
      { x: 16, y: 8, r: 0.7 },
      { x: 7.5, y: 16, r: 0.7 },
    ],
    0.07,
  ),
  glass: tile('glass', 12, 18, [{ d: 'M1,7L7,1M3,9L9,3M5,11L9,7', width: 0.7 }]),
  metal: tile(
    'metal',
    6,
    6,
    [
      { d: diagonals(6), width: 0.9 },
      { d: counter(6), width: 0.9 },
    ],
    [],
    0.12,
  ),
  wool: tile('fibrous absorber', 12, 12, [{ d: 'M0,3c2,-4 4,-4 6,0s4,4 6,0M0,9c2,4 4,4 6,0s4,-4 6,0', width: 0.7 }]),
  foam: tile('foam', 12, 10.4, [
    {
      d: 'M0,2.6L3,0.9L6,2.6V6L3,7.8L0,6zM6,2.6L9,0.9L12,2.6V6L9,7.8L6,6M3,7.8V10.4M9,7.8V10.4M3,0V0.9M9,0V0.9',
      width: 0.6,
    },
  ]),
  membrane: tile('heavy sheet or membrane', 6, 10, [{ d: 'M0,2.5H6M0,7.5H6', width: 3.2 }], [], 0.2),
  interlayer: tile(
    'damping interlayer',
    4,
    4,
    [],
    [
      { x: 1, y: 1, r: 0.8 },
      { x: 3, y: 3, r: 0.8 },
    ],
    0.12,
  ),
  air: tile('air', 8, 8, []),
};

export const isHatchName = (name: string): name is HatchName => (HATCH_NAMES as readonly string[]).includes(name);

/** Fill that refers to a hatch defined by the Hatches part with the same prefix. */
export const hatchFill = (prefix: string, name: HatchName): string =>
  name === 'air' ? 'none' : `url(#${prefix}-${name})`;
