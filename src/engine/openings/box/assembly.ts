import { AIR_IMPEDANCE } from '../../quantities/index.ts';
import type { BandMatrix } from './bandFactor.ts';
import type { BoxMesh } from './boxMesh.ts';
import type { Fluid } from './fluid.ts';
import type { MeshPort } from './portShapes.ts';

/** A = Σ(Ke/ρ − ω²·Me/K) + jω·y0·(port mass), in band form. */
export const assemble = (
  mesh: BoxMesh,
  ports: readonly MeshPort[],
  fluids: readonly Fluid[],
  omega: number,
  matrix: BandMatrix,
): void => {
  const { re, im, half } = matrix;
  re.fill(0);
  im.fill(0);
  mesh.entries.forEach((entries, filling) => {
    const fluid = fluids[filling];
    if (fluid === undefined) return;
    const { specificVolume: v, compressibility: c } = fluid;
    const { row, column, stiffness, mass } = entries;
    for (let n = 0; n < row.length; n += 1) {
      const place = (row[n] ?? 0) * half + (column[n] ?? 0);
      const k = stiffness[n] ?? 0;
      const m = omega * omega * (mass[n] ?? 0);
      re[place] = (re[place] ?? 0) + k * v.re - m * c.re;
      im[place] = (im[place] ?? 0) + k * v.im - m * c.im;
    }
  });
  for (const { mass } of ports)
    mass.value.forEach((value, n) => {
      const place = (mass.row[n] ?? 0) * half + (mass.column[n] ?? 0);
      im[place] = (im[place] ?? 0) + (omega * value) / AIR_IMPEDANCE;
    });
};
