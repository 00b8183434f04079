import { createSampler } from '../../src/engine/sampler.ts';
import { complete } from '../../src/engine/uncertainty/index.ts';
import { checkProject } from '../../src/project/check.ts';
import { examples } from '../../src/project/examples.ts';
import { toBuild } from '../../src/project/toEngine.ts';
import { toWorkmanship } from '../../src/project/toWorkmanship.ts';
import { median, timed } from './median.ts';

/** Ten thousand builds of the example drawn, from nothing and with everything fitted already. */
export const uncertaintyBench = () => {
  const checked = checkProject(examples[0]?.document);
  if (!checked.ok) throw new Error('the first example breaks its own schema');
  const { project } = checked;
  const options = { samples: 10_000, workmanship: toWorkmanship(project) };
  const draw = (sampler: ReturnType<typeof createSampler>): void => {
    complete(sampler.shell(toBuild(project), options));
  };
  const kept = createSampler();
  draw(kept);
  return {
    uncertainty_10000_cold_ms: median(timed(3, () => draw(createSampler()))),
    uncertainty_10000_fitted_ms: median(timed(3, () => draw(kept))),
  };
};
