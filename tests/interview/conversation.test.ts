import { describe, expect, it } from 'vitest';
import { EMPTY_BOOK, type FactBook, withAnswer } from '../../src/facts/book.js';
import { type FactId, factSpec, isFactId } from '../../src/facts/catalog.js';
import { COMPLAINTS, type ComplaintId } from '../../src/facts/complaints.js';
import { begin } from '../../src/interview/conversation.js';
import { MOST_QUESTIONS, progress } from '../../src/interview/flow.js';
import { MARKS } from '../../src/interview/marks.js';
import { entriesOf, promptOf } from '../../src/interview/screens.js';
import { bookOf, type Screen, type State, top } from '../../src/interview/state.js';
import { isTest } from '../../src/reasoning/hypotheses.js';
import { answer, asking, askOf, ESC, inHand, opened, SETTINGS, saidBy, type } from './talk.js';

/** The number of a complaint in its list. */

describe('the opening', () => {
  it('keeps the complaint word for word, takes several complaints by number, asks the units once', () => {
    const kinds = type(begin(EMPTY_BOOK, SETTINGS), 'Mein Center "nuschelt" <sehr>', '1, 2 and 3');
    const numbers = (['voice-unclear-off-side', 'image-collapses-to-center', 'dull'] as const).map(
      (id) => promptOf(kinds).choices.indexOf(COMPLAINTS[id].title) + 1,
    );
    const state = type(kinds, `${numbers[0]}, ${numbers[1]} and ${numbers[2]}`, '2');
    expect(bookOf(state)).toMatchObject({
      words: 'Mein Center "nuschelt" <sehr>',
      complaints: ['voice-unclear-off-side', 'image-collapses-to-center', 'dull'],
      units: 'metric',
    });
  });

  it('takes complaints by name or beginning, and refuses a number that is not there', () => {
    const state = type(begin(EMPTY_BOOK, SETTINGS), '', '99');
    expect(saidBy(state)).toContain('There is no line 99');
    expect(saidBy(type(state, '3', '99'))).toContain('There is no line 99');
    expect(bookOf(type(state, 'boomy, hol')).complaints).toEqual(['boomy', 'hollow']);
  });

  it('goes on without any complaint when the owner cannot say', () => {
    const first = inHand(type(begin(EMPTY_BOOK, SETTINGS), '?', '?', '?'));
    expect(isFactId(first ?? '')).toBe(true);
    expect(isTest(first as FactId)).toBe(false);
  });

  it('asks what bears on the complaint: no two unlike complaints begin with the same questions', () => {
    const firstOf = (complaint: ComplaintId): string => {
      let state = begin({ ...EMPTY_BOOK, complaints: [complaint] }, SETTINGS, {
        order: ['words', 'complaints', 'units'],
        put: [],
      });
      const asked: (string | undefined)[] = [];
      for (let i = 0; i < 4 && top(state).kind !== 'result'; i++) {
        asked.push(inHand(state));
        state = type(state, '?');
      }
      return asked.join(' ');
    };
    const complaints = ['hollow', 'voice-low-or-high', 'rattles', 'no-middle', 'boomy'] as const;
    expect(new Set(complaints.map(firstOf)).size).toBe(complaints.length);
  });
});

/** One question of every kind, and a screen that interrupts. */
const KINDS: Readonly<Record<string, () => State>> = {
  words: () => begin(EMPTY_BOOK, SETTINGS),
  complaints: () => type(begin(EMPTY_BOOK, SETTINGS), ''),
  units: () => type(begin(EMPTY_BOOK, SETTINGS), '', '1', '1'),
  choice: () => asking('seating'),
  length: () => asking('seatDistance'),
  'length with a side': () => asking('mainSeatOffset'),
  frequency: () => asking('centerCrossover'),
  count: () => asking('seatCount'),
  file: () => asking('responseCenter'),
  'home test': () => asking('testMuteDisplay'),
  unusual: () => type(asking('seatDistance'), '60 ft'),
  review: () => type(asking('seating'), 'r'),
  note: () => type(asking('seating'), 'n'),
  result: () => type(asking('seating'), 'f'),
  clash: () =>
    type(asking('seatCount', withAnswer(EMPTY_BOOK, 'seating', { value: 'single-seat', how: 'read' })), '3'),
};

