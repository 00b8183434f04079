import { sectionArea } from '../quantities/index.ts';
import { AIR } from './box/boxGeometry.ts';
import type { BoxFilling, BoxGeometry, BoxLining, BoxPort, BoxRectangle } from './box/index.ts';
import type { VentBox, VentPort } from './ventElement.ts';

/** The wave solution's lining model holds up to here, Pa·s/m². */
const MOST_RESISTIVITY = 40_000;
const LEAST_RESISTIVITY = 500;

const clamp = (value: number, least: number, most: number): number => Math.min(most, Math.max(least, value));

/** Clear depth left of the edges by their lining, m. */
const edgeLining = ({ lining }: VentBox): number => lining?.thickness ?? 0;

/** In plan a duct keeps its area: w = S/H. */
const toPort = (port: VentPort, { height }: VentBox): BoxPort => {
  const area = sectionArea(port.section);
  if (port.side !== 'face') return { kind: 'side', side: port.side, centre: port.at, width: area / height, area };
  const half = Math.sqrt(area) / 2;
  return {
    kind: 'face',
    x0: port.at - half,
    x1: port.at + half,
    y0: port.across - half,
    y1: port.across + half,
    area,
  };
};

const solidsOf = (box: VentBox): BoxRectangle[] =>
  box.partitions.map(({ at, thickness, gap, side }) => {
    const open = gap + edgeLining(box);
    return side === 'N'
      ? { x0: at, x1: at + thickness, y0: 0, y1: box.width - open }
      : { x0: at, x1: at + thickness, y0: open, y1: box.width };
  });

/** Edges, partitions, and holes in the edges' lining where the ducts come in. */
const liningsOf = (box: VentBox, filling: BoxFilling): BoxLining[] => {
  const { length, width, height } = box;
  const t = edgeLining(box);
  if (t === 0) return [];
  const strip = (x0: number, y0: number, x1: number, y1: number, what = filling): BoxLining => ({
    x0: Math.max(0, x0),
    y0: Math.max(0, y0),
    x1: Math.min(length, x1),
    y1: Math.min(width, y1),
    filling: what,
  });
  const edges = [
    strip(0, 0, length, t),
    strip(0, width - t, length, width),
    strip(0, 0, t, width),
    strip(length - t, 0, length, width),
  ];
  const partitions = solidsOf(box).flatMap(({ x0, x1, y0, y1 }) => [
    strip(x0 - t, y0, x0, y1),
    strip(x1, y0, x1 + t, y1),
  ]);
  const holes = box.ports.flatMap(({ side, at, section }) => {
    const half = sectionArea(section) / height / 2;
    if (side === 'W') return [strip(0, at - half, t, at + half, AIR)];
    if (side === 'E') return [strip(length - t, at - half, length, at + half, AIR)];
    if (side === 'S') return [strip(at - half, 0, at + half, t, AIR)];
    return side === 'N' ? [strip(at - half, width - t, at + half, width, AIR)] : [];
  });
  return [...edges, ...partitions, ...holes];
};

/**
 * The plan of a baffled box for the wave solution: partitions as solids, lining on edges and partitions, on the flat
 * faces as a layered filling.
 * @param box m
 * @returns geometry; boxFaults says whether it can be solved
 * @validity the ducts keep their area, not their shape
 */
export const ventBoxGeometry = (box: VentBox): BoxGeometry => {
  const airflowResistivity = clamp(box.lining?.airflowResistivity ?? 10_000, LEAST_RESISTIVITY, MOST_RESISTIVITY);
  const t = edgeLining(box);
  const base: BoxFilling =
    box.lining?.faces === true
      ? { kind: 'linedFaces', height: box.height, thicknesses: [t, t], airflowResistivity }
      : AIR;
  return {
    length: box.length,
    width: box.width,
    height: box.height,
    base,
    solids: solidsOf(box),
    linings: liningsOf(box, { kind: 'porous', airflowResistivity }),
    ports: [toPort(box.ports[0], box), toPort(box.ports[1], box)],
  };
};
