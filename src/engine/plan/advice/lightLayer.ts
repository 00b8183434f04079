import type { Layer } from '../../assembly/index.ts';
import type { Note } from '../../quantities/index.ts';
import type { Look, Rule } from './look.ts';
import { RwGainOf, bandsWhere, gainAt } from './look.ts';
import { figure } from './figure.ts';
import { millimetres } from './wording.ts';

/** Lighter layers isolate nothing. @source common practice */
const LIGHT = 3;
/** Films and papers serve air- and vapour-tightness and claim nothing else, m. */
const FILM = 0.002;
/** A layer that gains less than this on average does nothing, dB. */
const NOTHING = 1.5;
const LOWEST = 50;
const HIGHEST = 3150;

const massOf = (layer: Layer): number =>
  layer.kind === 'board' ? layer.material.density * layer.thickness : Number.POSITIVE_INFINITY;

const nameOf = (layer: Layer): string => {
  if (layer.kind === 'board') return `${millimetres(layer.thickness)} of ${layer.material.name.toLowerCase()}`;
  if (layer.kind === 'cavity' && layer.fill)
    return `${millimetres(layer.fill.thickness)} of ${layer.fill.material.name.toLowerCase()} on the face`;
  return 'layer';
};

const noteOn = ({ assembly, prediction, predict }: Look, index: number, layer: Layer, mass: number): Note | null => {
  const without = predict({ ...assembly, layers: assembly.layers.filter((_, i) => i !== index) });
  const gains = bandsWhere(prediction, LOWEST, HIGHEST, () => true).map((band) => gainAt(without, prediction, band));
  const mean = gains.reduce((sum, gain) => sum + gain, 0) / gains.length;
  if (mean > NOTHING) return null;
  return {
    code: 'light-layer',
    severity: 'hint',
    sentence:
      `The ${nameOf(layer)} weighs ${mass.toFixed(1)} kg/m² and isolates next to nothing: without it Rw would be ` +
      `${without.ratings.Rw ?? 0} instead of ${prediction.ratings.Rw ?? 0}; from ${LOWEST} to ${HIGHEST} Hz it gains ` +
      `${mean.toFixed(1)} dB on average. It may make the room itself less loud; that is another matter.`,
    figures: [
      figure('surfaceMass', 'mass of the layer', mass),
      figure('gain', 'gain of the layer in Rw', RwGainOf(without, prediction)),
      figure('gain', 'mean gain of the layer', mean),
    ],
    about: { layers: [index] },
  };
};

/**
 * Layers too light to isolate: foam, cork, egg boxes, curtains. The part with and without them.
 * @source common practice; the comparison is predicted
 */
export const lightLayer: Rule = (look) =>
  look.assembly.layers.flatMap((layer, index) => {
    const outside = [look.structure.leading, look.structure.trailing].some((cavity) => cavity?.layers.includes(index));
    const faced =
      layer.kind === 'cavity' && layer.fill && outside ? layer.fill.material.density * layer.fill.thickness : null;
    const mass = faced ?? massOf(layer);
    const boards = look.assembly.layers.filter((one) => one.kind === 'board').length;
    const film = layer.kind === 'board' && layer.thickness < FILM;
    if (mass >= LIGHT || film || (faced === null && boards < 2)) return [];
    const note = noteOn(look, index, layer, mass);
    return note ? [note] : [];
  });
