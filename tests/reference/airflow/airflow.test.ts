import { describe, expect, it } from 'vitest';
import {
  EXERTIONS,
  bendLoss,
  carbonDioxideRate,
  concentrationAfter,
  contractionLoss,
  dewPoint,
  fanPressure,
  frictionFactor,
  grilleLoss,
  leastFreshAir,
  pathFlow,
  pathLoss,
  pieceLosses,
  saturationPressure,
} from '../../../src/engine/airflow/index.ts';
import type { AirElement, AirPath } from '../../../src/engine/airflow/index.ts';
import { equivalentDiameter, hydraulicDiameter } from '../../../src/engine/quantities/index.ts';
import rows from './checks.json' with { type: 'json' };

const row = (id: string) => {
  const found = rows.find((it) => it.id === id);
  if (!found) throw new Error(`no check ${id}`);
  return found;
};
const list = (id: string): readonly number[] => {
  const { expected } = row(id);
  if (!Array.isArray(expected)) throw new Error(`${id} is no list`);
  return expected.map(Number);
};

describe('CO2 by the published table', () => {
  const people = rows.filter(({ id }) => /^co2-(male|female)-\d/.test(id));

  it('holds all fourteen rows', () => expect(people).toHaveLength(14));

  it.each(people.map(({ id }) => id))('%s', (id) => {
    const [, sex = '', from = '', to = ''] = id.split('-');
    const age = `${from}-${to}`;
    const met = [1, 1.2, 1.4, 1.6, 2, 3, 4];
    list(id).forEach((expected, i) => {
      if ((sex !== 'male' && sex !== 'female') || !isAge(age)) throw new Error(`no person ${id}`);
      expect(1000 * carbonDioxideRate(met[i] ?? 0, { sex, age })).toBeCloseTo(expected, 6);
    });
  });

  it('fills a hall of 500 m³ to 6321 ppm in an hour (printed 0.006)', () => {
    const ppm = concentrationAfter(0, 0, 5 / 3600, 500 / 3600, 500, 3600);
    expect(Math.abs(ppm / 1e6 - Number(row('cinema-zero').expected))).toBeLessThan(0.0004);
  });
});

const ages = ['11-16', '16-21', '21-30', '30-40', '40-50', '50-60', '60-70'] as const;
const isAge = (age: string): age is (typeof ages)[number] => ages.some((it) => it === age);

describe('fresh air', () => {
  it('for music is 5.9 L/s a person at the standard density', () => {
    const [, , density = 0, combined = 0] = list('ashrae-music');
    expect(Math.abs((1000 * leastFreshAir(density, 100)) / density - combined)).toBeLessThan(0.05);
  });
});

