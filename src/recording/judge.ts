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
import { centerShare, type Routing, routingOf } from './route.js';
import { centerSweepOf, playedAt, type SweepName } from './sequence.js';
import { type SumCheck, sumCheck } from './sums.js';
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
  const view = viewOf(heard);
  const said: Said = { reasons: new Set(), remarks: new Set() };
  const delayMs = timesOf(view, said);
  const polarity = polarityOf(view, said);
  const energies = energiesOf(view, said);
  remarkOn(view, delayMs, said);
  const { kind } = heard.clock.sequence;
  const { route } = view.routing;
  const measurement: Measurement = {
    signal: kind,
    trusted: said.reasons.size === 0,
    reasons: [...said.reasons],
    remarks: [...said.remarks],
    silent: [],
    delayMs,
    polarity,
    ...energies,
    middleFrom: kind === 'stereo' && route !== 'unsure' ? route : null,
    snrDb: heard.snrDb,
    clockPpm: slipping(heard) ? null : heard.ppm,
  };
  const voices = [
    ['left', view.left, view.leftS],
    ['center', view.center, view.centerS],
    ['right', view.right, view.rightS],
  ] as const;
  return {
    measurement,
    traces: voices.map(([side, { arrival }, s]) => traceOf(side, arrival, (s - view.leftS) * 1000)),
  };
}

/** What is not trusted and why, and what is worth a sentence: each judgment adds its own. */
interface Said {
  readonly reasons: Set<Reason>;
  readonly remarks: Set<Remark>;
}

/** A recording with its center found: the sweep itself, or the center's share of it. */
interface View extends Heard {
  readonly routing: Routing;
  readonly leftS: number;
  readonly centerS: number;
  readonly rightS: number;
  /** The center plays, alone or with the mains. */
  readonly hasCenter: boolean;
  /** The center plays alone, so that its energies are its own. */
  readonly own: boolean;
  readonly downmixed: boolean;
  readonly sums: SumCheck | undefined;
  /** The upmix moves only a part of the frequencies. */
  readonly inBands: boolean;
}

function viewOf(heard: Heard): View {
  const { rate, clock, left, right, sum, difference } = heard;
  const { kind } = clock.sequence;
  const centerName = centerSweepOf(kind);
  const arrivalS = (name: SweepName, { response, arrival }: Voice): number =>
    (response.start / rate + arrival.s) / clock.scale - playedAt(clock.sequence, name);
  const [leftS, rightS] = [arrivalS('left', left), arrivalS('right', right)];
  const responses = { left: left.response, right: right.response, center: heard.center.response };
  const latestS = Math.max(leftS, rightS, arrivalS(centerName, heard.center));
  const routing = routingOf(clock, responses, latestS);
  const shared = routing.route === 'all';
  const share = shared ? centerShare(clock, responses, routing.weight) : undefined;
  const center = share ? { response: share, arrival: arrivalOf(share) } : heard.center;
  const centerS = arrivalS(centerName, center);
  const alone = routing.route === 'center';
  const apart = rate < TREBLE_RATE_HZ ? 0 : bandsApartMs(left, right, center);
  return {
    ...heard,
    center,
    routing,
    leftS,
    centerS,
    rightS,
    hasCenter: alone || shared,
    own: alone,
    downmixed: kind === 'channels' && (routing.route === 'mains' || shared),
    sums:
      sum && difference && alone
        ? sumCheck(clock, { ...responses, sum: sum.response, difference: difference.response }, [
            leftS,
            centerS,
          ])
        : undefined,
    inBands: kind === 'stereo' && (alone || shared) && (routing.inBandsOnly || apart > BANDS_APART_MS),
  };
}

const slipping = ({ ppm }: Heard): boolean => Math.abs(ppm) > MOST_PPM;
const drowned = ({ arrival }: Voice): boolean => arrival.snrDb < ARRIVAL_SNR_DB;
/** The center's own direct sound is there to be compared. */
const centerHeard = ({ hasCenter, center, inBands, downmixed }: View): boolean =>
  hasCenter && !drowned(center) && !inBands && !downmixed;

function timesOf(view: View, { reasons, remarks }: Said): Measurement['delayMs'] {
  const { left, right, center, hasCenter, leftS, centerS, rightS, sums } = view;
  if (view.downmixed) reasons.add('downmixed');
  else if (view.routing.route === 'unsure') reasons.add('route-unsure');
  const slips = slipping(view) || (sums !== undefined && sums.slipMs > 0);
  if (slips) reasons.add('clock-slips');
  if ([left, right, ...(hasCenter ? [center] : [])].some(drowned)) reasons.add('noisy');
  if (view.inBands) {
    remarks.add('in-bands-only');
    reasons.add('route-unsure');
  }
  const timed = !slips && !drowned(left) && !drowned(right);
  const centerTimed = timed && centerHeard(view);
  return {
    centerMinusLeft: centerTimed ? (centerS - leftS) * 1000 : null,
    centerMinusRight: centerTimed ? (centerS - rightS) * 1000 : null,
    leftMinusRight: timed ? (leftS - rightS) * 1000 : null,
    uncertainty: !timed ? null : view.rate < TREBLE_RATE_HZ ? DELAY_MIDDLE_MS : DELAY_MS,
  };
}

/** Independent of gain and clock, in need of a direct sound. */
function polarityOf(view: View, { remarks }: Said): Measurement['polarity'] {
  const { left, center, right } = view;
  if (drowned(left) || drowned(right)) return { left: null, center: null, right: null, undecided: [] };
  const { unlikeMains, ...polarity } = polaritiesOf({
    rightAgainstLeft: polarityScore(left, right),
    rightAgainstLeftTreble: trebleScore(left, right),
    ...(centerHeard(view) && {
      centerAgainstLeft: polarityScore(left, center),
      centerAgainstRight: polarityScore(right, center),
    }),
  });
  if (unlikeMains) remarks.add('mains-unlike');
  return polarity;
}

