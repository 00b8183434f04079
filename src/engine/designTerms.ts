/** What is taken for granted when a vent is designed. */
export const DESIGN_TERMS = {
  /** two boards of 18 mm. @source common practice: as heavy as the leaf it goes through */
  casing: { assembly: null, surfaceMass: 25 },
  /** of mineral wool for boxes, Pa·s/m². @source common practice: 10 to 20 kPa·s/m² */
  airflowResistivity: 10_000,
  /** what a vent may take of a small duct fan's pressure, Pa. @source common practice */
  mostLoss: 30,
  /** of the wall, m. @source common practice */
  wallDepth: 0.3,
} as const;

/** Speed in ducts and boxes that stays quiet, m/s. @source common practice: 2.5 in ducts */
export const QUIET_SPEED = 2.5;
