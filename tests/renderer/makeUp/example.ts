import { studio } from '../../../renderer/store/studio.svelte.ts';
import { checkProject } from '../../../src/project/check.ts';
import { FORMAT, type Project } from '../../../src/project/schema.ts';

/** A small build of our own for the tests of this station: a stud wall with a third leaf, and a bare brick wall. */
export const example = (): Project => {
  const checked = checkProject({
    format: FORMAT,
    name: 'Test shed',
    assemblies: {
      stud: {
        name: 'Stud wall',
        layers: [
          { kind: 'board', material: 'plasterboard-standard', thickness_mm: 12.5 },
          {
            kind: 'cavity',
            depth_mm: 95,
            fill: { material: 'mineral-wool-45', thickness_mm: 75 },
            frame: { stud: 'timber', arrangement: 'common', fixing: 'direct', spacing_mm: 600 },
          },
          { kind: 'board', material: 'osb', thickness_mm: 18 },
        ],
      },
      damped: {
        name: 'Damped pair',
        layers: [
          { kind: 'board', material: 'plasterboard-dense', thickness_mm: 15 },
          { kind: 'interlayer', material: 'damping-compound', thickness_mm: 0.55 },
          { kind: 'board', material: 'osb', thickness_mm: 18 },
        ],
      },
      brick: { name: 'Brick', layers: [{ kind: 'board', material: 'brick', thickness_mm: 102.5 }] },
    },
    surfaces: [{ id: 'north', name: 'North wall', kind: 'wall', width_m: 4, height_m: 2.4, assembly: 'stud' }],
    compare: ['stud', 'brick'],
  });
  if (!checked.ok) throw new Error(JSON.stringify(checked.faults));
  return checked.project;
};

/** Opens it as the project on screen, without a host behind it. */
export const openExample = (): Project => {
  const project = example();
  studio.project = project;
  studio.selectedAssembly = null;
  studio.refusal = null;
  return project;
};

export const layersOf = (id: string): readonly string[] =>
  (studio.project?.assemblies[id]?.layers ?? []).map((layer) =>
    layer.kind === 'cavity' ? `cavity ${layer.depth_mm}` : `${layer.material} ${layer.thickness_mm}`,
  );
