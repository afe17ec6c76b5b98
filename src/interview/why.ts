/** Why a question is asked: what its answers would do to the causes, minutes saved, minutes it costs. */

import { aboutMinutesText, listText, minutesText } from '../explain/words.js';
import { withAnswer } from '../facts/book.js';
import { type FactId, factSpec } from '../facts/catalog.js';
import { auditSync } from '../reasoning/audit.js';
import { probabilityText } from '../reasoning/decibans.js';
import { possibleAnswers } from '../reasoning/hypotheses.js';
import { type Candidate, candidatesOf } from '../reasoning/worth.js';
import type { CauseId } from '../rules/cause-ids.js';
import { bookOf, type State } from './state.js';

/** Causes named before the list gets long. */
const MOST_NAMED = 3;
/** Percent points that are worth naming. */
const NAMED_FROM = 0.02;

export function whyLines(state: State, id: FactId): string[] {
  const spec = factSpec(id);
  const asked = withAnswer(bookOf(state), id, undefined);
  const audit = auditSync(asked, state.audit);
  const candidate = candidatesOf({ ...audit }, [id])[0];
  const moves = moveLines(state, id);
  const lines = [spec.why, ...moves];
  if (!candidate && moves.length > 0)
    return [...lines, 'It is asked to picture the system; by itself it saves less time than it takes.'];
  if (!candidate) return [...lines, 'Nothing that is open hangs on it any more.'];
  return [...lines, worthLine(candidate), ...togetherLine(candidate)];
}

/** How far each answer would move the causes it moves most. */
function moveLines(state: State, id: FactId): string[] {
  const asked = auditSync(withAnswer(bookOf(state), id, undefined), state.audit);
  const outcomes = possibleAnswers(id).map((answer) =>
    auditSync(withAnswer(bookOf(state), id, answer), asked),
  );
  const moved = asked.ranking.causes.map(({ cause, probability }) => {
    const all = outcomes.map((each) => each.ranking.causes.find((c) => c.cause === cause)?.probability ?? 0);
    return { cause, probability, low: Math.min(probability, ...all), high: Math.max(probability, ...all) };
  });
  return moved
    .filter(({ low, high }) => high - low >= NAMED_FROM)
    .sort((a, b) => b.high - b.low - (a.high - a.low))
    .slice(0, MOST_NAMED)
    .map(
      ({ cause, probability, low, high }) =>
        `- ${titleOf(state, cause)}: ${probabilityText(probability)} now; after the answer from ${plain(low)} to ${plain(high)}.`,
    );
}

const plain = (probability: number): string => probabilityText(probability).replace('about ', '');

function worthLine({ savesMinutes, minutes }: Candidate): string {
  const saves =
    savesMinutes < 0.25 ? 'It saves hardly a minute' : `It saves ${aboutMinutesText(savesMinutes)}`;
  return `${saves} of looking on average, and takes ${minutesText(minutes)}.`;
}

function togetherLine({ together }: Candidate): string[] {
  if (together.length === 0) return [];
  return [`It tells something together with: ${listText(together.map((id) => factSpec(id).label))}.`];
}

export function titleOf({ audit }: State, id: CauseId): string {
  return audit.causes.find((cause) => cause.id === id)?.title ?? id;
}
