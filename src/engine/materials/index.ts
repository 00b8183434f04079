export type * from './material.ts';
