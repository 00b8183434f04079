/** Whole decibels without a sign: "9 dB". */
export const decibels = (value: number): string => `${Math.round(Math.abs(value))} dB`;

/** "98 Hz", "2500 Hz" */
export const hertz = (value: number): string => `${Math.round(value)} Hz`;

/** metres as millimetres: "12.5 mm", whole from 50 mm up */
export const millimetres = (value: number): string =>
  `${value < 0.05 ? Math.round(value * 1e4) / 10 : Math.round(value * 1000)} mm`;

/** 0.37 as "37 %", small shares as "under 1 %" */
export const percent = (share: number): string => (share < 0.005 ? 'under 1 %' : `${Math.round(100 * share)} %`);

/** "at 100 Hz" or "from 100 to 200 Hz" */
export const bandRange = (bands: readonly number[]): string => {
  const [first] = bands;
  const last = bands.at(-1);
  return first === last ? `at ${first} Hz` : `from ${first} to ${last} Hz`;
};

/** "better" or "worse" by whole decibels: "4 dB better" */
export const betterOrWorse = (gain: number): string =>
  Math.round(gain) === 0 ? 'about the same' : `${decibels(gain)} ${gain > 0 ? 'better' : 'worse'}`;
