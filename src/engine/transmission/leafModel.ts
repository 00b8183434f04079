import {
  GASKET_LOSS,
  addedLoss,
  criticalFrequency,
  isMasonry,
  longitudinalSpeed,
  stiffnessInPlace,
} from '../materials/index.ts';
import type { BoardMaterial } from '../materials/index.ts';
import type { BoardLayer, Joint, Leaf } from '../assembly/index.ts';
import type { EdgeLoss, LeafModel, Plate, Sandwich } from './stack.ts';
import { leafCriticalFrequency } from './leafStiffness.ts';

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

/** Gaskets and putty damp panes of plain glass; laminated glass has its loss in the plies. */
const edgeOf = (leaf: Leaf, plates: readonly Plate[]): EdgeLoss | null => {
  if (leaf.masonry) return { kind: 'masonry' };
  if (!leaf.glass || plates.length === 0) return null;
  const stiffness = plates.reduce((sum, plate) => sum + plate.bending, 0);
  const critical = criticalFrequency(leaf.surfaceMass, stiffness);
  return critical === null ? null : { kind: 'gasket', lossFactor: GASKET_LOSS, criticalFrequency: critical };
};

const inPlace = (layer: BoardLayer, laminated: boolean): PlateLayer => {
  const board: BoardMaterial = layer.material;
  return {
    thickness: layer.thickness,
    density: board.density,
    youngsModulus: board.youngsModulus * stiffnessInPlace(board, layer.thickness),
    poissonRatio: board.poissonRatio,
    lossFactor: board.lossFactor + addedLoss(board, layer.thickness, laminated),
  };
};

/**
 * The mechanics of a leaf in place: screwed boards bend side by side, bonded ones as one plate, boards on a damping
 * sheet as a sandwich; layers on masonry count as bonded to it.
 * @param leaf boards and joints
 * @returns model for the transfer matrices
 * @validity boards in contact over their whole area
 * @source section comments of bondedPlate and sandwich; screwed boards add their impedances: common practice
 * @example leafModel(leaf).criticalFrequency
 */
export const leafModel = (leaf: Leaf): LeafModel => {
  const plates: Plate[] = [];
  const sandwiches: Sandwich[] = [];
  let skins: PlateLayer[][] = [];
  let sheets: Exclude<Joint, string>[] = [];
  const close = (): void => {
    if (skins.length > 1) sandwiches.push(sandwich(skins, sheets));
    else if (skins[0]) plates.push(bondedPlate(skins[0]));
    skins = [];
    sheets = [];
  };
  leaf.boards.forEach((board, i) => {
    const before = leaf.joints[i - 1];
    const after = leaf.joints[i];
    const laminated = typeof before === 'object' || typeof after === 'object';
    const layer = inPlace(board, laminated);
    const last = skins.at(-1);
    if (last && (leaf.masonry || before === 'rigid') && typeof before !== 'object') last.push(layer);
    else if (last && typeof before === 'object') {
      skins.push([layer]);
      sheets.push(before);
    } else {
      close();
      skins.push([layer]);
    }
  });
  close();
  const wall = leaf.boards.find((board) => isMasonry(board.material, board.thickness));
  const model = {
    mass: leaf.surfaceMass,
    plates,
    sandwiches,
    edgeLoss: edgeOf(leaf, plates),
    wallImpedance: wall ? wall.material.density * longitudinalSpeed(wall.material) : null,
  };
  return { ...model, criticalFrequency: leafCriticalFrequency(model) };
};

/** Critical frequency of one board of a leaf on its own, in place, Hz; null for a limp sheet. */
export const boardCriticalFrequency = (board: BoardLayer): number | null => {
  const plate = bondedPlate([inPlace(board, false)]);
  return criticalFrequency(plate.mass, plate.bending);
};
