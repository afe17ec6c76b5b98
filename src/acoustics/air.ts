/** Air at room temperature: the constants every model shares. */
import { within } from './input.js';

/** Speed of sound at 20 C, m/s. From memory (textbook); agrees with `soundSpeed(20)` to 0.02 m/s. */
export const C_AIR = 343.2;
/** Density of air at 20 C, kg/m3. From memory (textbook). */
export const RHO_AIR = 1.204;
/** Dynamic viscosity of air at 20 C, Pa s. From memory (textbook). */
export const MU_AIR = 1.81e-5;

/** Speed of sound at 0 C, m/s. From memory (textbook). */
const C_AT_FREEZING = 331.3;
/** Freezing point of water, K. */
const FREEZING_K = 273.15;

/**
 * Speed of sound in dry air, m/s.
 * c = 331.3 sqrt(1 + T / 273.15), ideal gas; from memory (textbook).
 * @param temperatureC -50 to 60 C. Throws RangeError outside.
 */
export function soundSpeed(temperatureC: number): number {
  within('temperatureC', temperatureC, -50, 60);
  return C_AT_FREEZING * Math.sqrt(1 + temperatureC / FREEZING_K);
}
