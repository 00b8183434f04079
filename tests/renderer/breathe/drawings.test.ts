import { describe, expect, it } from 'vitest';
import { liningRects, partitionRect, planView, portPlace, portWidth } from '../../../renderer/drawings/boxPlan.ts';
import { pulledBox, resizedBox } from '../../../renderer/drawings/boxPlanMoves.ts';
import { mostOf, planeFrame, planePath, valueOn } from '../../../renderer/drawings/airCharts.ts';
import { fieldDrawing, fieldLevels, FIELD_STEP } from '../../../renderer/drawings/pressureField.ts';
import { dropPlace, layoutVent, ventScale, zonesOf } from '../../../renderer/drawings/ventPath.ts';
import { pulledElement, steppedElement } from '../../../renderer/drawings/ventPathMoves.ts';
import { boxFaults, ventBoxGeometry } from '../../../src/engine/openings/index.ts';
import { box, elements } from './vents.ts';

const space = { x: 40, y: 20, width: 560, height: 180 };

describe('a vent drawn to scale', () => {
  const drawing = layoutVent(elements, space);
  it('fits its space, parts end to end', () => {
    expect(drawing.right).toBeLessThanOrEqual(space.x + space.width);
    drawing.pieces.slice(1).forEach((piece, i) => {
      const before = drawing.pieces[i];
      expect(piece.x).toBeCloseTo((before?.x ?? 0) + (before?.width ?? 0), 9);
      expect(piece.axisIn).toBeCloseTo(before?.axisOut ?? 0, 9);
    });
  });
  it('draws box and duct in one scale, and says which parts are signs', () => {
    const [grille, drawnBox, duct] = drawing.pieces;
    expect((drawnBox?.width ?? 0) / 1.2).toBeCloseTo(drawing.scale, 9);
    expect((duct?.width ?? 0) / 0.3).toBeCloseTo(drawing.scale, 9);
    expect([grille?.sign, drawnBox?.sign, duct?.sign]).toEqual([true, false, false]);
  });
  it('puts the wall behind the parts that stand in it and takes parts after it as outside', () => {
    expect(drawing.wall).toEqual({ x: drawing.pieces[2]?.x, width: drawing.pieces[2]?.width });
    expect(zonesOf(elements)).toEqual(['inside', 'inside', 'wall', 'outside']);
  });
  it('leads the axis down to a port that lies nearer', () => {
    const lower = { ...box, ports: [box.ports[0], { ...box.ports[1], at: 0.1 }] as const };
    const piece = layoutVent([{ ...elements[1], box: lower } as (typeof elements)[number]], space, 200).pieces[0];
    expect((piece?.axisOut ?? 0) - (piece?.axisIn ?? 0)).toBeCloseTo(0.1 * 200, 9);
  });
  it('keeps its scale while something is dragged', () => {
    expect(layoutVent(elements, space, 100).scale).toBe(100);
    expect(ventScale(elements, space)).toBeGreaterThan(100);
  });
  it('counts the place of a dropped part without itself', () => {
    expect(dropPlace(drawing, 0, drawing.right)).toBe(3);
    expect(dropPlace(drawing, 3, drawing.left)).toBe(0);
  });
  it('lets a duct be pulled to whole centimetres, and round ones only take sizes that are sold', () => {
    const duct = elements[2];
    if (!duct) throw new Error('no duct');
    expect(pulledElement(duct, 'length', 0.5249)).toMatchObject({ length: 0.52 });
    expect(pulledElement(duct, 'across', 0.13)).toMatchObject({ section: { diameter: 0.125 } });
    expect(steppedElement(duct, 'across', 1)).toMatchObject({ section: { diameter: 0.125 } });
    expect(steppedElement(duct, 'length', -1)).toMatchObject({ length: 0.25 });
  });
});

