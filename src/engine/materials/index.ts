export type * from './material.ts';
export type { EquivalentFluid } from './porous.ts';
export { bendingStiffness, criticalFrequency, longitudinalSpeed, isMasonry, MASONRY_THICKNESS } from './plate.ts';
export { mikiFluid, limpFluid } from './porous.ts';
export { shearModulusAt } from './viscoelastic.ts';
export {
  ABSORBER_LOSS,
  CRITICAL_SPREAD,
  GASKET_LOSS,
  GYPSUM_LOSS_RISE,
  MASONRY_EDGE_LOSS,
  addedLoss,
  stiffnessInPlace,
} from './inPlace.ts';
