export type * from './assembly.ts';
export type { Cavity, Joint, Leaf, Structure } from './leaf.ts';
export { leavesOf, structureOf, surfaceMass, totalThickness } from './leaf.ts';
export { massAirMassResonance, massAirMassResonances } from './resonance.ts';
