/** A quantity in bands: `values[i]` belongs to the nominal band `bands[i]` (Hz). Levels and R in dB. */
export interface Spectrum {
  readonly bands: readonly number[];
  readonly values: readonly number[];
}
