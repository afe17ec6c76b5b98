/**
 * Second and third harmonic against the fundamental at the same output frequency, so that the microphone and most
 * of the room cancel. Each harmonic has an image of its own before the linear response.
 */
import { energyBetween } from './bands.js';
import { spectrumOf } from './fft.js';
import type { Voice } from './polarity.js';
import { harmonicLeadS } from './sequence.js';

const FROM_HZ = 600;
const TO_HZ = 6000;
const BEFORE_S = 0.004;
const AFTER_S = 0.03;
const FALL_S = 0.01;
const N = 8192;
/** Between the linear response and its first image, seconds before the arrival: what is there is no harmonic. */
const FLOOR_LEAD_S = 0.2;
/** Below so many times the floor nothing is said. */
const OVER_FLOOR = 3;

interface Distortion {
  /** Amplitudes against the fundamental, 0 to 1. */
  readonly second: number;
  readonly third: number;
  readonly floor: number;
}

export function distortionOf({ response, arrival }: Voice): Distortion {
  const rate = response.sampleRateHz;
  const linear = energyAt(response.h, rate, arrival.s);
  const floor = energyAt(response.h, rate, arrival.s - FLOOR_LEAD_S);
  const part = (order: number): number =>
    Math.sqrt(
      Math.max(0, energyAt(response.h, rate, arrival.s - harmonicLeadS(order)) - floor) /
        Math.max(linear, 1e-30),
    );
  return { second: part(2), third: part(3), floor: Math.sqrt(floor / Math.max(linear, 1e-30)) };
}

/** Both harmonics together, %; undefined when neither stands out of the floor. */
export function distortionPercent({ second, third, floor }: Distortion): number | undefined {
  const heard = [second, third].filter((part) => part > OVER_FLOOR * floor);
  return heard.length === 0 ? undefined : 100 * Math.hypot(...heard);
}

/** Energy of a short stretch around a time, which may lie before zero: the response is circular. */
function energyAt(h: Float64Array, rate: number, atS: number): number {
  const from = Math.round(atS * rate) - Math.trunc(BEFORE_S * rate);
  const length = Math.trunc(BEFORE_S * rate) + Math.trunc(AFTER_S * rate);
  const fall = Math.trunc(FALL_S * rate);
  const cut = Float64Array.from({ length }, (_, i) => {
    const left = length - i;
    const weight = left > fall ? 1 : 0.5 - 0.5 * Math.cos((Math.PI * left) / fall);
    return weight * (h[(from + i + h.length) % h.length] ?? 0);
  });
  return energyBetween(spectrumOf(cut, N), rate, FROM_HZ, Math.min(TO_HZ, 0.45 * rate));
}
