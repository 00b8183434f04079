import { describe, expect, it } from 'vitest';
import { impurities } from './impurities.ts';
import { sourceFiles } from './sourceFiles.ts';

describe('pure wings', () => {
  const files = sourceFiles(['src/engine', 'src/project', 'src/contract', 'src/service']);

  it('hold no clock, no chance, no console and no state of a module', () => {
    expect(files.length).toBeGreaterThan(30);
    expect(files.flatMap(impurities)).toEqual([]);
  });

  it.each([
    'let count = 0;',
    'const known = new Map();',
    'export const all: number[] = [];',
    'const memo = {};',
    'const now = () => Date.now();',
    'const now = () => new Date();',
    'const pick = () => Math.random();',
    'const say = () => { console.log(1); };',
  ])('would be told of %s', (text) => {
    expect(impurities({ path: 'a.ts', text })).toHaveLength(1);
  });

  it('may keep state inside what a function makes', () => {
    const text = 'const createCounter = () => { let n = 0; const seen = new Map(); return () => seen.size + n++; };';
    expect(impurities({ path: 'a.ts', text })).toEqual([]);
  });
});
