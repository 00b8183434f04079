export type * from './part.ts';
export type * from './shellResult.ts';
