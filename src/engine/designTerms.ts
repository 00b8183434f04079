/** What is taken for granted when a vent is designed. */
export const DESIGN_TERMS = {
  /** what a vent may take of a small duct fan's pressure, Pa. @source common practice */
  mostLoss: 30,
  /** of a wall whose thickness is not known, m. @source common practice */
  wallDepth: 0.3,
} as const;

/** Speed in ducts and boxes that stays quiet, m/s. @source common practice: 2.5 in ducts */
export const QUIET_SPEED = 2.5;
