import { describe, expect, it } from 'vitest';
import {
  differenceOfArea,
  ductPole,
  ductWavenumber,
  lossRate,
  mouthImpedance,
  poleLoss,
  sabineRate,
  solveBoxCoarse,
  ventTransmission,
  waveBoxSound,
} from '../../../src/engine/openings/index.ts';
import type { VentBox, VentElement, VentPath } from '../../../src/engine/openings/index.ts';
import { STRAIGHT } from '../../../src/engine/openings/fourPole.ts';
import { complex } from '../../../src/engine/quantities/index.ts';
import { figure, list, record } from './rows.ts';

const FOOT = 0.3048;
const INCH = 0.0254;
const wool = (thickness: number) => ({ thickness, airflowResistivity: 10_000 });

describe('ducts', () => {
  it('that are bare lose less than was published for steel ducts, whose walls give way, up to 4 kHz', () => {
    for (const [octave, loss] of Object.entries(record('unlined-rect-PA1.42'))) {
      const section = { shape: 'rectangular', width: 32 * INCH, height: 36 * INCH } as const;
      const own = lossRate(ductWavenumber(Number(octave), section, null)) * FOOT;
      expect(own).toBeGreaterThan(0);
      // the published fit was made for 63 to 250 Hz; friction grows with the root of frequency
      expect(own).toBeLessThan(Number(octave) <= 4000 ? loss : 1.5 * loss);
      expect(16 * loss).toBeCloseTo(record('unlined-rect-PA1.42-16ft')[octave] ?? 0, 0);
      expect(record('unlined-rect-sectionA')[octave]).toBeLessThan(loss);
    }
  });

  it.each([
    ['lined-round-12in-1in', 12, 1],
    ['lined-round-18in-1in', 18, 1],
    ['lined-round-36in-1in', 36, 1],
    ['lined-round-12in-2in', 12, 2],
    ['lined-round-48in-2in', 48, 2],
  ] as const)(
    '%s: in the bass no more than was measured on steel ducts, at 250 Hz within 40 %%',
    (id, inches, lining) => {
      const rate = (octave: number): number =>
        lossRate(ductWavenumber(octave, { shape: 'round', diameter: inches * INCH }, wool(lining * INCH))) * FOOT;
      // from 500 Hz on the least mode promises up to eight times what was measured: legs are held to 25 dB
      for (const octave of [63, 125]) expect(rate(octave)).toBeLessThan((record(id)[octave] ?? 0) + 0.03);
      expect(Math.abs(rate(250) / (record(id)[250] ?? 1) - 1)).toBeLessThan(0.4);
    },
  );

  it('of 610 mm with 25 and 50 mm of lining hold the 25 dB in 10 m between them that a chart gives', () => {
    const section = { shape: 'rectangular', width: 0.61, height: 0.61 } as const;
    const [thin = 0, thick = 0] = [0.025, 0.05].map((t) => 10 * lossRate(ductWavenumber(250, section, wool(t))));
    expect(thin).toBeLessThan(figure('toolbox-lined-610'));
    expect(thick).toBeGreaterThan(figure('toolbox-lined-610'));
  });

  it('keep the 4 kHz band up to a height of 100 mm, and lose it beyond', () => {
    expect(Number(record('airway-height-100')['height_max_mm'])).toBe(100);
    const at = (height: number): number =>
      lossRate(ductWavenumber(4000, { shape: 'rectangular', width: 10 * height, height }, wool(0.05)));
    expect(at(0.1)).toBeGreaterThan(20);
    expect(at(0.2)).toBeLessThan(10);
  });

  it('take 1.05·α^1.4·P/S from a beam', () => {
    const section = { shape: 'rectangular', width: 0.1, height: 0.1 } as const;
    [0.1, 0.3, 0.5, 0.7, 1].forEach((absorption, i) => {
      expect(Math.abs(sabineRate(absorption, section) - (list('piening-0.1x0.1')[i] ?? 0))).toBeLessThan(0.02);
    });
  });
});

describe('changes of area', () => {
  it('of five times lose 2.5 dB', () => {
    expect(Math.abs(poleLoss(STRAIGHT, 1, 5) - figure('area-step-5'))).toBeLessThan(0.06);
  });

  it('in a lined chamber of ratio 9 follow the closed form: 1 neper of power along it', () => {
    for (const [kl, loss] of Object.entries(record('lined-chamber-m9'))) {
      // amplitude falls by half a neper
      const pole = ductPole(complex(Number(kl), -0.5), complex(1 / 9), 1);
      expect(Math.abs(poleLoss(pole, 1, 1) - loss)).toBeLessThan(0.02);
    }
  });

  it('have a mouth in a wall that moves 0.85 of its radius more, as a piston: 0.82 exactly', () => {
    const radius = Math.sqrt(0.01 / Math.PI);
    const added = mouthImpedance(50, 0.01).im / ((2 * Math.PI * 50) / 343.2) / radius;
    expect(added).toBeCloseTo(8 / (3 * Math.PI), 2);
    expect(Math.abs(added - (record('end-corr')['flanged'] ?? 0))).toBeLessThan(0.03);
  });
});

describe('whole vents', () => {
  const round = { shape: 'round', diameter: 0.1 } as const;
  const duct: VentElement = {
    kind: 'duct',
    name: 'Duct',
    section: round,
    length: 0.3,
    roughness: 1e-4,
    lossFactor: 1,
    lining: null,
    place: 'wall',
    wall: { assembly: null, surfaceMass: 5 },
  };
  const box: VentBox = {
    length: 0.8,
    width: 0.4,
    height: 0.15,
    partitions: [{ at: 0.39, thickness: 0.012, gap: 0.1, side: 'N' }],
    lining: { ...wool(0.05), faces: false },
    ports: [
      { side: 'W', at: 0.2, across: 0, section: round },
      { side: 'E', at: 0.2, across: 0, section: round },
    ],
  };
  const whole = (...elements: VentElement[]): number => {
    const path: VentPath = { id: 'v', name: 'v', direction: 'supply', elements };
    const { ratings } = ventTransmission(path, {
      boxSound: (it) => waveBoxSound(it, solveBoxCoarse),
      reduction: () => [],
    });
    return (ratings.Rw ?? 0) + (ratings.Ctr ?? 0);
  };

  it('have Dn,e 31.05 dB where 100 mm let everything through', () => {
    expect(differenceOfArea((Math.PI * 0.1 ** 2) / 4)).toBeCloseTo(figure('dne-open-100'), 2);
  });

  it('lie where inlets of their kind do: a pipe at 35 dB or less, a baffled box over 40 dB (Dn,e,w + Ctr)', () => {
    const { standard = 0, baffled_min: baffled = 0 } = record('dne-kinds');
    expect(whole(duct)).toBeLessThanOrEqual(standard);
    const casing = { assembly: null, surfaceMass: 25 };
    expect(whole({ kind: 'box', name: 'Box', box, place: 'inside', casing }, duct)).toBeGreaterThan(baffled);
  });
});
