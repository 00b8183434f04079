import type { VentElement } from '../../../src/engine/openings/index.ts';
import { acrossOf, lengthOf } from '../../drawings/ventMeasures.ts';
import { dropPlace, type VentDrawing } from '../../drawings/ventPath.ts';
import { pulledElement, type VentPull } from '../../drawings/ventPathMoves.ts';
import type { VentEditing } from './ventEditing.ts';

/** A pointer that has moved less has only pressed, px. */
const SLACK = 6;

interface Place {
  readonly x: number;
  readonly y: number;
}

/** Parts of a vent under the pointer: one pulled longer or wider by its handle, or carried to another place. */
export class VentHands {
  pulled = $state.raw<{
    readonly index: number;
    readonly pull: VentPull;
    readonly from: Place;
    readonly start: number;
    readonly element: VentElement;
    /** px per m, kept while it lasts */
    readonly scale: number;
    readonly drag: ReturnType<VentEditing['drag']>;
  } | null>(null);
  carried = $state.raw<{
    readonly index: number;
    readonly from: number;
    readonly at: number;
    readonly moving: boolean;
  } | null>(null);

  hold(index: number, pull: VentPull, at: Place, element: VentElement, scale: number, editing: VentEditing): void {
    const start =
      pull === 'length' ? lengthOf(element) : element.kind === 'box' ? element.box.width : acrossOf(element.section);
    this.pulled = { index, pull, from: at, start, element, scale, drag: editing.drag(index) };
  }

  pull(at: Place): void {
    if (!this.pulled) return;
    const { pull, from, start, element, scale, drag } = this.pulled;
    const by = (pull === 'length' ? at.x - from.x : at.y - from.y) / scale;
    // drawn round its axis, a duct grows on both sides
    const grown = pull === 'across' && element.kind !== 'box' ? 2 * by : by;
    drag.preview(pulledElement(element, pull, start + grown));
  }

  release(): void {
    this.pulled?.drag.commit();
    this.pulled = null;
  }

  lift(index: number, { x }: Place): void {
    this.carried = { index, from: x, at: x, moving: false };
  }

  carry({ x }: Place): void {
    if (!this.carried) return;
    const { from, moving } = this.carried;
    this.carried = { ...this.carried, at: x, moving: moving || Math.abs(x - from) > SLACK };
  }

  /** Where what is carried would come to lie; null while nothing is. */
  target(layout: VentDrawing): number | null {
    return this.carried?.moving ? dropPlace(layout, this.carried.index, this.carried.at) : null;
  }

  /** Lets go of what is carried. @returns from where to where it goes; null where it stays */
  drop(layout: VentDrawing): { readonly from: number; readonly to: number } | null {
    const [from, to] = [this.carried?.index, this.target(layout)];
    this.carried = null;
    return from === undefined || to === null || to === from ? null : { from, to };
  }

  abandon(): void {
    this.pulled?.drag.cancel();
    this.pulled = null;
    this.carried = null;
  }
}
