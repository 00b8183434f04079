import type { VentBox, VentElement, VentPort } from '../../../src/engine/openings/index.ts';
import type { Section } from '../../../src/engine/quantities/index.ts';
import type { SectionEntry, VentElementEntry } from '../../../src/project/schema.ts';

type BoxEntry = Extract<VentElementEntry, { kind: 'box' }>;

const metres = (value: number): number => Number(value.toFixed(4));
const millimetres = (value: number): number => Number((value * 1000).toFixed(1));

const SIDES = { W: 'left', E: 'right', S: 'near', N: 'far', face: 'face' } as const;

export const sectionEntry = (section: Section): SectionEntry =>
  section.shape === 'round'
    ? { shape: 'round', diameter_mm: millimetres(section.diameter) }
    : { shape: 'rectangular', width_mm: millimetres(section.width), height_mm: millimetres(section.height) };

const portEntry = (port: VentPort): BoxEntry['ports'][number] => ({
  side: SIDES[port.side],
  at_m: metres(port.at),
  ...(port.side === 'face' ? { across_m: metres(port.across) } : {}),
  section: sectionEntry(port.section),
});

/** The document's box with the shape of an edited one; lining and boards stay as they are. */
export const boxEntry = (entry: BoxEntry, box: VentBox): BoxEntry => ({
  ...entry,
  length_m: metres(box.length),
  width_m: metres(box.width),
  height_m: metres(box.height),
  partitions: box.partitions.map(({ at, thickness, gap, side }) => ({
    at_m: metres(at),
    gap_mm: millimetres(gap),
    side: side === 'S' ? 'near' : 'far',
    thickness_mm: millimetres(thickness),
  })),
  ports: box.ports.map(portEntry),
});

/** The document's part with the sizes of a dragged one; everything else stays as it is. */
export const elementEntry = (entry: VentElementEntry, element: VentElement): VentElementEntry => {
  if (entry.kind === 'box') return element.kind === 'box' ? boxEntry(entry, element.box) : entry;
  if (entry.kind === 'transition')
    return element.kind === 'transition' ? { ...entry, length_m: metres(element.length) } : entry;
  if (element.kind === 'box') return entry;
  const section = sectionEntry(element.section);
  return entry.kind === 'duct' && element.kind === 'duct'
    ? { ...entry, section, length_m: metres(element.length) }
    : { ...entry, section };
};
