/** One size in a row of sizes, mm. */
export interface MillimetreField {
  readonly label: string;
  readonly value: number;
  readonly min: number;
  readonly max: number;
  readonly step: number;
  readonly put: (value: number) => void;
}
