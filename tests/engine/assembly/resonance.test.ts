import { describe, expect, test } from 'vitest';
import { massAirMassResonance, massAirMassResonances } from '../../../src/engine/assembly/index.ts';
import { GYPSUM, cavity, layup, sheet } from '../../support/layups.ts';

describe('mass-air-mass resonance', () => {
  // rule of thumb f0 = 60·√((m1 + m2)/(m1·m2·d)): 3 %
  test.each([
    ['one board each side of 90 mm', 8.4, 8.4, 0.09, 98],
    ['two boards each side of 90 mm', 16.8, 16.8, 0.09, 69],
    ['two dense boards each side of 200 mm', 25.2, 25.2, 0.2, 38],
    ['block and two dense boards on 100 mm', 200, 25.2, 0.1, 40],
    ['panes of 4 mm on 16 mm', 10, 10, 0.016, 212],
  ])('is the rule of thumb within 3 per cent: %s', (_, m1, m2, d, rule) => {
    expect(Math.abs(massAirMassResonance(m1, m2, d) / rule - 1)).toBeLessThan(0.03);
  });

  test('of 10 and 10 kg/m² on 100 mm is 84.76 Hz', () => {
    expect(Math.abs(massAirMassResonance(10, 10, 0.1) - 84.76)).toBeLessThan(0.05);
  });

  test('of four leaves are three, near 64, 97 and 199 Hz', () => {
    const board = sheet({ ...GYPSUM, density: 672 }, 12.5);
    const found = massAirMassResonances(layup(board, cavity(90), board, cavity(25), board, cavity(90), board));
    expect(found).toHaveLength(3);
    [64, 97, 199].forEach((f, i) => expect(Math.abs((found[i] ?? NaN) / f - 1)).toBeLessThan(0.03));
  });

  test('of two leaves is the closed form', () => {
    const [only] = massAirMassResonances(layup(sheet(GYPSUM, 12.5), cavity(70), sheet(GYPSUM, 25)));
    expect(only).toBeCloseTo(massAirMassResonance(8.75, 17.5, 0.07), 6);
  });

  test('refuses an impossible depth', () => {
    expect(() => massAirMassResonance(10, 10, 0)).toThrow('depth must be > 0 m, got 0');
  });
});
