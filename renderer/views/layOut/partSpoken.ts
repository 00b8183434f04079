import type { PartEntry } from '../../../src/project/parts.ts';
import type { LengthUnits } from '../../store/preferences.svelte.ts';
import { PART_KINDS } from '../../text/kindNames.ts';
import { showQuantity } from '../../text/showNumber.ts';
import type { PartFigure } from './partFigures.ts';

/** Sizes of a part as printed: "5.2 m × 2.4 m", "900 mm × 3 mm". */
export const sizeWords = (part: PartEntry, units: LengthUnits): string => {
  if (part.kind === 'hole') return `${showQuantity(part.diameter_mm, 'mm', units)} across`;
  if (part.kind === 'slit')
    return `${showQuantity(part.length_mm, 'mm', units)} × ${showQuantity(part.width_mm, 'mm', units)}`;
  return `${showQuantity(part.width_m, 'm', units)} × ${showQuantity(part.height_m, 'm', units)}`;
};

/** What a reader hears of a part on the drawing. */
export const partSpoken = (part: PartEntry, figure: PartFigure | undefined, units: LengthUnits): string => {
  const kind = PART_KINDS[part.kind];
  const name = part.name.toLowerCase().includes(kind.toLowerCase()) ? part.name : `${part.name}, ${kind.toLowerCase()}`;
  const figures = figure
    ? [
        figure.reduction === null ? null : `${figure.reduction} dB`,
        `${figure.percent} of what gets out`,
        figure.limiting ? 'limits the room' : null,
      ]
    : [];
  return [name, sizeWords(part, units), ...figures].filter((it) => it !== null).join(', ');
};
