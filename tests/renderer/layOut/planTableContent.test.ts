import { describe, expect, it } from 'vitest';
import type { Rung } from '../../../src/engine/plan/index.ts';
import type { Project } from '../../../src/project/schema.ts';
import { comparisonTableContent } from '../../../renderer/views/makeUp/comparisonTableContent.ts';
import { ladderTableContent } from '../../../renderer/views/layOut/planTableContent.ts';

const project: Project = {
  format: 'lullwright/project@1',
  name: 'Room',
  currency: '£',
  assemblies: { a: { name: 'A', layers: [{ kind: 'board', material: 'osb', thickness_mm: 18 }] } },
  surfaces: [
    {
      id: 'roof',
      name: 'Roof',
      kind: 'roof',
      width_m: 4,
      height_m: 3,
      assembly: 'a',
      candidates: [{ id: 'more', name: 'Two boards more', assembly: 'a' }],
    },
  ],
};
const rung: Rung = {
  part: 'roof',
  candidate: 'more',
  name: 'Roof: Two boards more',
  RwGain: 4,
  bassGain: 2.345,
  energyGain: 3.456,
  cost: 120,
  illustrative: true,
  addedThickness: 0.025,
  addedMass: 200,
  gainPerCost: 0.03,
  gainPerThickness: null,
  gainPerMass: null,
  nextLimiting: 'roof',
  nextLimitingShare: 0.5,
};

describe('tables saved as files', () => {
  it('name parts, units and what a price rests on', () => {
    const { headings, rows } = ladderTableContent(project, [rung]);
    expect(headings).toContain('price_£');
    expect(rows[0]).toEqual([
      'Roof',
      'Two boards more',
      3.46,
      4,
      2.35,
      120,
      'illustrative prices',
      25,
      200,
      'Roof',
      0.5,
    ]);
    expect(rows[0]).toHaveLength(headings.length);
  });
  it('give figures of the comparison as numbers where they are numbers', () => {
    const cells = ['71 (−1; −2)', '−7', '≈ 48', '–'].map((text) => ({ text, difference: '', better: null }));
    const { rows } = comparisonTableContent(
      ['A', 'B', 'C', 'D'],
      [{ label: 'Rw', unit: 'dB', meaning: '', figure: null, cells }],
    );
    expect(rows).toEqual([['Rw', 'dB', '71 (−1; −2)', -7, 48, null]]);
  });
});
