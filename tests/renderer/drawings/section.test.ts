import { describe, expect, it } from 'vitest';
import {
  dropIndex,
  fittingScale,
  layoutSection,
  LEAST_WIDTH,
  scaleBar,
  thicknessOf,
  withThickness,
} from '../../../renderer/drawings/section.ts';
import { inches, insertPlaces, layerDimensions, millimetres } from '../../../renderer/drawings/sectionDimensions.ts';
import { layoutFrame } from '../../../renderer/drawings/sectionFrame.ts';
import type { FrameRows } from '../../../src/project/frameRows.ts';
import { snapThickness, stepThickness } from '../../../renderer/drawings/snapThickness.ts';
import { spread } from '../../../renderer/drawings/spread.ts';
import type { CavityLayerEntry, FrameEntry, LayerEntry } from '../../../src/project/schema.ts';

const space = { x: 20, y: 40, width: 320, height: 180 };
const board = (thickness_mm: number): LayerEntry => ({
  kind: 'board',
  material: 'plasterboard-standard',
  thickness_mm,
});
const cavity: CavityLayerEntry = {
  kind: 'cavity',
  depth_mm: 100,
  fill: { material: 'mineral-wool-45', thickness_mm: 75 },
};
const wall: readonly LayerEntry[] = [board(12.5), board(12.5), cavity, board(12.5)];
const layout = (layers: readonly LayerEntry[]) => layoutSection(layers, space, () => 'plasterboard');

describe('the section of an assembly', () => {
  it('puts the layers side by side from the room outwards, with nothing between them', () => {
    const { layers, left, right } = layout(wall);
    expect(layers[0]?.x).toBe(left);
    layers
      .slice(1)
      .forEach((layer, i) => expect(layer.x).toBeCloseTo((layers[i]?.x ?? 0) + (layers[i]?.width ?? 0), 9));
    expect((layers.at(-1)?.x ?? 0) + (layers.at(-1)?.width ?? 0)).toBeCloseTo(right, 9);
  });
  it('draws every layer to one scale unless it says that it is drawn wider', () => {
    for (const layers of [wall, [board(0.3), board(300)], [board(900)]]) {
      const section = layout(layers);
      for (const layer of section.layers) {
        if (layer.widened) expect(layer.width).toBe(LEAST_WIDTH[layer.kind]);
        else expect(layer.width).toBeCloseTo(layer.thickness_mm * section.scale, 9);
      }
      for (const it of layerDimensions(section, 0, 360)) expect(it.widened).toBe(section.layers[it.index]?.widened);
    }
  });
  it('fits from a foil to a rampart', () => {
    for (const thickness of [0.2, 12.5, 150, 800, 3000]) {
      const section = layout([board(thickness)]);
      expect(section.right - section.left).toBeLessThanOrEqual(space.width);
      expect(section.left).toBeGreaterThanOrEqual(space.x);
    }
  });
  it('keeps its scale when it is told to, so that the layer under the hand follows it', () => {
    const scale = fittingScale(wall, space.width);
    const thicker = wall.with(2, withThickness(cavity, 110));
    const section = layoutSection(thicker, space, () => 'wool', scale);
    expect(section.scale).toBe(scale);
    expect(section.layers[2]?.width).toBeCloseTo(110 * scale, 9);
  });
  it('adds up the thickness that is built, not the one that is drawn', () => {
    expect(layout(wall).total_mm).toBeCloseTo(137.5, 9);
  });
  it('fills as much of a cavity as the absorber takes', () => {
    const placed = layout(wall).layers[2];
    expect(placed?.fill?.width).toBeCloseTo((placed?.width ?? 0) * 0.75, 9);
  });
  it('says where a carried layer would land, counted without it', () => {
    const section = layout(wall);
    expect(dropIndex(section, 0, section.left - 5)).toBe(0);
    expect(dropIndex(section, 0, section.right + 5)).toBe(3);
    expect(dropIndex(section, 3, section.left - 5)).toBe(0);
  });
  it('has a scale bar of a round length that can be read', () => {
    for (const scale of [6, 1, 0.25, 0.03]) expect(scaleBar(scale) * scale).toBeGreaterThanOrEqual(30);
  });
});

describe('thickness', () => {
  it('never leaves a filling deeper than its cavity, and keeps a full one full', () => {
    const full: CavityLayerEntry = { ...cavity, fill: { material: 'mineral-wool-45', thickness_mm: 100 } };
    expect(withThickness(cavity, 50)).toMatchObject({ depth_mm: 50, fill: { thickness_mm: 50 } });
    expect(withThickness(cavity, 200)).toMatchObject({ depth_mm: 200, fill: { thickness_mm: 75 } });
    expect(withThickness(full, 200)).toMatchObject({ depth_mm: 200, fill: { thickness_mm: 200 } });
    expect(thicknessOf(withThickness(board(10), 15))).toBe(15);
  });
  it('snaps to what merchants sell when the hand is near, and otherwise to half a millimetre', () => {
    expect(snapThickness(12.9, [9.5, 12.5, 15], 1, 0.5)).toBe(12.5);
    expect(snapThickness(13.8, [9.5, 12.5, 15], 0.5, 0.5)).toBe(14);
    expect(snapThickness(-4, [9.5], 1, 0.5)).toBe(0.5);
    expect(snapThickness(13.8, [], 100, 0.5)).toBe(14);
  });
  it('steps from one usual thickness to the next, and by a tenth beyond the last', () => {
    expect(stepThickness(12.5, [9.5, 12.5, 15], 1)).toBe(15);
    expect(stepThickness(12.5, [9.5, 12.5, 15], -1)).toBe(9.5);
    expect(stepThickness(13, [9.5, 12.5, 15], -1)).toBe(12.5);
    expect(stepThickness(100, [9.5, 12.5], 1)).toBe(110);
  });
});

