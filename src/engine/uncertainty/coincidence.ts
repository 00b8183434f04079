import type { Assembly, BoardLayer } from '../assembly/index.ts';
import type { UncertainInput } from './input.ts';
import { inputKey } from './input.ts';
import { BOARD_SPREADS, thicknessShare } from './materialSpreads.ts';
import { DAMP_EFFECT, takesWater } from './workmanship.ts';
import type { Workmanship } from './workmanship.ts';

/** The way in which several inputs together move the critical frequency of one board. */
export interface Coincidence {
  /** one weight for each input of the make-up: their sum Σ w·z is the move in its standard deviations */
  readonly weights: readonly number[];
}

/**
 * Change of ln fc with each input of a board, in its standard deviations: fc ∝ √(ρ/E)/h.
 * @source plates in bending: Cremer, Heckl and Petersson, Structure-Borne Sound (2005), critical frequency
 */
const gradient = (layer: BoardLayer, damp: number): ReadonlyMap<string, number> => {
  const { family, name } = layer.material;
  const spread = BOARD_SPREADS[family];
  const wet = takesWater(family) ? damp * (DAMP_EFFECT.density - DAMP_EFFECT.stiffness) : 0;
  return new Map([
    [inputKey('density', name), spread.density / 2],
    [inputKey('stiffness', name), -spread.stiffness / 2],
    [inputKey('thickness', name), -thicknessShare(family, layer.thickness)],
    [inputKey('damp', ''), wet / 2],
  ]);
};

/**
 * The critical frequencies of a make-up's boards as functions of its inputs, one for each material. A dip that wanders
 * through the bands is not a polynomial of the inputs one by one, but nearly a function of its place.
 * @param assembly as drawn
 * @param inputs of the make-up
 * @param workmanship how damp it is
 * @returns weights over the inputs; the board's own three have the length 1 together, and damp adds to them
 * @validity boards in bending; a material used in several thicknesses goes by the first
 * @source ridge functions: Pinkus, Ridge Functions (Cambridge, 2015), ch. 1
 * @example coincidencesOf(wall, assemblyInputs(wall, FLAWLESS), FLAWLESS)
 */
export const coincidencesOf = (
  assembly: Assembly,
  inputs: readonly UncertainInput[],
  workmanship: Workmanship,
): readonly Coincidence[] => {
  const first = new Map<string, BoardLayer>();
  for (const layer of assembly.layers)
    if (layer.kind === 'board' && layer.material.youngsModulus > 0 && !first.has(layer.material.name))
      first.set(layer.material.name, layer);
  return [...first.values()].map((layer) => {
    const moves = gradient(layer, workmanship.damp.spread);
    const damp = inputKey('damp', '');
    const length = Math.hypot(...[...moves].map(([key, move]) => (key === damp ? 0 : move)));
    return { weights: inputs.map(({ key }) => (moves.get(key) ?? 0) / length) };
  });
};
