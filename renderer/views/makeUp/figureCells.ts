/** One figure of one column: as written, and how far from the first column. */
export interface Cell {
  readonly text: string;
  readonly difference: string | null;
  /** better or worse than the first column; null where neither or unknown */
  readonly better: boolean | null;
}

const MINUS = '\u2212';
export const EMPTY: Cell = { text: '–', difference: null, better: null };

export const signed = (value: number, decimals = 0): string => {
  const text = Math.abs(value).toFixed(decimals);
  return Number(text) === 0 ? '±0' : `${value > 0 ? '+' : MINUS}${text}`;
};
export const written = (value: number, decimals = 0): string => value.toFixed(decimals).replace('-', MINUS);

/** Cells of one number per column, with differences of the figures as written; `more` says whether more is better. */
export const numberCells = (
  values: readonly (number | null)[],
  decimals: number,
  more: boolean | null,
): readonly Cell[] => {
  const rounded = values.map((value) => (value === null ? null : Number(value.toFixed(decimals))));
  const [first] = rounded;
  return rounded.map((value, i) => {
    if (value === null) return EMPTY;
    if (i === 0 || first === null || first === undefined) return { ...EMPTY, text: written(value, decimals) };
    const change = Number((value - first).toFixed(decimals));
    return {
      text: written(value, decimals),
      difference: signed(change, decimals),
      better: change === 0 || more === null ? null : change > 0 === more,
    };
  });
};

/** A frequency as one says it: 63, 2.5k. */
export const hertz = (value: number): string =>
  value >= 1000 ? `${Number((value / 1000).toFixed(1))}k` : String(Math.round(value));

/** Cells of several frequencies each; equal ones once. */
export const listCells = (lists: readonly (readonly number[] | null)[]): readonly Cell[] =>
  lists.map((list) =>
    list === null || list.length === 0
      ? EMPTY
      : { text: [...new Set(list.map(hertz))].join(', '), difference: null, better: null },
  );
