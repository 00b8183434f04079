export type * from './rating.ts';
