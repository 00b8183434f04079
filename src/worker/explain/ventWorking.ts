import type { Evaluator } from '../../engine/evaluate.ts';
import type { VentReport } from '../../engine/breatheResult.ts';
import { differenceOfArea } from '../../engine/openings/index.ts';
import type { Working, WorkingLine } from '../../engine/quantities/index.ts';
import type { Project } from '../../project/schema.ts';
import { toBreathe } from '../../project/toBreathe.ts';
import { toBuild } from '../../project/toEngine.ts';
import { weightedFigure } from './ratingLines.ts';
import { figure, ratio, signed } from './wording.ts';

const TAKEN: readonly string[] = [
  'both rooms are taken as diffuse: in a small room this does not hold below some 160 Hz',
  'partitions of boxes are wood-based boards without gaps at their edges; from the box’s first mode on what passes through them is added',
  'grilles, meshes, cowls and running fans hold sound back by the air that flows through them; Lay out and Plan take the fans as standing',
  'joints are sealed; what passes there still is taken as 45 to 50 dB below an open hole',
  'such boxes have never been compared with a measurement here',
];

const reportOf = (evaluator: Evaluator, project: Project, id: string): VentReport => {
  const found = evaluator.breathe(toBuild(project), toBreathe(project), 'full').vents.find((vent) => vent.id === id);
  if (!found) throw new Error(`there is no vent "${id}" in use in this project any more`);
  return found;
};

const likely = ({ sound }: VentReport, index: number): string =>
  `About ±${figure(sound.spread[index] ?? 6, 0)} dB in this band, by judgement. Build one, measure it, and take the low end until then.`;

/** All ways of a vent in one band. */
const wayLines = ({ sound }: VentReport, index: number): readonly WorkingLine[] => {
  const band = sound.bands[index] ?? 0;
  const areas = sound.ways.map(({ openArea }) => openArea[index] ?? 0);
  return [
    {
      what: `Every way through the vent as an open area at ${band} Hz: ${sound.ways.map(({ name }) => name.toLowerCase()).join('; ')}.`,
      equation: 'A = τ · S',
      numbers: areas.map((area, i) => `${sound.ways[i]?.name ?? ''}: ${ratio(area)} m²`).join('; '),
      source:
        'along the air: plane-wave four-poles (Munjal, 1987), boxes by the wave equation in plan; walls: R by area, what leaves by the duct by reciprocity',
    },
    {
      what: 'Together, against 10 m².',
      equation: 'Dn,e = 10 lg (A0 / Σ A)',
      numbers: `10 lg (10 / ${ratio(sound.openArea[index] ?? 0)}) = ${figure(differenceOfArea(sound.openArea[index] ?? 1))} dB`,
      source: 'ISO 10140-2:2021, 3.2',
    },
    {
      what: 'Against an open hole of the same size through the wall.',
      equation: 'IL = 10 lg (A_hole / Σ A)',
      numbers: `10 lg (${ratio(sound.hole[index] ?? 0)} / ${ratio(sound.openArea[index] ?? 0)}) = ${signed(sound.insertionLoss[index] ?? 0, 1)} dB`,
      source: 'follows from the two',
    },
  ];
};

/** A vent in one band, worked out. */
export const ventBandWorking = (evaluator: Evaluator, project: Project, id: string, band: number): Working => {
  const report = reportOf(evaluator, project, id);
  const index = report.sound.bands.indexOf(band);
  const { cost } = report;
  const wanted: readonly WorkingLine[] = cost
    ? [
        {
          what: `What it must reach so that the vents of ${cost.wall} together cost it 1 dB.`,
          equation: 'Dn,e = R + 10 lg (n · A0 / S) − 10 lg (10^0.1 − 1)',
          numbers: `R ${figure(cost.wallR[index] ?? 0)} dB, S ${figure(cost.wallArea)} m²: ${figure(cost.wanted[index] ?? 0)} dB; this vent costs the wall ${figure(cost.lost[index] ?? 0)} dB`,
          source: 'EN ISO 12354-3:2017, small elements',
        },
      ]
    : [];
  return {
    title: `${report.name} at ${band} Hz`,
    value: `Dn,e ${figure(report.sound.normalisedDifference[index] ?? 0)} dB`,
    lines: [...wayLines(report, index), ...wanted],
    assumptions: TAKEN,
    likelyError: likely(report, index),
  };
};

