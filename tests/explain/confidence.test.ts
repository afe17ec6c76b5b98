/** How sure and how decided, in words, on rankings of a few made-up causes. */
import { describe, expect, it } from 'vitest';
import {
  becauseText,
  confidenceText,
  headlineText,
  priorText,
  sharedText,
  signed,
  sureSentence,
  weightText,
} from '../../src/explain/confidence.js';
import { EMPTY_BOOK } from '../../src/facts/book.js';
import type { Audit } from '../../src/reasoning/audit.js';
import { is } from '../../src/rules/condition.js';
import { auditOf, mend, ruleOn, small, whenTest } from '../reasoning/smallCauses.js';

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
  it('as a sentence belongs to the first named while it is open', () => {
    expect(sureSentence({ confidence: 'likely, about 85%', undecided: false })).toBe('Likely, about 85%.');
    expect(sureSentence({ confidence: 'possible, about 30%', undecided: true })).toBe(
      'Possible, about 30% (the first named).',
    );
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
    expect([7.81, -2, 0.04, -0.04, 0].map(signed)).toEqual(['+7.8', '-2.0', '0.0', '0.0', '0.0']);
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
  it('names one alone that comes first on thin evidence', () => {
    expect(headline(thin(0.3))).toMatch(/“The delay” comes first, on thin evidence$/);
  });
  it('tells causes that all are probable as true together, not as alternatives', () => {
    expect(headline(thin(0.6, 0.5))).toMatch(
      /“The delay” and “The level” both fit; one or both may be true$/,
    );
    expect(headline(thin(0.6, 0.55, 0.5))).toMatch(
      /“The level” and “The aim” all fit; one or more may be true$/,
    );
  });
  it('tells alternatives where one of them is improbable', () => {
    expect(headline(thin(0.6, 0.49))).toMatch(/^Not decided yet: either “The delay” or “The level”$/);
    expect(headline(thin(0.4, 0.3, 0.3))).toMatch(/^Not decided yet: “The delay”, “The level” or “The aim”$/);
  });
  it('says that it is not proven where only evidence of its own is missing', () => {
    expect(headline(thin(0.8, 0.3))).toMatch(/^Not proven yet: “The delay” fits best, “The level” remains$/);
    // A second that is close, but needs no other remedy, does not make it too close.
    const shared = auditOf(
      [
        small('delay', { priorDb: db(0.8), rules: [ruleOn('one', is('testLift', 'same'))] }),
        small('level', { priorDb: db(0.79), remedies: [mend('mend-delay')] }),
        small('aim', { priorDb: db(0.3) }),
      ],
      { testUpmixOff: 'same' },
    );
    expect(headline(shared)).toMatch(/“The aim” remains$/);
  });
});

describe('the reason', () => {
  it('tells every doubt where it is open', () => {
    const because = (audit: Audit): string => becauseText(audit.ranking, title);
    expect(because(thin(0.4, 0.1))).toMatch(
      /^It stays open because no cause reaches an even chance and no answer/,
    );
    expect(because(thin(0.6, 0.5))).toMatch(/too close behind and no answer/);
  });
  it('counts what speaks for the leader, and tells how far behind the next is', () => {
    expect(becauseText(proven(0, -10).ranking, title)).toMatch(
      /^One line of evidence speaks for it\. The next cause, “The level”, is /,
    );
    const two = auditOf(
      [
        small('delay', {
          groups: { g: 'independent', h: 'independent', i: 'independent' },
          rules: [
            ruleOn('one', whenTest('off'), { tp: 0.9, fp: 0.05 }),
            ruleOn('two', is('testTilt', 'same'), { group: 'h' }),
            ruleOn('three', is('testLift', 'same'), { group: 'i' }),
          ],
        }),
      ],
      { testTape: 'off', testTilt: 'same', testLift: 'improves' },
    );
    expect(becauseText(two.ranking, title)).toBe('2 lines of evidence speak for it.');
    const alone = auditOf(
      [
        small('delay', { rules: [ruleOn('one', whenTest('off'), { tp: 0.9, fp: 0.05 })] }),
        small('twin-centers', { applies: is('centerCount', 'two') }),
      ],
      { testTape: 'off', centerCount: 'one' },
    );
    expect(becauseText(alone.ranking, title)).toBe('One line of evidence speaks for it.');
  });
});
