import type { VentElement } from '../../../src/engine/openings/index.ts';
import type { ElementKind } from './elementWords.ts';

/** How edits of a vent get into the project: at once as one step each, or previewed while something is dragged. */
export interface VentEditing {
  /** @returns whether it was taken */
  move(from: number, to: number): boolean;
  remove(index: number): boolean;
  insert(index: number, kind: ElementKind): boolean;
  set(index: number, element: VentElement): boolean;
  drag(index: number): { preview(element: VentElement): void; commit(): void; cancel(): void };
}
