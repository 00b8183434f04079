/**
 * Straight lines between points; the outermost values are held beyond them.
 * @param x ascending, at least 1
 * @param y as many
 */
export const interpolate = (x: readonly number[], y: readonly number[], at: number): number => {
  const last = x.length - 1;
  if (at <= (x[0] ?? at)) return y[0] ?? Number.NaN;
  if (at >= (x[last] ?? at)) return y[last] ?? Number.NaN;
  const i = x.findIndex((one) => one > at);
  const [x0, x1, y0, y1] = [x[i - 1] ?? 0, x[i] ?? 0, y[i - 1] ?? 0, y[i] ?? 0];
  return y0 + ((y1 - y0) * (at - x0)) / (x1 - x0);
};
