import { bestNetLabels, type WantedNetLabel } from '../../drawings/netLabels.ts';
import type { Net, NetScale } from '../../drawings/net.ts';
import { boxOnSheet, overlap, type SheetBox } from '../../drawings/netTurn.ts';
import type { PartFigure } from './partFigures.ts';

/** What is written on the net about a part, and where (px). */
export interface NetText {
  readonly id: string;
  readonly lines: readonly NetLine[];
  readonly limits: boolean;
  readonly size: number;
  readonly box: SheetBox;
  /** the whole name where it is cut; null where it is written out */
  readonly cutFrom: string | null;
  /** stands on a dense hatch, so that it needs a plate behind it */
  readonly onHatch: boolean;
}
export interface NetLine {
  readonly text: string;
  readonly strong: boolean;
}

const SURFACE = 13;
const OPENING = 11.5;
const LEADING = 1.18;

const figuresOf = (figure: PartFigure | undefined): string =>
  figure ? [figure.reduction, figure.percent].filter((it) => it !== null).join(' · ') : '';

interface Written extends WantedNetLabel {
  readonly lines: readonly NetLine[];
  readonly limits: boolean;
  readonly size: number;
  readonly cutFrom: string | null;
}

/** Width of a text in the drawing face, a little on the wide side; measured on names of usual length. */
const PER_LETTER = 0.44;
export const netTextWidth = (text: string, size: number): number => text.length * size * PER_LETTER;
const cut = (text: string, width: number, size: number): string => {
  const most = Math.floor(width / (size * PER_LETTER));
  return text.length <= most ? text : `${text.slice(0, Math.max(1, most - 1)).trimEnd()}…`;
};

/** Words in at most two lines no wider than the width; the second is cut where there is more. */
const wrapped = (text: string, width: number, size: number): string[] => {
  const lines = text.split(' ').reduce<string[]>((before, word) => {
    const last = before.at(-1);
    if (last === undefined || netTextWidth(`${last} ${word}`, size) > width) return [...before, word];
    return [...before.slice(0, -1), `${last} ${word}`];
  }, []);
  const [first = '', ...rest] = lines;
  return rest.length === 0 ? [first] : [first, rest.length > 1 ? cut(rest.join(' '), width, size) : (rest[0] ?? '')];
};

/** Names are broken no narrower and no wider than this, px; those of openings beside them. */
const [NARROWEST, WIDEST] = [78, 150];
const BESIDE = 110;
/** In the end a name is cut to this: enough to tell its neighbours apart, px. */
const SHORTEST = 46;

/** Wordings of a name, fullest first: broken, then cut, then cut to what its home has room for. */
const wordingsOf = (name: string, size: number, own: boolean, home: SheetBox): readonly (readonly string[])[] => {
  const room = Math.min(WIDEST, Math.max(own ? NARROWEST : BESIDE, home.width - 6));
  const last = own ? Math.max(SHORTEST, Math.min(room, home.width - 6)) : SHORTEST;
  return [
    wrapped(name, room, size),
    ...(own ? [] : [wrapped(name, NARROWEST, size)]),
    [cut(name, own ? room : NARROWEST, size)],
    [cut(name, last, size)],
  ];
};

const written = (
  id: string,
  name: string,
  figure: PartFigure | undefined,
  size: number,
  home: SheetBox,
  within: SheetBox,
): readonly Written[] => {
  const limits = figure?.limiting ?? false;
  const own = home === within;
  const figures = [figuresOf(figure)].filter((text) => text !== '').map((text) => ({ text, strong: false }));
  const last = limits ? [{ text: 'limits', strong: true }] : [];
  const names = wordingsOf(name, size, own, home).map((lines) => lines.map((text) => ({ text, strong: true })));
  const wordings = [
    ...names.map((lines) => [...lines, ...figures, ...last]),
    ...names.map((lines) => [...lines, ...last]),
  ];
  return wordings.map((lines) => {
    const width = Math.max(...lines.map(({ text }) => netTextWidth(text, size))) + 4;
    const height = lines.length * size * LEADING + 2;
    const where = !own && (home.width < width || home.height < height) ? 'beside' : 'inside';
    const cutFrom = lines.some(({ text }) => text.endsWith('…')) ? name : null;
    return { id, lines, limits, size, cutFrom, home, within, where, width, height };
  });
};

/** Box of an opening on the screen; never thinner than can be seen and pressed. */
export const openingBox = (
  surface: Net['surfaces'][number],
  opening: Net['surfaces'][number]['openings'][number],
  scale: NetScale,
  least = 0,
): SheetBox => {
  const height = opening.shape === 'line' ? 0 : opening.height;
  const box = scale.boxOnScreen(boxOnSheet(surface.lie, opening, opening.width, height));
  const grow = (size: number): number => Math.max(0, least - size) / 2;
  const [x, y] = [grow(box.width), grow(box.height)];
  return { x: box.x - x, y: box.y - y, width: box.width + 2 * x, height: box.height + 2 * y };
};

/** Lines that no text but the surface's own should touch: its four edges, as thin boxes. */
const edgesOf = (id: string, { x, y, width, height }: SheetBox): readonly (SheetBox & { readonly id: string })[] => {
  const thin = 3;
  const edges = [
    { x, y: y - thin / 2, width, height: thin },
    { x, y: y + height - thin / 2, width, height: thin },
    { x: x - thin / 2, y, width: thin, height },
    { x: x + width - thin / 2, y, width: thin, height },
  ];
  return edges.map((box) => ({ ...box, id }));
};

/** Names and figures of all parts, placed so that they do not cover one another. */
export const netTexts = (
  net: Net,
  scale: NetScale,
  figures: ReadonlyMap<string, PartFigure>,
  sheet: SheetBox,
): readonly NetText[] => {
  const openings = net.surfaces.flatMap((surface) =>
    surface.openings.map((opening) => ({
      id: opening.id,
      opening,
      box: openingBox(surface, opening, scale, 6),
      within: scale.boxOnScreen(surface.box),
    })),
  );
  const small = openings.toSorted((a, b) => a.box.width * a.box.height - b.box.width * b.box.height);
  const ofOpenings = (order: typeof openings): readonly (readonly Written[])[] =>
    order.map(({ id, opening, box, within }) => written(id, opening.entry.name, figures.get(id), OPENING, box, within));
  const ofSurfaces = net.surfaces.map(({ entry, box }) => {
    const home = scale.boxOnScreen(box);
    return written(entry.id, entry.name, figures.get(entry.id), SURFACE, home, home);
  });
  const orders = [openings, small, openings.toReversed()].map((order) => [...ofOpenings(order), ...ofSurfaces]);
  const obstacles = [
    ...openings.map(({ id, box }) => ({ ...box, id })),
    ...net.surfaces.flatMap(({ entry, box }) => edgesOf(entry.id, scale.boxOnScreen(box))),
  ];
  return bestNetLabels(orders, obstacles, sheet).map(({ label: { id, lines, limits, size, cutFrom, home }, box }) => {
    const onIt = overlap(box, home) > 0.5 * box.width * box.height;
    return { id, lines, limits, size, cutFrom, box, onHatch: onIt && (limits || (figures.get(id)?.step ?? 0) >= 2) };
  });
};
