import { holeTransmissions } from './hole.ts';
import type { ServiceItem } from './doorFittings.ts';
import type { Leak } from './sealLeak.ts';

interface Cut {
  readonly name: string;
  /** cut in the leaf, m² */
  readonly area: number;
  /** R of what stands in the cut below and from 500 Hz on, dB */
  readonly below: number;
  readonly above: number;
}

/**
 * Cuts for electrical fittings.
 * @source common practice; back to back set so that two of them take 2 dB above 500 Hz from 10 m² of R 55; a recessed
 * light counts as a hole of 60 cm²
 */
const CUTS: Readonly<Record<Exclude<ServiceItem['kind'], 'cable' | 'pipe'>, Cut>> = {
  'socket-back-to-back': { name: 'Sockets back to back', area: 0.0056, below: 32, above: 25 },
  'socket-recessed': { name: 'Recessed sockets', area: 0.0056, below: 40, above: 35 },
  'socket-surface': { name: 'Sockets on the surface', area: 0, below: 0, above: 0 },
  'recessed-light': { name: 'Recessed lights', area: 0.006, below: 5, above: 2 },
};
/** Gain of an airtight box, putty pad or hood, dB. @source common practice: removes most of it */
const SEALED_GAIN = 15;
/** R of a hole filled with mastic round what goes through it, dB. @source common practice */
const FILLED = 40;
/** Depth of a hole through a wall, m. @source common practice */
const DEPTH = 0.2;

const throughLeak = ({ kind, count, sealed, hole, through }: ServiceItem, bands: readonly number[]): Leak => {
  const name = kind === 'cable' ? 'Cables' : 'Pipes';
  const area = (Math.PI / 4) * Math.max(0, hole ** 2 - through ** 2);
  if (sealed || area === 0) return { name, openArea: bands.map(() => (count * area) / 10 ** (FILLED / 10)) };
  // the open ring as a round hole of the same area
  const diameter = Math.sqrt((4 * area) / Math.PI);
  return { name, openArea: holeTransmissions(diameter, DEPTH, bands, 'diffuse').map((t) => count * area * t) };
};

/** Leak of things led through or let into a wall. @param bands nominal third octaves, Hz */
export const serviceLeak = (item: ServiceItem, bands: readonly number[]): Leak => {
  if (item.kind === 'cable' || item.kind === 'pipe') return throughLeak(item, bands);
  const { name, area, below, above } = CUTS[item.kind];
  const gain = item.sealed ? SEALED_GAIN : 0;
  return {
    name,
    openArea: bands.map((band) => item.count * area * 10 ** (-((band < 500 ? below : above) + gain) / 10)),
  };
};