describe('the plan of a box', () => {
  const view = planView(box, space);
  it('turns plan into sheet and back, near side below', () => {
    const at = view.point(0.3, 0.1);
    expect(view.plan(at.x, at.y).x).toBeCloseTo(0.3, 9);
    expect(view.plan(at.x, at.y).y).toBeCloseTo(0.1, 9);
    expect(view.point(0, 0).y).toBeGreaterThan(view.point(0, 0.4).y);
  });
  it('draws the partitions and linings that the wave solution works with', () => {
    const geometry = ventBoxGeometry(box);
    expect(geometry.solids).toHaveLength(2);
    geometry.solids.forEach((solid, i) => {
      const drawn = partitionRect(box, i);
      for (const key of ['x0', 'y0', 'x1', 'y1'] as const) expect(drawn[key]).toBeCloseTo(solid[key], 9);
    });
    const area = (list: readonly { x0: number; x1: number; y0: number; y1: number }[]): number => {
      const covered = new Set<string>();
      for (const { x0, x1, y0, y1 } of list)
        for (let i = Math.round(x0 * 1000); i < Math.round(x1 * 1000); i += 1)
          for (let j = Math.round(y0 * 1000); j < Math.round(y1 * 1000); j += 1) covered.add(`${i} ${j}`);
      return covered.size;
    };
    const porous = geometry.linings.filter(({ filling }) => filling.kind === 'porous');
    expect(area(liningRects(box))).toBe(area(porous));
    expect(portWidth(box, box.ports[0])).toBeCloseTo((Math.PI * 0.05 ** 2) / 0.15, 9);
  });
  it('moves a partition by 5 mm steps and never through its neighbour or the end', () => {
    const grip = { what: 'partition', index: 0 } as const;
    expect(pulledBox(box, grip, 0.3121 + 0.009, 0).partitions[0]?.at).toBe(0.31);
    for (const x of [-1, 0.7, 3]) expect(boxFaults(ventBoxGeometry(pulledBox(box, grip, x, 0)))).toEqual([]);
  });
  it('moves a tip: the gap is what is left before the lining', () => {
    expect(pulledBox(box, { what: 'tip', index: 0 }, 0, 0.25).partitions[0]?.gap).toBe(0.125);
    expect(pulledBox(box, { what: 'tip', index: 1 }, 0, 0.25).partitions[1]?.gap).toBe(0.225);
    expect(pulledBox(box, { what: 'tip', index: 0 }, 0, 9).partitions[0]?.gap).toBe(0.02);
  });
  it('hangs a port on the side it is brought to, and never over a corner', () => {
    const moved = pulledBox(box, { what: 'port', index: 1 }, 1.0, 0.39).ports[1];
    expect([moved.side, moved.at]).toEqual(['N', 1]);
    expect(portPlace(box, moved)).toEqual({ x: 1, y: 0.4 });
    const corner = pulledBox(box, { what: 'port', index: 0 }, 0.001, 0.399).ports[0];
    expect(corner.at).toBeCloseTo(0.4 - portWidth(box, corner) / 2, 9);
  });
  it('keeps the partitions at their share of a box made longer', () => {
    const longer = resizedBox(box, 'length', 2.4);
    expect(longer.partitions.map(({ at }) => at)).toEqual([0.809, 1.609]);
  });
});

describe('the pressure field as ink', () => {
  const field = {
    x: [0, 0.1, 0.2],
    y: [0, 0.1, 0.2],
    re: Float64Array.from([1, 1, 1, 0.25, 0.25, 0.25, 0.01, 0.01, 0]),
    im: new Float64Array(9),
    open: Uint8Array.from([1, 1, 1, 1, 1, 1, 1, 1, 0]),
  };
  const area = { x: 0, y: 0, width: 200, height: 200 };
  it('is told in decibels below the loudest place, nothing inside boards', () => {
    expect([...fieldLevels(field)].map((level) => Math.round(level))).toEqual([0, 0, 0, -12, -12, -12, -40, -40, NaN]);
  });
  it('is darkest where it is loudest, and quieter steps lie under louder ones', () => {
    const { shades } = fieldDrawing(field, area);
    expect(shades.map(({ step }) => step)).toEqual([5, 4, 3, 2, 1, 0]);
    const seen = shades.reduce((through, { ink }) => through * (1 - ink), 1);
    expect(1 - seen).toBeCloseTo(0.62, 9);
  });
  it(`draws a line where the level falls through ${FIELD_STEP} dB`, () => {
    // from 0 to 20 lg 0.25 = −12.04 dB within 100 px
    expect(fieldDrawing(field, area).lines).toMatch(/M49\.8,\d+L49\.8,\d+/);
  });
});

describe('an air chart', () => {
  const series = [
    {
      label: 'fan on',
      points: [
        [0, 420],
        [60, 1020],
      ],
    },
    {
      label: 'fan off',
      points: [
        [0, 420],
        [60, 4420],
      ],
    },
  ] as const;
  it('begins at zero and ends over what is drawn', () => {
    const frame = planeFrame(
      { width: 400, height: 240, labels: 80 },
      mostOf(series, [{ value: 5000, label: 'limit' }]),
    );
    expect(frame.y(0)).toBe(frame.bottom);
    expect(frame.most.y).toBeGreaterThanOrEqual(5000);
    expect(frame.x(60)).toBeCloseTo(frame.right, 6);
    expect(planePath(series[0], frame).startsWith('M44,')).toBe(true);
  });
  it('reads between the points, and nothing beyond them', () => {
    expect(valueOn(series[0], 30)).toBe(720);
    expect(valueOn(series[0], 61)).toBeNull();
  });
});
