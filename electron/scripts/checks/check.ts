/** What a check found; a type or lint check counts as one, a test runner's as many as it has tests. */
export interface Finding {
  readonly passed: number;
  readonly failed: number;
  readonly skipped: number;
  readonly output: string;
  /** said even when all is well: why something was left out */
  readonly remark?: string;
}

export interface Check {
  readonly name: string;
  readonly group: 'types' | 'lint' | 'validate' | 'build' | 'unit' | 'e2e';
  readonly run: () => Promise<Finding>;
}

export const oneCheck = (succeeded: boolean, output: string): Finding => ({
  passed: succeeded ? 1 : 0,
  failed: succeeded ? 0 : 1,
  skipped: 0,
  output,
});
