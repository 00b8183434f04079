import { SOUND_SPEED, exactCentre, sectionArea, sectionPerimeter, toTransmission } from '../quantities/index.ts';
import { massLaw } from '../transmission/index.ts';
import { breakInShare } from './box/index.ts';
import { liningAbsorption, nearestBand } from './ventEnergy.ts';
import type { VentBox, VentElement, VentWall } from './ventElement.ts';
import type { BoxSound } from './ventBoxSound.ts';
import type { VentPorts } from './ventSound.ts';

type Box = Extract<VentElement, { kind: 'box' }>;
type Duct = Extract<VentElement, { kind: 'duct' }>;

/** R of a wall per band: of its assembly at a size, or by its mass. */
export const wallReduction = (
  wall: VentWall,
  size: { readonly width: number; readonly height: number },
  ports: VentPorts,
  bands: readonly number[],
): readonly number[] =>
  wall.assembly ? ports.reduction(wall.assembly, size) : massLaw(wall.surfaceMass, bands).values;

/** All six faces less the two ducts, m². */
export const casingArea = ({ length, width, height, ports }: VentBox): number =>
  2 * (length * width + length * height + width * height) -
  ports.reduce((sum, { section }) => sum + sectionArea(section), 0);

/** Area of absorber that the air in a box sees, m². */
const linedArea = ({ length, width, height, partitions, lining }: VentBox): number => {
  if (lining === null) return 0;
  const edges = 2 * (length + width) * height;
  const sides = partitions.reduce((sum, { gap }) => sum + 2 * Math.max(0, width - gap) * height, 0);
  return edges + sides + (lining.faces ? 2 * length * width : 0);
};

/**
 * Share of what comes through the casing that leaves by the duct to the other side. From the wave solution by
 * reciprocity, as breakInShare. Without it as in a small room: η = So/(A + Si + So), and 1 below the box's first mode.
 * @param sound of the box
 * @param leaves the duct by which it leaves: 0 to the room, 1 outwards
 * @param band nominal third octave, Hz
 * @returns 0 to 1
 * @validity estimate only above the first mode; what the mouth throws back into its duct is not taken off
 * @source reciprocity (derived); Sabine (energy balance)
 */
export const casingShare = (box: VentBox, sound: BoxSound, leaves: 0 | 1, band: number): number => {
  const frequency = exactCentre(band);
  const out = sectionArea(box.ports[leaves].section);
  const square = sound.meanSquare?.[nearestBand(sound.bands, band)]?.[leaves];
  if (square !== undefined) return breakInShare(square, frequency, out, box.height);
  if (frequency < SOUND_SPEED / (2 * Math.max(box.length, box.width))) return 1;
  const back = sectionArea(box.ports[leaves === 0 ? 1 : 0].section);
  const absorbed = box.lining ? linedArea(box) * liningAbsorption(frequency, box.lining) : 0;
  return out / (absorbed + back + out);
};

/** Open area through the casing of a box, before what lies between it and the other side, m² per band. */
export const casingOpenArea = (
  { box, place, casing }: Box,
  sound: BoxSound,
  ports: VentPorts,
  bands: readonly number[],
): number[] => {
  const R = wallReduction(casing, { width: box.length, height: box.width }, ports, bands);
  const leaves = place === 'outside' ? 0 : 1;
  return bands.map((band, b) => casingShare(box, sound, leaves, band) * casingArea(box) * toTransmission(R[b] ?? 0));
};

/**
 * Open area through the wall of a duct: half of what comes in goes either way and is weakened on its way,
 * η = ½·(1 − e^(−mL))/(mL), m the power lost per metre.
 * @source energy balance (derived)
 */
export const ductOpenArea = (
  { section, length, wall }: Duct,
  transmission: (band: number) => number,
  ports: VentPorts,
  bands: readonly number[],
): number[] => {
  const around = sectionPerimeter(section);
  const R = wallReduction(wall, { width: length, height: around / 4 }, ports, bands);
  return bands.map((band, b) => {
    const lost = -Math.log(Math.max(1e-12, transmission(band)));
    const share = lost < 1e-6 ? 0.5 : (0.5 * (1 - Math.exp(-lost))) / lost;
    return share * around * length * toTransmission(R[b] ?? 0);
  });
};
