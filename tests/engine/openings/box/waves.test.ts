import { describe, expect, test } from 'vitest';
import { AIR_LOSS } from '../../../../src/engine/openings/box/fluid.ts';
import { bandFrequencies } from '../../../../src/engine/openings/box/bandFrequencies.ts';
import { leastAttenuatedMode } from '../../../../src/engine/openings/box/linedFaces.ts';
import { boxField } from '../../../../src/engine/openings/index.ts';
import {
  SOUND_SPEED,
  complex,
  decayingRoot,
  minus,
  modulus,
  over,
  plus,
  scaled,
  times,
} from '../../../../src/engine/quantities/index.ts';
import type { Complex } from '../../../../src/engine/quantities/index.ts';
import checks from '../../../reference/linedBox/checks.json' with { type: 'json' };
import { geometryOf, goldenBox } from '../../../reference/linedBox/goldenBox.ts';
import { chamber, endPorts, linedDuct, sideBranch, solvedAt } from './ducts.ts';
import { chamberLoss, planeChamberLoss } from './modeMatching.ts';

const decibels = 20 / Math.LN10;
const lineOf = (geometry: Parameters<typeof solvedAt>[0], cellSize: number, band: number) => {
  const [line] = solvedAt(geometry, cellSize, [band]).bands[0]?.lines ?? [];
  if (line === undefined) throw new Error('no line');
  return line;
};
const wavenumber = (f: number): number => (2 * Math.PI * f) / SOUND_SPEED;

describe('a straight rigid duct', () => {
  const duct = chamber(0.6, 0.1, 0.1);
  test('loses what its air takes and nothing more, at every band', () => {
    for (const { band, planeLoss } of solvedAt(duct, 0.01, [50, 200, 1000, 1600]).bands) {
      const [f = NaN] = bandFrequencies(band, 1);
      expect(Math.abs(planeLoss - (decibels * wavenumber(f) * AIR_LOSS * 0.6) / 2)).toBeLessThan(0.002);
    }
  });
  test('delays by its length, with an error that falls with the fourth power of the cell', () => {
    const errors = [0.02, 0.01].map((cell) => {
      const { plane, frequency } = lineOf(duct, cell, 1600);
      const turn = (Math.atan2(plane.s21.im, plane.s21.re) + wavenumber(frequency) * 0.6) / 2 / Math.PI;
      return 2 * Math.PI * (turn - Math.round(turn));
    });
    const [coarse = NaN, fine = NaN] = errors.map(Math.abs);
    expect(fine).toBeLessThan(1e-3);
    expect(coarse / fine).toBeGreaterThan(12);
    expect(coarse / fine).toBeLessThan(20);
  });
});

describe('an expansion chamber', () => {
  test('follows mode matching within 0.15 dB up to 1.6 kHz', () => {
    const [length, width, port] = [0.5, 0.3, 0.1];
    const { bands } = solvedAt(chamber(length, width, port), 0.006, [63, 100, 200, 400, 630, 800, 1000, 1250, 1600]);
    expect(bands).toHaveLength(9);
    for (const { band, planeLoss } of bands) {
      const [f = NaN] = bandFrequencies(band, 1);
      expect(Math.abs(planeLoss - chamberLoss(f, length, width, port))).toBeLessThan(0.15);
    }
  });
  test('tends to the plane-wave formula at low frequencies', () => {
    const check = checks.find(({ id }) => id === 'expchamber-m9-l0.5');
    const { m = NaN, l = NaN } = { ...check?.inputs } as { m?: number; l?: number };
    const printed = Number({ ...(check?.expected as Record<string, number>) }['50']);
    expect(Math.abs(planeChamberLoss((50 * SOUND_SPEED) / 343, l, m) - printed)).toBeLessThan(0.02);
    const line = lineOf(chamber(l, 0.18, 0.02), 0.01, 50);
    const loss = -10 * Math.log10(line.planeToPlane);
    // the near field at the two steps lengthens the ducts, not the chamber: a few tenths of a decibel
    expect(Math.abs(loss - planeChamberLoss(line.frequency, l, m))).toBeLessThan(0.4);
  });
});

