/** The document's schema for other programs, as the host writes it to assets/schema. */
export { jsonSchema } from '../project/jsonSchema.ts';
