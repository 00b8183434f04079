/** How a figure came about, so that it can be checked by hand. */
export interface Working {
  /** What the figure is, in the trade's words. */
  readonly title: string;
  readonly value: string;
  readonly lines: readonly WorkingLine[];
  readonly assumptions: readonly string[];
  readonly likelyError: string;
}

/** One step: the equation in symbols, the same with numbers, and its source by clause or page. */
export interface WorkingLine {
  readonly what: string;
  readonly equation: string;
  readonly numbers: string;
  readonly source: string;
}
