import { describe, expect, it } from 'vitest';
import { boxSheet } from '../../../renderer/drawings/boxSheet.ts';
import type { VentBox } from '../../../src/engine/openings/index.ts';

const round = { shape: 'round', diameter: 0.16 } as const;
const box: VentBox = {
  length: 1.8,
  width: 0.7,
  height: 0.25,
  partitions: [
    { at: 0.441, thickness: 0.012, gap: 0.18, side: 'N' },
    { at: 0.894, thickness: 0.012, gap: 0.18, side: 'S' },
  ],
  lining: { thickness: 0.075, airflowResistivity: 10_000, faces: false },
  ports: [
    { side: 'W', at: 0.35, across: 0, section: round },
    { side: 'N', at: 1.5, across: 0, section: round },
  ],
};
const most = { width: 660, height: 330 };
const sheet = boxSheet(box, 0.033, most);
const scale = sheet.view.scale;

describe('plan of a box to saw by', () => {
  it('stays within its space with casing and figures', () => {
    expect(sheet.height).toBeLessThanOrEqual(most.height + 1e-9);
    expect(sheet.outer.x).toBeGreaterThan(80);
    expect(sheet.outer.x + sheet.outer.width).toBeLessThan(most.width - 80);
    expect(sheet.outer.width).toBeCloseTo(1.866 * scale, 6);
    expect(sheet.outer.height).toBeCloseTo(0.766 * scale, 6);
  });

  it('measures every partition from the left end, and each duct along its own edge', () => {
    const values = (edge: string) => sheet.rulers.find((it) => it.edge === edge)?.marks.map(({ value }) => value);
    expect(values('below')).toEqual([0, 0.441, 0.894, 1.8]);
    expect(values('left')).toEqual([0, 0.35, 0.7]);
    expect(values('above')).toEqual([0, 1.5, 1.8]);
    expect(values('right')).toBeUndefined();
  });

  it('draws each gap as long as it is, between tip and lining', () => {
    for (const gap of sheet.gaps) expect(Math.abs(gap.to - gap.from)).toBeCloseTo(0.18 * scale, 6);
    // the far side is above: the first gap lies there, the second at the near side
    expect(sheet.gaps[0]?.to).toBeLessThan(sheet.gaps[1]?.to ?? 0);
  });

  it('draws ducts as wide as they are, through the casing', () => {
    expect(sheet.ducts[0].box.height).toBeCloseTo(0.16 * scale, 6);
    expect(sheet.ducts[0].box.width).toBeCloseTo(0.033 * scale, 6);
    expect(sheet.ducts[1].box.width).toBeCloseTo(0.16 * scale, 6);
  });
});
