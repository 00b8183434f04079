import type { VentElement, VentPath } from '../engine/openings/index.ts';
import type { Section } from '../engine/quantities/index.ts';
import type { Project } from './schema.ts';
import { toLining, toSection, toVentBox, toWall } from './toVentBox.ts';
import { VENT_DEFAULTS, type VentElementEntry, type VentEntry } from './ventSchema.ts';

const LITRE = 1e-3;

/** How a piece is called that has no name of its own. */
export const PIECE_NAMES: Readonly<Record<VentElementEntry['kind'], string>> = {
  grille: 'Grille',
  mesh: 'Insect mesh',
  duct: 'Duct',
  bend: 'Bend',
  transition: 'Change of size',
  box: 'Baffle box',
  fan: 'Fan',
  cowl: 'Cowl',
};

/** Height of a wall's unevenness, m. @source common practice: steel 0.09 to 0.15 mm; flexible duct and fleece 1 to 3 mm */
const ROUGHNESS = { smooth: 0.1e-3, lined: 2e-3, flexible: 2e-3 } as const;
/** Loss of flexible duct against straight. @source Abushakra, Walker & Sherman (LBNL): ×4 moderate, ×10 strong */
const PULLED = { straight: 1, slack: 4, squeezed: 10 } as const;

/** A transition has the section of the piece after it, or before it at the end. */
const sectionBeside = (elements: readonly VentElementEntry[], at: number): Section => {
  const beside = elements.slice(at + 1).find(({ kind }) => kind !== 'transition');
  const other = elements.slice(0, at).findLast(({ kind }) => kind !== 'transition');
  for (const [piece, port] of [
    [beside, 0],
    [other, 1],
  ] as const) {
    if (!piece || piece.kind === 'transition') continue;
    const entry = piece.kind === 'box' ? piece.ports[port]?.section : piece.section;
    if (entry) return toSection(entry);
  }
  throw new Error('a transition must have a piece beside it: check the project first');
};

const toElement = (project: Project, elements: readonly VentElementEntry[], at: number): VentElement[] => {
  const entry = elements[at];
  if (!entry) return [];
  const name = entry.name ?? PIECE_NAMES[entry.kind];
  switch (entry.kind) {
    case 'grille':
    case 'mesh': {
      const usual = VENT_DEFAULTS[`${entry.kind}_free_percent`];
      const freeShare = (entry.free_percent ?? usual) / 100;
      return [{ kind: entry.kind, name, section: toSection(entry.section), freeShare }];
    }
    case 'duct':
      return [
        {
          kind: 'duct',
          name,
          section: toSection(entry.section),
          length: entry.length_m,
          roughness: entry.type === 'flexible' ? ROUGHNESS.flexible : entry.lining ? ROUGHNESS.lined : ROUGHNESS.smooth,
          lossFactor: entry.type === 'flexible' ? PULLED[entry.pulled] : 1,
          lining: toLining(project, entry.lining),
          place: entry.place,
          wall: toWall(project, entry),
        },
      ];
    case 'bend': {
      const { angle_deg: angle, form } = entry;
      return [
        { kind: 'bend', name, section: toSection(entry.section), angle, form, lining: toLining(project, entry.lining) },
      ];
    }
    case 'transition':
      return [{ kind: 'transition', name, section: sectionBeside(elements, at), length: entry.length_m }];
    case 'box':
      return [
        { kind: 'box', name, box: toVentBox(project, entry), place: entry.place, casing: toWall(project, entry) },
      ];
    case 'fan':
      return [
        {
          kind: 'fan',
          name,
          section: toSection(entry.section),
          curve: {
            flows: entry.curve.map(({ flow_L_s }) => flow_L_s * LITRE),
            pressures: entry.curve.map(({ pressure_Pa }) => pressure_Pa),
          },
          soundPower: entry.sound_power_dB ?? null,
          type: entry.type,
        },
      ];
    case 'cowl':
      return [{ kind: 'cowl', name, section: toSection(entry.section), loss: entry.loss ?? VENT_DEFAULTS.cowl_loss }];
  }
};

/** A vent of a checked project in SI. */
export const toVentPath = (project: Project, { id, name, direction, elements }: VentEntry): VentPath => ({
  id,
  name,
  direction,
  elements: elements.flatMap((_, at) => toElement(project, elements, at)),
});

/** The vent with this id. @throws Error for a project that was not checked */
export const ventOf = (project: Project, id: string): VentEntry => {
  const found = project.vents?.find((vent) => vent.id === id);
  if (!found) throw new Error(`vent ${id} must exist: check the project first`);
  return found;
};

/** Vents whose opening is made of them, in the document's order. */
export const ventsInUse = (project: Project): readonly VentEntry[] => {
  const used = project.surfaces.flatMap(({ openings }) =>
    (openings ?? []).flatMap((opening) => ('path' in opening && opening.path !== undefined ? [opening.path] : [])),
  );
  return (project.vents ?? []).filter(({ id }) => used.includes(id));
};
