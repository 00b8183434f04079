/** A stretch of an equation and where it stands. */
export interface EquationRun {
  readonly text: string;
  readonly place: 'line' | 'raised' | 'lowered';
}

/** End of the bracket that opens at `from`, or -1 where it is never closed. */
const closing = (text: string, from: number): number => {
  let depth = 0;
  for (let at = from; at < text.length; at += 1) {
    if (text[at] === '(') depth += 1;
    else if (text[at] === ')' && (depth -= 1) === 0) return at;
  }
  return -1;
};

const SIMPLE = /^[\u2212+-]?[\p{L}\p{N}.,]+/u;

/** "10^(−R/10)" and "Σ_b", as they are written in plain text, taken apart into what stands raised and lowered. */
export const equationRuns = (text: string): readonly EquationRun[] => {
  const runs: EquationRun[] = [];
  let line = '';
  let at = 0;
  while (at < text.length) {
    const sign = text[at];
    const bracket = sign === '^' && text[at + 1] === '(' ? closing(text, at + 1) : -1;
    const simple = sign === '^' || sign === '_' ? SIMPLE.exec(text.slice(at + 1))?.[0].replace(/[.,]$/, '') : undefined;
    const inner = bracket > 0 ? text.slice(at + 2, bracket) : simple;
    if (inner) {
      if (line) runs.push({ text: line, place: 'line' });
      line = '';
      runs.push({ text: inner, place: sign === '^' ? 'raised' : 'lowered' });
      at += bracket > 0 ? bracket - at + 1 : inner.length + 1;
    } else {
      line += sign ?? '';
      at += 1;
    }
  }
  if (line) runs.push({ text: line, place: 'line' });
  return runs;
};
