/** From here outwards the tails have a form of their own. */
const TAIL = 0.02425;

const tail = (p: number): number => {
  const q = Math.sqrt(-2 * Math.log(p));
  return (
    (((((-0.007784894002430293 * q - 0.3223964580411365) * q - 2.400758277161838) * q - 2.549732539343734) * q +
      4.374664141464968) *
      q +
      2.938163982698783) /
    ((((0.007784695709041462 * q + 0.3224671290700398) * q + 2.445134137142996) * q + 3.754408661907416) * q + 1)
  );
};

/**
 * Quantile of the standard normal distribution by rational approximation, relative error below 1.2·10⁻⁹.
 * @param probability p, 0 < p < 1
 * @returns z with Φ(z) = p
 * @throws RangeError outside 0 < p < 1
 * @source P. J. Acklam, An algorithm for computing the inverse normal cumulative distribution function (2003; from memory)
 * @example normalQuantile(0.95) // 1.645
 */
export const normalQuantile = (probability: number): number => {
  if (!(probability > 0 && probability < 1))
    throw new RangeError(`probability must be > 0 and < 1, got ${String(probability)}`);
  if (probability < TAIL) return tail(probability);
  if (probability > 1 - TAIL) return -tail(1 - probability);
  const q = probability - 0.5;
  const r = q * q;
  return (
    ((((((-39.69683028665376 * r + 220.9460984245205) * r - 275.9285104469687) * r + 138.357751867269) * r -
      30.66479806614716) *
      r +
      2.506628277459239) *
      q) /
    (((((-54.47609879822406 * r + 161.5858368580409) * r - 155.6989798598866) * r + 66.80131188771972) * r -
      13.28068155288572) *
      r +
      1)
  );
};
