import type { Assembly, CavityLayer, Layer } from '../../assembly/index.ts';
import type { PorousMaterial } from '../../materials/index.ts';
import type { Remedy, RemedyLayer } from '../../quantities/index.ts';

/** What an empty cavity is filled with where the assembly has no wool to take after. @source common practice */
export const USUAL_WOOL: PorousMaterial = {
  kind: 'porous',
  name: 'Stone wool slab, 45 kg/m3',
  density: 45,
  airflowResistivity: 15_000,
};

/** The wool of another cavity of the assembly, or the usual one. */
export const woolOf = (layers: readonly Layer[]): PorousMaterial => {
  for (const layer of layers)
    if (layer.kind === 'cavity' && layer.fill?.material.kind === 'porous') return layer.fill.material;
  return USUAL_WOOL;
};

const deepened = (cavity: CavityLayer, depth: number): CavityLayer => ({
  ...cavity,
  depth,
  ...(cavity.fill && { fill: { ...cavity.fill, thickness: Math.min(cavity.fill.thickness, depth) } }),
});

const kept = (layers: readonly Layer[], { keep, depth, arrangement }: RemedyLayer): Layer[] => {
  const layer = layers[keep];
  if (layer === undefined) return [];
  if (layer.kind !== 'cavity') return [layer];
  const cavity = depth === undefined ? layer : deepened(layer, depth);
  return [arrangement && cavity.frame ? { ...cavity, frame: { ...cavity.frame, arrangement } } : cavity];
};

/**
 * The assembly rebuilt by a remedy, so that its effect can be predicted before anyone builds it.
 * @param assembly layers from the room outwards
 * @param remedy reorder, fill, thicken or deepen; indices into the present layers
 */
export const remedied = (assembly: Assembly, remedy: Remedy): Assembly => {
  const { layers } = assembly;
  const at = (index: number, change: (layer: Layer) => Layer): Assembly => ({
    ...assembly,
    layers: layers.map((layer, i) => (i === index ? change(layer) : layer)),
  });
  switch (remedy.kind) {
    case 'reorder':
      return { ...assembly, layers: remedy.layers.flatMap((one) => kept(layers, one)) };
    case 'thicken':
      return at(remedy.layer, (layer) => (layer.kind === 'cavity' ? layer : { ...layer, thickness: remedy.thickness }));
    case 'deepen':
      return at(remedy.cavity, (layer) => (layer.kind === 'cavity' ? deepened(layer, remedy.depth) : layer));
    case 'fill-cavity':
      return at(remedy.cavity, (layer) =>
        layer.kind === 'cavity'
          ? { ...layer, fill: { material: woolOf(layers.filter((one) => one !== layer)), thickness: layer.depth } }
          : layer,
      );
  }
};
