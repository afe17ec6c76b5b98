/** One recording measured: sweeps found, clock corrected, every value judged by what could spoil it. */
import { type Arrival, arrivalIn, arrivalOf, MIDDLE, reflectionOf, TREBLE_RATE_HZ } from './arrival.js';
import { BAND_EDGES, BANDS_HZ } from './bands.js';
import { type Bursts, burstsIn, TALK_DB } from './bursts.js';
import { clarityOf } from './clarity.js';
import { flatSamples, MOST_FLAT_SAMPLES } from './clipping.js';
import { lagBetween } from './clock.js';
import { decimated } from './decimate.js';
import { distortionOf, distortionPercent } from './distortion.js';
import { type Located, locate } from './locate.js';
import { type BandLevels, bandLevels } from './loudness.js';
import { type Measurement, type Reason, type Remark, refused, type Trace } from './measurement.js';
import type { Clock } from './on-clock.js';
import { polaritiesOf, type Side } from './polarities.js';
import { polarityScore, trebleScore, type Voice } from './polarity.js';
import { type Inverses, type Response, responseOf } from './response.js';
import { centerShare, type Routing, routingOf } from './route.js';
import { centerSweepOf, playedAt, REPEAT_STEP_DB, SWEEP_S, type SweepName } from './sequence.js';
import { type SumCheck, sumCheck } from './sums.js';

/** Recorders below cannot hold the middle band, Hz. */
export const LEAST_RATE_HZ = 16_000;
/** Higher rates are halved until they are no higher, Hz. */
const WORK_RATE_HZ = 50_000;
const SILENT = 1e-4;

/** Two sweeps of one loudspeaker correlate better, unless something moved. */
const LEAST_ALIKE = 0.9;
/** Clocks of players and recorders are nearer, parts in a million: beyond, the playback lost or doubled sound. */
const MOST_PPM = 151;
/** Treble over its noise for an arrival to count, dB; over a phone that moved: so weak that noise is to blame. */
const ARRIVAL_SNR_DB = 20;
const DROWNED_DB = 12;
/** Third octaves over their noise for a level to count, dB. */
const BAND_SNR_DB = 10;
/** Error of the known step of 6 dB that tells a gain control, dB: of the mean, and spread over the bands. */
const MOST_STEP_ERROR_DB = 0.2;
const MOST_STEP_SPREAD_DB = 0.4;
/** Numbers of third octaves: those of level (500 Hz to 2 kHz), and those of the spread (315 Hz to 8 kHz). */
const LEVEL_BANDS = [4, 11] as const;
const SPREAD_BANDS = [2, 17] as const;
/** Sums that miss by more tell that something between them changed, dB. */
const SUMS_DIFFER_DB = -21;
/** Beyond, a loudspeaker is told to be far late or early, ms. */
const VERY_LATE_MS = 20;
const DIRECT_WEAK_DB = -8;
/** Treble and middle band apart by more than crossovers and set-back drivers can make, ms. */
const BANDS_APART_MS = 0.45;

/** What is promised: ms, dB, dB a band. In the middle band alone crossovers add to the delay. */
const DELAY_MS = 0.1;
const DELAY_MIDDLE_MS = 0.4;
const LEVEL_DB = 1.5;
const TONE_DB = 2.5;

export interface Measured {
  readonly measurement: Measurement;
  readonly traces: readonly Trace[];
}

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

interface Heard {
  readonly samples: Float32Array;
  readonly rate: number;
  readonly clock: Clock;
  readonly ppm: number;
  readonly snrDb: number;
  readonly bursts: Bursts;
  readonly names: readonly SweepName[];
  readonly left: Voice;
  readonly right: Voice;
  readonly center: Voice;
  readonly repeat: Voice;
  readonly sum: Voice | undefined;
  readonly difference: Voice | undefined;
}

