import type { VentElement, VentPlace } from '../../src/engine/openings/index.ts';
import type { Box } from './section.ts';
import { isSign, ventMeasures, type PieceMeasures } from './ventMeasures.ts';

/** Scales a vent may be drawn at, px per m; steps, so that it does not breathe while a part is dragged. */
const SCALES = [500, 400, 350, 300, 250, 220, 190, 160, 140, 120, 100, 80, 65, 50, 40, 30, 20, 12];

/** Signs and thin parts are drawn this wide at least, px, so that they can be seen and held. */
const LEAST_WIDTH = 20;

/** One part of a vent as drawn: seen from above, the bends pulled straight, the room on the left. */
export interface PlacedPiece extends Box {
  readonly index: number;
  readonly element: VentElement;
  readonly zone: VentPlace;
  /** middle of the airway where it comes in from the room side, and where it goes on outwards, px */
  readonly axisIn: number;
  readonly axisOut: number;
  /** clear height of the airway at either end, px */
  readonly clearIn: number;
  readonly clearOut: number;
  /** lining on either side of a duct's airway, px */
  readonly lining: number;
  /** not to scale along the path */
  readonly sign: boolean;
}

export interface VentDrawing {
  /** px per m */
  readonly scale: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly pieces: readonly PlacedPiece[];
  /** the wall that the vent goes through, px */
  readonly wall: { readonly x: number; readonly width: number };
}

/** Where every part stands: as said of ducts and boxes; the others stand with their neighbours. */
export const zonesOf = (elements: readonly VentElement[]): readonly VentPlace[] => {
  let zone: VentPlace = 'inside';
  let passed = false;
  return elements.map((element) => {
    if (element.kind === 'duct' || element.kind === 'box') {
      zone = element.place;
      passed ||= zone !== 'inside';
      return zone;
    }
    return passed ? (zone = 'outside') : zone;
  });
};

const drawn = (part: PieceMeasures, scale: number): number => Math.max(LEAST_WIDTH, part.length * scale);

/** The largest scale at which a vent fits into a space. */
export const ventScale = (elements: readonly VentElement[], space: Box): number => {
  const { parts, above, below } = ventMeasures(elements);
  const fits = (scale: number): boolean =>
    parts.reduce((sum, part) => sum + drawn(part, scale), 0) <= space.width && (above + below) * scale <= space.height;
  return SCALES.find(fits) ?? 12;
};

/** The band of wall: behind the parts that stand in it, otherwise where the inside ends. */
const wallOf = (pieces: readonly PlacedPiece[], left: number, right: number): VentDrawing['wall'] => {
  const within = pieces.filter(({ zone }) => zone === 'wall');
  const [first, last] = [within[0], within.at(-1)];
  if (first && last) return { x: first.x, width: last.x + last.width - first.x };
  const outside = pieces.find(({ zone }) => zone === 'outside');
  const at = outside?.x ?? (pieces.length > 0 ? right : (left + right) / 2);
  return { x: at - 6, width: 12 };
};

/**
 * Lays a vent out from the room (left) outwards, seen from above and to scale; bends are pulled straight, and grilles,
 * fans and cowls are signs.
 */
export const layoutVent = (
  elements: readonly VentElement[],
  space: Box,
  scale: number = ventScale(elements, space),
): VentDrawing => {
  const { parts, axes, above, below } = ventMeasures(elements);
  const zones = zonesOf(elements);
  const total = parts.reduce((sum, part) => sum + drawn(part, scale), 0);
  const left = space.x + Math.max(0, (space.width - total) / 2);
  const axis = space.y + (space.height - (above + below) * scale) / 2 + above * scale;
  let x = left;
  const pieces = parts.map((part, index): PlacedPiece => {
    const width = drawn(part, scale);
    const axisIn = axis + (axes[index] ?? 0) * scale;
    const piece: PlacedPiece = {
      index,
      element: part.element,
      zone: zones[index] ?? 'inside',
      x,
      y: axisIn - part.above * scale,
      width,
      height: (part.above + part.below) * scale,
      axisIn,
      axisOut: axisIn + part.drop * scale,
      clearIn: part.clear[0] * scale,
      clearOut: part.clear[1] * scale,
      lining: part.lining * scale,
      sign: isSign(part.element) || width > part.length * scale + 0.01,
    };
    x += width;
    return piece;
  });
  return {
    scale,
    left,
    right: x,
    top: axis - above * scale,
    bottom: axis + below * scale,
    pieces,
    wall: wallOf(pieces, left, x),
  };
};

/** Where a part dropped at a horizontal position would stand, counted without itself. */
export const dropPlace = (drawing: VentDrawing, from: number, x: number): number =>
  drawing.pieces.filter((piece) => piece.index !== from && piece.x + piece.width / 2 < x).length;
