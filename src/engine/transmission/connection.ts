import type { Cavity, Frame, Leaf } from '../assembly/index.ts';
import type { ComplianceTerm, Link } from './stack.ts';

/** How two leaves are joined, as far as the model tells it apart. */
export type Connection = 'free' | 'glazed' | 'twin' | 'staggered' | 'studs' | 'bars' | 'lining' | 'lining on bars';

/** Compliance C·(1000/max(f, 200))^n of a connection; C at 1 kHz in m²/N. */
const term = (atOneKilohertz: number, exponent: number): ComplianceTerm => ({
  compliance: atOneKilohertz * 5 ** exponent,
  knee: 200,
  exponent,
});

/** Screws and the boards they bite into. @source engineering judgement: fitted, tests/reference/tl */
const STIFF = term(1.4e-8, 0);
const BAR_COMPLIANCE = 3.4e-7;
const BAR = term(BAR_COMPLIANCE, 0.78);
/** Rubber clips: three times a resilient bar. @source engineering judgement: clips gain 4 to 6 dB over bars in practice */
const CLIP = term(3 * BAR_COMPLIANCE, 0.78);
/** Plates, sole and head that both leaves share give less the lower the frequency is, as thin steel does. */
const STAGGERED = term(2.4e-7, 0.5);
const PERIMETER = term(7.5e-7, 1.5);
const LIGHT_STEEL_GAUGE = 0.5e-3;
const HEAVY_STEEL_GAUGE = 1.2e-3;
const PLATE_SPACING = 1.2;
const BAY_HEIGHT = 2.4;
/** Bars carry where they cross studs: b = stud·bar/0.5 m. */
const CROSSING = 0.5;
/** Screws in gypsum board; nails and glue of a subfloor; effective, m */
const SCREW_PITCH = 0.33;
const NAILED_PITCH = 0.068;
const FILLED_LOSS = 0.08;

export const connectionOf = (first: Leaf, cavity: Cavity, second: Leaf): Connection => {
  const { frame } = cavity;
  const masonry = first.masonry || second.masonry;
  if (first.glass && second.glass) return 'glazed';
  if (!frame) return 'free';
  if (frame.arrangement === 'twin') return 'twin';
  const bars = frame.fixing !== 'direct';
  if (masonry && bars && frame.arrangement === 'common') return 'lining on bars';
  if (frame.stud === 'none') return bars ? 'bars' : 'free';
  if (frame.arrangement === 'staggered') return 'staggered';
  if (bars) return 'bars';
  return masonry ? 'lining' : 'studs';
};

/** 0 for light steel studs, 1 for heavy ones, over the logarithm of the gauge. @param gauge m */
const heaviness = (gauge: number): number => {
  const share = Math.log(gauge / LIGHT_STEEL_GAUGE) / Math.log(HEAVY_STEEL_GAUGE / LIGHT_STEEL_GAUGE);
  return Math.min(1, Math.max(0, share));
};

/** How stiffly common studs hold two light leaves together: 1 timber or heavy steel, 0 anything that gives. */
export const stiffnessOfStuds = (first: Leaf, cavity: Cavity, second: Leaf): number => {
  const { frame } = cavity;
  if (!frame || connectionOf(first, cavity, second) !== 'studs') return 0;
  return frame.stud === 'steel' ? heaviness(frame.gauge) : 1;
};

/**
 * Steel studs from light to heavy gauge: the compliance of 0.5 mm channels, of 1.2 mm, and between them by
 * interpolation of its logarithm over the logarithm of the gauge.
 * @source engineering judgement: end points fitted, continuity asked for
 */
const steelTerms = (frame: Frame, depth: number): ComplianceTerm[] => {
  const light = term(3.75e-7 * (depth / 0.092), 1.5);
  const heavy = heaviness(frame.gauge);
  return [
    {
      compliance: light.compliance ** (1 - heavy) * STIFF.compliance ** heavy,
      knee: light.knee,
      exponent: light.exponent * (1 - heavy),
    },
  ];
};

const hasWood = (leaf: Leaf): boolean => leaf.boards.some((board) => board.material.family === 'wood');

/**
 * The links of a framed cavity: studs, bars or clips, and the perimeter that all leaves share. What goes round panes is
 * frameTransmission.
 * @param first leaf towards the room
 * @param cavity depth, fill, frame
 * @param second leaf beyond
 * @returns links for linkTransmission
 * @validity usual frames; clips and gauges between 0.5 and 1.2 mm are judged, not fitted
 * @source engineering judgement: compliances fitted to measured constructions, tests/reference/tl
 */
export const linksOf = (first: Leaf, cavity: Cavity, second: Leaf): Link[] => {
  const connection = connectionOf(first, cavity, second);
  const { frame, depth } = cavity;
  const filled = cavity.fills.some((fill) => fill.material.kind === 'porous');
  const addedLoss = filled ? FILLED_LOSS : 0;
  if (!frame || connection === 'free' || connection === 'glazed') return [];
  const bay: readonly [number, number] = [frame.spacing, BAY_HEIGHT];
  const line = (spacing: number, compliances: readonly ComplianceTerm[], path: Link['path'] = 'links'): Link => ({
    path,
    form: 'line',
    spacing,
    pitch: SCREW_PITCH,
    compliances,
    bay,
    addedLoss,
  });
  const links: Link[] = [];
  const fixing = frame.fixing === 'isolating-clip' ? CLIP : BAR;
  const light = frame.stud === 'steel' && frame.gauge < HEAVY_STEEL_GAUGE ? steelTerms(frame, depth) : [];
  switch (connection) {
    case 'studs':
    case 'lining':
      if (frame.stud === 'steel') links.push(line(frame.spacing, steelTerms(frame, depth)));
      else {
        const pitch = hasWood(first) || hasWood(second) ? NAILED_PITCH : SCREW_PITCH;
        links.push({ ...line(frame.spacing, [STIFF]), form: 'points', pitch });
      }
      break;
    case 'bars':
      links.push(line((frame.spacing * frame.barSpacing) / CROSSING, [fixing, ...light]));
      break;
    case 'lining on bars':
      links.push(line(frame.barSpacing, [fixing]));
      break;
    case 'staggered':
      links.push(line(PLATE_SPACING, frame.fixing === 'direct' ? [STAGGERED] : [STAGGERED, fixing]));
      break;
    case 'twin':
      break;
  }
  if (!first.masonry && !second.masonry) links.push(line(PLATE_SPACING, [PERIMETER], 'perimeter'));
  return links;
};
