import type { Result } from '../../contract/methods.ts';
import type { Project } from '../../project/schema.ts';
import { LOW_NOTE } from './lowBands.ts';
import { ratingCells, ratingLabels } from './ratingRows.ts';
import { showFigure, showTable } from './table.ts';

const list = (values: readonly number[]): string => values.map((value) => showFigure(value)).join(', ') || '–';

/** Assemblies side by side: ratings, mass, thickness, resonances, then R by band with its likely error. */
export const showPredict = ({ assemblies }: Result<'predict'>, width: number, project: Project): string => {
  const entries = Object.entries(assemblies);
  const bands = entries[0]?.[1].bands_Hz ?? [];
  if (entries.length === 0) return 'This project has no make-ups to predict.';
  const labels = {
    heading: '',
    cells: [
      ...ratingLabels,
      'Mass, kg/m²',
      'Thickness, mm',
      'Resonances, Hz',
      'Critical, Hz',
      '',
      'Band, Hz',
      ...bands.map(String),
    ],
  };
  const columns = entries.map(([id, it]) => ({
    heading: id,
    cells: [
      ...ratingCells(it.ratings),
      showFigure(it.surface_mass_kg_m2, 1),
      showFigure(it.thickness_mm, 1),
      list(it.resonances_Hz),
      list(it.critical_Hz),
      '',
      'R, dB',
      ...it.R_dB.map((R, i) => `${showFigure(R, 1)} ±${showFigure(it.spread_dB[i], 0)}`),
    ],
  }));
  return [
    'Sound reduction as a laboratory would report it; ± is the likely error, one standard deviation.',
    '',
    ...entries.map(([id]) => `${id}: ${project.assemblies[id]?.name ?? id}`),
    '',
    showTable([labels, ...columns], width),
    '',
    LOW_NOTE,
  ].join('\n');
};
