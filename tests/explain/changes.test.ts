/** What became of a cause, a seat and the switch between two audits, on a made-up cause of known probability. */
import { describe, expect, it } from 'vitest';
import { changesOf } from '../../src/explain/changes.js';
import type { FactBook } from '../../src/facts/book.js';
import { COMPLAINTS, type ComplaintId } from '../../src/facts/complaints.js';
import { is } from '../../src/rules/condition.js';
import { DERIVED } from '../../src/rules/derived/table.js';
import { causeOf } from '../../src/rules/index.js';
import { LIMITS } from '../../src/rules/limits.js';
import { auditOf, ruleOn, small, whenTest } from '../reasoning/smallCauses.js';
import { bookOf, type TestFacts } from '../support/causeClaims.js';

const db = (p: number): number => 10 * Math.log10(p / (1 - p));
/** A system in which the cause stands at a probability, by a rule that is settled and says nothing. */
const at = (p: number, facts: TestFacts = { testTape: 'agrees' }) =>
  auditOf(
    [small('delay', { priorDb: db(p), rules: [ruleOn('one', whenTest('off'), { only: 'for' })] })],
    facts,
  );
const fate = (p: number, q: number): string | undefined => changesOf(at(p), at(q)).causes[0]?.fate;

describe('a cause', () => {
  it('is fixed or new when it leaves or enters the range in question: from one in five on', () => {
    expect([fate(0.3, 0.1), fate(0.1, 0.3)]).toEqual(['fixed', 'new']);
    expect([fate(0.23, 0.19), fate(0.19, 0.23)]).toEqual(['fixed', 'new']);
  });
  it('is no new fault where it only takes over the complaint that another no longer explains', () => {
    const pair = (tape: 'off' | 'agrees') =>
      auditOf(
        [
          small('delay', {
            links: { hollow: 0.9 },
            rules: [ruleOn('one', whenTest('off'), { tp: 0.95, fp: 0.02 })],
          }),
          small('level', {
            priorDb: db(0.1),
            links: { hollow: 0.9 },
            rules: [ruleOn('two', is('testLift', 'same'))],
          }),
        ],
        { testTape: tape, testLift: 'improves' },
        { complaints: ['hollow'] },
      );
    const changes = changesOf(pair('off'), pair('agrees'));
    const of = (id: string) => changes.causes.find(({ cause }) => cause === id);
    expect(of('level')?.after).toBeGreaterThan(0.2);
    expect(of('level')?.fate).toBe('worse');
    expect(changes.summary).toMatch(/“.+” (is put right|comes first no more|still comes first)/);
  });
  it('is better or worse where it stays on one side, and unchanged where people read the same figure', () => {
    expect([fate(0.6, 0.4), fate(0.4, 0.6)]).toEqual(['better', 'worse']);
    expect([fate(0.15, 0.05), fate(0.05, 0.15)]).toEqual(['better', 'worse']);
    expect([fate(0.5, 0.524), fate(0.5, 0.476), fate(0.5, 0.5)]).toEqual(Array(3).fill('unchanged'));
    expect([fate(0.5, 0.526), fate(0.5, 0.474)]).toEqual(['worse', 'better']);
  });
  it('is none of these where it cannot be told in one of the two', () => {
    const untold = at(0.1, {});
    expect(changesOf(untold, at(0.6)).causes[0]?.fate).toBe('unknown');
    expect(changesOf(at(0.6), untold).causes[0]?.fate).toBe('unknown');
  });
  it('that only one of them knows is left out', () => {
    const both = auditOf([small('delay'), small('level')]);
    expect(changesOf(auditOf([small('delay')]), both).causes.map((c) => c.cause)).toEqual(['delay']);
  });
  it('shows the numbers it rests on where people would read another one', () => {
    const wide = small('mains-layout', {
      rules: [
        {
          ...ruleOn('wide', {
            fact: 'mainsBaseDeg',
            operator: 'greaterThanInclusive',
            value: { fact: 'limit.baseWideDeg.clear' },
          }),
          weigh: { kind: 'deviation', of: 'mainsBaseDeg', limit: 'limit.baseWideDeg.clear', lowIsBad: false },
        },
      ],
    });
    const taped = (mainsBase: number) => auditOf([wide], { mainsBase, seatDistance: 3, mainSeatOffset: 0 });
    expect(changesOf(taped(2), taped(2)).causes[0]?.values).toEqual([]);
    const [value, ...others] = changesOf(taped(2), taped(6)).causes[0]?.values ?? [];
    expect(others).toEqual([]);
    expect(value?.label).toBe(DERIVED.mainsBaseDeg.label);
    // A value that was not there before, or is gone.
    const offset = small('delay', {
      rules: [
        {
          ...ruleOn('aside', {
            fact: 'centerOffsetDeg',
            operator: 'greaterThanInclusive',
            value: { fact: 'limit.offsetDeg.clear' },
          }),
          weigh: {
            kind: 'deviation',
            of: 'centerOffsetDeg',
            limit: 'limit.offsetDeg.clear',
            lowIsBad: false,
          },
        },
      ],
    });
    const [open, told] = [auditOf([offset]), auditOf([offset], { centerSideOffset: 0 })];
    expect(changesOf(open, told).causes[0]?.values.map((v) => v.before)).toEqual(['not known']);
    expect(changesOf(told, open).causes[0]?.values.map((v) => v.after)).toEqual(['not known']);
    expect(changesOf(open, open).causes[0]?.values).toEqual([]);
    // Two meters seen from three: 36.9 degrees; six: 90.
    expect([value?.before, value?.after]).toEqual(['36.9°', '90°']);
    expect(LIMITS.baseWideDeg.clear).toBeLessThan(90);
  });
});

