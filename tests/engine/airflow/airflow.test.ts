import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  carbonDioxideCourse,
  carbonDioxideOf,
  coolingFlow,
  fanPressure,
  leakageOf,
  openDoorExchange,
  operatingPoint,
  pathFlow,
  pathLoss,
  requiredFlow,
  roomMoisture,
  temperatureRise,
  timeToReach,
} from '../../../src/engine/airflow/index.ts';
import type { AirElement, AirPath, FanCurve } from '../../../src/engine/airflow/index.ts';
import { repeatable } from '../../support/repeatable.ts';

const section = { shape: 'round', diameter: 0.125 } as const;
const duct = (length: number): AirElement => ({
  kind: 'duct',
  name: 'Duct',
  section,
  length,
  roughness: 1e-4,
  lossFactor: 1,
});
const curve: FanCurve = { flows: [0, 0.03, 0.06, 0.09], pressures: [120, 100, 55, 0] };
const fan: AirElement = { kind: 'fan', name: 'Fan', section, curve };
const bend: AirElement = { kind: 'bend', name: 'Bend', section, angle: 90, form: 'mitred' };
const path = (id: string, direction: 'supply' | 'extract', ...elements: AirElement[]): AirPath => ({
  id,
  name: id,
  direction,
  elements,
});
const sealed = leakageOf(0, 40);

describe('the operating point', () => {
  it('lies where the fan gives what the path takes', () => {
    const supply = path('in', 'supply', duct(2), fan);
    const extract = path('out', 'extract', duct(2));
    const point = operatingPoint([supply, extract], sealed, true);
    const [into = 0, out = 0] = [point.flows['in'], point.flows['out']];
    expect(into).toBeGreaterThan(0.02);
    expect(into).toBeCloseTo(out, 9);
    expect(fanPressure(curve, into)).toBeCloseTo(pathLoss(supply, into) + pathLoss(extract, out), 4);
    expect(point.pressure).toBeCloseTo(pathLoss(extract, out), 4);
    expect(point.outdoorAir).toBeCloseTo(into, 9);
  });

  it('is no flow at all in a sealed room with one vent: the fan only raises the pressure', () => {
    const point = operatingPoint([path('in', 'supply', fan, duct(1))], sealed, true);
    expect(point.outdoorAir).toBeLessThan(1e-6);
    expect(point.pressure).toBeCloseTo(120, 0);
  });

  it('has no flow while the fan stands, whatever leaks', () => {
    const paths = [path('in', 'supply', fan, duct(1)), path('out', 'extract', duct(1))];
    expect(operatingPoint(paths, leakageOf(3, 40), false).outdoorAir).toBe(0);
  });

  it('lets a leaky room replace a missing vent', () => {
    const point = operatingPoint([path('in', 'supply', fan, duct(1))], leakageOf(6, 40), true);
    expect(point.leak).toBeGreaterThan(0.01);
    expect(point.leak).toBeCloseTo(point.flows['in'] ?? 0, 9);
  });

  it('never gains flow from another bend, a longer duct or a narrower grille', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.2, max: 8, noNaN: true }),
        fc.double({ min: 0.2, max: 0.9, noNaN: true }),
        fc.integer({ min: 0, max: 4 }),
        (length, freeShare, bends) => {
          const grille: AirElement = { kind: 'grille', name: 'Grille', section, freeShare };
          const elements = [grille, ...Array.from({ length: bends }, () => bend), duct(length), fan];
          const flow = pathFlow(path('p', 'supply', ...elements), 0, true);
          const harder = [
            [...elements, bend],
            [...elements, duct(1)],
            [{ ...grille, freeShare: freeShare * 0.8 }, ...elements.slice(1)],
          ];
          for (const more of harder) expect(pathFlow(path('p', 'supply', ...more), 0, true)).toBeLessThan(flow);
        },
      ),
      repeatable(4, 40),
    );
  });

  it('takes fan curves as falling everywhere', () => {
    let last = Infinity;
    for (let flow = 0; flow <= 0.12; flow += 0.001) {
      const pressure = fanPressure(curve, flow);
      expect(pressure).toBeLessThanOrEqual(last + 1e-9);
      last = pressure;
    }
  });

  it('spends more in a compressed flexible duct and in the narrow gap of a box', () => {
    const box = (gap: number): AirElement => ({
      kind: 'box',
      name: 'Box',
      box: { height: 0.3, partitions: [{ gap }, { gap }], lining: null, ports: [{ section }, { section }] },
    });
    const loss = (element: AirElement): number => pathLoss(path('p', 'supply', element), 0.03);
    expect(loss(box(0.05))).toBeGreaterThan(loss(box(0.1)) + 1);
    expect(loss({ ...duct(2), lossFactor: 4 } as AirElement)).toBeGreaterThan(loss(duct(2)));
  });
});

