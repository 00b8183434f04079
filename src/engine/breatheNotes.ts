import type { BreatheQuestion, RatedNoise, VentReport } from './breatheResult.ts';
import type { Note, NoteFigure } from './quantities/index.ts';
import { noiseRating } from './ratings/index.ts';

/** NR in a room where people listen. @source common practice: NR 20 to 25 */
const QUIET = 25;
const [LOW, BASS_END] = [50, 160];

const figure = (term: string, value: number, unit: string): NoteFigure => ({ term, value, unit });
const silenced = ({ sound }: VentReport): boolean => sound.ways.some(({ kind }) => kind === 'joints');

/** Costs the wall more than it should: bare, or short of what is wanted. */
const costNotes = (vent: VentReport): Note[] => {
  const { cost, sound } = vent;
  if (cost === null || cost.lostOverall < 1) return [];
  const worst = sound.bands.reduce((at, band, b) => {
    const inside = band >= 100 && band <= 3150;
    return inside && (cost.lost[b] ?? 0) > (cost.lost[at] ?? 0) ? b : at;
  }, sound.bands.indexOf(500));
  const [band, wanted, reached] = [
    sound.bands[worst] ?? 0,
    cost.wanted[worst] ?? 0,
    sound.normalisedDifference[worst] ?? 0,
  ];
  return [
    {
      code: silenced(vent) ? 'vent-costs-wall' : 'bare-vent',
      severity: 'mistake',
      sentence: `${vent.name} costs ${cost.wall} ${cost.lostOverall.toFixed(1)} dB${silenced(vent) ? '' : ': it is an open hole'}. At ${band} Hz it reaches Dn,e ${Math.round(reached)} dB; ${Math.round(wanted)} dB would cost the wall 1 dB. ${silenced(vent) ? 'A longer way, a thicker lining or a heavier box helps' : 'Give it a lined, baffled box'}.`,
      figures: [
        figure('Lost by the wall', cost.lostOverall, 'dB'),
        figure(`Wanted Dn,e at ${band} Hz`, wanted, 'dB'),
        figure(`Reached Dn,e at ${band} Hz`, reached, 'dB'),
      ],
      about: { part: vent.opening },
    },
  ];
};

/** The boards of a box let more through than its air. */
const casingNotes = (vent: VentReport): Note[] => {
  const bands = vent.sound.bands.flatMap((band, b) =>
    band >= 125 && band <= 2000 && ['casing', 'duct-wall'].includes(vent.sound.limiting[b] ?? '') ? [band] : [],
  );
  if (bands.length < 5 || (vent.cost?.lostOverall ?? 0) < 0.5) return [];
  return [
    {
      code: 'weak-casing',
      severity: 'mistake',
      sentence: `The walls of ${vent.name} leak before its air does, in ${bands.length} bands from ${bands[0]} Hz on. Build them as heavy as the leaf they go through; a longer way inside gains nothing.`,
      figures: [],
      about: { part: vent.opening },
    },
  ];
};

/** Partitions that let so much through by themselves that the way round them counts for less, dB. */
const THIN = 3;

/** The partitions of a box pass as much as the way round them, where the air lets most through. */
const partitionNotes = (vent: VentReport): Note[] => {
  const { bands, limiting, partitions } = vent.sound;
  const thin = bands.flatMap((band, b) =>
    band >= 125 && band <= 4000 && limiting[b] === 'air' && (partitions[b] ?? 0) >= THIN ? [band] : [],
  );
  const [lowest] = thin;
  if (lowest === undefined || (vent.cost?.lostOverall ?? 0) < 0.5) return [];
  return [
    {
      code: 'thin-partitions',
      severity: 'hint',
      sentence: `From ${lowest} Hz on as much goes through the partitions of ${vent.name} as round them, in ${thin.length} ${thin.length === 1 ? 'band' : 'bands'}. Take boards of 18 mm or double ones, and seal their edges.`,
      figures: [figure(`Through the partitions at ${lowest} Hz`, partitions[bands.indexOf(lowest)] ?? 0, 'dB')],
      about: { part: vent.opening },
    },
  ];
};

/** Box and ducts resonate in the bass. */
const bassNotes = (vent: VentReport): Note[] => {
  const { bands, insertionLoss } = vent.sound;
  const still = vent.fanOff;
  const worst = bands.reduce((at, band, b) => {
    const inside = band >= LOW && band <= BASS_END;
    return inside && (at < 0 || (still[b] ?? 0) < (still[at] ?? 0)) ? b : at;
  }, -1);
  const loss = still[worst] ?? 0;
  const flowing = insertionLoss[worst] ?? 0;
  if (loss > -3) return [];
  const damped =
    flowing - loss < 0.5
      ? ''
      : ` With the fan on it is ${flowing < -0.5 ? `${Math.round(-flowing)} dB` : 'no more than the hole'}, for moving air damps it.`;
  return [
    {
      code: 'vent-bass',
      severity: 'hint',
      sentence: `At ${bands[worst]} Hz ${vent.name} lets ${Math.round(-loss)} dB more through than an open hole of its size${damped ? ' while its fan stands' : ''}: box and ducts resonate.${damped} A larger box, longer ducts, or a grille that holds the air a little moves or damps it; no such box stops the bass.`,
      figures: [figure(`Insertion loss at ${bands[worst]} Hz`, loss, 'dB')],
      about: { part: vent.opening },
    },
  ];
};

const liningNotes = ({ vents }: BreatheQuestion): Note[] =>
  vents.some(({ path }) =>
    path.elements.some((it) => ('lining' in it ? it.lining : it.kind === 'box' && it.box.lining)),
  )
    ? [
        {
          code: 'foam-lining',
          severity: 'caution',
          sentence:
            'Line ducts and boxes with mineral wool under a fleece (fire class A1 or A2), never with packing or upholstery foam: foam on walls has killed. A vent through a wall that must resist fire needs a fire damper; ask building control.',
          figures: [],
          about: {},
        },
      ]
    : [];

/** The vent whose noise has the highest rating in the room, and the piece that most of it comes from. */
const loudestOf = (vents: readonly VentReport[]): string => {
  const [most] = vents
    .flatMap(({ name, noise }) => (noise.loudest ? [{ name, piece: noise.loudest }] : []))
    .sort((one, other) => noiseRating(other.piece.intoRoom) - noiseRating(one.piece.intoRoom));
  return most ? ` Most of it comes from ${most.piece.name} of ${most.name}.` : '';
};

const heardNotes = (vents: readonly VentReport[], inRoom: RatedNoise | null): Note[] =>
  inRoom !== null && inRoom.noiseRating > QUIET
    ? [
        {
          code: 'fan-heard',
          severity: 'mistake',
          sentence: `The vents make NR ${Math.round(inRoom.noiseRating)} in the room; up to NR ${QUIET} they are not noticed.${loudestOf(vents)} A fan that disturbs is switched off, and then there is no air: put it further away, line the duct between, or slow the air.`,
          figures: [figure('Noise rating', inRoom.noiseRating, '')],
          about: {},
        },
      ]
    : [];

/** What the vents raise, besides the air itself. */
export const breatheNotes = (
  question: BreatheQuestion,
  vents: readonly VentReport[],
  inRoom: RatedNoise | null,
): Note[] => [
  ...vents.flatMap((vent) => [...costNotes(vent), ...casingNotes(vent), ...partitionNotes(vent), ...bassNotes(vent)]),
  ...heardNotes(vents, inRoom),
  ...liningNotes(question),
];
