import { overlap, type SheetBox } from './netTurn.ts';

/** A label to be placed: its size and the places it would like, best first (px). */
export interface WantedNetLabel {
  readonly id: string;
  readonly width: number;
  readonly height: number;
  readonly home: SheetBox;
  /** the surface it belongs to: a label keeps inside it where it can */
  readonly within: SheetBox;
  /** inside its home, or beside it when it does not fit there */
  readonly where: 'inside' | 'beside';
}

const contains = (inner: SheetBox, outer: SheetBox): boolean =>
  overlap(inner, outer) >= inner.width * inner.height - 1e-6;

const insidePlaces = (label: WantedNetLabel): SheetBox[] => {
  const { home, width, height } = label;
  const spots = [0.5, 0.3, 0.7, 0.12, 0.88, 0, 1];
  return spots.flatMap((down) =>
    spots.map((across) => ({
      x: home.x + across * (home.width - width),
      y: home.y + down * (home.height - height),
      width,
      height,
    })),
  );
};

/** Clear of the lines of the surface it stands on, px. */
const OFF_EDGE = 4;

/** The place moved into the surface where it is near it. */
const movedIn = (place: SheetBox, { x, y, width, height }: SheetBox): SheetBox => ({
  ...place,
  x: Math.max(x + OFF_EDGE, Math.min(x + width - OFF_EDGE - place.width, place.x)),
  y: Math.max(y + OFF_EDGE, Math.min(y + height - OFF_EDGE - place.height, place.y)),
});

/** To the right, to the left, above and below, each straight beside it first, then shifted along, then moved inside. */
const besidePlaces = ({ home, within, width, height }: WantedNetLabel): SheetBox[] => {
  const centreX = home.x + home.width / 2 - width / 2;
  const centreY = home.y + home.height / 2 - height / 2;
  const shifts = [0, -0.25, 0.25, -0.5, 0.5, -0.8, 0.8];
  const sides = [home.x + home.width + 4, home.x - width - 4];
  const ends = [home.y - height - 2, home.y + home.height + 2];
  const places = [
    ...shifts.flatMap((shift) => sides.map((x) => ({ x, y: centreY + shift * height, width, height }))),
    ...shifts.flatMap((shift) => ends.map((y) => ({ x: centreX + shift * width, y, width, height }))),
  ];
  return [...places, ...places.map((place) => movedIn(place, within))];
};

export interface PlacedNetLabel<L extends WantedNetLabel> {
  readonly label: L;
  readonly box: SheetBox;
  /** what it covers that it should not, px², and for each wording it is shorter than its fullest as much as a crossing */
  readonly fault: number;
}

/** A shorter wording counts as much as a small crossing, px². */
const SHORTER = 20;

/** Less than this is not seen as covering, px². */
const UNSEEN = 1;

/**
 * Places labels one after the other where they cover neither each other nor an obstacle; where there is no such place,
 * the next shorter wording is tried, and in the end the one that covers least is taken.
 * @param labels for each part its wordings, fullest first
 * @param sheet where labels may stand; left only by a label that has no place on it
 */
export const placeNetLabels = <L extends WantedNetLabel>(
  labels: readonly (readonly L[])[],
  obstacles: readonly (SheetBox & { readonly id: string })[],
  sheet: SheetBox,
): readonly PlacedNetLabel<L>[] => {
  const placed: PlacedNetLabel<L>[] = [];
  const covered = (label: L, place: SheetBox): number =>
    placed.reduce((sum, { box }) => sum + 3 * overlap(place, box), 0) +
    obstacles.reduce((sum, box) => sum + (box.id === label.id ? 0 : 2 * overlap(place, box)), 0) +
    0.25 * (place.width * place.height - overlap(place, label.within));
  for (const wordings of labels) {
    let best: PlacedNetLabel<L> | undefined;
    let least = Infinity;
    for (const [shorter, label] of wordings.entries()) {
      const fits = label.home.width >= label.width && label.home.height >= label.height;
      const places = [
        ...(label.where === 'inside' || fits ? insidePlaces(label) : []),
        ...(label.where === 'inside' ? [] : besidePlaces(label)),
      ];
      const kept = places.filter((place) => contains(place, sheet));
      for (const box of kept.length > 0 ? kept : places) {
        const cover = covered(label, box);
        if (cover < least - 1e-6) [best, least] = [{ label, box, fault: cover + SHORTER * shorter }, cover];
        if (least < 1e-6) break;
      }
      if (least < UNSEEN) break;
    }
    if (best) placed.push(best);
  }
  return placed;
};

/** The best of several orders in which labels may be placed: the one with least fault in all. */
export const bestNetLabels = <L extends WantedNetLabel>(
  orders: readonly (readonly (readonly L[])[])[],
  obstacles: readonly (SheetBox & { readonly id: string })[],
  sheet: SheetBox,
): readonly PlacedNetLabel<L>[] => {
  const faultOf = (placed: readonly PlacedNetLabel<L>[]): number => placed.reduce((sum, { fault }) => sum + fault, 0);
  return orders
    .map((labels) => placeNetLabels(labels, obstacles, sheet))
    .reduce<readonly PlacedNetLabel<L>[]>(
      (best, placed, i) => (i === 0 || faultOf(placed) < faultOf(best) - 1e-6 ? placed : best),
      [],
    );
};
