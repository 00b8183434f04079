import type { Section } from '../quantities/index.ts';
import type { FanCurve } from './fanCurve.ts';
import type { BendForm } from './lossCoefficients.ts';

/** One piece of a vent as the air meets it, from the room outwards. Lengths in m, angles in degrees. */
export type AirElement =
  | { readonly kind: 'grille' | 'mesh'; readonly name: string; readonly section: Section; readonly freeShare: number }
  | {
      readonly kind: 'duct';
      readonly name: string;
      readonly section: Section;
      readonly length: number;
      /** height of the wall's unevenness, m */
      readonly roughness: number;
      /** loss against the same duct pulled straight, ≥ 1 */
      readonly lossFactor: number;
    }
  | {
      readonly kind: 'bend';
      readonly name: string;
      readonly section: Section;
      readonly angle: number;
      readonly form: BendForm;
    }
  | { readonly kind: 'transition'; readonly name: string; readonly section: Section; readonly length: number }
  | { readonly kind: 'box'; readonly name: string; readonly box: AirBox }
  | { readonly kind: 'fan'; readonly name: string; readonly section: Section; readonly curve: FanCurve }
  | { readonly kind: 'cowl'; readonly name: string; readonly section: Section; readonly loss: number };

/** What of a baffled box the air feels. */
export interface AirBox {
  readonly height: number;
  /** clear width beside each partition, m */
  readonly partitions: readonly { readonly gap: number }[];
  readonly lining: { readonly thickness: number; readonly faces: boolean } | null;
  /** towards the room, and outwards */
  readonly ports: readonly [{ readonly section: Section }, { readonly section: Section }];
}

/** Height left for the air in a box, m. */
export const clearHeight = ({ height, lining }: AirBox): number =>
  height - (lining?.faces === true ? 2 * lining.thickness : 0);

/** Section at the end towards the room, and at the end outwards. */
export const endSections = (element: AirElement): readonly [Section, Section] =>
  element.kind === 'box'
    ? [element.box.ports[0].section, element.box.ports[1].section]
    : [element.section, element.section];
