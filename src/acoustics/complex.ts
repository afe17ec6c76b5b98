/** Complex arithmetic on plain `{ re, im }` values, for the models that are not hot. */

export type Complex = { readonly re: number; readonly im: number };

export const ZERO: Complex = { re: 0, im: 0 };
export const ONE: Complex = { re: 1, im: 0 };

export const complex = (re: number, im = 0): Complex => ({ re, im });
export const polar = (magnitude: number, angleRad: number): Complex => ({
  re: magnitude * Math.cos(angleRad),
  im: magnitude * Math.sin(angleRad),
});

export const add = (a: Complex, b: Complex): Complex => ({ re: a.re + b.re, im: a.im + b.im });
export const sub = (a: Complex, b: Complex): Complex => ({ re: a.re - b.re, im: a.im - b.im });
export const mul = (a: Complex, b: Complex): Complex => ({
  re: a.re * b.re - a.im * b.im,
  im: a.re * b.im + a.im * b.re,
});
export const scale = (a: Complex, factor: number): Complex => ({ re: a.re * factor, im: a.im * factor });

export const div = (a: Complex, b: Complex): Complex => {
  const power = b.re * b.re + b.im * b.im;
  return { re: (a.re * b.re + a.im * b.im) / power, im: (a.im * b.re - a.re * b.im) / power };
};

export const abs = (a: Complex): number => Math.hypot(a.re, a.im);
/** Squared magnitude. */
export const power = (a: Complex): number => a.re * a.re + a.im * a.im;

/** Level of an amplitude in dB, 20 lg |a|. */
export const levelDb = (a: Complex): number => 10 * Math.log10(power(a));
