import type { SurfaceEntry } from '../../src/project/schema.ts';
import { dimensionsOf, type Dimension } from './netDimensions.ts';
import { foldOut } from './netFold.ts';
import { placeOpenings, type PlacedOpening } from './netOpenings.ts';
import { around, lieBox, type Lie, type SheetBox, type SheetPoint } from './netTurn.ts';

export interface NetSurface {
  readonly entry: SurfaceEntry;
  readonly lie: Lie;
  readonly box: SheetBox;
  readonly openings: readonly PlacedOpening[];
}

/** The room unfolded, in metres on the sheet. */
export interface Net {
  readonly surfaces: readonly NetSurface[];
  /** the floor, or the empty place for one */
  readonly middle: SheetBox;
  readonly hasFloor: boolean;
  readonly bounds: SheetBox;
  readonly dimensions: readonly Dimension[];
}

/** @param aspect width over height of the area to be filled */
export const net = (surfaces: readonly SurfaceEntry[], aspect: number): Net => {
  const { lies, middle, hasFloor } = foldOut(surfaces, aspect);
  const placed = surfaces.flatMap((entry): NetSurface[] => {
    const lie = lies[entry.id];
    return lie ? [{ entry, lie, box: lieBox(lie), openings: placeOpenings(entry) }] : [];
  });
  const bounds = around([middle, ...placed.map((surface) => surface.box)]) ?? middle;
  const dimensions = dimensionsOf(placed.map(({ entry, box }) => [entry.id, box] as const));
  return { surfaces: placed, middle, hasFloor, bounds, dimensions };
};

/** Metres on the sheet to pixels on the screen. */
export interface NetScale {
  readonly pixelsPerMetre: number;
  readonly toScreen: (point: SheetPoint) => SheetPoint;
  readonly toPaper: (pixel: SheetPoint) => SheetPoint;
  readonly boxOnScreen: (box: SheetBox) => SheetBox;
}

export interface Margins {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** The largest scale at which the net fits between the margins, centred. */
export const fitNet = (bounds: SheetBox, width: number, height: number, margins: Margins): NetScale => {
  const roomX = Math.max(1, width - margins.left - margins.right);
  const roomY = Math.max(1, height - margins.top - margins.bottom);
  const k = Math.min(roomX / bounds.width, roomY / bounds.height, 140);
  const dx = margins.left + (roomX - bounds.width * k) / 2 - bounds.x * k;
  const dy = margins.top + (roomY - bounds.height * k) / 2 - bounds.y * k;
  const toScreen = ({ x, y }: SheetPoint): SheetPoint => ({ x: x * k + dx, y: y * k + dy });
  return {
    pixelsPerMetre: k,
    toScreen,
    toPaper: ({ x, y }) => ({ x: (x - dx) / k, y: (y - dy) / k }),
    boxOnScreen: (box) => ({ ...toScreen(box), width: box.width * k, height: box.height * k }),
  };
};

/** One foot, m. @source exact by definition, international yard and pound agreement of 1959 */
const FOOT = 0.3048;

/** Spacing of the scale grid, m: half a metre or foot where that is at least 18 pixels, else one, two or five of them. */
export const gridStep = (pixelsPerMetre: number, feet = false): number => {
  const unit = feet ? FOOT : 1;
  return ([0.5, 1, 2, 5].find((step) => step * unit * pixelsPerMetre >= 18) ?? 10) * unit;
};

/** Length of the scale bar, in metres, and what is written on it. */
export const scaleBar = (pixelsPerMetre: number, feet = false): { readonly length: number; readonly words: string } => {
  const [unit, name] = feet ? [FOOT, 'ft'] : [1, 'm'];
  const count = [1, 2, 5, 10, 20].find((it) => it * unit * pixelsPerMetre >= 30) ?? 50;
  return { length: count * unit, words: `${count} ${name}` };
};
