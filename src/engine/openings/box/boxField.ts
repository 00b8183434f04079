import type { BoxGeometry } from './boxGeometry.ts';
import { boxMesh } from './boxMesh.ts';
import { solveLine } from './boxSystem.ts';
import { directRoom } from './directRoom.ts';
import { planGrid } from './planGrid.ts';
import { meshPorts } from './portShapes.ts';
import { requireBox } from './requireBox.ts';

/** Pressure at every crossing of the grid lines, for unit amplitude arriving in the plane mode of one port. */
export interface BoxField {
  /** grid lines, m */
  readonly x: readonly number[];
  readonly y: readonly number[];
  /** at place i·(lines along y) + j; 0 inside solids */
  readonly re: Float64Array;
  readonly im: Float64Array;
  /** 1 where there is air or lining */
  readonly open: Uint8Array;
}

/**
 * Sound pressure in the box at one frequency, for drawing.
 * @param geometry plan of the box, m
 * @param cellSize h, m, > 0
 * @param frequency f, Hz, > 0
 * @param from port at which the sound arrives
 * @throws RangeError as boxSteps
 */
export const boxField = (geometry: BoxGeometry, cellSize: number, frequency: number, from: 0 | 1): BoxField => {
  requireBox(geometry, [cellSize]);
  const grid = planGrid(geometry, cellSize);
  const mesh = boxMesh(grid);
  const system = { mesh, ports: meshPorts(geometry, mesh), height: geometry.height };
  const { scattering, field } = solveLine(system, frequency, directRoom(mesh, system.ports));
  const pressure = field(scattering.modes.findIndex(({ port }) => port === from));
  const at = (values: Float64Array): Float64Array =>
    Float64Array.from(mesh.nodes, (node) => (node < 0 ? 0 : (values[node] ?? 0)));
  return {
    x: grid.x,
    y: grid.y,
    re: at(pressure.re),
    im: at(pressure.im),
    open: Uint8Array.from(mesh.nodes, (node) => (node < 0 ? 0 : 1)),
  };
};
