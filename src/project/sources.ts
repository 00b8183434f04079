import { sources as list, type Source } from '../engine/shell/index.ts';

/** Sounds by which shares can be weighed, by the id that a document names; "flat" is what a document without one has. */
export const sources: Readonly<Record<string, Source>> = Object.fromEntries(list.map((source) => [source.key, source]));
