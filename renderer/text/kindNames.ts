import type { PartKind } from '../../src/engine/shell/index.ts';
import type { FrameEntry, LayerEntry } from '../../src/project/schema.ts';

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
};

export const LAYER_KINDS: Readonly<Record<LayerEntry['kind'], string>> = {
  board: 'Board',
  interlayer: 'Between boards',
  cavity: 'Cavity',
};

export const STUDS: Readonly<Record<FrameEntry['stud'], string>> = {
  timber: 'timber studs',
  steel: 'steel studs',
  none: 'no studs',
};

export const ARRANGEMENTS: Readonly<Record<FrameEntry['arrangement'], string>> = {
  common: 'one row, both sides fixed to it',
  staggered: 'staggered on one plate',
  twin: 'two rows that do not touch',
};

export const FIXINGS: Readonly<Record<FrameEntry['fixing'], string>> = {
  direct: 'boards screwed to the studs',
  'resilient-bar': 'boards on resilient bars',
  'isolating-clip': 'boards on isolating clips',
};
