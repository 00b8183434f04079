export type * from './prediction.ts';
