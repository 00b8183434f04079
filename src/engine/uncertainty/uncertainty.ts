import type { Assembly } from '../assembly/index.ts';
import { createMemory, THIRD_OCTAVES } from '../quantities/index.ts';
import type { Build, Part, PartSize, PartTransmission } from '../shell/index.ts';
import { partTransmission } from '../shell/index.ts';
import { laboratorySize } from '../transmission/index.ts';
import type { Prediction, Resolution } from '../transmission/index.ts';
import { drawnPart } from './drawnPart.ts';
import { ensembleOf } from './ensemble.ts';
import { distinctFamilies, familyOf } from './families.ts';
import type { ModelErrorRecord } from './modelError.ts';
import { MODEL_ERROR_RECORD } from './modelErrorRecord.ts';
import { sampleEnsemble } from './sample.ts';
import type { SampleOptions, SampledResult } from './sample.ts';
import { fitSurrogate } from './fitSurrogate.ts';
import type { Surrogate } from './surrogate.ts';
import { FLAWLESS } from './workmanship.ts';
import type { Workmanship } from './workmanship.ts';

/** Handed in: predicts a make-up at a size at a resolution, and remembers it. */
export type PredictSized = (assembly: Assembly, size: PartSize, resolution: Resolution) => Prediction;

/** What may come of a whole build. */
export interface SampledShell {
  readonly samples: number;
  readonly start: number;
  readonly bands: readonly number[];
  readonly whole: SampledResult;
  /** by the part's id */
  readonly parts: Readonly<Record<string, SampledResult>>;
}

export interface UncertaintyOptions extends SampleOptions {
  readonly workmanship: Workmanship;
  readonly record: ModelErrorRecord;
}

/** Draws builds and make-ups, and remembers what it has fitted for those that have not changed. */
export interface Uncertainty {
  /** the whole with each part at its own size; yields its progress, 0 to 1 */
  shell(build: Build, options?: Partial<UncertaintyOptions>): Generator<number, SampledShell>;
  /** a make-up as a laboratory would test it, with the fixings and the damp of the build but sealed joints */
  assembly(assembly: Assembly, options?: Partial<UncertaintyOptions>): Generator<number, SampledResult>;
}

const DEFAULTS: UncertaintyOptions = {
  samples: 2000,
  start: 1,
  scale: 1,
  workmanship: FLAWLESS,
  record: MODEL_ERROR_RECORD,
};

/** Fitted surrogates that are kept. */
const KEPT = 60;

/** Share of the work that fitting takes where nothing is remembered. */
const FITTING = 0.6;

const laboratory = (assembly: Assembly): PartSize => {
  const [width, height] = laboratorySize(assembly);
  return { width, height };
};

/** The part that a laboratory would test. */
const specimen = (assembly: Assembly): Part => {
  const { width, height } = laboratory(assembly);
  return {
    id: 'specimen',
    name: assembly.name,
    kind: 'wall',
    surface: 'specimen',
    width,
    height,
    area: width * height,
    element: { kind: 'assembly', assembly },
    candidates: [],
  };
};

/**
 * Uncertainty with its own memory of surrogates.
 * @param predict predictor at a part's size
 * @returns uncertainty; the same question with the same start gives the same answer
 * @validity spreads of materials, workmanship and method as their modules state; flanking is not in it
 * @source ISO/IEC Guide 98-3/Suppl. 1:2008
 */
export const createUncertainty = (predict: PredictSized): Uncertainty => {
  const fitted = createMemory<Surrogate>(KEPT);

  function* surrogateOf(part: Part, assembly: Assembly, workmanship: Workmanship): Generator<void, Surrogate> {
    const key = JSON.stringify([assembly.name, assembly.layers, workmanship.fixings, workmanship.damp]);
    const known = fitted.find(key);
    if (known) return known;
    const surrogate = yield* fitSurrogate(assembly, workmanship, (other, resolution) =>
      predict(other, part, resolution),
    );
    fitted.keep(key, surrogate);
    return surrogate;
  }

  function* sample(parts: readonly Part[], options: UncertaintyOptions): Generator<number, readonly SampledResult[]> {
    const held: { part: Part; passes: PartTransmission; surrogate: Surrogate | null }[] = [];
    for (const [i, part] of parts.entries()) {
      const passes = partTransmission(part, (assembly, size) =>
        predict(assembly, size ?? laboratory(assembly), 'full'),
      );
      yield (FITTING * i) / parts.length;
      let surrogate: Surrogate | null = null;
      if (part.element.kind === 'assembly') {
        const steps = surrogateOf(part, part.element.assembly, options.workmanship);
        let step = steps.next();
        for (; !step.done; step = steps.next()) yield (FITTING * (i + 0.5)) / parts.length;
        surrogate = step.value;
      }
      held.push({ part, passes, surrogate });
    }
    const families = held.flatMap(({ part, passes }) => familyOf(part, passes, options.record) ?? []);
    const ensemble = ensembleOf(
      held.map(({ part, passes, surrogate }) => drawnPart(part, passes, surrogate)),
      distinctFamilies(families),
      options.workmanship,
    );
    const steps = sampleEnsemble(ensemble, options);
    let step = steps.next();
    for (; !step.done; step = steps.next()) yield FITTING + (1 - FITTING) * step.value;
    return step.value;
  }

  return {
    *shell(build, options) {
      const asked = { ...DEFAULTS, ...options };
      const results = yield* sample(build.parts, asked);
      const [whole, ...others] = results;
      if (!whole) throw new RangeError('build must have at least one part, got none');
      const each = build.parts.map((part, p) => [part.id, others[p] ?? whole] as const);
      return {
        samples: asked.samples,
        start: asked.start,
        bands: THIRD_OCTAVES,
        whole,
        parts: Object.fromEntries(each),
      };
    },
    *assembly(assembly, options) {
      const asked = { ...DEFAULTS, ...options };
      const sealed = { ...asked, workmanship: { ...asked.workmanship, joints: FLAWLESS.joints } };
      const [whole] = yield* sample([specimen(assembly)], sealed);
      if (!whole) throw new RangeError('make-up must have at least one board, got none');
      return whole;
    },
  };
};
