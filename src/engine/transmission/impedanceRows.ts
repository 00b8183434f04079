import type { AngleGrid } from './angleGrid.ts';
import type { LayerFluid } from './fluidLayer.ts';
import type { Plate } from './stack.ts';

/** Deepest decay through one layer that is still told apart from silence: e^-60. */
const DEEPEST = 60;

/**
 * Adds the impedance of a Mindlin plate at every angle of the grid:
 * Z = j·[ωm − Gs·kx²·(B·kx² − ω²I)/(ω·(B·kx² + Gs − ω²I))], kx = k0·sinθ.
 * @param plate per area, without edge loss
 * @param count how many such plates lie side by side
 * @param omega ω, rad/s
 * @param k0 wavenumber in air, 1/m
 * @param edge loss added by the edges
 * @param grid angles
 * @param re result, Pa·s/m, added to
 * @param im result, Pa·s/m, added to
 * @source Mindlin, J. Appl. Mech. 18 (1951) 31-38; thin limit Z = j·(ωm − B·kx⁴/ω)
 */
export const addPlateRow = (
  plate: Plate,
  count: number,
  omega: number,
  k0: number,
  edge: number,
  grid: AngleGrid,
  re: Float64Array,
  im: Float64Array,
): void => {
  const k2 = k0 * k0;
  const br = plate.bending * k2;
  const bi = (plate.bendingLoss + edge * plate.bending) * k2;
  const gr = plate.shear;
  const gi = plate.shearLoss + edge * plate.shear;
  const rotary = omega * omega * plate.inertia;
  const mass = count * omega * plate.mass;
  const share = (count * k2) / omega;
  const { sine2 } = grid;
  const n = grid.count;
  for (let i = 0; i < n; i += 1) {
    const u = sine2[i] ?? 0;
    const nr = br * u - rotary;
    const ni = bi * u;
    const dr = nr + gr;
    const di = ni + gi;
    const tr = gr * nr - gi * ni;
    const ti = gr * ni + gi * nr;
    const factor = (share * u) / (dr * dr + di * di);
    const qr = (tr * dr + ti * di) * factor;
    const qi = (ti * dr - tr * di) * factor;
    re[i] = (re[i] ?? 0) + qi;
    im[i] = (im[i] ?? 0) + mass - qr;
  }
};

/**
 * Adds the impedance of a thin sandwich of two skins: Z = j·(ωm − B(kx)·kx⁴/ω), B = Bt + A·g/(g + kx²).
 * @param mass kg/m²
 * @param bending Bt, complex, N·m
 * @param arm A = d²·E1h1·E3h3/(E1h1 + E3h3), N·m
 * @param shear g, complex, 1/m²
 * @source Mead and Markus, J. Sound Vib. 10 (1969) 163-175
 */
export const addSandwichRow = (
  mass: number,
  bending: { readonly re: number; readonly im: number },
  arm: number,
  shear: { readonly re: number; readonly im: number },
  omega: number,
  k0: number,
  grid: AngleGrid,
  re: Float64Array,
  im: Float64Array,
): void => {
  const k2 = k0 * k0;
  const { sine2 } = grid;
  const n = grid.count;
  const inertia = omega * mass;
  for (let i = 0; i < n; i += 1) {
    const kx2 = k2 * (sine2[i] ?? 0);
    const dr = shear.re + kx2;
    const di = shear.im;
    const size = arm / (dr * dr + di * di);
    const Br = bending.re + (shear.re * dr + shear.im * di) * size;
    const Bi = bending.im + (shear.im * dr - shear.re * di) * size;
    const factor = (kx2 * kx2) / omega;
    re[i] = (re[i] ?? 0) + Bi * factor;
    im[i] = (im[i] ?? 0) + inertia - Br * factor;
  }
};

/**
 * A fluid layer at every angle as an impedance matrix: A = Zz·(1 + e²)/(1 − e²) on the diagonal, O = 2·Zz·e/(1 − e²)
 * off it, e = exp(−j·kz·d), kz = √(k² − kx²), Zz = ωρ/kz. This form neither overflows nor cancels.
 * @param fluid density and k²
 * @param depth d, m
 * @param omega ω, rad/s
 * @param k0 wavenumber in air, 1/m
 * @param grid angles
 * @param rows results ar, ai, or, oi, Pa·s/m
 * @source Allard and Atalla, Propagation of Sound in Porous Media, 2nd ed. (2009), ch. 11 (as a transfer matrix)
 */
export const fluidRows = (
  fluid: LayerFluid,
  depth: number,
  omega: number,
  k0: number,
  grid: AngleGrid,
  ar: Float64Array,
  ai: Float64Array,
  or: Float64Array,
  oi: Float64Array,
): void => {
  const k2 = k0 * k0;
  const wr0 = fluid.squared.re;
  const wi = fluid.squared.im;
  const pr = omega * fluid.density.re;
  const pi = omega * fluid.density.im;
  const wi2 = wi * wi;
  const { sine2 } = grid;
  const n = grid.count;
  for (let i = 0; i < n; i += 1) {
    const wr = wr0 - k2 * (sine2[i] ?? 0);
    const size = Math.sqrt(wr * wr + wi2);
    const large = Math.sqrt((size + Math.abs(wr)) * 0.5);
    const small = large > 0 ? (0.5 * wi) / large : 0;
    // kz = x − j·y with x, y ≥ 0
    const x = wr >= 0 ? large : -small;
    const y = wr >= 0 ? -small : large;
    const decay = y * depth;
    const t = Math.exp(decay < DEEPEST ? -decay : -DEEPEST);
    const phase = x * depth;
    const er = t * Math.cos(phase);
    const ei = -t * Math.sin(phase);
    const sr = er * er - ei * ei;
    const si = 2 * er * ei;
    // W = ωρ/(kz·(1 − e²))
    const qr = 1 - sr;
    const dr = x * qr - y * si;
    const di = -x * si - y * qr;
    const factor = 1 / (dr * dr + di * di);
    const Wr = (pr * dr + pi * di) * factor;
    const Wi = (pi * dr - pr * di) * factor;
    const plusR = 1 + sr;
    ar[i] = Wr * plusR - Wi * si;
    ai[i] = Wr * si + Wi * plusR;
    or[i] = 2 * (Wr * er - Wi * ei);
    oi[i] = 2 * (Wr * ei + Wi * er);
  }
};
