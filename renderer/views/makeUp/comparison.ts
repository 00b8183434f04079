import type { Prediction } from '../../../src/engine/transmission/index.ts';
import type { Explained } from '../../../src/worker/protocol.ts';
import type { LengthUnits } from '../../store/preferences.svelte.ts';
import { bassFigure, bassIsExtrapolated } from './bassFigure.ts';
import { EMPTY, listCells, numberCells, written, type Cell } from './figureCells.ts';

type Figure = Extract<Explained, { kind: 'assembly' }>['figure'];

export interface FigureRow {
  readonly label: string;
  readonly unit: string;
  readonly meaning: string;
  readonly figure: Figure | null;
  readonly cells: readonly Cell[];
}

export interface ColumnFacts {
  readonly prediction: Prediction | null;
  /** price of the material per m²; null where a layer has none */
  readonly price: number | null;
  readonly illustrative: boolean;
}

/** The figures under the columns, top to bottom. */
export const figureRows = (
  columns: readonly ColumnFacts[],
  currency: string,
  units: LengthUnits = 'metric',
): readonly FigureRow[] => {
  const imperial = units === 'imperial';
  const of = (pick: (prediction: Prediction) => number | null): readonly (number | null)[] =>
    columns.map(({ prediction }) => (prediction ? pick(prediction) : null));
  const terms = (C: number | null, Ctr: number | null): string =>
    C === null || Ctr === null ? '–' : `${written(C)}; ${written(Ctr)}`;
  const Rw = numberCells(
    of(({ ratings }) => ratings.Rw),
    0,
    true,
  ).map((cell, i) => {
    const ratings = columns[i]?.prediction?.ratings;
    return ratings && ratings.Rw !== null ? { ...cell, text: `${cell.text} (${terms(ratings.C, ratings.Ctr)})` } : cell;
  });
  const enlarged = columns.map(({ prediction }): Cell => {
    const ratings = prediction?.ratings;
    return ratings ? { ...EMPTY, text: terms(ratings.C50_5000, ratings.Ctr50_5000) } : EMPTY;
  });
  const bass = numberCells(of(bassFigure), 0, true).map((cell, i) => {
    const prediction = columns[i]?.prediction;
    return prediction && bassIsExtrapolated(prediction) ? { ...cell, text: `≈ ${cell.text}` } : cell;
  });
  const prices = numberCells(
    columns.map(({ price }) => price),
    0,
    false,
  ).map((cell, i) => (columns[i]?.illustrative && cell !== EMPTY ? { ...cell, text: `${cell.text} *` } : cell));
  const row = (
    label: string,
    unit: string,
    meaning: string,
    figure: Figure | null,
    cells: readonly Cell[],
  ): FigureRow => ({
    label,
    unit,
    meaning,
    figure,
    cells,
  });
  return [
    row('Rw (C; Ctr)', 'dB', 'Weighted sound reduction index, ISO 717-1', 'Rw', Rw),
    row('C; Ctr 50–5000', 'dB', 'Adaptation terms that count the bass down to 50 Hz, ISO 717-1', 'Rw', enlarged),
    row(
      'Bass 50–100 Hz',
      'dB',
      'Energy mean of R over 50, 63, 80 and 100 Hz. ≈ where the model is outside its tested range there',
      'bass',
      bass,
    ),
    row(
      'STC',
      '',
      'Sound transmission class, ASTM E413',
      'STC',
      numberCells(
        of(({ ratings }) => ratings.STC),
        0,
        true,
      ),
    ),
    row(
      'OITC',
      '',
      'Outdoor-indoor transmission class, ASTM E1332',
      null,
      numberCells(
        of(({ ratings }) => ratings.OITC),
        0,
        true,
      ),
    ),
    row(
      'Resonance f0',
      'Hz',
      'Mass-air-mass resonances of the cavities: weakest there',
      'resonance',
      listCells(columns.map(({ prediction }) => prediction?.resonances ?? null)),
    ),
    row(
      'Coincidence fc',
      'Hz',
      'Critical frequencies of the leaves, from the room',
      'coincidence',
      listCells(columns.map(({ prediction }) => prediction?.criticalFrequencies ?? null)),
    ),
    row(
      'Mass',
      'kg/m²',
      'Surface mass, frame not counted',
      'mass',
      numberCells(
        of(({ surfaceMass }) => surfaceMass),
        0,
        null,
      ),
    ),
    row(
      'Thickness',
      imperial ? 'in' : 'mm',
      'From the room-side face to the outer face',
      null,
      numberCells(
        of(({ thickness }) => thickness / (imperial ? 0.0254 : 0.001)),
        imperial ? 1 : 0,
        false,
      ),
    ),
    row(
      'Material',
      `${currency}/m²`,
      'Price of the material. * illustrative price of the library: overwrite it with your own',
      null,
      prices,
    ),
  ];
};
