import { expect, test } from 'vitest';
import { AIR_DENSITY, SOUND_SPEED } from '../../../src/engine/quantities/index.ts';
import { linkTransmission } from '../../../src/engine/transmission/links.ts';
import type { LeafResponse } from '../../../src/engine/transmission/links.ts';
import type { Link } from '../../../src/engine/transmission/index.ts';

const link: Link = {
  path: 'links',
  form: 'line',
  spacing: 0.6,
  pitch: 0.3,
  compliances: [{ compliance: 0, knee: 400, exponent: 0 }],
  bay: [0.6, 2.4],
  addedLoss: 0,
};

/** A mass-controlled leaf: V = 2/(ωm)²·∫ sinθ dθ; no free waves. */
const leaf = (mass: number, stiffness: number, frequency: number): LeafResponse => ({
  mass,
  stiffness,
  criticalFrequency: null,
  lossFactor: 0,
  velocity: 2 / (2 * Math.PI * frequency * mass) ** 2,
});

test('rigid lines between mass-controlled leaves follow the closed form', () => {
  // τL = 32ρ0²c0³/(2π·b·ω²·(m1√fc2 + m2√fc1)²), half of Davy (1991)
  const f = 400;
  const omega = 2 * Math.PI * f;
  const critical = (m: number, B: number): number => (SOUND_SPEED ** 2 / (2 * Math.PI)) * Math.sqrt(m / B);
  const [m1, B1, m2, B2] = [9, 500, 18, 1500];
  const sum = m1 * Math.sqrt(critical(m2, B2)) + m2 * Math.sqrt(critical(m1, B1));
  const closed = (32 * AIR_DENSITY ** 2 * SOUND_SPEED ** 3) / (2 * Math.PI * link.spacing * omega ** 2 * sum ** 2);
  expect(linkTransmission(link, leaf(m1, B1, f), leaf(m2, B2, f), f) / closed).toBeCloseTo(1, 3);
});

test('a more compliant link carries less in the middle bands, and one screwed at points not more than a line', () => {
  const soft: Link = { ...link, compliances: [{ compliance: 1e-6, knee: 200, exponent: 0 }] };
  const points: Link = { ...link, form: 'points' };
  for (const f of [500, 1000, 2000]) {
    const ends = [leaf(9, 500, f), leaf(9, 500, f)] as const;
    const rigid = linkTransmission(link, ...ends, f);
    expect(linkTransmission(soft, ...ends, f)).toBeLessThan(rigid);
    expect(linkTransmission(points, ...ends, f)).toBeLessThanOrEqual(rigid);
  }
});
