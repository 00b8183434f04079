import { THIRD_OCTAVES, sectionArea, toLevel, toReduction } from '../quantities/index.ts';
import { rateThirdOctaves } from '../ratings/index.ts';
import { REFERENCE_AREA } from './measured.ts';
import { airOpenArea, holeOpenArea, planeChain, planePiece } from './ventAir.ts';
import { pieceTransmission } from './ventEnergy.ts';
import { partitionFactor } from './ventPartitions.ts';
import { ventSections } from './ventElement.ts';
import type { VentElement, VentPath } from './ventElement.ts';
import type { VentPorts, VentSound, VentWay } from './ventSound.ts';
import type { BoxSound } from './ventBoxSound.ts';
import { casingOpenArea, ductOpenArea } from './ventWalls.ts';

/** Depth of the plain hole to compare with where no duct stands in the wall, m. */
const WALL_DEPTH = 0.2;
/** What passes beside any silencer, against the plain hole, dB. @source engineering judgement: joints, board edges */
const JOINTS_BELOW_500 = 45;
const JOINTS_ABOVE = 50;

const bare = (element: VentElement): boolean =>
  element.kind !== 'box' && !((element.kind === 'duct' || element.kind === 'bend') && element.lining !== null);

/** Likely error, dB. @source engineering judgement; never compared with a measurement */
const spreadAt = (band: number, estimate: boolean): number => {
  if (estimate && band > 200) return 12;
  return band < 125 || band > 2000 ? 6 : 4;
};

const doubtAt = (band: number, estimate: boolean): string | null => {
  if (band < 50 || band > 5000) return 'Outside 50 Hz to 5 kHz the vent is taken as at the end of that range.';
  return estimate && band > 200 ? 'A quick estimate of the box: it may be 12 dB off, more in single bands.' : null;
};

const wallDepth = ({ elements }: VentPath): number =>
  elements.reduce(
    (sum, element) => sum + (element.kind === 'duct' && element.place === 'wall' ? element.length : 0),
    0,
  ) || WALL_DEPTH;

/**
 * Sound through a vent per third octave, all its ways added as open areas: along the air, through the casings of
 * boxes and the walls of ducts that stand in a room, and beside the silencer at its joints.
 * @param path from the music room outwards, at least one piece
 * @param ports what is needed of others
 * @param held resistance that flowing air adds in each piece, Pa·s/m³; none in still air
 * @returns ways, Dn,e and insertion loss against a plain hole
 * @throws RangeError for an empty path or a box that cannot be built
 * @validity 50 Hz to 5 kHz; rooms as diffuse half spaces, which small rooms are not below some 160 Hz; linings take
 * the same in flowing air. Never compared with a measurement.
 * @source air: plane-wave four-poles (Munjal 1987), boxes by the wave equation, and through their
 * partitions by R; walls: R by area; ISO 10140-2 for Dn,e
 */
export const ventTransmission = (path: VentPath, ports: VentPorts, held: readonly number[] = []): VentSound => {
  const { elements } = path;
  const bands = THIRD_OCTAVES;
  const [first, last] = [elements[0], elements.at(-1)];
  if (!first || !last) throw new RangeError('vent path must have at least 1 piece, got 0');
  const sounds = elements.map((element): BoxSound | null =>
    element.kind === 'box' ? ports.boxSound(element.box) : null,
  );
  const passing = elements.map((element, i) => {
    const values = new Map(bands.map((band) => [band, pieceTransmission(element, sounds[i] ?? null, band)]));
    return (band: number): number => values.get(band) ?? 1;
  });
  const through = (from: number, to: number) => (band: number) =>
    passing.slice(from, to).reduce((product, piece) => product * piece(band), 1);
  const chain = planeChain(
    elements,
    elements.map((element, i) => planePiece(element, sounds[i] ?? null, held[i] ?? 0)),
  );
  const [mouth, end] = [ventSections(first)[0], ventSections(last)[1]];
  const area = sectionArea(mouth);
  const round = airOpenArea(chain, [area, sectionArea(end)], through(0, elements.length), bands);
  const partitions = bands.map((band) =>
    elements.reduce((product, element, i) => {
      const sound = sounds[i];
      return element.kind === 'box' && sound ? product * partitionFactor(element.box, sound, band) : product;
    }, 1),
  );
  const air = round.map((passed, b) => passed * (partitions[b] ?? 1));
  const hole = holeOpenArea(mouth, wallDepth(path), bands);
  const far = holeOpenArea(end, wallDepth(path), bands);

  const walls = elements.flatMap((element, i): VentWay[] => {
    const sound = sounds[i];
    // a wall that lets everything in leaves no more than the room itself would send through the far mouth
    const onward = (openArea: readonly number[], place: string): number[] => {
      const out = place === 'outside';
      const beyond = out ? through(0, i) : through(i + 1, elements.length);
      const most = out ? hole : far;
      return openArea.map((passed, b) => beyond(bands[b] ?? 0) / (1 / passed + 1 / (most[b] ?? Infinity)));
    };
    if (element.kind === 'box' && sound && element.place !== 'wall') {
      const openArea = onward(casingOpenArea(element, sound, ports, bands), element.place);
      return [{ kind: 'casing', name: `Through the boards of ${element.name}`, element: i, openArea }];
    }
    if (element.kind === 'duct' && element.place !== 'wall') {
      const openArea = onward(ductOpenArea(element, passing[i] ?? (() => 1), ports, bands), element.place);
      return [{ kind: 'duct-wall', name: `Through the wall of ${element.name}`, element: i, openArea }];
    }
    return [];
  });
  const ways: VentWay[] = [{ kind: 'air', name: 'Along the air', element: null, openArea: air }, ...walls];
  if (!elements.every(bare))
    ways.push({
      kind: 'joints',
      name: 'Joints and board edges',
      element: null,
      openArea: hole.map((passed, b) => {
        const most = (bands[b] ?? 0) < 500 ? JOINTS_BELOW_500 : JOINTS_ABOVE;
        return passed * 10 ** (-most / 10);
      }),
    });
  const openArea = bands.map((_, b) => ways.reduce((sum, way) => sum + (way.openArea[b] ?? 0), 0));
  const normalisedDifference = openArea.map((passed) => toReduction(passed / REFERENCE_AREA));
  const estimate = sounds.some((sound) => sound?.estimate === true);
  return {
    bands,
    area,
    ways,
    openArea,
    hole,
    partitions: partitions.map(toLevel),
    insertionLoss: openArea.map((passed, b) => toReduction(passed / (hole[b] ?? 1))),
    normalisedDifference,
    ratings: rateThirdOctaves({ bands, values: normalisedDifference }),
    limiting: bands.map(
      (_, b) => ways.reduce((most, way) => ((way.openArea[b] ?? 0) > (most.openArea[b] ?? 0) ? way : most)).kind,
    ),
    spread: bands.map((band) => spreadAt(band, estimate)),
    extrapolated: bands.map((band) => doubtAt(band, estimate)),
    estimate,
  };
};
