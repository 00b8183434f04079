import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  complex,
  decayingRoot,
  modulus,
  over,
  plus,
  scaled,
  minus,
  squaredModulus,
  times,
} from '../../../src/engine/quantities/index.ts';
import { repeatable } from '../../support/repeatable.ts';

const number = fc.record({
  re: fc.double({ min: -1e3, max: 1e3, noNaN: true }),
  im: fc.double({ min: -1e3, max: 1e3, noNaN: true }),
});

test('division undoes multiplication', () => {
  fc.assert(
    fc.property(number, number, (a, b) => {
      fc.pre(modulus(b) > 1e-3);
      expect(modulus(minus(over(times(a, b), b), a))).toBeLessThan(1e-9 * (1 + modulus(a)));
    }),
    repeatable(11),
  );
});

test('the decaying root squares to its radicand and never grows', () => {
  fc.assert(
    fc.property(number, (a) => {
      fc.pre(a.im <= 0);
      const root = decayingRoot(a);
      expect(root.im).toBeLessThanOrEqual(0);
      expect(modulus(minus(times(root, root), a))).toBeLessThan(1e-6 * (1 + modulus(a)));
    }),
    repeatable(12),
  );
});

test('sum, scale and size of a complex number', () => {
  expect(plus(complex(1, 2), complex(3))).toEqual({ re: 4, im: 2 });
  expect(scaled(complex(1, -2), 3)).toEqual({ re: 3, im: -6 });
  expect(squaredModulus(complex(3, 4))).toBe(25);
});
