import { toJsonSchema, type JsonSchema } from '@valibot/to-json-schema';
import { FORMAT_VERSION, projectSchema } from './schema.ts';

/** The document's schema for other programs, JSON Schema draft 2020-12. Rules across fields are in `rules/`. */
export const jsonSchema = (): JsonSchema => {
  const { $schema, ...form } = toJsonSchema(projectSchema, { target: 'draft-2020-12', typeMode: 'input' });
  return {
    ...($schema === undefined ? {} : { $schema }),
    title: `Lullwright project, format version ${FORMAT_VERSION}`,
    description:
      'One room being built. Units stand in the keys. Beside this form a project keeps rules across its fields (ids ' +
      'that exist, materials in their place, openings that fit), which Lullwright checks and words.',
    ...form,
  };
};
