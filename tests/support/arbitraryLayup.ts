import fc from 'fast-check';
import type { Assembly, BoardLayer, CavityLayer, Layer } from '../../src/engine/assembly/index.ts';
import { BLOCK, GLASS, GYPSUM, LIMP, OSB, TOPPING, WOOL, sheet } from './layups.ts';

const boardLayer: fc.Arbitrary<BoardLayer> = fc
  .oneof(
    fc.record({
      m: fc.constantFrom(GYPSUM, OSB, GLASS, TOPPING, LIMP),
      h: fc.double({ min: 3, max: 30, noNaN: true }),
    }),
    fc.record({ m: fc.constant(BLOCK), h: fc.double({ min: 60, max: 250, noNaN: true }) }),
  )
  .map(({ m, h }) => sheet(m, h));

const cavityLayer: fc.Arbitrary<CavityLayer> = fc
  .record({
    depth: fc.double({ min: 0.006, max: 0.4, noNaN: true }),
    share: fc.constantFrom(0, 0.4, 1, 1.5),
    foam: fc.boolean(),
    framed: fc.boolean(),
    frame: fc.record({
      stud: fc.constantFrom('timber' as const, 'steel' as const, 'none' as const),
      arrangement: fc.constantFrom('common' as const, 'staggered' as const, 'twin' as const),
      fixing: fc.constantFrom('direct' as const, 'resilient-bar' as const, 'isolating-clip' as const),
      spacing: fc.constantFrom(0.3, 0.4, 0.6),
      barSpacing: fc.constantFrom(0.3, 0.6),
      gauge: fc.constantFrom(0.0004, 0.0008, 0.0015),
    }),
  })
  .map(({ depth, share, foam, framed, frame }) => ({
    kind: 'cavity' as const,
    depth,
    ...(share > 0 && {
      fill: {
        material: foam
          ? { ...LIMP, name: 'closed-cell foam', density: 20, youngsModulus: 4e6, poissonRatio: 0.1, lossFactor: 0.02 }
          : WOOL,
        thickness: share * depth,
      },
    }),
    ...(framed && { frame }),
  }));

/** Any build-up of one to three leaves, sensible or not. */
export const anyLayup: fc.Arbitrary<Assembly> = fc
  .record({
    leaves: fc.array(fc.array(boardLayer, { minLength: 1, maxLength: 2 }), { minLength: 1, maxLength: 3 }),
    cavities: fc.array(cavityLayer, { minLength: 2, maxLength: 2 }),
  })
  .map(({ leaves, cavities }) => ({
    name: 'any',
    layers: leaves.flatMap((boards, i): Layer[] => {
      const before = cavities[i - 1];
      return before ? [before, ...boards] : boards;
    }),
  }));
