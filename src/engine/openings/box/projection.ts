import { fourDots } from './basis.ts';
import type { Basis } from './basis.ts';
import type { PortShape } from './portShapes.ts';
import type { Places } from './storePlaces.ts';

/** A·v of a symmetric matrix given by its upper entries. */
const multiplied = ({ row, column }: Places, value: Float64Array, v: Float64Array): Float64Array => {
  const out = new Float64Array(v.length);
  for (let n = 0; n < value.length; n += 1) {
    const i = row[n] ?? 0;
    const j = column[n] ?? 0;
    const a = value[n] ?? 0;
    out[i] = (out[i] ?? 0) + a * (v[j] ?? 0);
    if (i !== j) out[j] = (out[j] ?? 0) + a * (v[i] ?? 0);
  }
  return out;
};

/** Vᵀ·A·V, upper triangle: (i, k) at place i·order + k. */
export const projected = (basis: Basis, places: Places, value: Float64Array): Float64Array => {
  const order = basis.length;
  const out = new Float64Array(order * order);
  if (value.length === 0) return out;
  basis.forEach((v, k) => {
    const Av = multiplied(places, value, v);
    for (let i = 0; i <= k; i += 4) {
      const [a = v, b = v, c = v, d = v] = [basis[i], basis[i + 1], basis[i + 2], basis[i + 3]];
      const four = fourDots([a, b, c, d], Av);
      for (let n = 0; n < 4 && i + n <= k; n += 1) out[(i + n) * order + k] = four[n] ?? 0;
    }
  });
  return out;
};

/** Vᵀ·Φ of a port shape. */
export const projectedShape = (basis: Basis, { node, value }: PortShape): Float64Array =>
  Float64Array.from(basis, (v) => value.reduce((sum, it, n) => sum + it * (v[node[n] ?? 0] ?? 0), 0));
