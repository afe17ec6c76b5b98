/** From an audit to the report: what is carried over, in words and free of what steers a display. */
import { describe, expect, it } from 'vitest';
import { renderText } from '../../src/explain/render/text.js';
import { buildReport } from '../../src/explain/report.js';
import type { Report } from '../../src/explain/report-types.js';
import type { Outcome, Trial } from '../../src/facts/acts.js';
import { factSpec } from '../../src/facts/catalog.js';
import { COMPLAINTS } from '../../src/facts/complaints.js';
import { probabilityText } from '../../src/reasoning/decibans.js';
import type { Cause } from '../../src/rules/cause.js';
import { SOURCES } from '../../src/rules/sources.js';
import { auditOf, mend, ruleOn, small, whenTest } from '../reasoning/smallCauses.js';
import type { TestFacts } from '../support/causeClaims.js';
import { inVain } from '../support/trials.js';

type Book = NonNullable<Parameters<typeof auditOf>[2]>;
const plain = [small('delay')];
const built = (causes: readonly Cause[] = plain, facts: TestFacts = {}, book: Book = {}) =>
  buildReport(auditOf(causes, facts, book));

describe('the words of the owner', () => {
  it('are carried over, and null where there are none', () => {
    const book = { title: 'Sofa', words: 'so\nmuffled', notes: ['one', 'two'] };
    expect(built(plain, {}, book)).toMatchObject(book);
    expect(built(plain, {}, { title: '', words: '' })).toMatchObject({ title: null, words: null, notes: [] });
  });
  it('steer no display, neither as title, words and notes nor as name of a seat', () => {
    const steering = 'a\u001b[31mb';
    const seats = [{ name: steering, xM: 0, yM: 2, row: 1, main: true }];
    const book = {
      title: steering,
      words: steering,
      notes: [steering],
      seats,
    };
    const report = built(plain, {}, book);
    const texts = [report.title, report.words, ...report.notes, report.seats[0]?.name];
    expect(texts).toHaveLength(4);
    // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what may not be there
    for (const text of texts) expect(text).not.toMatch(/\u001b/);
    for (const text of texts) expect(text).toMatch(/^a.*b$/);
  });
});

