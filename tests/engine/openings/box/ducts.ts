import type { BoxGeometry, BoxLining, BoxResult } from '../../../../src/engine/openings/index.ts';
import { solveBox } from '../../../../src/engine/openings/index.ts';

/** Simple boxes whose answers are known without solving them. */

export const HEIGHT = 0.15;
const AIR = { kind: 'air' } as const;

/** Ports of one width in the middle of both ends. */
export const endPorts = (width: number, port: number): BoxGeometry['ports'] => [
  { kind: 'side', side: 'W', centre: width / 2, width: port, area: port * HEIGHT },
  { kind: 'side', side: 'E', centre: width / 2, width: port, area: port * HEIGHT },
];

export const chamber = (length: number, width: number, port: number): BoxGeometry => ({
  length,
  width,
  height: HEIGHT,
  base: AIR,
  solids: [],
  linings: [],
  ports: endPorts(width, port),
});

/** An airway between two linings from end to end. */
export const linedDuct = (length: number, airway: number, thickness: number, sigma: number): BoxGeometry => {
  const width = airway + 2 * thickness;
  const filling = { kind: 'porous', airflowResistivity: sigma } as const;
  const lining = (y0: number, y1: number): BoxLining => ({ x0: 0, x1: length, y0, y1, filling });
  return { ...chamber(length, width, airway), linings: [lining(0, thickness), lining(width - thickness, width)] };
};

/** A straight duct with a closed branch in its middle. */
export const sideBranch = (duct: number, branch: number, depth: number): BoxGeometry => {
  const length = 0.6;
  const from = (length - branch) / 2;
  const port = { kind: 'side', centre: duct / 2, width: duct, area: duct * HEIGHT } as const;
  return {
    ...chamber(length, duct + depth, duct),
    solids: [
      { x0: 0, y0: duct, x1: from, y1: duct + depth },
      { x0: from + branch, y0: duct, x1: length, y1: duct + depth },
    ],
    ports: [
      { ...port, side: 'W' },
      { ...port, side: 'E' },
    ],
  };
};

/** Solved directly. @throws Error if it was stopped */
export const solvedAt = (geometry: BoxGeometry, cellSize: number, bands: readonly number[], lines = 1): BoxResult => {
  const result = solveBox(geometry, { cellSize, bands, frequenciesPerBand: lines, inside: true });
  if (result === null) throw new Error('was stopped');
  return result;
};
