import type { Cavity, Leaf } from '../assembly/index.ts';
import { connectionOf, stiffnessOfStuds } from './connection.ts';
import type { Connection } from './connection.ts';
import type { Coupling } from './stack.ts';

/**
 * Loss at the mass-air-mass resonance: strong where thin studs or bars join the leaves, some where they share plates,
 * little between rows that meet only around the edges, as masonry and a lining that stands free of it do, none between
 * light leaves that stand apart or panes, whose air loses at its edges.
 * @source engineering judgement: studs and bars fitted, tests/reference/tl; staggered and twin studs judged between them
 */
const RESONANCE_LOSS: Readonly<Record<Connection, number>> = {
  studs: 1.4,
  bars: 1.4,
  lining: 1.4,
  'lining on bars': 1.4,
  staggered: 0.3,
  glazed: 0,
  twin: 0.15,
  free: 0,
};

/** Loss beside the stiffness of strips between stiff studs. @source engineering judgement: as with staggered studs */
const STIFF_STUD_LOSS = 0.3;
/** First mode of a strip hinged on the studs: s = B·(π/b)⁴. */
const HINGED_STRIP = Math.PI ** 4;
const STRIP_LOSS = 0.3;

/**
 * What the frame puts in parallel with the cavity.
 * @param first leaf towards the room
 * @param cavity depth, fill, frame
 * @param second leaf beyond
 * @returns coupling for couplingImpedance; null between leaves that stand apart
 * @validity stiffness of strips on timber and heavy steel studs between light leaves
 * @source Bradley and Birta, J. Acoust. Soc. Am. 110 (2001) 3086-3096; losses: engineering judgement
 */
export const couplingOf = (first: Leaf, cavity: Cavity, second: Leaf): Coupling | null => {
  const connection = connectionOf(first, cavity, second);
  const loss = RESONANCE_LOSS[connection === 'free' && (first.masonry || second.masonry) ? 'twin' : connection];
  const stiff = stiffnessOfStuds(first, cavity, second);
  const { frame } = cavity;
  if (stiff > 0 && frame)
    return {
      resistance: stiff * STIFF_STUD_LOSS + (1 - stiff) * loss,
      bay: { kappa: stiff * HINGED_STRIP, lossFactor: STRIP_LOSS, spacing: frame.spacing, compliance: 0 },
    };
  return loss > 0 ? { resistance: loss, bay: null } : null;
};
