/** Where a value comes from: read in a source, remembered (to be confirmed), common practice, or our judgement. */
export interface Provenance {
  readonly how: 'published' | 'computed' | 'memory' | 'common practice' | 'engineering judgement';
  readonly source: string;
}
