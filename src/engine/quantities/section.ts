/** Clear cross-section of a duct or opening, m. */
export type Section =
  | { readonly shape: 'round'; readonly diameter: number }
  | { readonly shape: 'rectangular'; readonly width: number; readonly height: number };

/** Clear area S, m². */
export const sectionArea = (section: Section): number =>
  section.shape === 'round' ? (Math.PI * section.diameter ** 2) / 4 : section.width * section.height;

/** Wetted perimeter P, m. */
export const sectionPerimeter = (section: Section): number =>
  section.shape === 'round' ? Math.PI * section.diameter : 2 * (section.width + section.height);

/** Hydraulic diameter 4S/P, m. @source Darcy-Weisbach for ducts that are not round */
export const hydraulicDiameter = (section: Section): number => (4 * sectionArea(section)) / sectionPerimeter(section);

/**
 * Diameter of the round duct with the same flow and loss: 1.30·(ab)^0.625/(a + b)^0.25.
 * @param width a, m, > 0
 * @param height b, m, > 0
 * @source Huebscher; ASHRAE Handbook Fundamentals, duct design (form seen in a handbook page)
 * @example equivalentDiameter(0.3, 0.1) // 0.1827
 */
export const equivalentDiameter = (width: number, height: number): number =>
  (1.3 * (width * height) ** 0.625) / (width + height) ** 0.25;
