/** How elements meet where sound runs past: what they are and how firmly they are joined. */
export type Junction = 'rigid-cross' | 'rigid-t' | 'flexible-t' | 'lightweight';

/** `straight`: on through the junction in one line; `corner`: from one element into the one across it. */
export type Run = 'straight' | 'corner';

/** From this frequency on an elastic interlayer of E/t about 100 MN/m³ isolates, Hz. @source EN 12354-1:2000, annex E.3 */
const INTERLAYER = 125;

/** Lines K = a + b·M + 5.7·M²: a and b by junction and run. @source EN 12354-1:2000, annex E.3 */
const RIGID: Readonly<Record<'cross' | 't', Readonly<Record<Run, readonly [number, number]>>>> = {
  cross: { straight: [8.7, 17.1], corner: [8.7, 0] },
  t: { straight: [5.7, 14.1], corner: [5.7, 0] },
};

/** Dv,n of timber-framed elements at 500 Hz, dB; it grows by 3.3 dB per decade. */
const LIGHTWEIGHT: Readonly<Record<Run, number>> = { straight: 22, corner: 18 };

/**
 * Vibration reduction index of a junction of heavy elements: K = a + b·M + 5.7·M², M = lg(m⊥/m_i); an elastic
 * interlayer adds Δ1 = 10 lg(f/125), twice on the way straight on, where f > 125 Hz.
 * @param junction rigid cross, rigid T, or T with elastic interlayers round the element that ends there
 * @param run straight on or round the corner
 * @param mass m_i, kg/m², > 0, of the element in which the sound arrives
 * @param crossing m⊥, kg/m², > 0, of the element across it
 * @param frequency f, Hz, > 0
 * @returns K_ij, dB
 * @throws RangeError when a mass is not > 0
 * @validity homogeneous elements, mass ratio up to about 3; not for timber frames
 * @source EN 12354-1:2000, annex E.3 to E.5
 * @example vibrationReduction('rigid-cross', 'straight', 200, 200, 500) // 8.7
 */
export const vibrationReduction = (
  junction: Exclude<Junction, 'lightweight'>,
  run: Run,
  mass: number,
  crossing: number,
  frequency: number,
): number => {
  for (const [name, value] of Object.entries({ mass, crossing }))
    if (!(value > 0)) throw new RangeError(`${name} of a junction must be > 0 kg/m², got ${value}`);
  const M = Math.log10(crossing / mass);
  const [a, b] = RIGID[junction === 'rigid-cross' ? 'cross' : 't'][run];
  const K = a + b * M + 5.7 * M * M; // (E.3), (E.4)
  if (junction !== 'flexible-t') return K;
  const interlayer = Math.max(0, 10 * Math.log10(frequency / INTERLAYER)); // (E.5)
  return K + (run === 'straight' ? 2 : 1) * interlayer;
};

/**
 * Way through the element that an elastic interlayer borders on both sides: K24 = 3.7 + 14.1·M + 5.7·M², −4 to 0 dB.
 * @param mass m_i, kg/m², > 0
 * @param crossing m⊥, kg/m², > 0
 * @source EN 12354-1:2000, annex E.5
 */
export const pastInterlayer = (mass: number, crossing: number): number => {
  const M = Math.log10(crossing / mass);
  return Math.min(0, Math.max(-4, 3.7 + 14.1 * M + 5.7 * M * M));
};

/**
 * Normalised velocity level difference of a junction of timber-framed elements: Dv,n = D + 3.3 lg(f/500), D 22 dB
 * straight on, 18 dB round the corner.
 * @param run straight on or round the corner
 * @param frequency f, Hz, > 0
 * @returns Dv,n, dB
 * @validity platform-framed walls and floors of timber
 * @source ISO 12354-1:2017, Table L.11: the line that its printed columns follow to 0.05 dB
 * @example lightweightDifference('straight', 500) // 22
 */
export const lightweightDifference = (run: Run, frequency: number): number =>
  LIGHTWEIGHT[run] + 3.3 * Math.log10(frequency / 500);

/**
 * Least vibration reduction index that areas and length allow: K_min = 10 lg[l·l0·(1/S_i + 1/S_j)], l0 = 1 m.
 * @param length l, m, > 0
 * @param first S_i, m², > 0
 * @param second S_j, m², > 0
 * @returns K_min, dB
 * @source EN 12354-1:2000, 4.4 (clause from memory)
 * @example leastVibrationReduction(4, 20, 11) // −2.49
 */
export const leastVibrationReduction = (length: number, first: number, second: number): number =>
  10 * Math.log10(length * (1 / first + 1 / second));