describe('every mark at every kind of question', () => {
  for (const [kind, start] of Object.entries(KINDS))
    for (const { key, action } of MARKS)
      it(`${key} at ${kind}`, () => {
        const before = start();
        let state = type(before, key);
        // Where the letter begins an answer it is asked which was meant; the letter again insists on the mark.
        if (top(state).kind === 'meant') state = type(state, key);
        expect(state.draft).toBe('');
        expectDone(action, before, state, kind);
      });

  function expectDone(action: string, before: State, state: State, kind: string): void {
    const at = (screen: Screen['kind']): void => expect(top(state).kind).toBe(screen);
    switch (action) {
      case 'help':
      case 'why':
      case 'shortlist':
        expect(state.said.length).toBeGreaterThan(0);
        expect(top(state)).toEqual(top(before));
        return;
      case 'review':
        at('review');
        return;
      case 'note':
        at('note');
        return;
      case 'save':
        expect(state.ending).toBe('saved');
        return;
      case 'finish':
        if (kind === 'result') expect(type(state, '').ending).toBe('finished');
        else at('result');
        return;
      case 'unknown':
        if (kind === 'result') expect(state.said.length).toBeGreaterThan(0);
        else expect(state).not.toEqual(before);
        return;
      case 'back':
        if (kind === 'words') expect(saidBy(state)).toContain('first question');
        else expect(top(state)).not.toEqual(top(before));
        return;
    }
  }

  it('unknown is kept as asked and not known, whatever the kind', () => {
    for (const id of ['seating', 'seatDistance', 'centerCrossover', 'responseCenter'] as const)
      expect(answer(type(asking(id), '?'), id)).toBe('unknown');
  });

  it('Esc goes back as < does', () => {
    const state = type(opened(), '1');
    expect(inHand(type(state, ESC))).toBe(inHand(type(state, '<')));
  });

  it('whole words do what the marks do where they are no answer', () => {
    expect(type(opened(), 'quit').ending).toBe('saved');
    expect(top(type(opened(), 'review')).kind).toBe('review');
    expect(saidBy(type(asking('seating'), 'help'))).toContain('How to find out');
  });
});

describe('a mark that could be an answer', () => {
  it('n where "no" is a choice: asks, and takes either', () => {
    const state = type(asking('troubleWhenLoud'), 'n');
    expect(askOf(state)).toContain('“n” can mean');
    expect(answer(type(state, '1'), 'troubleWhenLoud')).toBe('no');
    expect(top(type(state, '2')).kind).toBe('note');
    expect(top(type(state, 'n')).kind).toBe('note');
  });

  it('l and r where a side can be told', () => {
    expect(promptOf(type(asking('fullRangeMidSide'), 'l')).choices[0]).toBe('left, as seen from the seat');
    const offset = type(asking('mainSeatOffset'), 'r');
    expect(askOf(offset)).toContain('can mean');
    expect(saidBy(type(offset, '1'))).toContain('example');
  });

  it('another answer typed at "which is meant" is taken as the answer', () => {
    expect(answer(type(asking('troubleWhenLoud'), 'n', 'yes'), 'troubleWhenLoud')).toBe('yes');
  });

  it('back leaves the question as it was', () => {
    const state = type(asking('troubleWhenLoud'), 'n', '<');
    expect(inHand(state)).toBe('troubleWhenLoud');
    expect(answer(state, 'troubleWhenLoud')).toBeUndefined();
  });

  it('a first word that several lines share stands for none of them', () => {
    expect(top(type(asking('voiceDirection'), 'f')).kind).toBe('result');
  });
});

