import type { VentReport } from '../../../src/engine/breatheResult.ts';
import { isPanel, isSurface, type PartEntry } from '../../../src/project/parts.ts';
import type { Project } from '../../../src/project/schema.ts';
import { sealedJoints, type SealedJoint } from '../../../src/project/sealTakeoff.ts';
import { ventOf } from '../../../src/project/toVents.ts';
import { boxTakeoffs, pieceArea } from '../../../src/project/ventTakeoff.ts';
import { sealName } from './fittings/sealWords.ts';
import { sealedBy, serviceName } from './fittings/serviceWords.ts';

/** What a part or what belongs to it costs in sound and takes in material; null where it says nothing. */
export interface Takeoff {
  /** Dn,e,w and what the wall loses by it, dB */
  readonly Dnew: number | null;
  readonly cost: number | null;
  /** m² */
  readonly boards: number | null;
  readonly lining: number | null;
  /** m */
  readonly sealant: number | null;
  readonly seal: number | null;
}

/** Something that belongs to an opening: a joint, a service, a box. */
export interface TakeoffRow extends Takeoff {
  readonly name: string;
  readonly kind: string;
  readonly made: string | null;
  /** mm */
  readonly sizes: readonly [number | null, number | null, number | null];
}

const NONE: Takeoff = { Dnew: null, cost: null, boards: null, lining: null, sealant: null, seal: null };
const NO_SIZES = [null, null, null] as const;
const millimetres = (metres: number): number => Math.round(metres * 1000);
const two = (value: number): number => Number(value.toFixed(2));

/** Headings of what `takeoffCells` gives. */
export const TAKEOFF_HEADINGS = [
  'Dn_e_w_dB',
  'costs wall_dB',
  'boards_m2',
  'lining_m2',
  'sealant_m',
  'seal_m',
] as const;

export const takeoffCells = ({ Dnew, cost, boards, lining, sealant, seal }: Takeoff): readonly (number | null)[] => [
  Dnew,
  cost,
  boards,
  lining,
  sealant,
  seal,
];

/** Sound of a vent opening; nothing of other parts. */
export const soundOf = (part: PartEntry, vents: readonly VentReport[]): Takeoff => {
  const report = vents.find(({ opening }) => opening === part.id);
  return report ? { ...NONE, Dnew: report.sound.ratings.Rw, cost: report.cost && two(report.cost.lostOverall) } : NONE;
};

const jointName = ({ joint, leaf }: SealedJoint, window: boolean): string => {
  const where =
    joint === 'perimeter' ? 'Joint at sides and head' : window ? 'Joint at the sill' : 'Joint at the threshold';
  return leaf === 'second' ? `${where}, second ${window ? 'pane' : 'leaf'}` : where;
};

const boxRows = (project: Project, id: string): readonly TakeoffRow[] =>
  boxTakeoffs(project, ventOf(project, id)).map(({ entry, casing, quantities }) => ({
    name: entry.name ?? 'Baffle box',
    kind: 'Box',
    made: casing.map(({ name, thickness_mm }) => `${name} ${two(thickness_mm)} mm`).join(' + '),
    sizes: [millimetres(entry.length_m), millimetres(entry.width_m), millimetres(entry.height_m)] as const,
    ...NONE,
    boards: two(pieceArea(quantities.boards) + pieceArea(quantities.partitions)),
    lining: two(pieceArea(quantities.lining)),
    sealant: two(quantities.sealant),
    seal: two(quantities.lidSeal),
  }));

/** Joints, services and boxes of an opening, for the table of all parts. */
export const takeoffRows = (project: Project, part: PartEntry): readonly TakeoffRow[] => {
  if (isSurface(part) || !isPanel(part)) return [];
  const window = part.kind === 'window';
  return [
    ...sealedJoints(part).map((joint) => ({
      name: jointName(joint, window),
      kind: 'Joint',
      made: sealName(joint.quality),
      sizes: [millimetres(joint.length), null, null] as const,
      ...NONE,
      seal: two(joint.seal),
    })),
    ...(part.items ?? []).map((item) => ({
      name: serviceName(item.kind),
      kind: 'Service',
      made: sealedBy(item.kind) === null ? `${item.count}` : `${item.count}, ${item.sealed ? 'sealed' : 'not sealed'}`,
      sizes: NO_SIZES,
      ...NONE,
    })),
    ...(part.path === undefined ? [] : boxRows(project, part.path)),
  ];
};
