import type { Assembly, Frame, Layer } from '../engine/assembly/index.ts';
import type { Material } from '../engine/materials/index.ts';
import { findMaterial } from './library.ts';
import { FRAME_DEFAULTS, RIGID_ADHESIVE, type AssemblyEntry, type FrameEntry, type LayerEntry } from './schema.ts';
import type { MaterialEntry, Project } from './schema.ts';

const MILLI = 1e-3;
const MEGA = 1e6;
const GIGA = 1e9;

/** A document's material in SI. */
export const toMaterial = (entry: MaterialEntry): Material => {
  const { name, density_kg_m3: density } = entry;
  switch (entry.kind) {
    case 'board':
      return {
        kind: 'board',
        family: entry.family,
        name,
        density,
        youngsModulus: entry.youngs_GPa * GIGA,
        poissonRatio: entry.poisson,
        lossFactor: entry.loss_factor,
      };
    case 'porous':
      return { kind: 'porous', name, density, airflowResistivity: entry.flow_resistivity_Pa_s_m2 };
    case 'viscoelastic':
      return {
        kind: 'viscoelastic',
        name,
        density,
        shearModulus: entry.shear_modulus_MPa * MEGA,
        lossFactor: entry.loss_factor,
      };
  }
};

/** The material of an id, of one of the kinds that its place allows. @throws Error for a project that was not checked */
const materialOf = <K extends Material['kind']>(
  project: Project,
  id: string,
  ...kinds: readonly K[]
): Extract<Material, { kind: K }> => {
  const entry = findMaterial(project, id);
  const material = entry && toMaterial(entry);
  const fits = (it: Material): it is Extract<Material, { kind: K }> => kinds.some((kind) => kind === it.kind);
  if (material && fits(material)) return material;
  throw new Error(`material ${id} must be one of kind ${kinds.join(' or ')}: check the project first`);
};

const toFrame = (entry: FrameEntry): Frame => ({
  stud: entry.stud,
  arrangement: entry.arrangement,
  fixing: entry.fixing,
  spacing: (entry.spacing_mm ?? FRAME_DEFAULTS.spacing_mm) * MILLI,
  barSpacing: (entry.bar_spacing_mm ?? FRAME_DEFAULTS.bar_spacing_mm) * MILLI,
  gauge: (entry.gauge_mm ?? FRAME_DEFAULTS.gauge_mm) * MILLI,
});

const toLayer = (project: Project, entry: LayerEntry): Layer => {
  switch (entry.kind) {
    case 'board':
      return {
        kind: 'board',
        material: materialOf(project, entry.material, 'board'),
        thickness: entry.thickness_mm * MILLI,
      };
    case 'interlayer':
      return {
        kind: 'interlayer',
        material: entry.material === RIGID_ADHESIVE ? 'rigid' : materialOf(project, entry.material, 'viscoelastic'),
        thickness: entry.thickness_mm * MILLI,
      };
    case 'cavity':
      return {
        kind: 'cavity',
        depth: entry.depth_mm * MILLI,
        ...(entry.fill && {
          fill: {
            material: materialOf(project, entry.fill.material, 'porous', 'board'),
            thickness: entry.fill.thickness_mm * MILLI,
          },
        }),
        ...(entry.frame && { frame: toFrame(entry.frame) }),
      };
  }
};

/** A make-up of a checked project as the engine's assembly, in SI. */
export const toAssembly = (entry: AssemblyEntry, project: Project): Assembly => ({
  name: entry.name,
  layers: entry.layers.map((layer) => toLayer(project, layer)),
});
