import type { Build, Candidate, Part, PartTransmission, WholeCurve } from '../shell/index.ts';
import { escaping, followSwaps, shareOf, sourceEnergy, totalOpenArea, wholeCurve } from '../shell/index.ts';

/** What a part lets through; handed in, so that the caller may remember it. */
export type Transmit = (part: Part) => PartTransmission;

/** The build as it is, with what every swap is measured against. */
export interface Standing {
  readonly build: Build;
  /** for flanking paths over parts that are rebuilt */
  readonly transmit: Transmit;
  readonly passes: ReadonlyMap<string, PartTransmission>;
  readonly area: number;
  readonly openArea: readonly number[];
  readonly whole: WholeCurve;
  readonly energy: readonly number[];
  readonly out: number;
}

/** Look at the build as it is. @param transmit what one part lets through */
export const standingOf = (build: Build, transmit: Transmit): Standing => {
  const passes = new Map(build.parts.map((part) => [part.id, transmit(part)]));
  const area = Math.max(
    [...passes.values()].reduce((sum, one) => sum + one.area, 0),
    Number.MIN_VALUE,
  );
  const openArea = totalOpenArea([...passes.values()]);
  const energy = sourceEnergy(build.source);
  return {
    build,
    transmit,
    passes,
    area,
    openArea,
    whole: wholeCurve(openArea, area),
    energy,
    out: escaping(openArea, energy),
  };
};

/** One part rebuilt as one of its candidates. */
export interface Swap {
  readonly part: Part;
  readonly candidate: Candidate;
  readonly passes: PartTransmission;
}

/** @param transmit what one part lets through */
export const swapOf = (part: Part, candidate: Candidate, transmit: Transmit): Swap => ({
  part,
  candidate,
  passes: transmit({ ...part, element: candidate.element }),
});

/** The whole after some swaps. The reference area stays that of the present build, so that nothing is gained by size. */
export interface Swapped {
  readonly whole: WholeCurve;
  readonly out: number;
  readonly limiting: string | null;
  readonly limitingShare: number;
}

/** @param swaps at most one per part */
export const afterSwaps = (standing: Standing, swaps: readonly Swap[]): Swapped => {
  const passes = new Map(standing.passes);
  for (const swap of swaps) passes.set(swap.part.id, swap.passes);
  const made = new Map(swaps.map(({ part, candidate }) => [part.id, candidate.element]));
  for (const part of standing.build.parts) {
    const followed = followSwaps(part, made);
    if (followed) passes.set(part.id, standing.transmit(followed));
  }
  const openArea = totalOpenArea([...passes.values()]);
  const out = escaping(openArea, standing.energy);
  const whole = wholeCurve(openArea, standing.area);
  const shares = [...passes].map(([id, one]) => ({ id, share: shareOf(escaping(one.openArea, standing.energy), out) }));
  const largest = shares.reduce((best, one) => (one.share > best.share ? one : best), { id: '', share: 0 });
  return { whole, out, limiting: largest.share > 0 ? largest.id : null, limitingShare: largest.share };
};

/**
 * Price of a swap: materials and labour of the candidate; what the present part cost is spent. Labour left open is
 * one's own work and counts nothing.
 * @returns project's currency; null where the materials have no price
 */
export const swapCost = ({ candidate }: Swap): number | null =>
  candidate.price.materials === null ? null : candidate.price.materials + (candidate.price.labour ?? 0);

/** Thickness added, m; null where either build has none of its own. */
export const addedThickness = (standing: Standing, swap: Swap): number | null => {
  const before = standing.passes.get(swap.part.id)?.thickness ?? null;
  const after = swap.passes.thickness;
  return before === null || after === null ? null : after - before;
};

/** Mass added, kg for the whole part; null where either build has none of its own. */
export const addedMass = (standing: Standing, swap: Swap): number | null => {
  const before = standing.passes.get(swap.part.id)?.surfaceMass ?? null;
  const after = swap.passes.surfaceMass;
  return before === null || after === null ? null : (after - before) * swap.part.area;
};
