import type { Note } from '../../quantities/index.ts';
import type { Build, ShellResult } from '../../shell/index.ts';
import { byGravity } from './assemblyNotes.ts';
import { loadOverhead } from './loadOverhead.ts';
import { openGap } from './openGap.ts';
import { partCapsWhole } from './partCapsWhole.ts';
import { weakRoof } from './weakRoof.ts';

/** One rule of the trade about the whole. */
export type ShellRule = (build: Build, shell: ShellResult) => Note[];

const RULES: readonly ShellRule[] = [partCapsWhole, openGap, weakRoof, loadOverhead];

/**
 * What the physics raises about the whole shell.
 * @param build parts, candidates, source
 * @param shell the same build evaluated
 * @returns notes, gravest first
 * @source common practice (the faults to look for); the evaluated shell (the figures)
 */
export const shellNotes = (build: Build, shell: ShellResult): Note[] =>
  byGravity(RULES.flatMap((rule) => rule(build, shell)));