describe('frames', () => {
  const frameOf = (frame: Partial<FrameEntry>, sides: FrameRows | null = null) => {
    const layer: CavityLayerEntry = {
      ...cavity,
      frame: { stud: 'timber', arrangement: 'common', fixing: 'direct', ...frame },
    };
    const section = layout([board(12.5), layer, board(12.5)]);
    const placed = section.layers[1];
    if (!placed) throw new Error('The cavity is not drawn.');
    return { ...layoutFrame(layer, placed, section.scale, sides), placed };
  };
  it('link both leaves only where one stud carries both with nothing springy between', () => {
    expect(frameOf({}).studs.every((stud) => stud.links)).toBe(true);
    expect(frameOf({ fixing: 'resilient-bar' }).studs.some((stud) => stud.links)).toBe(false);
    expect(frameOf({ arrangement: 'staggered' }).studs.some((stud) => stud.links)).toBe(false);
    expect(frameOf({ arrangement: 'twin' }).studs.some((stud) => stud.links)).toBe(false);
  });
  it('touch what they are drawn to touch', () => {
    const { studs, placed } = frameOf({});
    for (const stud of studs) {
      expect(stud.x).toBeCloseTo(placed.x, 6);
      expect(stud.width).toBeCloseTo(placed.width, 6);
    }
    const twin = frameOf({ arrangement: 'twin' });
    expect(twin.studs).toHaveLength(4);
    for (const stud of twin.studs) expect(stud.width).toBeLessThan(twin.placed.width / 2);
    const staggered = frameOf({ arrangement: 'staggered' });
    for (const stud of staggered.studs) expect(stud.width).toBeLessThan(staggered.placed.width);
  });
  it('stand once and clear of a leaf that stands by itself', () => {
    const { studs, placed } = frameOf({ arrangement: 'twin' }, { room: true, outside: false });
    expect(studs).toHaveLength(2);
    for (const stud of studs) {
      expect(stud.x).toBeCloseTo(placed.x, 6);
      expect(stud.x + stud.width).toBeLessThan(placed.x + placed.width);
      expect(stud.links).toBe(false);
    }
    const [outer] = frameOf({ arrangement: 'twin' }, { room: false, outside: true }).studs;
    expect((outer?.x ?? 0) + (outer?.width ?? 0)).toBeCloseTo(placed.x + placed.width, 6);
  });
  it('leave room for bars and clips on the room side', () => {
    const { bars, studs, placed } = frameOf({ fixing: 'isolating-clip' });
    expect(bars).toHaveLength(1);
    expect(bars[0]?.x).toBe(placed.x);
    for (const stud of studs) expect(stud.x).toBeCloseTo(placed.x + (bars[0]?.width ?? 0), 6);
  });
  it('are not drawn where there are none', () => {
    expect(frameOf({ stud: 'none' }).studs).toEqual([]);
    expect(frameOf({ stud: 'none' }).spacing_mm).toBeNull();
  });
});

describe('dimensions and plus signs', () => {
  it('turn upright and stand apart where layers are thin', () => {
    const thin = layout([board(12.5), board(12.5), { ...cavity, depth_mm: 400 }, board(12.5)]);
    const dimensions = layerDimensions(thin, 0, 360);
    expect(dimensions[0]?.upright).toBe(true);
    expect((dimensions[1]?.at ?? 0) - (dimensions[0]?.at ?? 0)).toBeGreaterThanOrEqual(12 - 1e-9);
    expect(dimensions[2]?.upright).toBe(false);
  });
  it('offer one plus before each layer and one after the last, a finger apart', () => {
    const places = insertPlaces(layout(wall), 24, 14, 346);
    expect(places).toHaveLength(wall.length + 1);
    places.slice(1).forEach((place, i) => expect(place.at - (places[i]?.at ?? 0)).toBeGreaterThanOrEqual(24 - 1e-9));
  });
  it('write inches where the builder works in inches', () => {
    expect(layerDimensions(layout(wall), 0, 360, inches).map((it) => it.text)).toEqual([
      '0.49',
      '0.49',
      '3.94',
      '0.49',
    ]);
  });
  it('write millimetres without idle zeros', () => {
    expect([12.5, 100, 0.55, 137.5].map(millimetres)).toEqual(['12.5', '100', '0.55', '137.5']);
  });
  it('spread crowded positions around their middle and leave free ones alone', () => {
    expect(spread([0, 50, 100], 10, 0, 100)).toEqual([0, 50, 100]);
    expect(spread([50, 50], 10, 0, 100)).toEqual([45, 55]);
    expect(spread([98, 99, 100], 10, 0, 100)).toEqual([80, 90, 100]);
  });
});
