/** Every cause, rule, fact, limit, source and caution does its duty; nothing stands idle. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { missingPlaces } from '../scripts/missing.js';
import { FACT_IDS, type FactId, TEST_IDS } from '../src/facts/catalog.js';
import { type Cause, ruleVariables } from '../src/rules/cause.js';
import { CAUSE_IDS } from '../src/rules/cause-ids.js';
import { CAUTIONS } from '../src/rules/cautions.js';
import { type Condition, isLeaf, variablesOf } from '../src/rules/condition.js';
import { DERIVED_IDS, isDerivedId } from '../src/rules/derived/table.js';
import { factsBehind } from '../src/rules/derived/view.js';
import { CAUSES } from '../src/rules/index.js';
import { LIMITS, type LimitId, limit } from '../src/rules/limits.js';
import { SOURCES } from '../src/rules/sources.js';

const ROOT = join(import.meta.dirname, '..');
const rules = CAUSES.flatMap((cause) =>
  cause.rules.map((rule) => ({ cause, rule, id: `${cause.id}/${rule.id}` })),
);
const remedies = CAUSES.flatMap((cause) =>
  cause.remedies.map((remedy) => ({ cause, remedy, id: `${cause.id}/${remedy.id}` })),
);
const sourceText = readdirSync(join(ROOT, 'src'), { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.ts'))
  .map((file) => readFileSync(join(ROOT, 'src', file), 'utf8'))
  .join('\n');

function conditionsOf(cause: Cause): Condition[] {
  return [
    cause.applies,
    ...cause.rules.flatMap((rule) => [rule.applies, rule.when]),
    ...cause.remedies.flatMap((r) => [r.when, r.seen]),
  ].filter((c) => c !== undefined);
}
const read = new Set(
  CAUSES.flatMap((cause) => [
    ...conditionsOf(cause).flatMap(variablesOf),
    ...cause.rules.flatMap(ruleVariables),
  ]),
);

describe('causes', () => {
  it('and cases have everything they need elsewhere, each place by name', () => {
    expect(missingPlaces()).toEqual([]);
    expect(CAUSES.map((cause) => cause.id)).toEqual([...CAUSE_IDS]);
  });
  it('hold some hundred and twenty rules or more, each id once', () => {
    const ids = rules.map(({ id }) => id);
    expect(ids.length).toBeGreaterThanOrEqual(120);
    expect(new Set(ids).size).toBe(ids.length);
  });
  it('put free steps before paid ones', () => {
    const rank = { free: 0, low: 1, medium: 2, high: 3 } as const;
    for (const cause of CAUSES) {
      const costs = cause.remedies.map((remedy) => rank[remedy.cost]);
      expect(costs, cause.id).toEqual([...costs].sort((a, b) => a - b));
    }
  });
  it('are confirmed by outcomes that their own rules read', () => {
    const deaf = CAUSES.flatMap((cause) =>
      cause.confirm
        .filter(({ test }) => !cause.rules.some((rule) => variablesOf(rule.when).includes(test)))
        .map(({ test }) => `${cause.id}: ${test}`),
    );
    expect(deaf).toEqual([]);
  });
});

describe('words', () => {
  it('of rules and remedies are sentences without a slip', () => {
    const texts = [
      ...rules.flatMap(({ id, rule }) =>
        [rule.says.yes, rule.says.no, rule.because].map((text) => ({ id, text })),
      ),
      ...remedies.flatMap(({ id, remedy }) =>
        [remedy.expect, remedy.verify, ...remedy.steps].map((text) => ({ id, text })),
      ),
      ...CAUSES.flatMap((cause) => [cause.story, cause.notWhen].map((text) => ({ id: cause.id, text }))),
    ];
    const bad = texts.filter(
      ({ text }) => !/^["“A-Z0-9{]/.test(text) || !/[.?!:)”"]$/.test(text) || / {2}|\bTODO\b/.test(text),
    );
    expect(bad).toEqual([]);
  });
  it('name only variables that exist', () => {
    const names = [...FACT_IDS, ...DERIVED_IDS, 'limit', 'after', 'range'] as string[];
    const texts = [
      ...rules.flatMap(({ rule }) => Object.values(rule.says)),
      ...remedies.flatMap(({ remedy }) => [remedy.title, remedy.expect, remedy.verify, ...remedy.steps]),
    ];
    const unknown = texts
      .flatMap((text) => [...text.matchAll(/\{([^}]*)\}/g)].map((m) => m[1] as string))
      .filter((name) => !names.includes(name));
    expect(unknown).toEqual([]);
  });
});

describe('facts', () => {
  it('are each read by a rule, a computed fact, a check for contradictions, or a drawing', () => {
    const behind = new Set([...read].flatMap((id) => (isDerivedId(id) ? factsBehind(id) : [id as FactId])));
    const others = ['src/facts/contradictions', 'src/explain/plots']
      .flatMap((folder) =>
        readdirSync(join(ROOT, folder), { encoding: 'utf8' }).map((file) => join(ROOT, folder, file)),
      )
      .filter((file) => file.endsWith('.ts'))
      .map((file) => readFileSync(file, 'utf8'))
      .join('\n');
    expect(FACT_IDS.filter((id) => !behind.has(id) && !others.includes(id))).toEqual([]);
  });
  it('that are home tests move at least one cause each', () => {
    expect(TEST_IDS.filter((id) => !read.has(id))).toEqual([]);
  });
});

describe('tables', () => {
  const limitsRead = new Set(
    CAUSES.flatMap(conditionsOf).flatMap(function limits(c): string[] {
      if (!isLeaf(c)) return ('all' in c ? c.all : 'any' in c ? c.any : [c.not]).flatMap(limits);
      return typeof c.value === 'object' && 'fact' in c.value ? [c.value.fact.split('.')[1] ?? ''] : [];
    }),
  );
  it('hold no limit that nothing reads', () => {
    expect(
      Object.keys(LIMITS).filter((id) => !limitsRead.has(id) && !sourceText.includes(`LIMITS.${id}`)),
    ).toEqual([]);
  });
  it('grade every limit in one direction', () => {
    for (const [id, { noticeable, clear, severe, ...rest }] of Object.entries(LIMITS)) {
      const grades = 'lowIsBad' in rest ? [severe, clear, noticeable] : [noticeable, clear, severe];
      expect(grades, id).toEqual([...grades].sort((a, b) => a - b));
      expect(new Set(grades).size, id).toBe(3);
    }
  });
  it('hold no source that nothing cites', () => {
    const cited = new Set([
      ...rules.map(({ rule }) => rule.source),
      ...(Object.keys(LIMITS) as LimitId[]).flatMap((id) => [limit(id).source, limit(id).grades]),
    ] as string[]);
    expect(
      Object.keys(SOURCES).filter(
        (id) =>
          !cited.has(id) && !sourceText.includes(`SOURCES.${id}`) && !sourceText.includes(`SOURCES['${id}']`),
      ),
    ).toEqual([]);
  });
  it('hold no caution that no step needs, and say who does what is licensed', () => {
    const used = new Set(remedies.flatMap(({ remedy }) => remedy.cautions) as string[]);
    expect(
      Object.keys(CAUTIONS).filter(
        (id) => !used.has(id) && !sourceText.includes(`'${id}'`.concat(',')) && id !== 'licensed-trade',
      ),
    ).toEqual([]);
    expect(CAUTIONS['licensed-trade']).toMatch(/licensed trade/);
  });
});
