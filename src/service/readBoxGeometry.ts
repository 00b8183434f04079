import type { BoxFilling, BoxGeometry, BoxLining, BoxPort, BoxRectangle } from '../engine/openings/index.ts';
import { fault, missingKey, unknownKey } from '../project/fault.ts';
import type { Fault, Path } from '../project/fault.ts';
import { suggestion } from '../project/nearest.ts';

/** Parts of each kind; a real box has a few dozen. */
const MOST_PARTS = 200;
const RECTANGLE = 'four numbers in metres, [x0, y0, x1, y1]';
const MATERIAL =
  '["miki", flow resistivity in Pa s/m2], ["sandwich", H, t1, t2, material of the faces], or null for air';
const SIDES = ['W', 'E', 'S', 'N'] as const;

const record = (value: unknown): Readonly<Record<string, unknown>> | null =>
  typeof value === 'object' && value !== null && !Array.isArray(value) ? { ...value } : null;

const isNumber = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value);

const numbers = (value: unknown, count: number): readonly number[] | null =>
  Array.isArray(value) && value.length === count && value.every(isNumber) ? value : null;

/** Reads what is inside `geometry`; what is wrong is added to the faults. */
export const readBoxGeometry = (value: unknown, faults: Fault[]): BoxGeometry | null => {
  const given = record(value);
  if (given === null) {
    faults.push(fault(['geometry'], value, 'an object with L, W, H, solids, linings and ports'));
    return null;
  }
  const keys = ['L', 'W', 'H', 'base', 'solids', 'linings', 'ports'];
  checkKeys(given, keys, ['L', 'W', 'H', 'ports'], ['geometry'], faults);
  const size = (key: string): number => {
    const it = given[key];
    if (it !== undefined && !isNumber(it)) faults.push(fault(['geometry', key], it, 'a number in metres'));
    return isNumber(it) ? it : Number.NaN;
  };
  const list = <T>(key: string, read: (it: unknown, path: Path) => T | null): T[] => {
    const all = given[key] ?? [];
    if (!Array.isArray(all) || all.length > MOST_PARTS) {
      faults.push(fault(['geometry', key], all, `a list of at most ${MOST_PARTS}`));
      return [];
    }
    return all.flatMap((it: unknown, n) => read(it, ['geometry', key, n]) ?? []);
  };
  const [length, width, height] = [size('L'), size('W'), size('H')];
  const base = readFilling(given['base'] ?? null, ['geometry', 'base'], faults);
  const solids = list('solids', (it, path) => readRectangle(it, path, faults));
  const linings = list('linings', (it, path) => readLining(it, path, faults));
  const ports = list('ports', (it, path) => readPort(it, path, height, faults));
  const [one, other, ...more] = ports;
  if (faults.length === 0 && (one === undefined || other === undefined || more.length > 0))
    faults.push(fault(['geometry', 'ports'], given['ports'], 'two ports, where the sound enters and where it leaves'));
  if (one === undefined || other === undefined || base === null) return null;
  return { length, width, height, base, solids, linings, ports: [one, other] };
};

const checkKeys = (
  given: Readonly<Record<string, unknown>>,
  known: readonly string[],
  needed: readonly string[],
  path: Path,
  faults: Fault[],
): void => {
  for (const key of Object.keys(given))
    if (!known.includes(key)) faults.push(unknownKey([...path, key], given[key], suggestion(key, known)));
  for (const key of needed) if (given[key] === undefined) faults.push(missingKey([...path, key]));
};

const readRectangle = (value: unknown, path: Path, faults: Fault[]): BoxRectangle | null => {
  const four = numbers(value, 4);
  if (four === null) {
    faults.push(fault(path, value, RECTANGLE));
    return null;
  }
  const [x0 = 0, y0 = 0, x1 = 0, y1 = 0] = four;
  return { x0, y0, x1, y1 };
};

const readFilling = (value: unknown, path: Path, faults: Fault[]): BoxFilling | null => {
  if (value === null) return { kind: 'air' };
  const [name, ...rest] = Array.isArray(value) ? (value as readonly unknown[]) : [];
  if (name === 'miki' && rest.length === 1 && isNumber(rest[0])) return { kind: 'porous', airflowResistivity: rest[0] };
  const sizes = numbers(rest.slice(0, 3), 3);
  if (name === 'sandwich' && rest.length === 4 && sizes !== null) {
    const faces = readFilling(rest[3], [...path, 4], faults);
    const [height = 0, one = 0, other = 0] = sizes;
    if (faces?.kind === 'porous')
      return { kind: 'linedFaces', height, thicknesses: [one, other], airflowResistivity: faces.airflowResistivity };
    if (faces === null) return null;
  }
  faults.push(fault(path, value, MATERIAL));
  return null;
};

const readLining = (value: unknown, path: Path, faults: Fault[]): BoxLining | null => {
  if (!Array.isArray(value) || value.length !== 5) {
    faults.push(fault(path, value, `[x0, y0, x1, y1, material], material being ${MATERIAL}`));
    return null;
  }
  const rectangle = readRectangle(value.slice(0, 4), path, faults);
  const filling = readFilling(value[4], [...path, 4], faults);
  return rectangle && filling && { ...rectangle, filling };
};

const readPort = (value: unknown, path: Path, height: number, faults: Fault[]): BoxPort | null => {
  const given = record(value);
  if (given === null) {
    faults.push(fault(path, value, 'an object with side, c, w and S, or side "F", rect and S'));
    return null;
  }
  const face = given['side'] === 'F';
  checkKeys(
    given,
    face ? ['side', 'rect', 'S'] : ['side', 'c', 'w', 'S'],
    face ? ['side', 'rect', 'S'] : ['side', 'c', 'S'],
    path,
    faults,
  );
  const side = SIDES.find((it) => it === given['side']);
  if (!face && side === undefined && given['side'] !== undefined)
    faults.push(fault([...path, 'side'], given['side'], 'W, E, S, N or F', 'F is a duct in the flat face.'));
  const number = (key: string): number | null => {
    const it = given[key];
    if (it !== undefined && !isNumber(it)) faults.push(fault([...path, key], it, 'a number'));
    return isNumber(it) ? it : null;
  };
  const area = number('S');
  if (face) {
    const rectangle = given['rect'] === undefined ? null : readRectangle(given['rect'], [...path, 'rect'], faults);
    return rectangle && area !== null ? { kind: 'face', ...rectangle, area } : null;
  }
  const centre = number('c');
  const width = number('w');
  if (side === undefined || centre === null || area === null) return null;
  return { kind: 'side', side, centre, width: width ?? area / height, area };
};
