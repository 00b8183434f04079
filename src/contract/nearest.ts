/** What a mistyped name probably means; the command line suggests with it as documents do. */
export { nearest } from '../project/nearest.ts';
