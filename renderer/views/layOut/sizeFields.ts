import type { PartEntry } from '../../../src/project/parts.ts';

/** A number of a part that can be edited: its key in the document and what is allowed there. */
export interface SizeField {
  readonly key: string;
  readonly label: string;
  readonly value: number | null;
  readonly unit: 'm' | 'mm';
  readonly min: number;
  readonly max: number;
}

const field = (
  key: string,
  label: string,
  value: number | null,
  unit: 'm' | 'mm',
  min: number,
  max: number,
): SizeField => ({ key, label, value, unit, min, max });

/** Sizes across, up and deep, in that order, for fields and for the table's columns; null where a part has none. */
export const sizeColumns = (part: PartEntry): readonly (SizeField | null)[] => {
  if (part.kind === 'slit')
    return [
      field('length_mm', 'Length', part.length_mm, 'mm', 1, 50000),
      field('width_mm', 'Width of the gap', part.width_mm, 'mm', 0.1, 1000),
      field('depth_mm', 'Depth', part.depth_mm, 'mm', 1, 3000),
    ];
  if (part.kind === 'hole')
    return [
      field('diameter_mm', 'Diameter', part.diameter_mm, 'mm', 0.5, 2000),
      null,
      field('depth_mm', 'Depth', part.depth_mm, 'mm', 1, 3000),
    ];
  const surface = part.kind === 'wall' || part.kind === 'roof' || part.kind === 'ceiling' || part.kind === 'floor';
  const [least, most] = surface ? [0.1, 200] : [0.005, 50];
  const flat = surface && part.kind !== 'wall';
  return [
    field('width_m', flat ? 'Length' : 'Width', part.width_m, 'm', least, most),
    field('height_m', flat ? 'Depth' : 'Height', part.height_m, 'm', least, most),
    null,
  ];
};

export const sizeFields = (part: PartEntry): readonly SizeField[] => sizeColumns(part).filter((it) => it !== null);
