import type { VentBox } from '../../../../src/engine/openings/index.ts';

/** Section of a duct of 125 mm. */
export const section = { shape: 'round', diameter: 0.125 } as const;

/** A lined box of 1.2 × 0.4 × 0.15 m with three partitions between two such ducts. */
export const labyrinth: VentBox = {
  length: 1.2,
  width: 0.4,
  height: 0.15,
  partitions: [
    { at: 0.291, thickness: 0.012, gap: 0.1, side: 'N' },
    { at: 0.594, thickness: 0.012, gap: 0.1, side: 'S' },
    { at: 0.897, thickness: 0.012, gap: 0.1, side: 'N' },
  ],
  lining: { thickness: 0.025, airflowResistivity: 10_000, faces: false },
  ports: [
    { side: 'W', at: 0.2, across: 0, section },
    { side: 'E', at: 0.2, across: 0, section },
  ],
};
