/**
 * Polarity of one response against another, from the direct sound in the lower middle band: a second-order crossover
 * has its tweeter reversed, so the treble does not tell, and neither does the first peak.
 */
import { type Arrival, directHeight, topsBetween } from './arrival.js';
import { gated, type Mask, maskAt } from './bands.js';
import { spectrumOf } from './fft.js';
import type { Response } from './response.js';

const N = 4096;
const BEFORE_S = 0.0012;
/** The gate ends before the first reflection that reaches this part of the direct sound, within these bounds, s. */
const STRONG = 0.45;
const LONGEST_S = 0.0062;
const SHORTEST_S = 0.0021;
const CLEAR_FROM_S = 0.0009;
const MARGIN_S = 0.0002;
/** Band for the longest gate, and how far it moves up for the shortest, Hz. */
const BAND = [200, 280, 800, 1100] as const;
const MOVES = [100, 140, 300, 400] as const;
/** Extra delays that a crossover or a set-back driver can make, s, and how likely they are (standard deviation). */
const SLACK_S = 0.00055;
const STEP_S = 0.00004;
const LIKELY_S = 0.0004;

export interface Voice {
  readonly response: Response;
  readonly arrival: Arrival;
}

/** Time until the first reflection that is not weak, s. */
function clearTime(arrival: Arrival): number {
  const rate = arrival.near.sampleRateHz;
  const { at, height } = directHeight(arrival);
  const from = at + Math.trunc(CLEAR_FROM_S * rate);
  const top = topsBetween(arrival.envelope, from, at + Math.trunc((LONGEST_S + 0.0005) * rate)).find(
    (i) => (arrival.envelope[i] ?? 0) > STRONG * height,
  );
  if (top === undefined) return LONGEST_S;
  const free = CLEAR_FROM_S + (top - from - 1) / rate - MARGIN_S;
  return Math.min(LONGEST_S, Math.max(SHORTEST_S, free));
}

/** -1 (surely inverted) to 1 (surely alike): agreement of the phases, best one minus best opposite one. */
export function polarityScore(a: Voice, b: Voice): number {
  const lengthS = Math.min(clearTime(a.arrival), clearTime(b.arrival));
  const short = (LONGEST_S - lengthS) / (LONGEST_S - SHORTEST_S);
  const band = BAND.map((hz, i) => hz + (MOVES[i] ?? 0) * short) as unknown as Mask;
  return phaseScore(a, b, { lengthS, band, slackS: SLACK_S });
}

/** Direct sound alone, where both loudspeakers of a pair are alike whatever their crossovers. */
const TREBLE_GATE_S = 0.0021;
const TREBLE_BAND: Mask = [1200, 1600, 4500, 6000];

/**
 * The same in the treble, for loudspeakers that ought to be alike: a pair of one model is reversed at all
 * frequencies or at none, so two scores of different sign tell that they are not one model.
 */
export const trebleScore = (a: Voice, b: Voice): number =>
  phaseScore(a, b, { lengthS: TREBLE_GATE_S, band: TREBLE_BAND, slackS: STEP_S });

function phaseScore(
  a: Voice,
  b: Voice,
  { lengthS, band, slackS }: { lengthS: number; band: Mask; slackS: number },
): number {
  const rate = a.response.sampleRateHz;
  const gate = { preS: BEFORE_S, lengthS, fallS: lengthS };
  const spectra = [a, b].map(({ response, arrival }) => {
    const { samples, start } = gated(response.h, rate, arrival.s, gate);
    return { bins: spectrumOf(samples, N).bins, offsetS: arrival.s - start / rate };
  });
  const [first, second] = spectra;
  if (first === undefined || second === undefined) return 0;
  const extraS = second.offsetS - first.offsetS;
  const points: { hz: number; phase: number; weight: number }[] = [];
  for (let k = Math.ceil((band[0] * N) / rate); (k * rate) / N < band[3]; k += 1) {
    const hz = (k * rate) / N;
    const [ar, ai] = [first.bins[2 * k] ?? 0, first.bins[2 * k + 1] ?? 0];
    const [br, bi] = [second.bins[2 * k] ?? 0, second.bins[2 * k + 1] ?? 0];
    const weight = maskAt(band, hz) * Math.sqrt(Math.hypot(ar, ai) * Math.hypot(br, bi));
    const phase = Math.atan2(bi * ar - br * ai, br * ar + bi * ai) + 2 * Math.PI * hz * extraS;
    points.push({ hz, phase, weight });
  }
  const total = points.reduce((sum, { weight }) => sum + weight, 0);
  if (total === 0) return 0;
  let [best, opposite] = [0, 0];
  for (let extra = -slackS; extra <= slackS + 1e-6; extra += STEP_S) {
    const agreement = points.reduce(
      (sum, { hz, phase, weight }) => sum + weight * Math.cos(phase + 2 * Math.PI * hz * extra),
      0,
    );
    const likely = (agreement / total) * Math.exp(-0.5 * (extra / LIKELY_S) ** 2);
    best = Math.max(best, likely);
    opposite = Math.max(opposite, -likely);
  }
  return best - opposite;
}
