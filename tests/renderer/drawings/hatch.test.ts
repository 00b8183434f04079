import { describe, expect, it } from 'vitest';
import { HATCHES, HATCH_NAMES, hatchFill, isHatchName } from '../../../renderer/drawings/hatch.ts';
import { library } from '../../../src/project/library.ts';

describe('hatches', () => {
  it('exist for every material of the library', () => {
    const missing = Object.entries(library).filter(([, entry]) => !isHatchName(entry.hatch));
    expect(missing.map(([id]) => id)).toEqual([]);
  });
  it('are all different, so that colour is never the only sign', () => {
    const signs = HATCH_NAMES.map((name) => JSON.stringify([HATCHES[name].paths, HATCHES[name].dots]));
    expect(new Set(signs).size).toBe(HATCH_NAMES.length);
  });
  it('leave air blank', () => {
    expect(hatchFill('a', 'air')).toBe('none');
    expect(hatchFill('a', 'wool')).toBe('url(#a-wool)');
  });
});
