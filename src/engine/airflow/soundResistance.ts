import type { AirElement } from './airElement.ts';
import { elementLoss } from './elementLoss.ts';
import { fanPressure } from './fanCurve.ts';

/** Step for the slope of a fan's curve, share of the flow. */
const STEP = 0.01;
/** Less than this is no flow, m³/s: a fan that moves nothing stalls, and its slope there means nothing. */
const STILL = 1e-6;

/**
 * Resistance that flowing air adds for the sound which passes a piece: R = dΔp/dq. A loss ζ at the speed U gives
 * ρ·ζ·U/S, that is ζ·U/c0 against ρ0c0/S; a running fan the slope of its curve. Ducts, bends and boxes add none: at
 * 50 Hz their shed vortices are too slow to follow the sound (2πf·D/U ≫ 1).
 * @param element grille, mesh, cowl or fan; others give 0
 * @param flow m³/s, either way; none gives 0
 * @param running whether fans run; a standing one adds nothing
 * @returns Pa·s/m³, ≥ 0
 * @validity bass: while 2πf times the width of slots or blades is not much more than the speed in them
 * @source quasi-steady linearisation (derived); fans: Cremer, J. Sound Vib. 16 (1971) 1-15 (from memory)
 */
export const soundResistance = (element: AirElement, flow: number, running: boolean): number => {
  const q = Math.abs(flow);
  if (q < STILL) return 0;
  switch (element.kind) {
    case 'grille':
    case 'mesh':
    case 'cowl':
      return (2 * elementLoss(element, q)) / q;
    case 'fan': {
      if (!running || flow < 0) return 0;
      const [less, more] = [q * (1 - STEP), q * (1 + STEP)];
      const slope = (fanPressure(element.curve, less) - fanPressure(element.curve, more)) / (more - less);
      return Math.max(0, slope);
    }
    default:
      return 0;
  }
};