function judged(heard: Heard): Measured {
  const { rate, clock, left, right, repeat } = heard;
  const { kind } = clock.sequence;
  const centerName = centerSweepOf(kind);
  const reasons = new Set<Reason>();
  const remarks = new Set<Remark>();
  const arrivalS = (name: SweepName, { response, arrival }: Voice): number =>
    (response.start / rate + arrival.s) / clock.scale - playedAt(clock.sequence, name);
  const [leftS, rightS] = [arrivalS('left', left), arrivalS('right', right)];

  const routing = routingOf(
    clock,
    { left: left.response, right: right.response, center: heard.center.response },
    Math.max(leftS, rightS, arrivalS(centerName, heard.center)),
  );
  const shared = routing.route === 'all';
  const center = shared ? shareOf(heard, routing) : heard.center;
  const hasCenter = routing.route === 'center' || shared;
  if (kind === 'channels' && (routing.route === 'mains' || shared)) reasons.add('downmixed');
  else if (routing.route === 'unsure') reasons.add('route-unsure');
  const centerS = arrivalS(centerName, center);

  // What spoils time.
  const slips = Math.abs(heard.ppm) > MOST_PPM;
  const sums =
    heard.sum && heard.difference && routing.route === 'center'
      ? sumCheck(
          clock,
          {
            left: left.response,
            center: center.response,
            sum: heard.sum.response,
            difference: heard.difference.response,
          },
          [leftS, centerS],
        )
      : undefined;
  if (slips || (sums && sums.slipMs > 0)) reasons.add('clock-slips');
  const drowned = (voice: Voice): boolean => voice.arrival.snrDb < ARRIVAL_SNR_DB;
  if ([left, right, ...(hasCenter ? [center] : [])].some(drowned)) reasons.add('noisy');
  const apart = rate < TREBLE_RATE_HZ ? 0 : bandsApartMs(left, right, center);
  const inBands = hasCenter && kind === 'stereo' && (routing.inBandsOnly || apart > BANDS_APART_MS);
  if (inBands) {
    remarks.add('in-bands-only');
    reasons.add('route-unsure');
  }
  const timed = !reasons.has('clock-slips') && !drowned(left) && !drowned(right);
  const centerTimed = timed && hasCenter && !drowned(center) && !inBands && !reasons.has('downmixed');
  const delayMs = {
    centerMinusLeft: centerTimed ? (centerS - leftS) * 1000 : null,
    centerMinusRight: centerTimed ? (centerS - rightS) * 1000 : null,
    leftMinusRight: timed ? (leftS - rightS) * 1000 : null,
    uncertainty: !timed ? null : rate < TREBLE_RATE_HZ ? DELAY_MIDDLE_MS : DELAY_MS,
  };

  // Polarity: independent of gain, in need of a direct sound.
  const scored = centerTimed || (hasCenter && !drowned(center) && !inBands && !reasons.has('downmixed'));
  const polarities =
    drowned(left) || drowned(right)
      ? undefined
      : polaritiesOf({
          rightAgainstLeft: polarityScore(left, right),
          rightAgainstLeftTreble: trebleScore(left, right),
          ...(scored && {
            centerAgainstLeft: polarityScore(left, center),
            centerAgainstRight: polarityScore(right, center),
          }),
        });
  if (polarities?.unlikeMains) remarks.add('mains-unlike');

  // What spoils energies.
  const levels = { left: bandLevels(left), right: bandLevels(right), center: bandLevels(center) };
  const again = bandLevels(repeat);
  const loud = (...voices: BandLevels[]): boolean =>
    voices.every(({ snrDb }) => snrDb.slice(...LEVEL_BANDS).every((snr) => snr >= BAND_SNR_DB));
  const mainsLoud = loud(levels.left, levels.right, again);
  // A step that drowns in noise tells nothing about the gain.
  const stepSpoiled = mainsLoud && gainRides(levels.left, again, sums);
  if (stepSpoiled) reasons.add('gain-rides');
  if (flatSamples(heard.samples) > MOST_FLAT_SAMPLES) reasons.add('clipped');
  const needed = new Set<SweepName>(['left', 'right', centerName, 'repeat']);
  const struck = heard.bursts.during.some((number) => needed.has(namesInOrder(heard)[number] ?? 'sum'));
  if (heard.bursts.betweenDb > TALK_DB || struck) reasons.add('talking');
  if (sums && sums.errorDb > SUMS_DIFFER_DB && !reasons.has('clock-slips') && !stepSpoiled) {
    remarks.add('sums-differ');
  }
  const undisturbed = !reasons.has('talking') && !reasons.has('clipped');
  const steady = undisturbed && !reasons.has('gain-rides');
  const own = routing.route === 'center' && !reasons.has('downmixed');

  const mains = levels.left.db.map((db, i) => (db + (levels.right.db[i] ?? 0)) / 2);
  const difference = levels.center.db.map((db, i) => db - (mains[i] ?? 0));
  const allLoud = mainsLoud && (!own || loud(levels.center));
  if (!allLoud) reasons.add('noisy');
  const centerLevel = meanOf(difference.slice(...LEVEL_BANDS));
  const levelKnown = steady && own && allLoud;
  const toneKnown = difference.map((db, i): number | null => {
    const inRange = (BAND_EDGES[i]?.upperHz ?? 0) < 0.42 * rate;
    const clear = [levels.left, levels.right, levels.center].every(
      ({ snrDb }) => (snrDb[i] ?? 0) >= BAND_SNR_DB,
    );
    return levelKnown && inRange && clear ? db - centerLevel : null;
  });
  const reflection = own && undisturbed && !drowned(center) ? reflectionOf(center.arrival) : undefined;
  const clarity = own && steady && allLoud ? clarityOf(center) : undefined;
  const percent = (voice: Voice): number | null =>
    steady && mainsLoud ? (distortionPercent(distortionOf(voice)) ?? null) : null;

  if (rate < TREBLE_RATE_HZ) remarks.add('low-sample-rate');
  if (kind === 'stereo') remarks.add('slips-unseen');
  else if (!heard.sum || !heard.difference) remarks.add('end-cut');
  if (shared && kind === 'stereo') remarks.add('share-only');
  if ([left, right, ...(own ? [center] : [])].some(({ arrival }) => arrival.directDb < DIRECT_WEAK_DB)) {
    remarks.add('direct-sound-weak');
  }
  const lateness = delayMs.centerMinusLeft ?? 0;
  if (lateness > VERY_LATE_MS) remarks.add('center-very-late');
  if (lateness < -VERY_LATE_MS) remarks.add('center-very-early');

  const measurement: Measurement = {
    signal: kind,
    trusted: reasons.size === 0,
    reasons: [...reasons],
    remarks: [...remarks],
    silent: [],
    delayMs,
    polarity: {
      left: polarities?.left ?? null,
      center: polarities?.center ?? null,
      right: polarities?.right ?? null,
      undecided: polarities?.undecided ?? [],
    },
    levelDb: {
      centerMinusMains: levelKnown ? centerLevel : null,
      leftMinusRight:
        steady && mainsLoud
          ? meanOf(levels.left.db.map((db, i) => db - (levels.right.db[i] ?? 0)).slice(...LEVEL_BANDS))
          : null,
      uncertainty: steady && mainsLoud ? LEVEL_DB : null,
    },
    toneDb: { hz: BANDS_HZ, centerMinusMains: toneKnown, uncertainty: levelKnown ? TONE_DB : null },
    reflection: {
      delayMs: reflection?.delayMs ?? null,
      levelDb: reflection?.levelDb ?? null,
      notchHz: reflection ? 500 / reflection.delayMs : null,
    },
    clarity: { c50Db: clarity?.c50Db ?? null, d50: clarity?.d50 ?? null },
    distortionPercent: { left: percent(left), center: own ? percent(center) : null, right: percent(right) },
    middleFrom:
      kind === 'stereo' && routing.route !== 'unsure' ? (routing.route as 'center' | 'all' | 'mains') : null,
    snrDb: heard.snrDb,
    clockPpm: slips ? null : heard.ppm,
  };
  return {
    measurement,
    traces: [trace('left', left, leftS), trace('center', center, centerS), trace('right', right, rightS)],
  };

  function trace(side: Side, { arrival }: Voice, s: number): Trace {
    return traceOf(side, arrival, (s - leftS) * 1000);
  }
}

