import { dropIndex, thicknessOf, withThickness, type Section } from '../../drawings/section.ts';
import { snapThickness } from '../../drawings/snapThickness.ts';
import { studio, type Gesture } from '../../store/studio.svelte.ts';
import type { LayerEntry, Project } from '../../../src/project/schema.ts';
import { usualThicknesses } from './materialWords.ts';

/** Within this many px a dragged face snaps to a usual thickness. */
const REACH = 5;
/** A press becomes a carry after this many px. */
const SLACK = 6;

/** What the hands need to know of the drawing, asked anew at each touch. */
export interface SectionGround {
  readonly project: Project;
  readonly assembly: string;
  readonly layers: readonly LayerEntry[];
  readonly section: Section;
  /** px from the drawing's left edge */
  readonly at: (event: PointerEvent) => number;
  readonly select: (index: number) => void;
}

interface Held {
  readonly index: number;
  readonly from: number;
  readonly start_mm: number;
  readonly gesture: Gesture;
  /** scale and start of the section, kept while a face is dragged */
  readonly scale: number;
  readonly left: number;
}

const capture = (event: PointerEvent): void => {
  if (event.currentTarget instanceof Element) event.currentTarget.setPointerCapture(event.pointerId);
};

/** The pointer on a section: a face held to thicken its layer, or a layer carried to another place. */
export class SectionHands {
  held = $state.raw<Held | null>(null);
  carried = $state.raw<{ index: number; from: number; at: number; moving: boolean } | null>(null);
  readonly #ground: () => SectionGround;

  constructor(ground: () => SectionGround) {
    this.#ground = ground;
  }

  /** Index of the layer being carried, once it has left its place. */
  get lifted(): number | null {
    return this.carried?.moving ? this.carried.index : null;
  }
  /** Where it would stand if it were let go now. */
  get target(): number | null {
    return this.carried?.moving ? dropIndex(this.#ground().section, this.carried.index, this.carried.at) : null;
  }

  hold(event: PointerEvent, index: number): void {
    const { layers, section, at, select } = this.#ground();
    const layer = layers[index];
    if (!layer || event.button !== 0) return;
    event.stopPropagation();
    capture(event);
    select(index);
    const { scale, left } = section;
    this.held = { index, from: at(event), start_mm: thicknessOf(layer), gesture: studio.gesture(), scale, left };
  }
  /** Alt lets the face go anywhere; without it usual thicknesses draw it in. */
  drag(event: PointerEvent): void {
    const { project, assembly, layers, at } = this.#ground();
    const { held } = this;
    const layer = held && layers[held.index];
    if (!held || !layer) return;
    const dragged = held.start_mm + (at(event) - held.from) / held.scale;
    const usual = event.altKey ? [] : usualThicknesses(project, layer);
    const thickness = snapThickness(dragged, usual, REACH / held.scale, layer.kind === 'interlayer' ? 0.1 : 0.5);
    held.gesture.preview('setLayer', { assembly, index: held.index, layer: withThickness(layer, thickness) });
  }
  release(): void {
    this.held?.gesture.commit();
    this.held = null;
  }

  lift(event: PointerEvent, index: number): void {
    if (event.button !== 0) return;
    const { at, select } = this.#ground();
    capture(event);
    select(index);
    this.carried = { index, from: at(event), at: at(event), moving: false };
  }
  carry(event: PointerEvent): void {
    if (!this.carried) return;
    const at = this.#ground().at(event);
    this.carried = { ...this.carried, at, moving: this.carried.moving || Math.abs(at - this.carried.from) > SLACK };
  }
  drop(): void {
    const { assembly, select } = this.#ground();
    const { carried, target } = this;
    this.carried = null;
    if (!carried || target === null || target === carried.index) return;
    if (studio.run('moveLayer', { assembly, from: carried.index, to: target })) select(target);
  }

  /** Lets everything go and leaves the layers as they were. */
  abandon(): void {
    this.held?.gesture.cancel();
    this.held = null;
    this.carried = null;
  }
}
