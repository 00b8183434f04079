import type { Spectrum, Working } from '../engine/quantities/index.ts';
import type { PlanResult } from '../engine/plan/index.ts';
import type { ShellResult } from '../engine/shell/index.ts';
import type { SampledResult, SampledShell } from '../engine/uncertainty/index.ts';
import type { Contradiction, Prediction, Resolution, SecondMethod } from '../engine/transmission/index.ts';
import type { Project } from '../project/schema.ts';
import type { BreatheAnswer, SolvedBox } from './breathe/breatheAnswer.ts';

/** Whose figure is to be explained. */
export type Explained =
  | {
      readonly kind: 'assembly';
      readonly assembly: string;
      readonly figure: 'Rw' | 'STC' | 'bass' | 'mass' | 'resonance' | 'coincidence';
    }
  | { readonly kind: 'assembly-band'; readonly assembly: string; readonly band: number }
  | { readonly kind: 'shell'; readonly figure: 'Rw' | 'STC' | 'OITC' | 'bass' }
  | { readonly kind: 'part'; readonly part: string; readonly figure: 'share' | 'ifPerfect' }
  /** what the whole gains when a part is built like one of its candidates */
  | { readonly kind: 'swap'; readonly part: string; readonly candidate: string }
  | { readonly kind: 'air'; readonly figure: AirFigure }
  | { readonly kind: 'vent'; readonly vent: string; readonly figure: 'Dne' | 'cost' | 'noise' }
  /** pressure and speed of one piece, by its place among the pieces of the vent's flow */
  | { readonly kind: 'vent-piece'; readonly vent: string; readonly piece: number }
  | { readonly kind: 'vent-band'; readonly vent: string; readonly band: number };

export type AirFigure = 'planned' | 'least' | 'flow' | 'peak' | 'fan-off' | 'heat' | 'cooling' | 'moisture';

/** Curves drawn on demand beside an assembly's. */
export interface Guides {
  readonly massLaw: Spectrum;
  readonly contourRw: Spectrum | null;
  readonly contourSTC: Spectrum | null;
}

/** The same make-up by another method. */
export interface SecondOpinion {
  readonly method: SecondMethod;
  /** bands of 100 Hz to 3.15 kHz in which the methods are more than 5 dB apart */
  readonly contradictions: readonly Contradiction[];
}

/** What the worker can be asked; every task carries the whole project, the worker remembers what it has computed. */
export interface Tasks {
  evaluate: {
    ask: { project: Project; resolution: Resolution; predict: readonly string[] };
    answer: { shell: ShellResult | null; predictions: Readonly<Record<string, Prediction>>; milliseconds: number };
  };
  plan: { ask: { project: Project }; answer: PlanResult };
  explain: { ask: { project: Project; what: Explained }; answer: Working };
  guides: { ask: { project: Project; assembly: string }; answer: Guides };
  breathe: { ask: { project: Project; resolution: Resolution }; answer: BreatheAnswer };
  /** fine box solutions found by the box worker: used from now on in place of the coarse grid */
  learn: { ask: { boxes: readonly SolvedBox[] }; answer: null };
  secondMethod: { ask: { project: Project; assembly: string }; answer: SecondOpinion | null };
}
export type TaskName = keyof Tasks;

export interface WorkerRequest<T extends TaskName = TaskName> {
  readonly sequence: number;
  readonly task: T;
  readonly ask: Tasks[T]['ask'];
}
export type WorkerResponse =
  | { readonly sequence: number; readonly ok: true; readonly answer: unknown }
  | { readonly sequence: number; readonly ok: false; readonly sentence: string };

/** What takes seconds is done by a worker of its own, with progress and cancel. */
export interface LongTasks {
  uncertainty: {
    ask: {
      project: Project;
      samples: number;
      start: number;
      /** whether the whole room is drawn, beside the make-ups of `predict` */
      whole: boolean;
      predict: readonly string[];
    };
    answer: { shell: SampledShell | null; assemblies: Readonly<Record<string, SampledResult>>; samples: number };
  };
}
export type LongRequest =
  | { readonly sequence: number; readonly task: 'uncertainty'; readonly ask: LongTasks['uncertainty']['ask'] }
  | { readonly sequence: number; readonly task: 'cancel' };
export type LongResponse =
  | { readonly sequence: number; readonly kind: 'progress'; readonly done: number }
  | { readonly sequence: number; readonly kind: 'answer'; readonly answer: LongTasks['uncertainty']['answer'] }
  | { readonly sequence: number; readonly kind: 'fault'; readonly sentence: string };
