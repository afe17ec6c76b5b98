/** What a remedy carried out in vain says, and which answers it makes stale. */
import { describe, expect, it } from 'vitest';
import { ACTS, type RemedyRef, type Trial } from '../../src/facts/acts.js';
import { EMPTY_BOOK } from '../../src/facts/book.js';
import type { FactId } from '../../src/facts/catalog.js';
import {
  bookAsHeard,
  isTried,
  outdatedAnswers,
  remedyId,
  trialsDb,
  withTrial,
} from '../../src/reasoning/trials.js';
import { bookOf } from '../support/causeClaims.js';
import { inVain } from '../support/trials.js';
import { mend, small } from './smallCauses.js';

const half = mend('half', { cures: 0.5, changes: ['testTape', 'enteredLeft'] });
const tenth = mend('tenth', { cures: 0.1, changes: ['testTape'] });
const sure = mend('sure', { cures: 0.99 });
const cause = small('delay', { remedies: [tenth, half, sure] });
const other = small('level', { remedies: [half] });
const triedOf = (...acts: RemedyRef[]) => ({ ...EMPTY_BOOK, trials: inVain(...acts) });

describe('a remedy tried in vain', () => {
  it('is known by its cause and its name', () => {
    expect(remedyId(cause, half)).toBe('delay/half');
    expect(isTried(triedOf('delay/half'), cause, half)).toBe(true);
    expect(isTried(triedOf('delay/half'), other, half)).toBe(false);
  });
  it('speaks against its cause, the more the surer it would have cured it; nothing tried says nothing', () => {
    const db = (...acts: RemedyRef[]) => trialsDb(triedOf(...acts), cause, [cause, other]);
    expect(db()).toBe(0);
    // P(same | half cured) over P(same | by luck): 0.385 to 0.6265.
    expect(db('delay/half')).toBeCloseTo(10 * Math.log10(0.385 / 0.6265), 12);
    expect(db('delay/sure')).toBeLessThan(db('delay/half'));
    expect(Math.abs(db('level/half'))).toBeLessThan(1);
  });
  it('makes answers stale that it may have changed: those told, each once', () => {
    const told = bookOf({ testTape: 'off', testPhantom: 'gone' });
    const trials = inVain('delay/half', 'delay/tenth', 'level/half');
    expect(outdatedAnswers({ ...told, trials }, [cause, other])).toEqual(['testTape']);
    expect(outdatedAnswers({ ...told, trials: inVain('delay/sure') }, [cause, other])).toEqual([]);
  });
  it('is remembered once, after those tried before; where it stands, what it changed is of before', () => {
    const told = { ...bookOf({ testTape: 'off', testPhantom: 'gone' }), trials: inVain('delay/tenth') };
    const [half] = inVain('delay/half') as [Trial];
    const once = withTrial(told, { ...half, stays: true }, [cause]);
    expect([...once.answers.keys()]).toEqual(['testPhantom']);
    expect([...once.before.keys()]).toEqual(['testTape']);
    expect(once.trials).toEqual([...inVain('delay/tenth'), { ...half, stays: true }]);
    expect(withTrial(once, { ...half, stays: true }, [cause])).toEqual(once);
    expect(withTrial(told, half, [cause]).answers).toBe(told.answers);
  });
});

describe('a setting told as the act that helped leaves it', () => {
  const heard = (facts: Parameters<typeof bookOf>[0], trial: Trial) => {
    const { answers } = bookAsHeard({ ...bookOf(facts), trials: [trial] }, [cause]);
    return Object.fromEntries([...answers].map(([id, a]) => [id, 'value' in a ? a.value : a.how]));
  };
  it('is of after: the trouble was heard with what it was set to before', () => {
    expect(heard({ centerSpread: 'on' }, { act: 'spread-on', outcome: 'gone' })).toMatchObject({
      centerSpread: 'off',
    });
    expect(heard({ ambienceSize: 'large' }, { act: 'ambience-changed', outcome: 'better' })).toMatchObject({
      ambienceSize: 'small',
    });
  });
  it('is not known of before where it can have been several things', () => {
    expect(heard({ obstacle: 'none' }, { act: 'obstacle-removed', outcome: 'gone' })).toMatchObject({
      obstacle: 'unknown',
    });
  });
  it('is of the trouble where the act did not help, was undone, or left another setting', () => {
    const on = { centerSpread: 'on' } as const;
    expect(heard(on, { act: 'spread-on', outcome: 'same' })).toMatchObject(on);
    expect(heard(on, { act: 'spread-on', outcome: 'gone', stays: false })).toMatchObject(on);
    expect(heard({ centerSpread: 'off' }, { act: 'spread-on', outcome: 'gone' })).toMatchObject({
      centerSpread: 'off',
    });
  });
  it.each(Object.entries(ACTS))('%s never turns a setting into what it was', (_, spec) => {
    const { turns } = spec as { turns?: { fact: FactId; from?: string; to: readonly string[] } };
    if (turns?.from !== undefined) expect(turns.to).not.toContain(turns.from);
  });
});
