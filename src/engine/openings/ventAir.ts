import { AIR_IMPEDANCE, SOUND_SPEED, complex, plus, scaled, sectionArea } from '../quantities/index.ts';
import type { Complex, Section } from '../quantities/index.ts';
import { bandMean } from './bandLines.ts';
import { mouthImpedance } from './box/index.ts';
import { ductWavenumber } from './ductMode.ts';
import { meshResistance } from './meshResistance.ts';
import { STRAIGHT, chained, massOf, powerGain, seriesPole, wavePole } from './fourPole.ts';
import type { FourPole } from './fourPole.ts';
import { tabulated } from './tabulated.ts';
import { ventSections } from './ventElement.ts';
import type { VentElement } from './ventElement.ts';
import type { BoxSound } from './ventBoxSound.ts';

/** Air that moves with that in a grille's slots, m. @source engineering judgement: 10 to 30 mm */
const GRILLE_LENGTH = 0.02;
/** The box is solved from 50 Hz to 5 kHz; beyond it stays as at the end. */
const [LOWEST, HIGHEST] = [45, 5550];

/** A piece as a plane wave meets it, at any frequency. */
export type PlanePiece = (frequency: number) => FourPole;

const legLength = (element: VentElement): number => {
  if (element.kind === 'duct' || element.kind === 'transition') return element.length;
  if (element.kind !== 'bend') return 0;
  return element.section.shape === 'round' ? element.section.diameter : element.section.width;
};

/** What holds the air back where a grille, mesh, fan or cowl stands: mass in slots, friction in meshes, the flow. */
const heldPiece = (element: Extract<VentElement, { section: Section }>, held: number): PlanePiece => {
  const share = element.kind === 'grille' || element.kind === 'mesh' ? element.freeShare : 1;
  const area = sectionArea(element.section);
  const length = element.kind === 'grille' ? GRILLE_LENGTH : 0;
  const mesh = element.kind === 'mesh';
  return (frequency) => {
    const still = mesh ? (meshResistance(frequency, share) * AIR_IMPEDANCE) / area : 0;
    return seriesPole(plus(massOf(2 * Math.PI * frequency, length, area * share), complex(still + held)));
  };
};

/**
 * @param sound of the box, for a box
 * @param held resistance that the flow adds in grilles, meshes, fans and cowls, Pa·s/m³
 */
export const planePiece = (element: VentElement, sound: BoxSound | null, held = 0): PlanePiece => {
  if (element.kind === 'box')
    return (frequency) => sound?.pole(Math.min(HIGHEST, Math.max(LOWEST, frequency))) ?? STRAIGHT;
  if (['grille', 'mesh', 'fan', 'cowl'].includes(element.kind)) return heldPiece(element, held);
  const length = legLength(element);
  if (length === 0) return () => STRAIGHT;
  const lining = element.kind === 'duct' || element.kind === 'bend' ? element.lining : null;
  const wavenumber = tabulated((frequency) => ductWavenumber(frequency, element.section, lining));
  const area = sectionArea(element.section);
  return (frequency) => wavePole(frequency, wavenumber(frequency), area, length);
};

/** End correction where the clear area changes: 0.85a·(1 − 1.47√ε + 0.47√ε³). @source Ingard; Fok (from memory) */
const stepPiece = (from: Section, to: Section): PlanePiece => {
  const [one, other] = [sectionArea(from), sectionArea(to)];
  const [small, share] = [Math.min(one, other), Math.min(one, other) / Math.max(one, other)];
  if (share > 0.999) return () => STRAIGHT;
  const root = Math.sqrt(share);
  const length = 0.85 * Math.sqrt(small / Math.PI) * (1 - 1.47 * root + 0.47 * root ** 3);
  return (frequency) => seriesPole(massOf(2 * Math.PI * frequency, Math.max(0, length), small));
};

/** All pieces one after another, with the changes of area between them. */
export const planeChain = (elements: readonly VentElement[], pieces: readonly PlanePiece[]): PlanePiece => {
  const steps = elements.slice(1).map((element, i) => {
    const before = elements[i] ?? element;
    return stepPiece(ventSections(before)[1], ventSections(element)[0]);
  });
  return (frequency) =>
    pieces.reduce((pole, piece, i) => {
      const step = steps[i - 1]?.(frequency);
      return chained(step ? chained(pole, step) : pole, piece(frequency));
    }, STRAIGHT);
};

const mouth = (frequency: number, area: number): Complex =>
  scaled(mouthImpedance(frequency, area), AIR_IMPEDANCE / area);

/**
 * Open area of a way through the air per third octave: τS = S1·Q·<g>, Q = max(1, 4π/k²S1); the plane wave by its four-
 * pole between radiating mouths, the other travelling modes, k²S1/4π − 1 of them, by energy with matched mouths.
 * @param chain of the plane wave between the mouths
 * @param areas of the mouths: room, outdoors, m²
 * @param higher power transmission of the other modes, per band
 * @param bands nominal third octaves, Hz
 * @returns m² per band
 * @source reciprocal mouths in diffuse fields (derived): a mouth can take W = p²·π/(k²ρc) per mode, whatever its size
 */
export const airOpenArea = (
  chain: PlanePiece,
  areas: readonly [number, number],
  higher: (band: number) => number,
  bands: readonly number[],
): number[] => {
  const [one, other] = areas;
  return bands.map((band) => {
    const rest = higher(band);
    const mean = bandMean(band, (frequency) => {
      const modes = (((2 * Math.PI * frequency) / SOUND_SPEED) ** 2 * one) / (4 * Math.PI);
      const plane = powerGain(chain(frequency), mouth(frequency, one), mouth(frequency, other));
      return modes <= 1 ? plane / modes : (plane + (modes - 1) * rest) / modes;
    });
    return one * mean;
  });
};

/** A plain hole of an area through a wall. @param depth m */
export const holeOpenArea = (section: Section, depth: number, bands: readonly number[]): number[] => {
  const area = sectionArea(section);
  const chain: PlanePiece = (frequency) => wavePole(frequency, ductWavenumber(frequency, section, null), area, depth);
  return airOpenArea(chain, [area, area], () => 1, bands);
};
