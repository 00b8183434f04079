import type { PartPrice } from '../engine/shell/index.ts';
import { findMaterial } from './library.ts';
import type { AssemblyEntry, CandidateEntry, LayerEntry, Project } from './schema.ts';

interface Material {
  readonly price: number | null;
  readonly illustrative: boolean;
}

/** Price of one layer per m²; illustrative where it comes from the library. A rigid bond, bars and studs cost nothing here. */
const layerPrice = (project: Project, layer: LayerEntry): Material => {
  const piece = layer.kind === 'cavity' ? layer.fill : layer;
  const entry = piece && findMaterial(project, piece.material);
  if (!piece || !entry) return { price: 0, illustrative: false };
  const { price_per_m3: price } = entry;
  if (price === undefined) return { price: null, illustrative: false };
  return {
    price: (price * piece.thickness_mm) / 1000,
    illustrative: !Object.hasOwn(project.materials ?? {}, piece.material),
  };
};

/** Price of an assembly's material per m²: the user's own, or else its layers' added up; null where one has no price. */
export const assemblyPrice = (project: Project, assembly: AssemblyEntry): Material => {
  if (assembly.price_per_m2 !== undefined) return { price: assembly.price_per_m2, illustrative: false };
  const layers = assembly.layers.map((layer) => layerPrice(project, layer));
  return {
    price: layers.reduce<number | null>((sum, { price }) => (sum === null || price === null ? null : sum + price), 0),
    illustrative: layers.some((layer) => layer.illustrative),
  };
};

/** Area price and piece price together; null where neither is given. */
const total = (perArea: number | undefined, each: number | undefined, area: number): number | null =>
  perArea === undefined && each === undefined ? null : (perArea ?? 0) * area + (each ?? 0);

/** What a candidate costs for the whole part: its own figures, then its assembly's, then the library's. */
export const candidatePrice = (project: Project, candidate: CandidateEntry, area: number): PartPrice => {
  const assembly = candidate.assembly === undefined ? undefined : project.assemblies[candidate.assembly];
  const own = total(candidate.price_per_m2, candidate.price_each, area);
  const labour =
    total(candidate.labour_per_m2, candidate.labour_each, area) ?? total(assembly?.labour_per_m2, undefined, area);
  if (own !== null || !assembly) return { materials: own, labour, illustrative: false };
  const { price, illustrative } = assemblyPrice(project, assembly);
  return { materials: price === null ? null : price * area, labour, illustrative };
};
