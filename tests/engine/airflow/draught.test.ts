import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  evaluateAir,
  leakageOf,
  operatingPoint,
  outerPressures,
  pathLoss,
  stackPressure,
  windPressure,
} from '../../../src/engine/airflow/index.ts';
import type { AirElement, AirPath, AirPlan, Weather } from '../../../src/engine/airflow/index.ts';
import { repeatable } from '../../support/repeatable.ts';

const section = { shape: 'round', diameter: 0.15 } as const;
const grille: AirElement = { kind: 'grille', name: 'Grille', section, freeShare: 0.6 };
const curve = { flows: [0, 0.04, 0.08], pressures: [120, 90, 0] };
const fan: AirElement = { kind: 'fan', name: 'Fan', section, curve };
const vent = (id: string, direction: 'supply' | 'extract', ...more: AirElement[]): AirPath => ({
  id,
  name: id,
  direction,
  elements: [grille, ...more],
});
const paths = [vent('in', 'supply'), vent('out', 'extract')];
const sealed = leakageOf(0, 40);
const calm: Weather = {
  heightBetween: 0,
  indoorTemperature: 21,
  outdoorTemperature: 5,
  wind: 0,
  windOn: 'supply',
};
const flowIn = (weather: Partial<Weather>, running = false, through = paths): number =>
  operatingPoint(through, sealed, running, outerPressures({ ...calm, ...weather })).flows['in'] ?? 0;

describe('warm air that rises', () => {
  it('presses by about ρ·g·h·ΔT/T', () => {
    expect(stackPressure(2, 21, 11) / ((1.2 * 9.81 * 2 * 10) / 293)).toBeCloseTo(1.03, 1);
  });

  it('moves air up through both vents until they take all of its pressure', () => {
    const point = operatingPoint(paths, sealed, false, outerPressures({ ...calm, heightBetween: 2 }));
    const [into = 0, out = 0] = [point.flows['in'], point.flows['out']];
    expect(into).toBeCloseTo(out, 9);
    const [supply, extract] = paths;
    if (!supply || !extract) throw new Error('no paths');
    expect(pathLoss(supply, into) + pathLoss(extract, out)).toBeCloseTo(stackPressure(2, 21, 5), 6);
    // the lower mouth is drawn upon: the room stands under the outdoor air there
    expect(point.pressure).toBeLessThan(0);
  });

  it('moves √2 as much over twice the height, the other way where it is warmer outdoors, and nothing at one height', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.2, max: 6, noNaN: true }),
        fc.double({ min: -10, max: 18, noNaN: true }),
        (heightBetween, outdoorTemperature) => {
          const once = flowIn({ heightBetween, outdoorTemperature });
          const twice = flowIn({ heightBetween: 2 * heightBetween, outdoorTemperature });
          expect(once).toBeGreaterThan(0);
          expect(twice / once).toBeCloseTo(Math.SQRT2, 4);
        },
      ),
      repeatable(21, 25),
    );
    expect(flowIn({ heightBetween: 2, outdoorTemperature: 35 })).toBeLessThan(-0.005);
    expect(flowIn({ heightBetween: -2 })).toBeCloseTo(-flowIn({ heightBetween: 2 }), 9);
    expect(flowIn({})).toBe(0);
  });
});

describe('wind', () => {
  it('helps the vent that faces it and holds back the other', () => {
    expect(windPressure(5, true)).toBeGreaterThan(0);
    expect(windPressure(5, false)).toBeLessThan(0);
    expect(flowIn({ wind: 5 })).toBeGreaterThan(0);
    expect(flowIn({ wind: 5, windOn: 'extract' })).toBeCloseTo(-flowIn({ wind: 5 }), 9);
    expect(flowIn({ wind: 10 }) / flowIn({ wind: 5 })).toBeCloseTo(2, 4);
  });

  it('changes the working point of a fan: with it more, against it less', () => {
    const driven = [vent('in', 'supply', fan), vent('out', 'extract')];
    const without = flowIn({}, true, driven);
    expect(flowIn({ wind: 8 }, true, driven)).toBeGreaterThan(without);
    expect(flowIn({ wind: 8, windOn: 'extract' }, true, driven)).toBeLessThan(without);
    expect(flowIn({ heightBetween: 3 }, true, driven)).toBeGreaterThan(without);
  });
});

describe('a room in the weather', () => {
  const plan: AirPlan = {
    ...calm,
    volume: 40,
    floor: 16,
    people: [{ name: 'Players', count: 4, activity: 'playing-standing', person: null }],
    session: [{ name: 'Playing', duration: 3600, presence: 1, door: 'closed', fan: true }],
    target: 1000,
    outdoor: 420,
    perPerson: 0.008,
    changesAt50: 0,
    outdoorHumidity: 80,
    equipment: 0,
    mostRise: 5,
    door: null,
  };
  const driven = [vent('in', 'supply', fan), vent('out', 'extract')];
  const off = (air: ReturnType<typeof evaluateAir>): number =>
    air.scenarios.find(({ key }) => key === 'fan-off')?.course.peak ?? 0;

  it('has no air with the fan off by itself, and what warmth and wind give where they are told', () => {
    const [still, warm] = [evaluateAir(plan, driven), evaluateAir({ ...plan, heightBetween: 3, wind: 3 }, driven)];
    expect([still.still.outdoorAir, Math.abs(still.draught.stack), Math.abs(still.draught.wind)]).toEqual([0, 0, 0]);
    expect(warm.still.outdoorAir).toBeGreaterThan(0.005);
    expect(warm.draught.stack).toBeCloseTo(stackPressure(3, 21, 5), 9);
    expect(warm.draught.wind).toBeCloseTo(windPressure(3, true) - windPressure(3, false), 9);
    expect(off(warm)).toBeLessThan(off(still) - 500);
  });

  it('is told never to count on the weather', () => {
    const note = evaluateAir({ ...plan, heightBetween: 3, wind: 3 }, driven).notes.find(
      ({ code }) => code === 'fan-must-run',
    );
    expect(note?.severity).toBe('caution');
    expect(note?.sentence).toMatch(/Warmth and wind are reckoned to move \d+ L\/s .* The fan must run/);
  });
});
