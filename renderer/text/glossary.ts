import { symbols, type QuantitySymbol } from '../../src/engine/quantities/index.ts';

/** Terms of the trade that the window uses, each with its meaning in plain words and where it is defined. */
export interface Term {
  readonly name: string;
  readonly meaning: string;
  readonly source: string;
}

/** A quantity of the standards: symbol, term and clause as the engine writes them, the meaning in plain words. */
const standard = ({ symbol, term, clause }: QuantitySymbol, meaning: string): Term => ({
  name: `${symbol}, ${term}`,
  meaning,
  source: clause,
});
/** The same under the name that builders know it by. */
const called = (name: string, { symbol, clause }: QuantitySymbol, meaning: string): Term => ({
  name: symbol === '' ? name : `${name}, ${symbol}`,
  meaning,
  source: clause,
});

export const GLOSSARY = {
  R: standard(
    symbols.soundReductionIndex,
    'How many decibels weaker sound is behind a part than in front of it, band by band. 10 dB more is a tenth of the energy.',
  ),
  Rw: standard(
    symbols.weightedReduction,
    'One number for R from 100 Hz to 3150 Hz, made with speech in mind. It says nothing about deep bass.',
  ),
  C50_5000: {
    name: 'C 50–5000',
    meaning: 'Add it to Rw to count the bass down to 50 Hz as well. The further below zero, the weaker the bass.',
    source: 'ISO 717-1, annex B',
  },
  Ctr: standard(
    symbols.adaptationTermTraffic,
    'Add it to Rw for sources with much low sound, such as traffic or a band heard from outside.',
  ),
  STC: standard(symbols.soundTransmissionClass, 'The North American number, close to Rw, from 125 Hz to 4000 Hz.'),
  OITC: standard(symbols.outdoorIndoorClass, 'A North American number for outside walls, from 80 Hz to 4000 Hz.'),
  bass: {
    name: 'Bass figure, 50–100 Hz',
    meaning:
      'The energy mean of R over 50, 63, 80 and 100 Hz: where kick drum and bass live, and where music rooms fail.',
    source: 'energy mean of four third-octave bands; our own choice, beside the standard ratings',
  },
  share: {
    name: 'Share of what gets out',
    meaning:
      'Of all sound energy that leaves the room, the part that leaves here, from 50 Hz to 5000 Hz for the chosen source.',
    source: 'area times transmission, EN 12354-3:2000, clause 4',
  },
  ifPerfect: {
    name: 'If this were perfect',
    meaning: 'What the whole room would gain if nothing at all went through this part. No work on it can bring more.',
    source: 'composite of the other parts',
  },
  thirdOctave: {
    name: 'Third octave',
    meaning:
      'A slice of the pitch range a third of an octave wide. Curves are drawn in 27 of them, from 25 Hz to 10 kHz.',
    source: 'IEC 61260-1',
  },
  surfaceMass: called(
    'Surface mass',
    symbols.surfaceMass,
    'Weight of one square metre. Twice the weight brings up to 6 dB in a single leaf.',
  ),
  leaf: {
    name: 'Leaf',
    meaning: 'Everything that moves together as one skin: boards screwed or glued to each other are one leaf.',
    source: 'common practice',
  },
  resonance: called(
    'Mass–air–mass resonance',
    symbols.resonance,
    'Two leaves swing against the air between them like weights on a spring. Near that pitch the wall is weaker than one solid leaf.',
  ),
  coincidence: called(
    'Coincidence, critical frequency',
    symbols.criticalFrequency,
    'The pitch from which bending waves in a board run as fast as sound in air; the board lets more through there.',
  ),
  flowResistivity: called(
    'Airflow resistivity',
    symbols.airflowResistivity,
    'How hard it is to push air through wool. About 5 to 50 kPa·s/m² works in a cavity.',
  ),
  lossFactor: called(
    'Loss factor',
    symbols.lossFactor,
    'How quickly a material turns vibration into heat: 0.01 rings, 0.5 is dead.',
  ),
  Dne: standard(
    symbols.elementLevelDifference,
    'How laboratories report small things such as vents: as if nothing else let sound through, for 10 m² of absorption.',
  ),
  spread: {
    name: '±, likely error',
    meaning: 'Two out of three such predictions lie within this many decibels of a measurement.',
    source: 'comparison with published measurements of the same class of construction',
  },
} as const satisfies Readonly<Record<string, Term>>;
