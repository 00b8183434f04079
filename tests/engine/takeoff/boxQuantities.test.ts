import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { VentBox } from '../../../src/engine/openings/index.ts';
import { boxQuantities, pieceArea } from '../../../src/engine/takeoff/index.ts';
import { repeatable } from '../../support/repeatable.ts';

const plain: VentBox = {
  length: 1,
  width: 0.5,
  height: 0.2,
  partitions: [],
  lining: null,
  ports: [
    { side: 'W', at: 0.25, across: 0, section: { shape: 'rectangular', width: 0.1, height: 0.1 } },
    { side: 'E', at: 0.25, across: 0, section: { shape: 'rectangular', width: 0.1, height: 0.1 } },
  ],
};
const board = (thickness: number) => ({ thickness, board: true });
const volume = (pieces: readonly { length: number; width: number; thickness: number; count: number }[]): number =>
  pieces.reduce((sum, piece) => sum + piece.length * piece.width * piece.thickness * piece.count, 0);

describe('what a box is put together of', () => {
  it('gives the boards of a simple box as added up by hand', () => {
    // 1 x 0.5 x 0.2 m inside, one board of 20 mm: 2 x 1.04 x 0.54 + 2 x 1.04 x 0.2 + 2 x 0.5 x 0.2 m²
    const { boards, outside, sealant, lidSeal } = boxQuantities(plain, [board(0.02)]);
    expect(pieceArea(boards)).toBeCloseTo(1.1232 + 0.416 + 0.2, 10);
    expect(outside.length * outside.width * outside.height).toBeCloseTo(1.04 * 0.54 * 0.24, 10);
    // twelve edges 4 x 1.7 m, two ducts 0.4 m round
    expect(sealant).toBeCloseTo(6.8 + 0.8, 10);
    expect(lidSeal).toBeCloseTo(3, 10);
  });

  it('saws partitions and lining as added up by hand', () => {
    const box: VentBox = {
      ...plain,
      lining: { thickness: 0.05, airflowResistivity: 10_000, faces: false },
      partitions: [{ at: 0.49, thickness: 0.02, gap: 0.15, side: 'N' }],
    };
    const { partitions, lining, sealant } = boxQuantities(box, [board(0.02)]);
    // 0.5 − 0.15 − 0.05 = 0.3 m long, 0.2 m high
    expect(partitions).toEqual([
      {
        name: 'partition',
        layer: null,
        length: expect.closeTo(0.3, 10) as number,
        width: 0.2,
        thickness: 0.02,
        count: 1,
      },
    ]);
    // near side in two strips beside the partition's foot, far side whole, two ends of 0.4 m, the partition twice 0.25 m
    expect(lining.map(({ name, length, count }) => [name, Number(length.toFixed(4)), count])).toEqual([
      ['near side', 0.49, 2],
      ['far side', 1, 1],
      ['end', 0.4, 2],
      ['partition', 0.25, 2],
    ]);
    expect(pieceArea(lining)).toBeCloseTo(0.2 * (0.98 + 1 + 0.8 + 0.5), 10);
    expect(sealant).toBeCloseTo(6.8 + 0.8 + 2 * 0.3 + 0.2, 10);
  });

  it('fills the space between inside and outside with boards, layer on layer', () => {
    const size = fc.double({ min: 0.1, max: 3, noNaN: true });
    fc.assert(
      fc.property(
        size,
        size,
        size,
        fc.array(fc.double({ min: 0.006, max: 0.05, noNaN: true }), { minLength: 1, maxLength: 4 }),
        (length, width, height, thicknesses) => {
          const { boards, outside } = boxQuantities({ ...plain, length, width, height }, thicknesses.map(board));
          const between = outside.length * outside.width * outside.height - length * width * height;
          expect(volume(boards)).toBeCloseTo(between, 8);
        },
      ),
      repeatable(41),
    );
  });

  it('fills the inside with air, lining and partitions', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 3 }),
        fc.double({ min: 0.01, max: 0.05, noNaN: true }),
        fc.boolean(),
        (count, t, faces) => {
          const partitions = Array.from({ length: count }, (_, i) => ({
            at: 0.3 * (i + 1),
            thickness: 0.018,
            gap: 0.1,
            side: i % 2 === 0 ? ('N' as const) : ('S' as const),
          }));
          const box: VentBox = {
            ...plain,
            length: 1.5,
            partitions,
            lining: { thickness: t, airflowResistivity: 1e4, faces },
          };
          const found = boxQuantities(box, [board(0.018)]);
          const clear = box.height - (faces ? 2 * t : 0);
          const reach = box.width - 0.1 - t;
          // between the edges' lining, less each partition with the lining on both its sides
          const air = ((box.length - 2 * t) * (box.width - 2 * t) - count * (0.018 + 2 * t) * (reach - t)) * clear;
          // the lining of the flat faces is told whole: partitions of full height stand in it
          const inFaces = faces ? count * 2 * t * 0.018 * reach : 0;
          expect(air + volume(found.lining) + volume(found.partitions) - inFaces).toBeCloseTo(
            box.length * box.width * box.height,
            8,
          );
        },
      ),
      repeatable(42),
    );
  });

  it('seals no joint of what is no board', () => {
    const layers = [board(0.018), { thickness: 0.002, board: false }, board(0.018)];
    const [three, two] = [boxQuantities(plain, layers), boxQuantities(plain, [board(0.018), board(0.018)])];
    expect(three.sealant).toBeCloseTo(two.sealant + 4 * 3 * 2 * 0.002, 10);
  });
});
