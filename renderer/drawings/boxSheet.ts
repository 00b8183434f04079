import type { VentBox, VentPort } from '../../src/engine/openings/index.ts';
import type { Section } from '../../src/engine/quantities/index.ts';
import { partitionRect, planView, portPlace, type PlanView } from './boxPlan.ts';
import type { Box } from './section.ts';
import { acrossOf } from './ventMeasures.ts';

/** Marks along one edge of the plan, each measured from the same end. */
export interface Ruler {
  readonly edge: 'below' | 'above' | 'left' | 'right';
  /** px along the edge, and m from the left end or the near side */
  readonly marks: readonly { readonly at: number; readonly value: number }[];
}

/** Clear way past the tip of a partition. */
export interface GapMeasure {
  readonly x: number;
  readonly from: number;
  readonly to: number;
  /** m */
  readonly value: number;
}

/** Where a duct comes in, as wide as it is. */
export interface DuctHole {
  /** 0 towards the room, 1 outwards */
  readonly which: 0 | 1;
  readonly side: VentPort['side'];
  readonly section: Section;
  readonly box: Box;
  readonly middle: { readonly x: number; readonly y: number };
}

/** The plan of a box on paper, px, to be built by. */
export interface BoxSheet {
  readonly width: number;
  readonly height: number;
  readonly view: PlanView;
  /** outside of the casing */
  readonly outer: Box;
  readonly rulers: readonly Ruler[];
  readonly gaps: readonly GapMeasure[];
  readonly ducts: readonly [DuctHole, DuctHole];
}

/** Room for figures round the plan, and for the words of a duct above or below it, px. */
const BESIDE = 92;
const FIGURES = 54;
const WORDS = 24;

const roomFor = ({ ports }: VentBox): { readonly above: number; readonly below: number } => {
  const at = (side: VentPort['side']): number => FIGURES + (ports.some((port) => port.side === side) ? WORDS : 0);
  return { above: at('N'), below: at('S') };
};

const ductHole = (box: VentBox, which: 0 | 1, view: PlanView, casing: number): DuctHole => {
  const { side, section } = box.ports[which];
  const place = portPlace(box, box.ports[which]);
  const middle = view.point(place.x, place.y);
  const size = acrossOf(section) * view.scale;
  const half = size / 2;
  const down = section.shape === 'round' ? size : section.height * view.scale;
  const upright = { y: middle.y - half, width: casing, height: size };
  const lying = { x: middle.x - half, width: size, height: casing };
  const holes: Readonly<Record<VentPort['side'], Box>> = {
    W: { x: view.box.x - casing, ...upright },
    E: { x: view.box.x + view.box.width, ...upright },
    S: { y: view.box.y + view.box.height, ...lying },
    N: { y: view.box.y - casing, ...lying },
    face: { x: middle.x - half, y: middle.y - down / 2, width: size, height: down },
  };
  return { which, side, section, box: holes[side], middle };
};

const rulersOf = (box: VentBox, view: PlanView): readonly Ruler[] => {
  const along = (value: number) => ({ at: view.point(value, 0).x, value });
  const across = (value: number) => ({ at: view.point(0, value).y, value });
  const of = (...sides: readonly VentPort['side'][]): readonly VentPort[] =>
    box.ports.filter(({ side }) => sides.includes(side));
  const [below, above] = [of('S').map(({ at }) => at), of('N', 'face').map(({ at }) => at)];
  const left = of('W').map(({ at }) => at);
  const right = [...of('E').map(({ at }) => at), ...of('face').map((port) => port.across)];
  const ends = [0, box.length];
  const sides = [0, box.width];
  const ruler = (edge: Ruler['edge'], values: readonly number[]): Ruler => ({
    edge,
    marks: values.toSorted((a, b) => a - b).map(edge === 'below' || edge === 'above' ? along : across),
  });
  return [
    ruler('below', [...ends, ...box.partitions.map(({ at }) => at), ...below]),
    ruler('left', [...sides, ...left]),
    ...(above.length > 0 ? [ruler('above', [...ends, ...above])] : []),
    ...(right.length > 0 ? [ruler('right', [...sides, ...right])] : []),
  ];
};

const gapOf = (box: VentBox, index: number, view: PlanView): GapMeasure => {
  const { x1, y0, y1 } = partitionRect(box, index);
  const t = box.lining?.thickness ?? 0;
  const [tip, lining] = box.partitions[index]?.side === 'N' ? [y1, box.width - t] : [y0, t];
  const at = view.point(x1, tip);
  return { x: at.x, from: at.y, to: view.point(0, lining).y, value: box.partitions[index]?.gap ?? 0 };
};

/**
 * Lays the plan of a box out for paper, seen from above, near side below.
 * @param box inside, m
 * @param casing thickness of its boards, m
 * @param most width and height it may take, px
 */
export const boxSheet = (
  box: VentBox,
  casing: number,
  most: { readonly width: number; readonly height: number },
): BoxSheet => {
  const { above, below } = roomFor(box);
  const scale = Math.min(
    (most.width - 2 * BESIDE) / (box.length + 2 * casing),
    (most.height - above - below) / (box.width + 2 * casing),
  );
  const thick = casing * scale;
  const height = (box.width + 2 * casing) * scale + above + below;
  const space = {
    x: BESIDE,
    y: above + thick,
    width: most.width - 2 * BESIDE,
    height: box.width * scale,
  };
  const view = planView(box, space, scale);
  return {
    width: most.width,
    height,
    view,
    outer: {
      x: view.box.x - thick,
      y: view.box.y - thick,
      width: view.box.width + 2 * thick,
      height: view.box.height + 2 * thick,
    },
    rulers: rulersOf(box, view),
    gaps: box.partitions.map((_, index) => gapOf(box, index, view)),
    ducts: [ductHole(box, 0, view, thick), ductHole(box, 1, view, thick)],
  };
};
