import { betweenRooms, solveBox } from '../../../src/engine/openings/index.ts';
import type { DuctEnd } from '../../../src/engine/openings/index.ts';
import {
  DUCT_LENGTH,
  GOLDEN_BANDS,
  GOLDEN_CELL,
  bare,
  differences,
  geometryOf,
  goldenBoxes,
  inFlatFace,
  linedFaces,
  meanOf,
} from './goldenBox.ts';
import type { GoldenBox } from './goldenBox.ts';

/** Every band of every reference box on the same grid, and of every lined one on another, with their gates. */

interface Row {
  readonly name: string;
  readonly quantity: string;
  readonly mean: number;
  readonly worst: number;
  readonly allowedMean: number;
  readonly allowedWorst: number;
}

const UP_TO_2500 = GOLDEN_BANDS.indexOf(2500) + 1;

const sameGrid = (box: GoldenBox): Row[] => {
  const result = solveBox(geometryOf(box), { cellSize: GOLDEN_CELL });
  const bands = result?.bands ?? [];
  const end: DuctEnd = { area: geometryOf(box).ports[0].area, length: DUCT_LENGTH, resistance: 0 };
  const rooms = betweenRooms(bands, [end, end], DUCT_LENGTH);
  const holding: DuctEnd = { ...end, resistance: 0.01 };
  const held = betweenRooms(bands, [holding, holding], DUCT_LENGTH);
  const worst = inFlatFace(box) ? 0.35 : linedFaces(box) ? 0.2 : 0.02;
  const row = (quantity: string, computed: readonly number[], printed: readonly number[]): Row => {
    const errors = differences(computed, printed);
    const figures = { mean: meanOf(errors), worst: Math.max(...errors) };
    return { name: box.name, quantity, ...figures, allowedMean: worst / 2, allowedWorst: worst };
  };
  return [
    row(
      'TL plane',
      bands.map((it) => it.planeLoss),
      box.TL_plane,
    ),
    row(
      'TL all waves',
      bands.map((it) => it.multimodeLoss),
      box.TL_multimode,
    ),
    row('R between rooms', rooms.reduction, box.R_box),
    row('insertion loss', rooms.insertionLoss, box.IL),
    row('held mouths, 0.01', held.insertionLoss, box['IL_r0.01']),
  ];
};

const otherGrid = (box: GoldenBox, cellSize: number): Row => {
  const result = solveBox(geometryOf(box), { cellSize });
  const curve = (result?.bands ?? []).map((it) => it.multimodeLoss);
  const errors = differences(curve, box.TL_multimode).slice(0, UP_TO_2500);
  const figures = { mean: meanOf(errors), worst: Math.max(...errors) };
  return { name: box.name, quantity: `TL at ${cellSize * 1000} mm`, ...figures, allowedMean: 0.5, allowedWorst: 1 };
};

const shown = ({ name, quantity, mean, worst }: Row): string =>
  `${name.slice(0, 48).padEnd(50)}${quantity.padEnd(18)}${mean.toFixed(3).padStart(8)}${worst.toFixed(3).padStart(8)}`;

/**
 * Solves every reference box and prints how far off each curve is, dB.
 * @param everyOther whether all lined boxes are solved on another grid as well, or two of them
 * @returns a sentence for each gate that does not hold
 */
export const reportBoxes = (everyOther: boolean): readonly string[] => {
  const lined = goldenBoxes.filter((box) => !bare(box) && (everyOther || /^B(07|16)/.test(box.name)));
  const rows = [...goldenBoxes.flatMap(sameGrid), ...lined.map((box) => otherGrid(box, 0.007))];
  console.log(`\n${'Lined boxes against an independent wave solution, dB'.padEnd(68)}    mean   worst`);
  for (const row of rows) console.log(shown(row));
  return rows
    .filter((it) => !(it.mean <= it.allowedMean && it.worst <= it.allowedWorst))
    .map(
      ({ name, quantity, mean, worst }) =>
        `${name}, ${quantity}: mean ${mean.toFixed(3)} dB, worst ${worst.toFixed(3)} dB`,
    );
};

if (import.meta.main) {
  const failed = reportBoxes(true);
  console.log(failed.length === 0 ? '\nboxes: all gates hold' : `\nboxes: ${failed.length} failed`);
  for (const it of failed) console.log(`  ${it}`);
  process.exitCode = failed.length === 0 ? 0 : 1;
}
