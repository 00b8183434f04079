import type { AssemblyEntry, CavityLayerEntry, LayerEntry } from '../../../src/project/schema.ts';

/** A generic make-up to begin from, named by what it is for. Build-ups are common practice. */
export interface StartingPoint {
  readonly key: string;
  readonly name: string;
  readonly what: string;
  readonly layers: readonly LayerEntry[];
}

const board = (material: string, thickness_mm: number): LayerEntry => ({ kind: 'board', material, thickness_mm });
const plasterboard = board('plasterboard-standard', 12.5);
const cavity = (depth_mm: number, wool_mm: number, frame?: CavityLayerEntry['frame']): LayerEntry => ({
  kind: 'cavity',
  depth_mm,
  ...(wool_mm > 0 ? { fill: { material: 'mineral-wool-45', thickness_mm: wool_mm } } : {}),
  ...(frame ? { frame } : {}),
});

export const STARTING_POINTS: readonly StartingPoint[] = [
  {
    key: 'single-leaf',
    name: 'Single leaf',
    what: 'One dense block wall with plaster: heavy, airtight, nothing else',
    layers: [board('plaster', 13), board('block-dense', 100), board('plaster', 13)],
  },
  {
    key: 'stud-wall',
    name: 'Stud wall',
    what: 'Two boards each side of timber studs with wool between',
    layers: [
      plasterboard,
      plasterboard,
      cavity(95, 75, { stud: 'timber', arrangement: 'common', fixing: 'direct', spacing_mm: 600 }),
      plasterboard,
      plasterboard,
    ],
  },
  {
    key: 'twin-wall',
    name: 'Twin stud wall',
    what: 'Two frames that touch nowhere, boards on the outer faces only',
    layers: [
      board('plasterboard-dense', 15),
      board('plasterboard-dense', 15),
      cavity(200, 150, { stud: 'timber', arrangement: 'twin', fixing: 'direct', spacing_mm: 600 }),
      board('osb', 18),
      board('plasterboard-dense', 15),
    ],
  },
  {
    key: 'lining',
    name: 'Independent lining on masonry',
    what: 'Two boards on their own frame, clear of a brick wall',
    layers: [
      board('plasterboard-dense', 15),
      board('plasterboard-dense', 15),
      cavity(120, 100, { stud: 'timber', arrangement: 'twin', fixing: 'direct', spacing_mm: 600 }),
      board('brick', 102.5),
    ],
  },
  {
    key: 'double-glazing',
    name: 'Secondary glazing',
    what: 'Two unequal panes far apart',
    layers: [board('laminated-glass', 8.8), cavity(100, 0), board('glass', 6)],
  },
  {
    key: 'sealed-unit',
    name: 'Sealed double unit',
    what: 'The ordinary window: two thin panes close together',
    layers: [board('glass', 4), cavity(16, 0), board('glass', 4)],
  },
  {
    key: 'door-leaf',
    name: 'Door leaf',
    what: 'One solid-core leaf; its seals are gaps in Lay out',
    layers: [board('door-solid-core', 44)],
  },
  {
    key: 'roof',
    name: 'Roof, boarded inside',
    what: 'Two boards on their own joists under a sheathed rafter roof',
    layers: [
      board('plasterboard-dense', 15),
      board('plasterboard-dense', 15),
      cavity(250, 200, { stud: 'timber', arrangement: 'twin', fixing: 'direct', spacing_mm: 400 }),
      board('osb', 18),
      board('bitumen-felt', 4),
    ],
  },
];

/** A starting point under a name of one's own. */
export const toAssembly = (point: StartingPoint, name: string): AssemblyEntry => ({
  name: name.trim() || point.name,
  layers: [...point.layers],
});
