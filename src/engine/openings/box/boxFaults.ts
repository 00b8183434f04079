import type { BoxFilling, BoxGeometry, BoxPort, BoxRectangle } from './boxGeometry.ts';
import { MERGED, SOLID, planGrid } from './planGrid.ts';
import { connected, portCells } from './boxConnection.ts';

/** One thing wrong with a box: where in the geometry, what stands there, what may, and the way out. */
export interface BoxFault {
  readonly path: readonly (string | number)[];
  readonly value: unknown;
  readonly allowed: string;
  readonly wayOut: string;
}

/** Smallest and largest box, m. */
const SIZES = { length: [0.05, 6], width: [0.05, 3], height: [0.02, 1.5] } as const;
const RESISTIVITIES = [500, 40_000] as const;
/** Edges may stand this far over the box by rounding, m. */
const ROUNDING = 1e-6;

const fault = (path: BoxFault['path'], value: unknown, allowed: string, wayOut: string): BoxFault[] => [
  { path, value, allowed, wayOut },
];

const sizeFaults = (geometry: BoxGeometry): BoxFault[] =>
  (['length', 'width', 'height'] as const).flatMap((key) => {
    const [least, most] = SIZES[key];
    const value = geometry[key];
    if (value >= least && value <= most) return [];
    return fault([key], value, `a number from ${least} to ${most} m`, 'Give the inside of the box in metres.');
  });

const fillingFaults = (filling: BoxFilling, height: number, path: BoxFault['path']): BoxFault[] => {
  if (filling.kind === 'air') return [];
  const { airflowResistivity: sigma } = filling;
  const [least, most] = RESISTIVITIES;
  const faults: BoxFault[] = [];
  if (!(sigma >= least && sigma <= most))
    faults.push(
      ...fault(
        path,
        sigma,
        `a flow resistivity from ${least} to ${most} Pa s/m2`,
        'Beyond it the model of the lining fails; for denser wool use 40000.',
      ),
    );
  if (filling.kind === 'porous') return faults;
  const [one, other] = filling.thicknesses;
  const both = one + other;
  const good = one >= 0 && other >= 0 && both > 0 && both < filling.height && (one === other || one * other === 0);
  if (!good || Math.abs(filling.height - height) > 1e-3)
    faults.push(
      ...fault(
        path,
        `${filling.height}, ${one}, ${other}`,
        'the height of the box and two equal thicknesses that leave air between them (or one of them 0)',
        'Make both linings of the flat faces alike, or line one face.',
      ),
    );
  return faults;
};

const rectangleFaults = (it: BoxRectangle, geometry: BoxGeometry, path: BoxFault['path']): BoxFault[] => {
  const text = [it.x0, it.y0, it.x1, it.y1].join(', ');
  const within = it.x0 >= -ROUNDING && it.y0 >= -ROUNDING;
  if (!within || !(it.x1 <= geometry.length + ROUNDING && it.y1 <= geometry.width + ROUNDING))
    return fault(
      path,
      text,
      `x0, y0, x1, y1 inside the box, x from 0 to ${geometry.length} m and y from 0 to ${geometry.width} m`,
      'Move it inside or enlarge the box.',
    );
  if (!(it.x1 - it.x0 >= MERGED && it.y1 - it.y0 >= MERGED))
    return fault(
      path,
      text,
      `x0 < x1 and y0 < y1, each at least ${MERGED * 1000} mm apart`,
      'Exchange the corners, thicken it or leave it out.',
    );
  return [];
};

const portFaults = (port: BoxPort, geometry: BoxGeometry, path: BoxFault['path']): BoxFault[] => {
  if (!(port.area >= 1e-5 && port.area <= 1))
    return fault(path, port.area, 'an area S from 0.00001 to 1 m2', 'Give the clear area of the duct.');
  if (port.kind === 'face') return rectangleFaults(port, geometry, path);
  const edge = port.side === 'W' || port.side === 'E' ? geometry.width : geometry.length;
  const [from, to] = [port.centre - port.width / 2, port.centre + port.width / 2];
  if (!(from >= -ROUNDING && to <= edge + ROUNDING))
    return fault(
      path,
      `from ${+from.toFixed(4)} to ${+to.toFixed(4)} m`,
      `within 0 to ${edge} m along side ${port.side}`,
      'Move its centre c, make it smaller, or enlarge the box.',
    );
  const wanted = port.area / geometry.height;
  if (!(Math.abs(port.width / wanted - 1) <= 0.02))
    return fault(
      path,
      port.width,
      `its area over the height, ${+wanted.toFixed(6)} m (within 2 %)`,
      'In plan a duct keeps its area, not its diameter: leave w out or set it to S/H.',
    );
  return [];
};

/** Faults that need the plan as a whole: a port that a solid closes, ports on each other, no way between them. */
const wayFaults = (geometry: BoxGeometry): BoxFault[] => {
  const grid = planGrid(geometry, Math.max(geometry.length, geometry.width));
  const cells = geometry.ports.map((port) => portCells(grid, port));
  const closed = cells.flatMap((list, index) =>
    list.length > 0 && list.every((cell) => grid.cells[cell] !== SOLID)
      ? []
      : fault(
          ['ports', index],
          'closed by a solid',
          'a port with nothing solid before it',
          'Move the port or the solid.',
        ),
  );
  if (closed.length > 0) return closed;
  const [one = [], other = []] = cells;
  const [first, second] = geometry.ports;
  const same = first.kind === second.kind && (first.kind === 'face' || first.side === (second as typeof first).side);
  if (same && one.some((cell) => other.includes(cell)))
    return fault(['ports', 1], 'on the first port', 'a place beside the first port', 'Move one of the two ports.');
  return connected(grid, one[0] ?? 0, other[0] ?? 0)
    ? []
    : fault(['solids'], 'a wall from side to side', 'solids that leave a way between the ports', 'Leave a gap in it.');
};

/**
 * Everything wrong with a box, in the order of its parts; an empty list for one that can be solved.
 * @param geometry as given; numbers may be anything
 */
export const boxFaults = (geometry: BoxGeometry): BoxFault[] => {
  const sizes = sizeFaults(geometry);
  if (sizes.length > 0) return sizes;
  const { height } = geometry;
  const faults = [
    ...fillingFaults(geometry.base, height, ['base']),
    ...geometry.solids.flatMap((it, n) => rectangleFaults(it, geometry, ['solids', n])),
    ...geometry.linings.flatMap((it, n) => [
      ...rectangleFaults(it, geometry, ['linings', n]),
      ...fillingFaults(it.filling, height, ['linings', n]),
    ]),
    ...geometry.ports.flatMap((it, n) => portFaults(it, geometry, ['ports', n])),
  ];
  return faults.length > 0 ? faults : wayFaults(geometry);
};
