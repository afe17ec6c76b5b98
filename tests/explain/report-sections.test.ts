/** The report part by part: what each says, what it leaves out, and how much it tells at most. */
import { describe, expect, it } from 'vitest';
import {
  contradictionSection,
  rankingSection,
  seatsSection,
  titleLine,
  toldLine,
  toldSection,
  verdictSection,
} from '../../src/explain/report-sections.js';
import type { ReportCause, ReportSeparator } from '../../src/explain/report-types.js';
import {
  fullReport,
  madeCause,
  madeEvidence,
  madeReport,
  madeTold,
  partLines,
  partText,
  times,
} from './madeReport.js';

describe('title and verdict', () => {
  it('are named by the case', () => {
    expect(titleLine(madeReport({ title: 'Sofa' }))).toBe('Center loudspeaker audit: Sofa');
    expect(titleLine(madeReport())).toBe('Center loudspeaker audit');
  });
  it('say what to do first and what tells the causes apart, where there is any', () => {
    expect(partText(verdictSection, {})).toBe(
      'The center comes late. Likely, about 80%. One line of evidence speaks for it.\n',
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
    expect(bars?.kind === 'bars' && bars.rows[0]).toMatchObject({ share: 0.8, value: 'likely, about 80%' });
    expect(partText(rankingSection, { causes })).toContain('need not add up to 100%');
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
