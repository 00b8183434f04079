import { describe, expect, it } from 'vitest';
import cellar from '../../assets/examples/cellar.json' with { type: 'json' };
import { createEvaluator } from '../../src/engine/evaluate.ts';
import type { Working } from '../../src/engine/quantities/index.ts';
import { checkProject } from '../../src/project/check.ts';
import { commands } from '../../src/project/commands/index.ts';
import { partWorking } from '../../src/worker/explain/partWorking.ts';

const checked = checkProject(cellar);
if (!checked.ok) throw new Error(checked.faults.map((fault) => fault.sentence).join('\n'));
const project = checked.project;
const share = (of: typeof project): Working => partWorking(createEvaluator(), of, 'stair-door', 'share');

describe('the share of a door, worked out', () => {
  it('adds leaf, joints and keyhole as open areas that give its R by hand', () => {
    const [leaf, line] = share(project).lines;
    expect(leaf?.numbers).toMatch(/m′ = [\d.]+ kg\/m², B = \d+ N·m, f_c = \d+ Hz/);
    const numbers = line?.numbers ?? '';
    const areas = [...numbers.matchAll(/[a-z] ([\d.]+(?:e[+-]?\d+)?)(?= \+|\))/g)].map((found) => Number(found[1]));
    expect(areas).toHaveLength(4);
    const [, area, R] = /\/ ([\d.]+) m²: ([\d.]+) dB$/.exec(numbers) ?? [];
    const byHand = -10 * Math.log10(areas.reduce((sum, open) => sum + open, 0) / Number(area));
    expect(byHand).toBeCloseTo(Number(R), 1);
    expect(line?.source).toContain('EN 12354-3');
  });

  it('names both leaves of a lobby and the rule that joins them', () => {
    const lobby = commands.setSecondLeaf.apply(project, {
      opening: 'stair-door',
      second: { assembly: 'stair-door-solid', gap_mm: 300, lined: true },
    });
    const [, leaves, joined] = share(lobby).lines;
    expect(leaves?.what).toMatch(/first leaf \(First leaf .*second leaf \(Second leaf/);
    expect(joined?.equation).toContain('20 lg(f·d)');
  });

  it('of a wall says nothing of joints', () => {
    const wall = partWorking(createEvaluator(), project, 'party', 'share');
    expect(wall.lines.map(({ what }) => what).join(' ')).not.toContain('joints');
  });
});
