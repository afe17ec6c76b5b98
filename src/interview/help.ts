/** What is told on request: how to find out, the shortlist so far, the marks, the steps of a home test. */
import { confidenceText } from '../explain/confidence.js';
import { stepCautions } from '../explain/step-cautions.js';
import { minutesText } from '../explain/words.js';
import { type FactId, factSpec } from '../facts/catalog.js';
import { COMPLAINT_IDS, COMPLAINTS } from '../facts/complaints.js';
import { MARKS } from './marks.js';
import { bookOf, isOpening, type Screen, type State, topicInHand } from './state.js';
import { titleOf } from './why.js';

export const OPENING_SCRIPT: readonly string[] = [
  'I ask some short questions, then say what is most likely wrong, why, and what to try first. Not knowing an answer is fine.',
  'Answer with a number or a few words. Enter alone lists what else can be typed.',
];

const SHORTLIST_LENGTH = 4;
const LISTED_FROM = 0.05;

export function marksLines(): string[] {
  return ['At any question you can also type:', ...MARKS.map(({ key, long }) => `  ${key}  ${long}`)];
}

export function helpLines(state: State, screen: Screen): string[] {
  const topic = topicInHand(state);
  if (screen.kind !== 'topic' || topic === undefined) return marksLines();
  if (topic === 'complaints') {
    return ['What tells them apart:', ...COMPLAINT_IDS.map((id, i) => `  ${i + 1}. ${COMPLAINTS[id].hint}`)];
  }
  if (isOpening(topic)) return marksLines();
  return testLines(topic);
}

/** The steps to an answer, with the usual cautions beside them. */
export function testLines(id: FactId): string[] {
  const { findOut, minutes } = factSpec(id);
  return [
    `How to find out (${minutesText(minutes)}):`,
    ...stepCautions(id).map((caution) => `  Caution: ${caution}`),
    ...findOut.map((step, i) => `  ${i + 1}. ${step}`),
  ];
}

export function shortlistLines(state: State): string[] {
  const { ranking } = state.audit;
  const book = bookOf(state);
  if (book.answers.size === 0 && book.complaints.length === 0)
    return ['Nothing was told yet, so no cause stands out.'];
  const listed = ranking.causes
    .filter(({ probability, applies }) => applies && probability >= LISTED_FROM)
    .slice(0, SHORTLIST_LENGTH);
  if (listed.length === 0) return ['No cause stands out so far.'];
  return [
    'So far:',
    ...listed.map(
      ({ cause, probability, verdict }, i) =>
        `  ${i + 1}. ${titleOf(state, cause)}: ${confidenceText(probability, verdict)}`,
    ),
    ...(ranking.undecided ? ['Nothing is decided yet.'] : []),
  ];
}
