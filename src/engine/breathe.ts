import { evaluateAir, fanPressure, grilleLoss, soundResistance } from './airflow/index.ts';
import type { AirResult } from './airflow/index.ts';
import { breatheNotes } from './breatheNotes.ts';
import type { BreatheQuestion, BreatheResult, PlacedVent, RatedNoise, VentCost, VentReport } from './breatheResult.ts';
import { levelInRoom, ventNoise, ventTransmission, wantedDifference, withVents } from './openings/index.ts';
import type { VentPorts, VentSound } from './openings/index.ts';
import { THIRD_OCTAVES, energySum, toReduction } from './quantities/index.ts';
import { SPECTRA, noiseCriterion, noiseRating } from './ratings/index.ts';
import type { PartResult } from './shell/index.ts';

/** What a vent may cost its wall, dB: less is not noticed. */
const ALLOWED = 1;

/** Living noise A-weighted through a curve, unrounded, dB. @param R per third octave 25 Hz to 10 kHz */
export const overallReduction = (R: readonly number[]): number => {
  const { bands, values } = SPECTRA.C;
  const passed = bands.reduce((sum, band, i) => {
    return sum + 10 ** (((values[i] ?? 0) - (R[THIRD_OCTAVES.indexOf(band)] ?? 0)) / 10);
  }, 0);
  const all = values.reduce((sum, level) => sum + 10 ** (level / 10), 0);
  return toReduction(passed / all);
};

const costOf = (differences: readonly number[], wall: PartResult, count: number): VentCost => {
  const { R: wallR, area: wallArea } = wall;
  const whole = wallR.map((R, b) => withVents(R, wallArea, [differences[b] ?? 0]));
  return {
    surface: wall.id,
    wall: wall.name,
    wallR,
    wallArea,
    wanted: wallR.map((R) => wantedDifference(R, wallArea, ALLOWED, count)),
    lost: wallR.map((R, b) => R - (whole[b] ?? R)),
    lostOverall: overallReduction(wallR) - overallReduction(whole),
  };
};

const rated = (levels: readonly number[]): RatedNoise => ({
  levels,
  noiseRating: noiseRating(levels),
  noiseCriterion: noiseCriterion(levels),
});

/**
 * Vents and air of a room: sound through each vent and what it costs its wall, flows where fans and losses balance,
 * CO2, heat and moisture, noise of fan and flow, and what to beware of.
 * @param question vents, room and people
 * @param walls the surfaces of the shell as predicted
 * @param ports sound of boxes and R of casings
 * @returns everything in SI
 * @throws RangeError from the rooms
 */
export const breathe = (question: BreatheQuestion, walls: readonly PartResult[], ports: VentPorts): BreatheResult => {
  const { vents, reverberation } = question;
  const air: AirResult | null = question.air
    ? evaluateAir(
        question.air,
        vents.map(({ path }) => path),
      )
    : null;
  const volume = question.air?.volume ?? null;
  const toRoom = (power: readonly number[]): RatedNoise | null =>
    volume === null ? null : rated(levelInRoom(power, volume, reverberation));

  const report = ({ path, opening, surface }: PlacedVent): VentReport => {
    const soundAt = (flow: number, running: boolean): VentSound =>
      ventTransmission(
        path,
        ports,
        path.elements.map((element) => soundResistance(element, flow, running)),
      );
    const sound = soundAt(air?.point.flows[path.id] ?? 0, true);
    const wall = walls.find(({ id }) => id === surface);
    const own = walls.find(({ id }) => id === opening);
    const flow = Math.abs(air?.point.flows[path.id] ?? 0);
    const working = {
      grilleLoss,
      fanPressure: (at: number): number => {
        const fan = path.elements[at];
        return fan?.kind === 'fan' ? fanPressure(fan.curve, flow) : 0;
      },
    };
    const noise = ventNoise(path, flow, working, ports);
    return {
      id: path.id,
      name: path.name,
      opening,
      direction: path.direction,
      sound,
      fanOff: air ? soundAt(air.still.flows[path.id] ?? 0, false).insertionLoss : sound.insertionLoss,
      R: sound.openArea.map((passed) => toReduction(passed / (own?.area ?? sound.area))),
      cost: wall
        ? costOf(sound.normalisedDifference, wall, vents.filter((other) => other.surface === surface).length)
        : null,
      flow: air?.point.flows[path.id] ?? 0,
      noise,
      inRoom: toRoom(noise.intoRoom),
      pieceRatings:
        volume === null
          ? null
          : noise.pieces.map(({ intoRoom }) => noiseRating(levelInRoom(intoRoom, volume, reverberation))),
    };
  };

  const reports = vents.map(report);
  const [first] = reports;
  const inRoom = first
    ? toRoom(first.noise.intoRoom.map((_, o) => energySum(reports.map(({ noise }) => noise.intoRoom[o] ?? -100))))
    : null;
  return { vents: reports, air, inRoom, notes: [...(air?.notes ?? []), ...breatheNotes(question, reports, inRoom)] };
};
