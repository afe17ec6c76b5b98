/** Special functions: Bessel, Fresnel, spherical Bessel, Legendre. Formulas from memory (textbook) unless noted. */
import { type Complex, complex, div, mul, sub } from './complex.js';

/** Steps beyond |x| after which the periodic trapezoid of Bessel's integral is exact to double precision. */
const BESSEL_INTEGRAL_MARGIN = 40;

/** Where the two rational forms of J1 meet. */
const J1_SPLIT = 8;

/**
 * 2 J1(x) / x by rational approximation (Hart's coefficients, from memory; error below 1e-7, tested against
 * Bessel's integral). 1 at x = 0. This is the inner loop of every off-axis curve, hence no division by x below 8.
 */
export function jincFast(x: number): number {
  const ax = Math.abs(x);
  if (ax < J1_SPLIT) {
    const y = x * x;
    const above =
      72362614232.0 +
      y * (-7895059235.0 + y * (242396853.1 + y * (-2972611.439 + y * (15704.4826 + y * -30.16036606))));
    const below =
      144725228442.0 + y * (2300535178.0 + y * (18583304.74 + y * (99447.43394 + y * (376.9991397 + y))));
    return (2 * above) / below;
  }
  const z = J1_SPLIT / ax;
  const y = z * z;
  const phase = ax - 0.75 * Math.PI;
  const inPhase =
    1 + y * (0.183105e-2 + y * (-0.3516396496e-4 + y * (0.2457520174e-5 + y * -0.240337019e-6)));
  const quadrature =
    0.04687499995 +
    y * (-0.2002690873e-3 + y * (0.8449199096e-5 + y * (-0.88228987e-6 + y * 0.105787412e-6)));
  const j1 = Math.sqrt(2 / (Math.PI * ax)) * (Math.cos(phase) * inPhase - z * Math.sin(phase) * quadrature);
  return (2 * j1) / ax;
}

/**
 * J1(z) / J0(z) for complex z, by the continued fraction of the recurrence, run backward.
 * Stable for any |z| (the ratio is all that the viscous flow in a round hole needs; J0 alone overflows).
 */
export function besselJ1OverJ0(z: Complex): Complex {
  const start = Math.ceil(Math.hypot(z.re, z.im)) + BESSEL_INTEGRAL_MARGIN;
  let ratio = complex(0);
  // J(n) / J(n-1) = z / (2n - z J(n+1) / J(n))
  for (let n = start; n >= 1; n -= 1) ratio = div(z, sub(complex(2 * n), mul(z, ratio)));
  return ratio;
}

/** Below this the power series of the Fresnel integrals loses no digit that counts; above it the fraction is short. */
const FRESNEL_SPLIT = 2.5;
/** Terms of the continued fraction that give 1e-13 at the split; fewer would do above it (tested). */
const FRESNEL_FRACTION_TERMS = 24;

/**
 * Fresnel integrals C(v) = int cos(pi t^2 / 2) dt and S(v), 0 to v, to about 1e-12. Odd in v.
 * Power series for small |v|; continued fraction of the complementary error function for large |v|.
 */
export function fresnel(v: number): { c: number; s: number } {
  const av = Math.abs(v);
  if (!(av < Number.POSITIVE_INFINITY)) return { c: 0.5 * Math.sign(v), s: 0.5 * Math.sign(v) };
  const { c, s } = av < FRESNEL_SPLIT ? fresnelSeries(av) : fresnelFraction(av);
  return v < 0 ? { c: -c, s: -s } : { c, s };
}

function fresnelSeries(v: number): { c: number; s: number } {
  const q = (Math.PI / 2) * v * v;
  // term(n) = v q^n / n!; even n feed C, odd n feed S, with alternating sign and divisor 2n + 1.
  let term = v;
  let c = 0;
  let s = 0;
  for (let n = 0; n < 60 && term > 1e-18 * v; n += 1) {
    const part = (term / (2 * n + 1)) * ((n >> 1) % 2 === 0 ? 1 : -1);
    if (n % 2 === 0) c += part;
    else s += part;
    term *= q / (n + 1);
  }
  return { c, s };
}

