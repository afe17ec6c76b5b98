/** The first screen: what is wrong, how sure that is, what to do first; and the ranking. */
import { describe, expect, it } from 'vitest';
import { rankingPart, verdictPart } from '../../../src/explain/html/verdict.js';
import type { ReportSeparator, ReportStep } from '../../../src/explain/report-types.js';
import { madeCause, madeReport, madeStep, times, wordsIn } from '../madeReport.js';

const contender = { id: 'delay', title: 'late', probability: 0.8, confidence: 'likely, about 80%' } as const;
const separator = (text: string) => ({ text }) as ReportSeparator;
const first = (changes: Partial<ReportStep>, verdict = {}) =>
  wordsIn(verdictPart(madeReport({ verdict, plan: [madeStep('Turn <it>', changes)] })));

describe('the first screen', () => {
  it('says what is wrong, how sure that is in words and as a bar, and why', () => {
    const html = verdictPart(madeReport({ verdict: { headline: 'it is < late', contenders: [contender] } }));
    expect(wordsIn(html)).toBe(
      'Verdict|It is &lt; late.|Likely, about 80%|One line of evidence speaks for it.',
    );
    expect(html).toContain('class="fill" width="80"');
    expect(html).not.toContain('\n\n');
  });
  it('has an empty bar where no cause can be named', () => {
    expect(verdictPart(madeReport())).toContain('class="fill" width="0"');
  });
  it('says of which cause it is that sure while several remain, and what tells them apart, three at most', () => {
    const separatedBy = ['One?', 'Two?', 'Three?', 'Four?'].map(separator);
    const words = wordsIn(verdictPart(madeReport({ verdict: { undecided: true, separatedBy } })));
    expect(words).toContain('|Likely, about 80% (the first named)|');
    expect(words).toMatch(/\|What tells them apart\|One\?\|Two\?\|Three\?$/);
    const silent = (verdict: object) => verdictPart(madeReport({ verdict }));
    expect(silent({ undecided: true })).not.toContain('What tells them apart');
    expect(silent({ undecided: false, separatedBy })).not.toContain('What tells them apart');
  });
});

describe('what to do first', () => {
  it('is the first step of the plan, named for its kind, with its effort and its caution', () => {
    expect(first({ cautions: ['Unplug it.'] })).toContain(
      '|Do first|Turn &lt;it&gt;|5 minutes, free. How to do it|Caution: Unplug it.|',
    );
    expect(first({ kind: 'test' })).toContain('|Try first|Turn &lt;it&gt;|5 minutes, free.');
    expect(verdictPart(madeReport({ plan: [madeStep('x')] }))).toContain('<a href="#step-1">');
  });
  it('costs no money where it is a question', () => {
    expect(first({ kind: 'question', minutes: 2 })).toContain('|Find out first|Turn &lt;it&gt;|2 minutes.');
  });
  it('is that of the verdict where there is no plan, or nothing', () => {
    expect(wordsIn(verdictPart(madeReport({ verdict: { first: 'Leave it on' } })))).toContain(
      '|Do first|Leave it on|',
    );
    expect(verdictPart(madeReport())).not.toContain('Do first');
    expect(first({}, { first: 'Something else' })).not.toContain('Something else');
  });
});

describe('the ranking', () => {
  it('names the first six causes that the system can have, with their bars', () => {
    const ids = ['delay', 'level', 'aim', 'height', 'timbre', 'polarity', 'routing', 'listener'] as const;
    const causes = ids.map((id, i) =>
      madeCause(id, {
        place: i === 0 ? 'leading' : 'possible',
        verdict: id === 'level' ? 'not-applicable' : 'likely',
        probability: 0.8 - i / 10,
        confidence: `number ${i}`,
        title: id === 'aim' ? 'a & b' : id,
      }),
    );
    const html = rankingPart(madeReport({ causes }));
    expect(wordsIn(html)).toBe(
      'delay number 0|a &amp; b number 2|height number 3|timbre number 4|polarity number 5|routing number 6|Several causes can be true at once, so the figures need not add up to 100%.',
    );
    expect(html).toContain('class="fill" width="60"');
    expect(html).toContain('<a href="#cause-delay">delay</a>');
    expect(times(html, '<a ')).toBe(1);
  });
});
