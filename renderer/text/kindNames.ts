import type { PartKind } from '../../src/engine/shell/index.ts';

export const PART_KINDS: Readonly<Record<PartKind, string>> = {
  wall: 'Wall',
  roof: 'Roof',
  ceiling: 'Ceiling',
  floor: 'Floor',
  door: 'Door',
  window: 'Window',
  vent: 'Vent',
  service: 'Service opening',
  slit: 'Gap',
  hole: 'Hole',
  flanking: 'Way round',
};
