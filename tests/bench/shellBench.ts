import { createEvaluator } from '../../src/engine/evaluate.ts';
import type { Resolution } from '../../src/engine/transmission/index.ts';
import { checkProject } from '../../src/project/check.ts';
import { examples } from '../../src/project/examples.ts';
import type { Project } from '../../src/project/schema.ts';
import { toBuild } from '../../src/project/toEngine.ts';
import { median, timed } from './median.ts';

const firstExample = (): Project => {
  const checked = checkProject(examples[0]?.document);
  if (!checked.ok) throw new Error('the first example breaks its own schema');
  return checked.project;
};

/** The example with one layer of the first surface's make-up made a little thicker than ever before. */
const edited = (project: Project, index: number): Project => {
  const used = project.surfaces.find((surface) => surface.assembly)?.assembly ?? '';
  const assembly = project.assemblies[used];
  if (!assembly) throw new Error('the first example has no surface with a make-up');
  const layers = assembly.layers.map((layer, at) =>
    at === 0 && layer.kind === 'board' ? { ...layer, thickness_mm: layer.thickness_mm + 0.1 * (index + 1) } : layer,
  );
  return { ...project, assemblies: { ...project.assemblies, [used]: { ...assembly, layers } } };
};

/** The whole example build: computed from nothing, and after one edit with everything else remembered. */
export const shellBench = () => {
  const project = firstExample();
  const cold = timed(7, () => void createEvaluator().shell(toBuild(project), 'full'));
  const edit = (resolution: Resolution): number => {
    const evaluator = createEvaluator();
    evaluator.shell(toBuild(project), resolution);
    return median(timed(25, (index) => void evaluator.shell(toBuild(edited(project, index)), resolution)));
  };
  return { shell_cold_ms: median(cold), shell_edit_ms: edit('full'), shell_edit_draft_ms: edit('draft') };
};
