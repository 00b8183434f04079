import { library } from './library.ts';
import type { AssemblyEntry, LayerEntry } from './schema.ts';

/** Two boards on a frame of their own that touches nothing of what is there: the usual first step inward. */
const lining = (depth_mm: number): readonly LayerEntry[] => [
  { kind: 'board', material: 'plasterboard-dense', thickness_mm: 12.5 },
  { kind: 'board', material: 'plasterboard-dense', thickness_mm: 12.5 },
  {
    kind: 'cavity',
    depth_mm,
    fill: { material: 'mineral-wool-45', thickness_mm: 100 },
    frame: { stud: 'timber', arrangement: 'twin', fixing: 'direct', spacing_mm: 600 },
  },
];

/** The outer leaf: what stays when an old lining is taken out. */
const outerLeaf = (layers: readonly LayerEntry[]): readonly LayerEntry[] => {
  const cavity = layers.findLastIndex((layer) => layer.kind === 'cavity');
  return layers.slice(cavity + 1);
};

/** Below this mass an outer leaf swings with the lining in the middle of the music, kg/m². */
const LIGHT = 40;

const leafMass = (layers: readonly LayerEntry[]): number =>
  layers.reduce((sum, layer) => {
    const material = layer.kind === 'board' && Object.hasOwn(library, layer.material) ? library[layer.material] : null;
    return sum + (material && layer.kind === 'board' ? (material.density_kg_m3 * layer.thickness_mm) / 1000 : 0);
  }, 0);

/** Whether what stays of a part outside is too light for a lining alone. */
export const isLight = (before: AssemblyEntry): boolean => leafMass(outerLeaf(before.layers)) < LIGHT;

/** The part with an own frame and two boards inside of its outer leaf. */
export const lined = (before: AssemblyEntry): AssemblyEntry => {
  const stripped = before.layers.some((layer) => layer.kind === 'cavity');
  return {
    name: `${before.name}, ${stripped ? 'old lining out, ' : ''}own frame, two boards`,
    layers: [...lining(120), ...outerLeaf(before.layers)],
  };
};

/** The same with a heavy board screwed to the inside of a light skin and more room between. */
export const heavierLined = (before: AssemblyEntry): AssemblyEntry => ({
  name: `${lined(before).name}, outer skin made heavier`,
  layers: [
    ...lining(200),
    { kind: 'board', material: 'cement-particle-board', thickness_mm: 18 },
    ...outerLeaf(before.layers),
  ],
});

/** A second leaf in a frame of its own behind the door that is there. */
export const secondDoor = (before: AssemblyEntry): AssemblyEntry => ({
  name: `${before.name}, second door behind it`,
  layers: [
    { kind: 'board', material: 'door-solid-core', thickness_mm: 44 },
    {
      kind: 'cavity',
      depth_mm: 150,
      fill: { material: 'mineral-wool-45', thickness_mm: 30 },
      frame: { stud: 'none', arrangement: 'common', fixing: 'direct' },
    },
    ...before.layers,
  ],
});
