import { FORMAT, type Project } from '../../../src/project/schema.ts';

/** A document that a test can tell from others by its name; `weight` characters of note make it as large as wanted. */
export const smallProject = (name: string, weight = 0): Project => ({
  format: FORMAT,
  name,
  note: 'x'.repeat(weight),
  assemblies: {},
  surfaces: [],
});