describe('what was told', () => {
  it('is each answer in the order of the catalog, with how it is known', () => {
    const facts: TestFacts = {
      testTape: { value: 'off', how: 'recalled' },
      seatDistance: 3,
    };
    const { told } = built(plain, facts);
    const spec = factSpec('testTape');
    expect(told).toEqual([
      {
        fact: 'seatDistance',
        label: factSpec('seatDistance').label,
        value: '3.00 m (9 ft 10 in)',
        how: 'measured',
      },
      {
        fact: 'testTape',
        label: spec.label,
        value: spec.kind === 'choice' ? spec.choices.off : '',
        how: 'from memory',
      },
    ]);
  });
  it('says of what was asked and could not be told that it is not known', () => {
    const answers = new Map([['seatDistance', { how: 'unknown' }]] as const);
    expect(built(plain, {}, { answers }).told).toEqual([
      { fact: 'seatDistance', label: factSpec('seatDistance').label, value: 'not known', how: 'not known' },
    ]);
  });
  it('is in the units of the case unless others are asked for', () => {
    const audit = auditOf(plain, { seatDistance: 3 }, { units: 'imperial' });
    const distance = (units?: 'metric' | 'imperial') => {
      const report = buildReport(audit, units === undefined ? {} : { units });
      return [report.units, report.told[0]?.value];
    };
    expect(distance()).toEqual(['imperial', '9 ft 10 in (3.00 m)']);
    expect(distance('imperial')).toEqual(distance());
    expect(distance('metric')).toEqual(['metric', '3.00 m (9 ft 10 in)']);
    expect(audit.book.units).toBe('imperial');
  });
  it('names what is heard with the chance that nothing explains it, and what is not heard', () => {
    const causes = [small('delay', { links: { hollow: 0.5 } })];
    const report = built(causes, {}, { complaints: ['hollow'], absentComplaints: ['no-middle'] });
    const [complaint] = report.complaints;
    expect(report.complaints).toHaveLength(1);
    expect(complaint?.leakShare).toBeGreaterThan(0);
    expect(complaint?.leakShare).toBeLessThan(1);
    const { title } = COMPLAINTS.hollow;
    expect(complaint).toMatchObject({
      id: 'hollow',
      title,
      text: `${title} (chance that nothing listed here explains it: ${probabilityText(complaint?.leakShare ?? 0)})`,
    });
    expect(report.notHeard).toEqual([{ id: 'no-middle', title: COMPLAINTS['no-middle'].title }]);
  });
  it('names remedies tried by their titles, and what to ask again after them', () => {
    const causes = [
      small('delay', { remedies: [mend('turn', { title: 'Turn it', changes: ['testTape'] })] }),
      small('level', { remedies: [mend('turn', { title: 'Something else' })] }),
    ];
    const report = built(causes, { testTape: 'off' }, { trials: inVain('delay/turn', 'of-another/version') });
    expect(report.trials.map(({ text }) => text)).toEqual([
      'Turn it: no change',
      'Of-another/version: no change',
    ]);
    expect(report.askAgain).toEqual([{ fact: 'testTape', label: factSpec('testTape').label }]);
  });
  it('leads with what settled it, where the trouble is gone and the change still stands', () => {
    const causes = [small('delay', { remedies: [mend('turn', { title: 'Turn it' })] })];
    const ended = (outcome: 'gone' | 'better', stays?: boolean) =>
      built(
        causes,
        { testTape: 'off' },
        { trials: [{ act: 'delay/turn', outcome, ...(stays === undefined ? {} : { stays }) }] },
      );
    expect(ended('gone', true).verdict).toMatchObject({ headline: 'Solved: Turn it', first: null });
    expect(ended('gone', true).solvedBy).toEqual(['Turn it']);
    // What was carried out counts as standing unless it is told otherwise.
    expect(ended('gone').solvedBy).toEqual(['Turn it']);
    // Undone again, or only better, is not solved.
    for (const open of [ended('gone', false), ended('better', true)]) expect(open.solvedBy).toBeNull();
    expect(built(causes, {}, { solved: true }).verdict.headline).toBe('Solved');
  });
  it('leaves what helped as it is, unless it was put back or was a look for a moment', () => {
    const tried = (outcome: Outcome, stays?: boolean, act: Trial['act'] = 'center-pulled-forward') =>
      built(
        [small('delay', {})],
        {},
        { trials: [{ act, outcome, ...(stays === undefined ? {} : { stays }) }] },
      );
    for (const report of [tried('better'), tried('better', true)])
      expect(renderText(report)).toContain('Leave as it is what helped: center pulled forward.');
    for (const report of [
      tried('better', false),
      tried('same'),
      tried('worse', true),
      tried('cannot-tell', true),
      tried('better', undefined, 'center-unplugged'),
    ])
      expect(renderText(report)).not.toContain('Leave as it is');
  });
  it('says what is different since the trouble was heard, and puts the seats of today beside those of then', () => {
    const tape = { value: 'off', how: 'measured' } as const;
    expect(built([small('delay', {})], { testTape: 'off' }).since).toBeNull();
    const tested = built(
      [small('delay', {})],
      { testTape: 'agrees' },
      { before: new Map([['testTape', tape]]) },
    );
    // The tape moves no seat.
    expect(tested.since).toMatchObject({ facts: [{ fact: 'testTape' }], seats: [] });
    const near = { value: 2, how: 'measured' } as const;
    const room = { seatDistance: 3, mainsBase: 2.4 };
    const moved = built([small('delay', {})], room, { before: new Map([['seatDistance', near]]) });
    const distances = (seats: Report['seats']) => [...new Set(seats.map(({ yM }) => yM))];
    expect(distances(moved.seats)).toEqual([2]);
    expect(distances(moved.since?.seats ?? [])).toEqual([3]);
    expect(moved.since?.facts).toEqual([
      {
        fact: 'seatDistance',
        label: factSpec('seatDistance').label,
        heard: '2.00 m (6 ft 6 1/2 in)',
        today: '3.00 m (9 ft 10 in)',
      },
    ]);
    const text = renderText(moved, { long: true });
    expect(text).toContain('The verdict explains what was heard before these changes.');
    expect(text).toMatch(/As the trouble was heard:[\s\S]*Today:/);
    const undone = built([small('delay', {})], {}, { before: new Map([['seatDistance', near]]) });
    expect(undone.since?.facts[0]?.today).toBe('not told');
  });
  it('is quoted where it does not fit together', () => {
    const [clash, ...others] = built(plain, { tapedCenter: 3, enteredCenter: 9.84 }).contradictions;
    expect(others).toEqual([]);
    expect(Object.keys(clash ?? {})).toEqual(['facts', 'text', 'kind']);
    expect(clash?.facts).toEqual(expect.arrayContaining(['tapedCenter', 'enteredCenter']));
    expect(built(plain, { tapedCenter: 3, enteredCenter: 3 }).contradictions).toEqual([]);
  });
});

