/** A cause in full and in a line, as parts of the report. */
import { describe, expect, it } from 'vitest';
import {
  causeSection,
  evidenceLine,
  leadingSection,
  possibleSection,
} from '../../src/explain/report-sections.js';
import type { ReportCause } from '../../src/explain/report-types.js';
import {
  madeBar,
  madeCause,
  madeConfirm,
  madeEvidence,
  madeRemedy,
  partLines,
  partText,
} from './madeReport.js';

const causeText = (changes: Partial<ReportCause>): string =>
  partText(() => causeSection(madeCause('delay', changes), 2), {});

describe('a cause in full', () => {
  const rows = (changes: Partial<ReportCause>): string[] =>
    causeText(changes)
      .trimEnd()
      .split('\n')
      .map((line) => line.trim().replace(/ {2,}/, ': '));
  it('says how sure and how bad, what was found and computed, what speaks against it, and why', () => {
    const evidence = [
      madeEvidence('Heard.'),
      madeEvidence('Seen.', { because: 'not told twice' }),
      madeEvidence('5 dB.', { value: 5, assumed: true }),
      madeEvidence('Even.', { speaks: 'against', weightText: 'a hint, against it' }),
      madeEvidence('Silent.', { speaks: 'neither' }),
    ];
    expect(rows({ evidence })).toEqual([
      '2. Title of delay',
      'Sure: Likely, about 80%.',
      'If true: Severe: speech is lost.',
      'Found: Heard. (a hint, for it)',
      'Seen. (a hint, for it)',
      'Computed: 5 dB. (a hint, for it, with assumptions)',
      'Against: Even. (a hint, against it)',
      'Why: This is what happens. One follows from the other.',
    ]);
    expect(evidenceLine(madeEvidence('Heard.'))).toBe('Heard. (a hint, for it)');
  });
  it('says so where only the complaint speaks for it', () => {
    expect(rows({ sharedDb: 3 }).slice(3)).toEqual([
      'Found: Nothing of its own speaks for it yet; the complaint does.',
      'Why: This is what happens.',
    ]);
    // Without a complaint, or with one that others explain better, not even that.
    for (const sharedDb of [0, -1]) expect(rows({ sharedDb })).toContain('Found: Nothing speaks for it yet.');
  });
  it('draws values near their threshold, whichever way they speak', () => {
    const item = (text: string, speaks: 'for' | 'against' | 'neither', near: boolean) =>
      madeEvidence(text, { speaks, value: 5, range: madeBar({ near, label: text }) });
    const evidence = [
      item('a', 'for', true),
      item('b', 'against', true),
      item('c', 'for', false),
      item('d', 'neither', true),
    ];
    const bars = causeSection(madeCause('delay', { evidence }), 1).flatMap((block) =>
      block.kind === 'gauge' ? [block.bar.label] : [],
    );
    expect(bars).toEqual(['a', 'b']);
  });
  it('numbers what to do, with what to expect of the first remedy not tried yet', () => {
    const remedies = [
      madeRemedy('Tried', { tried: true, expect: 'Nothing.' }),
      madeRemedy('Turn it', { expect: 'It clears.', verify: 'Hear it.' }),
      madeRemedy('Move it'),
    ];
    expect(rows({ remedies }).slice(5)).toEqual([
      'Do: 1. Turn it (5 minutes, free)',
      '2. Move it (5 minutes, free)',
      'Expect: It clears.',
      'Check: Hear it.',
    ]);
    expect(rows({ remedies: remedies.slice(0, 1) })).toHaveLength(5);
  });
  it('names the first test that was not done, with what would confirm it', () => {
    const confirm = [
      madeConfirm('testTape', { confirmed: false, result: 'it agrees' }),
      madeConfirm('testLift', { outcomes: ['one', 'other'] }),
    ];
    expect(rows({ confirm }).at(-1)).toBe('Confirm: Check of testLift (3 minutes): one or other.');
    expect(rows({ confirm: confirm.slice(0, 1) })).toHaveLength(5);
  });
  it('is numbered among those that lead, under a heading for one or several', () => {
    const causes = [madeCause('delay'), madeCause('aim', { place: 'possible' }), madeCause('level')];
    const text = partText(leadingSection, { causes });
    expect(text).toMatch(/^THE LEADING CAUSES\n/);
    expect(text).toContain('1. Title of delay');
    expect(text).toContain('2. Title of level');
    expect(text).not.toContain('Title of aim');
    expect(partText(leadingSection, { causes: causes.slice(0, 2) })).toMatch(/^THE LEADING CAUSE\n/);
  });
});

describe('a possible cause', () => {
  it('is told in a line with its best reason', () => {
    const evidence = [
      madeEvidence('Even.', { speaks: 'against' }),
      madeEvidence('Heard.'),
      madeEvidence('Seen.'),
    ];
    const causes = [
      madeCause('delay'),
      madeCause('aim', { place: 'possible', evidence }),
      madeCause('level', { place: 'possible' }),
    ];
    expect(partLines(possibleSection, { causes })).toEqual([
      'Title of aim: likely, about 80%. Heard.',
      'Title of level: likely, about 80%. Nothing of its own is known yet; the complaint fits.',
    ]);
  });
});