type Energies = Pick<Measurement, 'levelDb' | 'toneDb' | 'reflection' | 'clarity' | 'distortionPercent'>;

function energiesOf(view: View, said: Said): Energies {
  const { left, center, right, own, rate } = view;
  const levels = { left: bandLevels(left), right: bandLevels(right), center: bandLevels(center) };
  const again = bandLevels(view.repeat);
  const mainsLoud = loud(levels.left, levels.right, again);
  const { undisturbed, steady } = disturbances(view, mainsLoud, levels.left, again, said);
  const allLoud = mainsLoud && (!own || loud(levels.center));
  if (!allLoud) said.reasons.add('noisy');
  const mains = levels.left.db.map((db, i) => (db + (levels.right.db[i] ?? 0)) / 2);
  const difference = levels.center.db.map((db, i) => db - (mains[i] ?? 0));
  const centerLevel = meanOf(difference.slice(...LEVEL_BANDS));
  const levelKnown = steady && own && allLoud;
  const mainsKnown = steady && mainsLoud;
  const tone = difference.map((db, i): number | null => {
    const inRange = (BAND_EDGES[i]?.upperHz ?? 0) < HELD_BY_RATE * rate;
    const clear = Object.values(levels).every(({ snrDb }) => (snrDb[i] ?? 0) >= BAND_SNR_DB);
    return levelKnown && inRange && clear ? db - centerLevel : null;
  });
  const reflection = own && undisturbed && !drowned(center) ? reflectionOf(center.arrival) : undefined;
  const percent = (voice: Voice): number | null =>
    mainsKnown ? (distortionPercent(distortionOf(voice)) ?? null) : null;
  return {
    levelDb: {
      centerMinusMains: levelKnown ? centerLevel : null,
      leftMinusRight: mainsKnown
        ? meanOf(levels.left.db.map((db, i) => db - (levels.right.db[i] ?? 0)).slice(...LEVEL_BANDS))
        : null,
      uncertainty: mainsKnown ? LEVEL_DB : null,
    },
    toneDb: { hz: BANDS_HZ, centerMinusMains: tone, uncertainty: levelKnown ? TONE_DB : null },
    reflection: reflection
      ? { ...reflection, notchHz: 500 / reflection.delayMs }
      : { delayMs: null, levelDb: null, notchHz: null },
    clarity: levelKnown ? clarityOf(center) : { c50Db: null, d50: null },
    distortionPercent: { left: percent(left), center: own ? percent(center) : null, right: percent(right) },
  };
}

/** Part of the sample rate up to which a recorder holds a band. */
const HELD_BY_RATE = 0.42;

const loud = (...voices: BandLevels[]): boolean =>
  voices.every(({ snrDb }) => snrDb.slice(...LEVEL_BANDS).every((snr) => snr >= BAND_SNR_DB));

/** What spoils energies: gain that rides, clipping, other sounds. */
function disturbances(
  { samples, clock, bursts, names, sums }: View,
  mainsLoud: boolean,
  first: BandLevels,
  again: BandLevels,
  { reasons, remarks }: Said,
): { readonly undisturbed: boolean; readonly steady: boolean } {
  const { sweeps, kind } = clock.sequence;
  // A step that drowns in noise tells nothing about the gain.
  const rides = mainsLoud && gainRides(first, again, sums);
  if (rides) reasons.add('gain-rides');
  if (flatSamples(samples) > MOST_FLAT_SAMPLES) reasons.add('clipped');
  const needed = new Set<SweepName>(['left', 'right', centerSweepOf(kind), 'repeat']);
  const found = sweeps.map(({ name }) => name).filter((name) => names.includes(name));
  const struck = bursts.during.some((number) => needed.has(found[number] ?? 'sum'));
  if (bursts.betweenDb > TALK_DB || struck) reasons.add('talking');
  if (sums && sums.errorDb > SUMS_DIFFER_DB && !reasons.has('clock-slips') && !rides) {
    remarks.add('sums-differ');
  }
  const undisturbed = !reasons.has('talking') && !reasons.has('clipped');
  return { undisturbed, steady: undisturbed && !rides };
}

function remarkOn(view: View, { centerMinusLeft }: Measurement['delayMs'], { remarks }: Said): void {
  const { kind } = view.clock.sequence;
  if (view.rate < TREBLE_RATE_HZ) remarks.add('low-sample-rate');
  if (kind === 'stereo') remarks.add('slips-unseen');
  else if (!view.sum || !view.difference) remarks.add('end-cut');
  if (kind === 'stereo' && view.routing.route === 'all') remarks.add('share-only');
  const voices = [view.left, view.right, ...(view.own ? [view.center] : [])];
  if (voices.some(({ arrival }) => arrival.directDb < DIRECT_WEAK_DB)) remarks.add('direct-sound-weak');
  const lateness = centerMinusLeft ?? 0;
  if (lateness > VERY_LATE_MS) remarks.add('center-very-late');
  if (lateness < -VERY_LATE_MS) remarks.add('center-very-early');
}

/** How far the center's delay in the middle band lies from that in the treble, ms. */
function bandsApartMs(left: Voice, right: Voice, center: Voice): number {
  const shift = ({ arrival }: Voice): number => arrivalIn(arrival.near, MIDDLE).s - arrival.s;
  return 1000 * Math.abs(shift(center) - (shift(left) + shift(right)) / 2);
}
