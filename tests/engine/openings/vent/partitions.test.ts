import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  partitionFactor,
  solveBoxCoarse,
  ventTransmission,
  waveBoxSound,
} from '../../../../src/engine/openings/index.ts';
import type { VentBox, VentPath } from '../../../../src/engine/openings/index.ts';
import { repeatable } from '../../../support/repeatable.ts';

const round = (diameter: number) => ({ shape: 'round', diameter }) as const;
const boxOf = (thickness: number, lining = 0.025): VentBox => ({
  length: 1.2,
  width: 0.4,
  height: 0.15,
  partitions: [0.29, 0.6, 0.9].map((at, i) => ({ at, thickness, gap: 0.1, side: i % 2 === 0 ? 'N' : 'S' })),
  lining: { thickness: lining, airflowResistivity: 10_000, faces: false },
  ports: [
    { side: 'W', at: 0.2, across: 0, section: round(0.125) },
    { side: 'E', at: 0.2, across: 0, section: round(0.125) },
  ],
});
const box = boxOf(0.012);
const sound = waveBoxSound(box, solveBoxCoarse);
const raised = (thickness: number, band: number): number =>
  10 * Math.log10(partitionFactor(boxOf(thickness), sound, band));

describe('partitions that pass sound themselves', () => {
  it('let no more through the heavier they are, well below their coincidence', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.004, max: 0.01, noNaN: true }),
        fc.constantFrom(160, 200, 250, 315, 400),
        (thickness, band) => {
          // that of a wood-based board of 13 mm lies at 1.9 kHz
          expect(raised(thickness * 1.3, band)).toBeLessThanOrEqual(raised(thickness, band) + 1e-9);
        },
      ),
      repeatable(13, 60),
    );
  });

  it('change nothing in the bass, nor without partitions, and never take anything away', () => {
    for (const band of [50, 63, 80, 100, 125]) expect(raised(0.012, band)).toBe(0);
    expect(partitionFactor({ ...box, partitions: [] }, sound, 1000)).toBe(1);
    for (const band of sound.bands) expect(raised(0.012, band)).toBeGreaterThanOrEqual(0);
  });

  it('fill the deepest bands most, and leave those alone where the way round them passes more', () => {
    const losses = sound.transmission.map((t) => -10 * Math.log10(t));
    const at = (band: number): number => sound.bands.indexOf(band);
    expect((losses[at(1250)] ?? 0) - (losses[at(2500)] ?? 99)).toBeGreaterThan(15);
    expect(raised(0.012, 1250)).toBeGreaterThan(1.5);
    expect(raised(0.012, 2500)).toBeLessThan(1);
  });

  it('hold a stage to some 25 to 40 dB when the way round it passes nothing at all', () => {
    const closed = { ...sound, transmission: sound.transmission.map(() => 1e-12) };
    for (const band of [500, 1000]) {
      const through = 10 * Math.log10(1e-12 * partitionFactor(box, closed, band));
      // R of 9 to 12 mm board is 22 to 30 dB; "about 40 dB a partition" is what no such box passes
      expect(-through / 3).toBeGreaterThan(22);
      expect(-through / 3).toBeLessThan(40);
    }
  });

  it('are alike from both sides, and are in the way along the air', () => {
    const lopsided: VentBox = {
      ...box,
      partitions: [{ at: 0.3, thickness: 0.009, gap: 0.1, side: 'N' }],
      ports: [
        { side: 'W', at: 0.2, across: 0, section: round(0.1) },
        { side: 'E', at: 0.2, across: 0, section: round(0.16) },
      ],
    };
    const turned: VentBox = {
      ...lopsided,
      partitions: [{ at: 0.891, thickness: 0.009, gap: 0.1, side: 'N' }],
      ports: [
        { side: 'W', at: 0.2, across: 0, section: round(0.16) },
        { side: 'E', at: 0.2, across: 0, section: round(0.1) },
      ],
    };
    const same = waveBoxSound(lopsided, solveBoxCoarse);
    for (const band of [250, 500, 1000])
      expect(partitionFactor(turned, same, band)).toBeCloseTo(partitionFactor(lopsided, same, band), 9);
    const path: VentPath = {
      id: 'v',
      name: 'v',
      direction: 'supply',
      elements: [{ kind: 'box', name: 'Box', box, place: 'wall', casing: { assembly: null, surfaceMass: 12 } }],
    };
    const vent = ventTransmission(path, { boxSound: () => sound, reduction: () => [] });
    vent.bands.forEach((band, b) => {
      if (band >= 50 && band <= 5000) expect(vent.partitions[b]).toBeCloseTo(raised(0.012, band), 9);
    });
    expect(Math.max(...vent.partitions)).toBeGreaterThan(1.5);
  });
});
