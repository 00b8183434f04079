import { describe, expect, it } from 'vitest';
import { estimatedBoxSound, levelInRoom, ventNoise } from '../../../../src/engine/openings/index.ts';
import type { VentElement, VentPath, VentPorts } from '../../../../src/engine/openings/index.ts';
import { energySum } from '../../../../src/engine/quantities/index.ts';
import { noiseRating } from '../../../../src/engine/ratings/index.ts';

const round = (diameter: number) => ({ shape: 'round', diameter }) as const;
const ports: VentPorts = { boxSound: estimatedBoxSound, reduction: () => [] };
const working = { fanPressure: () => 60, grilleLoss: () => 6 };
const path = (...elements: VentElement[]): VentPath => ({ id: 'v', name: 'Vent', direction: 'supply', elements });
const duct = (name: string, lined = false): VentElement => ({
  kind: 'duct',
  name,
  section: round(0.125),
  length: 1,
  roughness: 1e-4,
  lossFactor: 1,
  lining: lined ? { thickness: 0.05, airflowResistivity: 10_000 } : null,
  place: 'inside',
  wall: { assembly: null, surfaceMass: 5 },
});
const bend = (form: 'mitred' | 'vaned', angle = 90): VentElement => ({
  kind: 'bend',
  name: 'Bend',
  section: round(0.125),
  angle,
  form,
  lining: null,
});
const grille = (name: string, diameter = 0.125): VentElement => ({
  kind: 'grille',
  name,
  section: round(diameter),
  freeShare: 0.5,
});
const fan: VentElement = {
  kind: 'fan',
  name: 'Fan',
  section: round(0.125),
  curve: { flows: [0, 0.05], pressures: [100, 0] },
  soundPower: null,
  type: 'axial',
};
const noise = (flow: number, ...elements: VentElement[]) => ventNoise(path(...elements), flow, working, ports);

describe('noise of a vent, piece by piece', () => {
  it('adds up to the whole at both ends', () => {
    const vent = noise(0.03, grille('Room grille'), duct('Duct'), bend('mitred'), fan, grille('Outer grille'));
    expect(vent.pieces.map(({ name }) => name)).toEqual(['Room grille', 'Duct', 'Bend', 'Fan', 'Outer grille']);
    for (const side of ['intoRoom', 'outwards'] as const)
      vent[side].forEach((level, o) => {
        expect(level).toBeCloseTo(energySum(vent.pieces.map((piece) => piece[side][o] ?? -100)), 3);
      });
  });

  it('names the loudest: a fan, or a narrow grille once the fan is far behind lining', () => {
    const near = noise(0.03, grille('Wide grille', 0.25), duct('Duct'), fan);
    expect(near.loudest?.name).toBe('Fan');
    const far = noise(
      0.03,
      grille('Narrow grille', 0.1),
      duct('One', true),
      duct('Two', true),
      duct('Three', true),
      fan,
    );
    expect(far.loudest?.name).toBe('Narrow grille');
    expect(noise(0, grille('Grille'), fan).loudest).toBeNull();
  });

  it('of a bend grows by half the angle and with the speed, by 15 dB a doubling and more', () => {
    const whole = (flow: number, angle = 90): number => energySum([...noise(flow, bend('mitred', angle)).intoRoom]);
    expect(whole(0.06) - whole(0.03)).toBeGreaterThan(15);
    expect(whole(0.06) - whole(0.03)).toBeLessThan(25);
    expect(whole(0.03) - whole(0.03, 45)).toBeCloseTo(3, 1);
  });

  it('is lost on its way like that of a fan: the far grille is quieter in the room the more lies between', () => {
    const outer = (...between: VentElement[]): number =>
      energySum([...(noise(0.03, ...between, grille('Outer')).pieces.at(-1)?.intoRoom ?? [])]);
    expect(outer(duct('Bare'))).toBeGreaterThan(outer(duct('Lined', true)) + 5);
  });

  it('in a box comes from the turns round its partitions, the more the narrower they are', () => {
    const box = (gap: number): VentElement => ({
      kind: 'box',
      name: 'Box',
      place: 'inside',
      casing: { assembly: null, surfaceMass: 12 },
      box: {
        length: 0.8,
        width: 0.4,
        height: 0.15,
        partitions: [{ at: 0.39, thickness: 0.012, gap, side: 'N' }],
        lining: null,
        ports: [
          { side: 'W', at: 0.2, across: 0, section: round(0.125) },
          { side: 'E', at: 0.2, across: 0, section: round(0.125) },
        ],
      },
    });
    const [wide, narrow] = [0.12, 0.05].map((gap) => energySum([...noise(0.03, box(gap)).intoRoom]));
    expect(narrow).toBeGreaterThan((wide ?? 0) + 10);
  });

  it('falls with lining between fan and room, and rises with the speed in the grille', () => {
    const rating = (...elements: VentElement[]): number =>
      noiseRating(levelInRoom(noise(0.025, ...elements).intoRoom, 40, 0.4));
    expect(rating(duct('Lined', true), fan)).toBeLessThan(rating(duct('Bare'), fan) - 5);
    const loudest = (flow: number): number => Math.max(...noise(flow, grille('Grille')).intoRoom);
    expect(loudest(0.02) - loudest(0.01)).toBeGreaterThan(12);
  });

  it('is nothing without flow', () => {
    expect(Math.max(...noise(0, fan).intoRoom)).toBeLessThan(-50);
  });
});
