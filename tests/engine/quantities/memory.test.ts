import { describe, expect, it } from 'vitest';
import { createMemory } from '../../../src/engine/quantities/index.ts';

describe('a memory', () => {
  it('computes once what is asked for again', () => {
    const memory = createMemory<number>(2);
    let computed = 0;
    const ask = () => memory.recall('a', () => (computed += 1));
    expect([ask(), ask(), ask()]).toEqual([1, 1, 1]);
  });

  it('forgets the longest unused result first', () => {
    const memory = createMemory<string>(2);
    memory.keep('a', 'A');
    memory.keep('b', 'B');
    expect(memory.find('a')).toBe('A');
    memory.keep('c', 'C');
    expect([memory.find('a'), memory.find('b'), memory.find('c')]).toEqual(['A', undefined, 'C']);
    expect(memory.count()).toBe(2);
  });

  it('forgets nothing where it may keep as many as come', () => {
    const memory = createMemory<number>(Infinity);
    for (let i = 1; i <= 50; i += 1) memory.keep(String(i), i);
    expect([memory.count(), memory.find('1')]).toEqual([50, 1]);
  });
});
