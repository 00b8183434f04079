import type { SampledResult, SampledShell, Uncertainty } from '../../engine/uncertainty/index.ts';
import { toAssembly, toBuild } from '../../project/toEngine.ts';
import { toWorkmanship } from '../../project/toWorkmanship.ts';
import type { LongTasks } from '../protocol.ts';

type Ask = LongTasks['uncertainty']['ask'];
type Answer = LongTasks['uncertainty']['answer'];

/** A make-up by itself takes about as long as three parts of a whole. */
const MAKE_UP = 3;

/** Draws the whole room where it is asked for, then the make-ups asked for; yields its progress, 0 to 1. */
export function* samplingSteps(uncertainty: Uncertainty, ask: Ask): Generator<number, Answer> {
  const { project, samples, start, whole, predict } = ask;
  const options = { samples, start, workmanship: toWorkmanship(project) };
  const entries = predict.flatMap((id) => {
    const entry = Object.hasOwn(project.assemblies, id) ? project.assemblies[id] : undefined;
    return entry ? [[id, entry] as const] : [];
  });
  const build = toBuild(project);
  const parts = whole ? build.parts.length : 0;
  const all = parts + MAKE_UP * entries.length;
  let shell: SampledShell | null = null;
  if (parts > 0) {
    const steps = uncertainty.shell(build, options);
    let step = steps.next();
    for (; !step.done; step = steps.next()) yield (parts * step.value) / all;
    shell = step.value;
  }
  const assemblies: [string, SampledResult][] = [];
  for (const [i, [id, entry]] of entries.entries()) {
    const steps = uncertainty.assembly(toAssembly(entry, project), options);
    let step = steps.next();
    for (; !step.done; step = steps.next()) yield (parts + MAKE_UP * (i + step.value)) / all;
    assemblies.push([id, step.value]);
  }
  return { shell, assemblies: Object.fromEntries(assemblies), samples };
}
