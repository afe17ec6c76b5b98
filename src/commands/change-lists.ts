/** `FACT=VALUE` words that are no facts: complaints, trials, constraints, what was before, and short texts. */
import {
  ACT_IDS,
  ENTRIES_OF,
  isActId,
  isRemedyRef,
  OUTCOME_IDS,
  type Outcome,
  type Trial,
} from '../facts/acts.js';
import { parseAnswer } from '../facts/answer.js';
import type { FactBook } from '../facts/book.js';
import { CASE_LIMITS } from '../facts/case-limits.js';
import { FACT_IDS, isFactId } from '../facts/catalog.js';
import { COMPLAINT_IDS, type ComplaintId, isComplaintId } from '../facts/complaints.js';
import { CONSTRAINT_IDS, type ConstraintId } from '../facts/constraints.js';
import { didYouMean, nearest } from '../lib/nearest.js';
import { plainLine, plainText, quoted } from '../lib/sanitize.js';
import type { Problem } from '../lib/user-error.js';
import { remedyId, withTrial } from '../reasoning/trials.js';
import { CAUSES } from '../rules/index.js';

/** The book with the change, or what was wrong with it. */
type ListResult = { readonly book: FactBook } | { readonly problem: Problem };
type Change = (book: FactBook, value: string, path: string) => ListResult;

/** What stands for forgetting. */
export const FORGET = '?';

const TRIAL_EXAMPLE = 'trial=center-tilted:better';

/** `ACT:OUTCOME`, and in any order `stays` or `undone`, whose entry it was, and the complaint that was meant. */
const changeTrial: Change = (book, value) => {
  const [act = '', ...words] = value.split(':').map((word) => word.trim());
  const known = isActId(act) || (isRemedyRef(act) && REMEDIES.has(act));
  if (!known) return refused('trial', act, 'act', [...ACT_IDS, ...REMEDIES], TRIAL_EXAMPLE);
  if (words.length === 1 && words[0] === FORGET)
    return { book: { ...book, trials: book.trials.filter((trial) => trial.act !== act) } };
  const outcome = words.find((word): word is Outcome => OUTCOME_IDS.includes(word as Outcome));
  const rest = words.filter((word) => word !== outcome);
  if (outcome === undefined) return refused('trial', words[0] ?? '', 'outcome', OUTCOME_IDS, TRIAL_EXAMPLE);
  let trial: Trial = { act, outcome };
  for (const word of rest) {
    const entry = ENTRIES_OF.find((each) => each === word);
    if (entry !== undefined) trial = { ...trial, of: entry };
    else if (isComplaintId(word)) trial = { ...trial, complaint: word };
    else if (word === 'stays' || word === 'undone') trial = { ...trial, stays: word === 'stays' };
    else
      return refused(
        'trial',
        word,
        'part of a trial',
        [...ENTRIES_OF, 'stays', 'undone', ...COMPLAINT_IDS],
        TRIAL_EXAMPLE,
      );
  }
  return { book: withTrial(book, trial, CAUSES) };
};

const REMEDIES: ReadonlySet<string> = new Set(
  CAUSES.flatMap((cause) => cause.remedies.map((remedy) => remedyId(cause, remedy))),
);

/** A list of ids: `dull,boomy` sets it, `+dull` adds, `-dull` takes away, `?` empties. */
function listOf<Id extends string>(
  known: readonly Id[],
  what: string,
  read: (book: FactBook) => readonly Id[],
  write: (book: FactBook, ids: readonly Id[]) => FactBook,
): Change {
  return (book, value, path) => {
    const words = value === FORGET ? [] : value.split(/[\s,]+/).filter((word) => word !== '');
    const adds = words.some((word) => word.startsWith('+') || word.startsWith('-'));
    const ids = new Set<Id>(adds ? read(book) : []);
    for (const word of words) {
      const id = known.find((each) => each === word.replace(/^[+-]/, ''));
      if (id === undefined)
        return refused(path, word.replace(/^[+-]/, ''), what, known, `${path}=${known[0] ?? ''}`);
      if (word.startsWith('-')) ids.delete(id);
      else ids.add(id);
    }
    return {
      book: write(
        book,
        known.filter((id) => ids.has(id)),
      ),
    };
  };
}

const changeSolved: Change = (book, value) => {
  const { solved: _, ...open } = book;
  if (value === FORGET) return { book: open };
  if (value === 'yes' || value === 'true') return { book: { ...book, solved: true } };
  if (value === 'no' || value === 'false') return { book: { ...book, solved: false } };
  return refused('solved', value, 'answer', ['yes', 'no', FORGET], 'solved=yes');
};

const short =
  (key: 'title' | 'words', longest: number, clean: (text: string) => string): Change =>
  (book, value) => {
    const { [key]: _, ...rest } = book;
    const text = clean(value);
    if (Array.from(text).length > longest) {
      const accepted = `at most ${longest} letters`;
      return {
        problem: { where: key, what: 'the text is too long', accepted, example: `${key}='a low shelf'` },
      };
    }
    return { book: value === FORGET || text === '' ? rest : { ...book, [key]: text } };
  };

/** `before.enteredCenter=3 m`: a fact as it was when the trouble was heard. */
const changeBefore: Change = (book, value, path) => {
  const id = path.slice('before.'.length);
  if (!isFactId(id)) return refused(path, id, 'fact', FACT_IDS, 'before.enteredCenter=3.0');
  const before = new Map(book.before);
  if (value === FORGET) before.delete(id);
  else {
    const read = parseAnswer(id, value, { units: book.units });
    if ('refused' in read) return { problem: { where: path, ...read.refused } };
    before.set(id, read.answer);
  }
  return { book: { ...book, before } };
};

const CHANGES: Readonly<Record<string, Change>> = {
  trial: changeTrial,
  complaints: listOf<ComplaintId>(
    COMPLAINT_IDS,
    'complaint',
    (book) => book.complaints,
    (book, complaints) => ({ ...book, complaints }),
  ),
  absentComplaints: listOf<ComplaintId>(
    COMPLAINT_IDS,
    'complaint',
    (book) => book.absentComplaints,
    (book, absentComplaints) => ({ ...book, absentComplaints }),
  ),
  constraints: listOf<ConstraintId>(
    CONSTRAINT_IDS,
    'constraint',
    (book) => book.constraints,
    (book, constraints) => ({ ...book, constraints }),
  ),
  solved: changeSolved,
  title: short('title', CASE_LIMITS.titleLetters, plainLine),
  words: short('words', CASE_LIMITS.wordsLetters, plainText),
};

/** What changes the path, where it is no fact and no seat. */
export function listChange(path: string): Change | undefined {
  if (path.startsWith('before.')) return changeBefore;
  return Object.hasOwn(CHANGES, path) ? CHANGES[path] : undefined;
}

/** Paths besides facts and seats, for help and near misses. */
export const LIST_PATHS = Object.keys(CHANGES);

function refused(
  where: string,
  typed: string,
  what: string,
  known: readonly string[],
  example: string,
): ListResult {
  const shown =
    typed === ''
      ? `no ${what} is named`
      : `${quoted(typed)} is no ${what}${didYouMean(nearest(typed, known))}`;
  return { problem: { where, what: shown, accepted: known.slice(0, 60).join(', '), example } };
}
