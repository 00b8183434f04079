/** Modified Bessel function of order one, I1. @source Abramowitz & Stegun, 9.8.3 and 9.8.4 */
const I1 = (x: number): number => {
  if (x < 3.75) {
    const t = (x / 3.75) ** 2;
    const inner = 0.02658733 + t * (0.00301532 + t * 0.00032411);
    return x * (0.5 + t * (0.87890594 + t * (0.51498869 + t * (0.15084934 + t * inner))));
  }
  const t = 3.75 / x;
  const tail = 0.02282967 + t * (-0.02895312 + t * (0.01787654 - t * 0.00420059));
  const sum = 0.39894228 + t * (-0.03988024 + t * (-0.00362018 + t * (0.00163801 + t * (-0.01031555 + t * tail))));
  return (sum * Math.exp(x)) / Math.sqrt(x);
};

/** Modified Bessel function of order one, K1. @source Abramowitz & Stegun, 9.8.7 and 9.8.8 */
const K1 = (x: number): number => {
  if (x <= 2) {
    const t = (x * x) / 4;
    const tail = -0.01919402 + t * (-0.00110404 - t * 0.00004686);
    const sum = 1 + t * (0.15443144 + t * (-0.67278579 + t * (-0.18156897 + t * tail)));
    return Math.log(x / 2) * I1(x) + sum / x;
  }
  const t = 2 / x;
  const tail = 0.01504268 + t * (-0.00780353 + t * (0.00325614 - t * 0.00068245));
  const sum = 1.25331414 + t * (0.23498619 + t * (-0.0365562 + t * tail));
  return (sum * Math.exp(-x)) / Math.sqrt(x);
};

/** Summed at least to here, and until the argument of I1 and K1 is large. */
const TERMS = 60;
const LARGE = 8;

/**
 * Mass-like end correction of a round duct in a flat face, from the decaying waves across the height:
 * δ = Σ 2H/(n²π²)·(1 − 2·I1(nπa/H)·K1(nπa/H)), a = √(S/π), m.
 * @param area S, m², > 0
 * @param height H, m, > 0
 * @validity below c/2H
 * @source layer modes of a disc source in a flat space, derived from the Green function
 * @example faceEndLength(0.012272, 0.15) // 0.0275
 */
export const faceEndLength = (area: number, height: number): number => {
  const radius = Math.sqrt(area / Math.PI);
  const terms = Math.max(TERMS, Math.ceil((LARGE * height) / (Math.PI * radius)));
  // of the terms left out 2·I1·K1 is 1/x: Σ1/n² and Σ1/n³ beyond
  const beyond = 1 / (terms + 0.5);
  let sum = ((2 * height) / Math.PI ** 2) * (beyond - (height / (Math.PI * radius)) * 0.5 * beyond ** 2);
  for (let n = 1; n <= terms; n += 1) {
    const x = (n * Math.PI * radius) / height;
    sum += ((2 * height) / (n * n * Math.PI ** 2)) * (1 - 2 * I1(x) * K1(x));
  }
  return sum;
};