const namesInOrder = ({ clock, names }: Heard): SweepName[] =>
  clock.sequence.sweeps.map(({ name }) => name).filter((name) => names.includes(name));

function shareOf({ clock, left, right, center }: Heard, { weight }: Routing): Voice {
  const response: Response = centerShare(
    clock,
    { left: left.response, right: right.response, center: center.response },
    weight,
  );
  return { response, arrival: arrivalOf(response) };
}

/** How far the center's delay in the middle band lies from that in the treble, ms. */
function bandsApartMs(left: Voice, right: Voice, center: Voice): number {
  const shift = ({ arrival }: Voice): number => arrivalIn(arrival.near, MIDDLE).s - arrival.s;
  return 1000 * Math.abs(shift(center) - (shift(left) + shift(right)) / 2);
}

/** Bands so far over their noise show a spread of the step that is not the noise's, dB; and how many it takes. */
const SPREAD_SNR_DB = 20;
const LEAST_SPREAD_BANDS = 5;
/** What noise adds to the error of the step, dB for each dB that a band lies under those. */
const NOISE_ERROR = 0.015;

/** The repeated sweep is weaker by a known step: whatever rides the gain changes it, or spreads it over the bands. */
function gainRides(first: BandLevels, repeat: BandLevels, sums: SumCheck | undefined): boolean {
  const steps = first.db.map((db, i) => db - (repeat.db[i] ?? 0));
  const off = meanOf(steps.slice(...LEVEL_BANDS)) - REPEAT_STEP_DB;
  const weakest = Math.min(...repeat.snrDb.slice(...LEVEL_BANDS));
  const wide = steps.filter(
    (_, i) => i >= SPREAD_BANDS[0] && i < SPREAD_BANDS[1] && (repeat.snrDb[i] ?? 0) >= SPREAD_SNR_DB,
  );
  const mean = meanOf(wide);
  const spread = Math.sqrt(meanOf(wide.map((step) => (step - mean) ** 2)));
  const gains = sums !== undefined && sums.errorDb > SUMS_DIFFER_DB && sums.withGainsDb < SUMS_DIFFER_DB;
  return (
    Math.abs(off) > MOST_STEP_ERROR_DB + NOISE_ERROR * Math.max(0, SPREAD_SNR_DB - weakest) ||
    (wide.length >= LEAST_SPREAD_BANDS && spread > MOST_STEP_SPREAD_DB) ||
    gains
  );
}

const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length);

/** Drawn from shortly before to some time after the first arrival, ms. */
const TRACE_BEFORE_MS = 5;
const TRACE_AFTER_MS = 40;
const TRACE_STEP_MS = 0.1;

function traceOf(side: Side, arrival: Arrival, arrivalMs: number): Trace {
  const rate = arrival.near.sampleRateHz;
  const origin = arrival.s * rate - arrival.first;
  const width = Math.max(1, Math.round((TRACE_STEP_MS / 1000) * rate));
  const count = Math.round((TRACE_BEFORE_MS + TRACE_AFTER_MS) / TRACE_STEP_MS);
  const times = Array.from({ length: count }, (_, i) => i * TRACE_STEP_MS - TRACE_BEFORE_MS);
  return {
    side,
    timesMs: times.map((time) => time + arrivalMs),
    levelsDb: times.map((time) => {
      const at = Math.round(origin + (time / 1000) * rate);
      let largest = 1e-9;
      for (let i = at; i < at + width; i += 1) largest = Math.max(largest, arrival.envelope[i] ?? 0);
      return 20 * Math.log10(largest);
    }),
  };
}
