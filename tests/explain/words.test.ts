import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fillingOf } from '../../src/explain/report-evidence.js';
import {
  effortText,
  fill,
  fillKnown,
  fillNaming,
  GapError,
  listText,
  minutesText,
  plural,
  sentencesOf,
  variablesIn,
} from '../../src/explain/words.js';
import { factSpec, isFactId } from '../../src/facts/catalog.js';
import { auditSync } from '../../src/reasoning/audit.js';
import type { VarId } from '../../src/rules/condition.js';
import { DERIVED, isDerivedId } from '../../src/rules/derived/table.js';
import { CAUSES } from '../../src/rules/index.js';
import type { Reading, View } from '../../src/rules/view.js';
import { anyBook } from '../support/books.js';

/** A view in which everything is known. */
function knowing(value: (id: VarId) => number | string): View {
  const read = (id: VarId): Reading => ({
    id,
    value: value(id),
    unit: isDerivedId(id) ? DERIVED[id].unit : '1',
    assumed: [],
    facts: [],
    missing: [],
    how: 'measured',
    spread: 0,
  });
  return { read } as Partial<View> as View;
}
function anything(id: VarId): number | string {
  if (!isFactId(id)) return DERIVED[id].kind === 'number' ? 1.25 : (DERIVED[id].values?.[0] ?? '');
  const spec = factSpec(id);
  return spec.kind === 'choice' ? (Object.keys(spec.choices)[0] ?? '') : 1.25;
}
const FULL = knowing(anything);

describe('templates', () => {
  it('take values with unit in the system of the owner first', () => {
    const view = knowing((id) => (id === 'seatDistance' ? 3.2004 : 9.1));
    expect(fill('{seatDistance}, {layoutDipDb}', view, 'imperial')).toBe('10 ft 6 in (3.20 m), 9.1 dB');
    expect(fill('{seatDistance}', view, 'metric')).toBe('3.20 m (10 ft 6 in)');
  });
  it('take the limit with its unit', () => {
    expect(fill('{limit}', FULL, 'metric', { limit: { value: 4, unit: 'dB' } })).toBe('4 dB');
  });
  it('tell a choice in the words of the catalog, not by its id', () => {
    const view = knowing(() => 'mid-tweeter-mid');
    expect(fill('{centerLayout}', view, 'metric')).toBe('cone, tweeter, cone in one line');
  });
  it('write a percentage without decimals', () => {
    expect(
      fill(
        '{widthLossPct} percent',
        knowing(() => 35.2714),
        'metric',
      ),
    ).toBe('35 percent');
  });
  it('refuse a gap instead of printing one', () => {
    const gappy = knowing(() => undefined as never);
    expect(() => fill('a dip of {layoutDipDb}', gappy, 'metric')).toThrow(GapError);
    expect(() => fill('{limit} is clear', FULL, 'metric')).toThrow(GapError);
    expect(() => fill('{nothingLikeThat}', FULL, 'metric')).toThrow(GapError);
  });
  it('drop a sentence that would have a gap and keep the rest', () => {
    const gappy = knowing(() => undefined as never);
    expect(fillKnown('The dip of {layoutDipDb} goes. Walk along the row.', gappy, 'metric', '-')).toBe(
      'Walk along the row.',
    );
    expect(fillKnown('The dip of {layoutDipDb} goes.', gappy, 'metric', 'Listen')).toBe('Listen');
  });

  it('name what is not known in a step that must stay', () => {
    const gappy = knowing(() => undefined as never);
    expect(fillNaming('Raise it to {safeCrossoverHz}.', gappy, 'metric')).toBe(
      'Raise it to a value not known yet (lowest bass crossover that leaves no audible hole for this center).',
    );
  });

  const templates = CAUSES.flatMap((cause) => [
    ...cause.rules.flatMap((rule) =>
      (['yes', 'no'] as const).map((outcome) => ({
        where: `${cause.id}/${rule.id} ${outcome}`,
        text: rule.says[outcome],
        filling: fillingOf(rule, {
          leaves: [],
          ...(rule.weigh.kind === 'deviation' ? { threshold: 4 } : {}),
        }),
        ownLimit: rule.weigh.kind === 'answer' && JSON.stringify(rule.when).includes('limit.'),
      })),
    ),
    ...cause.remedies.flatMap((remedy) => [
      { where: `${cause.id} ${remedy.id} expect`, text: remedy.expect, filling: {}, ownLimit: false },
      ...remedy.steps.map((text, i) => ({
        where: `${cause.id} ${remedy.id} step ${i + 1}`,
        text,
        filling: {},
        ownLimit: false,
      })),
      { where: `${cause.id} ${remedy.id} verify`, text: remedy.verify, filling: {}, ownLimit: false },
    ]),
  ]);
  it.each(templates)('fills $where where everything is known', ({ text, filling, ownLimit }) => {
    const full = ownLimit ? { limit: { value: 4, unit: 'dB' as const } } : filling;
    const filled = fill(text, FULL, 'imperial', full);
    expect(filled).not.toMatch(/[{}]|undefined|NaN/);
  });
  it.each(CAUSES)('$id uses braces only where they are filled', (cause) => {
    for (const text of [cause.title, cause.story, cause.notWhen]) expect(variablesIn(text)).toEqual([]);
    for (const rule of cause.rules) {
      expect(variablesIn(rule.because)).toEqual([]);
      expect(variablesIn(rule.says.unknown)).toEqual([]);
    }
    for (const remedy of cause.remedies) expect(variablesIn(remedy.title)).toEqual([]);
  });
  it('have no gap wherever a rule is settled, whatever was told', () => {
    const rules = new Map(
      CAUSES.flatMap((cause) => cause.rules.map((rule) => [`${cause.id}/${rule.id}`, rule])),
    );
    fc.assert(
      fc.property(anyBook, (book) => {
        const { byCause, view } = auditSync(book);
        for (const item of [...byCause.values()].flat()) {
          const rule = rules.get(`${item.cause}/${item.rule}`);
          if (!rule || (item.outcome !== 'yes' && item.outcome !== 'no')) continue;
          const text = fill(rule.says[item.outcome], view, 'imperial', fillingOf(rule, item));
          expect(text).not.toMatch(/[{}]|undefined|NaN|Infinity/);
        }
      }),
      { numRuns: 40 },
    );
  }, 60_000);
});

describe('small words', () => {
  it('tell one from many', () => {
    expect([plural(1, 'minute'), plural(2, 'minute'), plural(0, 'cause')]).toEqual([
      '1 minute',
      '2 minutes',
      '0 causes',
    ]);
    expect([0.2, 1, 15, 89, 120].map(minutesText)).toEqual([
      'half a minute',
      '1 minute',
      '15 minutes',
      '89 minutes',
      'about 2 hours',
    ]);
  });
  it('tell what a step costs', () => {
    expect(effortText(5, 'free', true)).toBe('5 minutes, free, can be undone');
  });
  it('join lists as people do', () => {
    expect([listText([]), listText(['a']), listText(['a', 'b']), listText(['a', 'b', 'c'], 'or')]).toEqual([
      '',
      'a',
      'a and b',
      'a, b or c',
    ]);
  });
  it('split sentences, not decimals', () => {
    expect(sentencesOf('It is 2.5 m away. Walk there! {limit} is clear.')).toHaveLength(3);
  });
});
