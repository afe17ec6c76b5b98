/** The next step in words, from proposals made by hand. */
import { describe, expect, it } from 'vitest';
import { type NextWords, nextWords, renderNext } from '../../src/explain/next-words.js';
import { factSpec } from '../../src/facts/catalog.js';
import type { Next } from '../../src/reasoning/next.js';
import type { Candidate } from '../../src/reasoning/worth.js';
import { causeOf } from '../../src/rules/index.js';
import { auditOf, small } from '../reasoning/smallCauses.js';

const candidate = (fact: Candidate['fact'], netMinutes = 4): Candidate => ({
  fact,
  kind: 'question',
  minutes: 2,
  savesMinutes: netMinutes + 2,
  netMinutes,
  moves: [{ cause: 'delay', upDb: 3, downDb: -3 }],
  together: [],
});
const FACTS = ['upmixUse', 'clapRing', 'jumpers', 'subwoofer', 'voiceBoost', 'obstacle', 'lipSync'] as const;
const ASKED: Next = {
  kind: 'question',
  fact: 'upmixUse',
  because: 'It pays.',
  candidates: FACTS.map((fact) => candidate(fact)),
  mayFollowAtMost: 3,
};
const audit = () => auditOf([small('delay', { confirm: causeOf('delay').confirm })], { testLift: 'same' });
const flat = (words: NextWords): string => renderNext(words).replace(/\s+/g, ' ');

describe('the next step in words', () => {
  it('is the question with its choices, its reason and what else is worth asking, four at most', () => {
    const words = nextWords(audit(), ASKED);
    const spec = factSpec('upmixUse');
    expect(words).toMatchObject({
      kind: 'question',
      fact: 'upmixUse',
      text: spec.ask,
      because: 'It pays.',
      reason: null,
      minutes: spec.minutes,
      how: spec.findOut,
      todo: null,
      mayFollowAtMost: 3,
    });
    expect(words.choices).toEqual(spec.kind === 'choice' ? Object.values(spec.choices) : null);
    expect(words.others.map((other) => other.fact)).toEqual(FACTS.slice(1, 5));
    expect(words.others[0]).toEqual({
      fact: 'clapRing',
      label: factSpec('clapRing').label,
      minutes: 2,
      savesMinutes: 6,
    });
    const page = flat(words);
    expect(page).toMatch(/^QUESTION/i);
    expect(page).toContain('Takes 1 minute.');
    expect(page).toContain('Answers');
    expect(page).toContain('saves about 6 minutes, takes 2 minutes.');
    expect(page).toContain('At most 3 more questions may follow.');
    expect(page).not.toMatch(/\bDo\b/);
  });
  it('leaves out others that do not pay', () => {
    const proposed = {
      ...ASKED,
      candidates: [candidate('upmixUse'), candidate('clapRing', 0), candidate('jumpers', 0.1)],
    };
    expect(nextWords(audit(), proposed).others.map((other) => other.fact)).toEqual(['jumpers']);
    const alone = flat(
      nextWords(audit(), { ...ASKED, candidates: [candidate('upmixUse')], mayFollowAtMost: 1 }),
    );
    expect(alone).toContain('At most 1 more question may follow.');
    expect(alone).not.toMatch(/worth asking after it/i);
  });
  it('frightens nobody with a bound of a hundred questions', () => {
    const page = flat(nextWords(audit(), { ...ASKED, mayFollowAtMost: 110 }));
    expect(page).not.toContain('110');
    expect(page).toContain('about ten in most calls');
  });
  it('is a number to be told: no choices', () => {
    const words = nextWords(audit(), { ...ASKED, fact: 'seatDistance' });
    expect(words.choices).toEqual([]);
    expect(flat(words)).not.toContain('Answers');
  });
  it('is a home test with its cautions', () => {
    const words = nextWords(audit(), {
      ...ASKED,
      kind: 'test',
      fact: 'testSwapAtAmplifier',
      reason: 'not-worth-asking',
    });
    expect(words.reason).toBe('not-worth-asking');
    expect(words.cautions.length).toBeGreaterThan(0);
    expect(words.text.toLowerCase()).toBe(factSpec('testSwapAtAmplifier').label.toLowerCase());
    const page = flat({ ...words, cautions: ['First.', 'Second.'] });
    expect(page).toMatch(/^HOME TEST/i);
    expect(page.match(/Caution/g)).toHaveLength(1);
    expect(page).toMatch(/Caution First\. Second\./);
  });
  it('is what to do where enough is known', () => {
    const words = nextWords(audit(), {
      kind: 'stop',
      reason: 'sure',
      because: 'Sure.',
      candidates: [],
      mayFollowAtMost: 2,
    });
    expect(words).toMatchObject({
      kind: 'stop',
      fact: null,
      minutes: null,
      how: [],
      choices: [],
      cautions: [],
      reason: 'sure',
    });
    expect(words.todo).not.toBeNull();
    const page = flat(words);
    expect(page).toMatch(/^ENOUGH IS KNOWN/i);
    expect(page).toMatch(/\bDo\b/);
    expect(page).not.toMatch(/Takes|may follow|how to find out/i);
  });
});
