/** Joints of one leaf, m. */
export interface SealLengths {
  /** both sides and the head */
  readonly perimeter: number;
  readonly threshold: number;
}

/**
 * Metres of joint round a leaf.
 * @param width of the leaf, m, > 0
 * @param height m, > 0
 * @source geometry
 * @example sealLengths(0.9, 2) // { perimeter: 4.9, threshold: 0.9 }
 */
export const sealLengths = (width: number, height: number): SealLengths => ({
  perimeter: 2 * height + width,
  threshold: width,
});
