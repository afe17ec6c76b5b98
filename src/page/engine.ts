/**
 * The engine behind the page: the same conversation, audit and words as on the command line, driven by messages.
 * Pure but for the clock that is handed in, so it runs in a worker and in a test alike.
 */
import type { Block } from '../explain/document.js';
import { documentHtml } from '../explain/document-html.js';
import { recordingCharts } from '../explain/measurement/charts.js';
import { measurementBlocks } from '../explain/measurement/words.js';
import { settingsBlocks } from '../explain/settings-words.js';
import { EMPTY_BOOK, type FactBook, withAnswer } from '../facts/book.js';
import { readCase, writeCase } from '../facts/case-file.js';
import { type FactId, factSpec, isFactId } from '../facts/catalog.js';
import { type ReadResponse, refusedResponse, responseFrom } from '../facts/responses.js';
import { seatsOf } from '../facts/seats.js';
import { addNote } from '../interview/complete.js';
import { begin, reply, stepBack } from '../interview/conversation.js';
import { isEmpty, shortlist, standing } from '../interview/help.js';
import { promptOf, reviewed, reviewLine } from '../interview/screens.js';
import { bookOf, push, type State, say, type Topic, top, withBook } from '../interview/state.js';
import { plainLine, quoted } from '../lib/sanitize.js';
import { auditSync } from '../reasoning/audit.js';
import { next } from '../reasoning/next.js';
import { solvedBy } from '../reasoning/trials.js';
import { withMeasurement } from '../recording/facts.js';
import { measure } from '../recording/measure.js';
import { playFile } from '../recording/play-file.js';
import { type Sheet, settingsFor } from '../settings/sheet.js';
import { metersOf } from '../settings/system.js';
import { documentOf } from './documents.js';
import { heardAt } from './heard.js';
import type { Ask, Change, PageView, Reply, ReplyTo } from './protocol.js';
import { roomView } from './room-view.js';

interface Engine {
  /** Throws a UserError (or CaseError) where a case cannot be read; the conversation then stands as it was. */
  readonly handle: <A extends Ask>(ask: A) => ReplyTo<A>;
}

export function createEngine(now: () => number): Engine {
  let files: Readonly<Record<string, string>> = {};
  const readResponse: ReadResponse = (path) => {
    const text = files[path.split(/[\\/]/).at(-1) ?? path];
    return text === undefined
      ? refusedResponse(`${quoted(path)} was not opened together with the case`)
      : responseFrom(text);
  };
  const settings = { full: false, now, readResponse };
  let state = begin(EMPTY_BOOK, settings);
  const to = (next: State): PageView => {
    state = next;
    return viewOfState(state);
  };
  const handlers: { readonly [K in Ask['do']]: (ask: Extract<Ask, { do: K }>) => Reply[K] } = {
    open: ({ caseText, files: beside = {} }) => {
      const before = files;
      files = beside;
      try {
        const book = caseText === undefined ? EMPTY_BOOK : readCase(caseText, { readResponse }).book;
        return to(begin(book, settings));
      } catch (error) {
        files = before;
        throw error;
      }
    },
    reply: ({ text }) => to(reply(state, text)),
    back: () => to(stepBack(state)),
    again: ({ topic }) => to(lookAgain(state, topic)),
    look: () => viewOfState(state),
    try: ({ change }) => roomView(auditSync(changed(bookOf(state), change), state.audit)),
    keep: ({ change }) => to(kept(state, change)),
    hear: ({ seat, change }) => heardAt(changed(bookOf(state), change), seat),
    remark: ({ seat, matches }) => to(remarked(state, seat, matches)),
    measure: ({ samples, rateHz, file, seat }) => {
      const place = seatsOf(bookOf(state)).seats[seat]?.name ?? null;
      const result = { file: plainLine(file), seat: place, ...measure(samples, rateHz) };
      const { book } = withMeasurement(bookOf(state), result, dayOf(now()));
      state = withBook({ ...state, said: [] }, book);
      const figures = recordingCharts(result.measurement, result.traces).map(
        (chart): Block => ({ kind: 'figure', chart }),
      );
      return { html: documentHtml([...measurementBlocks(result).map(deeper), ...figures]) };
    },
    settings: ({ change }) => {
      const book = changed(bookOf(state), change);
      const sheet = settingsFor(book);
      return {
        html: documentHtml(settingsBlocks(sheet, book.units).map(deeper)),
        entries: { ...change, facts: { ...change.facts, ...entriesOf(sheet) } },
      };
    },
    signal: () => Uint8Array.from(playFile('stereo')),
    write: ({ kind }) =>
      kind === 'case' ? writeCase(bookOf(state)) : documentOf(kind, state.audit, dayOf(now())),
  };
  return { handle: (ask) => handlers[ask.do](ask as never) as never };
}

