export type { Spectrum } from './spectrum.ts';
export type { Note, NoteCode, NoteFigure, Remedy, RemedyLayer } from './note.ts';
export type { Provenance } from './provenance.ts';
export type { Working, WorkingLine } from './working.ts';
