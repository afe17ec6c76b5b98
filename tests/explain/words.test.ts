import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fillingOf } from '../../src/explain/report-evidence.js';
import {
  aboutMinutesText,
  answerText,
  capital,
  effortText,
  factText,
  fill,
  fillKnown,
  fillNaming,
  gateText,
  idText,
  listText,
  minutesText,
  named,
  plural,
  quantityText,
  sentence,
  sentencesOf,
  variablesIn,
  variableText,
} from '../../src/explain/words.js';
import { withAnswer } from '../../src/facts/book.js';
import { factSpec, isFactId } from '../../src/facts/catalog.js';
import { auditSync } from '../../src/reasoning/audit.js';
import { all, any, is, type VarId } from '../../src/rules/condition.js';
import { DERIVED, isDerivedId } from '../../src/rules/derived/table.js';
import { viewOf } from '../../src/rules/derived/view.js';
import { CAUSES } from '../../src/rules/index.js';
import type { Reading, View } from '../../src/rules/view.js';
import { anyBook } from '../support/books.js';
import { bookOf } from '../support/causeClaims.js';

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
    for (const template of ['a dip of {layoutDipDb}', '{limit} is clear', '{nothingLikeThat}'])
      expect(fill(template, gappy, 'metric'), template).toBeUndefined();
    expect(fill('{seatDistance}, a dip of {limit}', FULL, 'metric')).toBeUndefined();
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

  it('name their variables, each once', () => {
    expect(variablesIn('{seatDistance} and {limit}, {limit.dipDb.clear}; {seatDistance} {not-one}')).toEqual([
      'seatDistance',
      'limit',
      'limit.dipDb.clear',
    ]);
    expect(variablesIn('none')).toEqual([]);
  });
  it('let every other failure through', () => {
    const broken = {
      read: () => {
        throw new RangeError('broken');
      },
    } as never as View;
    expect(() => fillKnown('{seatDistance} is far.', broken, 'metric', '-')).toThrow('broken');
  });

  const templates = CAUSES.flatMap((cause) => [
    ...cause.rules.flatMap((rule) =>
      (['yes', 'no'] as const).map((outcome) => ({
        where: `${cause.id}/${rule.id} ${outcome}`,
        text: rule.says[outcome],
        filling: fillingOf(rule, {
          leaves: [],
          ...(rule.weigh.kind === 'deviation' ? { threshold: 4 } : {}),
          ...(rule.weigh.kind === 'match' ? { range: [400, 500] } : {}),
        }),
        ownLimit: rule.weigh.kind === 'answer' && JSON.stringify(rule.when).includes('limit.'),
      })),
    ),
    ...cause.remedies.flatMap((remedy) => [
      {
        where: `${cause.id} ${remedy.id} expect`,
        text: remedy.expect,
        filling: { after: { value: 2, unit: 'dB' } as const },
        ownLimit: false,
      },
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
    expect([0.2, 15, 120].map(aboutMinutesText)).toEqual([
      'about half a minute',
      'about 15 minutes',
      'about 2 hours',
    ]);
  });
  it('tell what a step costs', () => {
    expect(effortText(5, 'free')).toBe('5 minutes, free');
    expect(effortText(5, 'low', true)).toBe('5 minutes, small cost, cannot be undone');
  });
  it('join lists as people do', () => {
    expect([listText([]), listText(['a']), listText(['a', 'b']), listText(['a', 'b', 'c'], 'or')]).toEqual([
      '',
      'a',
      'a and b',
      'a, b or c',
    ]);
  });
  it('begin large inside and outside of a sentence, and end with one stop', () => {
    expect([capital('the box'), capital('')]).toEqual(['The box', '']);
    expect(named('the box')).toBe('“The box”');
    expect(['a b', 'a b.', 'why?', 'stop!', 'so:', 'a. b'].map(sentence)).toEqual([
      'A b.',
      'A b.',
      'Why?',
      'Stop!',
      'So:',
      'A. b.',
    ]);
  });
  it('are made of ids where there is nothing better', () => {
    expect(['where-heard', 'centerLayout', 'a-b-c', 'step2'].map(idText)).toEqual([
      'where heard',
      'center layout',
      'a b c',
      'step 2',
    ]);
  });
  it('tell what can be undone only where that is asked', () => {
    expect(effortText(5, 'low')).toBe('5 minutes, small cost');
    expect(effortText(90, 'high', true)).toBe('about 2 hours, high cost, cannot be undone');
    expect(minutesText(0.75)).toBe('1 minute');
  });
  it('split sentences at any gap', () => {
    expect(sentencesOf('One.  Two? “Three.” {four}.')).toEqual(['One.', 'Two?', '“Three.” {four}.']);
  });
  it('split sentences, not decimals', () => {
    expect(sentencesOf('It is 2.5 m away. Walk there! {limit} is clear.')).toHaveLength(3);
  });
});

describe('an answer in words', () => {
  it('has the words of its choice, or the number in the units of the owner', () => {
    const book = { ...bookOf({ centerLayout: 'coaxial', seatDistance: 3 }), units: 'imperial' as const };
    const spec = factSpec('centerLayout');
    expect(answerText(book, 'centerLayout')).toBe(spec.kind === 'choice' ? spec.choices.coaxial : '?');
    expect(answerText(book, 'seatDistance')).toBe('9 ft 10 in (3.00 m)');
    expect(quantityText(3, 'm', 'metric')).not.toBe(quantityText(3, 'm', 'imperial'));
  });
  it('is none where nothing was told, or nobody knew', () => {
    const book = bookOf({});
    expect(answerText(book, 'centerLayout')).toBeUndefined();
    expect(answerText(withAnswer(book, 'centerLayout', { how: 'unknown' }), 'centerLayout')).toBeUndefined();
  });
  it('keeps a path and an unknown choice as they are, on one line', () => {
    expect(factText('responseCenter', 'a/b\nc.txt', 'metric')).not.toContain('\n');
    expect(factText('centerLayout', 'nothing-known', 'metric')).toBe('nothing-known');
    expect(factText('seatDistance', 'far away', 'metric')).toBe('far away');
  });
  it('of a computed choice has no dashes', () => {
    expect(variableText('layoutKind', 'two-in-line', 'metric')).toBe('two in line');
  });
});

describe('what shuts a gate', () => {
  const told = (facts: Parameters<typeof bookOf>[0]) => viewOf(bookOf(facts));
  const label = (id: 'upmixUse' | 'centerCount'): string => factSpec(id).label;
  const gate = all(is('centerCount', 'two'), { not: any(is('upmixUse', 'on'), is('voiceBoost', 'on')) });
  it('is told by the first part of its condition that is known, however deep', () => {
    expect(gateText(gate, told({ centerCount: 'one', upmixUse: 'on' }), 'metric')).toMatch(
      new RegExp(`^${label('centerCount')}: “.+”$`),
    );
    expect(gateText(gate, told({ upmixUse: 'off' }), 'metric')).toContain(`${label('upmixUse')}: “`);
    expect(gateText(gate, told({ voiceBoost: 'off' }), 'metric')).toContain(factSpec('voiceBoost').label);
  });
  it('is not told where nothing of it is known', () => {
    expect(gateText(gate, told({}), 'metric')).toBeUndefined();
  });
});
