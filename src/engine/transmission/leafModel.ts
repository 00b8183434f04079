import {
  ABSORBER_LOSS,
  CRITICAL_SPREAD,
  GASKET_LOSS,
  GYPSUM_LOSS_RISE,
  MASONRY_EDGE_LOSS,
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
import { bondedPlate, sandwich } from './plateModel.ts';
import type { PlateLayer } from './plateModel.ts';

/** Share of a leaf's mass that is gypsum board. */
const gypsumShare = (leaf: Leaf): number =>
  leaf.boards.reduce((sum, { material, thickness }) => {
    return sum + (material.family === 'gypsum' ? material.density * thickness : 0);
  }, 0) / leaf.surfaceMass;

/** Gaskets and putty damp panes of plain glass; laminated glass has its loss in the plies. */
const edgeOf = (leaf: Leaf, plates: readonly Plate[]): EdgeLoss | null => {
  if (leaf.masonry) return { kind: 'masonry', atOneHertz: MASONRY_EDGE_LOSS };
  if (plates.length === 0) return null;
  const stiffness = plates.reduce((sum, plate) => sum + plate.bending, 0);
  const critical = criticalFrequency(leaf.surfaceMass, stiffness);
  if (critical === null) return null;
  if (leaf.glass) return { kind: 'gasket', lossFactor: GASKET_LOSS, criticalFrequency: critical };
  const share = gypsumShare(leaf);
  return share > 0 ? { kind: 'board', lossFactor: share * GYPSUM_LOSS_RISE, criticalFrequency: critical } : null;
};

const inPlace = (layer: BoardLayer, laminated: boolean, touched: number): PlateLayer => {
  const board: BoardMaterial = layer.material;
  return {
    thickness: layer.thickness,
    density: board.density,
    youngsModulus: board.youngsModulus * stiffnessInPlace(board, layer.thickness),
    poissonRatio: board.poissonRatio,
    lossFactor: board.lossFactor + addedLoss(board, layer.thickness, laminated) + touched * ABSORBER_LOSS,
  };
};

/**
 * The mechanics of a leaf in place: screwed boards bend side by side, bonded ones as one plate, boards on a damping
 * sheet as a sandwich; layers on masonry count as bonded to it.
 * @param leaf boards and joints
 * @param touched faces of it that an absorber lies against, 0 to 2
 * @returns model for the transfer matrices
 * @validity boards in contact over their whole area
 * @source section comments of bondedPlate and sandwich; screwed boards add their impedances: common practice
 * @example leafModel(leaf).criticalFrequency
 */
export const leafModel = (leaf: Leaf, touched = 0): LeafModel => {
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
    const layer = inPlace(board, laminated, leaf.masonry ? 0 : touched);
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
    inReveal: leaf.glass,
    criticalSpread: gypsumShare(leaf) > 0 ? CRITICAL_SPREAD : 0,
    wallImpedance:
      wall && wall.material.youngsModulus > 0 ? wall.material.density * longitudinalSpeed(wall.material) : null,
  };
  return { ...model, criticalFrequency: leafCriticalFrequency(model) };
};

/** Critical frequency of one board of a leaf on its own, in place, Hz; null for a limp sheet. */
export const boardCriticalFrequency = (board: BoardLayer): number | null => {
  const plate = bondedPlate([inPlace(board, false, 0)]);
  return criticalFrequency(plate.mass, plate.bending);
};
