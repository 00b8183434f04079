import type { VentElement, VentPlace } from '../../src/engine/openings/index.ts';
import type { Section } from '../../src/engine/quantities/index.ts';
import type { Box } from './section.ts';

/** Scales a vent may be drawn at, px per m; steps, so that it does not breathe while a part is dragged. */
const SCALES = [500, 400, 350, 300, 250, 220, 190, 160, 140, 120, 100, 80, 65, 50, 40, 30, 20, 12];

/** Signs and thin parts are drawn this wide at least, px, so that they can be seen and held. */
const LEAST_WIDTH = 20;

/** Lengths of parts that have none in the document, m: drawn as signs. */
const SIGN_LENGTH: Readonly<Partial<Record<VentElement['kind'], number>>> = {
  grille: 0.03,
  mesh: 0.01,
  fan: 0.16,
  cowl: 0.12,
};

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

/** How wide a section is seen from above, m. */
export const acrossOf = (section: Section): number => (section.shape === 'round' ? section.diameter : section.width);

/** Length of a part along the path, m. */
export const lengthOf = (element: VentElement): number => {
  if (element.kind === 'duct' || element.kind === 'transition') return element.length;
  if (element.kind === 'box') return element.box.length;
  if (element.kind === 'bend') return Math.max(0.08, acrossOf(element.section));
  return SIGN_LENGTH[element.kind] ?? 0.05;
};

const isSign = ({ kind }: VentElement): boolean => kind in SIGN_LENGTH || kind === 'bend';

/** Height of a port over the near side of its box, m. */
const portHeight = (box: Extract<VentElement, { kind: 'box' }>['box'], which: 0 | 1): number => {
  const { side, at, across } = box.ports[which];
  if (side === 'W' || side === 'E') return at;
  return side === 'S' ? 0 : side === 'N' ? box.width : across;
};

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

interface Measured {
  readonly element: VentElement;
  readonly length: number;
  /** of the whole part above and below the axis at its room-side end, m */
  readonly above: number;
  readonly below: number;
  /** how far the axis goes down within the part, m */
  readonly drop: number;
  readonly clear: readonly [number, number];
  readonly lining: number;
}

const measured = (element: VentElement, before: number, after: number): Measured => {
  const length = lengthOf(element);
  if (element.kind === 'box') {
    const { box } = element;
    const [first, second] = [portHeight(box, 0), portHeight(box, 1)];
    const clear = [acrossOf(box.ports[0].section), acrossOf(box.ports[1].section)] as const;
    return { element, length, above: box.width - first, below: first, drop: first - second, clear, lining: 0 };
  }
  const clear = element.kind === 'transition' ? ([before, after] as const) : both(acrossOf(element.section));
  const lining = element.kind === 'duct' || element.kind === 'bend' ? (element.lining?.thickness ?? 0) : 0;
  const half = Math.max(...clear) / 2 + lining;
  const reach = element.kind === 'grille' || element.kind === 'cowl' ? half * 1.2 : half;
  return { element, length, above: reach, below: reach, drop: 0, clear, lining };
};

const both = (value: number): readonly [number, number] => [value, value];

const endAcross = (element: VentElement | undefined, which: 0 | 1): number | null => {
  if (!element || element.kind === 'transition') return null;
  return acrossOf(element.kind === 'box' ? element.box.ports[which].section : element.section);
};

/** Measures of all parts, and how far they reach above and below the first axis, m. */
const measure = (elements: readonly VentElement[]) => {
  const parts = elements.map((element, i) => {
    const own = element.kind === 'transition' ? acrossOf(element.section) : 0;
    return measured(element, endAcross(elements[i - 1], 1) ?? own, endAcross(elements[i + 1], 0) ?? own);
  });
  let axis = 0;
  let [above, below] = [0.05, 0.05];
  const axes = parts.map((part) => {
    const at = axis;
    above = Math.max(above, part.above - at);
    below = Math.max(below, part.below + at);
    axis += part.drop;
    return at;
  });
  return { parts, axes, above, below };
};

const drawn = (part: Measured, scale: number): number => Math.max(LEAST_WIDTH, part.length * scale);

/** The largest scale at which a vent fits into a space. */
export const ventScale = (elements: readonly VentElement[], space: Box): number => {
  const { parts, above, below } = measure(elements);
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
  const { parts, axes, above, below } = measure(elements);
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
