/** What can hurt someone while building or playing; printed with every calculation, never in place of a result. */
export interface Caution {
  readonly about: string;
  readonly sentences: readonly string[];
  readonly source: string;
}

export const CAUTIONS_DEFER =
  'These are reminders, not approvals. Local building, fire and electrical rules prevail, and licensed trades have the last word.';

export const CAUTIONS: readonly Caution[] = [
  {
    about: 'Fresh air',
    sentences: [
      'A sealed room has no reserve of air: four people playing in 30 m³ pass 1500 ppm carbon dioxide in about a quarter of an hour.',
      'Plan a supply and an extract opening that cannot both be blocked, from the first sketch on, with a fan that runs while anyone is inside.',
      'A carbon dioxide monitor on the wall tells you when the air is used up; it does not tell you that the air is good.',
    ],
    source:
      'ASHRAE 62.1 (music rooms: 5 L/s a person and 0.3 L/s·m²); guidance of the British Health and Safety Executive on ventilation',
  },
  {
    about: 'Fumes',
    sentences: [
      'No flueless or open-flued heater, generator or barbecue in the room or beside its air intake; an extract fan can draw flue gas back into a tight room.',
      'Carbon monoxide cannot be seen or smelled. Where anything burns nearby, fit an alarm.',
    ],
    source: 'Approved Document J (England); alarms to EN 50291',
  },
  {
    about: 'Fire',
    sentences: [
      'Upholstery and packing foam on walls burns within minutes and its smoke kills. Line with mineral wool behind fabric or fleece, and ask for a declared fire class.',
      'Every door on the way out opens from inside without a key, however many there are. Add an alarm that is seen as well as heard over the music.',
      'Openings through a wall that has to hold back fire are closed with fire-rated parts. Ask building control.',
    ],
    source: 'NIST NCSTAR 2 (nightclub fire of 2003); Approved Document B (England); EN 13501-1',
  },
  {
    about: 'Weight overhead',
    sentences: [
      'Two dense boards under a ceiling weigh about 0.25 kN/m² before wool and battens, as much as many ceilings were made to carry. Have joists, rafters and fixings checked by someone competent.',
      'Sheets weigh 25 to 35 kg: two people, or a board lifter.',
    ],
    source: 'calculated from board masses; ceiling loads are common practice',
  },
  {
    about: 'Wiring',
    sentences: [
      'The supply, earthing and anything new in the distribution board are work for a registered electrician.',
      'No lamp drivers, dimmers or power supplies buried in wool, and no lamps let into the inner skin.',
    ],
    source: 'Approved Document P (England); common practice',
  },
  {
    about: 'Heat and damp',
    sentences: [
      'People, lamps and amplifiers warm a closed room fast: one kilowatt warms an air stream of 40 L/s by about 20 K.',
      'Cold ducts sweat in a warm wall. Insulate them, slope them outward and keep wool dry.',
    ],
    source: 'calculated from the heat capacity of air; common practice',
  },
  {
    about: 'Dust and fibres',
    sentences: [
      'Cut boards outdoors or with extraction and wear a fitting mask; never cut concrete or mortar dry.',
      'In an old building have suspect boards, tiles and lagging checked for asbestos before drilling.',
      'Cover wool in the air stream with fleece.',
    ],
    source: 'workplace limits of the British Health and Safety Executive (wood dust 3 to 5 mg/m³)',
  },
  {
    about: 'Hearing',
    sentences: [
      'Keeping sound in does nothing for the people inside, and a small hard room is louder still: at 100 dB(A) the day’s dose is used up in 15 minutes. Plugs, breaks and absorption.',
    ],
    source: 'NIOSH criteria 1998: 85 dB(A) for 8 h, 3 dB exchange; directive 2003/10/EC',
  },
];

/** What matters where air and vents are planned. */
export const ABOUT_AIR: readonly string[] = ['Fresh air', 'Fumes', 'Fire', 'Wiring', 'Heat and damp'];
