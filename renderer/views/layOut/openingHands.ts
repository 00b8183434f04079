import type { NetSurface } from '../../drawings/net.ts';
import { gapsOf, movedWithGaps, pulledBy, type Handle } from '../../drawings/netDrag.ts';
import type { PlacedOpening } from '../../drawings/netOpenings.ts';
import { stepOnSurface, type SheetPoint, type SurfacePoint } from '../../drawings/netTurn.ts';
import type { Gesture } from '../../store/studio.svelte.ts';

/** What is taken hold of: an opening as it lay then, by one of its handles or as a whole. */
interface Held {
  readonly surface: NetSurface;
  readonly opening: PlacedOpening;
  readonly handle: Handle | null;
  readonly gaps: readonly PlacedOpening[];
  readonly start: SurfacePoint;
  readonly pixel: SheetPoint;
}

/** Pointer and keys on openings: a drag, or a run of arrow presses, is one gesture and so one step of the history. */
export interface OpeningHands {
  readonly holding: boolean;
  readonly grab: (
    surface: NetSurface,
    opening: PlacedOpening,
    handle: Handle | null,
    start: SurfacePoint,
    pixel: SheetPoint,
  ) => void;
  /** @param place where the pointer is on the surface that holds the opening */
  readonly pull: (place: (surface: NetSurface) => SurfacePoint, pixel: SheetPoint) => void;
  readonly drop: () => void;
  readonly letGo: () => void;
  /** @param right, down step on the sheet, m */
  readonly nudge: (surface: NetSurface, opening: PlacedOpening, right: number, down: number) => void;
  readonly endNudge: () => void;
}

/** A press that moves less than this is no drag, px. */
const STILL = 4;

export const createOpeningHands = (begin: () => Gesture): OpeningHands => {
  let held: Held | null = null;
  let drag: Gesture | null = null;
  let steps: Gesture | null = null;
  return {
    get holding() {
      return held !== null;
    },
    grab: (surface, opening, handle, start, pixel) => {
      held = { surface, opening, handle, gaps: gapsOf(opening, surface.openings), start, pixel };
    },
    pull: (place, pixel) => {
      if (!held) return;
      const { surface, opening, handle, gaps, start } = held;
      if (!drag && Math.hypot(pixel.x - held.pixel.x, pixel.y - held.pixel.y) < STILL) return;
      drag ??= begin();
      const at = place(surface);
      const [du, dv] = [at.u - start.u, at.v - start.v];
      if (handle)
        drag.preview('setOpening', { opening: opening.id, patch: pulledBy(surface.entry, opening, handle, du, dv) });
      else drag.preview('moveOpenings', { moves: movedWithGaps(surface.entry, opening, gaps, du, dv) });
    },
    drop: () => {
      drag?.commit();
      held = drag = null;
    },
    letGo: () => {
      drag?.cancel();
      held = drag = null;
    },
    nudge: (surface, opening, right, down) => {
      const { u, v } = stepOnSurface(surface.lie, right, down);
      const gaps = gapsOf(opening, surface.openings);
      steps ??= begin();
      steps.preview('moveOpenings', { moves: movedWithGaps(surface.entry, opening, gaps, u, v, false) });
    },
    endNudge: () => {
      steps?.commit();
      steps = null;
    },
  };
};
