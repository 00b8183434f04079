import { mikiFluid } from '../materials/index.ts';
import {
  AIR_DENSITY,
  SOUND_SPEED,
  complex,
  minus,
  over,
  plus,
  scaled,
  squaredModulus,
  times,
} from '../quantities/index.ts';
import type { Complex, Section } from '../quantities/index.ts';
import { complexRoot, tridiagonalValues } from './tridiagonalValues.ts';
import type { VentLining } from './ventElement.ts';

/** Cells across half the airway and across the lining: enough to tell the modes apart; Newton does the rest. */
const CELLS = 14;

/** tan z of a complex number; ±j where its imaginary part is large. */
const tangent = ({ re, im }: Complex): Complex => {
  if (Math.abs(im) > 20) return complex(0, Math.sign(im));
  const bottom = Math.cos(2 * re) + Math.cosh(2 * im);
  return complex(Math.sin(2 * re) / bottom, Math.sinh(2 * im) / bottom);
};

interface Layers {
  readonly k2: Complex;
  readonly liner2: Complex;
  readonly linerDensity: Complex;
  readonly half: number;
  readonly thickness: number;
}

/** (κ1/ρ)·tan κ1h + (κ2/ρe)·tan κ2t, zero for a mode. @param square kz² */
const dispersion = ({ k2, liner2, linerDensity, half, thickness }: Layers, square: Complex): Complex => {
  const one = complexRoot(minus(k2, square));
  const two = complexRoot(minus(liner2, square));
  return plus(
    scaled(times(one, tangent(scaled(one, half))), 1 / AIR_DENSITY),
    over(times(two, tangent(scaled(two, thickness))), linerDensity),
  );
};

/** Secant steps towards a mode; null where they wander off. */
const refined = (layers: Layers, start: Complex): Complex | null => {
  let [before, now] = [scaled(start, 1.0001), start];
  let valueBefore = dispersion(layers, before);
  for (let i = 0; i < 30; i += 1) {
    const value = dispersion(layers, now);
    const change = minus(value, valueBefore);
    if (squaredModulus(change) === 0) return now;
    const step = over(times(value, minus(now, before)), change);
    [before, valueBefore, now] = [now, value, minus(now, step)];
    if (squaredModulus(step) < 1e-22 * squaredModulus(now)) return now;
  }
  return null;
};

/** kz² of the modes across airway and lining by finite volumes: symmetric after scaling by √(1/ρ). */
const coarseModes = (layers: Layers): Complex[] => {
  const { k2, liner2, linerDensity, half, thickness } = layers;
  const [h, t] = [half / CELLS, thickness / CELLS];
  const inverse = over(complex(1), linerDensity);
  const cells = Array.from({ length: 2 * CELLS }, (_, i) => {
    const air = i < CELLS;
    return { width: air ? h : t, volume: air ? complex(1 / AIR_DENSITY) : inverse, square: air ? k2 : liner2 };
  });
  // flux between neighbours: 1/(½w1ρ1 + ½w2ρ2)
  const links = cells.slice(1).map((cell, i) => {
    const other = cells[i] ?? cell;
    return over(
      complex(1),
      plus(over(complex(other.width / 2), other.volume), over(complex(cell.width / 2), cell.volume)),
    );
  });
  const weight = cells.map(({ width, volume }) => scaled(volume, width));
  const none = complex(0);
  const diagonal = cells.map(({ square }, i) =>
    minus(square, over(plus(links[i - 1] ?? none, links[i] ?? none), weight[i] ?? none)),
  );
  const beside = links.map((link, i) => {
    const product = times(weight[i] ?? none, weight[i + 1] ?? none);
    return over(link, complexRoot(product));
  });
  return tridiagonalValues(diagonal, beside);
};

/** kz of kz²: the root that decays along the way. */
const decaying = (square: Complex): Complex => {
  const root = complexRoot(square);
  return root.im > 0 ? scaled(root, -1) : root;
};

/**
 * Wavenumber of the least attenuated mode between two lined sides, bulk-reacting lining (Miki):
 * (κ1/ρ)·tan κ1h + (κ2/ρe)·tan κ2t = 0, κ1² = k² − kz², κ2² = kc² − kz²; least |Im kz| over all modes.
 * @param frequency Hz, > 0
 * @param width clear between the linings, m, > 0
 * @param lining thickness (m) and airflow resistivity (Pa·s/m²)
 * @returns kz, 1/m, Im ≤ 0
 * @validity even modes; rigid frame; no flow
 * @source dispersion of a two-layer slab; all modes by finite volumes, each refined by secant steps
 * @example slabWavenumber(500, 0.1, { thickness: 0.05, airflowResistivity: 10_000 }).im // -2.17 (18.9 dB/m)
 */
export const slabWavenumber = (frequency: number, width: number, lining: VentLining): Complex => {
  const { density, wavenumber } = mikiFluid(frequency, lining.airflowResistivity);
  const layers: Layers = {
    k2: complex(((2 * Math.PI * frequency) / SOUND_SPEED) ** 2),
    liner2: times(wavenumber, wavenumber),
    linerDensity: density,
    half: width / 2,
    thickness: lining.thickness,
  };
  const starts = coarseModes(layers)
    .map((square) => ({ square, loss: Math.abs(decaying(square).im) }))
    .sort((a, b) => a.loss - b.loss)
    .slice(0, 4);
  const modes = starts.map(({ square, loss }) => {
    const exact = refined(layers, square);
    const kz = decaying(exact ?? square);
    // a secant that runs to another, lossier mode says nothing of this one
    return exact !== null && Math.abs(Math.abs(kz.im) / loss - 1) < 0.25 ? kz : decaying(square);
  });
  return modes.reduce((least, kz) => (Math.abs(kz.im) < Math.abs(least.im) ? kz : least));
};

/** Friction and heat at bare walls, as added imaginary wavenumber: 2.9·10⁻⁵·√f/a, a = √(S/π), 1/m. */
const WALL_LOSS = 2.9e-5;

/**
 * Wavenumber along a duct. Bare: k with wall friction. Lined on all sides: kz² = kzx² + kzy² − k² of its two
 * pairs of sides; a round duct as the square with the same lined perimeter to area.
 * @param frequency Hz, > 0
 * @param section clear
 * @param lining null for a bare duct
 * @returns kz, 1/m, Im ≤ 0
 * @validity least attenuated mode; the sum over the two directions is exact for local reaction, else approximate
 * @source as slabWavenumber
 */
export const ductWavenumber = (frequency: number, section: Section, lining: VentLining | null): Complex => {
  const k = (2 * Math.PI * frequency) / SOUND_SPEED;
  const [width, height] =
    section.shape === 'round' ? [section.diameter, section.diameter] : [section.width, section.height];
  if (lining === null) {
    const radius = Math.sqrt((section.shape === 'round' ? (Math.PI / 4) * width ** 2 : width * height) / Math.PI);
    return complex(k, (-WALL_LOSS * Math.sqrt(frequency)) / radius);
  }
  const across = slabWavenumber(frequency, width, lining);
  const along = width === height ? across : slabWavenumber(frequency, height, lining);
  return decaying(minus(plus(times(across, across), times(along, along)), complex(k * k)));
};

/** Rate of a lined duct, dB/m: 8.686·|Im kz|. @param wavenumber kz, 1/m */
export const lossRate = (wavenumber: Complex): number => (20 / Math.LN10) * Math.abs(wavenumber.im);
