import { hydraulicDiameter, sectionArea } from '../quantities/index.ts';
import type { Section } from '../quantities/index.ts';
import { endSections } from './airElement.ts';
import type { AirElement } from './airElement.ts';
import { elementLoss, elementSpeed, velocityPressure } from './elementLoss.ts';
import { fanPressure } from './fanCurve.ts';
import { INTO_DUCT, INTO_ROOM, TAPERED, contractionLoss, enlargementLoss } from './lossCoefficients.ts';

/** One way for the air between the room and outdoors. */
export interface AirPath {
  readonly id: string;
  readonly name: string;
  readonly direction: 'supply' | 'extract';
  /** from the room outwards */
  readonly elements: readonly AirElement[];
}

/** What one piece of a path does at a flow. */
export interface PieceLoss {
  readonly name: string;
  /** place in the path's elements; null for what lies between or at its ends */
  readonly element: number | null;
  /** Pa, taken from the air */
  readonly loss: number;
  /** m/s; null where it is told with its neighbours */
  readonly speed: number | null;
}

/** Steepest taper that counts as one, tan of half the angle: 8°. */
const GENTLE = Math.tan((8 * Math.PI) / 180);

const gentle = (between: AirElement | null, from: Section, to: Section): boolean =>
  between?.kind === 'transition' &&
  Math.abs(hydraulicDiameter(from) - hydraulicDiameter(to)) / 2 <= GENTLE * between.length;

/** Loss where the clear area changes. */
const stepLoss = (from: Section, to: Section, flow: number, taper: boolean): number => {
  const [before, after] = [sectionArea(from), sectionArea(to)];
  const ratio = Math.min(before, after) / Math.max(before, after);
  if (ratio > 0.999) return 0;
  const zeta = after > before ? enlargementLoss(ratio) : contractionLoss(ratio);
  return (taper ? TAPERED : 1) * zeta * velocityPressure(flow / Math.min(before, after));
};

/**
 * Every loss along a path, in the direction of the flow: into it, its pieces, changes of area between them, out of it.
 * @param path from the room outwards; of a supply path the air meets the last piece first
 * @param flow m³/s, ≥ 0
 * @returns Pa and m/s, one entry a piece
 * @source as elementLoss
 */
export const pieceLosses = ({ elements, direction }: AirPath, flow: number): PieceLoss[] => {
  const along = elements.map((element, index) => ({ element, index }));
  if (direction === 'supply') along.reverse();
  const solid = along.filter(({ element }) => element.kind !== 'transition');
  const [first, last] = [solid[0], solid.at(-1)];
  if (!first || !last) return [];
  const sectionsAlong = (element: AirElement): readonly [Section, Section] => {
    const [inner, outer] = endSections(element);
    return direction === 'supply' ? [outer, inner] : [inner, outer];
  };
  const pieces: PieceLoss[] = [];
  const say = (name: string, element: number | null, loss: number, speed: number | null): void => {
    pieces.push({ name, element, loss, speed });
  };
  const entry = velocityPressure(flow / sectionArea(sectionsAlong(first.element)[0]));
  say('Into the vent', null, first.element.kind === 'box' ? 0 : INTO_DUCT * entry, null);
  solid.forEach(({ element, index }, i) => {
    const before = solid[i - 1];
    if (before) {
      const [from, to] = [sectionsAlong(before.element)[1], sectionsAlong(element)[0]];
      const between = along.find(
        ({ index: it }) => it > Math.min(before.index, index) && it < Math.max(before.index, index),
      );
      const loss = stepLoss(from, to, flow, gentle(between?.element ?? null, from, to));
      if (loss > 0) say(between?.element.name ?? 'Change of size', between?.index ?? null, loss, null);
    }
    say(element.name, index, elementLoss(element, flow), elementSpeed(element, flow));
  });
  const exit = velocityPressure(flow / sectionArea(sectionsAlong(last.element)[1]));
  say('Out of the vent', null, INTO_ROOM * exit, null);
  return pieces;
};

/** Pressure that a whole path takes at a flow, Pa. @param flow m³/s, ≥ 0 */
export const pathLoss = (path: AirPath, flow: number): number =>
  pieceLosses(path, flow).reduce((sum, { loss }) => sum + loss, 0);

/** Pressure that the fans of a path add at a flow, Pa. */
export const pathFanPressure = ({ elements }: AirPath, flow: number): number =>
  elements.reduce((sum, element) => sum + (element.kind === 'fan' ? fanPressure(element.curve, flow) : 0), 0);

export const hasFan = ({ elements }: AirPath): boolean => elements.some(({ kind }) => kind === 'fan');
