import type { Import } from './readImports.ts';

/** Sound and data pass through the engine's rooms in one direction: a room may use rooms of lower rank only. */
const RANKS: Readonly<Record<string, number>> = {
  quantities: 0,
  materials: 1,
  ratings: 1,
  assembly: 2,
  transmission: 3,
  openings: 4,
  airflow: 4,
  shell: 5,
  levels: 6,
  plan: 7,
  takeoff: 7,
  measure: 7,
  uncertainty: 7,
  report: 8,
};

interface Wing {
  readonly folder: string;
  readonly packages: readonly string[];
  /** whether a file of the project may be imported from this wing */
  readonly admits: (use: Import) => boolean;
}

const under = (path: string, ...folders: string[]): boolean => folders.some((folder) => path.startsWith(`${folder}/`));
const data = (path: string): boolean => path.endsWith('.json');

/** Engine seen from outside: a room's index, or the corridor. */
const engine = (path: string): boolean => /^src\/engine\/([A-Za-z]+\/index|[A-Za-z]+)\.ts$/.test(path);

const roomOf = (path: string): string | null => /^src\/engine\/([A-Za-z]+)\//.exec(path)?.[1] ?? null;

const insideEngine = ({ from, target }: Import): boolean => {
  if (data(target)) return true;
  const [room, other] = [roomOf(from), roomOf(target)];
  if (room === null) return other === null ? under(target, 'src/engine') : engine(target);
  if (other === room) return true;
  if (other === null || !engine(target)) return false;
  const [own, theirs] = [RANKS[room], RANKS[other]];
  return own !== undefined && theirs !== undefined && theirs < own;
};

/** Most particular first: a file belongs to the first wing whose folder holds it. */
export const WINGS: readonly Wing[] = [
  { folder: 'src/engine', packages: [], admits: insideEngine },
  {
    folder: 'src/project',
    packages: ['valibot', '@valibot/to-json-schema'],
    admits: ({ target }) => engine(target) || under(target, 'src/project') || data(target),
  },
  {
    folder: 'src/contract',
    packages: ['valibot'],
    admits: ({ target }) => engine(target) || under(target, 'src/project', 'src/contract'),
  },
  {
    folder: 'src/service',
    packages: [],
    admits: ({ target }) => engine(target) || under(target, 'src/project', 'src/contract', 'src/service'),
  },
  {
    folder: 'src/worker',
    packages: [],
    admits: ({ target }) => engine(target) || under(target, 'src/project', 'src/contract', 'src/worker'),
  },
  {
    folder: 'src/host',
    packages: ['node:', 'better-sqlite3'],
    admits: ({ target, typeOnly }) =>
      under(target, 'src/host', 'src/contract', 'src/service') ||
      (typeOnly && under(target, 'src/project')) ||
      target === 'src/project/examples.ts' ||
      data(target) ||
      !/\.\w+$/.test(target),
  },
  {
    folder: 'electron/scripts',
    packages: ['node:', 'vite', '@electron/packager', '@electron/fuses'],
    admits: ({ target }) =>
      under(target, 'electron/scripts') ||
      target === 'src/host/dataFolder.ts' ||
      data(target) ||
      !target.endsWith('.ts'),
  },
  {
    folder: 'electron',
    packages: ['electron', 'node:'],
    admits: ({ from, target, typeOnly }) =>
      under(target, 'electron') ||
      (under(target, 'src/contract') && (typeOnly || from !== 'electron/preload.ts')) ||
      (from !== 'electron/preload.ts' && ['src/host/createHost.ts', 'src/host/dataFolder.ts'].includes(target)) ||
      !target.endsWith('.ts'),
  },
  {
    folder: 'renderer',
    packages: ['svelte', 'd3-array', 'd3-scale', 'd3-shape'],
    admits: ({ target, typeOnly }) =>
      under(target, 'renderer', 'src/project', 'src/contract', 'src/worker', 'assets') ||
      target === 'src/engine/quantities/index.ts' ||
      (typeOnly && engine(target)),
  },
];

/** A sentence for an import that breaks the rules; null for one that keeps them. */
export const breach = (use: Import): string | null => {
  const wing = WINGS.find(({ folder }) => under(use.from, folder));
  if (!wing) return `${use.from} belongs to no wing`;
  const allowed = use.external ? wing.packages.includes(use.target) : wing.admits(use);
  return allowed ? null : `${use.from} may not import ${use.typeOnly ? 'even the types of ' : ''}${use.target}`;
};