/** Rating of a vent, its cost to the wall, or its noise in the room, worked out. */
export const ventWorking = (
  evaluator: Evaluator,
  project: Project,
  id: string,
  which: 'Dne' | 'cost' | 'noise',
): Working => {
  const report = reportOf(evaluator, project, id);
  const { sound, cost, inRoom, noise, pieceRatings } = report;
  const at500 = sound.bands.indexOf(500);
  if (which === 'noise')
    return {
      title: `Noise of ${report.name} in the room`,
      value: inRoom ? `NR ${figure(inRoom.noiseRating, 0)}` : 'the room is not known',
      lines: [
        {
          what: 'Power of fan, grilles, bends and ducts that leaves by the mouth in the room, octaves 63 Hz to 8 kHz.',
          equation: 'Lw = 10 lg Σ 10^((Lw,piece − pieces between − end)/10)',
          numbers: noise.intoRoom.map((level) => figure(level, 0)).join(', ') + ' dB',
          source: noise.estimated
            ? 'fan: 40 + 10 lg q + 20 lg Δp by type, published table; grilles: Beranek & Vér (1992)'
            : 'data sheet of the fan; grilles: Beranek & Vér (1992)',
        },
        {
          what: `Every piece by itself in the room; most comes from ${noise.loudest?.name ?? 'none: no air moves'}.`,
          equation: 'bends K + 10 lg f + 50 lg U + 10 lg S·D − 107 (ft, ft/min); ducts 10 + 50 lg v + 10 lg S',
          numbers: noise.pieces
            .map(({ name }, i) => `${name}: NR ${figure(pieceRatings?.[i] ?? 0, 0)}`)
            .concat(noise.pieces.length === 0 ? ['no air moves'] : [])
            .join('; '),
          source:
            'bends: published application guide for laboratory ventilation (2009); ducts: published table, spectrum VDI 2081 (from memory)',
        },
        {
          what: 'Level in the room, and the highest noise rating curve that it touches.',
          equation: 'Lp = Lw + 10 lg (4/A), A = 0.161·V/T',
          numbers: inRoom ? `${inRoom.levels.map((level) => figure(level, 0)).join(', ')} dB` : '–',
          source: 'EN 12354-5:2009 (form); ISO/R 1996:1971',
        },
      ],
      assumptions: [
        'dampers, whistling edges and pieces right behind one another are not counted: a fan or bend close behind a grille may add 10 dB',
        ...TAKEN.slice(3),
      ],
      likelyError: noise.estimated ? 'About ±6 dB without the data sheet of the fan.' : 'About ±4 dB.',
    };
  if (which === 'cost')
    return {
      title: `What ${report.name} costs its wall`,
      value: cost ? `${figure(cost.lostOverall)} dB` : 'the wall is not known',
      lines: [
        ...wayLines(report, at500),
        ...(cost
          ? [
              {
                what: `${cost.wall} with it, band by band, then for living noise from 100 Hz to 3.15 kHz, A-weighted.`,
                equation: 'R_with = −10 lg (10^(−R/10) + (A0/S) · 10^(−Dn,e/10))',
                numbers: `at 500 Hz ${figure(cost.wallR[at500] ?? 0)} dB becomes ${figure((cost.wallR[at500] ?? 0) - (cost.lost[at500] ?? 0))} dB; over all bands it loses ${figure(cost.lostOverall)} dB`,
                source: 'EN ISO 12354-3:2017, small elements; spectrum 1 of ISO 717-1:2020',
              },
            ]
          : []),
      ],
      assumptions: TAKEN,
      likelyError: likely(report, at500),
    };
  const rating = weightedFigure({ bands: sound.bands, values: sound.normalisedDifference });
  return {
    title: `Weighted level difference of ${report.name}`,
    value: rating.value.replace('Rw', 'Dn,e,w'),
    lines: [...wayLines(report, at500), ...rating.lines],
    assumptions: TAKEN,
    likelyError: likely(report, at500),
  };
};
