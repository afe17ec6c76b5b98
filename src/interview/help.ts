/** What is told on request: how to find out, the shortlist so far, the marks, the steps of a home test. */
import { confidenceText } from '../explain/confidence.js';
import { glossaryFor } from '../explain/glossary.js';
import { settledBy } from '../explain/report.js';
import { solvedText } from '../explain/report-verdict.js';
import { stepCautions } from '../explain/step-cautions.js';
import { capital, minutesText, sentence } from '../explain/words.js';
import { type FactId, factSpec } from '../facts/catalog.js';
import { COMPLAINT_IDS, COMPLAINTS } from '../facts/complaints.js';
import type { CauseId } from '../rules/cause-ids.js';
import { MARKS } from './marks.js';
import { bookOf, isOpening, type Screen, type State, topicInHand } from './state.js';
import { titleOf } from './why.js';

export const OPENING_SCRIPT: readonly string[] = [
  'I ask some short questions, then say what is most likely wrong, why, and what to try first. Not knowing an answer is fine.',
  'Answer with a number or a few words. What else can be typed stands below each question.',
];

const SHORTLIST_LENGTH = 4;
/** Causes below are not worth a line. */
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
  return [...testLines(topic), ...wordLines(factSpec(topic).ask)];
}

const ASKED = /^(?:what|which|meaning|explain|define)\b|.\?$/i;

/** Whoever asks back is told the words of the trade in it, else how to find out; undefined where nothing is asked. */
export function askedBack(state: State, screen: Screen, typed: string): string[] | undefined {
  if (!ASKED.test(typed)) return undefined;
  const words = wordLines(typed);
  return words.length > 0 ? words : helpLines(state, screen);
}

const wordLines = (text: string): string[] =>
  glossaryFor([text]).map(({ term, meaning }) => `${capital(term)}: ${sentence(meaning)}`);

/** The steps to an answer, with the usual cautions beside them. */
export function testLines(id: FactId): string[] {
  const { findOut, minutes } = factSpec(id);
  return [
    `How to find out (${minutesText(minutes)}):`,
    ...stepCautions(id).map((caution) => `  Caution: ${caution}`),
    ...findOut.map((step, i) => `  ${i + 1}. ${step}`),
  ];
}

/** The likeliest causes so far, in words; none while nothing was told. */
export function shortlist(state: State): { id: CauseId; title: string; confidence: string }[] {
  if (isEmpty(state)) return [];
  return state.audit.ranking.causes
    .filter(({ probability, applies }) => applies && probability >= LISTED_FROM)
    .slice(0, SHORTLIST_LENGTH)
    .map(({ cause, probability, verdict }) => ({
      id: cause,
      title: titleOf(state, cause),
      confidence: confidenceText(probability, verdict),
    }));
}

/** Where it stands: what settled it, or that nothing is decided yet; '' where the list says all. */
export function standing(state: State): string {
  const solved = settledBy(state.audit);
  if (solved) return sentence(solvedText(solved));
  return state.audit.ranking.undecided ? 'Nothing is decided yet.' : '';
}

export const isEmpty = (state: State): boolean => {
  const { answers, complaints } = bookOf(state);
  return answers.size === 0 && complaints.length === 0;
};

export function shortlistLines(state: State): string[] {
  if (isEmpty(state)) return ['Nothing was told yet, so no cause stands out.'];
  if (settledBy(state.audit)) return [standing(state)];
  const listed = shortlist(state);
  if (listed.length === 0) return ['No cause stands out so far.'];
  const lines = listed.map(({ title, confidence }, i) => `  ${i + 1}. ${title}: ${confidence}`);
  return ['So far:', ...lines, standing(state)].filter((line) => line !== '');
}