describe('typed answers', () => {
  it('takes a list number, a value, a beginning', () => {
    for (const typed of ['2', 'one-row', 'one row', 'one r'])
      expect(answer(type(asking('seating'), typed), 'seating')).toBe('one-row');
  });

  it('suggests the near miss by its line, never by an id', () => {
    const state = type(asking('seating'), 'singel-seat');
    expect(saidBy(state)).toContain('Did you mean “one seat only”?');
    expect(saidBy(state)).not.toContain('single-seat');
    expect(answer(state, 'seating')).toBeUndefined();
  });

  it('echoes a length in both systems and says which unit a bare number got', () => {
    const imperial = { ...EMPTY_BOOK, units: 'imperial' as const };
    const state = type(asking('seatDistance', imperial), '10');
    expect(saidBy(state)).toContain('10 ft (3.05 m) (taken in feet)');
  });

  it('asks an unusual value once more, and takes it when it is right', () => {
    const asked = type(asking('seatDistance'), '60 ft');
    expect(askOf(asked)).toMatch(/^You said 18\.29 m \(60 ft\).*Is that right\?$/);
    expect(answer(type(asked, '1'), 'seatDistance')).toBeCloseTo(18.288, 6);
    const again = type(asked, 'no');
    expect(inHand(again)).toBe('seatDistance');
    expect(answer(again, 'seatDistance')).toBeUndefined();
  });

  it('refuses the impossible with what, accepted and an example', () => {
    const state = type(asking('seatDistance'), '3 kg');
    expect(saidBy(state)).toMatch(/seat distance: .*mass[\s\S]*accepted: [\s\S]*example: /);
    expect(promptOf(state).draft).toBe('3 kg');
  });

  it('an unusual value that is taken stays when asked again', () => {
    const state = type(asking('seatDistance'), '60 ft', '?');
    expect(answer(state, 'seatDistance')).toBe('unknown');
  });

  it('Enter on nothing tells what can be typed', () => {
    expect(saidBy(type(asking('seating'), ''))).toContain('save and stop');
  });
});

describe('back, change, review', () => {
  it('back shows the answer, Enter keeps it, and nothing given is lost on the way', () => {
    const second = type(opened(), '1');
    const id = inHand(second) as FactId;
    const state = type(second, '2', '1');
    const twice = type(state, '<', '<');
    expect(inHand(twice)).toBe(id);
    expect(promptOf(twice).onEnter).toMatch(/^keeps: /);
    expect(bookOf(twice).answers).toEqual(bookOf(state).answers);
    const kept = type(twice, '', '');
    expect(bookOf(kept).answers).toEqual(bookOf(state).answers);
    expect(inHand(kept)).toBe(inHand(state));
    expect(progress(kept)).toBe(progress(state));
  });

  it('a change sets aside what no longer applies, and brings it back when it does again', () => {
    const book = withAnswer(
      withAnswer({ ...EMPTY_BOOK, complaints: ['echo'] }, 'entryKind', { value: 'distances', how: 'read' }),
      'enteredCenter',
      { value: 3, how: 'read' },
    );
    const start = begin(book, SETTINGS);
    const change = (state: State, id: FactId, typed: string): State => {
      const review = type(state, 'r');
      const line = entriesOf(review, top(review)).findIndex(({ value }) => value === id) + 1;
      return type(review, String(line), typed);
    };
    const delays = change(start, 'entryKind', 'delays');
    expect(answer(delays, 'enteredCenter')).toBeUndefined();
    expect(saidBy(delays)).toContain('set aside: entered distance, center');
    const back = change(delays, 'entryKind', 'distances');
    expect(answer(back, 'enteredCenter')).toBe(3);
    expect(saidBy(back)).toContain('kept from before');
  });

  it('a change goes straight back to the question in hand', () => {
    const first = inHand(opened()) as FactId;
    const state = type(opened(), '1', '2', '1');
    const review = type(state, 'r');
    const at = entriesOf(review, top(review)).findIndex(({ value }) => value === first) + 1;
    const before = answer(state, first);
    const changed = type(review, String(at), '2');
    expect(inHand(changed)).toBe(inHand(state));
    expect(answer(changed, first)).not.toBe(before);
  });

  it('a question in hand that no longer applies gives way', () => {
    const state = asking('rowSpacing');
    const review = type(state, 'r');
    const line = entriesOf(review, top(review)).findIndex(({ value }) => value === 'seating') + 1;
    expect(inHand(type(review, String(line), 'single-seat'))).not.toBe('rowSpacing');
  });

  it('the list shows the owner’s words, what is heard, and what is not known', () => {
    const state = type(begin(EMPTY_BOOK, SETTINGS), 'it is not nice', COMPLAINTS.dull.title, '1');
    const label = factSpec(inHand(state) as FactId).label;
    expect(promptOf(type(state, '?', 'r')).choices).toEqual([
      'own words: “it is not nice”',
      'heard: the voice sounds dull',
      'measures in: feet and inches',
      `${label}: not known`,
    ]);
  });
});

