import { describe, expect, it } from 'vitest';
import type { BreatheResult } from '../../../src/engine/breatheResult.ts';
import { createEvaluator } from '../../../src/engine/evaluate.ts';
import { checkProject } from '../../../src/project/check.ts';
import { toBreathe } from '../../../src/project/toBreathe.ts';
import { toBuild } from '../../../src/project/toEngine.ts';
import { ventedRoom } from '../../project/vents/ventedRoom.ts';

type Room = ReturnType<typeof ventedRoom>;

const evaluator = createEvaluator();
const breathed = (change: (room: Room) => void = () => undefined): BreatheResult => {
  const room = ventedRoom();
  change(room);
  const checked = checkProject(room);
  if (!checked.ok) throw new Error(checked.faults.map(({ sentence }) => sentence).join(' '));
  return evaluator.breathe(toBuild(checked.project), toBreathe(checked.project), 'draft');
};
/** Two dense boards with wool between, which a vent can spoil. */
const GOOD_WALL = [
  { kind: 'board', material: 'plasterboard-dense', thickness_mm: 15 },
  { kind: 'cavity', depth_mm: 150, fill: { material: 'mineral-wool-45', thickness_mm: 100 } },
  { kind: 'board', material: 'plasterboard-dense', thickness_mm: 15 },
];
const codes = ({ notes }: BreatheResult): readonly string[] => notes.map(({ code }) => code);
const present = breathed();

