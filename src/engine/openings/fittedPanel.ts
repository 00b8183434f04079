import type { Assembly } from '../assembly/index.ts';
import type { Fittings } from './doorFittings.ts';
import { lobbyTransmission } from './doorLobby.ts';
import { furnitureLeaks, sealLeaks } from './sealLeak.ts';
import type { Leak } from './sealLeak.ts';
import { serviceLeak } from './serviceLeak.ts';

/** A leaf or panel by itself. */
export interface Leaf {
  /** R per band, dB */
  readonly R: readonly number[];
  /** kg/m² */
  readonly surfaceMass: number;
}

/** One thing that a panel is put together of. */
export interface FittedPiece extends Leak {
  /** which of two leaves it belongs to; null where there is one leaf, or it goes past both */
  readonly leaf: 'first' | 'second' | null;
  /** S·τ of the whole panel if nothing came through this piece, m² */
  readonly without: readonly number[];
}

/** A panel with everything that leaks round and through it. */
export interface FittedPanel {
  /** S·τ of all of it per band, m² */
  readonly openArea: readonly number[];
  /** leaf and leaks by themselves; of two leaves only what goes through both, and what passes beside */
  readonly ways: readonly Leak[];
  /** every leaf, joint and hole by itself, also those behind one another */
  readonly pieces: readonly FittedPiece[];
}

/** τ of a leaf that nothing comes through: infinities stay inside. */
const TIGHT = 1e-15;

const total = (ways: readonly Leak[], bands: readonly number[]): number[] =>
  bands.map((_, b) => ways.reduce((sum, way) => sum + (way.openArea[b] ?? 0), 0));

/**
 * A door, window or service panel with its joints, holes and second leaf.
 * @param leaf the first leaf
 * @param fittings what it has besides
 * @param size m
 * @param bands nominal third octaves, Hz
 * @param leafOf predicts the second leaf at the same size
 * @returns S·τ per band with its breakdown
 * @source sums of open areas: EN 12354-3:2000, clause 4; each leak as its own model
 */
export const fittedPanel = (
  leaf: Leaf,
  fittings: Fittings,
  size: { readonly width: number; readonly height: number },
  bands: readonly number[],
  leafOf: (assembly: Assembly) => Leaf,
): FittedPanel => {
  const { width, height } = size;
  const area = width * height;
  const through = (it: Leaf, name: string): Leak => ({ name, openArea: it.R.map((R) => area * 10 ** (-R / 10)) });
  const own = [
    through(leaf, fittings.second ? 'First leaf' : 'The leaf itself'),
    ...sealLeaks(fittings.seals, width, height, bands),
    ...furnitureLeaks(fittings, bands),
  ];
  const services = fittings.items.map((item) => serviceLeak(item, bands));
  const but = (ways: readonly Leak[], gone: Leak): number[] =>
    total(
      ways.filter((way) => way !== gone),
      bands,
    );
  const { second } = fittings;
  if (second === null) {
    const ways = [...own, ...services];
    const pieces = ways.map((way): FittedPiece => ({ ...way, leaf: null, without: but(ways, way) }));
    return { openArea: total(ways, bands), ways, pieces };
  }
  const behind = leafOf(second.assembly);
  const others = [through(behind, 'Second leaf'), ...sealLeaks(second.seals, width, height, bands)];
  const lobby = {
    area,
    perimeter: 2 * (width + height),
    gap: second.gap,
    lined: second.lined,
    masses: [leaf.surfaceMass, behind.surfaceMass] as const,
  };
  const tau = (passed: number | undefined): number => Math.min(1, Math.max(TIGHT, (passed ?? 0) / area));
  const bothOf = (one: readonly number[], other: readonly number[]): Leak => ({
    name: 'Through both leaves with their joints',
    openArea: bands.map((band, b) => area * lobbyTransmission(tau(one[b]), tau(other[b]), lobby, band)),
  });
  const [one, other] = [total(own, bands), total(others, bands)];
  const both = bothOf(one, other);
  const ways = [both, ...services];
  const left = (through: Leak): number[] => total([through, ...services], bands);
  const pieces: FittedPiece[] = [
    ...own.map((way) => ({ ...way, leaf: 'first' as const, without: left(bothOf(but(own, way), other)) })),
    ...others.map((way) => ({ ...way, leaf: 'second' as const, without: left(bothOf(one, but(others, way))) })),
    ...services.map((way) => ({ ...way, leaf: null, without: but(ways, way) })),
  ];
  return { openArea: total(ways, bands), ways, pieces };
};
