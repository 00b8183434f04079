import type { BoxBand, BoxField, BoxResult, VentBox } from '../engine/openings/index.ts';

/** How finely a box is solved: at once while it is dragged, or to rely on. */
export type BoxGrid = 'coarse' | 'fine';

/** What the box worker can be told. Solving goes on until it is done or cancelled; several may be under way. */
export type BoxRequest =
  | { readonly kind: 'solve'; readonly sequence: number; readonly box: VentBox; readonly grid: BoxGrid }
  | {
      readonly kind: 'field';
      readonly sequence: number;
      readonly box: VentBox;
      /** Hz */
      readonly frequency: number;
      /** m */
      readonly cellSize: number;
      /** the port by which the sound comes in: 0 from the room, 1 from outside */
      readonly from: 0 | 1;
    }
  | { readonly kind: 'cancel'; readonly sequence: number };

/** How far a solution is, with the bands that are done, lowest first. */
export interface BoxProgress {
  /** 0 to 1 */
  readonly fraction: number;
  readonly bands: readonly BoxBand[];
}

/** What the box worker says of one request. */
export type BoxNews =
  | { readonly sequence: number; readonly kind: 'progress'; readonly fraction: number; readonly band: BoxBand | null }
  | { readonly sequence: number; readonly kind: 'solved'; readonly result: BoxResult }
  | { readonly sequence: number; readonly kind: 'field'; readonly field: BoxField }
  | { readonly sequence: number; readonly kind: 'cancelled' }
  | { readonly sequence: number; readonly kind: 'fault'; readonly sentence: string };
