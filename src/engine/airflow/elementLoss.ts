import { hydraulicDiameter, sectionArea } from '../quantities/index.ts';
import { AIR_MASS_DENSITY, KINEMATIC_VISCOSITY } from './air.ts';
import { clearHeight } from './airElement.ts';
import type { AirBox, AirElement } from './airElement.ts';
import { frictionFactor } from './friction.ts';
import { INTO_DUCT, INTO_ROOM, TURN_BACK, bendLoss, grilleLoss } from './lossCoefficients.ts';

/** Pressure of moving air, ρv²/2, Pa. @param speed v, m/s */
export const velocityPressure = (speed: number): number => (AIR_MASS_DENSITY * speed ** 2) / 2;

/** Fastest air in a piece, m/s: in the free area of a grille, in the narrowest gap of a box. @param flow m³/s */
export const elementSpeed = (element: AirElement, flow: number): number => {
  if (element.kind === 'box') return flow / narrowest(element.box);
  const share = element.kind === 'grille' || element.kind === 'mesh' ? element.freeShare : 1;
  return flow / (sectionArea(element.section) * share);
};

const gapAreas = (box: AirBox): number[] => box.partitions.map(({ gap }) => gap * clearHeight(box));

const narrowest = (box: AirBox): number =>
  Math.min(...gapAreas(box), ...box.ports.map(({ section }) => sectionArea(section)));

/** Into the box, round each partition, out of it. */
const boxLoss = (box: AirBox, flow: number): number => {
  const [first, second] = box.ports.map(({ section }) => velocityPressure(flow / sectionArea(section)));
  const turns = gapAreas(box).reduce((sum, area) => sum + TURN_BACK * velocityPressure(flow / area), 0);
  return INTO_ROOM * (first ?? 0) + turns + INTO_DUCT * (second ?? 0);
};

/**
 * Pressure that one piece takes: Δp = (ζ + f·L/Dh)·ρv²/2. What changes of area between pieces take is not in it.
 * @param element the piece
 * @param flow m³/s, ≥ 0
 * @returns Pa; 0 for a fan
 * @validity fully developed flow; pieces close together interact
 * @source Darcy-Weisbach; loss coefficients as lossCoefficients; flexible ducts: Abushakra, Walker & Sherman (LBNL)
 */
export const elementLoss = (element: AirElement, flow: number): number => {
  if (flow === 0 || element.kind === 'fan' || element.kind === 'transition') return 0;
  if (element.kind === 'box') return boxLoss(element.box, flow);
  const speed = flow / sectionArea(element.section);
  const pressure = velocityPressure(speed);
  switch (element.kind) {
    case 'grille':
    case 'mesh':
      return grilleLoss(element.freeShare) * pressure;
    case 'bend':
      return bendLoss(element.form, element.angle) * pressure;
    case 'cowl':
      return element.loss * pressure;
    case 'duct': {
      const diameter = hydraulicDiameter(element.section);
      const f = frictionFactor((speed * diameter) / KINEMATIC_VISCOSITY, element.roughness / diameter);
      return ((f * element.length) / diameter) * element.lossFactor * pressure;
    }
  }
};
