import { describe, expect, it } from 'vitest';
import boatStore from '../../../assets/examples/boat-store.json' with { type: 'json' };
import { fitNet, net as unfold } from '../../../renderer/drawings/net.ts';
import { overlap, type SheetBox } from '../../../renderer/drawings/netTurn.ts';
import { netTexts } from '../../../renderer/views/layOut/netTexts.ts';
import type { PartFigure } from '../../../renderer/views/layOut/partFigures.ts';
import { checkProject } from '../../../src/project/check.ts';
import type { Project } from '../../../src/project/schema.ts';

const checked = checkProject(boatStore);
if (!checked.ok) throw new Error('the example must be in order');

/** The example with sockets in its west gable, which is crowded then. */
const crowded: Project = {
  ...checked.project,
  surfaces: checked.project.surfaces.map((surface) =>
    surface.id === 'west'
      ? {
          ...surface,
          openings: [
            ...(surface.openings ?? []),
            {
              id: 'sockets',
              name: 'Sockets by the bench',
              kind: 'service',
              width_m: 0.4,
              height_m: 0.3,
              x_m: 2,
              y_m: 0.3,
            },
          ],
        }
      : surface,
  ),
};
const figures = new Map(
  crowded.surfaces
    .flatMap((surface) => [surface, ...(surface.openings ?? [])])
    .map(({ id }) => [id, { reduction: 'Rw 54', percent: '< 1 %', step: 0, limiting: id === 'vent-in' } as PartFigure]),
);

/** Names on a drawing as wide as that of a window 1280 px wide, or narrower. */
const textsAt = (width: number, height: number) => {
  const net = unfold(crowded.surfaces, (width - 90) / (height - 80));
  const scale = fitNet(net.bounds, width, height, { left: 72, right: 16, top: 14, bottom: 52 });
  const bounds = scale.boxOnScreen(net.bounds);
  const sheet: SheetBox = { x: bounds.x - 11, y: bounds.y - 11, width: bounds.width + 22, height: bounds.height + 22 };
  const surfaces = net.surfaces.map(({ entry, box }) => ({ id: entry.id, box: scale.boxOnScreen(box) }));
  return { texts: netTexts(net, scale, figures, sheet), surfaces };
};

describe('names on the net', () => {
  it.each([
    [782, 536],
    [680, 480],
  ])('cross no edge of a surface, also on crowded gables, at %d x %d px', (width, height) => {
    const { texts, surfaces } = textsAt(width, height);
    const crossing = texts.filter(({ box }) => {
      const area = box.width * box.height;
      return surfaces.some((surface) => {
        const share = overlap(box, surface.box) / area;
        return share > 0.01 && share < 0.99;
      });
    });
    expect(crossing.map(({ id }) => id)).toEqual([]);
    expect(texts).toHaveLength(figures.size);
  });

  it('keep the whole of a name that is cut', () => {
    const { texts } = textsAt(680, 480);
    const cut = texts.filter(({ cutFrom }) => cutFrom !== null);
    expect(cut.length).toBeGreaterThan(0);
    for (const { cutFrom, lines } of cut) {
      const [first = ''] = lines.map(({ text }) => text);
      expect(cutFrom?.startsWith(first.replace('…', '').trimEnd())).toBe(true);
    }
    expect(texts.find(({ id }) => id === 'floor')?.cutFrom).toBeNull();
  });
});
