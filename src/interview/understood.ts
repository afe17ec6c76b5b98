/** What free words told, put as one list: Enter keeps it, numbers strike, other words mend. */
import { listText } from '../explain/words.js';
import { CASE_LIMITS } from '../facts/case-limits.js';
import { type FactId, isFactId } from '../facts/catalog.js';
import { plainText } from '../lib/sanitize.js';
import type { Taken } from '../reading/candidates.js';
import { withReading } from '../reading/draft.js';
import { type Reading, readText } from '../reading/read.js';
import { after, refuse } from './complete.js';
import { bookOf, type Opening, pop, push, type Screen, type State, say, withBook } from './state.js';
import { typedNumbers } from './typed.js';

type Understood = Screen & { kind: 'understood' };

/** Puts what the words tell besides `answered`, where they tell anything that is not known yet. */
export function offerReading(state: State, words: string, answered?: FactId): State {
  const reading = readText(plainText(words.slice(0, CASE_LIMITS.readLetters)));
  const { answers, complaints, trials, constraints, solved } = bookOf(state);
  const known = new Set<string>([
    ...answers.keys(),
    ...complaints,
    ...trials.map(({ act }) => act),
    ...constraints,
    ...(solved === undefined ? [] : ['solved']),
    ...(answered === undefined ? [] : [answered]),
  ]);
  const items = allTaken(reading).filter(({ fact }) => !known.has(fact));
  return items.length === 0
    ? state
    : push(state, { kind: 'understood', items, reading, besides: answered !== undefined });
}

/** What was taken, and as lines of the same list what must not be done and whether the trouble is settled. */
const allTaken = ({ taken, constraints, solved }: Reading): readonly Taken[] => [
  ...taken,
  ...[...constraints, ...(solved === undefined ? [] : ['solved'])].map(
    (fact): Taken => ({
      phrase: '',
      start: 0,
      fact,
      value: fact !== 'solved' || solved === true,
      how: 'recalled',
      negated: false,
    }),
  ),
];

/** Enter: all of the list goes into the book. */
export function keepUnderstood(state: State, { items, reading }: Understood): State {
  const below = pop(state);
  const kept = new Set(items);
  const told = new Set(items.map(({ fact }) => fact));
  // Nothing is kept that the list did not show.
  const { solved, ...shown } = reading;
  const whole = withReading(bookOf(below), {
    ...shown,
    constraints: reading.constraints.filter((id) => told.has(id)),
    taken: reading.taken.filter((each) => kept.has(each)),
    trials: reading.trials.filter(({ act, test }) => told.has(act ?? '') || told.has(test ?? '')),
    unsure: [],
    ...(solved !== undefined && told.has('solved') ? { solved } : {}),
  });
  const units = reading.units !== undefined && !state.unitsKnown ? reading.units : whole.units;
  const given = new Set<Opening>(state.given);
  if (reading.units !== undefined) given.add('units');
  if (whole.complaints.length > 0) given.add('complaints');
  const next = withBook(
    { ...below, given, unitsKnown: given.has('units') || state.unitsKnown },
    { ...whole, units },
  );
  return goOn(say(next, `= ${items.length === 1 ? 'kept' : `all ${items.length} kept`}`), items);
}

/** Numbers strike lines, 0 all of them; other words are read for what they mend. */
export function takeUnderstood(state: State, screen: Understood, typed: string): State {
  const numbers = typedNumbers(typed)?.map(Number);
  if (numbers?.includes(0)) return goOn(say(pop(state), '= nothing of it kept'), []);
  if (numbers !== undefined) {
    const wrong = numbers.find((number) => number > screen.items.length);
    if (wrong !== undefined) return refuse(state, typed, [`There is no line ${wrong}.`]);
    const items = screen.items.filter((_, place) => !numbers.includes(place + 1));
    if (items.length === 0) return goOn(say(pop(state), '= nothing of it kept'), []);
    const struck = numbers.length === 1 ? 'line' : 'lines';
    return push(
      say(pop(state), `= struck: ${struck} ${listText(numbers.map(String))}; the others are numbered anew`),
      { ...screen, items },
    );
  }
  const mended = readText(plainText(typed));
  if (allTaken(mended).length === 0)
    return refuse(state, typed, ['That says nothing that can be kept.', STRIKE]);
  return push(pop(state), { ...screen, ...mendedBy(screen, mended) });
}

const STRIKE = 'Enter keeps the list; numbers strike lines; 0 strikes all.';

/** What is said again replaces what was understood of the same thing. */
function mendedBy({ items, reading }: Understood, mended: Reading): Pick<Understood, 'items' | 'reading'> {
  const again = new Set(allTaken(mended).map(({ fact }) => fact));
  const kept = items.filter(({ fact }) => !again.has(fact));
  const trials = [
    ...reading.trials.filter(({ act, test }) => !again.has(act ?? '') && !again.has(test ?? '')),
    ...mended.trials,
  ];
  return {
    items: [...kept, ...allTaken(mended)],
    reading: {
      ...reading,
      units: mended.units ?? reading.units,
      taken: [...kept, ...mended.taken],
      constraints: [...reading.constraints, ...mended.constraints],
      trials,
      ...(mended.solved === undefined ? {} : { solved: mended.solved }),
    },
  };
}

/** The question below may be answered by now; then the next one is put. */
function goOn(state: State, items: readonly Taken[]): State {
  const [base] = state.screens;
  const isTold = base.kind === 'topic' && items.some(({ fact }) => isFactId(fact) && fact === base.topic);
  const isOver =
    base.kind === 'topic' &&
    (base.topic === 'complaints' || base.topic === 'units') &&
    state.given.has(base.topic);
  return after(state, isTold || isOver || undefined);
}
