import { AIR_IMPEDANCE } from '../quantities/index.ts';
import type { AngleGrid } from './angleGrid.ts';

/** A complex value at every angle. */
export interface Row {
  readonly re: Float64Array;
  readonly im: Float64Array;
}

/** The impedance matrix of a gap at every angle: diagonal towards the source and towards the receiver, and across. */
export interface GapRows {
  readonly near: Row;
  readonly far: Row;
  readonly across: Row;
}

export const newRow = (count: number): Row => ({ re: new Float64Array(count), im: new Float64Array(count) });

/** Pressure and velocity of a wave that leaves into free air: p = ρ0c0/cosθ, v = 1. */
export const startRow = (grid: AngleGrid, p: Row, v: Row): void => {
  const n = grid.count;
  for (let i = 0; i < n; i += 1) {
    p.re[i] = AIR_IMPEDANCE / (grid.cosine[i] ?? 1);
    p.im[i] = 0;
    v.re[i] = 1;
    v.im[i] = 0;
  }
};

/** Through a leaf, from the receiving side: p ← p + Z·v. */
export const throughLeaf = (count: number, Z: Row, p: Row, v: Row): void => {
  for (let i = 0; i < count; i += 1) {
    const zr = Z.re[i] ?? 0;
    const zi = Z.im[i] ?? 0;
    const vr = v.re[i] ?? 0;
    const vi = v.im[i] ?? 0;
    p.re[i] = (p.re[i] ?? 0) + zr * vr - zi * vi;
    p.im[i] = (p.im[i] ?? 0) + zr * vi + zi * vr;
  }
};

/** Through a gap, from the receiving side: v' = (p + Zfar·v)/Zacross, p' = Znear·v' − Zacross·v; z adds to all three. */
export const throughGap = (count: number, gap: GapRows, zr: number, zi: number, p: Row, v: Row): void => {
  const { near, far, across } = gap;
  for (let i = 0; i < count; i += 1) {
    const vr = v.re[i] ?? 0;
    const vi = v.im[i] ?? 0;
    const fr = (far.re[i] ?? 0) + zr;
    const fi = (far.im[i] ?? 0) + zi;
    const or = (across.re[i] ?? 0) + zr;
    const oi = (across.im[i] ?? 0) + zi;
    const tr = (p.re[i] ?? 0) + fr * vr - fi * vi;
    const ti = (p.im[i] ?? 0) + fr * vi + fi * vr;
    const factor = 1 / (or * or + oi * oi);
    const wr = (tr * or + ti * oi) * factor;
    const wi = (ti * or - tr * oi) * factor;
    const nr = (near.re[i] ?? 0) + zr;
    const ni = (near.im[i] ?? 0) + zi;
    p.re[i] = nr * wr - ni * wi - (or * vr - oi * vi);
    p.im[i] = nr * wi + ni * wr - (or * vi + oi * vr);
    v.re[i] = wr;
    v.im[i] = wi;
  }
};

/** Two layers behind each other as one gap, the result in `first`. */
export const joinRows = (count: number, first: GapRows, second: GapRows): void => {
  for (let i = 0; i < count; i += 1) {
    const sr = (first.far.re[i] ?? 0) + (second.near.re[i] ?? 0);
    const si = (first.far.im[i] ?? 0) + (second.near.im[i] ?? 0);
    const factor = 1 / (sr * sr + si * si);
    const ar = first.across.re[i] ?? 0;
    const ai = first.across.im[i] ?? 0;
    const br = second.across.re[i] ?? 0;
    const bi = second.across.im[i] ?? 0;
    const qr = (ar * sr + ai * si) * factor;
    const qi = (ai * sr - ar * si) * factor;
    const rr = (br * sr + bi * si) * factor;
    const ri = (bi * sr - br * si) * factor;
    first.near.re[i] = (first.near.re[i] ?? 0) - (ar * qr - ai * qi);
    first.near.im[i] = (first.near.im[i] ?? 0) - (ar * qi + ai * qr);
    first.far.re[i] = (second.far.re[i] ?? 0) - (br * rr - bi * ri);
    first.far.im[i] = (second.far.im[i] ?? 0) - (br * ri + bi * rr);
    first.across.re[i] = qr * br - qi * bi;
    first.across.im[i] = qr * bi + qi * br;
  }
};

/** Plane-wave transmission at every angle: τ∞ = 4/|p/Z0 + v|², Z0 = ρ0c0/cosθ. */
export const planeTransmission = (grid: AngleGrid, p: Row, v: Row, out: Float64Array): void => {
  const n = grid.count;
  for (let i = 0; i < n; i += 1) {
    const y = (grid.cosine[i] ?? 0) / AIR_IMPEDANCE;
    const re = (p.re[i] ?? 0) * y + (v.re[i] ?? 0);
    const im = (p.im[i] ?? 0) * y + (v.im[i] ?? 0);
    out[i] = 4 / (re * re + im * im);
  }
};

/** Mean square velocity of a leaf in a diffuse field: V = ∫ 2·sinθ/|Z + 2ρ0c0/cosθ|² dθ. */
export const velocityResponse = (grid: AngleGrid, Z: Row): number => {
  const n = grid.count;
  let sum = 0;
  for (let i = 0; i < n; i += 1) {
    const re = (Z.re[i] ?? 0) + (2 * AIR_IMPEDANCE) / (grid.cosine[i] ?? 1);
    const im = Z.im[i] ?? 0;
    sum += (grid.velocity[i] ?? 0) / (re * re + im * im);
  }
  return sum;
};
