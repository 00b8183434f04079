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
import type { Project } from '../../../src/project/schema.ts';
import type { TableContent } from '../../actions/csvFile.ts';
import { placeOpenings } from '../../drawings/netOpenings.ts';
import { PART_KINDS } from '../../text/kindNames.ts';
import { sizeColumns } from './sizeFields.ts';

const OCTAVES = [63, 125, 250, 500, 1000, 2000, 4000];
const tenth = (value: number | null): number | null => (value === null ? null : Math.round(value * 10) / 10);

const madeOf = (project: Project, part: PartEntry): string | null => {
  if (!isPanel(part)) return part.sealed ? 'sealed' : 'open';
  if (part.measured) return 'laboratory curve';
  return part.assembly === undefined ? null : (project.assemblies[part.assembly]?.name ?? null);
};

/** The table of all parts as a file: sizes in the units of the headings. */
export const partTableContent = (project: Project, shell: ShellResult | null): TableContent => ({
  headings: [
    'part',
    'kind',
    'on',
    'made of',
    'across_mm',
    'up_mm',
    'deep_mm',
    'from left_m',
    'from below_m',
    'area_m2',
    'share',
    ...OCTAVES.map((octave) => `R_${octave}_Hz_dB`),
  ],
  rows: partsOf(project).map((part) => {
    const surface = isSurface(part) ? null : surfaceOfOpening(project, part.id);
    const placed = surface ? placeOpenings(surface).find((it) => it.id === part.id) : undefined;
    const result = shell?.parts.find((it) => it.id === part.id);
    const sizes = sizeColumns(part).map((field) =>
      field?.value == null ? null : field.unit === 'm' ? Math.round(field.value * 1000) : field.value,
    );
    const made = madeOf(project, part);
    return [
      part.name,
      PART_KINDS[part.kind],
      surface?.name ?? null,
      made,
      ...sizes,
      placed?.u ?? null,
      placed?.v ?? null,
      isPanel(part) ? Math.round((isSurface(part) ? netArea(part) : outlineArea(part)) * 100) / 100 : null,
      result ? Math.round(result.share * 1000) / 1000 : null,
      ...OCTAVES.map((octave) =>
        shell && result && isPanel(part) ? tenth(octaveReduction(shell.bands, result.R, octave)) : null,
      ),
    ];
  }),
});
