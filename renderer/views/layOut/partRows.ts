import { octaveReduction } from '../../../src/engine/quantities/index.ts';
import type { ShellResult } from '../../../src/engine/shell/index.ts';
import {
  isPanel,
  isSurface,
  netArea,
  outlineArea,
  partsOf,
  surfaceOfOpening,
  type PartEntry,
} from '../../../src/project/parts.ts';
import type { Project, SurfaceEntry } from '../../../src/project/schema.ts';
import { placeOpenings, type PlacedOpening } from '../../drawings/netOpenings.ts';

/** Octaves of the table's R columns, Hz. */
export const OCTAVE_COLUMNS: readonly number[] = [63, 125, 250, 500, 1000, 2000, 4000];

/** One line of the table of all parts. */
export interface PartRow {
  readonly part: PartEntry;
  /** the surface itself, or the one an opening lies in */
  readonly surface: SurfaceEntry | null;
  readonly placed: PlacedOpening | undefined;
  /** m²; null for gaps and holes, which take none */
  readonly area: number | null;
  /** 0 to 1; null before the first result */
  readonly share: number | null;
  readonly limiting: boolean;
  /** R at each of OCTAVE_COLUMNS, dB */
  readonly R: readonly (number | null)[];
}

/** All surfaces and openings in the document's order. */
export const partRows = (project: Project, shell: ShellResult | null): readonly PartRow[] =>
  partsOf(project).map((part) => {
    const surface = isSurface(part) ? part : surfaceOfOpening(project, part.id);
    const result = shell?.parts.find((it) => it.id === part.id);
    const area = isSurface(part) ? netArea(part) : outlineArea(part);
    return {
      part,
      surface,
      placed: surface ? placeOpenings(surface).find((it) => it.id === part.id) : undefined,
      area: isPanel(part) ? area : null,
      share: result?.share ?? null,
      limiting: shell?.limiting === part.id,
      R: OCTAVE_COLUMNS.map((octave) =>
        shell && result && isPanel(part) ? octaveReduction(shell.bands, result.R, octave) : null,
      ),
    };
  });
