import * as v from 'valibot';
import { assemblyIntervals, shellIntervals } from './uncertaintyResults.ts';

/** What the reckoning methods answer and the command line prints with --json; units stand in the keys. */

const figures = v.array(v.number());
const rating = v.nullable(v.number());

/** Single-number ratings, dB; null where the curve lacks a band that the rating needs. */
const ratings = v.strictObject({
  Rw: rating,
  C: rating,
  Ctr: rating,
  C50_5000: rating,
  Ctr50_5000: rating,
  STC: rating,
  OITC: rating,
  C50_3150: rating,
  C100_5000: rating,
  Ctr50_3150: rating,
  Ctr100_5000: rating,
});

const curve = { bands_Hz: figures, R_dB: figures, ratings };

const assembly = v.strictObject({
  ...curve,
  surface_mass_kg_m2: v.number(),
  thickness_mm: v.number(),
  resonances_Hz: figures,
  critical_Hz: figures,
  spread_dB: figures,
  intervals: assemblyIntervals,
});

const part = v.strictObject({
  id: v.string(),
  area_m2: v.number(),
  share: v.number(),
  share_by_band: figures,
  if_perfect_Rw_gain_dB: v.nullable(v.number()),
});

export const predictResult = v.strictObject({ assemblies: v.record(v.string(), assembly) });

export const shellResult = v.strictObject({
  ...curve,
  spread_dB: figures,
  parts: v.array(part),
  limiting: v.nullable(v.string()),
  intervals: shellIntervals,
});

export const rateResult = v.strictObject({ ratings });

/** Transmission loss of a baffled box; unknowns of its grid. */
export const boxResult = v.strictObject({
  bands_Hz: figures,
  TL_plane_dB: figures,
  TL_multimode_dB: figures,
  unknowns: v.number(),
});
