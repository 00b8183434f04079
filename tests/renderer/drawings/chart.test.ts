import { describe, expect, it } from 'vitest';
import { bandAt, bandName, chartFrame, levelRange } from '../../../renderer/drawings/chart.ts';
import { curveEnd, curveRuns, spreadBand } from '../../../renderer/drawings/chartCurves.ts';
import { fitted, placeLabels } from '../../../renderer/drawings/chartLabels.ts';
import { THIRD_OCTAVES } from '../../../src/engine/quantities/index.ts';

const space = { width: 420, height: 480, labels: 60, foot: 30 };
const ramp = THIRD_OCTAVES.map((_, i) => 10 + 2 * i);

describe('the band chart keeps the proportions of IEC 60263', () => {
  for (const height of [200, 300, 480, 700])
    it(`draws a decade as wide as 25 or 50 dB are tall, ${height} px high`, () => {
      const frame = chartFrame({ ...space, height }, THIRD_OCTAVES, ramp);
      const decade = frame.x(1000) - frame.x(100);
      expect(decade).toBeCloseTo(10 * frame.step, 6);
      expect(frame.y(0) - frame.y(frame.aspect)).toBeCloseTo(decade, 6);
      expect([25, 50]).toContain(frame.aspect);
      expect(frame.height).toBeLessThanOrEqual(height + 1e-6);
      expect(frame.width).toBeLessThanOrEqual(space.width + 1e-6);
    });

  it('takes the taller aspect where there is room', () => {
    expect(chartFrame({ ...space, height: 900 }, THIRD_OCTAVES, ramp).aspect).toBe(25);
    expect(chartFrame({ ...space, height: 300 }, THIRD_OCTAVES, ramp).aspect).toBe(50);
  });

  it('holds every level between its first and last gridline', () => {
    expect(levelRange([12, 63.2])).toEqual([0, 70]);
    expect(levelRange([-14, 20])).toEqual([-20, 20]);
    expect(levelRange([NaN])).toEqual([0, 40]);
  });

  it('names bands by their nominal centres and puts octaves first', () => {
    expect([25, 31.5, 1000, 1250, 10000].map(bandName)).toEqual(['25', '31.5', '1k', '1.25k', '10k']);
    const strong = chartFrame(space, THIRD_OCTAVES, ramp).bandTicks.filter((tick) => tick.strong);
    expect(strong.map((tick) => tick.label)).toEqual(['31.5', '63', '125', '250', '500', '1k', '2k', '4k', '8k']);
  });

  it('finds the band under the pointer', () => {
    const frame = chartFrame(space, THIRD_OCTAVES, ramp);
    for (const band of THIRD_OCTAVES) expect(bandAt(frame, frame.x(band))).toBe(band);
    expect(bandAt(frame, -50)).toBe(25);
    expect(bandAt(frame, 5000)).toBe(10000);
  });
});

describe('curves', () => {
  const frame = chartFrame(space, THIRD_OCTAVES, ramp);
  it('are cut where the model leaves its validity', () => {
    const extrapolated = THIRD_OCTAVES.map((band) => (band < 50 ? 'below 50 Hz' : null));
    const runs = curveRuns({ label: 'A', bands: THIRD_OCTAVES, values: ramp, extrapolated }, frame);
    expect(runs.map((run) => run.extrapolated)).toEqual([true, false]);
    expect(curveRuns({ label: 'A', bands: THIRD_OCTAVES, values: ramp }, frame)).toHaveLength(1);
  });
  it('leave out values that are missing rather than drawing them at zero', () => {
    const runs = curveRuns({ label: 'A', bands: [100, 125, 160], values: [20, NaN, 22] }, frame);
    expect(runs).toHaveLength(1);
    expect(runs[0]?.d).not.toContain('NaN');
    expect(curveEnd({ label: 'A', bands: [100], values: [NaN] }, frame)).toBeNull();
  });
  it('keep their likely error on the sheet', () => {
    const d = spreadBand({ label: 'A', bands: [100, 125], values: [1, 2], spread: [50, 50] }, frame);
    const ys = [...d.matchAll(/,(-?[\d.]+)/g)].map((match) => Number(match[1]));
    expect(Math.max(...ys)).toBeLessThanOrEqual(frame.bottom + 1e-3);
    expect(Math.min(...ys)).toBeGreaterThanOrEqual(frame.top - 1e-3);
  });
});

describe('labels', () => {
  it('never touch and stay in the order of their curves', () => {
    const wanted = [50, 52, 51, 200].map((y, i) => ({ text: String(i), anchor: { x: 0, y } }));
    const placed = placeLabels(wanted, 13, 0, 210);
    const sorted = placed.map((label) => label.y).toSorted((a, b) => a - b);
    sorted.slice(1).forEach((y, i) => expect(y - (sorted[i] ?? 0)).toBeGreaterThanOrEqual(13));
    expect(placed.map((label) => label.text)).toEqual(['0', '1', '2', '3']);
    expect((placed[2]?.y ?? 0) > (placed[0]?.y ?? 0)).toBe(true);
  });
  it('stay above the axis when many end at the foot', () => {
    const placed = placeLabels(
      [1, 2, 3].map((y) => ({ text: '', anchor: { x: 0, y: 300 + y } })),
      13,
      0,
      300,
    );
    expect(Math.max(...placed.map((label) => label.y))).toBeLessThanOrEqual(300);
  });
  it('are shortened with an ellipsis only when they do not fit', () => {
    expect(fitted('Brick', 100, 11)).toBe('Brick');
    expect(fitted('Independent lining on brick', 60, 11)).toMatch(/…$/);
  });
});
