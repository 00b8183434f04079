import type { VentElement } from '../../src/engine/openings/index.ts';
import type { Section } from '../../src/engine/quantities/index.ts';
import { resizedBox } from './boxPlanMoves.ts';
import { acrossOf } from './ventMeasures.ts';

/** What of a part is pulled: how long it is, or how wide seen from above. */
export type VentPull = 'length' | 'across';

/** Diameters that round duct is sold in, m. Common practice. */
export const USUAL_DIAMETERS = [0.08, 0.1, 0.125, 0.15, 0.16, 0.2, 0.25, 0.315, 0.355, 0.4];
const LENGTH_STEP = 0.01;
const WIDTH_STEP = 0.005;

const snapped = (value: number, step: number): number => Number((Math.round(value / step) * step).toFixed(4));
const between = (value: number, least: number, most: number): number => Math.min(Math.max(value, least), most);

/** A section wider or narrower: round ones come in the sizes they are sold in. */
export const widened = (section: Section, across: number): Section => {
  if (section.shape === 'rectangular') return { ...section, width: between(snapped(across, WIDTH_STEP), 0.02, 2) };
  const nearest = USUAL_DIAMETERS.reduce((best, it) => (Math.abs(it - across) < Math.abs(best - across) ? it : best));
  return { ...section, diameter: nearest };
};

/** Whether a part has such a size of its own. */
export const canPull = (element: VentElement, pull: VentPull): boolean =>
  pull === 'across' || element.kind === 'duct' || element.kind === 'transition' || element.kind === 'box';

/** The part with a size brought to a value, m. */
export const pulledElement = (element: VentElement, pull: VentPull, value: number): VentElement => {
  if (element.kind === 'box')
    return { ...element, box: resizedBox(element.box, pull === 'length' ? 'length' : 'width', value) };
  if (pull === 'across') return { ...element, section: widened(element.section, value) };
  if (element.kind === 'duct' || element.kind === 'transition')
    return { ...element, length: between(snapped(value, LENGTH_STEP), 0.01, 20) };
  return element;
};

/** The next size up or down of what a part is mostly told by. */
export const steppedElement = (element: VentElement, pull: VentPull, direction: 1 | -1): VentElement => {
  if (element.kind === 'box') {
    const now = pull === 'length' ? element.box.length : element.box.width;
    return pulledElement(element, pull, now + 0.05 * direction);
  }
  if (pull === 'length')
    return element.kind === 'duct' || element.kind === 'transition'
      ? pulledElement(element, 'length', element.length + 0.05 * direction)
      : element;
  const now = acrossOf(element.section);
  if (element.section.shape === 'rectangular') return pulledElement(element, 'across', now + 0.01 * direction);
  const next =
    direction > 0 ? USUAL_DIAMETERS.find((it) => it > now + 1e-6) : USUAL_DIAMETERS.findLast((it) => it < now - 1e-6);
  return next === undefined ? element : { ...element, section: { ...element.section, diameter: next } };
};
