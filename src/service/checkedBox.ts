import { Refusal } from '../contract/client.ts';
import { MOST_UNKNOWNS, boxFaults, gridSize } from '../engine/openings/index.ts';
import type { BoxFault, BoxGeometry } from '../engine/openings/index.ts';
import { fault, missingKey, unknownKey } from '../project/fault.ts';
import type { Fault } from '../project/fault.ts';
import { suggestion } from '../project/nearest.ts';
import { readBoxGeometry } from './readBoxGeometry.ts';

/** A box to solve: its plan and the cell size. */
export interface BoxDocument {
  readonly geometry: BoxGeometry;
  /** h, m */
  readonly cellSize: number;
}

const CELL_SIZES = [0.001, 0.05] as const;
const KEYS = ['geometry', 'h_m'];

const refuse = (faults: readonly Fault[]): never => {
  const [first] = faults;
  const more = faults.length > 1 ? ` (and ${faults.length - 1} more)` : '';
  throw new Refusal({ code: 'bad-document', sentence: `${first?.sentence ?? ''}${more}`, faults });
};

/** The engine's names of sizes, as the document spells them. */
const SPELLED: Readonly<Record<string, string>> = { length: 'L', width: 'W', height: 'H' };

const toFault = ({ path, value, allowed, wayOut }: BoxFault): Fault =>
  fault(['geometry', ...path.map((step) => SPELLED[step] ?? step)], value, allowed, wayOut);

const cellSizeFaults = (value: unknown): Fault[] => {
  const [least, most] = CELL_SIZES;
  if (typeof value === 'number' && value >= least && value <= most) return [];
  return [
    fault(
      ['h_m'],
      value,
      `a number from ${least} to ${most} m`,
      'It is the size of the grid’s cells: 0.008 is good to 2.5 kHz.',
    ),
  ];
};

const gridFaults = (geometry: BoxGeometry, cellSize: number): Fault[] => {
  const size = gridSize(geometry, cellSize);
  if (size <= MOST_UNKNOWNS) return [];
  const enough = Math.ceil(cellSize * Math.sqrt(size / MOST_UNKNOWNS) * 1.03 * 1000) / 1000;
  const allowed = `a grid of at most ${MOST_UNKNOWNS} unknowns, and this one has ${size}`;
  return [fault(['h_m'], cellSize, allowed, `Take about ${enough} m, or a smaller box.`)];
};

/**
 * A box checked: form, sizes, then whether sound can pass at all.
 * @throws {Refusal} bad-document with every fault
 */
export const checkedBox = (document: unknown): BoxDocument => {
  if (typeof document !== 'object' || document === null || Array.isArray(document))
    return refuse([
      fault([], document, 'an object with "geometry" and "h_m"', 'See lullwright box --help for its form.'),
    ]);
  const given: Readonly<Record<string, unknown>> = { ...document };
  const faults = [
    ...Object.keys(given)
      .filter((key) => !KEYS.includes(key))
      .map((key) => unknownKey([key], given[key], suggestion(key, KEYS))),
    ...KEYS.filter((key) => given[key] === undefined).map((key) => missingKey([key])),
  ];
  if (given['h_m'] !== undefined) faults.push(...cellSizeFaults(given['h_m']));
  const geometry = given['geometry'] === undefined ? null : readBoxGeometry(given['geometry'], faults);
  if (geometry === null || faults.length > 0) return refuse(faults);
  const inside = boxFaults(geometry).map(toFault);
  if (inside.length > 0) return refuse(inside);
  const cellSize = Number(given['h_m']);
  const grid = gridFaults(geometry, cellSize);
  return grid.length > 0 ? refuse(grid) : { geometry, cellSize };
};

/** The document of a box from the text of its file. @throws {Refusal} where it is not JSON */
export const boxFromText = (text: string): unknown => {
  try {
    return JSON.parse(text.replace(/^\uFEFF/, '')) as unknown;
  } catch (reason) {
    const what = text.trim() === '' ? 'it is empty' : `it is not complete JSON (${(reason as Error).message})`;
    const sentence = `This is not a box: ${what}. It must hold { "geometry": { … }, "h_m": 0.008 }.`;
    throw new Refusal({ code: 'bad-document', sentence });
  }
};
