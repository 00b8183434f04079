/**
 * Overlap of a rectangular window with itself shifted by R, all directions together:
 * w(R) = 4·[ab·p + aR·cos p − bR·sin p + ½R²·sin²p] from p1 to p2, p1 = arccos(a/R) if R > a, p2 = arcsin(b/R) if R > b.
 * @param R shift, m, 0 to the diagonal
 * @param a width, m
 * @param b height, m
 * @returns w, m²; 2π·ab at R = 0
 * @source reduction of Villot, Guigou and Gagliardini, J. Sound Vib. 245 (2001) 433-455, to one integral
 */
export const windowShape = (R: number, a: number, b: number): number => {
  const p1 = R > a ? Math.acos(a / R) : 0;
  const p2 = R > b ? Math.asin(b / R) : Math.PI / 2;
  if (p2 <= p1) return 0;
  const at = (p: number): number => {
    const s = Math.sin(p);
    return a * b * p + a * R * Math.cos(p) - b * R * s + 0.5 * R * R * s * s;
  };
  return 4 * (at(p2) - at(p1));
};
