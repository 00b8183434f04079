import { DESIGN_TERMS } from '../../engine/designTerms.ts';
import { sectionArea } from '../../engine/quantities/index.ts';
import type { Project, SurfaceEntry, VentElementEntry, VentEntry } from '../schema.ts';
import { toSection } from '../toVentBox.ts';
import { VENT_DEFAULTS } from '../ventSchema.ts';

type Of<K extends VentElementEntry['kind']> = Extract<VentElementEntry, { kind: K }>;

/** What of a vent stays when its boxes and ducts are designed anew. */
export interface DesignFrame {
  /** grilles, meshes, cowls and bends at the end in the room, and at the outer end */
  readonly inner: readonly VentElementEntry[];
  readonly outer: readonly VentElementEntry[];
  /** fans on the room's side of the wall, and beyond it */
  readonly fansInside: readonly Of<'fan'>[];
  readonly fansOutside: readonly Of<'fan'>[];
  /** the duct through the wall: its length, m, and its name */
  readonly wallDepth: number;
  readonly ductName: string;
}

const ENDS: readonly VentElementEntry['kind'][] = ['grille', 'mesh', 'cowl', 'bend', 'transition'];
/** Pieces that a vent may end in. */
export const isEnd = ({ kind }: VentElementEntry): boolean => ENDS.includes(kind);
const isFan = (element: VentElementEntry): element is Of<'fan'> => element.kind === 'fan';

const MILLI = 1e-3;

/** Of the wall itself, to the centimetre above; what is usual where its make-up is measured or a vent's. */
const thicknessOf = ({ assemblies }: Project, surface: SurfaceEntry): number => {
  const made = surface.assembly === undefined ? undefined : assemblies[surface.assembly];
  if (!made) return DESIGN_TERMS.wallDepth;
  const sum = made.layers.reduce((total, it) => total + (it.kind === 'cavity' ? it.depth_mm : it.thickness_mm), 0);
  return Math.max(1, Math.ceil((sum * MILLI) / 0.01)) / 100;
};

/** A vent that has nothing yet: a grille at either end, which is made as wide as the duct needs. */
const bare = (wallDepth: number): DesignFrame => {
  const grille = (name: string): Of<'grille'> => ({
    kind: 'grille',
    name,
    section: { shape: 'round', diameter_mm: 20 },
    free_percent: 70,
  });
  return {
    inner: [grille('Grille in the room')],
    outer: [grille('Grille outside')],
    fansInside: [],
    fansOutside: [],
    wallDepth,
    ductName: 'Duct through the wall',
  };
};

/**
 * What of a vent stays: its ends, its fans on their side of the wall, and the bare duct through the wall.
 * @param vent null where the opening has none yet
 */
export const designFrame = (project: Project, surface: SurfaceEntry, vent: VentEntry | null): DesignFrame => {
  const depth = thicknessOf(project, surface);
  if (!vent) return bare(depth);
  const { elements } = vent;
  const first = elements.findIndex((it) => !isEnd(it));
  const last = elements.findLastIndex((it) => !isEnd(it));
  const middle = first < 0 ? elements.length : first;
  const wall = elements.findIndex((it) => it.kind === 'duct' && it.place === 'wall' && !it.lining);
  const duct = elements[wall];
  const side = wall < 0 ? elements.length : wall;
  return {
    inner: elements.slice(0, middle).filter(({ kind }) => kind !== 'transition'),
    outer: first < 0 ? [] : elements.slice(last + 1).filter(({ kind }) => kind !== 'transition'),
    fansInside: elements.slice(0, side).filter(isFan),
    fansOutside: elements.slice(side).filter(isFan),
    wallDepth: duct?.kind === 'duct' ? duct.length_m : depth,
    ductName: duct?.name ?? 'Duct through the wall',
  };
};

/** Open share of an end's face. */
const freeShare = (end: Of<'grille' | 'mesh' | 'cowl' | 'bend' | 'fan' | 'duct'>): number =>
  end.kind === 'grille' || end.kind === 'mesh'
    ? (end.free_percent ?? VENT_DEFAULTS[`${end.kind}_free_percent`]) / 100
    : 1;

/** Sizes of grilles, mm. */
const STEP = 10;

/** An end as it is, or wider where it has less open area than the duct. @param diameter_mm of the duct */
export const fittingEnd = (end: VentElementEntry, diameter_mm: number): VentElementEntry => {
  if (end.kind === 'box' || end.kind === 'transition') return end;
  const share = freeShare(end);
  const open = sectionArea(toSection(end.section)) * share;
  const duct = sectionArea(toSection({ shape: 'round', diameter_mm }));
  if (open >= duct * 0.999) return end;
  const wider = share === 1 ? diameter_mm : Math.ceil(diameter_mm / Math.sqrt(share) / STEP) * STEP;
  return { ...end, section: { shape: 'round', diameter_mm: wider } };
};