describe('pressure losses', () => {
  it('follow the published friction factors', () => {
    expect(frictionFactor(1e5, 1e-4)).toBeCloseTo(Number(row('colebrook').expected), 9);
    expect(frictionFactor(128, 0.01)).toBeCloseTo(Number(row('laminar').expected), 12);
  });

  it('follow the published contraction', () => {
    expect(contractionLoss(0.16)).toBeCloseTo(Number(row('contraction').expected), 6);
  });

  it('follow the published table of loss coefficients', () => {
    const table = row('K-table').expected as Readonly<Record<string, number>>;
    expect(bendLoss('mitred', 90)).toBe(table['90 sharp']);
    expect(bendLoss('vaned', 90)).toBe(table['90 vanes']);
    expect(bendLoss('tight', 90)).toBe(table['90 r/d<1']);
    expect(bendLoss('smooth', 90)).toBe(table['90 r/d>1']);
    expect(bendLoss('mitred', 45)).toBe(table['45 sharp']);
    expect(grilleLoss(0.7)).toBeCloseTo(table['grille .7'] ?? 0, 9);
    for (const share of [0.6, 0.5, 0.4, 0.3, 0.2])
      expect(grilleLoss(share)).toBeCloseTo(table[`.${share * 10}`] ?? 0, 9);
  });

  it('take the printed sizes of rectangular ducts', () => {
    const sizes = row('rect-De').expected as unknown as Readonly<Record<string, readonly number[]>>;
    expect(equivalentDiameter(0.3, 0.1)).toBeCloseTo(sizes['300x100']?.[0] ?? 0, 4);
    expect(hydraulicDiameter({ shape: 'rectangular', width: 0.22, height: 0.055 })).toBeCloseTo(
      sizes['220x55']?.[1] ?? 0,
      4,
    );
  });

  it('add up to the worked path of 15 L/s: grille, four bends, 3 m of 100 mm duct', () => {
    const section = { shape: 'round', diameter: 0.1 } as const;
    const bend: AirElement = { kind: 'bend', name: 'Bend', section, angle: 90, form: 'mitred' };
    const path: AirPath = {
      id: 'p',
      name: 'p',
      direction: 'extract',
      elements: [
        { kind: 'grille', name: 'Grille', section, freeShare: 0.5 },
        { kind: 'duct', name: 'Duct', section, length: 3, roughness: 0.09e-3, lossFactor: 1 },
        bend,
        bend,
        bend,
        bend,
      ],
    };
    const [speed = 0, , , friction = 0, minor = 0, total = 0] = list('path-15Lps');
    const pieces = pieceLosses(path, 0.015);
    const duct = pieces.find(({ name }) => name === 'Duct');
    expect(Math.abs((duct?.speed ?? 0) - speed)).toBeLessThan(0.005);
    expect(Math.abs((duct?.loss ?? 0) - friction)).toBeLessThan(0.02);
    expect(Math.abs(pathLoss(path, 0.015) - total)).toBeLessThan(0.02);
    expect(Math.abs(pathLoss(path, 0.015) - (duct?.loss ?? 0) - minor)).toBeLessThan(0.02);
  });
});

describe('fans', () => {
  it('meet the printed system curve p = Q² near 22 m³/s and 480 Pa', () => {
    const curve = { flows: [10, 15, 20, 25, 30], pressures: [800, 700, 550, 380, 200] };
    let [low, high] = [10, 30];
    for (let i = 0; i < 60; i += 1) {
      const middle = (low + high) / 2;
      if (fanPressure(curve, middle) > middle ** 2) low = middle;
      else high = middle;
    }
    const [flow = 0, pressure = 0] = list('fan-op-seen');
    expect(Math.abs(low - flow)).toBeLessThan(0.2);
    expect(Math.abs(low ** 2 - pressure)).toBeLessThan(5);
  });

  it('give 15.1 L/s where a straight curve 60 Pa to 30 L/s meets p = 1.31e5·q²', () => {
    // one mitred bend of that loss: ζ·ρ/2/S² = 1.31e5 with the room's inlet and outlet taken together
    const section = { shape: 'round', diameter: 0.1 } as const;
    const area = (Math.PI * 0.1 ** 2) / 4;
    const loss = (1.31e5 * 2 * area ** 2) / 1.2 - 1.35;
    const path: AirPath = {
      id: 'p',
      name: 'p',
      direction: 'extract',
      elements: [
        { kind: 'fan', name: 'Fan', section, curve: { flows: [0, 0.03], pressures: [60, 0] } },
        { kind: 'cowl', name: 'Cowl', section, loss },
      ],
    };
    expect(1000 * pathFlow(path, 0, true)).toBeCloseTo(15.1, 1);
  });
});

describe('heat and moisture', () => {
  it('take people from the published table', () => {
    const table = row('people-heat').expected as unknown as Readonly<Record<string, readonly (readonly number[])[]>>;
    expect(EXERTIONS.listening.heat).toEqual(table['office']);
    expect(EXERTIONS['playing-seated'].heat).toEqual(table['standing']);
    expect(EXERTIONS['playing-standing'].heat).toEqual(table['light factory']);
    expect(EXERTIONS.drumming.heat).toEqual(table['dancing']);
  });

  it('find the printed dew point', () => expect(dewPoint(25, 50)).toBeCloseTo(Number(row('dew-25-50').expected), 6));

  it('find the saturation pressure within 0.4 % from 5 to 50 °C', () => {
    const values = list('svp');
    [5, 25, 50].forEach((temperature, i) => {
      expect(Math.abs(saturationPressure(temperature) / (values[i + 2] ?? 0) - 1)).toBeLessThan(0.004);
    });
  });
});
