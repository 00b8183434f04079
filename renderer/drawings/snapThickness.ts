/** Thicknesses a cavity is usually built with, mm: battens and studs as sold. Common practice. */
export const USUAL_DEPTHS = [
  6, 12, 16, 20, 25, 38, 45, 50, 63, 70, 75, 90, 95, 100, 120, 140, 145, 150, 170, 195, 200, 220, 250, 300, 400,
];

/** The usual thickness nearest to a dragged one, if within reach; otherwise the dragged one to half a millimetre. */
export const snapThickness = (
  dragged_mm: number,
  usual: readonly number[],
  reach_mm: number,
  least_mm: number,
): number => {
  const rounded = Math.max(least_mm, Math.round(dragged_mm * 2) / 2);
  const nearest = usual.reduce<number | null>(
    (best, it) => (best === null || Math.abs(it - dragged_mm) < Math.abs(best - dragged_mm) ? it : best),
    null,
  );
  return nearest !== null && Math.abs(nearest - dragged_mm) <= reach_mm ? nearest : rounded;
};

/** The next usual thickness up or down; a tenth more or less where the list ends. */
export const stepThickness = (now_mm: number, usual: readonly number[], direction: 1 | -1): number => {
  const sorted = usual.toSorted((a, b) => a - b);
  const next = direction > 0 ? sorted.find((it) => it > now_mm + 1e-6) : sorted.findLast((it) => it < now_mm - 1e-6);
  return next ?? Number((now_mm * (direction > 0 ? 1.1 : 0.9)).toPrecision(2));
};
