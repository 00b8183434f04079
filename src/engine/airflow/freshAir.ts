/** Fresh air to plan with, m³/s per person. @source EN 16798-1:2019 category I to II, 8 to 10 L/s (from memory) */
export const PLANNED_PER_PERSON = 0.008;

/**
 * Least fresh air of a room for music: 5 L/s per person and 0.3 L/s per m² of floor.
 * @param people number of people, ≥ 0
 * @param floor area, m², ≥ 0
 * @returns m³/s
 * @source ANSI/ASHRAE 62.1-2016, minimum ventilation rates, music/theatre/dance
 * @example leastFreshAir(35, 100) // 0.205
 */
export const leastFreshAir = (people: number, floor: number): number => 0.005 * people + 0.0003 * floor;

/** Levels of CO2 indoors, ppm. */
export const CARBON_DIOXIDE_LEVELS = {
  /** well ventilated; hold it when singing or exerting oneself. @source HSE ventilation guidance (2021, quoted) */
  good: 800,
  /** usual aim. @source Umweltbundesamt (2008, quoted): below 1000 harmless */
  aim: 1000,
  /** act. @source HSE ventilation guidance (2021, quoted) */
  poor: 1500,
  /** unacceptable. @source Umweltbundesamt (2008, quoted) */
  unacceptable: 2000,
  /** limit at work over 8 h. @source EH40/2005 (quoted) */
  workLimit: 5000,
} as const;
