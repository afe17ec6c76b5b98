/** The report part by part, from the plan on: steps, what is open or assumed, asides, sources. */
import { describe, expect, it } from 'vitest';
import { lineText } from '../../src/explain/document.js';
import {
  assumedSection,
  fineSection,
  glossarySection,
  openSection,
  planSection,
  seamlessSection,
  sourcesSection,
  stepItem,
  unknownSection,
} from '../../src/explain/report-sections.js';
import { madeCause, madeStep, madeUnknown, partLines, partText, times } from './madeReport.js';

describe('a step of the plan', () => {
  const below = (changes: Parameters<typeof madeStep>[1]): string[] =>
    (stepItem(madeStep('Turn it', changes)).below ?? []).map(lineText);
  it('has its cautions right below its reason, before the how', () => {
    const { line } = stepItem(madeStep('Turn it'));
    expect(lineText(line)).toBe('Turn it (5 minutes, free)');
    expect(below({ cautions: ['Unplug it.', 'Two people.'] })).toEqual([
      'It costs least.',
      'Caution: Unplug it.',
      'Caution: Two people.',
      'How: How to turn it.',
      'Expect: The voice clears.',
      'Check: Listen again.',
    ]);
  });
  it('of a question tells how to find out, and promises nothing', () => {
    expect(below({ kind: 'question', steps: ['Look.', 'Read.'], expect: '', verify: '' })).toEqual([
      'It costs least.',
      'How to find out: Look. Read.',
    ]);
    expect(below({ steps: [], expect: '', verify: '' })).toEqual(['It costs least.']);
  });
});

describe('the plan', () => {
  const steps = (count: number) => Array.from({ length: count }, (_, i) => madeStep(`Do ${i + 1}`));
  it('tells six steps in full and names the others', () => {
    const text = partText(planSection, { plan: steps(8) });
    expect(times(text, '[ ]')).toBe(6);
    expect(text).toMatch(
      /\n\nIf that does not help:\n\n {2}- Do 7 \(5 minutes, free\)\.\n {2}- Do 8 \(5 minutes, free\)\.\n$/,
    );
    expect(partText(planSection, { plan: steps(6) })).not.toContain('If that');
    expect(partText(planSection, {})).toBe('\n');
  });
  it('says what to ask again after a change, and only then', () => {
    const askAgain = [
      { fact: 'upmixUse', label: 'upmix' },
      { fact: 'earHeight', label: 'ear height' },
    ] as const;
    expect(partText(planSection, { plan: steps(1), askAgain })).toMatch(
      /\n\nAsk again what was answered before the change: upmix and ear height\.\n$/,
    );
    expect(partText(planSection, { plan: steps(1) })).not.toContain('Ask again');
  });
});

describe('what is not known yet', () => {
  const causes = [madeCause('delay'), madeCause('level')];
  it('is told with how to find out, what it settles by two names, and its cautions', () => {
    const unknown = [
      madeUnknown('ear height', { settles: ['delay', 'aim', 'level'], cautions: ['Mind the step.'] }),
      madeUnknown('width', { settles: ['level'] }),
      madeUnknown('depth'),
    ];
    expect(partLines(unknownSection, { causes, unknown })).toEqual([
      'Ear height (2 minutes): Measure ear height.',
      'It helps to settle “Title of delay”, “Aim” and 1 more cause.',
      'Caution: Mind the step.',
      'Width (2 minutes): Measure width.',
      'It helps to settle “Title of level”.',
      'Depth (2 minutes): Measure depth.',
    ]);
  });
  it('shows eight, or as many as told, and whatever was asked and not known; the others are counted', () => {
    const unknown = Array.from({ length: 11 }, (_, i) => madeUnknown(`n${i}`, { asked: i === 9 || i === 0 }));
    const text = partText(unknownSection, { unknown });
    expect(times(text, '(2 minutes)')).toBe(9);
    expect(text).toContain('N9 (2 minutes)');
    expect(text).toMatch(/\n\n2 more answers could be given; they weigh less\.\n$/);
    const few = partText((report) => unknownSection(report, 2), { unknown });
    expect(times(few, '(2 minutes)')).toBe(3);
    expect(few).toContain('8 more answers');
    expect(partText(unknownSection, { unknown: unknown.slice(0, 8) })).not.toContain('more answer');
  });
});

describe('what was assumed', () => {
  it('is told value by value, with why and effect, and what that means', () => {
    const assumed = [
      { label: 'ear height', value: '1 m', note: 'usual', effect: 'It bears on “x”.' },
    ] as never;
    expect(partLines(assumedSection, { assumed })).toEqual([
      'What rests on one of these counts no more than a guess.',
      '',
      'Ear height: 1 m (usual). It bears on “x”.',
    ]);
    expect(partText(assumedSection, {})).toBe('\n');
  });
});

describe('the seamless switch', () => {
  it('tells the checks that are settled, then the steps', () => {
    const checks = [
      { text: 'level', passes: true },
      { text: 'time', passes: false },
      { text: 'place', passes: null },
    ] as never;
    const seamlessSwitch = {
      passes: false,
      summary: 'It will be heard.',
      steps: ['Sit down.'],
      note: 'Not the same.',
      checks,
    };
    expect(partLines(seamlessSection, { seamlessSwitch })).toEqual([
      'It will be heard.',
      '',
      'Level.',
      'Time.',
      '',
      '1. Sit down.',
      '',
      'Not the same.',
    ]);
  });
});

describe('the other causes', () => {
  const aside = (cause: 'aim' | 'level', title: string) => ({ cause, title, text: `Why ${title}.` });
  it('are told with how sure that is and the reason', () => {
    const causes = [madeCause('aim', { confidence: 'unlikely, about 10%' })];
    expect(partLines(fineSection, { causes, fine: [aside('aim', 'A')] })).toEqual([
      'A: unlikely, about 10%. Why A.',
    ]);
  });
  it('are named where they could not be judged or do not arise', () => {
    const both = {
      cannotTell: [aside('aim', 'A'), aside('level', 'B')],
      notApplicable: [aside('aim', 'C'), aside('level', 'D')],
    };
    expect(partLines(openSection, both).map((line) => line.replace(/ {2,}/, ': '))).toEqual([
      'Open: Nothing that was told speaks for or against these: A; B.',
      'No part: They do not arise in this system: C; D.',
    ]);
    expect(partText(openSection, { cannotTell: both.cannotTell })).not.toContain('No part');
    expect(partText(openSection, { notApplicable: both.notApplicable })).not.toContain('Open');
    expect(partText(openSection, {})).toBe('\n');
  });
});

describe('sources and words', () => {
  it('stand with their mark and meaning', () => {
    expect(partLines(sourcesSection, { sources: [{ cite: 'a book', markText: 'read' }] as never })).toEqual([
      'A book [read].',
    ]);
    expect(partLines(glossarySection, { glossary: [{ term: 'dip', meaning: 'a weaker range' }] })).toEqual([
      'Dip: a weaker range.',
    ]);
  });
});
