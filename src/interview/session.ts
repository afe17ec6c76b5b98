/** Drives a conversation: shows, reads, saves after every line, reports. */
import { plural } from '../explain/words.js';
import type { FactBook } from '../facts/book.js';
import type { Audit } from '../reasoning/audit.js';
import type { Ranking } from '../reasoning/rank.js';
import { solvedBy } from '../reasoning/trials.js';
import { reply, stepBack } from './conversation.js';
import { OPENING_SCRIPT, shortlistLines } from './help.js';
import type { Keeper, Prompt, Terminal } from './port.js';
import { promptOf } from './screens.js';
import { bookOf, push, type State, say, type Written } from './state.js';

interface Session {
  readonly terminal: Terminal;
  readonly store: Keeper;
  /** Shows the report of an audit: at the end, and if `isLive` at the first result too. */
  readonly report: (audit: Audit) => Promise<void>;
  /** Writes the result down beside the case; returns where it stands, or what went wrong, in words. */
  readonly write?: (written: Written, audit: Audit) => Promise<string>;
  /** The result goes to the same eyes as the questions, so it is shown as soon as it is there. */
  readonly isLive: boolean;
}

export interface Ending {
  readonly kind: 'finished' | 'saved' | 'interrupted';
  readonly state: State;
}

/** What is told before the first question. */
export const openingLines = (): string[] => [...OPENING_SCRIPT];

/** What is told when an interview or a case is taken up where it stands. */
export function goingOnLines(start: State, warnings: readonly string[]): string[] {
  const asked =
    start.history.length === 0 ? '' : `, ${plural(start.history.length, 'question')} asked so far`;
  return [
    `Going on: ${plural(bookOf(start).answers.size, 'fact')} known${asked}. r reviews them, Enter alone lists all marks.`,
    ...warnings,
    ...shortlistLines(start),
  ];
}

export async function hold(session: Session, start: State): Promise<Ending> {
  const { terminal } = session;
  let state = saved(session, start);
  let shown: Prompt | undefined;
  let reported: FactBook | undefined;
  let told: Ranking | undefined;
  const report = async (): Promise<void> => {
    await session.report(state.audit);
    reported = bookOf(state);
  };
  while (state.ending === undefined) {
    terminal.tell(state.said);
    if (state.reportDue && session.isLive) {
      // The whole report once, and when it is solved; after a home test the change is enough, and the whole again at the end.
      if (reported === undefined || (solvedBy(bookOf(state)) && !solvedBy(reported))) await report();
      else terminal.tell(isMoved(state.audit.ranking, told) ? shortlistLines(state) : [NOTHING_MOVED]);
      told = state.audit.ranking;
    }
    state = { ...state, reportDue: false };
    const prompt = promptOf(state);
    const typed = await terminal.ask(prompt, isSame(prompt, shown));
    shown = prompt;
    if ('ended' in typed) return { kind: 'interrupted', state };
    state = 'escape' in typed ? stepBack(state) : reply(state, typed.text);
    state = await written(session, saved(session, moved(session, state)));
  }
  terminal.tell(state.said);
  if (state.ending === 'finished' && reported !== bookOf(state)) await report();
  return { kind: state.ending, state };
}

async function written({ write }: Session, state: State): Promise<State> {
  const { write: what, ...rest } = state;
  if (what === undefined) return state;
  return say(rest, write ? await write(what, state.audit) : 'This cannot be written here.');
}

const NOTHING_MOVED = 'No cause moved by that; it may tell something together with another answer.';
/** Less than a point of percent is not seen. */
const SEEN_FROM = 0.01;

function isMoved(now: Ranking, before: Ranking | undefined): boolean {
  const was = new Map(before?.causes.map(({ cause, probability }) => [cause, probability]));
  return now.causes.some(
    ({ cause, probability }) => Math.abs(probability - (was.get(cause) ?? 0)) >= SEEN_FROM,
  );
}

const isSame = (a: Prompt, b: Prompt | undefined): boolean =>
  b !== undefined && a.ask === b.ask && a.head === b.head && a.choices.join('\n') === b.choices.join('\n');

function moved({ store }: Session, state: State): State {
  const { moveTo, ...rest } = state;
  if (moveTo === undefined) return state;
  const trouble = store.moveTo(moveTo);
  return trouble === undefined ? rest : push(say(rest, `Not there. ${trouble}.`), { kind: 'place' });
}

/** Saves; the first time that fails, another place is offered. After that it is tried again silently. */
function saved({ store }: Session, state: State): State {
  const trouble = store.save({
    book: bookOf(state),
    order: state.history,
    put: [...state.put],
    parked: Object.fromEntries(state.parked),
  });
  if (trouble === undefined) {
    const { trouble: before, ...rest } = state;
    return before === undefined ? state : say(rest, '= saved');
  }
  return trouble === state.trouble || state.ending ? state : asked(state, trouble);
}

function asked(state: State, trouble: string): State {
  const told = say(
    { ...state, trouble },
    `The case cannot be saved. ${trouble}.`,
    'Nothing is lost: the interview goes on in memory, and every answer tries again.',
  );
  const isAsked = state.screens.at(-1)?.kind === 'place';
  return isAsked ? told : push(told, { kind: 'place' });
}
