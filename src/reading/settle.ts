/** Which of the things that single phrases tell hold: one value a fact, nothing twice, nothing that a trial says. */
import { COMPLAINTS } from '../facts/complaints.js';
import type { Candidate } from './candidates.js';
import type { ToldTrial } from './trials.js';

/** One value a fact: of overlapping phrases the longest; two that disagree become a question. */
export function settle(candidates: readonly Candidate[], trials: readonly ToldTrial[]): Candidate[] {
  const byFact = new Map<string, Candidate[]>();
  for (const each of candidates) {
    if (isOfTrial(each, trials) || isPartOf(each, candidates)) continue;
    const list = byFact.get(each.fact);
    if (list) list.push(each);
    else byFact.set(each.fact, [each]);
  }
  return [...byFact.values()].flatMap(oneOf).sort((a, b) => a.first - b.first || a.last - b.last);
}

/** The same fact is not told more often in any post; a text made to be slow is not looked through. */
const MOST_TELLINGS = 40;

function oneOf(list: readonly Candidate[]): Candidate[] {
  const sorted = [...list].sort((a, b) => b.size - a.size || a.first - b.first).slice(0, MOST_TELLINGS);
  const kept: Candidate[] = [];
  for (const each of sorted) {
    if (!kept.some((other) => each.first <= other.last && other.first <= each.last)) kept.push(each);
  }
  const sure = kept.filter(({ unsure, negated }) => !unsure && !negated);
  const [best] = sure;
  const denials = kept.filter(({ negated, unsure, value }) => negated && !unsure && value !== best?.value);
  if (best === undefined) return denials.length > 0 ? denials.slice(0, 1) : kept.slice(0, 1);
  const least = YIELDING[best.fact];
  if (best.value === least) {
    const other = sure.find(({ value }) => value !== least);
    if (other) return oneOf(sure.filter(({ value }) => value !== least));
  }
  const rivals = sure.filter(({ value }) => value !== best.value && value !== least);
  if (best.fact === 'playedContent') return [best, ...denials.slice(0, 2)];
  if (rivals.length === 0) return [best, ...denials.slice(0, 2)];
  const renewed = sure.filter((each) => each.renewed);
  if (renewed.length > 0 && renewed.length < sure.length)
    return [renewed.toSorted((a, b) => a.first - b.first).at(-1) as Candidate];
  const ranked = RANKED[best.fact];
  if (ranked)
    return [
      sure.toSorted(
        (a, b) => ranked.indexOf(String(a.value)) - ranked.indexOf(String(b.value)),
      )[0] as Candidate,
    ];
  const both = BOTH[best.fact];
  if (both) return [{ ...best, value: both }];
  const strong = rivals.filter(({ size }) => size >= best.size - 1);
  if (strong.length === 0) return [best];
  const values = [...new Set([best, ...strong].map(({ value }) => value))].filter(
    (value) => typeof value !== 'boolean',
  );
  return [{ ...best, unsure: true, values }];
}

/** Where two values may be told together, the one that says more comes first. */
const RANKED: Readonly<Record<string, readonly string[]>> = {
  centerPlacement: ['behind-screen', 'bay', 'wall', 'floor', 'shelf-top', 'stand'],
  troubleSeats: ['back-row', 'one-seat', 'middle-only', 'off-middle', 'everywhere'],
  voiceDirection: ['behind', 'subwoofer', 'low', 'high', 'aside', 'center-box', 'nowhere', 'picture'],
  seatDistanceFrom: ['wall', 'display', 'mains'],
  testLift: ['tone-only', 'improves', 'same'],
  calibrationSpot: ['changed-since', 'elsewhere', 'main-seat'],
  screenKind: ['perforated', 'woven', 'solid', 'none'],
  troubleTitles: ['one-source', 'some', 'all'],
  fineContent: ['multichannel-film', 'two-channel-music', 'television'],
};

/** What two values told together make: "the wizard ran, and I corrected it by hand". */
const BOTH: Readonly<Record<string, string>> = {
  alignmentBy: 'both',
  likesTwoChannel: 'both',
  troubleSide: 'both',
};

/** Values that say less than any other one told beside them: "nothing else changed", "never ran it, typed them in". */
const YIELDING: Readonly<Record<string, string>> = {
  alignmentBy: 'nobody',
  lastChange: 'nothing',
  driversHeard: 'all',
  centerFamily: 'same-maker',
  changedExactly: 'trim',
};

/** What an act and its outcome say is no state and no complaint: "pulled its plug: the voice was gone". */
function isOfTrial(candidate: Candidate, trials: readonly ToldTrial[]): boolean {
  const within = (from: number, to: number): boolean => candidate.first >= from && candidate.last <= to;
  return trials.some((trial) => {
    if (candidate.fact === trial.test || candidate.fact === trial.act) return false;
    // "Hollow in the middle seat": where it is heard, and it is heard.
    if (trial.test === 'testSitMiddle' && candidate.fact in COMPLAINTS && !candidate.negated) return false;
    // "Up 4 dB did nothing": a number of the trial; "changed to 80, better": the number of today, unless undone.
    if (typeof candidate.value === 'number' && trial.stays !== true && !candidate.renewed)
      if (candidate.first >= trial.actFirst && candidate.last <= Math.max(trial.actLast, trial.cameLast))
        return true;
    // "Turning the center up did nothing": no center from which nothing comes.
    if (
      candidate.first <= trial.actLast &&
      candidate.last >= trial.cameFirst &&
      trial.actLast < trial.cameFirst
    )
      return candidate.fact in COMPLAINTS;
    // "I changed the cable, same thing": tried since, so it was not the change it began with.
    if (candidate.fact === 'lastChange' && trial.outcome === 'same' && within(trial.actFirst, trial.actLast))
      return true;
    const ofOutcome =
      within(trial.cameFirst, trial.cameLast) ||
      (candidate.fact === 'lastChange' && within(trial.cameFirst, trial.cameLast + 1));
    return ofOutcome
      ? (trial.outcome !== 'same' && trial.outcome !== 'worse') || !(candidate.fact in COMPLAINTS)
      : within(trial.actFirst, trial.actLast) &&
          !(candidate.fact in COMPLAINTS) &&
          !KEPT_IN_ACTS.has(candidate.fact);
  });
}

/** What is unclear at some seats is not said to be unclear in general, nor is a voice dull that turns so on its way. */
const WHOLES: Readonly<Record<string, readonly string[]>> = {
  'voice-pulled-aside': ['image-follows-head'],
  'voice-unclear': ['voice-unclear-off-side', 'voice-unclear-back-row', 'voice-unclear-everywhere'],
  ...Object.fromEntries(
    ['dull', 'boxy', 'thin', 'hollow'].map((tone): [string, string[]] => [
      tone,
      ['voice-changes-tone', 'toneAcrossPan'],
    ]),
  ),
};

function isPartOf(part: Candidate, candidates: readonly Candidate[]): boolean {
  // "I hear every word twice": no praise.
  const wholes = part.negated ? (part.fact === 'voice-unclear' ? ['echo'] : undefined) : WHOLES[part.fact];
  if (wholes === undefined) return false;
  return candidates.some(
    ({ fact, negated, first, last }) =>
      !negated && part.first <= last && first <= part.last && wholes.includes(fact),
  );
}

/** Facts that an act tells by the way: "bought the matching center". */
const KEPT_IN_ACTS: ReadonlySet<string> = new Set([
  'lastChange',
  'onset',
  'polarityMarks',
  'driversHeard',
  'alignmentBy',
  'elsewhereToo',
]);
