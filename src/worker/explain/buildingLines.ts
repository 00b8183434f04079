import { leavesOf, massAirMassResonance, structureOf, type Assembly } from '../../engine/assembly/index.ts';
import { AIR_BULK_MODULUS, type WorkingLine } from '../../engine/quantities/index.ts';
import type { Prediction } from '../../engine/transmission/index.ts';
import { findMaterial } from '../../project/library.ts';
import type { LayerEntry, Project } from '../../project/schema.ts';
import type { Figured } from './ratingLines.ts';
import { figure } from './wording.ts';

/** Where a material's density comes from, as the library or the user says. */
const densitySource = (project: Project, id: string): string => {
  const entry = findMaterial(project, id);
  if (!entry) return 'bond without mass';
  if (!('sources' in entry)) return entry.source ?? 'your own value';
  const density = entry.sources['density_kg_m3'];
  return density ? `${density.how === 'memory' ? 'from memory' : density.how}: ${density.source}` : 'library';
};

const massLine = (project: Project, layer: LayerEntry): { line: WorkingLine; mass: number } | null => {
  const piece = layer.kind === 'cavity' ? layer.fill : layer;
  const entry = piece && findMaterial(project, piece.material);
  if (!piece || !entry) return null;
  const mass = (entry.density_kg_m3 * piece.thickness_mm) / 1000;
  return {
    mass,
    line: {
      what: `${entry.name}, ${piece.thickness_mm} mm`,
      equation: "m' = ρ · h",
      numbers: `${entry.density_kg_m3} kg/m³ · ${piece.thickness_mm / 1000} m = ${figure(mass, 2)} kg/m²`,
      source: densitySource(project, piece.material),
    },
  };
};

export const massLines = (project: Project, id: string): Figured => {
  const parts = (project.assemblies[id]?.layers ?? []).flatMap((layer) => massLine(project, layer) ?? []);
  const total = parts.reduce((sum, { mass }) => sum + mass, 0);
  const sum: WorkingLine = {
    what: 'All layers together.',
    equation: "m' = Σ ρᵢ · hᵢ",
    numbers: `${parts.map(({ mass }) => figure(mass, 2)).join(' + ')} = ${figure(total, 1)} kg/m²`,
    source: 'ISO 12354-1:2017, 4.1',
  };
  return { value: `${figure(total, 1)} kg/m²`, lines: [...parts.map(({ line }) => line), sum] };
};

export const resonanceLines = (assembly: Assembly, prediction: Prediction): Figured => {
  const { cavities } = structureOf(assembly);
  const leaves = leavesOf(assembly);
  if (prediction.resonances.length === 0) return { value: 'none: there is no cavity between two leaves', lines: [] };
  const lines = cavities.flatMap((cavity, i): readonly WorkingLine[] => {
    const [m1, m2] = [leaves[i]?.surfaceMass ?? 0, leaves[i + 1]?.surfaceMass ?? 0];
    const f0 = massAirMassResonance(m1, m2, cavity.depth);
    const [a, b, d] = [figure(m1, 1), figure(m2, 1), figure(cavity.depth, 3)];
    return [
      {
        what: `The two leaves beside cavity ${i + 1} as masses on the spring of the air between them.`,
        equation: 'f₀ = (1/2π) · √(ρ₀c₀² · (m₁ + m₂) / (d · m₁ · m₂))',
        numbers: `(1/2π) · √(${figure(AIR_BULK_MODULUS, 0)} · (${a} + ${b}) / (${d} · ${a} · ${b})) = ${figure(f0)} Hz`,
        source: 'Fahy, Sound and Structural Vibration (1985), ch. 4; ISO 12354-1:2017, annex D',
      },
    ];
  });
  const all = prediction.resonances.map((f) => `${figure(f, 0)} Hz`).join(', ');
  const chain: WorkingLine = {
    what: 'All leaves and cavities together: the cavities couple, so the resonances move apart.',
    equation: 'eigenfrequencies of the chain of masses mᵢ and springs ρ₀c₀²/dᵢ',
    numbers: all,
    source: 'chain of masses and springs, textbook; Fahy (1985), ch. 4',
  };
  return { value: all, lines: cavities.length > 1 ? [...lines, chain] : lines };
};

export const coincidenceLines = ({ leaves }: Prediction): Figured => {
  const lines = leaves.map((leaf): WorkingLine => {
    const fc = leaf.criticalFrequency;
    const [m, B] = [figure(leaf.surfaceMass, 1), figure(leaf.bendingStiffness, 0)];
    return {
      what:
        fc === null
          ? `${leaf.name}: limp, no critical frequency.`
          : `${leaf.name}: from here on bending waves in it run as fast as sound in air and it lets more through. Boards that are only screwed together bend each on its own.`,
      equation: 'f_c = (c₀²/2π) · √(m′/B)',
      numbers: fc === null ? '–' : `m′ = ${m} kg/m², B = ${B} N·m there: ${figure(fc, 0)} Hz`,
      source: 'Hopkins, Sound Insulation (2007), eq. 2.201; ISO 12354-1:2017, B.2',
    };
  });
  const found = leaves.flatMap((leaf) => (leaf.criticalFrequency === null ? [] : [leaf.criticalFrequency]));
  return { value: found.map((fc) => `${figure(fc, 0)} Hz`).join(', ') || 'none: every leaf is limp', lines };
};
