import { AIR_IMPEDANCE } from '../../quantities/index.ts';
import type { BoxMesh } from './boxMesh.ts';
import type { DirectRoom } from './directRoom.ts';
import type { Fluid } from './fluid.ts';
import type { MeshPort } from './portShapes.ts';

/** A = Σ(Ke/ρ − ω²·Me/K) + jω·y0·(port mass), in the rows of its fronts. */
export const assemble = (
  mesh: BoxMesh,
  ports: readonly MeshPort[],
  fluids: readonly Fluid[],
  omega: number,
  { matrix, entries: places, ports: portPlaces }: DirectRoom,
): void => {
  const { re, im, tree } = matrix;
  re.fill(0, 0, tree.rowsSize);
  im.fill(0, 0, tree.rowsSize);
  mesh.entries.forEach((entries, filling) => {
    const [fluid, at] = [fluids[filling], places[filling]];
    if (fluid === undefined || at === undefined) return;
    const { specificVolume: v, compressibility: c } = fluid;
    const { stiffness, mass } = entries;
    for (let n = 0; n < at.length; n += 1) {
      const place = at[n] ?? 0;
      const k = stiffness[n] ?? 0;
      const m = omega * omega * (mass[n] ?? 0);
      re[place] = (re[place] ?? 0) + k * v.re - m * c.re;
      im[place] = (im[place] ?? 0) + k * v.im - m * c.im;
    }
  });
  ports.forEach(({ mass }, port) =>
    mass.value.forEach((value, n) => {
      const place = portPlaces[port]?.[n] ?? 0;
      im[place] = (im[place] ?? 0) + (omega * value) / AIR_IMPEDANCE;
    }),
  );
};
