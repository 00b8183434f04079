export type * from './ladderResult.ts';
export type { Transmit } from './swap.ts';
export { planOf } from './planOf.ts';
export type { PredictAlternative } from './advice/look.ts';
export { assemblyNotes } from './advice/assemblyNotes.ts';
export { shellNotes } from './advice/shellNotes.ts';
export { remedied } from './advice/remedied.ts';
