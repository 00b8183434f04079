/** @throws RangeError in the house's one wording unless value is a finite number > 0 */
export const requirePositive = (name: string, value: number, unit: string): void => {
  if (!(Number.isFinite(value) && value > 0)) throw new RangeError(`${name} must be > 0 ${unit}, got ${String(value)}`);
};

/** @throws RangeError in the house's one wording unless least ≤ value ≤ most */
export const requireWithin = (name: string, value: number, least: number, most: number, unit: string): void => {
  if (!(value >= least && value <= most))
    throw new RangeError(`${name} must be ${least} to ${most} ${unit}, got ${String(value)}`);
};
