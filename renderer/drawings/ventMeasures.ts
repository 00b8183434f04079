import type { VentElement } from '../../src/engine/openings/index.ts';
import type { Section } from '../../src/engine/quantities/index.ts';

/** Lengths of parts that have none in the document, m: drawn as signs. */
const SIGN_LENGTH: Readonly<Partial<Record<VentElement['kind'], number>>> = {
  grille: 0.03,
  mesh: 0.01,
  fan: 0.16,
  cowl: 0.12,
};

/** How wide a section is seen from above, m. */
export const acrossOf = (section: Section): number => (section.shape === 'round' ? section.diameter : section.width);

/** Length of a part along the path, m. */
export const lengthOf = (element: VentElement): number => {
  if (element.kind === 'duct' || element.kind === 'transition') return element.length;
  if (element.kind === 'box') return element.box.length;
  if (element.kind === 'bend') return Math.max(0.08, acrossOf(element.section));
  return SIGN_LENGTH[element.kind] ?? 0.05;
};

/** Whether a part is drawn as a sign, not to scale along the path. */
export const isSign = ({ kind }: VentElement): boolean => kind in SIGN_LENGTH || kind === 'bend';

/** Height of a port over the near side of its box, m. */
const portHeight = (box: Extract<VentElement, { kind: 'box' }>['box'], which: 0 | 1): number => {
  const { side, at, across } = box.ports[which];
  if (side === 'W' || side === 'E') return at;
  return side === 'S' ? 0 : side === 'N' ? box.width : across;
};

/** Measures of one part. */
export interface PieceMeasures {
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

const measured = (element: VentElement, before: number, after: number): PieceMeasures => {
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
export const ventMeasures = (elements: readonly VentElement[]) => {
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