describe('what was told', () => {
  it('stands side by side, also where it was not asked or not known', () => {
    const unknown: Partial<FactBook> = { answers: new Map([['testTape', { how: 'unknown' }]]) };
    const words = (...[a, b]: readonly ReturnType<typeof at>[]) =>
      changesOf(a as ReturnType<typeof at>, b as ReturnType<typeof at>).facts.map((f) => [
        f.fact,
        f.before,
        f.after,
      ]);
    const none = auditOf([small('delay')], {}, unknown);
    expect(words(at(0.3, {}), none)).toEqual([['testTape', 'not asked', 'not known']]);
    const [[, before, after] = []] = words(none, at(0.3));
    expect(before).toBe('not known');
    expect(after).not.toBe('not known');
    expect(words(at(0.3), at(0.3))).toEqual([]);
  });
});

describe('the verdict', () => {
  it('tells both leaders with how sure they are', () => {
    const two = (a: number, b: number) =>
      auditOf([small('delay', { priorDb: db(a) }), small('level', { priorDb: db(b) })], { testLift: 'same' });
    const same = changesOf(two(0.6, 0.2), two(0.5, 0.2)).verdict;
    expect(same.sameLeader).toBe(true);
    const other = changesOf(two(0.6, 0.2), two(0.2, 0.5)).verdict;
    expect(other.sameLeader).toBe(false);
    expect(same.before).toContain(causeOf('delay').title);
    expect(other.after).toContain(causeOf('level').title);
    expect(other.before).toMatch(/about 60%/);
    expect(other.after).toMatch(/about 50%/);
    expect(other.before.split(':')[0]).not.toBe(other.after.split(':')[0]);
  });
});

describe('what is heard, and the switch', () => {
  it('is told by the titles of the complaints', () => {
    const heard = (complaints: readonly ComplaintId[]) => auditOf([small('delay')], {}, { complaints });
    expect(changesOf(heard(['hollow', 'echo']), heard(['echo', 'no-middle'])).complaints).toEqual({
      fixed: [COMPLAINTS.hollow.title],
      unchanged: [COMPLAINTS.echo.title],
      new: [COMPLAINTS['no-middle'].title],
    });
  });
  it('is told for both, in the words of the later one', () => {
    const level = (center: number) =>
      auditOf([small('delay')], {
        measuredCenterLevel: center,
        measuredLeftLevel: 75,
        measuredRightLevel: 75,
      });
    const { seamless } = changesOf(level(75), level(85));
    expect([seamless.before, seamless.after]).toEqual([null, false]);
    expect(seamless.text).toContain('loudness');
  });
});

describe('a seat', () => {
  const seated = (...seats: readonly { readonly name: string; readonly xM: number }[]) =>
    auditOf(
      [small('delay')],
      { centerSideOffset: 0, centerBehindMains: 0, mainsBase: 2.5 },
      {
        seats: bookOf(
          {},
          seats.map((s) => ({ ...s, yM: 3 })),
        ).seats,
      },
    );
  it('shows only what changed, and that it is new or gone', () => {
    const [a, b] = [
      seated({ name: 'sofa', xM: 0 }, { name: 'end', xM: 1 }),
      seated({ name: 'sofa', xM: 0 }, { name: 'chair', xM: 1 }),
    ];
    const found = changesOf(a, b).seats;
    expect(found.map((s) => s.seat)).toEqual(['end', 'chair']);
    expect(found[0]?.values.find((v) => v.label === 'angle')).toMatchObject({ after: 'no such seat' });
    expect(found[1]?.values.find((v) => v.label === 'angle')).toMatchObject({ before: 'no such seat' });
    expect(changesOf(a, a).seats).toEqual([]);
  });
  it('shows what cannot be computed yet as not known', () => {
    const sofa = { name: 'sofa', xM: 1 };
    const bare = auditOf([small('delay')], {}, { seats: bookOf({}, [{ xM: 1, yM: 3, name: 'sofa' }]).seats });
    const full = auditOf(
      [small('delay')],
      {
        centerLayout: 'mid-tweeter-mid',
        centerOrientation: 'level',
        enteredLeft: 3,
        enteredCenter: 3.4,
        enteredRight: 3,
        tapedCenter: 3,
        tapedMains: 3.2,
      },
      { seats: bare.book.seats },
    );
    const [values] = changesOf(bare, full).seats.map((s) => s.values);
    const of = (label: string) => values?.find((v) => v.label === label);
    for (const label of ['voice dip', 'speech lost', 'center arrives'])
      expect(of(label), `${label} at ${sofa.name}`).toMatchObject({ before: 'not known' });
    expect(of('voice dip')?.after).toMatch(/dB$/);
    expect(of('center arrives')?.after).toMatch(/ms (early|late)$/);
    expect(changesOf(full, bare).seats[0]?.values.find((v) => v.label === 'voice dip')?.after).toBe(
      'not known',
    );
  });
  it('moved to the side changes its angle', () => {
    const found = changesOf(seated({ name: 'sofa', xM: 0 }), seated({ name: 'sofa', xM: 3 })).seats;
    expect(found[0]?.values).toContainEqual({ label: 'angle', before: 'straight', after: '45° right' });
  });
});
