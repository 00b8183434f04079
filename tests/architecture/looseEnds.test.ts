import { describe, expect, it } from 'vitest';
import { sourceFiles, type SourceFile } from './sourceFiles.ts';

/** Spelled in two halves, so that this file is not its own first finding. */
const LOOSE = [
  ['TO', 'DO\\b'],
  ['FIX', 'ME\\b'],
  [': a', 'ny\\b(?! [a-z])'],
  ['\\bas a', 'ny\\b'],
  ['@ts-', 'ignore'],
  ['@ts-', 'nocheck'],
  ['\\.on', 'ly\\('],
].map((halves) => new RegExp(halves.join('')));

const looseEnds = ({ path, text }: SourceFile): string[] =>
  text.split('\n').flatMap((line, index) => {
    return LOOSE.some((pattern) => pattern.test(line)) ? [`${path}:${index + 1} ${line.trim()}`] : [];
  });

describe('loose ends', () => {
  it('are not left in the code', () => {
    const files = sourceFiles(['src', 'electron', 'renderer', 'tests']);
    expect(files.length).toBeGreaterThan(80);
    expect(files.flatMap(looseEnds)).toEqual([]);
  });

  it.each([
    ['const x', ': a', 'ny = 1;'],
    ['x as', ' a', 'ny'],
    ['it.on', 'ly', "('x')"],
  ])('would be noticed (%s…)', (...halves) => {
    expect(looseEnds({ path: 'a.ts', text: halves.join('') })).toHaveLength(1);
  });
});
