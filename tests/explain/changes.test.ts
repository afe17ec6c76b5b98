/** What became of a cause, a seat and the switch between two audits, on a made-up cause of known probability. */
import { describe, expect, it } from 'vitest';
import { changesOf } from '../../src/explain/changes.js';
import type { FactBook } from '../../src/facts/book.js';
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
    expect([fate(0.2, 0.19), fate(0.19, 0.2)]).toEqual(['fixed', 'new']);
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
    const [value] = changesOf(taped(2), taped(6)).causes[0]?.values ?? [];
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
    expect(other.before).toMatch(/about 60 %/);
    expect(other.after).toMatch(/about 50 %/);
    expect(other.before.split(':')[0]).not.toBe(other.after.split(':')[0]);
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
  it('moved to the side changes its angle', () => {
    const found = changesOf(seated({ name: 'sofa', xM: 0 }), seated({ name: 'sofa', xM: 3 })).seats;
    expect(found[0]?.values).toContainEqual({ label: 'angle', before: '0°', after: '45°' });
  });
});
