export type * from './assembly.ts';
