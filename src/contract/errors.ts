import type { Fault } from '../project/fault.ts';

/** Errors are data: one of a closed list, with a sentence for the user. */
export type ErrorCode =
  | 'bad-request' // the envelope or its parameters are not of the method's form
  | 'bad-document' // the document breaks its schema or its rules; `faults` names each
  | 'newer-document'
  | 'not-a-project' // foreign or truncated file
  | 'too-large'
  | 'not-found'
  | 'conflict' // another window changed the project meanwhile
  | 'nothing-to-undo'
  | 'store-locked'
  | 'store-read-only'
  | 'store-full'
  | 'store-damaged'
  | 'internal'; // a fault of ours

export type { Fault };

export interface ContractError {
  readonly code: ErrorCode;
  readonly sentence: string;
  readonly faults?: readonly Fault[];
}
