import type { AssemblyEntry, CavityLayerEntry, LayerEntry } from './schema.ts';

/** Buildings that people start from, in generic layers. Sizes are usual ones; every layer can be changed afterwards. */
export interface StartingShell {
  readonly name: string;
  readonly what: string;
  readonly wall: AssemblyEntry;
  /** the upper side of the room: a roof, or the floor of the rooms above */
  readonly top: AssemblyEntry;
  readonly topKind: 'roof' | 'ceiling';
  readonly floor: AssemblyEntry;
  readonly door: AssemblyEntry;
}

const board = (material: string, thickness_mm: number): LayerEntry => ({ kind: 'board', material, thickness_mm });

const timberCavity = (depth_mm: number, spacing_mm: number, wool_mm?: number): CavityLayerEntry => ({
  kind: 'cavity',
  depth_mm,
  ...(wool_mm === undefined ? {} : { fill: { material: 'mineral-wool-16', thickness_mm: wool_mm } }),
  frame: { stud: 'timber', arrangement: 'common', fixing: 'direct', spacing_mm },
});

const slab: AssemblyEntry = { name: 'Concrete slab on the ground', layers: [board('concrete', 150)] };
const solidDoor: AssemblyEntry = { name: 'Solid door leaf', layers: [board('door-solid-core', 44)] };
const plankDoor: AssemblyEntry = { name: 'Plank door leaf', layers: [board('door-ledged-planks', 32)] };
const feltRoof: AssemblyEntry = {
  name: 'Felt on boards',
  layers: [board('softwood', 20), board('bitumen-felt', 4)],
};
const tileRoof: AssemblyEntry = {
  name: 'Tiles on roof boards',
  layers: [board('softwood', 22), board('roof-tiles-concrete', 25)],
};

export const STARTING_SHELLS = {
  'timber-shed': {
    name: 'Timber shed',
    what: 'planks on studs, felt roof, nothing inside',
    wall: { name: 'Planks', layers: [board('timber-planks-tongued', 19)] },
    top: feltRoof,
    topKind: 'roof',
    floor: slab,
    door: plankDoor,
  },
  'garden-room': {
    name: 'Insulated garden room',
    what: 'lined timber frame with wool, felt roof with a ceiling',
    wall: {
      name: 'Lined timber frame',
      layers: [
        board('plasterboard-standard', 12.5),
        timberCavity(100, 600, 100),
        board('osb', 11),
        board('softwood', 20),
      ],
    },
    top: {
      name: 'Lined felt roof',
      layers: [
        board('plasterboard-standard', 12.5),
        timberCavity(150, 600, 100),
        board('osb', 18),
        board('bitumen-felt', 4),
      ],
    },
    topKind: 'roof',
    floor: slab,
    door: solidDoor,
  },
  'brick-garage': {
    name: 'Brick garage',
    what: 'half a brick thick, tiles on boards, no ceiling',
    wall: { name: 'Brick, half a brick', layers: [board('brick', 102.5)] },
    top: tileRoof,
    topKind: 'roof',
    floor: slab,
    door: solidDoor,
  },
  'block-garage': {
    name: 'Block garage',
    what: 'dense blocks, rendered, felt roof on boards',
    wall: { name: 'Dense block, rendered', layers: [board('block-dense', 140), board('render', 13)] },
    top: feltRoof,
    topKind: 'roof',
    floor: slab,
    door: solidDoor,
  },
  'steel-panels': {
    name: 'Steel-faced foam panels',
    what: 'thin steel on stiff foam, walls and roof alike',
    wall: {
      name: 'Steel-faced foam panel',
      layers: [
        board('steel', 0.5),
        { kind: 'interlayer', material: 'rigid-adhesive', thickness_mm: 0 },
        board('pir', 80),
        { kind: 'interlayer', material: 'rigid-adhesive', thickness_mm: 0 },
        board('steel', 0.5),
      ],
    },
    top: {
      name: 'Steel-faced foam roof panel',
      layers: [
        board('steel', 0.5),
        { kind: 'interlayer', material: 'rigid-adhesive', thickness_mm: 0 },
        board('pir', 100),
        { kind: 'interlayer', material: 'rigid-adhesive', thickness_mm: 0 },
        board('steel', 0.5),
      ],
    },
    topKind: 'roof',
    floor: slab,
    door: { name: 'Steel-faced foam door leaf', layers: [board('door-steel-faced', 44)] },
  },
  cellar: {
    name: 'Cellar',
    what: 'concrete walls, timber floor of the room above',
    wall: { name: 'Concrete wall', layers: [board('concrete', 200)] },
    top: {
      name: 'Timber floor above',
      layers: [board('plasterboard-standard', 12.5), timberCavity(200, 400), board('chipboard', 22)],
    },
    topKind: 'ceiling',
    floor: slab,
    door: solidDoor,
  },
} as const satisfies Readonly<Record<string, StartingShell>>;

export type StartingShellKey = keyof typeof STARTING_SHELLS;
