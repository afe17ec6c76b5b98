/** One recording measured: sweeps found, clock corrected, and what is then heard judged. */
import { arrivalOf } from './arrival.js';
import { burstsIn } from './bursts.js';
import { lagBetween } from './clock.js';
import { decimated } from './decimate.js';
import { judged } from './judge.js';
import { type Located, locate } from './locate.js';
import { type Measured, type Measurement, MOST_PPM, type Reason, refused } from './measurement.js';
import type { Side } from './polarities.js';
import type { Voice } from './polarity.js';
import { type Inverses, responseOf } from './response.js';
import { centerSweepOf, playedAt, SWEEP_S, type SweepName } from './sequence.js';

/** Recorders below cannot hold the middle band, Hz. */
export const LEAST_RATE_HZ = 16_000;
/** Higher rates are halved until they are no higher, Hz. */
const WORK_RATE_HZ = 50_000;
const SILENT = 1e-4;

/** Two sweeps of one loudspeaker correlate better, unless something moved. */
const LEAST_ALIKE = 0.9;
/** Treble over its noise below which noise is to blame for sweeps that are not alike, not a phone that moved, dB. */
const DROWNED_DB = 12;

/**
 * @param recording one channel; never the sum of two microphones
 * @param rateHz at least LEAST_RATE_HZ
 */
export function measure(recording: Float32Array, rateHz: number): Measured {
  const factor = Math.max(1, Math.ceil(rateHz / WORK_RATE_HZ));
  return measured(decimated(recording, factor), rateHz / factor);
}

const nothing = (reasons: readonly Reason[], known: Partial<Measurement> = {}): Measured => ({
  measurement: refused(reasons, known),
  traces: [],
});

function measured(samples: Float32Array, rate: number): Measured {
  if (samples.every((value) => Math.abs(value) < SILENT)) return nothing(['not-the-signal']);
  const located = locate(samples, rate);
  if (located === undefined) return nothing(['not-the-signal']);
  const { kind } = located.sequence;
  const centerName = centerSweepOf(kind);
  const gone = (['left', 'right', centerName, 'repeat'] as const).filter((name) => !located.starts.has(name));
  if (gone.length > 0) return missing(located, gone, samples.length / rate);
  const inverses: Inverses = new Map();
  const voice = (name: SweepName, scale: number): Voice => {
    const response = responseOf(samples, rate, located.starts.get(name) ?? 0, scale, inverses);
    return { response, arrival: arrivalOf(response) };
  };
  const { scale, made, alike, complete, voices } = clockOf(located, rate, voice);
  const ppm = (scale - 1) * 1e6;
  const known = { signal: kind, clockPpm: Math.abs(ppm) > MOST_PPM ? null : ppm };
  if (!complete) return nothing(['cut'], known);
  const sweeps = new Map<SweepName, Voice>();
  for (const name of located.starts.keys()) {
    const heard = voices.get(name) ?? voice(name, made);
    if (heard.response.complete) sweeps.set(name, heard);
  }
  const [left, right, center, repeat] = (['left', 'right', centerName, 'repeat'] as const).map((name) =>
    sweeps.get(name),
  );
  if (!left || !right || !center || !repeat) return nothing(['cut'], known);
  const starts = located.sequence.sweeps.flatMap(({ name }) => located.starts.get(name) ?? []);
  const bursts = burstsIn(samples, rate, starts);
  const snrDb = snrOf(left.response.rms, bursts.quietRms);
  if (alike < LEAST_ALIKE) {
    const drowned = Math.min(left.arrival.snrDb, repeat.arrival.snrDb) < DROWNED_DB;
    return nothing([drowned ? 'noisy' : 'phone-moved'], { ...known, snrDb });
  }
  return judged({
    samples,
    rate,
    clock: { sequence: located.sequence, scale },
    ppm,
    snrDb,
    bursts,
    names: [...located.starts.keys()],
    left,
    right,
    center,
    repeat,
    sum: sweeps.get('sum'),
    difference: sweeps.get('difference'),
  });
}

/** The sweep was recorded with the noise: that part is taken off. */
const snrOf = (rms: number, noise: number): number =>
  10 * Math.log10(Math.max((rms / (noise + 1e-12)) ** 2 - 1, 1e-3));

/** Sweeps that were not found: outside the recording they were cut off, inside it their loudspeaker was silent. */
function missing({ sequence, fileStart }: Located, gone: readonly SweepName[], lengthS: number): Measured {
  const outside = gone.filter((name) => {
    const at = fileStart + playedAt(sequence, name);
    return at < 0 || at + SWEEP_S > lengthS;
  });
  const silent = gone
    .filter((name) => !outside.includes(name))
    .map(
      (name): Side => (name === 'right' ? 'right' : name === 'left' || name === 'repeat' ? 'left' : 'center'),
    );
  const reasons: Reason[] = [
    ...(outside.length > 0 ? (['cut'] as const) : []),
    ...(silent.length > 0 ? (['channel-silent'] as const) : []),
  ];
  return nothing(reasons, { signal: sequence.kind, silent: [...new Set(silent)] });
}

interface Timed {
  readonly scale: number;
  /** The scale that the last sweeps were made with: what it differs from the one that they told is nothing. */
  readonly made: number;
  readonly alike: number;
  readonly complete: boolean;
  /** The two sweeps as the second pass made them. */
  readonly voices: ReadonlyMap<SweepName, Voice>;
}

/** Two passes: the first finds the clock with sweeps of nominal length, the second with sweeps of the right one. */
function clockOf(
  { sequence }: Located,
  rate: number,
  voice: (name: SweepName, scale: number) => Voice,
): Timed {
  const played = playedAt(sequence, 'repeat') - playedAt(sequence, 'left');
  let timed: Timed = { scale: 1, made: 1, alike: 0, complete: false, voices: new Map() };
  for (let pass = 0; pass < 2; pass += 1) {
    const [first, second] = [voice('left', timed.scale), voice('repeat', timed.scale)];
    if (!first.response.complete || !second.response.complete) return timed;
    const { lagS, alike } = lagBetween(first.arrival, second.arrival);
    timed = {
      scale: ((second.response.start - first.response.start) / rate + lagS) / played,
      made: timed.scale,
      alike,
      complete: true,
      voices: new Map([
        ['left', first],
        ['repeat', second],
      ]),
    };
  }
  return timed;
}
