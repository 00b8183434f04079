import type { VentReport } from '../../../src/engine/breatheResult.ts';
import type { ShellResult } from '../../../src/engine/shell/index.ts';
import { isPanel, isSurface, type PartEntry } from '../../../src/project/parts.ts';
import type { Project } from '../../../src/project/schema.ts';
import { ventOf } from '../../../src/project/toVents.ts';
import type { TableContent } from '../../actions/csvFile.ts';
import { PART_KINDS } from '../../text/kindNames.ts';
import { flankingRows } from '../flanking/flankingRows.ts';
import { OCTAVE_COLUMNS, partRows } from './partRows.ts';
import { sizeColumns } from './sizeFields.ts';
import { soundOf, TAKEOFF_HEADINGS, takeoffCells, takeoffRows } from './takeoffRows.ts';

const tenth = (value: number | null): number | null => (value === null ? null : Math.round(value * 10) / 10);

const madeOf = (project: Project, part: PartEntry): string | null => {
  if (!isPanel(part)) return part.sealed ? 'sealed' : 'open';
  if (part.measured) return 'laboratory curve';
  if ('path' in part && part.path !== undefined) return ventOf(project, part.path).name;
  return part.assembly === undefined ? null : (project.assemblies[part.assembly]?.name ?? null);
};

const BLANKS = OCTAVE_COLUMNS.map(() => null);

/**
 * The table of all parts as a file, each opening with its joints, services and boxes: sizes in the units of the headings.
 * @param vents sound of the vents that are built in; none where it is not known
 */
export const partTableContent = (
  project: Project,
  shell: ShellResult | null,
  vents: readonly VentReport[],
): TableContent => {
  const headings = [
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
    ...OCTAVE_COLUMNS.map((octave) => `R_${octave}_Hz_dB`),
    ...TAKEOFF_HEADINGS,
  ];
  const rows = [
    ...partRows(project, shell).flatMap(({ part, surface, placed, area, share, R }) => {
      const sizes = sizeColumns(part).map((field) => {
        const value = field?.value ?? null;
        return value !== null && field?.unit === 'm' ? Math.round(value * 1000) : value;
      });
      return [
        [
          part.name,
          PART_KINDS[part.kind],
          isSurface(part) ? null : (surface?.name ?? null),
          madeOf(project, part),
          ...sizes,
          placed?.u ?? null,
          placed?.v ?? null,
          area === null ? null : Math.round(area * 100) / 100,
          share === null ? null : Math.round(share * 1000) / 1000,
          ...R.map(tenth),
          ...takeoffCells(soundOf(part, vents)),
        ],
        ...takeoffRows(project, part).map((row) => [
          row.name,
          row.kind,
          part.name,
          row.made,
          ...row.sizes,
          null,
          null,
          null,
          null,
          ...BLANKS,
          ...takeoffCells(row),
        ]),
      ];
    }),
    ...flankingRows(project, shell, OCTAVE_COLUMNS),
  ];
  return { headings, rows: rows.map((row) => headings.map((_, column) => row[column] ?? null)) };
};
