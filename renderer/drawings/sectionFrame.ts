import type { FrameRows } from '../../src/project/frameRows.ts';
import type { CavityLayerEntry, FrameEntry } from '../../src/project/schema.ts';
import type { Box, SectionLayer } from './section.ts';

/** Usual sizes of what is drawn in a cavity, mm; drawing only, the prediction does not use them. Common practice. */
const STUD_FACE = 45;
const BAR_HEIGHT = 16;
const CLIP_HEIGHT = 30;
const TWIN_GAP_SHARE = 0.12;
const STAGGER_DEPTH = 0.68;
/** a frame that stands alone in front of masonry, clear of it */
const ALONE_DEPTH = 0.8;

export interface SectionStud extends Box {
  readonly material: 'timber' | 'steel';
  /** touches both leaves: the sound walks across */
  readonly links: boolean;
}

/** A bar or clip strip between the room-side leaf and the studs. */
export interface SectionBar extends Box {
  readonly kind: 'resilient-bar' | 'isolating-clip';
}

export interface SectionFrame {
  readonly studs: readonly SectionStud[];
  readonly bars: readonly SectionBar[];
  /** distance between stud centres as written, mm; null without studs */
  readonly spacing_mm: number | null;
  /** where the distance is dimensioned */
  readonly between: { readonly x: number; readonly from: number; readonly to: number } | null;
}

const NOTHING: SectionFrame = { studs: [], bars: [], spacing_mm: null, between: null };

/** Usual stud spacing where the document leaves it out, mm. Common practice. */
export const USUAL_SPACING = 600;

const rows = (
  frame: FrameEntry,
  box: Box,
  from: number,
  sides: FrameRows | null,
): readonly { x: number; width: number; at: number }[] => {
  const depth = box.x + box.width - from;
  if (frame.arrangement === 'twin' && sides && sides.room !== sides.outside) {
    const width = depth * ALONE_DEPTH;
    return [0.2, 0.8].map((at) => ({ x: sides.room ? from : box.x + box.width - width, width, at }));
  }
  if (frame.arrangement === 'twin') {
    const width = (depth * (1 - TWIN_GAP_SHARE)) / 2;
    return [0.2, 0.8].flatMap((at) => [
      { x: from, width, at },
      { x: box.x + box.width - width, width, at },
    ]);
  }
  if (frame.arrangement === 'staggered') {
    const width = depth * STAGGER_DEPTH;
    return [
      { x: from, width, at: 0.14 },
      { x: box.x + box.width - width, width, at: 0.5 },
      { x: from, width, at: 0.86 },
    ];
  }
  return [0.2, 0.8].map((at) => ({ x: from, width: depth, at }));
};

/**
 * Studs, bars and clips of a cavity, where they stand in its drawn box.
 * @param sides of two frames that share nothing: the sides that have studs; masonry needs none
 */
export const layoutFrame = (
  layer: CavityLayerEntry,
  placed: SectionLayer,
  scale: number,
  sides: FrameRows | null = null,
): SectionFrame => {
  const frame = layer.frame;
  if (!frame) return NOTHING;
  const barHeight = frame.fixing === 'direct' ? 0 : frame.fixing === 'resilient-bar' ? BAR_HEIGHT : CLIP_HEIGHT;
  const strip = Math.min(placed.width * 0.4, (barHeight / layer.depth_mm) * placed.width);
  const from = placed.x + strip;
  const bars: SectionBar[] =
    frame.fixing === 'direct'
      ? []
      : [{ kind: frame.fixing, x: placed.x, y: placed.y, width: strip, height: placed.height }];
  if (frame.stud === 'none') return { ...NOTHING, bars };
  const face = Math.min(placed.height * 0.2, Math.max(8, STUD_FACE * scale));
  const material = frame.stud;
  const studs = rows(frame, placed, from, sides).map(({ x, width, at }): SectionStud => ({
    x,
    y: placed.y + placed.height * at - face / 2,
    width,
    height: face,
    material,
    links: frame.arrangement === 'common' && frame.fixing === 'direct',
  }));
  const pair = frame.arrangement === 'staggered' ? [0.14, 0.86] : [0.2, 0.8];
  const [first = 0, second = 0] = pair.map((at) => placed.y + placed.height * at);
  return {
    studs,
    bars,
    spacing_mm: frame.spacing_mm ?? USUAL_SPACING,
    between: { x: placed.x + placed.width / 2, from: first, to: second },
  };
};