describe('contradictions', () => {
  const single = withAnswer(EMPTY_BOOK, 'seating', { value: 'single-seat', how: 'read' });

  it('are told once, quoting both answers, and may stay open', () => {
    const state = type(asking('seatCount', single), '3');
    expect(top(state).kind).toBe('clash');
    expect(askOf(state)).toContain('one seat only');
    expect(promptOf(state).choices.slice(-2)).toEqual(['both are right', 'leave it open']);
    const open = type(state, 'leave');
    expect(answer(open, 'seatCount')).toBe(3);
    expect(answer(open, 'seating')).toBe('single-seat');
    expect(top(open).kind).not.toBe('clash');
  });

  it('ask the chosen answer again', () => {
    const state = type(asking('seatCount', single), '3');
    const index = promptOf(state).choices.findIndex((line) => line.includes('seating'));
    const changed = type(state, String(index + 1), 'one-row');
    expect(answer(changed, 'seating')).toBe('one-row');
    expect(answer(changed, 'seatCount')).toBe(3);
  });

  it('note how both can be right', () => {
    const state = type(asking('seatCount', single), '3', 'both', 'two guests on Sundays');
    expect(bookOf(state).notes).toEqual(['How both can be right: two guests on Sundays']);
  });
});

describe('progress and the end', () => {
  it('never promises fewer questions than it asks', () => {
    let state = opened();
    let left = Number.POSITIVE_INFINITY;
    for (let i = 0; i < MOST_QUESTIONS && top(state).kind !== 'result'; i++) {
      const more = Number(/at most (\d+) more/.exec(progress(state))?.[1] ?? 0);
      expect(more).toBeLessThan(left);
      left = more;
      state = type(state, '?');
    }
    expect(top(state).kind).toBe('result');
  });

  it('unknown everywhere ends with a result and lists nothing as answered', () => {
    let state = begin(EMPTY_BOOK, SETTINGS);
    for (let i = 0; i < 60 && top(state).kind !== 'result'; i++) state = type(state, '?');
    expect(top(state).kind).toBe('result');
    expect([...bookOf(state).answers.values()].every(({ how }) => how === 'unknown')).toBe(true);
    expect(state.audit.ranking.undecided).toBe(true);
  });

  it('says why it stops', () => {
    let state = opened();
    while (top(state).kind !== 'result') state = type(state, '?');
    expect(saidBy(state)).toMatch(/question/);
  });

  it('asks everything that makes sense with --full', () => {
    let state = type(begin(EMPTY_BOOK, { ...SETTINGS, full: true }), '', '1', '1', '1');
    for (let i = 0; i < 200 && top(state).kind !== 'result'; i++) state = type(state, '?');
    expect(bookOf(state).answers.size).toBeGreaterThan(70);
  });

  it('stops when the minutes are used up', () => {
    let clock = 0;
    const settings = { ...SETTINGS, minutes: 5, now: () => clock };
    const state = opened(settings);
    clock = 6 * 60_000;
    expect(top(type(state, '1')).kind).toBe('result');
  });

  it('goes on beyond the result when more is wished', () => {
    let state = opened();
    while (top(state).kind !== 'result') state = type(state, '?');
    const more = promptOf(state).choices.indexOf('ask me more questions') + 1;
    if (more > 0) expect(top(type(state, String(more))).kind).toBe('topic');
  });
});

