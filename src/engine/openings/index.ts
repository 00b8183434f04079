export type { Incidence } from './hole.ts';
export { holeTransmission, holeTransmissions } from './hole.ts';
export { slitTransmission, slitTransmissions } from './slit.ts';
export type { BroughtCurve } from './measured.ts';
export { REFERENCE_AREA, bringToThirdOctaves, smallElementReduction } from './measured.ts';
export type { ParsedCurve } from './parseCurve.ts';
export { parseCurve } from './parseCurve.ts';
export * from './box/index.ts';
