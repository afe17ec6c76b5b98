/** How sure and how decided, in words, on rankings of a few made-up causes. */
import { describe, expect, it } from 'vitest';
import {
  becauseText,
  carriedText,
  confidenceText,
  headlineText,
  priorText,
  sharedText,
  signed,
  weightText,
} from '../../src/explain/confidence.js';
import { EMPTY_BOOK } from '../../src/facts/book.js';
import type { Audit } from '../../src/reasoning/audit.js';
import { is } from '../../src/rules/condition.js';
import { auditOf, ruleOn, small, whenTest } from '../reasoning/smallCauses.js';
import { madeEvidence } from './madeReport.js';

const db = (p: number): number => 10 * Math.log10(p / (1 - p));
const title = (id: string): string => `the ${id}`;
const headline = (audit: Audit): string => headlineText(audit.book, audit.ranking, title);
/** Causes of these probabilities, none with evidence of its own, in a book that tells something. */
const thin = (...chances: readonly number[]): Audit =>
  auditOf(
    (['delay', 'level', 'aim', 'height'] as const)
      .slice(0, chances.length)
      .map((id, i) =>
        small(id, { priorDb: db(chances[i] ?? 0.5), rules: [ruleOn('one', is('testLift', 'same'))] }),
      ),
    { testTape: 'off' },
  );
/** The first with a sure sign of its own. */
const proven = (delayDb: number, levelDb: number): Audit =>
  auditOf(
    [
      small('delay', { priorDb: delayDb, rules: [ruleOn('one', whenTest('off'), { tp: 0.9, fp: 0.05 })] }),
      small('level', { priorDb: levelDb }),
    ],
    { testTape: 'off' },
  );

describe('how sure', () => {
  it('is a word that goes with the figure beside it', () => {
    expect(confidenceText(0.85)).toBe('likely, about 85%');
    // Just under seven tenths prints as 70 %, and 70 % is likely.
    expect(confidenceText(0.69)).toBe('likely, about 70%');
    expect(confidenceText(0.67)).toBe('about even, about 65%');
    expect(confidenceText(0.85, 'likely')).toBe('likely, about 85%');
  });
  it('says instead what is no matter of degree', () => {
    expect(confidenceText(0.01, 'ruled-out')).toBe('ruled out, under 5%');
    expect(confidenceText(0.3, 'cannot-tell')).toBe('cannot tell yet, about 30% so far');
    expect(confidenceText(0, 'not-applicable')).toBe('does not apply');
  });
  it('was something before anything was told', () => {
    expect(priorText(0)).toMatch(/about even, about 50%$/);
    expect(priorText(-9)).toMatch(/unlikely, about 10%$/);
  });
});

describe('a weight', () => {
  it('points one way, the other, or nowhere', () => {
    expect([12, -3, 0].map(weightText)).toEqual(['strong, for it', 'a hint, against it', 'says nothing']);
  });
  it('is printed with its sign, and zero without', () => {
    expect([7.81, -2, 0.04, -0.04, 0].map(signed)).toEqual(['+7.8', '−2.0', '0.0', '0.0', '0.0']);
  });
  it('of the complaints says whom they fit, one or several', () => {
    expect(sharedText(3, 0)).toBe('no complaint was told');
    expect(sharedText(0.049, 2)).toMatch(/^the complaints, .*says nothing here$/);
    expect(sharedText(-0.049, 1)).toMatch(/^the complaint, .*says nothing here$/);
    expect(sharedText(0.05, 1)).toMatch(/: fits it$/);
    expect(sharedText(3, 2)).toMatch(/: fit it$/);
    expect(sharedText(-3, 1)).toMatch(/: is explained better by others/);
    expect(sharedText(-3, 2)).toMatch(/: are explained better by others/);
  });
});

describe('the headline', () => {
  it('names nothing while nothing is told: neither answers nor complaints', () => {
    const none = auditOf([small('delay'), small('level')]);
    expect(headline(none)).toMatch(/^Nothing was told/);
    expect(headlineText({ ...EMPTY_BOOK, complaints: ['hollow'] }, none.ranking, title)).not.toMatch(
      /^Nothing/,
    );
  });
  it('is the title of the cause where it is decided', () => {
    expect(headline(proven(0, -10))).toBe('the delay');
  });
  it('says in a few words that it is open, whatever the doubt', () => {
    expect(headline(thin(0.8, 0.3))).toBe('Likely, but not proven yet');
    for (const open of [thin(0.3), thin(0.6, 0.49), thin(0.4, 0.3, 0.3)])
      expect(headline(open)).toBe('Not enough is known yet');
  });
  it('tells causes that all are probable as true together, not as alternatives', () => {
    expect(headline(thin(0.6, 0.5))).toBe('Two causes fit; one or both may be true');
    expect(headline(thin(0.6, 0.55, 0.5))).toBe('Three causes fit; one or more may be true');
  });
});

describe('what carries a figure', () => {
  const group = (title: string, decibans: number) => ({
    id: title,
    title,
    decibans,
    rules: [title],
    note: '',
  });
  const number = madeEvidence('9 dB', { rule: 'dip', value: 9, valueLabel: 'deepest dip' });
  it('is named by the two lines that weigh most: a number, an answer, the complaint', () => {
    const answer = madeEvidence('so', { rule: 'where', facts: ['troubleSeats'] });
    const text = carriedText(
      { decibans: 10, sharedDb: 0.5 },
      [group('dip', 8), group('where', 4), group('third', 3)],
      [number, answer],
    );
    expect(text).toBe('It rests mostly on the deepest dip and the answer on “seats with the trouble”.');
  });
  it('says what would be left where the complaint carries it, and not where it hardly matters', () => {
    expect(carriedText({ decibans: 10, sharedDb: 10 }, [], [])).toBe(
      'It rests mostly on the complaint itself. Without the complaint it would be about 50%.',
    );
    expect(carriedText({ decibans: 30, sharedDb: 3 }, [group('dip', 20)], [number])).toBe(
      'It rests mostly on the deepest dip and the complaint itself.',
    );
  });
  it('claims nothing where nothing was told', () => {
    expect(carriedText({ decibans: -9, sharedDb: 0 }, [], [])).toMatch(/^Nothing that was told carries it/);
  });
});

describe('the reason', () => {
  it('tells the doubt that weighs most where it is open', () => {
    const because = (audit: Audit): string => becauseText(audit.ranking, title);
    expect(because(thin(0.4, 0.1))).toBe('It stays open because no cause reaches an even chance.');
    expect(because(thin(0.6, 0.5))).toMatch(/too close behind\.$/);
  });
  it('tells how far behind the next is, if there is one', () => {
    expect(becauseText(proven(0, -10).ranking, title)).toMatch(/^The next cause, “The level”, is /);
    const alone = auditOf(
      [
        small('delay', { rules: [ruleOn('one', whenTest('off'), { tp: 0.9, fp: 0.05 })] }),
        small('twin-centers', { applies: is('centerCount', 'two') }),
      ],
      { testTape: 'off', centerCount: 'one' },
    );
    expect(becauseText(alone.ranking, title)).toBe('');
  });
});