describe('after the result', () => {
  const atResult = (): State => type(opened(), '1', '2', '1', 'f');

  it('offers home tests; an outcome moves the ranking and comes back to the result', () => {
    const state = atResult();
    expect(promptOf(state).choices[0]).toMatch(/^I did the test/);
    const outcome = type(state, '1');
    expect(saidBy(outcome)).toContain('How to find out');
    const done = type(outcome, '1');
    expect(top(done).kind).toBe('result');
    expect(done.audit.ranking).not.toEqual(state.audit.ranking);
    expect(done.reportDue).toBe(true);
  });

  it('offers one recording while time, level, polarity or tone stands first unmeasured, with both commands', () => {
    const entry = (state: State): number =>
      promptOf(state).choices.findIndex((choice) => choice.startsWith('measure it with one recording')) + 1;
    const book = { ...EMPTY_BOOK, complaints: ['no-middle'] } as const;
    const measured = Object.entries({
      arrivalMeasuredMs: 0.1,
      centerAgainstMainsDb: 0.5,
      polarityMeasured: 'alike',
      toneMeasuredDb: 1,
    }).reduce<FactBook>(
      (all, [id, value]) => withAnswer(all, id as FactId, { value, how: 'measured' }),
      book,
    );
    const doubted = type(begin(book, SETTINGS), 'f');
    const first = doubted.audit.ranking.causes.filter(({ applies }) => applies).slice(0, 3);
    expect(first.map(({ cause }) => cause)).toContain('polarity');
    const said = type(doubted, String(entry(doubted)));
    expect(saidBy(said)).toContain('center-audit signal test.wav');
    expect(saidBy(said)).toContain('center-audit measure RECORDING --case CASE');
    expect(top(said).kind).toBe('result');
    expect(entry(type(begin(measured, SETTINGS), 'f'))).toBe(0);
  });
  it('ends at Enter', () => {
    const asked = type(atResult(), '');
    expect(top(asked).kind).toBe('name');
    expect(type(asked, '').ending).toBe('finished');
    const named = type(asked, 'Miller, 4711');
    expect([named.ending, bookOf(named).title]).toEqual(['finished', 'Miller, 4711']);
  });
});

describe('a case taken up', () => {
  it('does not ask what is known, and reads no opening to a case with complaints', () => {
    const book = withAnswer({ ...EMPTY_BOOK, complaints: ['dull'] }, 'playedContent', {
      value: 'television',
      how: 'recalled',
    });
    const first = inHand(begin(book, SETTINGS)) as FactId;
    expect(isFactId(first)).toBe(true);
    expect(first).not.toBe('playedContent');
  });

  it('goes on where it stopped, with the same number of questions', () => {
    const second = inHand(type(opened(), '1'));
    const state = type(opened(), '1', '2');
    const again = begin(bookOf(state), SETTINGS, { order: state.history, put: [...state.put] });
    expect(inHand(again)).toBe(inHand(state));
    expect(progress(again)).toBe(progress(state));
    expect(inHand(type(again, '<'))).toBe(second);
  });

  it('asks how a number was obtained only for numbers that were measured', () => {
    expect(factSpec('seatDistance').usually).toBe('measured');
    expect(top(type(asking('seating'), '1')).kind).not.toBe('how');
  });
});
