import { complex } from '../../quantities/index.ts';
import type { Complex } from '../../quantities/index.ts';
import type { Columns } from './frontColumns.ts';
import type { FrontTree } from './frontTree.ts';
import type { PortMode } from './portModes.ts';
import type { MeshPort } from './portShapes.ts';

/** Port shapes as right-hand sides, one for each mode, rows in the order of elimination. */
export const portLoads = (
  modes: readonly PortMode[],
  ports: readonly [MeshPort, MeshPort],
  { number, unknowns }: FrontTree,
): Columns => {
  const count = modes.length;
  const re = new Float64Array(unknowns * count);
  modes.forEach(({ port, mode }, c) => {
    const { node, value } = ports[port].shape(mode);
    node.forEach((it, n) => {
      re[(number[it] ?? 0) * count + c] = value[n] ?? 0;
    });
  });
  return { count, re, im: new Float64Array(unknowns * count) };
};

/** Of columns taken through L: Σ y_a·D⁻¹·y_b over the unknowns for every pair of columns. */
export const columnProducts = ({ count, re, im }: Columns, inverse: Float64Array): Complex[] => {
  const sums = new Float64Array(2 * count * count);
  for (let i = 0; 2 * i < inverse.length; i += 1) {
    const dr = inverse[2 * i] ?? 0;
    const di = inverse[2 * i + 1] ?? 0;
    for (let a = 0; a < count; a += 1) {
      const ar = re[i * count + a] ?? 0;
      const ai = im[i * count + a] ?? 0;
      if (ar === 0 && ai === 0) continue;
      const wr = ar * dr - ai * di;
      const wi = ar * di + ai * dr;
      for (let b = a; b < count; b += 1) {
        const br = re[i * count + b] ?? 0;
        const bi = im[i * count + b] ?? 0;
        const s = 2 * (a * count + b);
        sums[s] = (sums[s] ?? 0) + wr * br - wi * bi;
        sums[s + 1] = (sums[s + 1] ?? 0) + wr * bi + wi * br;
      }
    }
  }
  return Array.from({ length: count * count }, (_, n) => {
    const [a, b] = [Math.floor(n / count), n % count];
    const s = 2 * (Math.min(a, b) * count + Math.max(a, b));
    return complex(sums[s] ?? 0, sums[s + 1] ?? 0);
  });
};
