export type * from './ladderResult.ts';
export type { Transmit } from './swap.ts';
export { planOf } from './planOf.ts';