function viewOfState(state: State): PageView {
  const prompt = promptOf(state);
  const screen = top(state);
  const topic = screen.kind === 'topic' ? screen.topic : undefined;
  const { undecided } = state.audit.ranking;
  return {
    question: {
      head: prompt.head,
      ask: prompt.ask,
      hint: prompt.hint,
      choices: prompt.choices,
      several: topic === 'complaints',
      long: topic === 'words',
      onEnter: prompt.onEnter,
      marks: prompt.marks,
    },
    said: state.said,
    shortlist: shortlist(state),
    standing: isEmpty(state) ? '' : standing(state),
    settledBy: isEmpty(state) || !undecided || solvedBy(bookOf(state)) ? '' : tellsMost(state),
    answers: reviewed(state).map((each) => ({ topic: each, text: reviewLine(state, each) })),
    atResult: screen.kind === 'result',
    title: bookOf(state).title ?? '',
    room: roomView(state.audit),
  };
}

/** The open answer or test that is worth most, by its label. */
function tellsMost({ audit }: State): string {
  const [best] = next(audit).candidates;
  return best === undefined ? '' : factSpec(best.fact).label;
}

function lookAgain(state: State, topic: string): State {
  const known = reviewed(state).find((each) => each === topic);
  if (known === undefined) return state;
  return push({ ...state, said: [], draft: '' }, { kind: 'topic', topic: known as Topic });
}

/** The book with another room: seats that follow from count and spacing are listed once one of them is moved. */
function changed(book: FactBook, { facts = {}, seats = {} }: Change): FactBook {
  let next = book;
  for (const [id, value] of Object.entries(facts)) {
    if (!isFactId(id) || typeof value !== 'number' || !Number.isFinite(value)) continue;
    const before = book.answers.get(id);
    // What was measured stays as sure as it was; a place by eye is a guess.
    const how = before && 'value' in before ? before.how : 'guessed';
    next = withAnswer(next, id, { value: withinPossible(id, value), how });
  }
  if (Object.keys(seats).length === 0) return next;
  const moved = seatsOf(book).seats.map((seat, i) => ({ ...seat, ...seats[i] }));
  return { ...next, seats: moved };
}

function withinPossible(id: FactId, value: number): number {
  const spec = factSpec(id);
  if (spec.kind !== 'number') return value;
  const [least, most] = spec.possible;
  return Math.min(most, Math.max(least, value));
}

function kept(state: State, change: Change): State {
  const next = withBook({ ...state, said: [], draft: '' }, changed(bookOf(state), change));
  return say(next, 'The room is taken over as you moved it; what was only moved by eye counts as a guess.');
}

/** Headings of a document of its own, below those of the page. */
const deeper = (block: Block): Block => (block.kind === 'heading' ? { ...block, level: 3 } : block);

/** The entries of a sheet as facts; SI. */
function entriesOf({ entries: { left, center, right, unit } }: Sheet): NonNullable<Change['facts']> {
  return unit === 'ms'
    ? { delayLeft: left, delayCenter: center, delayRight: right }
    : {
        enteredLeft: metersOf(left, unit),
        enteredCenter: metersOf(center, unit),
        enteredRight: metersOf(right, unit),
      };
}

const dayOf = (ms: number): string => new Date(ms).toISOString().slice(0, 10);

/** What an ear says of a sound that a page made: kept as a note, weighed by no rule. */
function remarked(state: State, seat: string, matches: boolean): State {
  const text = matches
    ? `Played as computed for “${seat}”: that is what is heard there.`
    : `Played as computed for “${seat}”: that is not what is heard there.`;
  return addNote({ ...state, said: [] }, '', text);
}
