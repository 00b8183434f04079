import type { Assembly, Layer } from '../assembly/index.ts';
import type { BoardMaterial, PorousMaterial, ViscoelasticMaterial } from '../materials/index.ts';
import type { UncertainInput } from './input.ts';
import { uncertainInput } from './input.ts';
import type { Workmanship } from './workmanship.ts';

type AnyMaterial = BoardMaterial | PorousMaterial | ViscoelasticMaterial;

const materialInputs = (material: AnyMaterial): UncertainInput[] => {
  const of = (kind: UncertainInput['kind']): UncertainInput => uncertainInput(kind, material.name);
  switch (material.kind) {
    case 'board':
      return material.youngsModulus > 0
        ? [of('density'), of('stiffness'), of('loss'), of('thickness')]
        : [of('density'), of('thickness')];
    case 'porous':
      return [of('resistivity')];
    case 'viscoelastic':
      return [of('shear'), of('loss')];
  }
};

const layerInputs = (layer: Layer, assembly: Assembly): UncertainInput[] => {
  switch (layer.kind) {
    case 'board':
      return materialInputs(layer.material);
    case 'interlayer':
      return layer.material === 'rigid' ? [] : materialInputs(layer.material);
    case 'cavity':
      return [uncertainInput('depth', assembly.name), ...(layer.fill ? materialInputs(layer.fill.material) : [])];
  }
};

/**
 * The inputs on which the predicted R of a make-up depends, each once.
 * @param assembly layers from the room outwards
 * @param workmanship what the build leaves to chance
 * @returns inputs; the same material gives the same keys wherever it is used
 * @source engineering judgement: what a builder buys, measures and screws is what may differ
 * @example assemblyInputs(wall, FLAWLESS).map((input) => input.key)
 */
export const assemblyInputs = (assembly: Assembly, workmanship: Workmanship): readonly UncertainInput[] => {
  const framed = assembly.layers.some((layer) => layer.kind === 'cavity' && layer.frame !== undefined);
  const active = ({ middle, spread }: { middle: number; spread: number }): boolean => middle !== 0 || spread !== 0;
  const all = [
    ...assembly.layers.flatMap((layer) => layerInputs(layer, assembly)),
    uncertainInput('bypass', ''),
    ...(framed && active(workmanship.fixings) ? [uncertainInput('fixings', '')] : []),
    ...(active(workmanship.damp) ? [uncertainInput('damp', '')] : []),
  ];
  return [...new Map(all.map((input) => [input.key, input])).values()];
};
