import frames from '../../assets/prices/frames.json' with { type: 'json' };
import gaps from '../../assets/prices/gaps.json' with { type: 'json' };
import type { PartPrice } from '../engine/shell/index.ts';
import { frameRows } from './frameRows.ts';
import { findMaterial } from './library.ts';
import { isPanel, partsOf, type PartEntry } from './parts.ts';
import type { AssemblyEntry, CandidateEntry, LayerEntry, Project } from './schema.ts';

interface Material {
  readonly price: number | null;
  readonly illustrative: boolean;
}

/** Illustrative price of the studs, bars or clips in a cavity per m²; 0 without them. */
const framePrice = (project: Project, layers: readonly LayerEntry[], index: number): number => {
  const layer = layers[index];
  const frame = layer?.kind === 'cavity' ? layer.frame : undefined;
  if (!frame) return 0;
  const rows = frameRows(project, layers, index);
  const stud = frame.stud === 'none' ? 0 : frames.studs[frame.stud].price_per_m2;
  const fixing = frame.fixing === 'direct' ? 0 : frames.fixings[frame.fixing].price_per_m2;
  return (Number(rows?.room ?? false) + Number(rows?.outside ?? false)) * stud + fixing;
};

/** Price of one layer per m²; illustrative where it comes from the library. A rigid bond costs nothing here. */
const layerPrice = (project: Project, layers: readonly LayerEntry[], index: number): Material => {
  const layer = layers[index];
  const frame = framePrice(project, layers, index);
  const piece = layer?.kind === 'cavity' ? layer.fill : layer;
  const entry = piece && findMaterial(project, piece.material);
  if (!piece || !entry) return { price: frame, illustrative: frame > 0 };
  const { price_per_m3: price } = entry;
  if (price === undefined) return { price: null, illustrative: false };
  return {
    price: (price * piece.thickness_mm) / 1000 + frame,
    illustrative: frame > 0 || !Object.hasOwn(project.materials ?? {}, piece.material),
  };
};

const added = (prices: readonly Material[]): Material => ({
  price: prices.reduce<number | null>((sum, { price }) => (sum === null || price === null ? null : sum + price), 0),
  illustrative: prices.some((layer) => layer.illustrative),
});

/** Price of an assembly's material per m²: the user's own, or else its layers' added up; null where one has no price. */
export const assemblyPrice = (project: Project, assembly: AssemblyEntry): Material =>
  assembly.price_per_m2 === undefined
    ? added(assembly.layers.map((_, index) => layerPrice(project, assembly.layers, index)))
    : { price: assembly.price_per_m2, illustrative: false };

/** Price per m² of what is new in an assembly against the one that stands: a layer that is there already is kept. */
const newPrice = (project: Project, assembly: AssemblyEntry, standing: AssemblyEntry | undefined): Material => {
  if (assembly.price_per_m2 !== undefined) return assemblyPrice(project, assembly);
  const there = (standing?.layers ?? []).map((layer) => JSON.stringify(layer));
  const bought = assembly.layers.flatMap((layer, index) => {
    const kept = there.indexOf(JSON.stringify(layer));
    if (kept < 0) return [layerPrice(project, assembly.layers, index)];
    there.splice(kept, 1);
    return [];
  });
  return added(bought);
};

/** Area price and piece price together; null where neither is given. */
const total = (perArea: number | undefined, each: number | undefined, area: number): number | null =>
  perArea === undefined && each === undefined ? null : (perArea ?? 0) * area + (each ?? 0);

/** The make-up that stands where a candidate would take its place. */
const standingAssembly = (project: Project, part: PartEntry | undefined): AssemblyEntry | undefined =>
  part && isPanel(part) && part.assembly !== undefined ? project.assemblies[part.assembly] : undefined;

/** Illustrative price of closing or narrowing a gap; null for panels. */
const gapPrice = (part: PartEntry | undefined): number | null => {
  if (part?.kind === 'slit') return (gaps.slit.price_per_m * part.length_mm) / 1000;
  return part?.kind === 'hole' ? gaps.hole.price_each : null;
};

/**
 * What a candidate costs for the whole part: its own figures, then its assembly's, then the library's for the layers
 * that are not there yet. Seals and locks have none in the library.
 */
export const candidatePrice = (project: Project, candidate: CandidateEntry, area: number): PartPrice => {
  const assembly = candidate.assembly === undefined ? undefined : project.assemblies[candidate.assembly];
  const own = total(candidate.price_per_m2, candidate.price_each, area);
  const labour =
    total(candidate.labour_per_m2, candidate.labour_each, area) ?? total(assembly?.labour_per_m2, undefined, area);
  if (own !== null) return { materials: own, labour, illustrative: false };
  if (candidate.fittings) return { materials: null, labour, illustrative: false };
  const part = partsOf(project).find(({ candidates }) => candidates?.includes(candidate));
  if (!assembly) {
    const materials = gapPrice(part);
    return { materials, labour, illustrative: materials !== null };
  }
  const { price, illustrative } = newPrice(project, assembly, standingAssembly(project, part));
  return { materials: price === null ? null : price * area, labour, illustrative };
};
