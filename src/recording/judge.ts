/** Every value of a recording judged by what could spoil it: what is not trusted is not told, with the reason. */
import { arrivalIn, arrivalOf, MIDDLE, reflectionOf, TREBLE_RATE_HZ } from './arrival.js';
import { BAND_EDGES, BANDS_HZ } from './bands.js';
import { type Bursts, TALK_DB } from './bursts.js';
import { clarityOf } from './clarity.js';
import { flatSamples, MOST_FLAT_SAMPLES } from './clipping.js';
import { distortionOf, distortionPercent } from './distortion.js';
import { gainRides, LEVEL_BANDS, meanOf, SUMS_DIFFER_DB } from './gain.js';
import { type BandLevels, bandLevels } from './loudness.js';
import { type Measured, type Measurement, MOST_PPM, type Reason, type Remark } from './measurement.js';
import type { Clock } from './on-clock.js';
import { polaritiesOf } from './polarities.js';
import { polarityScore, trebleScore, type Voice } from './polarity.js';
import type { Response } from './response.js';
import { centerShare, type Routing, routingOf } from './route.js';
import { centerSweepOf, playedAt, type SweepName } from './sequence.js';
import { sumCheck } from './sums.js';
import { traceOf } from './trace.js';

/** Treble over its noise for an arrival to count, dB. */
const ARRIVAL_SNR_DB = 20;
/** Third octaves over their noise for a level to count, dB. */
const BAND_SNR_DB = 10;
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

export function judged(heard: Heard): Measured {
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
  const voices = [
    ['left', left, leftS],
    ['center', center, centerS],
    ['right', right, rightS],
  ] as const;
  return {
    measurement,
    traces: voices.map(([side, { arrival }, s]) => traceOf(side, arrival, (s - leftS) * 1000)),
  };
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
