/** A complex number; time dependence is exp(+jωt) everywhere in the engine. */
export interface Complex {
  readonly re: number;
  readonly im: number;
}

export const complex = (re: number, im = 0): Complex => ({ re, im });

export const plus = (a: Complex, b: Complex): Complex => ({ re: a.re + b.re, im: a.im + b.im });

export const minus = (a: Complex, b: Complex): Complex => ({ re: a.re - b.re, im: a.im - b.im });

export const times = (a: Complex, b: Complex): Complex => ({
  re: a.re * b.re - a.im * b.im,
  im: a.re * b.im + a.im * b.re,
});

export const scaled = (a: Complex, factor: number): Complex => ({ re: a.re * factor, im: a.im * factor });

export const over = (a: Complex, b: Complex): Complex => {
  const square = b.re * b.re + b.im * b.im;
  return { re: (a.re * b.re + a.im * b.im) / square, im: (a.im * b.re - a.re * b.im) / square };
};

export const squaredModulus = (a: Complex): number => a.re * a.re + a.im * a.im;

export const modulus = (a: Complex): number => Math.hypot(a.re, a.im);

/** Square root with Im ≤ 0: the wavenumber of a wave that decays in its direction of travel. */
export const decayingRoot = (a: Complex): Complex => {
  const size = modulus(a);
  return { re: Math.sqrt(Math.max(0, (size + a.re) / 2)), im: -Math.sqrt(Math.max(0, (size - a.re) / 2)) };
};
