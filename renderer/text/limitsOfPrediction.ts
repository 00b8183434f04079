/** What the prediction rests on and what it leaves out; printed with every calculation. */
export const RESTS_ON: readonly { readonly what: string; readonly source: string }[] = [
  {
    what: 'Layered walls: transfer matrices of plates, air and fibrous layers, averaged over angles and over each third octave, with the finite size of the part',
    source:
      'Allard and Atalla 2009; Villot, Guigou and Gagliardini 2001; plates after Mindlin 1951; fibrous layers after Miki 1990',
  },
  {
    what: 'Studs, bars and clips as bridges between the leaves',
    source: 'Cremer, Heckl and Petersson 2005; constants fitted to published laboratory curves',
  },
  {
    what: 'Gaps and holes by their size and depth',
    source: 'gaps: Gomperts and Kihlman 1967; holes: Wilson and Soroka 1965',
  },
  {
    what: 'The whole room: every part’s area times what it lets through, added up',
    source: 'EN 12354-3:2000, clause 4',
  },
  {
    what: 'Ways round the parts, where they are in the list: both elements, their junction and its length',
    source: 'EN 12354-1:2000, annex E; ISO 12354-1:2017, annex L',
  },
  { what: 'Rw, C and Ctr, also from 50 Hz and to 5000 Hz', source: 'ISO 717-1' },
  { what: 'STC and OITC', source: 'ASTM E413 and ASTM E1332' },
];

export const LEAVES_OUT: readonly string[] = [
  'Ways round the parts that are not in the list: a slab, roof timber or pipe that runs from inside to outside can cap the whole whatever the walls do.',
  'Sound that goes into the building by touch: pedals, stands, loudspeakers and feet on the floor.',
  'Workmanship: an unsealed joint, a bridging screw or mortar dropping in a cavity costs more than a layer brings.',
  'How loud it is inside and what the neighbour hears against the background; this calculation ends at the outside of the shell.',
  'Below 100 Hz the room’s own resonances make every measurement and prediction uncertain by several decibels.',
];
