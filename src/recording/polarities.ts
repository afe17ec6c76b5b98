/** Which of the three is odd, from the three scores of its pairs; undecided rather than wrong. */

export type Side = 'left' | 'center' | 'right';

interface PolarityScores {
  readonly rightAgainstLeft: number;
  /** The same in the treble: another sign than in the middle tells that the mains are not one model. */
  readonly rightAgainstLeftTreble: number;
  readonly centerAgainstLeft?: number;
  readonly centerAgainstRight?: number;
}

interface Polarities {
  /** 1, -1, or null where undecided; left counts as 1 unless the other two agree against it. */
  readonly left: 1 | -1;
  readonly center: 1 | -1 | null;
  readonly right: 1 | -1 | null;
  readonly undecided: readonly Side[];
  /** The mains do not agree with each other over frequency: two models, or one of them faulty. */
  readonly unlikeMains: boolean;
}

/** Below, a score decides nothing. Tuned on recordings with known truth. */
const DECIDES = 0.2;
/** One of the two mains may speak more softly when both say the same. */
const AGREES = 0.08;
/** Mains of one model agree clearly; two models rarely do. */
const MAINS_DECIDE = 0.3;
const TREBLE_DECIDES = 0.2;

export function polaritiesOf(scores: PolarityScores): Polarities {
  const { rightAgainstLeft: mains, rightAgainstLeftTreble: treble } = scores;
  const unlikeMains =
    Math.abs(mains) < MAINS_DECIDE || (Math.abs(treble) > TREBLE_DECIDES && treble * mains < 0);
  const right = unlikeMains ? null : sign(mains);
  const center = right === null ? null : centerOf(scores, right);
  const undecided: Side[] = [];
  if (center === null && scores.centerAgainstLeft !== undefined) undecided.push('center');
  if (right === null) undecided.push('right');
  // Center and right agree with each other: left is the odd one.
  if (right === -1 && center === -1) return { left: -1, center: 1, right: 1, undecided, unlikeMains };
  return { left: 1, center, right, undecided, unlikeMains };
}

function centerOf({ centerAgainstLeft, centerAgainstRight }: PolarityScores, right: 1 | -1): 1 | -1 | null {
  if (centerAgainstLeft === undefined || centerAgainstRight === undefined) return null;
  const votes = [centerAgainstLeft, right * centerAgainstRight];
  const mean = (votes[0] ?? 0) / 2 + (votes[1] ?? 0) / 2;
  if (Math.abs(mean) < DECIDES) return null;
  return votes.every((vote) => vote * mean > 0 && Math.abs(vote) >= AGREES) ? sign(mean) : null;
}

const sign = (value: number): 1 | -1 => (value < 0 ? -1 : 1);
