export type * from './ladderResult.ts';
