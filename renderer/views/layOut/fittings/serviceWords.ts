import type { ServiceItemEntry } from '../../../../src/project/schema.ts';
import { FITTING_DEFAULTS } from '../../../../src/project/schema.ts';

type Kind = ServiceItemEntry['kind'];

const NAMES: Readonly<Record<Kind, string>> = {
  'socket-back-to-back': 'Sockets back to back',
  'socket-recessed': 'Sockets let into the wall',
  'socket-surface': 'Sockets on the surface',
  cable: 'Cable',
  pipe: 'Pipe',
  'recessed-light': 'Recessed light',
};
const KINDS = [
  'socket-back-to-back',
  'socket-recessed',
  'socket-surface',
  'cable',
  'pipe',
  'recessed-light',
] as const satisfies readonly Kind[];

export const SERVICE_KINDS = KINDS.map((value) => ({ value, label: NAMES[value] }));

/** What seals this kind, and null where there is no leak to seal. */
export const sealedBy = (kind: Kind): string | null => {
  if (kind === 'socket-surface') return null;
  if (kind === 'cable' || kind === 'pipe') return 'Filled with mastic all round';
  return kind === 'recessed-light' ? 'Airtight hood over it' : 'Airtight box or putty pad';
};

/** Whether it goes through a hole whose size counts. */
export const goesThrough = (kind: Kind): kind is 'cable' | 'pipe' => kind === 'cable' || kind === 'pipe';

/** Sizes of hole and cable or pipe as they count, mm. */
export const sizesOf = (item: ServiceItemEntry): { readonly hole: number; readonly through: number } => {
  const kind = item.kind === 'pipe' ? 'pipe' : 'cable';
  return {
    hole: item.hole_mm ?? FITTING_DEFAULTS.hole_mm[kind],
    through: item.through_mm ?? FITTING_DEFAULTS.through_mm[kind],
  };
};

/** What a kind of service is called. */
export const serviceName = (kind: Kind): string => NAMES[kind];

/** "2 × sockets back to back, sealed" */
export const serviceInWords = ({ kind, count, sealed }: ServiceItemEntry): string =>
  `${count > 1 ? `${count} × ` : ''}${count > 1 ? NAMES[kind].toLowerCase() : NAMES[kind]}${
    sealedBy(kind) === null ? '' : sealed ? ', sealed' : ', not sealed'
  }`;

/** Services that the Add menus offer, with what stands in them at first. */
export const SERVICE_STARTS = {
  sockets: { label: 'Sockets', item: { kind: 'socket-recessed', count: 1, sealed: false } },
  cable: { label: 'Cable', item: { kind: 'cable', count: 1, sealed: false } },
  pipe: { label: 'Pipe', item: { kind: 'pipe', count: 1, sealed: false } },
  light: { label: 'Recessed light', item: { kind: 'recessed-light', count: 1, sealed: false } },
} as const satisfies Readonly<Record<string, { readonly label: string; readonly item: ServiceItemEntry }>>;
export type ServiceStart = keyof typeof SERVICE_STARTS;
export const isServiceStart = (start: string): start is ServiceStart => Object.hasOwn(SERVICE_STARTS, start);