function fresnelFraction(v: number): { c: number; s: number } {
  // With w = sqrt(pi)/2 (1 - j) v and w^2 = -j pi v^2 / 2: C + jS = (1 + j)/2 (1 - erfc(w)), where
  // erfc(w) = 2 w e^(-w^2) / sqrt(pi) / (2 w^2 + 1 - 1*2 / (2 w^2 + 5 - 3*4 / (2 w^2 + 9 - ...))).
  const twoW2 = -Math.PI * v * v;
  let re = 4 * FRESNEL_FRACTION_TERMS + 1;
  let im = twoW2;
  for (let n = FRESNEL_FRACTION_TERMS; n >= 1; n -= 1) {
    const factor = ((2 * n - 1) * 2 * n) / (re * re + im * im);
    re = 4 * n - 3 - factor * re;
    im = twoW2 + factor * im;
  }
  // 2 w / sqrt(pi) = (1 - j) v, and (1 + j)/2 (1 - j) = 1: the rest is v e^(j pi v^2 / 2) over the fraction.
  const power = re * re + im * im;
  const angle = (Math.PI / 2) * v * v;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return {
    c: 0.5 - (v * (cos * re + sin * im)) / power,
    s: 0.5 - (v * (sin * re - cos * im)) / power,
  };
}

/**
 * Spherical Bessel functions of both kinds for orders 0..maxOrder at x > 0: `j` regular, `y` singular.
 * `y` by the upward recurrence, `j` by the downward one (each is stable only in that direction).
 */
export function sphericalBessel(maxOrder: number, x: number): { j: Float64Array; y: Float64Array } {
  const y = new Float64Array(maxOrder + 1);
  const j = new Float64Array(maxOrder + 1);
  y[0] = -Math.cos(x) / x;
  if (maxOrder > 0) y[1] = -Math.cos(x) / (x * x) - Math.sin(x) / x;
  for (let n = 1; n < maxOrder; n += 1) {
    y[n + 1] = ((2 * n + 1) / x) * (y[n] ?? 0) - (y[n - 1] ?? 0);
  }
  let above = 0;
  let here = 1e-300;
  for (let n = maxOrder + Math.ceil(x) + BESSEL_INTEGRAL_MARGIN; n >= 0; n -= 1) {
    const below = ((2 * n + 3) / x) * here - above;
    above = here;
    here = below;
    if (n <= maxOrder) j[n] = here;
    if (Math.abs(here) > 1e200) {
      above *= 1e-200;
      here *= 1e-200;
      for (let m = n; m <= maxOrder; m += 1) j[m] = (j[m] ?? 0) * 1e-200;
    }
  }
  // The downward run is right up to a factor, fixed by the closed form of order 0 or, near its zeros, 1.
  const j0 = Math.sin(x) / x;
  const j1 = Math.sin(x) / (x * x) - Math.cos(x) / x;
  const factor = Math.abs(j0) >= Math.abs(j1) || maxOrder === 0 ? j0 / (j[0] ?? 1) : j1 / (j[1] ?? 1);
  for (let n = 0; n <= maxOrder; n += 1) j[n] = (j[n] ?? 0) * factor;
  return { j, y };
}

/** Legendre polynomials P0..PmaxOrder at x, -1 to 1. */
export function legendre(maxOrder: number, x: number): Float64Array {
  const p = new Float64Array(maxOrder + 1);
  p[0] = 1;
  if (maxOrder > 0) p[1] = x;
  for (let n = 1; n < maxOrder; n += 1) {
    p[n + 1] = ((2 * n + 1) * x * (p[n] ?? 0) - n * (p[n - 1] ?? 0)) / (n + 1);
  }
  return p;
}
