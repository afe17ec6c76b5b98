/** "I did this" after the result: each outcome, what it counts for, and what follows. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { withAnswer } from '../../src/facts/book.js';
import { readCase, writeCase } from '../../src/facts/case-file.js';
import { begin } from '../../src/interview/conversation.js';
import { offers } from '../../src/interview/offers.js';
import { promptOf } from '../../src/interview/screens.js';
import { bookOf, type State, top } from '../../src/interview/state.js';
import { auditSync } from '../../src/reasoning/audit.js';
import { next } from '../../src/reasoning/next.js';
import { isTried, solvedBy, trialsDb } from '../../src/reasoning/trials.js';
import { causeOf } from '../../src/rules/index.js';
import { inHand, SETTINGS, saidBy, type } from './talk.js';

const book = readCase(readFileSync('cases/aim-steep-stand.json', 'utf8')).book;
const aim = causeOf('aim');
const wedge = aim.remedies.find(({ id }) => id === 'wedge');
if (!wedge) throw new Error('the cause has no wedge');

const lineOf = (state: State, start: string): string =>
  String(promptOf(state).choices.findIndex((choice) => choice.startsWith(start)) + 1);
const atEnd = type(begin(book, SETTINGS), 'f');
const asked = type(atEnd, lineOf(atEnd, 'I did this: Tilt'));
const CHANGED = ['centerTilt', 'testTilt'] as const;

describe('a remedy carried out', () => {
  it('may have done any of four things, or have ended one complaint of several', () => {
    expect(promptOf(asked).choices).toEqual([
      'the trouble was gone',
      'it was better, not gone',
      'no change',
      'it was worse',
      'only this was gone: the voice is unclear at every seat',
      'only this was gone: the voice sounds dull',
    ]);
    const one = type(asked, '6', '2');
    expect(bookOf(one).trials).toEqual([
      { act: 'aim/wedge', outcome: 'gone', complaint: 'dull', stays: false },
    ]);
    expect(solvedBy(bookOf(type(asked, '6', '1')))).toBeUndefined();
    expect(solvedBy(bookOf(type(asked, '1', '1')))).toBeDefined();
  });

  const rows = [
    { outcome: 'gone', line: '1', stays: true, solved: true, again: false, speaks: 'for' },
    { outcome: 'gone', line: '1', stays: false, solved: false, again: true, speaks: 'for' },
    { outcome: 'better', line: '2', stays: true, solved: false, again: false, speaks: 'for' },
    { outcome: 'better', line: '2', stays: false, solved: false, again: true, speaks: 'for' },
    { outcome: 'same', line: '3', stays: true, solved: false, again: false, speaks: 'against' },
    { outcome: 'same', line: '3', stays: false, solved: false, again: false, speaks: 'against' },
    { outcome: 'worse', line: '4', stays: false, solved: false, again: false, speaks: 'against' },
  ] as const;
  for (const { outcome, line, stays, solved, again, speaks } of rows)
    describe(`${outcome}, and it ${stays ? 'stands' : 'was put back'}`, () => {
      const standing = type(asked, line);
      const state = type(standing, stays ? '1' : '2');
      const after = bookOf(state);

      it('is a trial, told once whether it stands, and kept in the case', () => {
        expect(promptOf(standing).ask).toBe('Does it still stand as changed?');
        expect(after.trials).toEqual([{ act: 'aim/wedge', outcome, stays }]);
        expect(readCase(writeCase(after)).book.trials).toEqual(after.trials);
      });
      const isStale = stays && !solved;
      it(isStale ? 'asks what stands there now, and goes on' : 'shows what comes of it', () => {
        expect(top(state).kind).toBe(isStale ? 'topic' : 'result');
        if (!isStale) return;
        expect(inHand(state)).toBe('centerTilt');
        const told = type(state, '4 degrees', '2');
        expect(bookOf(told).answers.get('centerTilt')).toMatchObject({ value: 4 });
        expect(told.audit.heard.answers.get('centerTilt')).toEqual(book.answers.get('centerTilt'));
        expect(inHand(told)).not.toBe('centerTilt');
      });
      it('keeps what was answered as it was when the trouble was heard', () => {
        for (const id of CHANGED) {
          expect(after.answers.has(id)).toBe(!stays);
          expect(state.audit.heard.answers.get(id)).toEqual(book.answers.get(id));
        }
        expect(state.redo).toEqual([]);
      });
      it(solved ? 'solves it, says by what, and asks and offers nothing more' : 'leaves it open', () => {
        expect(solvedBy(after) !== undefined).toBe(solved);
        expect(saidBy(state).includes(`Solved: ${wedge.title}`)).toBe(solved);
        expect(saidBy(state).includes('The trouble is still open. Next: ')).toBe(!solved);
        expect(next(state.audit).reason === 'solved').toBe(solved);
        expect(offers(state).some(({ kind }) => kind === 'remedy' || kind === 'test')).toBe(!solved);
      });
      it(`speaks ${speaks} its cause, and is ${again ? 'still' : 'no longer'} something to do`, () => {
        const tilt = state.audit.ranking.causes.find(({ cause }) => cause === 'aim');
        const before = atEnd.audit.ranking.causes.find(({ cause }) => cause === 'aim');
        const moved = (tilt?.decibans ?? 0) - (before?.decibans ?? 0);
        // The tilt was tried as a home test before, and it got clearer: the same act counts once.
        if (speaks === 'for') expect(moved).toBeCloseTo(0, 9);
        else expect(moved).toBeLessThanOrEqual(0);
        expect(isTried(after, aim, wedge)).toBe(!again);
      });
    });

  it('is not recorded by Esc, by "not known", or half way', () => {
    for (const state of [type(asked, '<'), type(asked, '?'), type(asked, '1', '<')])
      expect(bookOf(state).trials).toEqual([]);
    expect(top(type(asked, '1', '<')).kind).toBe('cured');
  });
  it('counts where nobody knows whether it stands, as a change does that was not said to be undone', () => {
    const state = type(asked, '1', '?');
    expect(bookOf(state).trials).toEqual([{ act: 'aim/wedge', outcome: 'gone' }]);
    expect(solvedBy(bookOf(state))).toBeDefined();
  });
  it('reopens nothing and closes what was held for open, once it is gone', () => {
    const open = type(begin({ ...book, solved: false }, SETTINGS), 'f');
    const line = lineOf(open, 'I did this: Tilt');
    expect(bookOf(type(open, line, '3', '2')).solved).toBe(false);
    expect(solvedBy(bookOf(type(open, line, '1', '1')))).toBeDefined();
  });
  it('shows the earlier answer where one that it changed is told anew', () => {
    expect(promptOf(type(asked, '2', '1')).onEnter).toBe('keeps: 22° up');
  });
});

describe('an act that is a home test', () => {
  const plain = withAnswer(book, 'testTilt', undefined);
  it('is not offered as a test once it was told as a remedy', () => {
    const told = { ...plain, trials: [{ act: 'center-tilted', outcome: 'better', stays: true }] } as const;
    const tests = (b: typeof plain): string[] =>
      offers(type(begin(b, SETTINGS), 'f')).flatMap((offer) => (offer.kind === 'test' ? [offer.test] : []));
    expect(tests(plain)).toContain('testTilt');
    expect(tests(told)).not.toContain('testTilt');
    // It speaks by the rules of the test alone.
    expect(trialsDb(told, aim, auditSync(told).causes)).toBe(0);
  });
});
