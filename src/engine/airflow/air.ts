/** Density of air in ducts and rooms, kg/m³. @source common practice: 20 °C */
export const AIR_MASS_DENSITY = 1.2;

/** Kinematic viscosity of air, m²/s. @source common practice: 20 °C */
export const KINEMATIC_VISCOSITY = 1.5e-5;

/** Heat that a cubic metre of air takes up per kelvin, J/(m³·K). @source common practice: Φ = 1.2·q·ΔT in W, L/s, K */
export const HEAT_PER_VOLUME = 1200;

/** CO2 outdoors, parts per million. @source common practice: 400 to 450 in towns */
export const OUTDOOR_CARBON_DIOXIDE = 420;

export const GRAVITY = 9.81;
