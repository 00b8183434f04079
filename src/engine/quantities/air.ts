/** Density of air ρ0, kg/m³. @source ISO 10534-2:1998, 7.2-7.3, evaluated at 20 °C and 101.325 kPa */
export const AIR_DENSITY = 1.204;

/** Speed of sound in air c0, m/s. @source ISO 10534-2:1998, 7.2, evaluated at 20 °C */
export const SOUND_SPEED = 343.2;

/** Characteristic impedance of air Z0 = ρ0·c0, Pa·s/m. */
export const AIR_IMPEDANCE = AIR_DENSITY * SOUND_SPEED;

/** Adiabatic bulk modulus of air K0 = ρ0·c0², Pa. */
export const AIR_BULK_MODULUS = AIR_DENSITY * SOUND_SPEED * SOUND_SPEED;
