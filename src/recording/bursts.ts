/**
 * Sounds that are not the signal: talk, a bark, a door. Between the sweeps they stand out of the quiet; during a
 * sweep they stand far from its own track in time and frequency, and out of what the other sweeps leave there.
 */
import { thirdOctaveCentersHz, thirdOctaveEdgesHz } from '../acoustics/bands.js';
import { decibels, energyBetween } from './bands.js';
import { powerOfTwo, spectrumOf } from './fft.js';
import { medianOf } from './locate.js';
import { SWEEP_S, sweepHzAt } from './sequence.js';

const FRAME_S = 0.05;
/** Third octaves 315 Hz to 8 kHz: voices, barks, doors; the upper ones while the sweep and its harmonics fill the rest. */
const LOOKED_AT = thirdOctaveCentersHz(-5, 9).map(thirdOctaveEdgesHz);
/** The quiet that is looked at before each sweep, s. */
const GAP_S = 0.4;
const GAP_GUARD_S = 0.05;
/** Loudest frame of the gaps over their quiet part, dB: beyond, somebody talks. */
export const TALK_DB = 9;
const QUIET_PART = 0.3;

/** The sweep's own track, and where its harmonics up to this order run, as factors of frequency. */
const TRACK = 1.35;
const ORDERS = [1, 2, 3, 4, 5];
/** How far over what the other sweeps leave at the same place a burst stands, dB; and how near the sweep's own level, dB. */
const OVER_OTHERS_DB = 9;
const UNDER_OWN_DB = 45;
/** Bands of one frame that must stand out together: a burst is broad. */
const LEAST_BANDS = 3;
/** What the same place holds in other sweeps counts a little wider: loudspeakers and rooms are not alike, dB. */
const NOISE_MARGIN_DB = 3;

export interface Bursts {
  /** Loudest moment between the sweeps over the quiet, dB. */
  readonly betweenDb: number;
  /** Places in the list of sweeps that a burst falls on. */
  readonly during: readonly number[];
  /** Root mean square of the quiet between the sweeps. */
  readonly quietRms: number;
}

/** @param startsS start of each sweep in order, seconds of the recording */
export function burstsIn(samples: Float32Array, sampleRateHz: number, startsS: readonly number[]): Bursts {
  const frame = Math.trunc(FRAME_S * sampleRateHz);
  const window = Float64Array.from({ length: frame }, (_, i) => Math.sin((Math.PI * (i + 0.5)) / frame));
  const n = powerOfTwo(frame);
  const bandsAt = (atS: number): Float64Array | undefined => {
    const from = Math.round(atS * sampleRateHz);
    if (from < 0 || from + frame > samples.length) return undefined;
    const spectrum = spectrumOf(
      window.map((weight, i) => weight * (samples[from + i] ?? 0)),
      n,
    );
    return Float64Array.from(LOOKED_AT, ({ lowerHz, upperHz }) =>
      energyBetween(spectrum, sampleRateHz, lowerHz, upperHz),
    );
  };
  // Not before the first sweep: the lead-in still rings there.
  const gaps = startsS
    .slice(1)
    .flatMap((start) =>
      Array.from({ length: Math.round(GAP_S / FRAME_S) }, (_, i) =>
        bandsAt(start - GAP_GUARD_S - GAP_S + i * FRAME_S),
      ).filter((bands) => bands !== undefined),
    );
  const floor = LOOKED_AT.map((_, band) =>
    quantile(
      gaps.map((bands) => bands[band] ?? 0),
      QUIET_PART,
    ),
  );
  const totals = gaps.map((bands) => bands.reduce((sum, energy) => sum + energy, 0));
  const count = Math.floor(SWEEP_S / FRAME_S);
  const tracks = startsS.map((start) =>
    Array.from({ length: count }, (_, i) => bandsAt(start + i * FRAME_S)),
  );
  const own = tracks.map((frames) =>
    LOOKED_AT.map((_, band) => Math.max(1e-30, ...frames.map((bands) => bands?.[band] ?? 0))),
  );
  const struck = (number: number): boolean =>
    tracks[number]?.some((bands, i) => {
      if (bands === undefined) return false;
      const out = LOOKED_AT.filter(({ lowerHz, upperHz }, band) => {
        if (onTrack(i, lowerHz, upperHz)) return false;
        const others = tracks.flatMap((frames, other) => {
          const energy = frames[i]?.[band];
          if (other === number || energy === undefined) return [];
          return [(energy / (own[other]?.[band] ?? 1)) * (own[number]?.[band] ?? 0)];
        });
        const expected = Math.max(medianOf(others), (floor[band] ?? 0) * 10 ** (NOISE_MARGIN_DB / 10));
        const here = bands[band] ?? 0;
        return (
          here > expected * 10 ** (OVER_OTHERS_DB / 10) &&
          here > (own[number]?.[band] ?? 0) * 10 ** (-UNDER_OWN_DB / 10)
        );
      });
      return out.length >= LEAST_BANDS;
    }) ?? false;
  return {
    betweenDb: decibels(Math.max(0, ...totals) / (quantile(totals, QUIET_PART) + 1e-30)),
    during: startsS.flatMap((_, number) => (struck(number) ? [number] : [])),
    quietRms: quietRms(samples, sampleRateHz, startsS),
  };
}

/** Whether the sweep or one of its harmonics passes a band during a frame. */
function onTrack(frame: number, lowerHz: number, upperHz: number): boolean {
  const from = sweepHzAt(Math.max(0, frame * FRAME_S - FRAME_S)) / TRACK;
  const to = sweepHzAt((frame + 1) * FRAME_S) * TRACK;
  return ORDERS.some((order) => upperHz > order * from && lowerHz < order * to);
}

function quantile(values: readonly number[], part: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(part * (sorted.length - 1))] ?? 0;
}

function quietRms(samples: Float32Array, rate: number, startsS: readonly number[]): number {
  const powers = startsS.slice(1).map((start) => {
    const part = samples.subarray(
      Math.max(0, Math.round((start - GAP_GUARD_S - GAP_S) * rate)),
      Math.max(0, Math.round((start - GAP_GUARD_S) * rate)),
    );
    return part.reduce((sum, value) => sum + value * value, 0) / Math.max(1, part.length);
  });
  return Math.sqrt(quantile(powers, QUIET_PART));
}
