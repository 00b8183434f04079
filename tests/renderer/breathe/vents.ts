import type { VentBox, VentElement, VentPath } from '../../../src/engine/openings/index.ts';

const round = (diameter: number) => ({ shape: 'round', diameter }) as const;

/** A box of two partitions, lined 25 mm, as a builder would begin it. */
export const box: VentBox = {
  length: 1.2,
  width: 0.4,
  height: 0.15,
  partitions: [
    { at: 0.4, thickness: 0.018, gap: 0.1, side: 'N' },
    { at: 0.8, thickness: 0.018, gap: 0.1, side: 'S' },
  ],
  lining: { thickness: 0.025, airflowResistivity: 10_000, faces: false },
  ports: [
    { side: 'W', at: 0.2, across: 0, section: round(0.1) },
    { side: 'E', at: 0.2, across: 0, section: round(0.1) },
  ],
};

const board = { assembly: null, surfaceMass: 13 };

export const elements: readonly VentElement[] = [
  { kind: 'grille', name: 'Grille', section: round(0.1), freeShare: 0.6 },
  { kind: 'box', name: 'Box', box, place: 'inside', casing: board },
  {
    kind: 'duct',
    name: 'Duct through the wall',
    section: round(0.1),
    length: 0.3,
    roughness: 0.0001,
    lossFactor: 1,
    lining: null,
    place: 'wall',
    wall: board,
  },
  { kind: 'cowl', name: 'Cowl', section: round(0.1), loss: 1 },
];

export const path: VentPath = { id: 'supply', name: 'Supply', direction: 'supply', elements };
