import { planWidth } from './boxGeometry.ts';
import type { BoxGeometry, FacePort, SidePort } from './boxGeometry.ts';
import type { BoxMesh } from './boxMesh.ts';
import { lineAt } from './planGrid.ts';

/** A load vector on the unknowns that it touches. */
export interface PortShape {
  readonly node: Int32Array;
  readonly value: Float64Array;
}

/** A port on the mesh. */
export interface MeshPort {
  readonly kind: 'side' | 'face';
  /** width in plan from the actual nodes (side) or area over height (face), m */
  readonly width: number;
  readonly area: number;
  /** ∫ψ_m·N over the port; a face port has the plane mode only */
  readonly shape: (mode: number) => PortShape;
  /** pairs of nodes with ∫N·N over a side port; none on a face */
  readonly mass: { readonly row: Int32Array; readonly column: Int32Array; readonly value: Float64Array };
}

const NO_MASS = { row: new Int32Array(0), column: new Int32Array(0), value: new Float64Array(0) };

const sidePort = (port: SidePort, { grid, nodes }: BoxMesh): MeshPort => {
  const ny = grid.y.length;
  const alongY = port.side === 'W' || port.side === 'E';
  const lines = alongY ? grid.y : grid.x;
  const far = (alongY ? grid.x : grid.y).length - 1;
  const [from, to] = [lineAt(lines, port.centre - port.width / 2), lineAt(lines, port.centre + port.width / 2)];
  const fixed = port.side === 'E' || port.side === 'N' ? far : 0;
  const node = Int32Array.from({ length: to - from + 1 }, (_, n) =>
    alongY ? (nodes[fixed * ny + from + n] ?? -1) : (nodes[(from + n) * ny + fixed] ?? -1),
  );
  const places = lines.slice(from, to + 1);
  const start = places[0] ?? 0;
  const width = (places.at(-1) ?? 0) - start;
  const row: number[] = [];
  const column: number[] = [];
  const value: number[] = [];
  const add = (a: number, b: number, it: number): void => {
    row.push(Math.min(a, b));
    column.push(Math.max(a, b));
    value.push(it);
  };
  for (let n = 0; n + 1 < places.length; n += 1) {
    const length = (places[n + 1] ?? 0) - (places[n] ?? 0);
    const [a, b] = [node[n] ?? 0, node[n + 1] ?? 0];
    add(a, a, (5 * length) / 12);
    add(b, b, (5 * length) / 12);
    add(a, b, length / 12);
  }
  const shape = (mode: number): PortShape => {
    const psi = places.map((s) => (mode === 0 ? 1 : Math.SQRT2 * Math.cos((mode * Math.PI * (s - start)) / width)));
    const values = new Float64Array(places.length);
    for (let n = 0; n + 1 < places.length; n += 1) {
      const length = (places[n + 1] ?? 0) - (places[n] ?? 0);
      const [here, there] = [psi[n] ?? 0, psi[n + 1] ?? 0];
      values[n] = (values[n] ?? 0) + (length * (5 * here + there)) / 12;
      values[n + 1] = (values[n + 1] ?? 0) + (length * (here + 5 * there)) / 12;
    }
    return { node, value: values };
  };
  const mass = { row: Int32Array.from(row), column: Int32Array.from(column), value: Float64Array.from(value) };
  return { kind: 'side', width, area: port.area, shape, mass };
};

const facePort = (port: FacePort, { grid, nodes }: BoxMesh, height: number): MeshPort => {
  const ny = grid.y.length;
  const loads = new Map<number, number>();
  const [fromX, toX] = [lineAt(grid.x, port.x0), lineAt(grid.x, port.x1)];
  const [fromY, toY] = [lineAt(grid.y, port.y0), lineAt(grid.y, port.y1)];
  for (let i = fromX; i < toX; i += 1)
    for (let j = fromY; j < toY; j += 1) {
      const area = ((grid.x[i + 1] ?? 0) - (grid.x[i] ?? 0)) * ((grid.y[j + 1] ?? 0) - (grid.y[j] ?? 0));
      for (const place of [i * ny + j, i * ny + j + 1, (i + 1) * ny + j, (i + 1) * ny + j + 1]) {
        const node = nodes[place] ?? -1;
        loads.set(node, (loads.get(node) ?? 0) + area / 4 / height);
      }
    }
  const shape = { node: Int32Array.from(loads.keys()), value: Float64Array.from(loads.values()) };
  const total = shape.value.reduce((sum, it) => sum + it, 0);
  return { kind: 'face', width: total, area: port.area, shape: () => shape, mass: NO_MASS };
};

/** The box's two ports on its mesh. */
export const meshPorts = ({ ports, height }: BoxGeometry, mesh: BoxMesh): readonly [MeshPort, MeshPort] => {
  const [one, other] = ports.map((port) =>
    port.kind === 'side' ? sidePort(port, mesh) : facePort(port, mesh, height),
  );
  if (one === undefined || other === undefined) throw new RangeError('a box must have 2 ports, got fewer');
  return [one, other];
};

/** First frequency at which a port carries more than plane waves, Hz. */
export const cutOn = (geometry: BoxGeometry, soundSpeed: number): number =>
  Math.min(...geometry.ports.map((port) => soundSpeed / 2 / planWidth(port, geometry.height)));
