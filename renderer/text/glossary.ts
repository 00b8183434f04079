/** Terms of the trade that the window uses, each with its meaning in plain words and where it is defined. */
export interface Term {
  readonly name: string;
  readonly meaning: string;
  readonly source: string;
}

export const GLOSSARY = {
  R: {
    name: 'R, sound reduction index',
    meaning:
      'How many decibels weaker sound is behind a part than in front of it, band by band. 10 dB more is a tenth of the energy.',
    source: 'ISO 10140-2',
  },
  Rw: {
    name: 'Rw, weighted sound reduction index',
    meaning: 'One number for R from 100 Hz to 3150 Hz, made with speech in mind. It says nothing about deep bass.',
    source: 'ISO 717-1',
  },
  C50_5000: {
    name: 'C 50–5000',
    meaning: 'Add it to Rw to count the bass down to 50 Hz as well. The further below zero, the weaker the bass.',
    source: 'ISO 717-1, annex B',
  },
  Ctr: {
    name: 'Ctr',
    meaning: 'Add it to Rw for sources with much low sound, such as traffic or a band heard from outside.',
    source: 'ISO 717-1',
  },
  STC: {
    name: 'STC, sound transmission class',
    meaning: 'The North American number, close to Rw, from 125 Hz to 4000 Hz.',
    source: 'ASTM E413',
  },
  OITC: {
    name: 'OITC, outdoor–indoor transmission class',
    meaning: 'A North American number for outside walls, from 80 Hz to 4000 Hz.',
    source: 'ASTM E1332',
  },
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
  surfaceMass: {
    name: 'Surface mass',
    meaning: 'Weight of one square metre. Twice the weight brings up to 6 dB in a single leaf.',
    source: 'mass law, textbook',
  },
  leaf: {
    name: 'Leaf',
    meaning: 'Everything that moves together as one skin: boards screwed or glued to each other are one leaf.',
    source: 'common practice',
  },
  resonance: {
    name: 'Mass–air–mass resonance',
    meaning:
      'Two leaves swing against the air between them like weights on a spring. Near that pitch the wall is weaker than one solid leaf.',
    source: 'textbook',
  },
  coincidence: {
    name: 'Coincidence, critical frequency',
    meaning:
      'The pitch from which bending waves in a board run as fast as sound in air; the board lets more through there.',
    source: 'textbook',
  },
  flowResistivity: {
    name: 'Airflow resistivity',
    meaning: 'How hard it is to push air through wool. About 5 to 50 kPa·s/m² works in a cavity.',
    source: 'ISO 9053-1',
  },
  lossFactor: {
    name: 'Loss factor',
    meaning: 'How quickly a material turns vibration into heat: 0.01 rings, 0.5 is dead.',
    source: 'textbook',
  },
  Dne: {
    name: 'Dn,e, element level difference',
    meaning:
      'How laboratories report small things such as vents: as if nothing else let sound through, for 10 m² of absorption.',
    source: 'ISO 10140-2',
  },
  spread: {
    name: '±, likely error',
    meaning: 'Two out of three such predictions lie within this many decibels of a measurement.',
    source: 'comparison with published measurements of the same class of construction',
  },
} as const satisfies Readonly<Record<string, Term>>;
