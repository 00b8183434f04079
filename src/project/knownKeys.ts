import type * as v from 'valibot';
import { projectSchema } from './schema.ts';

interface Inner {
  readonly entries?: Readonly<Record<string, v.GenericSchema>>;
  readonly options?: readonly (v.GenericSchema | string)[];
  readonly wrapped?: v.GenericSchema;
  readonly item?: v.GenericSchema;
  readonly value?: v.GenericSchema;
}

/** Every key that some object of a schema has, for suggestions. */
const keysOf = (schema: v.GenericSchema & Inner): readonly string[] => {
  const inside = [
    ...Object.values(schema.entries ?? {}),
    ...(schema.options ?? []).filter((option) => typeof option !== 'string'),
    ...[schema.wrapped, schema.item, schema.value].filter((inner) => typeof inner === 'object'),
  ];
  return [...Object.keys(schema.entries ?? {}), ...inside.flatMap((inner) => keysOf(inner))];
};

export const knownKeys: readonly string[] = [...new Set(keysOf(projectSchema))];
