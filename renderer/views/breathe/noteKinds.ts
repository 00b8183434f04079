import type { Note } from '../../../src/engine/quantities/index.ts';

export type BreathePanel = 'air' | 'sound' | 'fan' | 'heat' | 'care';

/** Where a note is told, by its code: beside the figures it speaks of. */
const PLACES: Readonly<Record<string, BreathePanel>> = {
  'no-way-for-air': 'air',
  'too-little-air': 'air',
  'carbon-dioxide': 'air',
  'fan-must-run': 'air',
  'vent-costs-wall': 'sound',
  'bare-vent': 'sound',
  'weak-casing': 'sound',
  'thin-partitions': 'sound',
  'vent-bass': 'sound',
  'air-too-fast': 'fan',
  'fan-heard': 'fan',
  'too-warm': 'heat',
  condensation: 'heat',
};

/** Notes of one panel; what is told of one vent only where that vent is shown. */
export const notesOf = (
  notes: readonly Note[],
  panel: BreathePanel,
  vent: { readonly id: string; readonly opening: string } | null,
  vents: readonly { readonly id: string; readonly opening: string }[],
): readonly Note[] =>
  notes.filter(({ code, about }) => {
    if ((PLACES[code] ?? 'care') !== panel) return false;
    const whose = vents.find(({ id, opening }) => about.part === id || about.part === opening);
    return !whose || whose.id === vent?.id;
  });

const FIRST = ['no-way-for-air', 'too-little-air'];

/** Stands before everything else: without air nobody can stay. */
export const urgent = ({ code, severity }: Note): boolean => FIRST.includes(code) && severity === 'caution';

/** Whether a note is about sound that gets out. */
export const costsSound = ({ code }: Note): boolean => PLACES[code] === 'sound';
