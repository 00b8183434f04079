import type { BoxFilling } from './boxGeometry.ts';
import { airFluid, porousFluid } from './fluid.ts';
import type { Fluid } from './fluid.ts';
import { linedFacesFluid } from './linedFaces.ts';

/** The filling of a cell as a fluid. @param frequency f, Hz, > 0 */
export const fillingFluid = (filling: BoxFilling, frequency: number): Fluid => {
  if (filling.kind === 'air') return airFluid;
  if (filling.kind === 'porous') return porousFluid(frequency, filling.airflowResistivity);
  const { height, thicknesses, airflowResistivity } = filling;
  const [one, other] = thicknesses;
  const lining = Math.max(one, other);
  // a single lined face is half of a twice as high space with two
  const halfAir = Math.min(one, other) > 0 ? height / 2 - lining : height - lining;
  return linedFacesFluid({ halfAir, lining, airflowResistivity }, frequency);
};
