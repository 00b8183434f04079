/**
 * Single-number ratings of a sound reduction curve, dB. A rating is null where the curve lacks a band it needs.
 * @source ISO 717-1:2020 (Rw, C, Ctr and the enlarged-range terms), ASTM E413-16 (STC), ASTM E1332-16 (OITC)
 */
export interface Ratings {
  readonly Rw: number | null;
  readonly C: number | null;
  readonly Ctr: number | null;
  readonly C50_3150: number | null;
  readonly C50_5000: number | null;
  readonly C100_5000: number | null;
  readonly Ctr50_3150: number | null;
  readonly Ctr50_5000: number | null;
  readonly Ctr100_5000: number | null;
  readonly STC: number | null;
  readonly OITC: number | null;
}
