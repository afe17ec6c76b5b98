/** Directivity of a flat round piston in an infinite baffle (read: two acoustics texts on the baffled piston). */
import { notNegative } from './input.js';
import { besselJ1 } from './special.js';

/** Amplitude off the axis over amplitude on it: 2 J1(x) / x, 1 on the axis, signed beyond its nulls. */
export function pistonDirectivity(kaSinTheta: number): number {
  notNegative('kaSinTheta', kaSinTheta);
  return kaSinTheta === 0 ? 1 : (2 * besselJ1(kaSinTheta)) / kaSinTheta;
}

/** Level off the axis relative to it, dB; -Infinity in an exact null. First null at ka sin(theta) = 3.832. */
export function pistonDb(kaSinTheta: number): number {
  return 20 * Math.log10(Math.abs(pistonDirectivity(kaSinTheta)));
}
