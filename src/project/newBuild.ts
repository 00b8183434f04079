import {
  FORMAT,
  type AssemblyEntry,
  type CandidateEntry,
  type LayerEntry,
  type Project,
  type SurfaceEntry,
} from './schema.ts';
import { STARTING_SHELLS, type StartingShell, type StartingShellKey } from './startingShells.ts';

/** What a new build starts from. */
export interface NewBuildAnswers {
  readonly name: string;
  /** inside, east to west */
  readonly length_m: number;
  /** inside, north to south */
  readonly width_m: number;
  readonly height_m: number;
  readonly shell: StartingShellKey;
  /** loudest source, an id of the sources that come with the program; null weighs all bands alike */
  readonly source: string | null;
  readonly neighbour_m: number;
  readonly budget: number | null;
  readonly currency: string;
}

const DOOR = { width_m: 0.9, height_m: 2 } as const;

/** Two boards on a frame of their own, 20 mm clear of what is there: the usual first step inward. */
const lining: readonly LayerEntry[] = [
  { kind: 'board', material: 'plasterboard-dense', thickness_mm: 12.5 },
  { kind: 'board', material: 'plasterboard-dense', thickness_mm: 12.5 },
  {
    kind: 'cavity',
    depth_mm: 120,
    fill: { material: 'mineral-wool-45', thickness_mm: 100 },
    frame: { stud: 'timber', arrangement: 'twin', fixing: 'direct', spacing_mm: 600 },
  },
];

/** The outer leaf: what stays when an old lining is taken out. */
const outerLeaf = (layers: readonly LayerEntry[]): readonly LayerEntry[] => {
  const cavity = layers.findLastIndex((layer) => layer.kind === 'cavity');
  return layers.slice(cavity + 1);
};

const lined = (before: AssemblyEntry): AssemblyEntry => {
  const stripped = before.layers.some((layer) => layer.kind === 'cavity');
  return {
    name: `${before.name}, ${stripped ? 'old lining out, ' : ''}own frame, two boards`,
    layers: [...lining, ...outerLeaf(before.layers)],
  };
};

const secondDoor = (before: AssemblyEntry): AssemblyEntry => ({
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

const candidate = (id: string, name: string, assembly: string): CandidateEntry => ({ id, name, assembly });

const threshold = (
  length_m: number,
  x_m: number,
  shell: StartingShell,
): NonNullable<SurfaceEntry['openings']>[number] => ({
  id: 'door-gap',
  name: 'Gap under the door',
  kind: 'slit',
  length_mm: Math.round(length_m * 1000),
  width_mm: 6,
  depth_mm: Math.round(shell.door.layers.reduce((sum, it) => sum + (it.kind === 'board' ? it.thickness_mm : 0), 0)),
  edge: true,
  x_m,
  y_m: 0,
  candidates: [{ id: 'door-gap-sealed', name: 'Raised threshold with seals all round', sealed: true }],
});

const noteOf = (answers: NewBuildAnswers): string =>
  [
    `Nearest neighbour: ${answers.neighbour_m} m away.`,
    answers.budget === null ? 'Budget: not set.' : `Budget: ${answers.currency} ${answers.budget}.`.replace('  ', ' '),
    'Layers are the usual ones of such a building. Open it up where you can and put in what is really there.',
  ].join(' ');

/**
 * A project from the five questions: four walls, floor and top of a usual building, a door with the gap under it, and
 * for each part the usual first step as a candidate, so that the next best step is known from the start.
 */
export const newBuild = (answers: NewBuildAnswers): Project => {
  const shell: StartingShell = STARTING_SHELLS[answers.shell];
  const { length_m, width_m, height_m } = answers;
  const door_m = Math.min(DOOR.width_m, length_m * 0.8);
  const door_x = Math.min(0.6, length_m * 0.1);
  const wall = (id: string, name: string, side: NonNullable<SurfaceEntry['side']>, along: number): SurfaceEntry => ({
    id,
    name,
    kind: 'wall',
    width_m: along,
    height_m,
    side,
    assembly: 'wall',
    candidates: [candidate(`${id}-lined`, 'Own frame with two boards', 'wall-lined')],
  });
  const south: SurfaceEntry = {
    ...wall('south', 'South wall', 'south', length_m),
    openings: [
      {
        id: 'door',
        name: 'Door',
        kind: 'door',
        width_m: door_m,
        height_m: Math.min(DOOR.height_m, height_m * 0.95),
        assembly: 'door',
        x_m: door_x,
        y_m: 0,
        candidates: [candidate('door-second', 'Second door in its own frame', 'door-second')],
      },
      threshold(door_m, door_x, shell),
    ],
  };
  return {
    format: FORMAT,
    name: answers.name,
    note: noteOf(answers),
    assemblies: {
      wall: shell.wall,
      'wall-lined': lined(shell.wall),
      top: shell.top,
      'top-lined': lined(shell.top),
      floor: shell.floor,
      door: shell.door,
      'door-second': secondDoor(shell.door),
    },
    surfaces: [
      wall('north', 'North wall', 'north', length_m),
      wall('east', 'East wall', 'east', width_m),
      south,
      wall('west', 'West wall', 'west', width_m),
      {
        id: 'top',
        name: shell.topKind === 'roof' ? 'Roof' : 'Ceiling',
        kind: shell.topKind,
        width_m: length_m,
        height_m: width_m,
        assembly: 'top',
        candidates: [candidate('top-lined', 'Own joists with two boards', 'top-lined')],
      },
      { id: 'floor', name: 'Floor', kind: 'floor', width_m: length_m, height_m: width_m, assembly: 'floor' },
    ],
    ...(answers.source === null ? {} : { source: answers.source }),
    ...(answers.currency === '' ? {} : { currency: answers.currency }),
    compare: ['wall', 'wall-lined'],
  };
};
