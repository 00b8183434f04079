/**
 * Level of a power ratio: L = 10 lg x, dB. Zero gives -Infinity: keep it inside, never let it leave a room.
 * @param ratio x, ≥ 0
 */
export const toLevel = (ratio: number): number => 10 * Math.log10(ratio);

/** Power ratio of a level: x = 10^(L/10). @param level dB */
export const toRatio = (level: number): number => 10 ** (level / 10);

/** Transmission coefficient of a sound reduction index: τ = 10^(-R/10). @param R dB */
export const toTransmission = (R: number): number => 10 ** (-R / 10);

/** Sound reduction index of a transmission coefficient: R = -10 lg τ, dB. @param tau > 0 */
export const toReduction = (tau: number): number => -10 * Math.log10(tau);

/** Level of the energy sum of levels, dB. @param levels dB */
export const energySum = (levels: readonly number[]): number =>
  toLevel(levels.reduce((sum, level) => sum + toRatio(level), 0));
