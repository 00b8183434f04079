import { readFileSync } from 'node:fs';
import type { Assembly } from '../../../src/engine/assembly/index.ts';
import type { AssemblyEntry, MaterialEntry, Project } from '../../../src/project/schema.ts';
import { FORMAT } from '../../../src/project/schema.ts';
import { toAssembly } from '../../../src/project/toAssembly.ts';
import census from './census.json' with { type: 'json' };

/** A measured construction as it stands in the files of this folder. */
export interface MeasuredCase {
  readonly id: string;
  readonly class: string;
  readonly name: string;
  readonly materials: Readonly<Record<string, MaterialEntry>>;
  readonly assembly: AssemblyEntry;
  readonly measured: {
    readonly bands?: 'octave' | 'third';
    readonly bands_Hz?: readonly number[];
    readonly R_dB?: readonly number[];
    readonly STC?: number;
    readonly Rw?: number;
  };
}

/** Every measured case of every source. @throws Error when a source does not hold the number of cases of census.json */
export const measuredCases = (): readonly MeasuredCase[] =>
  Object.entries(census).flatMap(([folder, count]) => {
    const file = new URL(`./${folder}/cases.json`, import.meta.url);
    const cases = JSON.parse(readFileSync(file, 'utf8')) as readonly MeasuredCase[];
    if (cases.length !== count) throw new Error(`${folder} must hold ${count} cases, holds ${cases.length}`);
    return cases;
  });

/** A case as the engine's assembly. */
export const assemblyOf = (it: MeasuredCase): Assembly => {
  const project: Project = {
    format: FORMAT,
    name: it.name,
    materials: { ...it.materials },
    assemblies: {},
    surfaces: [],
  };
  return toAssembly(it.assembly, project);
};
