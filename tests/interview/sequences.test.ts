/** Interviews as sequences of whatever somebody may type. */
import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { EMPTY_BOOK } from '../../src/facts/book.js';
import { readCase, writeCase } from '../../src/facts/case-file.js';
import { begin, reply, stepBack } from '../../src/interview/conversation.js';
import { MARKS } from '../../src/interview/marks.js';
import { promptOf } from '../../src/interview/screens.js';
import { bookOf, type State, top } from '../../src/interview/state.js';
import { auditSync } from '../../src/reasoning/audit.js';
import { SETTINGS } from './talk.js';

type Action = { readonly type: string } | 'esc' | 'resume';

const typed = fc.oneof(
  { weight: 8, arbitrary: fc.integer({ min: 1, max: 9 }).map(String) },
  { weight: 3, arbitrary: fc.constantFrom(...MARKS.map(({ key }) => key).filter((key) => key !== 's')) },
  {
    weight: 2,
    arbitrary: fc.constantFrom('', '3 m', '10 ft', '80 Hz', '1.2 ms', '-3 dB', '20 cm left', '0'),
  },
  {
    weight: 1,
    arbitrary: fc.constantFrom('yes', 'no', 'back', 'quit', '60 ft', '4 kg', '1 2 3', '__proto__'),
  },
  { weight: 1, arbitrary: fc.string({ maxLength: 30, unit: 'binary' }) },
);
const action: fc.Arbitrary<Action> = fc.oneof(
  { weight: 12, arbitrary: typed.map((type) => ({ type })) },
  { weight: 1, arbitrary: fc.constant<Action>('esc') },
  { weight: 1, arbitrary: fc.constant<Action>('resume') },
);

/** What a new process finds after the old one was killed. */
function resumed(state: State): State {
  const { book } = readCase(writeCase(bookOf(state)));
  return begin(book, state.settings, { order: state.history, put: [...state.put] });
}

function apply(state: State, each: Action): State {
  if (each === 'resume') return resumed(state);
  const { ending: _, moveTo: __, ...going } = each === 'esc' ? stepBack(state) : reply(state, each.type);
  return going;
}

const order = (state: State): string => state.audit.ranking.causes.map(({ cause }) => cause).join();

it('whatever is typed, nothing breaks, every promise is kept, and the saved case says the same', () => {
  fc.assert(
    fc.property(fc.array(action, { maxLength: 25 }), fc.boolean(), (actions, full) => {
      let state = begin(EMPTY_BOOK, { ...SETTINGS, full });
      for (const each of actions) {
        state = apply(state, each);
        const prompt = promptOf(state);
        expect(prompt.ask.length).toBeGreaterThan(0);
        expect(state.screens.length).toBeLessThan(8);
        expect(new Set(state.history).size).toBe(state.history.length);
        if (top(state).kind === 'topic') expect(state.history.length).toBeLessThanOrEqual(state.most);
      }
      const saved = auditSync(readCase(writeCase(bookOf(state))).book);
      expect(saved.ranking.causes.map(({ cause }) => cause).join()).toBe(order(state));
      for (const [i, cause] of saved.ranking.causes.entries())
        expect(cause.decibans).toBeCloseTo(state.audit.ranking.causes[i]?.decibans ?? Number.NaN, 9);
    }),
    { numRuns: 60 },
  );
}, 60_000);