describe('sources and words', () => {
  const [one, two] = ['interference', 'lobing-grades'] as const;
  const sourced = (id: Cause['id'], source: keyof typeof SOURCES, changes: Partial<Cause> = {}) =>
    small(id, { rules: [ruleOn('a', whenTest('off'), { source, tp: 0.95, fp: 0.05 })], ...changes });
  it('name each source once that stands behind what is told in full', () => {
    const causes = [sourced('delay', one), sourced('level', one), sourced('aim', two, { priorDb: -40 })];
    const { sources } = built(causes, { testTape: 'off' });
    expect(sources.map(({ id }) => id)).toEqual([one]);
    expect(sources[0]).toMatchObject({ cite: SOURCES[one].cite, mark: SOURCES[one].mark });
    expect(sources[0]?.markText).not.toBe('');
  });
  it('name no source of what says nothing', () => {
    expect(built([sourced('delay', one)]).sources).toEqual([]);
  });
  it('explain the words that are used of causes told in full: in stories, evidence and remedies', () => {
    const bare: Partial<Cause> = {
      title: 'x',
      story: 'x',
      remedies: [mend('m', { title: 'x', steps: ['x'], expect: 'x', verify: 'x' })],
    };
    const terms = (changes: Partial<Cause>) =>
      built(
        [
          small('delay', { ...bare, ...changes }),
          small('aim', { ...bare, priorDb: -40, title: 'a tweeter' }),
        ],
        {
          testTape: 'off',
        },
      ).glossary.map(({ term }) => term);
    expect(terms({})).toEqual([]);
    expect(terms({ title: 'comb' })).toEqual(['comb']);
    expect(terms({ story: 'A dip.' })).toEqual(['dip']);
    const rule = ruleOn('a', whenTest('off'));
    expect(terms({ rules: [{ ...rule, because: 'of the trim' }] })).toEqual(['trim']);
    expect(terms({ rules: [{ ...rule, says: { ...rule.says, yes: 'The upmix is on.' } }] })).toEqual([
      'upmix',
    ]);
    const remedy = (changes: object) =>
      terms({ remedies: [mend('m', { title: 'x', steps: ['x'], expect: 'x', ...changes })] });
    expect(remedy({ title: 'Set the trim' })).toEqual(['trim']);
    expect(remedy({ steps: ['x', 'Turn the upmix off.'] })).toEqual(['upmix']);
    expect(remedy({ expect: 'The dip is gone.' })).toEqual(['dip']);
  });
});