describe('vents and air of a room', () => {
  it('add up: what comes in goes out, and each vent has its share of the wall', () => {
    const [supply, extract] = present.vents;
    expect(supply?.flow).toBeCloseTo(extract?.flow ?? 0, 9);
    expect(present.air?.point.outdoorAir).toBeCloseTo(supply?.flow ?? 0, 9);
    for (const { cost, sound } of present.vents) {
      const i = sound.bands.indexOf(500);
      const alone = 10 ** (-(sound.normalisedDifference[i] ?? 0) / 10);
      const wall = (cost?.wallArea ?? 0) * 10 ** (-(cost?.wallR[i] ?? 0) / 10);
      expect(cost?.lost[i]).toBeCloseTo(10 * Math.log10((wall + 10 * alone) / wall), 9);
    }
  });

  it('are told for each path: insertion loss, Dn,e, R of the opening, Dn,e,w with C and Ctr, the wall and what it wants', () => {
    for (const { sound, R, cost } of present.vents) {
      sound.bands.forEach((_, b) => {
        const Dne = sound.normalisedDifference[b] ?? 0;
        // the opening of 130 mm square: R = Dn,e − 10 lg(A0/S)
        expect(R[b]).toBeCloseTo(Dne - 10 * Math.log10(10 / 0.13 ** 2), 6);
        const hole = -10 * Math.log10((sound.hole[b] ?? 0) / 10);
        expect(sound.insertionLoss[b]).toBeCloseTo(Dne - hole, 6);
        // as many vents as the wall has, each as good as wanted, cost it 1 dB
        const wanted = 10 ** (-(cost?.wanted[b] ?? 0) / 10);
        const wall = 10 ** (-(cost?.wallR[b] ?? 0) / 10);
        expect(10 * Math.log10((wall + (2 * 10 * wanted) / (cost?.wallArea ?? 1)) / wall)).toBeCloseTo(1, 6);
      });
      const { Rw, C, Ctr } = sound.ratings;
      expect([Rw, C, Ctr].every((it) => Number.isInteger(it))).toBe(true);
    }
  });

  it('take volume and floor from the surfaces', () => {
    const checked = checkProject(ventedRoom());
    expect(checked.ok && toBreathe(checked.project).air).toMatchObject({ volume: 48, floor: 20 });
  });

  it('have noise in the room from fan and grille, more with both vents than with one', () => {
    const each = present.vents.map(({ inRoom }) => inRoom?.noiseRating ?? 0);
    expect(present.inRoom?.noiseRating).toBeGreaterThanOrEqual(Math.max(...each));
    expect(present.inRoom?.noiseRating).toBeGreaterThan(10);
    expect(present.inRoom?.noiseRating).toBeLessThan(45);
  });

  it('let through less at the dips in the bass with the fan on than off, and never change without air', () => {
    for (const { sound, fanOff } of present.vents) {
      const bass = sound.bands.flatMap((band, b) => (band >= 50 && band <= 125 ? [b] : []));
      const worst = bass.reduce((least, b) => ((fanOff[b] ?? 0) < (fanOff[least] ?? 0) ? b : least), bass[0] ?? 0);
      expect(sound.insertionLoss[worst]).toBeGreaterThan((fanOff[worst] ?? 0) + 0.1);
    }
    const closed = breathed(({ surfaces, vents }) => {
      surfaces[0]?.openings?.splice(1, 1);
      vents.splice(1, 1);
    });
    expect(closed.vents[0]?.fanOff).toEqual(closed.vents[0]?.sound.insertionLoss);
  });

  it('name the piece that most of the noise comes from, and rate each by itself', () => {
    const loud = breathed(({ vents }) => {
      Object.assign(vents[0]?.elements[0] ?? {}, { section: { shape: 'round', diameter_mm: 80 }, free_percent: 40 });
    });
    const note = loud.notes.find(({ code }) => code === 'fan-heard');
    expect(note?.sentence).toContain('Most of it comes from Grille of Supply.');
    const [supply] = loud.vents;
    expect(supply?.noise.loudest?.name).toBe('Grille');
    const ratings = supply?.pieceRatings ?? [];
    expect(ratings).toHaveLength(supply?.noise.pieces.length ?? 0);
    expect(supply?.inRoom?.noiseRating).toBeGreaterThanOrEqual(Math.max(...ratings));
  });

  it('lose air with a narrower duct, and say so before it is too little', () => {
    const narrow = breathed(({ vents }) => {
      for (const element of vents[1]?.elements ?? [])
        Object.assign(element, { section: { shape: 'round', diameter_mm: 50 } });
    });
    expect(narrow.air?.point.outdoorAir).toBeLessThan((present.air?.point.outdoorAir ?? 0) / 2);
    expect(codes(narrow)).toContain('too-little-air');
    expect(codes(present)).not.toContain('too-little-air');
  });

  it('warn as of something that can hurt where there is no way out for used air', () => {
    const closed = breathed(({ surfaces, vents }) => {
      surfaces[0]?.openings?.splice(1, 1);
      vents.splice(1, 1);
    });
    const note = closed.notes.find(({ code }) => code === 'no-way-for-air');
    expect(note?.severity).toBe('caution');
    expect(note?.sentence).toContain('used air out');
    expect(closed.air?.point.outdoorAir).toBeLessThan(1e-6);
    expect(closed.notes.find(({ code }) => code === 'too-little-air')?.severity).toBe('caution');
  });

  it('always say when the air turns poor with the fan off, and to keep combustion out', () => {
    expect(codes(present)).toEqual(expect.arrayContaining(['fan-must-run', 'no-combustion', 'foam-lining']));
    const off = present.air?.scenarios.find(({ key }) => key === 'fan-off');
    expect(off?.course.peak).toBeGreaterThan(2500);
  });

  it('call a bare pipe a hole in a good wall, and give it what it would have to reach', () => {
    const bare = breathed((room) => {
      Object.assign(room.assemblies.wall, { layers: GOOD_WALL });
      room.vents[1]?.elements.splice(0, 1);
    });
    const note = bare.notes.find(({ code, about }) => code === 'bare-vent' && about.part === 'out');
    expect(note?.sentence).toContain('open hole');
    const extract = bare.vents[1];
    expect(extract?.cost?.lostOverall).toBeGreaterThan(6);
    const i = extract?.sound.bands.indexOf(500) ?? 0;
    expect(extract?.cost?.wanted[i]).toBeGreaterThan((extract?.sound.normalisedDifference[i] ?? 99) + 10);
  });

  it('say where as much goes through thin partitions as round them, and not of thick ones', () => {
    const lined = (thickness_mm: number) =>
      breathed(({ assemblies, vents }) => {
        Object.assign(assemblies.wall, { layers: GOOD_WALL });
        Object.assign(vents[0]?.elements[1] ?? {}, {
          length_m: 1.2,
          place: 'wall',
          partitions: [0.29, 0.59, 0.89].map((at_m, i) => ({
            at_m,
            thickness_mm,
            gap_mm: 100,
            side: i % 2 ? 'near' : 'far',
          })),
        });
      });
    const thin = lined(2);
    const note = thin.notes.find(({ code }) => code === 'thin-partitions');
    expect(note?.about.part).toBe('in');
    expect(note?.sentence).toMatch(/From \d+ Hz on as much goes through the partitions of Supply as round them/);
    expect(codes(lined(18))).not.toContain('thin-partitions');
  });

  it('know nothing of the air where the room has no floor and no volume is given', () => {
    const open = breathed(({ surfaces }) => surfaces.splice(1, 1));
    expect(open.air).toBeNull();
    expect(open.vents[0]?.flow).toBe(0);
    expect(open.vents[0]?.sound.ratings.Rw).not.toBeNull();
  });
});
