import { modulus } from '../quantities/index.ts';
import type { Structure } from '../assembly/index.ts';
import { leafStiffness } from './leafStiffness.ts';
import type { LeafSummary } from './prediction.ts';
import type { Stack } from './stack.ts';

/** What the leaves of a prediction are, in words and figures. */
export const leafSummaries = (structure: Structure, stack: Stack): LeafSummary[] =>
  structure.leaves.map((leaf, i) => {
    const model = stack.leaves[i];
    const critical = model?.criticalFrequency ?? null;
    const B = model ? leafStiffness(model, critical ?? 1000) : { re: 0, im: 0 };
    const names = leaf.boards.map((board) => `${Math.round(board.thickness * 1e4) / 10} mm ${board.material.name}`);
    return {
      layers: leaf.layers,
      name: names.join(' + '),
      surfaceMass: leaf.surfaceMass,
      bendingStiffness: modulus(B),
      criticalFrequency: critical,
      lossFactor: B.re > 0 ? B.im / B.re : 0,
    };
  });
