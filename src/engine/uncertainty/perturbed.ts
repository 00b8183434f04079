import type { Assembly, BoardLayer, CavityLayer, Layer } from '../assembly/index.ts';
import type { BoardMaterial, PorousMaterial, ViscoelasticMaterial } from '../materials/index.ts';
import { inputKey } from './input.ts';
import type { InputKind } from './input.ts';
import {
  ABSORBER_DENSITY_SPREAD,
  BOARD_SPREADS,
  RESISTIVITY_SPREAD,
  SHEAR_LOSS_SPREAD,
  SHEAR_SPREAD,
  depthSpread,
  thicknessShare,
} from './materialSpreads.ts';
import { DAMP_EFFECT, takesWater } from './workmanship.ts';
import type { Workmanship } from './workmanship.ts';

/** How far each input is from its middle, in standard deviations; an input that is not named is at its middle. */
export type Departure = (key: string) => number;

const relative = (spread: number, z: number): number => Math.exp(spread * z);

const perturbBoard = (material: BoardMaterial, z: (kind: InputKind) => number, damp: number): BoardMaterial => {
  const spread = BOARD_SPREADS[material.family];
  const wet = takesWater(material.family) ? damp : 0;
  return {
    ...material,
    density: material.density * relative(spread.density, z('density')) * (1 + DAMP_EFFECT.density * wet),
    youngsModulus:
      material.youngsModulus * relative(spread.stiffness, z('stiffness')) * Math.exp(DAMP_EFFECT.stiffness * wet),
    lossFactor: material.lossFactor * relative(spread.loss, z('loss')) * Math.exp(DAMP_EFFECT.loss * wet),
  };
};

const perturbAbsorber = (material: PorousMaterial, z: (kind: InputKind) => number): PorousMaterial => ({
  ...material,
  // a batch that is laid denser weighs more too
  density: material.density * relative(ABSORBER_DENSITY_SPREAD, z('resistivity')),
  airflowResistivity: material.airflowResistivity * relative(RESISTIVITY_SPREAD, z('resistivity')),
});

const perturbDamping = (material: ViscoelasticMaterial, z: (kind: InputKind) => number): ViscoelasticMaterial => ({
  ...material,
  shearModulus: material.shearModulus * relative(SHEAR_SPREAD, z('shear')),
  lossFactor: material.lossFactor * relative(SHEAR_LOSS_SPREAD, z('loss')),
});

const perturbThickness = ({ thickness, material }: BoardLayer, z: number): number =>
  thickness * relative(thicknessShare(material.family, thickness), z);

/**
 * A make-up as it might be delivered and built: each input moved from its middle.
 * @param assembly as drawn
 * @param departure z of each input
 * @param workmanship how damp it is
 * @returns assembly with other densities, stiffnesses, losses, thicknesses and depths; the fixings are not in it
 * @source spreads of materialSpreads
 * @example perturbed(wall, () => 0, FLAWLESS) // the wall as drawn
 */
export const perturbed = (assembly: Assembly, departure: Departure, workmanship: Workmanship): Assembly => {
  const damp = workmanship.damp.middle + workmanship.damp.spread * departure(inputKey('damp', ''));
  const of =
    (name: string) =>
    (kind: InputKind): number =>
      departure(inputKey(kind, name));
  const perturbFill = (fill: NonNullable<CavityLayer['fill']>, stretch: number): NonNullable<CavityLayer['fill']> => ({
    thickness: fill.thickness * stretch,
    material:
      fill.material.kind === 'board'
        ? perturbBoard(fill.material, of(fill.material.name), damp)
        : perturbAbsorber(fill.material, of(fill.material.name)),
  });
  const perturbLayer = (layer: Layer): Layer => {
    switch (layer.kind) {
      case 'board':
        return {
          ...layer,
          material: perturbBoard(layer.material, of(layer.material.name), damp),
          thickness: perturbThickness(layer, departure(inputKey('thickness', layer.material.name))),
        };
      case 'interlayer':
        return layer.material === 'rigid'
          ? layer
          : { ...layer, material: perturbDamping(layer.material, of(layer.material.name)) };
      case 'cavity': {
        const spread = Math.min(0.15, depthSpread(layer.depth) / layer.depth);
        const stretch = Math.exp(spread * departure(inputKey('depth', assembly.name)));
        return {
          ...layer,
          depth: layer.depth * stretch,
          ...(layer.fill && { fill: perturbFill(layer.fill, stretch) }),
        };
      }
    }
  };
  return { ...assembly, layers: assembly.layers.map(perturbLayer) };
};
