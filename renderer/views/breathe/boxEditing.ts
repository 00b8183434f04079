import type { VentBox } from '../../../src/engine/openings/index.ts';

/** How an edited box gets into the project: at once, or previewed while it is dragged. */
export interface BoxEditing {
  set(box: VentBox): void;
  drag(): { preview(box: VentBox): void; commit(): void; cancel(): void };
}
