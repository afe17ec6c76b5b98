/**
 * Who plays the middle: is the sweep that both channels carry (or that the center alone should play) made of what
 * left and right played before? The real weight of left plus right is fitted in bands of a third octave behind
 * the direct sounds, where the room tells the loudspeakers apart.
 */
import { type Spectrum, signalOf } from './fft.js';
import { medianOf } from './locate.js';
import { type Clock, delayed, startOnClock, stretchOf } from './on-clock.js';
import type { Response } from './response.js';
import { centerSweepOf } from './sequence.js';

const FROM_HZ = 300;
const BANDS = 12;
/** Up to 12 kHz: an upmix that works in a band leaves the treble to the mains. */
const HIGH_BANDS = 4;
const LENGTH_S = 0.15;
const EVEN_S = 0.6;
/** Behind the last direct sound, which is alike in all loudspeakers, s. */
const BEHIND_S = 0.003;

/** Share that left and right leave unexplained: below, they alone play; above, they do not at all. */
const MAINS_BELOW = 0.025;
const SHARED_BELOW = 0.8;
const CENTER_ABOVE = 0.9;
const CENTER_IF_WEAK_ABOVE = 0.8;
/** Weight of the mains in what is shared, and how many standard errors make it sure. */
const LEAST_WEIGHT = 0.15;
const SURE = 5;
const UNSURE = 4;
/** A band that the mains explain to this share is theirs, in the midst of bands that are not. */
const THEIRS_BELOW = 0.35;
const NOT_THEIRS_ABOVE = 0.75;
/** Where the center drowns the mains in some bands, they still have their weight there; where they are silent, none. */
const STILL_THERE = 1 / 3;

type Route = 'center' | 'all' | 'mains' | 'unsure';

export interface Routing {
  readonly route: Route;
  /** Amplitude of left and right in the middle, against their own sweeps. */
  readonly weight: number;
  readonly unexplained: number;
  /** Mains in some bands, center in others. */
  readonly inBandsOnly: boolean;
}

interface Three {
  readonly left: Response;
  readonly right: Response;
  readonly center: Response;
}

/** @param lastArrivalS latest direct sound of the three, seconds after the sweep was played */
export function routingOf(clock: Clock, { left, right, center }: Three, lastArrivalS: number): Routing {
  const stretch = { fromS: lastArrivalS + BEHIND_S, lengthS: LENGTH_S, evenS: EVEN_S };
  const a = stretchOf(clock, 'left', left, stretch);
  const b = stretchOf(clock, 'right', right, stretch);
  const c = stretchOf(clock, centerSweepOf(clock.sequence.kind), center, stretch);
  const rate = left.sampleRateHz;
  const fits = Array.from({ length: BANDS + HIGH_BANDS }, (_, i) => FROM_HZ * 2 ** (i / 3))
    .filter((hz) => hz * 2 ** (1 / 3) < 0.4 * rate)
    .map((hz) => fitted(a, b, c, (hz * a.n) / rate, (hz * 2 ** (1 / 3) * a.n) / rate));
  const low = fits.slice(0, BANDS);
  const weights = low.map(({ weight }) => weight);
  const mean = weights.reduce((sum, weight) => sum + weight, 0) / low.length;
  const spread = Math.sqrt(weights.reduce((sum, weight) => sum + (weight - mean) ** 2, 0) / (low.length - 1));
  const sureness = mean / (spread / Math.sqrt(low.length) + 1e-9);
  const unexplained = medianOf(low.map((fit) => fit.unexplained));
  const weight = medianOf(weights);
  const theirs = fits.filter((fit) => fit.unexplained < THEIRS_BELOW).map((fit) => fit.weight);
  const notTheirs = fits.filter((fit) => fit.unexplained > NOT_THEIRS_ABOVE).map((fit) => fit.weight);
  return {
    route: routeOf(unexplained, weight, sureness),
    weight,
    unexplained,
    inBandsOnly:
      theirs.length >= 2 && notTheirs.length >= 2 && medianOf(notTheirs) < STILL_THERE * medianOf(theirs),
  };
}

function routeOf(unexplained: number, weight: number, sureness: number): Route {
  if (unexplained < MAINS_BELOW) return 'mains';
  if (unexplained < SHARED_BELOW && weight > LEAST_WEIGHT && sureness > SURE) return 'all';
  if (unexplained > CENTER_ABOVE) return 'center';
  return unexplained > CENTER_IF_WEAK_ABOVE && sureness < UNSURE ? 'center' : 'unsure';
}

/** Least squares of c by a real weight times (a + b), between two bins. */
function fitted(
  { bins: a }: Spectrum,
  { bins: b }: Spectrum,
  { bins: c }: Spectrum,
  from: number,
  to: number,
): { readonly weight: number; readonly unexplained: number } {
  let [own, other, cross] = [0, 0, 0];
  for (let k = Math.ceil(from); k < to; k += 1) {
    const [sr, si] = [(a[2 * k] ?? 0) + (b[2 * k] ?? 0), (a[2 * k + 1] ?? 0) + (b[2 * k + 1] ?? 0)];
    const [cr, ci] = [c[2 * k] ?? 0, c[2 * k + 1] ?? 0];
    own += sr * sr + si * si;
    other += cr * cr + ci * ci;
    cross += sr * cr + si * ci;
  }
  const weight = cross / Math.max(own, 1e-30);
  return { weight, unexplained: 1 - (cross * cross) / Math.max(own * other, 1e-30) };
}

/** What is left of the middle when the mains' part is taken away: the center's own share. */
export function centerShare(clock: Clock, { left, right, center }: Three, weight: number): Response {
  const at = startOnClock(clock, centerSweepOf(clock.sequence.kind), center);
  const bins = center.spectrum.bins.slice();
  for (const [name, response] of [
    ['left', left],
    ['right', right],
  ] as const) {
    const part = delayed(
      response.spectrum,
      (startOnClock(clock, name, response) - at) * response.sampleRateHz,
    );
    for (let i = 0; i < bins.length; i += 1) bins[i] = (bins[i] ?? 0) - weight * (part[i] ?? 0);
  }
  const spectrum = { n: center.spectrum.n, bins };
  return { ...center, spectrum, h: signalOf(spectrum) };
}
