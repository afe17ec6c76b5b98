import { describe, expect, it } from 'vitest';
import { type Answer, EMPTY_BOOK, type FactBook, withAnswer } from '../../src/facts/book.js';
import type { FactId } from '../../src/facts/catalog.js';
import { auditSync } from '../../src/reasoning/audit.js';
import { rankedOf } from '../../src/reasoning/contrast.js';
import type { CauseId } from '../../src/rules/cause-ids.js';
import { causeOf } from '../../src/rules/index.js';
import { sharedAmongDb } from '../../src/rules/weight.js';

const read = (value: string): Answer => ({ how: 'read', value });
function ranked(cause: CauseId, facts: Partial<Record<FactId, string>>) {
  const start: FactBook = { ...EMPTY_BOOK, complaints: ['hollow'] };
  const book = Object.entries(facts).reduce(
    (soFar, [id, value]) => withAnswer(soFar, id as FactId, read(value)),
    start,
  );
  return rankedOf(auditSync(book), cause);
}

describe('a cause that exists in some systems only', () => {
  const bay = causeOf('cabinet-bay');
  it('counts by the share of such systems while nobody has told', () => {
    const share = 10 * Math.log10(bay.appliesIn ?? 1);
    expect(ranked('cabinet-bay', {}).priorDb).toBeCloseTo(bay.priorDb + share, 9);
  });
  it('counts in full once the system is known to be of that kind', () => {
    expect(ranked('cabinet-bay', { centerPlacement: 'bay' }).priorDb).toBe(bay.priorDb);
  });
  it('takes no part where the system is of another kind', () => {
    expect(ranked('cabinet-bay', { centerPlacement: 'stand' }).verdict).toBe('not-applicable');
  });
  it('comes nearer with every condition that is found to hold', () => {
    const steps = [
      ranked('spread-off', {}),
      ranked('spread-off', { upmixUse: 'on' }),
      ranked('spread-off', { upmixUse: 'on', upmixCommonPart: 'takes-out' }),
    ].map((r) => r.priorDb);
    expect(steps).toEqual([...steps].sort((a, b) => a - b));
    expect(new Set(steps).size).toBe(steps.length);
  });
  it('does not weigh on a cause that can exist everywhere', () => {
    expect(ranked('level', {}).priorDb).toBe(causeOf('level').priorDb);
  });
});

describe('while it is open whether a cause applies', () => {
  const answered = {
    playedContent: 'two-channel-music',
    sourceFormat: 'two-channel',
    upmixUse: 'on',
  } as const;
  const own = (cause: CauseId, facts: Partial<Record<FactId, string>>): number => {
    const { groups } = ranked(cause, { ...answered, ...facts });
    return groups.reduce((sum, { decibans }) => sum + decibans, 0);
  };
  it('an answer speaks for all that it can speak for, less than for the one that applies', () => {
    const gone = { testUpmixOff: 'gone' };
    for (const cause of ['spread-off', 'fixed-extraction', 'ambience-setting'] as const)
      expect(own(cause, gone), cause).toBeGreaterThan(own(cause, {}));
    const settled = { upmixCenterControl: 'none', upmixCommonPart: 'takes-out' };
    const gain = own('fixed-extraction', { ...settled, ...gone }) - own('fixed-extraction', settled);
    expect(own('fixed-extraction', gone) - own('fixed-extraction', {})).toBeLessThan(gain);
  });
  it('an answer against all of them speaks against each', () => {
    for (const cause of ['spread-off', 'fixed-extraction', 'ambience-setting'] as const)
      expect(own(cause, { testUpmixOff: 'same' }), cause).toBeLessThan(own(cause, {}) - 5);
  });
  it('an answer that only one of them can give is not shared', () => {
    const open = own('spread-off', { testSpreadOn: 'opens' });
    expect(open).toBeGreaterThan(7);
  });
});

describe('a weight shared among siblings', () => {
  it('keeps its sign, never grows, and is bounded by what they may answer as well', () => {
    for (const db of [-15, -3, 3, 15])
      for (const siblings of [1, 2]) {
        const shared = sharedAmongDb(db, siblings);
        expect(Math.sign(shared)).toBe(Math.sign(db));
        expect(Math.abs(shared)).toBeLessThan(Math.abs(db));
      }
    expect(sharedAmongDb(12, 0)).toBe(12);
    // One of two siblings answers alike in two homes of five: ten to four at most.
    expect(sharedAmongDb(60, 2)).toBeCloseTo(10 * Math.log10(1 / 0.4), 2);
  });
});
