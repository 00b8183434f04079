import { heavierLined, isLight, lined, secondDoor } from './firstSteps.ts';
import { FORMAT, type CandidateEntry, type Project, type SurfaceEntry } from './schema.ts';
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
  const inward = (id: string, make: 'wall' | 'top', frame: string): CandidateEntry[] => [
    candidate(`${id}-lined`, `${frame} with two boards`, `${make}-lined`),
    ...(isLight(shell[make])
      ? [
          candidate(
            `${id}-heavier`,
            `Outer skin made heavier, ${frame.toLowerCase()} with two boards`,
            `${make}-heavier`,
          ),
        ]
      : []),
  ];
  const wall = (id: string, name: string, side: NonNullable<SurfaceEntry['side']>, along: number): SurfaceEntry => ({
    id,
    name,
    kind: 'wall',
    width_m: along,
    height_m,
    side,
    assembly: 'wall',
    candidates: inward(id, 'wall', 'Own frame'),
  });
  const best = (id: string, make: 'wall' | 'top'): string => `${id}-${isLight(shell[make]) ? 'heavier' : 'lined'}`;
  const innerRoom = {
    ...Object.fromEntries(['north', 'east', 'south', 'west'].map((id) => [id, best(id, 'wall')])),
    top: best('top', 'top'),
    door: 'door-second',
    'door-gap': 'door-gap-sealed',
  };
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
      ...(isLight(shell.wall) ? { 'wall-heavier': heavierLined(shell.wall) } : {}),
      top: shell.top,
      'top-lined': lined(shell.top),
      ...(isLight(shell.top) ? { 'top-heavier': heavierLined(shell.top) } : {}),
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
        candidates: inward('top', 'top', 'Own joists'),
      },
      { id: 'floor', name: 'Floor', kind: 'floor', width_m: length_m, height_m: width_m, assembly: 'floor' },
    ],
    ...(answers.source === null ? {} : { source: answers.source }),
    ...(answers.currency === '' ? {} : { currency: answers.currency }),
    options: [{ id: 'inner-room', name: 'A whole inner room', swaps: innerRoom }],
    compare: ['wall', 'wall-lined', ...(isLight(shell.wall) ? ['wall-heavier'] : [])],
  };
};
