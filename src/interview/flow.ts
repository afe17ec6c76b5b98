/** Which question comes next, and when to stop. */

import { FACT_IDS, type FactId, factSpec } from '../facts/catalog.js';
import { contradictions } from '../facts/contradictions.js';
import { aboutMinutesText, plural } from '../facts/format.js';
import { canBeAsked, isTest, makesSense } from '../reasoning/hypotheses.js';
import { type Next, next, questionsLeft } from '../reasoning/next.js';
import { spokenVerdict } from './spoken.js';
import {
  bookOf,
  isOpening,
  OPENING,
  type Opening,
  push,
  type Screen,
  type State,
  say,
  type Topic,
  top,
} from './state.js';

/** A caller answers some twenty questions before patience ends (judgement); `--full` knows no bound. */
export const MOST_QUESTIONS = 20;
/** So many more when somebody wants more than pays. */
export const MORE_QUESTIONS = 10;

/** The minutes left never grow unsaid, and by less than this not at all (judgement). */
const UNSAID_MINUTES = 1;
const MORE_OPEN = 'With that, more is worth asking: it takes a little longer.';

const MS_PER_MINUTE = 60_000;

/** Minutes left of the time given; infinite where none was given. */
function minutesLeft({ settings, startedAtMs }: State): number {
  const { minutes } = settings;
  if (minutes === undefined) return Number.POSITIVE_INFINITY;
  return Math.max(0, minutes - (settings.now() - startedAtMs) / MS_PER_MINUTE);
}

/** What the planner says now. */
function proposal(state: State): Next {
  const left = minutesLeft(state);
  return next(state.audit, {
    questionsOnly: true,
    full: state.settings.full,
    ...(Number.isFinite(left) ? { minutesLeft: left } : {}),
    ...(state.family === undefined ? {} : { family: state.family }),
  });
}

interface Coming {
  readonly topic?: Topic;
  readonly aheadMinutes?: number;
  /** Why nothing more is asked. */
  readonly because: string;
}

const openingsLeft = ({ history, given }: State): Opening[] =>
  OPENING.filter((topic) => !history.includes(topic) && !given.has(topic));

function coming(state: State): Coming {
  const [opening] = openingsLeft(state);
  if (opening) return { topic: opening, because: '' };
  const again = state.redo.find((topic) => isOpening(topic) || makesSense(bookOf(state), topic));
  if (again) return { topic: again, because: '' };
  if (state.history.length >= state.most) return { because: enough(state) };
  const proposed = proposal(state);
  if (proposed.kind !== 'stop' && proposed.fact)
    return { topic: proposed.fact, because: '', aheadMinutes: aheadMinutes(proposed) };
  const [more] = proposed.candidates;
  if (state.eager && more) return { topic: more.fact, because: '' };
  return { because: proposed.because };
}

/** Minutes of the question in hand and of all others that pay as things stand. */
function aheadMinutes({ fact, candidates }: Next): number {
  const paying = candidates.filter((c) => c.kind === 'question' && (c.netMinutes > 0 || c.fact === fact));
  return paying.reduce((sum, c) => sum + c.minutes, 0);
}

function enough({ settings, history }: State): string {
  const more = settings.full ? '' : ' There is more to ask for whoever wants it.';
  return `After ${history.length} questions it is enough for one sitting.${more}`;
}

/** Puts whatever comes next once an answer is complete: a contradiction, the next question, or the result. */
export function advance(state: State): State {
  if (state.screens.length > 1) return state;
  const { topic, because, aheadMinutes: ahead } = coming(state);
  if (topic === undefined) return atResult(state, because);
  const redo = state.redo.slice(state.redo.indexOf(topic) + 1);
  const { aheadMinutes: before, ...rest } = state;
  const growth = before === undefined || ahead === undefined ? 0 : ahead - before;
  const asking: State = {
    ...rest,
    screens: [{ kind: 'topic', topic }],
    redo,
    draft: '',
    ...(ahead === undefined
      ? {}
      : { aheadMinutes: ahead - (growth <= UNSAID_MINUTES ? Math.max(0, growth) : 0) }),
  };
  const told = growth > UNSAID_MINUTES ? say(asking, MORE_OPEN) : asking;
  return clashing({ ...told, most: bound(told) });
}

/** Shows the result, with the reason why nothing more is asked. */
export function atResult(state: State, because: string): State {
  const [base] = state.screens;
  const over = base.kind === 'topic' ? base.topic : base.kind === 'result' ? base.over : undefined;
  const isOpen = over !== undefined && !state.history.includes(over);
  const result: Screen = { kind: 'result', ...(isOpen ? { over } : {}) };
  const shown: State = { ...state, screens: [result], draft: '', reportDue: true, eager: false };
  const spoken = state.settings.call ? [`Say: “${spokenVerdict(state.audit)}”`] : [];
  return clashing(say(shown, because, ...spoken));
}

/** The number of questions never grows: what is promised is kept. */
function bound(state: State): number {
  const openings = openingsLeft(state).length;
  const left = state.settings.full ? fullLeft(state) : questionsLeft(state.audit);
  return Math.min(state.most, state.history.length + state.redo.length + openings + left);
}

function fullLeft({ audit }: State): number {
  return FACT_IDS.filter((id) => !isTest(id) && canBeAsked(audit.book, id)).length;
}

/** A contradiction that was not put yet interrupts, once. */
export function clashing(state: State): State {
  const clash = contradictions(bookOf(state)).find(({ id }) => !state.put.has(id));
  if (!clash || top(state).kind === 'clash') return state;
  const put = new Set([...state.put, clash.id]);
  const topics: Topic[] = [...clash.facts, ...(clash.complaints?.length ? (['complaints'] as const) : [])];
  return push({ ...state, put }, { kind: 'clash', text: clash.text, topics });
}

/** "Question 7, at most 12 more, about 4 minutes"; with a limit of time what is left of it. */
export function progress(state: State): string {
  const number = state.history.length + 1;
  const more = Math.max(0, Math.min(state.most, bound(state)) - number);
  const count = `Question ${number}, ${more === 0 ? 'the last one' : `at most ${more} more`}`;
  const left = minutesLeft(state);
  if (Number.isFinite(left)) return `${count}, ${plural(Math.ceil(left), 'minute')} left`;
  const { aheadMinutes: ahead } = state;
  return ahead === undefined || more === 0 ? count : `${count}, ${aboutMinutesText(ahead)}`;
}

/** The topic of the conversation after an answer; home tests leave it as it is. */
export function familyAfter(state: State, id: FactId): Pick<State, 'family'> {
  const { family } = factSpec(id);
  if (family !== 'tests') return { family };
  return state.family === undefined ? {} : { family: state.family };
}
