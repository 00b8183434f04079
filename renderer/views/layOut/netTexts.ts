import { textWidth } from '../../drawings/chartLabels.ts';
import { placeNetLabels, type WantedNetLabel } from '../../drawings/netLabels.ts';
import type { Net, NetScale } from '../../drawings/net.ts';
import { boxOnSheet, type SheetBox } from '../../drawings/netTurn.ts';
import type { PartFigure } from './partFigures.ts';

/** What is written on the net about a part, and where (px). */
export interface NetText {
  readonly id: string;
  readonly name: string;
  readonly figures: string;
  readonly limits: boolean;
  readonly size: number;
  readonly box: SheetBox;
}

const SURFACE = 13;
const OPENING = 11.5;
const LEADING = 1.18;

const figuresOf = (figure: PartFigure | undefined): string =>
  figure ? [figure.reduction, figure.percent].filter((it) => it !== null).join(' · ') : '';

interface Written extends WantedNetLabel {
  readonly name: string;
  readonly figures: string;
  readonly limits: boolean;
  readonly size: number;
}

const written = (
  id: string,
  name: string,
  figure: PartFigure | undefined,
  size: number,
  home: SheetBox,
  where: 'inside' | 'beside',
): Written => {
  const figures = figuresOf(figure);
  const limits = figure?.limiting ?? false;
  const lines = [name, figures, limits ? 'limits' : ''].filter((line) => line !== '');
  const width = Math.max(...lines.map((line) => textWidth(line, size))) + 4;
  return { id, name, figures, limits, size, home, where, width, height: lines.length * size * LEADING + 2 };
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

/** Names and figures of all parts, placed so that they do not cover one another. */
export const netTexts = (
  net: Net,
  scale: NetScale,
  figures: ReadonlyMap<string, PartFigure>,
  sheet: SheetBox,
): readonly NetText[] => {
  const openings = net.surfaces.flatMap((surface) =>
    surface.openings.map((opening) => ({ id: opening.id, opening, box: openingBox(surface, opening, scale, 6) })),
  );
  const wanted = [
    ...openings.map(({ id, opening, box }) =>
      written(id, opening.entry.name, figures.get(id), OPENING, box, opening.shape === 'panel' ? 'inside' : 'beside'),
    ),
    ...net.surfaces.map(({ entry, box }) =>
      written(entry.id, entry.name, figures.get(entry.id), SURFACE, scale.boxOnScreen(box), 'inside'),
    ),
  ].map((label) =>
    label.where === 'inside' && (label.home.width < label.width || label.home.height < label.height)
      ? { ...label, where: 'beside' as const }
      : label,
  );
  const obstacles = openings.map(({ id, box }) => ({ ...box, id }));
  const placed = placeNetLabels(wanted, obstacles, sheet);
  return wanted.flatMap(({ id, name, figures: text, limits, size }) => {
    const box = placed.get(id);
    return box ? [{ id, name, figures: text, limits, size, box }] : [];
  });
};