describe('a lined duct', () => {
  const attenuation = (halfAir: number, lining: number, f: number): number =>
    -decibels * decayingRoot(leastAttenuatedMode({ halfAir, lining, airflowResistivity: 10_000 }, f)).im;

  test.each(['liner-bulk-50', 'liner-bulk-25'])(
    '%s: least attenuated mode, and not the one from the hard wall',
    (id) => {
      const check = checks.find((it) => it.id === id);
      const { h_half: g = NaN, t = NaN } = { ...check?.inputs } as { h_half?: number; t?: number };
      const printed = Object.entries({ ...(check?.expected as Record<string, number>) });
      expect(printed).toHaveLength(21);
      for (const [band, rate] of printed) {
        const f = Number(band);
        // the air of a box has losses, that of the check has none and c = 343 m/s
        const air = (decibels * wavenumber(f) * AIR_LOSS) / 2;
        expect(Math.abs(attenuation(g, t, f) - rate)).toBeLessThan(0.05 + 1.1 * air + 0.005 * rate);
      }
    },
  );

  test('decays in the wave solution as its mode does, within 1.5 %', () => {
    for (const f of [250, 500, 1000, 1600]) {
      const field = boxField(linedDuct(0.9, 0.1, 0.05, 10_000), 0.01, f, 0);
      const middle = field.y.findIndex((y) => y > 0.0999);
      const at = (x: number): Complex => {
        const place = field.x.findIndex((it) => it > x - 1e-6) * field.y.length + middle;
        return complex(field.re[place] ?? NaN, field.im[place] ?? NaN);
      };
      // of one mode there and back: (p1 + p3)/2p2 = cosh γd
      const cosh = over(plus(at(0.35), at(0.55)), scaled(at(0.45), 2));
      const root = minus(times(cosh, cosh), complex(1));
      const half = Math.sqrt((modulus(root) + root.re) / 2);
      const sinh = complex(half, root.im / 2 / half);
      const rate = (decibels * Math.abs(Math.log(modulus(plus(cosh, sinh))))) / 0.1;
      expect(Math.abs(rate / attenuation(0.05, 0.05, f) - 1)).toBeLessThan(0.015);
    }
  });
});

describe('a side branch', () => {
  const [duct, branch, depth] = [0.06, 0.02, 0.2];
  const { bands } = solvedAt(sideBranch(duct, branch, depth), 0.005, [250, 315, 400, 500], 48);
  const lines = bands.flatMap((it) => it.lines);
  const loudest = lines.reduce((best, it) => (it.planeToPlane < best.planeToPlane ? it : best));

  test('stops the sound where a quarter of a wave fits into it, its mouth included', () => {
    const quarter = (length: number): number => SOUND_SPEED / 4 / length;
    expect(loudest.frequency).toBeLessThan(quarter(depth));
    expect(loudest.frequency).toBeGreaterThan(quarter(depth + 0.85 * branch));
    expect(-10 * Math.log10(loudest.planeToPlane)).toBeGreaterThan(20);
  });
  test('follows TL = 20 lg|1 + Z0/2Zb| around it with that one length', () => {
    const length = SOUND_SPEED / 4 / loudest.frequency;
    for (const { frequency, planeToPlane } of lines) {
      const ratio = ((branch / duct) * Math.tan(wavenumber(frequency) * length)) / 2;
      // nearer to the peak the width of a line decides
      if (Math.abs(ratio) > 1.5) continue;
      expect(Math.abs(-10 * Math.log10(planeToPlane) - 10 * Math.log10(1 + ratio ** 2))).toBeLessThan(0.3);
    }
  });
});

describe('laws', () => {
  test('what passes from the first port passes from the second, ports of different size', () => {
    const [one, other] = endPorts(0.3, 0.1);
    const geometry = { ...chamber(0.4, 0.3, 0.1), ports: [one, { ...other, width: 0.05, area: 0.0075 }] } as const;
    for (const band of [125, 1000]) {
      const { plane } = lineOf(geometry, 0.01, band);
      // pressure amplitudes: S21·w2 = S12·w1
      expect(
        Math.hypot(plane.s21.re * 0.05 - plane.s12.re * 0.1, plane.s21.im * 0.05 - plane.s12.im * 0.1),
      ).toBeLessThan(1e-9);
    }
  });
  test('energy is kept: 0.1 % up to 500 Hz, 1 % to 5 kHz', () => {
    const { bands, imbalance } = solvedAt(geometryOf(goldenBox('B07')), 0.008, [50, 125, 500, 1250, 2500, 5000]);
    const worst = (from: number, to: number): number =>
      Math.max(
        ...bands
          .filter(({ band }) => band >= from && band <= to)
          .map(({ lines: [it] }) => Math.abs(it?.inside?.imbalance ?? NaN)),
      );
    expect(worst(50, 500)).toBeLessThan(1e-3);
    expect(worst(1250, 5000)).toBeLessThan(0.01);
    expect(imbalance).toBe(worst(50, 5000));
  });
});
