import { describe, expect, it } from 'vitest';
import { createEvaluator } from '../../src/engine/evaluate.ts';
import {
  solveBoxCoarse,
  ventBoxGeometry,
  ventTransmission,
  waveBoxSound,
  type BoxResult,
  type VentBox,
  type VentElement,
  type VentPath,
} from '../../src/engine/openings/index.ts';
import { box, path } from '../renderer/breathe/vents.ts';

const reduction = (): readonly number[] => [];

describe('an evaluator that is told of solved boxes', () => {
  it('takes the coarse grid until the fine solution is known, then that', () => {
    const known = new Map<string, BoxResult>();
    const evaluator = createEvaluator((it) => known.get(JSON.stringify(it)) ?? null);
    const coarse = ventTransmission(path, { boxSound: (it) => waveBoxSound(it, solveBoxCoarse), reduction });
    expect(evaluator.vent(path, 'full').openArea).toEqual(coarse.openArea);

    // a solution that differs from the coarse one wherever it is used
    const { bands, ...rest } = solveBoxCoarse(ventBoxGeometry({ ...box, width: 0.5 }));
    const fine: BoxResult = { ...rest, bands };
    known.set(JSON.stringify(box), fine);
    const expected = ventTransmission(path, { boxSound: (it) => waveBoxSound(it, () => fine), reduction });
    expect(expected.openArea).not.toEqual(coarse.openArea);
    for (const resolution of ['full', 'draft'] as const)
      expect(evaluator.vent(path, resolution).openArea).toEqual(expected.openArea);
  });

  it('asks again for each box by itself', () => {
    const asked: VentBox[] = [];
    const evaluator = createEvaluator((it) => {
      asked.push(it);
      return null;
    });
    const other = { ...box, height: 0.2 };
    const both: VentPath = {
      ...path,
      elements: path.elements.flatMap((element): VentElement[] =>
        element.kind === 'box' ? [element, { ...element, box: other }] : [element],
      ),
    };
    evaluator.vent(both, 'draft');
    expect(new Set(asked.map(({ height }) => height))).toEqual(new Set([0.15, 0.2]));
  });
});
