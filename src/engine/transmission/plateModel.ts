import type { Joint } from '../assembly/index.ts';
import type { Plate, Sandwich } from './stack.ts';

/** One board as the mechanics see it: everything in place. */
export interface PlateLayer {
  readonly thickness: number;
  readonly density: number;
  readonly youngsModulus: number;
  readonly poissonRatio: number;
  readonly lossFactor: number;
}

/**
 * Mindlin plate of layers that are bonded and bend as one about their common neutral plane.
 * B = Σ E'·(h³/12 + h·(z − zn)²)·(1 + jη), E' = E/(1 − ν²), Gs = (5/6)·Σ G·h·(1 + jη).
 * @param layers at least one; one layer gives the plain plate
 * @returns plate
 * @validity layers that do not slip
 * @source Cremer, Heckl and Petersson, Structure-Borne Sound, 3rd ed. (2005); Mindlin, J. Appl. Mech. 18 (1951) 31-38
 * @example bondedPlate([board]).bending // E·h³/12(1 − ν²)
 */
export const bondedPlate = (layers: readonly PlateLayer[]): Plate => {
  let z = 0;
  const parts = layers.map((layer) => {
    const plane = layer.youngsModulus / (1 - layer.poissonRatio ** 2);
    const middle = z + layer.thickness / 2;
    z += layer.thickness;
    return { ...layer, plane, middle, stretching: plane * layer.thickness };
  });
  const total = parts.reduce((sum, part) => sum + part.stretching, 0);
  const neutral = total > 0 ? parts.reduce((sum, part) => sum + part.stretching * part.middle, 0) / total : z / 2;
  const plate = { mass: 0, inertia: 0, bending: 0, bendingLoss: 0, shear: 0, shearLoss: 0 };
  for (const part of parts) {
    const second = part.thickness ** 3 / 12 + part.thickness * (part.middle - neutral) ** 2;
    const shear = ((5 / 6) * part.youngsModulus * part.thickness) / (2 * (1 + part.poissonRatio));
    plate.mass += part.density * part.thickness;
    plate.inertia += part.density * second;
    plate.bending += part.plane * second;
    plate.bendingLoss += part.plane * second * part.lossFactor;
    plate.shear += shear;
    plate.shearLoss += shear * part.lossFactor;
  }
  return plate;
};

interface Group {
  readonly layers: PlateLayer[];
  readonly plate: Plate;
  readonly thickness: number;
}

/**
 * Plates joined by damping sheets: the stiffness that the sheets add depends on the wavenumber.
 * @source Mead and Markus, J. Sound Vib. 10 (1969) 163-175; Ross, Ungar and Kerwin (1959) at the free wavenumber
 */
export const sandwich = (
  skins: readonly (readonly PlateLayer[])[],
  sheets: readonly Exclude<Joint, string>[],
): Sandwich => {
  const groups: Group[] = skins.map((layers) => ({
    layers: [...layers],
    plate: bondedPlate(layers),
    thickness: layers.reduce((sum, layer) => sum + layer.thickness, 0),
  }));
  return {
    mass:
      groups.reduce((sum, group) => sum + group.plate.mass, 0) +
      sheets.reduce((sum, sheet) => sum + sheet.material.density * sheet.thickness, 0),
    bending: groups.reduce((sum, group) => sum + group.plate.bending, 0),
    bendingLoss: groups.reduce((sum, group) => sum + group.plate.bendingLoss, 0),
    stretching: groups.map((group) =>
      group.layers.reduce((sum, l) => sum + (l.youngsModulus * l.thickness) / (1 - l.poissonRatio ** 2), 0),
    ),
    sheets: sheets.map((sheet, i) => ({
      material: sheet.material,
      thickness: sheet.thickness,
      arm: sheet.thickness + ((groups[i]?.thickness ?? 0) + (groups[i + 1]?.thickness ?? 0)) / 2,
    })),
  };
};
