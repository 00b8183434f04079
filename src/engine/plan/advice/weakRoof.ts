import { toReduction, toTransmission } from '../../quantities/index.ts';
import type { Note } from '../../quantities/index.ts';
import type { PartResult, ShellResult } from '../../shell/index.ts';
import type { ShellRule } from './shellNotes.ts';
import { figure, percentFigure } from './figure.ts';
import { bandRange, decibels, percent } from './wording.ts';

/** A roof should not be weaker than the walls by this much up to 250 Hz, dB, nor lighter than this. @source common practice */
const WEAKER = 3;
const LIGHTER = 0.7;
/** Share of the 63 Hz band that all roofs together let out, from which it is a mistake. */
const GRAVE_SHARE = 0.25;
const LOWEST = 50;
const HIGHEST = 250;

const meanBy = (parts: readonly PartResult[], value: (part: PartResult) => number): number => {
  const area = parts.reduce((sum, part) => sum + part.area, 0);
  return parts.reduce((sum, part) => sum + part.area * value(part), 0) / area;
};

const noteOn = (
  roof: PartResult,
  walls: readonly PartResult[],
  shell: ShellResult,
  severity: Note['severity'],
): Note | null => {
  const wallR = shell.bands.map((_, b) => toReduction(meanBy(walls, (wall) => toTransmission(wall.R[b] ?? 0))));
  const lacks = shell.bands.map((_, b) => (wallR[b] ?? 0) - (roof.R[b] ?? 0));
  const weak = shell.bands.filter((band, b) => band >= LOWEST && band <= HIGHEST && (lacks[b] ?? 0) > WEAKER);
  const weighed = walls.filter((wall) => wall.surfaceMass !== null);
  const wallMass = weighed.length > 0 ? meanBy(weighed, (wall) => wall.surfaceMass ?? 0) : null;
  const light = wallMass !== null && roof.surfaceMass !== null && roof.surfaceMass < LIGHTER * wallMass;
  if (weak.length === 0) return null;
  const most = Math.max(...shell.bands.map((band, b) => (weak.includes(band) ? (lacks[b] ?? 0) : 0)));
  const share63 = roof.shareByBand[shell.bands.indexOf(63)] ?? 0;
  return {
    code: 'weak-roof',
    severity,
    sentence:
      `"${roof.name}" is up to ${decibels(most)} weaker than the walls ${bandRange(weak)}` +
      (light ? `, and lighter (${Math.round(roof.surfaceMass)} against ${Math.round(wallMass)} kg/m²)` : '') +
      `: ${percent(share63)} of what gets out at 63 Hz leaves by it. ` +
      (roof.kind === 'roof'
        ? 'Upper windows look at roofs: where the bass matters, spend on the roof before the walls.'
        : 'Where the bass matters, spend on it before the walls, as far as its joists can carry more.'),
    figures: [
      figure('gain', 'largest lack against the walls', most),
      percentFigure('share of what gets out at 63 Hz', share63),
      ...(roof.surfaceMass === null ? [] : [figure('surfaceMass', 'mass of the roof', roof.surfaceMass)]),
      ...(wallMass === null ? [] : [figure('surfaceMass', 'mass of the walls', wallMass)]),
    ],
    about: { part: roof.id },
  };
};

/**
 * A roof or ceiling weaker than the walls in the bass.
 * @source common practice (3 dB in any band up to 250 Hz; 0.7 of the mass)
 */
export const weakRoof: ShellRule = (_build, shell) => {
  const walls = shell.parts.filter(({ kind }) => kind === 'wall');
  if (walls.length === 0) return [];
  const above = shell.parts.filter(({ kind }) => kind === 'roof' || kind === 'ceiling');
  const share63 = above.reduce((sum, part) => sum + (part.shareByBand[shell.bands.indexOf(63)] ?? 0), 0);
  return above.flatMap((part) => noteOn(part, walls, shell, share63 >= GRAVE_SHARE ? 'mistake' : 'hint') ?? []);
};
