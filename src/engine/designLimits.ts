import { BASS_RICH, LIVING, costOfLeak, leakOf } from './designLeak.ts';
import type { DesignWish, VentDesign } from './designVent.ts';
import type { VentWayKind } from './openings/index.ts';

/** What keeps a design from being better. */
export interface DesignLimits {
  /** what each kind of way would cost the wall by itself, dB, the worst first; those that the vent has */
  readonly ways: readonly { readonly kind: VentWayKind; readonly cost: number }[];
  /** the fewest third octaves by which half of it passes, Hz, ascending */
  readonly bands: readonly number[];
  /** 50 to 160 Hz: where it is worst against the open hole, and by how much it lets less through, dB, in still air */
  readonly bass: { readonly band: number; readonly loss: number };
}

const KINDS: readonly VentWayKind[] = ['air', 'casing', 'duct-wall', 'joints'];
const HALF = 0.5;
const [LOW, BASS_END] = [50, 160];

/** What limits a design, way by way and band by band. @param wish what it was designed for */
export const designLimits = ({ sound }: VentDesign, wish: DesignWish): DesignLimits => {
  const weights = wish.bass ? BASS_RICH : LIVING;
  const ways = KINDS.flatMap((kind) => {
    const own = sound.ways.filter((way) => way.kind === kind);
    const leak = own.reduce((sum, { openArea }) => sum + leakOf(openArea, weights), 0);
    return own.length === 0 ? [] : [{ kind, cost: costOfLeak(leak, wish, weights) }];
  });
  const passing = sound.bands
    .map((band, b) => ({ band, leak: (weights[b] ?? 0) * (sound.openArea[b] ?? 0) }))
    .sort((one, other) => other.leak - one.leak);
  const whole = leakOf(sound.openArea, weights);
  let told = 0;
  const most = passing.filter(({ leak }) => {
    if (told >= HALF * whole) return false;
    told += leak;
    return true;
  });
  const bass = sound.bands
    .map((band, b) => ({ band, loss: sound.insertionLoss[b] ?? 0 }))
    .filter(({ band }) => band >= LOW && band <= BASS_END);
  return {
    ways: ways.sort((one, other) => other.cost - one.cost),
    bands: most.map(({ band }) => band).sort((one, other) => one - other),
    bass: bass.reduce((worst, it) => (it.loss < worst.loss ? it : worst)),
  };
};
