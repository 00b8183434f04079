import type { Section } from '../../../src/engine/quantities/index.ts';
import type { LengthUnits } from '../../store/preferences.svelte.ts';
import { showNumber, showQuantity } from '../../text/showNumber.ts';

const millimetres = (metres: number): number => Number((metres * 1000).toFixed(1));

/** A length as a builder measures it. @param metres m */
export const lengthWords = (metres: number, units: LengthUnits): string =>
  showQuantity(millimetres(metres), 'mm', units);

/** Length by width, the unit once: "394 × 200 mm". */
export const sizeWords = (sizes: readonly number[], units: LengthUnits): string => {
  const figures = sizes.map((size) => showNumber(millimetres(size), 'mm', units));
  return `${figures.slice(0, -1).join(' × ')} × ${lengthWords(sizes.at(-1) ?? 0, units)}`;
};

/** Clear size of a duct: "Ø 160 mm", "200 × 100 mm". */
export const sectionWords = (section: Section, units: LengthUnits): string =>
  section.shape === 'round'
    ? `Ø ${lengthWords(section.diameter, units)}`
    : sizeWords([section.width, section.height], units);
