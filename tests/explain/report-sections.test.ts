/** The report part by part: what each says, what it leaves out, and how much it tells at most. */
import { describe, expect, it } from 'vitest';
import {
  balanceLine,
  causeSection,
  contradictionSection,
  evidenceLine,
  leadingSection,
  possibleSection,
  rankingSection,
  seatsSection,
  titleLine,
  toldLine,
  toldSection,
  verdictLines,
  verdictSection,
} from '../../src/explain/report-sections.js';
import type { ReportCause, ReportSeparator } from '../../src/explain/report-types.js';
import {
  fullReport,
  madeBar,
  madeCause,
  madeConfirm,
  madeEvidence,
  madeRemedy,
  madeReport,
  madeTold,
  partLines,
  partText,
  times,
} from './madeReport.js';

const causeText = (changes: Partial<ReportCause>): string =>
  partText(() => causeSection(madeCause('delay', changes), 2), {});

describe('title and verdict', () => {
  it('are named by the case and end as sentences', () => {
    expect(titleLine(madeReport({ title: 'Sofa' }))).toBe('Center loudspeaker audit: Sofa');
    expect(titleLine(madeReport())).toBe('Center loudspeaker audit');
    expect(verdictLines(madeReport({ verdict: { first: 'turn it' } }))).toEqual({
      headline: 'The center comes late.',
      confidence: 'likely, about 80 %',
      first: 'turn it',
    });
  });
  it('say what to do first and what tells the causes apart, where there is any', () => {
    expect(partText(verdictSection, {})).toBe(
      'The center comes late. Likely, about 80 %. One line of evidence speaks for it.\n',
    );
    const separatedBy = [{ text: 'One.' }, { text: 'Two.' }] as ReportSeparator[];
    expect(partText(verdictSection, { verdict: { first: 'turn it', separatedBy } })).toMatch(
      /\n\nDo first: Turn it\.\n\nWhat tells them apart:\n\n {2}- One\.\n {2}- Two\.\n$/,
    );
  });
});

describe('what was told', () => {
  const evidence = (...facts: ReportCause['evidence'][number]['facts']) => [madeEvidence('x', { facts })];
  it('names the answers that bear on what is told in full, and counts the others', () => {
    const causes = [
      madeCause('delay', { evidence: evidence('seatDistance') }),
      madeCause('aim', { place: 'possible', evidence: evidence('earHeight') }),
      madeCause('level', { place: 'aside', evidence: evidence('upmixUse') }),
    ];
    const told = [
      madeTold('upmixUse', 'on'),
      madeTold('seatDistance', '3 m'),
      madeTold('earHeight', 'not known', 'not known'),
    ];
    expect(
      partLines(toldSection, {
        causes,
        told,
        complaints: [{ title: 'hollow' }] as never,
        notHeard: [{ title: 'hum' }] as never,
        tried: ['Turn it'],
      }),
    ).toEqual([
      'You hear: hollow.',
      'You do not hear: hum.',
      'Label of seatDistance: 3 m (measured)',
      'Label of earHeight: not known',
      'And one more answer.',
      'Tried already: Turn it.',
    ]);
    expect(partLines(toldSection, { causes: [], told })).toEqual(['And 3 more answers.']);
    expect(partText(toldSection, { causes, told: told.slice(1) })).not.toContain('And');
  });
  it('tells ten answers at most', () => {
    const causes = [madeCause('delay', { evidence: evidence('seatDistance') })];
    const told = Array.from({ length: 12 }, () => madeTold('seatDistance', '3 m'));
    expect(times(partText(toldSection, { causes, told }), 'Label of')).toBe(10);
    expect(partLines(toldSection, { causes, told }).at(-1)).toBe('And 2 more answers.');
  });
  it('quotes the owner, and is none where nothing was told', () => {
    expect(partLines(toldSection, { words: 'so muffled' })).toEqual(['│ so muffled']);
    expect(partText(toldSection, {})).toBe('\n');
    expect(toldLine(madeTold('earHeight', '1 m'))).toBe('Label of earHeight: 1 m (measured)');
  });
  it('lists what does not fit together', () => {
    const contradictions = [{ text: 'Both.' }] as never;
    expect(partLines(contradictionSection, { contradictions, remarks: ['no angle'] })).toEqual([
      'Both.',
      'No angle.',
    ]);
  });
});

describe('ranking and seats', () => {
  it('rank the first six causes that the system can have', () => {
    const ids = ['delay', 'level', 'aim', 'height', 'timbre', 'polarity', 'routing', 'listener'] as const;
    const causes = ids.map((id) => madeCause(id, { verdict: id === 'level' ? 'not-applicable' : 'likely' }));
    const [bars] = rankingSection(madeReport({ causes })).filter((block) => block.kind === 'bars');
    expect(bars?.kind === 'bars' && bars.rows.map((row) => row.label)).toEqual(
      ids.filter((id) => id !== 'level' && id !== 'listener').map((id) => `Title of ${id}`),
    );
    expect(bars?.kind === 'bars' && bars.rows[0]).toMatchObject({ share: 0.8, value: 'likely, about 80 %' });
    expect(partText(rankingSection, { causes })).toContain('need not add up to 100 %');
  });
  it('tell what each seat gets and what could not be computed', () => {
    expect(partLines(seatsSection, fullReport())).toEqual([
      'seat         angle',
      'sofa (main)  12° right',
      '',
      expect.stringMatching(/^Not computed yet: .*\.$/),
    ]);
  });
});

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
      'Sure: Likely, about 80 %.',
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
    expect(rows({}).slice(3)).toEqual([
      'Found: Nothing of its own speaks for it yet; the complaint does.',
      'Why: This is what happens.',
    ]);
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
  it('has its balance in one line', () => {
    const groups = [{ title: 'where heard', decibans: 7.84 }] as never;
    expect(balanceLine(madeCause('delay', { groups, sharedDb: -2 }))).toBe(
      'prior -10.0, where heard +7.8, complaints -2.0',
    );
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
      'Title of aim: likely, about 80 %. Heard.',
      'Title of level: likely, about 80 %. Nothing of its own is known yet; the complaint fits.',
    ]);
  });
});
