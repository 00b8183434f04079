import { textWidth } from './chartLabels.ts';
import type { Section } from './section.ts';
import { spread } from './spread.ts';

/** The dimension of one layer: its own figure, turned upright where the layer is too narrow for it. */
export interface LayerDimension {
  readonly index: number;
  readonly from: number;
  readonly to: number;
  readonly text: string;
  readonly upright: boolean;
  /** drawn wider than to scale: the figure is underlined, as drawing practice does (ISO 129-1, from memory) */
  readonly widened: boolean;
  /** middle of the text; off the layer's own middle where neighbours are narrow too */
  readonly at: number;
}

const SIZE = 11;

export type DimensionText = (thickness_mm: number) => string;

/** Millimetres as written on a drawing: no unit, no idle zeros. */
export const millimetres: DimensionText = (value) => String(Number(value.toFixed(value < 10 ? 2 : 1)));

/** Inches as written on a drawing, to a hundredth. */
export const inches: DimensionText = (value) => String(Number((value / 25.4).toFixed(2)));

/** The chain of dimensions under a section. */
export const layerDimensions = (
  section: Section,
  least: number,
  most: number,
  write: DimensionText = millimetres,
): readonly LayerDimension[] => {
  const plain = section.layers.map((layer) => {
    const text = write(layer.thickness_mm);
    return { layer, text, upright: textWidth(text, SIZE) + 6 > layer.width };
  });
  const middles = plain.map(({ layer }) => layer.x + layer.width / 2);
  const places = plain.some((it) => it.upright) ? spread(middles, SIZE + 1, least, most) : middles;
  return plain.map(({ layer, text, upright }, i) => ({
    index: layer.index,
    from: layer.x,
    to: layer.x + layer.width,
    text,
    upright,
    widened: layer.widened,
    at: upright ? (places[i] ?? 0) : (middles[i] ?? 0),
  }));
};

/** Places for the plus signs over the joints, from before the first layer to after the last. */
export const insertPlaces = (
  section: Section,
  apart: number,
  least: number,
  most: number,
): readonly { readonly index: number; readonly joint: number; readonly at: number }[] => {
  const joints = [section.left, ...section.layers.map((layer) => layer.x + layer.width)];
  const places = spread(joints, apart, least, most);
  return joints.map((joint, index) => ({ index, joint, at: places[index] ?? joint }));
};
