/** Third octaves of a box, Hz. */
export const BOX_BANDS: readonly number[] = [
  50, 63, 80, 100, 125, 160, 200, 250, 315, 400, 500, 630, 800, 1000, 1250, 1600, 2000, 2500, 3150, 4000, 5000,
];

/** How finely a box is solved. */
export interface BoxPlan {
  /** nominal third octaves, ascending */
  readonly bands: readonly number[];
  /** h of a band, m */
  readonly cellSize: (band: number) => number;
  /** N of a band */
  readonly lines: (band: number) => number;
  /** also energy balance and mean pressure inside, at every line */
  readonly inside: boolean;
}

/** While a shape is dragged: one grid of 20 mm, 2 lines a band; 1.5 dB rms, failing above 3 kHz. */
export const COARSE_PLAN: BoxPlan = { bands: BOX_BANDS, cellSize: () => 0.02, lines: () => 2, inside: false };

/** To rely on: 10 mm with 24 lines up to 1.6 kHz, 6 mm with 4 lines above; within 0.5 dB up to 2.5 kHz, 1 dB above. */
export const FINE_PLAN: BoxPlan = {
  bands: BOX_BANDS,
  cellSize: (band) => (band <= 1600 ? 0.01 : 0.006),
  lines: (band) => (band <= 1600 ? 24 : 4),
  inside: true,
};

/** One grid for all bands; 24 lines a band up to 1.6 kHz and 8 above. @param cellSize h, m */
export const evenPlan = (cellSize: number): BoxPlan => ({
  bands: BOX_BANDS,
  cellSize: () => cellSize,
  lines: (band) => (band <= 1600 ? 24 : 8),
  inside: false,
});
