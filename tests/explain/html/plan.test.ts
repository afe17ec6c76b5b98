/** The plan as a checklist. */
import { describe, expect, it } from 'vitest';
import { planPart } from '../../../src/explain/html/plan.js';
import { madeReport, madeStep, times, wordsIn } from '../madeReport.js';

const steps = (count: number) => Array.from({ length: count }, (_, i) => madeStep(`Do ${i + 1}`));
const planOf = (...plan: Parameters<typeof madeStep>[1][]) =>
  planPart(madeReport({ plan: plan.map((changes) => madeStep('Turn it', changes)) }));

describe('the plan on the page', () => {
  it('is none where nothing is to be done', () => {
    expect(planPart(madeReport({ askAgain: [{ fact: 'upmixUse', label: 'upmix' }] }))).toBe('');
  });
  it('has a box to tick before each step, named by its number and title', () => {
    const html = planPart(madeReport({ plan: [madeStep('Turn <it>'), madeStep('Move it')] }));
    expect(html).toContain('<li id="step-1"><div class="head"><input type="checkbox" id="step-1-done">');
    expect(html).toContain('<label for="step-1-done">1. Turn &lt;it&gt;</label>');
    expect(html).toContain('<label for="step-2-done">2. Move it</label>');
  });
  it('tells each kind of step by name, with its effort and reason', () => {
    const words = wordsIn(planOf({}, { kind: 'test' }, { kind: 'question', effort: '1 minute' }));
    expect(words).toContain('1. Turn it|Change · 5 minutes, free|It costs least.|');
    expect(words).toContain('2. Turn it|Home test · 5 minutes, free|');
    expect(words).toContain('3. Turn it|Find out · 1 minute|');
  });
  it('has the how of the first two steps open, of the others folded away', () => {
    const html = planPart(madeReport({ plan: steps(4) }));
    expect(times(html, '<details>')).toBe(2);
    expect(html.indexOf('<details>')).toBeGreaterThan(html.indexOf('id="step-3"'));
    expect(wordsIn(html)).toContain(
      '|It costs least.|How to do 2.|Expect: The voice clears.|Check: Listen again.|',
    );
    expect(wordsIn(html)).toContain('|How, and what to expect|How to do 3.|Expect: The voice clears.|');
  });
  it('promises nothing and checks nothing where a step has neither', () => {
    const html = planOf({ expect: '', verify: '' });
    expect(html).not.toMatch(/Expect|Check:/);
    expect(planOf({ expect: '' })).toContain('Check: Listen again.');
    expect(planOf({ verify: '' })).toContain('Expect: The voice clears.');
  });
  it('has cautions before the how, never folded away', () => {
    const html = planOf({}, {}, { cautions: ['Unplug it first.'] });
    const caution = html.indexOf('Unplug it first.');
    expect(caution).toBeGreaterThan(html.indexOf('id="step-3"'));
    expect(caution).toBeLessThan(html.indexOf('<details>'));
  });
  it('shows six steps, and folds away the others with their numbers going on', () => {
    expect(planPart(madeReport({ plan: steps(6) }))).not.toContain('If that does not help');
    const html = planPart(madeReport({ plan: steps(8) }));
    const [shown = '', later = ''] = html.split('If that does not help: 2 more');
    expect(times(shown, '<li id="step-')).toBe(6);
    expect(later).toContain('<li id="step-7">');
    expect(later).toContain('<label for="step-8-done">8. Do 8</label>');
    expect(times(later, '<li id="step-')).toBe(2);
  });
  it('says what to ask again after a change, and only then', () => {
    const askAgain = [
      { fact: 'upmixUse', label: 'upmix' },
      { fact: 'trims', label: 'level' },
    ] as never;
    expect(wordsIn(planPart(madeReport({ plan: steps(1), askAgain })))).toMatch(
      /\|Ask again what was answered before the change: upmix and level\.$/,
    );
    expect(planPart(madeReport({ plan: steps(1) }))).not.toContain('Ask again');
    expect(planPart(madeReport({ plan: steps(1) }))).not.toMatch(/^\n|\n\n|\n$/);
  });
});
