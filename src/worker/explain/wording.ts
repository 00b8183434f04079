/** A figure in a working: fixed decimals, a true minus sign. */
export const figure = (value: number, decimals = 1): string => {
  const text = Math.abs(value).toFixed(decimals);
  return value < 0 && Number(text) !== 0 ? `\u2212${text}` : text;
};

/** The same with its sign always shown. */
export const signed = (value: number, decimals = 0): string => {
  const text = figure(value, decimals);
  return text.startsWith('\u2212') || Number(text) === 0 ? text : `+${text}`;
};

/** How often a prediction lies within its spread. */
export const likely = (spread: number, what: string): string =>
  `About ±${figure(spread)} dB, one standard deviation, for ${what}. Two of three such predictions lie closer than that to the measurement.`;

/** A small ratio: three figures that count. */
export const ratio = (value: number): string => value.toPrecision(3);
