export type { Spectrum } from './spectrum.ts';
export type { Note, NoteCode, NoteFigure, Remedy, RemedyLayer } from './note.ts';
export type { Provenance } from './provenance.ts';
export type { Working, WorkingLine } from './working.ts';
export { THIRD_OCTAVES, OCTAVES, bandNumber, exactCentre } from './bands.ts';
export { toLevel, toRatio, toTransmission, toReduction, energySum } from './decibel.ts';
export { requirePositive, requireWithin } from './guard.ts';
