import type { CavityLayerEntry, LayerEntry } from '../../src/project/schema.ts';
import type { HatchName } from './hatch.ts';

/** Scales a section may be drawn at, px per mm; steps, so that it does not breathe while a layer is dragged. */
const SCALES = [6, 5, 4, 3, 2.5, 2, 1.5, 1.25, 1, 0.8, 0.65, 0.5, 0.4, 0.3, 0.25, 0.2, 0.15, 0.1, 0.07, 0.05, 0.03];

/** Thin layers are drawn this wide at least, px, so that their hatch can be seen and held. */
export const LEAST_WIDTH = { board: 7, interlayer: 4, cavity: 10 } as const;

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A layer of the section from its room side to its outer side. */
export interface SectionLayer extends Box {
  readonly index: number;
  readonly kind: LayerEntry['kind'];
  readonly thickness_mm: number;
  readonly hatch: HatchName;
  /** thinner than it is drawn */
  readonly widened: boolean;
  /** absorber within a cavity */
  readonly fill: (Box & { readonly hatch: HatchName }) | null;
}

export interface Section {
  readonly scale: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly total_mm: number;
  readonly layers: readonly SectionLayer[];
}

export type HatchOf = (material: string, kind: LayerEntry['kind']) => HatchName;

export const thicknessOf = (layer: LayerEntry): number =>
  layer.kind === 'cavity' ? layer.depth_mm : layer.thickness_mm;

/** Takes the same layer with another thickness; a fill never stays deeper than its cavity. */
export const withThickness = (layer: LayerEntry, thickness_mm: number): LayerEntry => {
  if (layer.kind !== 'cavity') return { ...layer, thickness_mm };
  const cavity: CavityLayerEntry = { ...layer, depth_mm: thickness_mm };
  if (!layer.fill) return cavity;
  const full = layer.fill.thickness_mm >= layer.depth_mm;
  const fill = Math.max(1, full ? thickness_mm : Math.min(layer.fill.thickness_mm, thickness_mm));
  return { ...cavity, fill: { ...layer.fill, thickness_mm: fill } };
};

const drawnWidth = (layer: LayerEntry, scale: number): number =>
  Math.max(LEAST_WIDTH[layer.kind], thicknessOf(layer) * scale);

/** The largest scale at which all layers fit across a width. */
export const fittingScale = (layers: readonly LayerEntry[], width: number): number =>
  SCALES.find((scale) => layers.reduce((sum, layer) => sum + drawnWidth(layer, scale), 0) <= width) ?? 0.03;

const fillBox = (layer: LayerEntry, box: Box, hatchOf: HatchOf): SectionLayer['fill'] => {
  if (layer.kind !== 'cavity' || !layer.fill) return null;
  const share = Math.min(1, layer.fill.thickness_mm / layer.depth_mm);
  const width = box.width * share;
  return {
    x: box.x + box.width - width,
    y: box.y,
    width,
    height: box.height,
    hatch: hatchOf(layer.fill.material, 'cavity'),
  };
};

/**
 * Lays an assembly out as a horizontal section, room side left. Across the layers it is to scale; along them it is
 * broken, and the distance between studs is written instead. While a layer is dragged, scale and start stay as they were.
 */
export const layoutSection = (
  layers: readonly LayerEntry[],
  space: Box,
  hatchOf: HatchOf,
  scale: number = fittingScale(layers, space.width),
  start: number | null = null,
): Section => {
  const drawn = layers.reduce((sum, layer) => sum + drawnWidth(layer, scale), 0);
  let x = start ?? space.x + Math.max(0, (space.width - drawn) / 2);
  const left = x;
  const placed = layers.map((layer, index): SectionLayer => {
    const width = drawnWidth(layer, scale);
    const box = { x, y: space.y, width, height: space.height };
    x += width;
    return {
      ...box,
      index,
      kind: layer.kind,
      thickness_mm: thicknessOf(layer),
      hatch: layer.kind === 'cavity' ? 'air' : hatchOf(layer.material, layer.kind),
      widened: width > thicknessOf(layer) * scale + 0.01,
      fill: fillBox(layer, box, hatchOf),
    };
  });
  return {
    scale,
    left,
    right: x,
    top: space.y,
    bottom: space.y + space.height,
    total_mm: layers.reduce((sum, layer) => sum + thicknessOf(layer), 0),
    layers: placed,
  };
};

/** Where a layer dropped at a horizontal position would stand, counted as moveLayer counts. */
export const dropIndex = (section: Section, from: number, x: number): number => {
  const others = section.layers.filter((layer) => layer.index !== from);
  return others.filter((layer) => layer.x + layer.width / 2 < x).length;
};

/** Length of a scale bar in its unit: a round figure of at least 30 px. @param scale px per unit */
export const scaleBar = (scale: number): number =>
  [0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000].find((length) => length * scale >= 30) ?? 2000;
