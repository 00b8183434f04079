import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { soundResistance } from '../../../../src/engine/airflow/index.ts';
import {
  meshResistance,
  solveBoxCoarse,
  solveBoxWhole,
  ventTransmission,
  waveBoxSound,
} from '../../../../src/engine/openings/index.ts';
import type { VentElement, VentPath, VentPorts } from '../../../../src/engine/openings/index.ts';
import { seriesPole, wavePole, chained } from '../../../../src/engine/openings/fourPole.ts';
import { AIR_IMPEDANCE, THIRD_OCTAVES, complex, sectionArea } from '../../../../src/engine/quantities/index.ts';
import { DUCT_LENGTH, goldenBox } from '../../../reference/linedBox/goldenBox.ts';
import { repeatable } from '../../../support/repeatable.ts';
import { labyrinth, section } from './labyrinth.ts';

const area = sectionArea(section);
const duct: VentElement = {
  kind: 'duct',
  name: 'Duct',
  section,
  length: DUCT_LENGTH,
  roughness: 1e-4,
  lossFactor: 1,
  lining: null,
  place: 'wall',
  wall: { assembly: null, surfaceMass: 5 },
};
const cowl: VentElement = { kind: 'cowl', name: 'Cowl', section, loss: 1 };
const box: VentElement = {
  kind: 'box',
  name: 'Box',
  box: labyrinth,
  place: 'inside',
  casing: { assembly: null, surfaceMass: 40 },
};
const path = (...elements: VentElement[]): VentPath => ({ id: 'v', name: 'Vent', direction: 'supply', elements });
const vented = path(cowl, duct, box, duct, cowl);
const fine = waveBoxSound(labyrinth, solveBoxWhole);
const coarse = waveBoxSound(labyrinth, solveBoxCoarse);
const portsOf = (sound: typeof fine): VentPorts => ({ boxSound: () => sound, reduction: () => [] });
/** R along the air on the duct's area with both mouths held, partitions rigid, dB. */
const along = (held: number, sound = fine): number[] => {
  const mouth = (held * AIR_IMPEDANCE) / area;
  const vent = ventTransmission(vented, portsOf(sound), [mouth, 0, 0, 0, mouth]);
  const [air] = vent.ways;
  return vent.bands.map((_, b) => -10 * Math.log10((air?.openArea[b] ?? 0) / area) + (vent.partitions[b] ?? 0));
};
const from = THIRD_OCTAVES.indexOf(50);

describe('sound in a vent whose mouths hold the air back by 0.01 ρ0c0', () => {
  const golden = goldenBox('B07');
  const [still, flowing] = [along(0), along(0.01)];

  it('has the R of an independent wave solution with the same resistance (lined-box, R_box_r0.01)', () => {
    golden['R_box_r0.01'].slice(0, 17).forEach((known, i) => {
      expect(Math.abs((flowing[from + i] ?? 0) - known)).toBeLessThan(0.6);
    });
  });

  it('gains in the bass what that solution gains (IL_r0.01 less IL), 2 to 6 dB in the worst band', () => {
    const bass = golden.IL.slice(0, 8);
    const gains = bass.map((_, i) => (flowing[from + i] ?? 0) - (still[from + i] ?? 0));
    bass.forEach((loss, i) => {
      expect(Math.abs((gains[i] ?? 0) - ((golden['IL_r0.01'][i] ?? 0) - loss))).toBeLessThan(0.3);
    });
    const worst = gains[bass.indexOf(Math.min(...bass))] ?? 0;
    expect(worst).toBeGreaterThan(2);
    expect(worst).toBeLessThan(6);
  });

  it('never lets more through at a dip the more its mouths hold back', () => {
    const dips = still.flatMap((R, b) => {
      const [before = Infinity, after = Infinity] = [still[b - 1], still[b + 1]];
      return b >= from && (THIRD_OCTAVES[b] ?? 0) <= 250 && R < before && R < after ? [b] : [];
    });
    expect(dips.length).toBeGreaterThan(0);
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 0.3, noNaN: true }),
        fc.double({ min: 0.001, max: 0.3, noNaN: true }),
        (held, more) => {
          const [less, harder] = [along(held, coarse), along(held + more, coarse)];
          for (const b of dips) expect(harder[b]).toBeGreaterThanOrEqual((less[b] ?? 0) - 1e-9);
        },
      ),
      repeatable(11, 25),
    );
  });
});