describe('CO2', () => {
  /** four players at the 0.008 L/s of a man of 21 to 30 years at 2 met (published table) */
  const generation = 4 * 8e-6;

  it('of players lies in the 28 to 39 L/h published for musicians', () => {
    for (const activity of ['playing-seated', 'playing-standing', 'drumming'] as const) {
      const rate = 3600 * 1000 * carbonDioxideOf([{ name: '', count: 1, activity, person: null }]);
      expect(rate).toBeGreaterThan(27.5);
      expect(rate).toBeLessThan(39.5);
    }
  });

  it('of four players in a sealed room of 30 m³ passes 1500 ppm after 17 min and 5000 ppm after 72 min', () => {
    const course = carbonDioxideCourse([{ name: '', duration: 2 * 3600, generation, flow: 0 }], 30, 420);
    expect((timeToReach(course, 1500) ?? 0) / 60).toBeCloseTo(16.9, 0);
    expect((timeToReach(course, 5000) ?? 0) / 60).toBeCloseTo(71.6, 0);
  });

  it('rises without turning back while people stay, and less with more air', () => {
    const flows = [0, 0.01, 0.02, 0.04, 0.08];
    const courses = flows.map((flow) => carbonDioxideCourse([{ name: '', duration: 7200, generation, flow }], 30, 420));
    for (const { concentrations } of courses)
      concentrations.forEach((value, i) => expect(value).toBeGreaterThanOrEqual(concentrations[i - 1] ?? 0));
    courses.forEach(({ peak }, i) => expect(peak).toBeLessThan(courses[i - 1]?.peak ?? Infinity));
  });

  it('settles where the required flow was worked out for', () => {
    const flow = requiredFlow(generation, 1000, 420);
    const course = carbonDioxideCourse([{ name: '', duration: 20 * 3600, generation, flow }], 30, 420);
    expect(course.peak).toBeCloseTo(1000, 1);
  });

  it('falls in a break with the door open', () => {
    const steps = [
      { name: 'play', duration: 3600, generation, flow: 0.01 },
      { name: 'break', duration: 600, generation: 0, flow: openDoorExchange(0.9, 2, 22, 10) },
    ];
    const { concentrations, peak } = carbonDioxideCourse(steps, 30, 420);
    expect(concentrations.at(-1)).toBeLessThan(peak / 2);
  });
});

describe('heat and moisture', () => {
  it('say that 1 kW at 40 L/s warms the air by 21 K, and that 5 K needs 167 L/s', () => {
    expect(temperatureRise(1000, 0.04)).toBeCloseTo(20.8, 1);
    expect(1000 * coolingFlow(1000, 5)).toBeCloseTo(166.7, 1);
  });

  it('dry the room with more air, and report when it holds no more', () => {
    const outdoor = { temperature: 5, relativeHumidity: 80 };
    const few = roomMoisture(1e-4, 0.02, outdoor, 21);
    const many = roomMoisture(1e-4, 0.06, outdoor, 21);
    expect(many.relativeHumidity).toBeLessThan(few.relativeHumidity);
    expect(many.dewPoint).toBeGreaterThan(1);
    expect(roomMoisture(1e-3, 0.002, outdoor, 21)).toMatchObject({ relativeHumidity: 100, saturated: true });
  });
});
