import type { AssemblyEntry, LayerEntry } from '../schema.ts';
import { withAssembly } from './change.ts';
import { command, refuse } from './command.ts';
import { equal, patched } from './patch.ts';

const requireLayer = (assembly: AssemblyEntry, index: number, most = assembly.layers.length - 1): void => {
  if (!Number.isInteger(index) || index < 0 || index > most)
    refuse(`${assembly.name} has ${assembly.layers.length} layers; there is no place ${index + 1} in it.`);
};

/**
 * Inserts a layer before the one at `index`; the number of layers as index appends. Counted from the room, from 0.
 * `followedBy` goes in behind it in the same step: a cavity never stands at the outside without its board.
 */
export const insertLayer = command<{
  assembly: string;
  index: number;
  layer: LayerEntry;
  followedBy?: readonly LayerEntry[];
}>('Add a layer', (project, { assembly, index, layer, followedBy = [] }) =>
  withAssembly(project, assembly, (before) => {
    requireLayer(before, index, before.layers.length);
    return patched(before, { layers: before.layers.toSpliced(index, 0, layer, ...followedBy) });
  }),
);

export const removeLayer = command<{ assembly: string; index: number }>('Remove a layer', (project, args) =>
  withAssembly(project, args.assembly, (before) => {
    requireLayer(before, args.index);
    return patched(before, { layers: before.layers.toSpliced(args.index, 1) });
  }),
);

/** Takes the layer at `from` out and puts it where it then stands at `to`. */
export const moveLayer = command<{ assembly: string; from: number; to: number }>('Move a layer', (project, args) =>
  withAssembly(project, args.assembly, (before) => {
    requireLayer(before, args.from);
    requireLayer(before, args.to);
    const moved = before.layers.slice(args.from, args.from + 1);
    return patched(before, { layers: before.layers.toSpliced(args.from, 1).toSpliced(args.to, 0, ...moved) });
  }),
);

export const setLayer = command<{ assembly: string; index: number; layer: LayerEntry }>(
  'Change a layer',
  (project, { assembly, index, layer }) =>
    withAssembly(project, assembly, (before) => {
      requireLayer(before, index);
      if (equal(before.layers[index], layer)) return before;
      return patched(before, { layers: before.layers.with(index, layer) });
    }),
);
