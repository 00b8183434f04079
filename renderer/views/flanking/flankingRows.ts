import { octaveReduction } from '../../../src/engine/quantities/index.ts';
import type { ShellResult } from '../../../src/engine/shell/index.ts';
import type { Project } from '../../../src/project/schema.ts';
import { PART_KINDS } from '../../text/kindNames.ts';
import { JUNCTION_WORDS, KIND_WORDS, RUN_WORDS } from './flankingWords.ts';

/** Ways round as rows of the table of all parts: the junction stands under what it is made of, its length across. */
export const flankingRows = (
  project: Project,
  shell: ShellResult | null,
  octaves: readonly number[],
): readonly (string | number | null)[][] =>
  (project.flanking ?? []).map((path) => {
    const result = shell?.parts.find((it) => it.id === path.id);
    const R = octaves.map((octave) => (shell && result ? octaveReduction(shell.bands, result.R, octave) : null));
    return [
      path.name,
      PART_KINDS.flanking,
      project.surfaces.find((surface) => surface.id === path.past)?.name ?? null,
      `${KIND_WORDS[path.kind]}, ${RUN_WORDS[path.run].label.toLowerCase()}; ${JUNCTION_WORDS[path.junction].label.toLowerCase()}`,
      Math.round(path.length_m * 1000),
      null,
      null,
      null,
      null,
      result ? Math.round(result.area * 100) / 100 : null,
      result ? Math.round(result.share * 1000) / 1000 : null,
      ...R.map((value) => (value === null ? null : Math.round(value * 10) / 10)),
    ];
  });