describe('a resistance in the chain', () => {
  it('takes just the power that the rest of the balance lacks, and gives none', () => {
    const Z = AIR_IMPEDANCE / area;
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 3, noNaN: true }),
        fc.double({ min: 30, max: 2000, noNaN: true }),
        (r, frequency) => {
          const R = r * Z;
          const k = (2 * Math.PI * frequency) / 343.2;
          const pole = chained(wavePole(frequency, complex(k), area, 0.3), seriesPole(complex(R)));
          // source and end of ρ0c0/S: incident 1, transmitted t, reflected ρ
          const sum = [pole.a.re + pole.b.re / Z + pole.c.re * Z + pole.d.re, 0] as const;
          const im = pole.a.im + pole.b.im / Z + pole.c.im * Z + pole.d.im;
          const transmitted = 4 / (sum[0] ** 2 + im ** 2);
          const back = [pole.a.re + pole.b.re / Z - pole.c.re * Z - pole.d.re] as const;
          const backIm = pole.a.im + pole.b.im / Z - pole.c.im * Z - pole.d.im;
          const reflected = ((back[0] ** 2 + backIm ** 2) * transmitted) / 4;
          // the same volume velocity passes resistance and end: absorbed/transmitted = R/Z
          expect(transmitted + reflected + r * transmitted).toBeCloseTo(1, 9);
        },
      ),
      repeatable(12, 60),
    );
  });
});

describe('the resistance of flowing air', () => {
  const grille = { kind: 'grille', name: 'Grille', section, freeShare: 0.5 } as const;
  const curve = { flows: [0, 0.03, 0.06, 0.09], pressures: [120, 100, 55, 0] };
  const fan = { kind: 'fan', name: 'Fan', section, curve } as const;

  it('is ζ·U/c0 of a grille: 6 at 1 m/s is 0.0175 ρ0c0', () => {
    // the air room reckons with 1.2 kg/m³ where sound has 1.204
    const r = (soundResistance(grille, area, true) * area) / AIR_IMPEDANCE;
    expect(r / (6 / 343.2)).toBeCloseTo(1.2 / 1.204, 6);
    expect(soundResistance(cowl, 2 * area, true)).toBeCloseTo(2 * soundResistance(cowl, area, true), 6);
  });

  it('is the slope of a running fan’s curve, and none of a standing one, of a bend or of still air', () => {
    const slope = soundResistance(fan, 0.03, true);
    expect(slope).toBeGreaterThan(20 / 0.03);
    expect(slope).toBeLessThan(45 / 0.03);
    expect(soundResistance(fan, 0.03, false)).toBe(0);
    expect(soundResistance({ kind: 'bend', name: 'Bend', section, angle: 90, form: 'mitred' }, 0.03, true)).toBe(0);
    for (const piece of [grille, cowl, fan]) expect(soundResistance(piece, 0, true)).toBe(0);
  });

  it('changes nothing at no flow, and of a mesh leaves its own friction, about 0.001', () => {
    const ports = portsOf(coarse);
    const plain = ventTransmission(vented, ports).openArea;
    expect(ventTransmission(vented, ports, [0, 0, 0, 0, 0]).openArea).toEqual(plain);
    expect(meshResistance(63, 0.7)).toBeGreaterThan(0.0005);
    expect(meshResistance(63, 0.7)).toBeLessThan(0.002);
    // at no frequency less than the friction of steady flow, 32ηt/d² over the holes
    const steady = (32 * 1.81e-5 * 0.5e-3) / 1.2e-3 ** 2 / 0.7 / AIR_IMPEDANCE;
    expect(meshResistance(1, 0.7)).toBeGreaterThan(steady);
    expect(meshResistance(63, 0.3)).toBeGreaterThan(meshResistance(63, 0.7));
  });
});
