import { describe, expect, it } from 'vitest';
import { type Answer, EMPTY_BOOK, type FactBook, withAnswer } from '../../src/facts/book.js';
import type { FactId } from '../../src/facts/catalog.js';
import { auditSync } from '../../src/reasoning/audit.js';
import { rankedOf } from '../../src/reasoning/contrast.js';
import type { CauseId } from '../../src/rules/cause-ids.js';
import { causeOf } from '../../src/rules/index.js';

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
