import type { Assembly } from '../../assembly/index.ts';
import type { Note } from '../../quantities/index.ts';
import { cavityFill } from './cavityFill.ts';
import { lightLayer } from './lightLayer.ts';
import type { PredictAlternative, Rule } from './look.ts';
import { lookAt } from './look.ts';
import { outsideValidity } from './outsideValidity.ts';
import { resonanceInMusic } from './resonanceInMusic.ts';
import { sharedCoincidence } from './sharedCoincidence.ts';
import { shortCircuitedBars } from './shortCircuitedBars.ts';
import { thinLining } from './thinLining.ts';
import { thirdLeaf } from './thirdLeaf.ts';

const RULES: readonly Rule[] = [
  thirdLeaf,
  thinLining,
  resonanceInMusic,
  shortCircuitedBars,
  cavityFill,
  sharedCoincidence,
  lightLayer,
  outsideValidity,
];

const GRAVITY: Readonly<Record<Note['severity'], number>> = { mistake: 0, caution: 1, hint: 2 };

/** Gravest first; the order of the rules within one severity. */
export const byGravity = (notes: readonly Note[]): Note[] =>
  [...notes].sort((a, b) => GRAVITY[a.severity] - GRAVITY[b.severity]);

/**
 * What the physics raises about a built part: every note's figures come from predicting the part and its alternative.
 * @param assembly layers from the room outwards, at least one board
 * @param predict predicts an assembly as a laboratory would report it; asked for the alternatives as well
 * @returns notes, gravest first
 * @source common practice (the faults to look for); predictions (the figures)
 */
export const assemblyNotes = (assembly: Assembly, predict: PredictAlternative): Note[] => {
  const look = lookAt(assembly, predict);
  return byGravity(RULES.flatMap((rule) => rule(look)));
};
