import { shareOf } from './shares.ts';

/** A part's share of what gets out and how far its R may be off; parts of one family err together. */
export interface Doubt {
  readonly share: number;
  readonly spread: number;
  readonly family: string;
}

/**
 * Likely error of the whole: ∂R/∂R_i is the share of part i, so σ² = Σ_families (Σ share_i·σ_i)².
 * Within a family (the same kind of construction) errors are taken as the same, between families as independent.
 * @param doubts shares (0 to 1) and spreads (dB) of the parts
 * @returns σ of the whole, one standard deviation, dB
 * @source propagation of uncertainty: ISO/IEC Guide 98-3:2008, 5.2; the grouping is engineering judgement
 * @example wholeSpread([{ share: 1, spread: 3, family: 'a' }]) // 3
 */
export const wholeSpread = (doubts: readonly Doubt[]): number => {
  const families = new Map<string, number>();
  const whole = doubts.reduce((sum, doubt) => sum + doubt.share, 0);
  for (const { share, spread, family } of doubts)
    families.set(family, (families.get(family) ?? 0) + shareOf(share, whole) * spread);
  return Math.hypot(...families.values());
};
