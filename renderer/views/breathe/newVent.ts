import type { SectionEntry, VentElementEntry } from '../../../src/project/schema.ts';
import type { ElementKind } from './elementWords.ts';

type BoxEntry = Extract<VentElementEntry, { kind: 'box' }>;

/** Absorber that a new lining is of: slab that keeps its shape, faced where the air runs. */
const LINING = 'mineral-wool-45';

const round = (diameter_mm: number): SectionEntry => ({ shape: 'round', diameter_mm });

/** A quiet fan for ducts of 125 to 160 mm; illustrative, to be replaced by the data sheet of one's own. */
const FAN_CURVE = [
  { flow_L_s: 0, pressure_Pa: 180 },
  { flow_L_s: 25, pressure_Pa: 165 },
  { flow_L_s: 50, pressure_Pa: 135 },
  { flow_L_s: 75, pressure_Pa: 85 },
  { flow_L_s: 100, pressure_Pa: 0 },
];

/** Whether a fan still has the curve that a new one begins with. */
export const illustrativeCurve = (curve: typeof FAN_CURVE): boolean =>
  curve.length === FAN_CURVE.length &&
  FAN_CURVE.every((it, i) => it.flow_L_s === curve[i]?.flow_L_s && it.pressure_Pa === curve[i].pressure_Pa);

/** A box of three compartments, ducts in its ends, lined on the edges. */
export const newBox = (section: SectionEntry, place: BoxEntry['place'] = 'inside'): BoxEntry => ({
  kind: 'box',
  length_m: 1.2,
  width_m: 0.5,
  height_m: 0.2,
  partitions: [
    { at_m: 0.4, gap_mm: 120, side: 'far', thickness_mm: 18 },
    { at_m: 0.8, gap_mm: 120, side: 'near', thickness_mm: 18 },
  ],
  lining: { material: LINING, thickness_mm: 25, faces: false },
  ports: [
    { side: 'left', at_m: 0.15, section },
    { side: 'right', at_m: 0.15, section },
  ],
  place,
  wall_kg_m2: 12,
});

/** A new part of a kind, as wide as its neighbour. */
export const newElement = (kind: ElementKind, section: SectionEntry): VentElementEntry => {
  switch (kind) {
    case 'grille':
    case 'mesh':
      return { kind, section };
    case 'duct':
      return { kind, section, length_m: 0.5, type: 'smooth', pulled: 'straight', place: 'inside' };
    case 'bend':
      return { kind, section, angle_deg: 90, form: 'smooth' };
    case 'transition':
      return { kind, length_m: 0.2 };
    case 'box':
      return newBox(section);
    case 'fan':
      return { kind, section, curve: FAN_CURVE, type: 'backward' };
    case 'cowl':
      return { kind, section };
  }
};

const through = (section: SectionEntry, lined: boolean): VentElementEntry => ({
  kind: 'duct',
  section,
  length_m: lined ? 1.5 : 0.25,
  type: 'smooth',
  pulled: 'straight',
  place: 'wall',
  ...(lined ? { lining: { material: LINING, thickness_mm: 50 } } : {}),
});

/** What a new vent may begin as. */
export const STARTS = [
  { key: 'bare', label: 'A bare hole with a grille', words: 'the cheapest, and what everything else is compared with' },
  { key: 'duct', label: 'A lined duct', words: 'straight, 1.5 m, 50 mm of wool around it' },
  { key: 'box', label: 'One lined box', words: 'three compartments in the room, a cowl outside' },
  { key: 'boxes', label: 'Two lined boxes and a fan', words: 'one in the room, one outside, the fan between them' },
] as const;
export type StartKey = (typeof STARTS)[number]['key'];

/** The parts of a new vent, from the room outwards. @param diameter_mm of its ducts */
export const startElements = (key: StartKey, diameter_mm = 125): VentElementEntry[] => {
  const section = round(diameter_mm);
  const face = round(Math.max(160, diameter_mm));
  const grille: VentElementEntry = { kind: 'grille', section: face };
  const cowl: VentElementEntry = { kind: 'cowl', section };
  switch (key) {
    case 'bare':
      return [grille, through(section, false), { kind: 'mesh', section }];
    case 'duct':
      return [grille, through(section, true), cowl];
    case 'box':
      return [grille, newBox(section), through(section, false), cowl];
    case 'boxes':
      return [
        grille,
        newBox(section),
        { kind: 'fan', section, curve: FAN_CURVE, type: 'backward' },
        through(section, false),
        newBox(section, 'outside'),
        cowl,
      ];
  }
};

/** Of what size the ducts beside a place in a vent are. */
export const sectionBeside = (elements: readonly VentElementEntry[], index: number): SectionEntry => {
  const at = (element: VentElementEntry | undefined, which: 0 | 1): SectionEntry | null => {
    if (!element || element.kind === 'transition') return null;
    return element.kind === 'box' ? (element.ports[which]?.section ?? null) : element.section;
  };
  return at(elements[index - 1], 1) ?? at(elements[index], 0) ?? round(125);
};
