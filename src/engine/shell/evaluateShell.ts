import { THIRD_OCTAVES } from '../quantities/index.ts';
import { SPECTRA, bandValues } from '../ratings/index.ts';
import { reductionOf } from './composite.ts';
import type { Build, Part } from './part.ts';
import type { PartTransmission } from './partTransmission.ts';
import { pieceResults } from './pieceResult.ts';
import { escaping, shareOf, sourceEnergy, totalOpenArea } from './shares.ts';
import type { PartResult, ShellResult } from './shellResult.ts';
import { ifPartPassed, wholeCurve } from './whatIf.ts';
import { wholeSpread } from './wholeSpread.ts';

/** A part whose doubt is told of the whole: it carries at least this share of the band. */
const TELLING_SHARE = 0.05;

interface Held {
  readonly part: Part;
  readonly passes: PartTransmission;
}

/** weights of the rating's error: living noise, 100 Hz to 3.15 kHz, as the whole lets it through */
const ratingEnergy: readonly number[] = THIRD_OCTAVES.map((band) => {
  const [level] = bandValues(SPECTRA.C, [band]) ?? [];
  return level === undefined ? 0 : 10 ** (level / 10);
});

const doubtsOf = (held: readonly Held[], band: number): string | null => {
  const whole = held.reduce((sum, { passes }) => sum + (passes.openArea[band] ?? 0), 0);
  const reasons = held.flatMap(({ part, passes }) => {
    const reason = passes.extrapolated[band] ?? null;
    return reason !== null && shareOf(passes.openArea[band] ?? 0, whole) >= TELLING_SHARE
      ? [`${part.name}: ${reason}`]
      : [];
  });
  return reasons.length === 0 ? null : reasons.join(' ');
};

/**
 * The whole shell: R of all parts together, each part's share of what gets out, and what each would buy if it were
 * perfect or twice as good. Shares weigh the bands by the source over 50 Hz to 5 kHz: S_i·τ_i,b·E_b / Σ.
 * @param build parts and source
 * @param transmit what one part lets through (handed in, so that the caller may remember it)
 * @returns the shell without notes; parts sorted by share, largest first
 * @throws RangeError where openings leave a surface no area, or the source lacks a band
 * @validity airborne sound through the shell itself and the flanking paths named in the build; others are not in it
 * @source EN 12354-3:2000, clause 4
 */
export const evaluateShell = (build: Build, transmit: (part: Part) => PartTransmission): ShellResult => {
  const energy = sourceEnergy(build.source);
  const held: Held[] = build.parts.map((part) => ({ part, passes: transmit(part) }));
  const area = held.reduce((sum, { passes }) => sum + passes.area, 0);
  const total = totalOpenArea(held.map(({ passes }) => passes));
  const base = Math.max(area, Number.MIN_VALUE);
  const present = wholeCurve(total, base);
  const out = escaping(total, energy);
  const parts = held
    .map(({ part, passes }): PartResult => {
      const { openArea } = passes;
      const own = passes.reference ?? passes.area;
      return {
        id: part.id,
        name: part.name,
        kind: part.kind,
        surface: part.surface,
        area: own,
        R: openArea.map((passed) => reductionOf(passed, own)),
        ratings: passes.ratings,
        share: shareOf(escaping(openArea, energy), out),
        shareByBand: openArea.map((passed, b) => shareOf(passed, total[b] ?? 0)),
        ifPerfect: ifPartPassed(present, total, openArea, 0, base),
        ifTwiceAsGood: ifPartPassed(present, total, openArea, 0.5, base),
        surfaceMass: passes.surfaceMass,
        thickness: passes.thickness,
        ...(passes.ways && { ways: passes.ways }),
        ...(passes.pieces && { pieces: pieceResults(passes.pieces, openArea, own, energy) }),
      };
    })
    .sort((a, b) => b.share - a.share);
  const first = parts[0];
  return {
    bands: THIRD_OCTAVES,
    R: present.R,
    spread: THIRD_OCTAVES.map((_, b) =>
      wholeSpread(
        held.map(({ passes }) => ({
          share: shareOf(passes.openArea[b] ?? 0, total[b] ?? 0),
          spread: passes.spread[b] ?? 0,
          family: passes.family,
        })),
      ),
    ),
    extrapolated: THIRD_OCTAVES.map((_, b) => doubtsOf(held, b)),
    ratings: present.ratings,
    ratingSpread: wholeSpread(
      held.map(({ passes }) => ({
        share: escaping(passes.openArea, ratingEnergy),
        spread: passes.ratingSpread,
        family: passes.family,
      })),
    ),
    bassR: present.bassR,
    area,
    parts,
    limiting: first !== undefined && first.share > 0 ? first.id : null,
    notes: [],
  };
};
