/**
 * Crossover filters as analog transfer functions at s = j f / fc.
 * Facts used: LR4 is two second-order Butterworths in cascade and sums to a second-order all-pass; BW3 sums
 * to a second-order all-pass of Q 1 (read, a loudspeaker forum's list of all-pass sums; proved by the tests).
 */
import { type Complex, complex, div, mul, scale } from './complex.js';
import { notNegative, positive } from './input.js';

/** Linkwitz-Riley of order 2, 4, 8; Butterworth of order 2, 3. */
export type CrossoverFilter = 'LR2' | 'LR4' | 'LR8' | 'BW2' | 'BW3';
export const CROSSOVER_FILTERS: readonly CrossoverFilter[] = ['LR2', 'LR4', 'LR8', 'BW2', 'BW3'];

export type ButterworthOrder = 1 | 2 | 3 | 4;

/**
 * Damping 2 zeta of the second-order sections of a Butterworth polynomial (textbook: poles evenly spread on a
 * half circle). An odd order has a further real pole.
 */
const SECTION_DAMPING: Record<ButterworthOrder, readonly number[]> = {
  1: [],
  2: [Math.SQRT2],
  3: [1],
  4: [2 * Math.cos(Math.PI / 8), 2 * Math.cos((3 * Math.PI) / 8)],
};

function butterworthPolynomial(order: ButterworthOrder, x: number): Complex {
  let value = order % 2 === 1 ? complex(1, x) : complex(1, 0);
  for (const damping of SECTION_DAMPING[order]) value = mul(value, complex(1 - x * x, damping * x));
  return value;
}

/** s^order at s = j x. */
function powerOfS(order: number, x: number): Complex {
  const size = x ** order;
  switch (order % 4) {
    case 0:
      return complex(size);
    case 1:
      return complex(0, size);
    case 2:
      return complex(-size);
    default:
      return complex(0, -size);
  }
}

function normalized(crossoverHz: number, frequencyHz: number): number {
  return notNegative('frequencyHz', frequencyHz) / positive('crossoverHz', crossoverHz);
}

/** Butterworth low-pass, unity at 0 Hz, -3.01 dB at `cutoffHz`. */
export function butterworthLowPass(order: ButterworthOrder, cutoffHz: number, frequencyHz: number): Complex {
  return div(complex(1), butterworthPolynomial(order, normalized(cutoffHz, frequencyHz)));
}

/** Butterworth high-pass, unity far above `cutoffHz`, -3.01 dB at it. Polarity not inverted. */
export function butterworthHighPass(order: ButterworthOrder, cutoffHz: number, frequencyHz: number): Complex {
  const x = normalized(cutoffHz, frequencyHz);
  return div(powerOfS(order, x), butterworthPolynomial(order, x));
}

type Kernel = { readonly order: ButterworthOrder; readonly cascade: 1 | 2; readonly highPassSign: 1 | -1 };

/** A Linkwitz-Riley filter is a Butterworth of half its order, twice. LR2 sums flat only with one branch inverted. */
const KERNELS: Record<CrossoverFilter, Kernel> = {
  LR2: { order: 1, cascade: 2, highPassSign: -1 },
  LR4: { order: 2, cascade: 2, highPassSign: 1 },
  LR8: { order: 4, cascade: 2, highPassSign: 1 },
  BW2: { order: 2, cascade: 1, highPassSign: 1 },
  BW3: { order: 3, cascade: 1, highPassSign: 1 },
};

/** Low branch of a crossover. Frequencies in Hz; throws RangeError when negative or NaN. */
export function lowPass(filter: CrossoverFilter, crossoverHz: number, frequencyHz: number): Complex {
  const { order, cascade } = KERNELS[filter];
  const once = butterworthLowPass(order, crossoverHz, frequencyHz);
  return cascade === 2 ? mul(once, once) : once;
}

/** High branch of a crossover; LR2 comes inverted, so that low and high add. */
export function highPass(filter: CrossoverFilter, crossoverHz: number, frequencyHz: number): Complex {
  const { order, cascade, highPassSign } = KERNELS[filter];
  const once = butterworthHighPass(order, crossoverHz, frequencyHz);
  return scale(cascade === 2 ? mul(once, once) : once, highPassSign);
}
