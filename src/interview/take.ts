/** A typed line taken as the answer to the question on the screen. */
import { parseAnswer } from '../facts/answer.js';
import { CASE_LIMITS } from '../facts/case-limits.js';
import { type FactId, factSpec } from '../facts/catalog.js';
import { COMPLAINT_IDS, COMPLAINTS, isComplaintId } from '../facts/complaints.js';
import { plainLine, plainText } from '../lib/sanitize.js';
import { problemText } from '../lib/user-error.js';
import { answerIn } from '../reading/answer.js';
import { accept, addNote, after, complete, edited, refuse } from './complete.js';
import { named, takeEntry } from './entries.js';
import { acceptedHere, entriesOf } from './screens.js';
import { bookOf, pop, push, type Screen, type State, type Topic, withBook } from './state.js';
import { matchEntry, typedNumbers } from './typed.js';
import { offerReading, takeUnderstood } from './understood.js';

/** @param raw the same with its line breaks */
export function take(state: State, screen: Screen, typed: string, raw = typed): State {
  switch (screen.kind) {
    case 'topic':
      return takeTopic(state, screen.topic, typed, raw);
    case 'understood':
      return takeUnderstood(state, screen, typed);
    case 'note':
      return after(addNote(pop(state), screen.about, typed));
    case 'name': {
      return named(state, screen, plainLine(typed).slice(0, CASE_LIMITS.titleLetters));
    }
    case 'place':
      return { ...pop(state), moveTo: typed };
    default:
      return takeEntry(state, screen, typed);
  }
}

function takeTopic(state: State, topic: Topic, typed: string, raw: string): State {
  if (topic === 'words') {
    const words = plainText(raw).slice(0, CASE_LIMITS.wordsLetters);
    return offerReading(complete(withBook(state, { ...bookOf(state), words }), topic), raw);
  }
  if (topic === 'complaints') return takeComplaints(state, typed, raw);
  if (topic === 'units') return takeEntry(state, { kind: 'topic', topic }, typed);
  return takeFact(state, topic, typed, raw);
}

function takeComplaints(state: State, typed: string, raw: string): State {
  const parts = typedNumbers(typed) ?? typed.split(/,|;| and /).map((part) => part.trim());
  const entries = COMPLAINT_IDS.map((id) => ({ value: id, label: COMPLAINTS[id].title }));
  const found: string[] = [];
  for (const part of parts.filter((each) => each !== '')) {
    const match = matchEntry(part, entries);
    if ('refused' in match) {
      const told = offerReading(state, raw);
      return told === state ? refuse(state, typed, [match.refused, acceptedHere(state)]) : told;
    }
    found.push(match.value);
  }
  const complaints = COMPLAINT_IDS.filter((id) => isComplaintId(id) && found.includes(id));
  const changed = complaints.join() !== bookOf(state).complaints.join();
  const book = { ...bookOf(state), complaints };
  return complete(
    edited(withBook(state, book), changed && bookOf(state).complaints.length > 0),
    'complaints',
  );
}

function takeFact(state: State, id: FactId, typed: string, raw: string): State {
  const book = bookOf(state);
  const spec = factSpec(id);
  const result = parseAnswer(id, typed, { units: book.units });
  if ('refused' in result) {
    const answer = answerIn(raw, id, book.units);
    if (answer !== undefined) return offerReading(accept(state, id, answer), raw, id);
    const told = offerReading(state, raw);
    if (told !== state) return told;
    const { what, accepted, example } = result.refused;
    if (spec.kind === 'choice') {
      // What is near is named by its line: nobody who reads the question has seen an id.
      const match = matchEntry(typed, entriesOf(state, { kind: 'topic', topic: id }));
      return refuse(state, typed, ['refused' in match ? match.refused : sentence(what), acceptedHere(state)]);
    }
    return refuse(state, typed, [problemText({ where: spec.label, what, accepted, example })]);
  }
  if (spec.kind === 'file' && 'value' in result.answer) {
    const found = state.settings.readResponse?.(String(result.answer.value)) ?? NO_FOLDER;
    if ('refused' in found)
      return refuse(state, typed, [problemText({ where: spec.label, ...found.refused })]);
  }
  if (result.remark !== undefined) {
    return push(state, {
      kind: 'sure',
      fact: id,
      answer: result.answer,
      remark: `You said ${result.remark}`,
    });
  }
  const taken =
    result.bareUnit === undefined ? '' : ` (taken in ${UNIT_NAMES[result.bareUnit] ?? result.bareUnit})`;
  return accept(state, id, result.answer, `${result.echo}${taken}`);
}

const NO_FOLDER = {
  refused: {
    what: 'this interview has no case file yet, so there is no folder to look for it in',
    accepted: '? for not known',
  },
};
const UNIT_NAMES: Readonly<Record<string, string>> = { m: 'meters', ft: 'feet', in: 'inches' };

const sentence = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
