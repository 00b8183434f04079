/** Pressure of a fan by flow: points with flow ascending and pressure falling. SI: m³/s, Pa. */
export interface FanCurve {
  readonly flows: readonly number[];
  readonly pressures: readonly number[];
}

/** Slopes that keep a monotone curve monotone. @source Fritsch & Carlson, SIAM J. Numer. Anal. 17 (1980) 238-246 */
const slopes = ({ flows: x, pressures: y }: FanCurve): number[] => {
  const h = (i: number): number => (x[i + 1] ?? 0) - (x[i] ?? 0);
  const d = (i: number): number => ((y[i + 1] ?? 0) - (y[i] ?? 0)) / h(i);
  const last = x.length - 1;
  return x.map((_, i) => {
    if (i === 0) return d(0);
    if (i === last) return d(last - 1);
    const [before, after] = [d(i - 1), d(i)];
    if (before * after <= 0) return 0;
    const [w1, w2] = [2 * h(i) + h(i - 1), h(i) + 2 * h(i - 1)];
    return (w1 + w2) / (w1 / before + w2 / after);
  });
};

/** @throws RangeError for fewer than 2 points, flows that do not ascend or pressures that rise */
export const requireFanCurve = ({ flows, pressures }: FanCurve): void => {
  if (flows.length < 2 || flows.length !== pressures.length)
    throw new RangeError(`fan curve must have at least 2 points, got ${Math.min(flows.length, pressures.length)}`);
  flows.forEach((flow, i) => {
    if (i === 0) return;
    if (!(flow > (flows[i - 1] ?? 0))) throw new RangeError(`flows of a fan curve must ascend, got ${flow} m³/s`);
    if (!((pressures[i] ?? 0) <= (pressures[i - 1] ?? 0)))
      throw new RangeError(`pressures of a fan curve must not rise with flow, got ${pressures[i]} Pa`);
  });
};

/**
 * Pressure of a fan at a flow: monotone cubic between the points, the first value held before them, the last slope
 * carried on behind them (a fan driven beyond its free flow resists).
 * @param curve at least 2 points
 * @param flow m³/s
 * @returns Pa
 * @throws RangeError for a curve that is none
 * @source Fritsch & Carlson, SIAM J. Numer. Anal. 17 (1980) 238-246
 * @example fanPressure({ flows: [0, 0.03], pressures: [60, 0] }, 0.015) // 30
 */
export const fanPressure = (curve: FanCurve, flow: number): number => {
  requireFanCurve(curve);
  const { flows: x, pressures: y } = curve;
  const last = x.length - 1;
  if (flow <= (x[0] ?? 0)) return y[0] ?? 0;
  const m = slopes(curve);
  if (flow >= (x[last] ?? 0)) return (y[last] ?? 0) + Math.min(m[last] ?? 0, 0) * (flow - (x[last] ?? 0));
  const i = x.findIndex((one) => one > flow) - 1;
  const h = (x[i + 1] ?? 0) - (x[i] ?? 0);
  const t = (flow - (x[i] ?? 0)) / h;
  const [y0, y1, m0, m1] = [y[i] ?? 0, y[i + 1] ?? 0, m[i] ?? 0, m[i + 1] ?? 0];
  return (
    (2 * t ** 3 - 3 * t ** 2 + 1) * y0 +
    (t ** 3 - 2 * t ** 2 + t) * h * m0 +
    (-2 * t ** 3 + 3 * t ** 2) * y1 +
    (t ** 3 - t ** 2) * h * m1
  );
};
