import { findMaterial, materialIds, type LibraryEntry } from '../../../src/project/library.ts';
import { RIGID_ADHESIVE, type MaterialEntry, type Project } from '../../../src/project/schema.ts';
import { isLibraryEntry } from './materialWords.ts';

/** What a material is to be used as. */
export type MaterialUse = 'board' | 'interlayer' | 'fill';

export interface ShelfItem {
  readonly id: string;
  readonly name: string;
  readonly own: boolean;
  /** null for the rigid bond, which is no material */
  readonly entry: MaterialEntry | LibraryEntry | null;
}

export interface ShelfGroup {
  readonly name: string;
  readonly items: readonly ShelfItem[];
}

const OWN = 'Your own';
/** Boards this light are sold as filling too (closed-cell foam, cork), kg/m³. */
const LIGHT_BOARD = 150;

const fits = (entry: MaterialEntry | LibraryEntry, use: MaterialUse): boolean => {
  if (use === 'board') return entry.kind === 'board';
  if (use === 'interlayer') return entry.kind === 'viscoelastic';
  return entry.kind === 'porous' || (entry.kind === 'board' && entry.density_kg_m3 <= LIGHT_BOARD);
};

const RIGID: ShelfGroup = {
  name: 'Bonded',
  items: [{ id: RIGID_ADHESIVE, name: 'Rigid adhesive: both boards bend as one', own: false, entry: null }],
};

/** Materials for one use, grouped, own ones first; only those whose name or group has every word of the search. */
export const materialShelf = (project: Project, use: MaterialUse, search: string): readonly ShelfGroup[] => {
  const words = search.toLowerCase().split(/\s+/).filter(Boolean);
  const groups = new Map<string, ShelfItem[]>([[OWN, []]]);
  for (const id of materialIds(project)) {
    const entry = findMaterial(project, id);
    if (!entry || !fits(entry, use)) continue;
    const own = Object.hasOwn(project.materials ?? {}, id);
    const group = own || !isLibraryEntry(entry) ? OWN : entry.group;
    groups.set(group, [...(groups.get(group) ?? []), { id, name: entry.name, own, entry }]);
  }
  const all = [...(use === 'interlayer' ? [RIGID] : []), ...[...groups].map(([name, items]) => ({ name, items }))];
  return all
    .map((group) => ({
      ...group,
      items: group.items.filter((item) =>
        words.every((word) => `${item.name} ${group.name} ${item.id}`.toLowerCase().includes(word)),
      ),
    }))
    .filter((group) => group.items.length > 0);
};
