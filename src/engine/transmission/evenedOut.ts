const SAMPLES = 9;

/** A row between its values; the end values beyond its ends. */
const valueAt = (row: readonly number[], position: number): number => {
  const at = Math.min(Math.max(position, 0), row.length - 1);
  const below = Math.floor(at);
  const low = row[below] ?? 0;
  return low + (at - below) * ((row[below + 1] ?? low) - low);
};

/**
 * The response of boards whose critical frequencies differ, as the mean over them: each answers at f as the common board
 * does at f·(1 + δ), beside its mass. Sound drives one board and a stud another, so that the peaks of the two
 * at coincidence need not meet, as they do between leaves that are equal to the last digit.
 * @param velocities V at lines that follow each other by the same ratio, m²/(Pa·s)²
 * @param frequencies of the lines, Hz, two and more
 * @param spread largest δ on either side, ≥ 0; 0 leaves all as it is
 * @returns V of the boards together, line by line
 * @validity spreads up to a third octave
 * @source mean over equally likely δ; V·f² depends on f/fc alone but for radiation
 * @example evenedOut([1, 1 / 4], [500, 1000], 0) // [1, 1 / 4]
 */
export const evenedOut = (
  velocities: readonly number[],
  frequencies: readonly number[],
  spread: number,
): readonly number[] => {
  const [first, second] = frequencies;
  if (spread <= 0 || first === undefined || second === undefined) return velocities;
  const reach = Math.log1p(spread) / Math.log(second / first);
  const shape = velocities.map((velocity, i) => velocity * (frequencies[i] ?? 0) ** 2);
  return frequencies.map((frequency, i) => {
    let sum = 0;
    for (let k = 0; k < SAMPLES; k += 1) sum += valueAt(shape, i + reach * ((2 * k) / (SAMPLES - 1) - 1));
    return sum / SAMPLES / (frequency * frequency);
  });
};
