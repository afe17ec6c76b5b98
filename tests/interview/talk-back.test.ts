/** What a caller hears and may ask back: words of the trade, the verdict in a breath, and that nothing is lost. */
import { describe, expect, it } from 'vitest';
import { renderText } from '../../src/explain/render/text.js';
import { renderTicket } from '../../src/explain/render/ticket.js';
import { buildReport } from '../../src/explain/report.js';
import { EMPTY_BOOK, type FactBook, withAnswer } from '../../src/facts/book.js';
import { begin } from '../../src/interview/conversation.js';
import { offers } from '../../src/interview/offers.js';
import { promptOf } from '../../src/interview/screens.js';
import { spokenVerdict } from '../../src/interview/spoken.js';
import { bookOf, type State, top } from '../../src/interview/state.js';
import { auditSync } from '../../src/reasoning/audit.js';
import { canBeAsked } from '../../src/reasoning/hypotheses.js';
import { isTiring, isWithinReach } from '../../src/reasoning/knows.js';
import { next } from '../../src/reasoning/next.js';
import { answer, asking, inHand, SETTINGS, saidBy, type } from './talk.js';

const CROSSED: FactBook = withAnswer({ ...EMPTY_BOOK, complaints: ['no-middle'] }, 'polarityMarks', {
  value: 'center-crossed',
  how: 'seen',
});
const atEnd = (book: FactBook, call = false): State => {
  const start = begin(book, { ...SETTINGS, call });
  return top(start).kind === 'result' ? start : type(start, 'f');
};
const lineOf = (state: State, part: string): string =>
  String(promptOf(state).choices.findIndex((choice) => choice.includes(part)) + 1);

describe('a question asked back', () => {
  it('is answered with the word of the trade, and the question stays', () => {
    const state = type(asking('centerTweeterHeight'), 'what is a tweeter');
    expect(saidBy(state)).toContain('Tweeter: The small driver that plays the treble.');
    expect(inHand(state)).toBe('centerTweeterHeight');
    expect(state.draft).toBe('');
  });
  it('is answered with how to find out where no such word is in it', () => {
    expect(saidBy(type(asking('centerTweeterHeight'), 'where do I see that?'))).toContain('How to find out');
  });
  it('is answered with the reason where he asks why', () => {
    const state = type(asking('centerTweeterHeight'), 'Why do you ask that?');
    expect(saidBy(state)).toEqual(saidBy(type(asking('centerTweeterHeight'), 'w')));
    expect(inHand(state)).toBe('centerTweeterHeight');
  });
  it('is spared by h, which explains the words of the question', () => {
    expect(saidBy(type(asking('centerTweeterHeight'), 'h'))).toContain('Tweeter: ');
  });
});

describe('not knowing the last change', () => {
  it.each(['?', 'no idea'])('by %j leads to no list of seventeen things', (typed) => {
    const state = type(asking('lastChange'), typed);
    expect(answer(state, 'lastChange')).toBe('unknown');
    expect(canBeAsked(bookOf(state), 'changedExactly')).toBe(false);
  });
});

describe('what takes a tool', () => {
  const unknown = (book: FactBook, ...ids: readonly Parameters<typeof isTiring>[1][]): FactBook =>
    ids.reduce((b, id) => withAnswer(b, id, { how: 'unknown' }), book);
  it('is not asked of whoever told of no microphone, nor again of whoever could read no meter', () => {
    expect(isWithinReach(EMPTY_BOOK, 'measuredPeakHz')).toBe(false);
    expect(
      isWithinReach(
        withAnswer(EMPTY_BOOK, 'measuredHoleHz', { value: 410, how: 'measured' }),
        'measuredPeakHz',
      ),
    ).toBe(true);
    expect(isWithinReach(EMPTY_BOOK, 'measuredLeftLevel')).toBe(true);
    expect(isWithinReach(unknown(EMPTY_BOOK, 'measuredCenterLevel'), 'measuredLeftLevel')).toBe(false);
  });
  it('is not asked twice in a row in vain: no tape right after a tape', () => {
    const open = unknown({ ...EMPTY_BOOK, complaints: ['hollow'] }, 'tapedCenter');
    expect(isTiring(open, 'tapedMains')).toBe(true);
    const { fact } = next(auditSync(open), { questionsOnly: true });
    expect(fact && isTiring(open, fact)).toBe(false);
  });
});

describe('the result', () => {
  it('is said in a breath on the phone, with its first step and how sure it is', () => {
    const said = spokenVerdict(auditSync(CROSSED));
    expect(said).toMatch(
      /^What is wrong is most likely this: .*polarity.* I am about \d+% sure\. What to do first: /,
    );
    expect(saidBy(atEnd(CROSSED, true))).toContain(`Say: “${said}”`);
    expect(saidBy(atEnd(CROSSED))).not.toContain('Say: ');
  });
  it('offers what mends it before any test where it is sure or was seen, in the words of its step', () => {
    const entry = withAnswer({ ...EMPTY_BOOK, units: 'metric', complaints: ['hollow'] }, 'enteredCenter', {
      value: 4.6,
      how: 'read',
    });
    const [first] = promptOf(
      atEnd(withAnswer(entry, 'tapedCenter', { value: 3.1, how: 'measured' })),
    ).choices;
    expect(first).toMatch(/^I did this: Enter 3\.10 m .* instead of 4\.60 m/);
    expect(promptOf(atEnd(CROSSED)).choices[0]).toMatch(/^I did this: /);
  });
  it('lists nothing open any more once the trouble is solved', () => {
    const solved: FactBook = {
      ...CROSSED,
      trials: [{ act: 'polarity/uncross', outcome: 'gone', stays: true }],
    };
    const end = atEnd(solved);
    expect(offers(end).map(({ kind }) => kind)).toEqual(['write', 'write', 'write', 'end']);
    const report = buildReport(end.audit);
    expect(renderTicket(report)).not.toMatch(/^ +(?:Open|Conflict|Caution) /m);
    expect(renderText(report, { long: true })).not.toMatch(/WHAT TO DO|NOT KNOWN YET|OTHER CAUSES/);
  });
  it('takes back the outcome of a home test by <, as any answer', () => {
    const start = atEnd({ ...EMPTY_BOOK, complaints: ['dull'] });
    const test = offers(start).find(({ kind }) => kind === 'test');
    if (test?.kind !== 'test') throw new Error('no test is offered');
    const done = type(start, lineOf(start, test.label), '1');
    expect(bookOf(done).answers.has(test.test)).toBe(true);
    const again = type(done, '<');
    expect(inHand(again)).toBe(test.test);
    expect(answer(type(again, '2'), test.test)).not.toBe(answer(done, test.test));
  });
  it('asks for the name before it writes under it, once', () => {
    const start = atEnd(CROSSED);
    const asked = type(start, lineOf(start, 'write a ticket'));
    expect(top(asked).kind).toBe('name');
    expect(type(asked, 'case 12')).toMatchObject({ write: 'ticket', audit: { book: { title: 'case 12' } } });
    const without = type(asked, '');
    expect(without.write).toBe('ticket');
    expect(type({ ...without, said: [] }, lineOf(start, 'that is all')).ending).toBe('finished');
  });
});
