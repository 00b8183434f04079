import { DUCT_LINING, type DesignCandidate } from '../../engine/designGrid.ts';
import type { SectionEntry, VentElementEntry } from '../schema.ts';
import { fittingEnd, type DesignFrame } from './frame.ts';

/** Absorber of designed linings: slab that keeps its shape, faced where the air runs. */
export const DESIGN_LINING = 'mineral-wool-45';

type BoxEntry = Extract<VentElementEntry, { kind: 'box' }>;

const millimetres = (length: number): number => Math.round(length * 1000);

const boxEntry = (
  { box, casing }: DesignCandidate,
  section: SectionEntry,
  name: string,
  place: 'inside' | 'outside',
): BoxEntry => ({
  kind: 'box',
  name,
  length_m: box.length,
  width_m: box.width,
  height_m: box.height,
  partitions: box.partitions.map(({ at, gap, side, thickness }) => ({
    at_m: at,
    gap_mm: millimetres(gap),
    side: side === 'S' ? ('near' as const) : ('far' as const),
    thickness_mm: millimetres(thickness),
  })),
  ...(box.lining && {
    lining: { material: DESIGN_LINING, thickness_mm: millimetres(box.lining.thickness), faces: box.lining.faces },
  }),
  ports: box.ports.map(({ side, at }) => ({
    side: side === 'W' ? ('left' as const) : ('right' as const),
    at_m: at,
    section,
  })),
  place,
  casing: casing.key,
});

/**
 * A candidate in the document's own form, within what stays of the vent: ends, box in the room, lined duct, fans, duct
 * through the wall, second box.
 */
export const designedElements = (candidate: DesignCandidate, frame: DesignFrame): readonly VentElementEntry[] => {
  const diameter_mm = millimetres(candidate.diameter);
  const section: SectionEntry = { shape: 'round', diameter_mm };
  const fitting = (end: VentElementEntry): VentElementEntry => fittingEnd(end, diameter_mm);
  const straight = { kind: 'duct', section, type: 'smooth', pulled: 'straight' } as const;
  const lined: VentElementEntry = {
    ...straight,
    name: 'Lined duct',
    length_m: candidate.linedDuct,
    lining: { material: DESIGN_LINING, thickness_mm: millimetres(DUCT_LINING) },
    place: 'inside',
    casing: candidate.casing.key,
  };
  return [
    ...frame.inner.map(fitting),
    boxEntry(candidate, section, 'Box in the room', 'inside'),
    ...(candidate.linedDuct > 0 ? [lined] : []),
    ...frame.fansInside,
    { ...straight, name: frame.ductName, length_m: frame.wallDepth, place: 'wall' },
    ...frame.fansOutside,
    ...(candidate.boxes === 2 ? [boxEntry(candidate, section, 'Box outside', 'outside')] : []),
    ...frame.outer.map(fitting),
  ];
};
