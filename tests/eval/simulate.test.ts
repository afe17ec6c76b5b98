import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../eval/random.js';
import { flipped, withHidden } from '../../eval/score-cases.js';
import { healthyWorld, heightErrorDeg, layoutAt, seatsIn } from '../../eval/simulate/world.js';
import { callOf, simulateOwner } from '../../eval/simulate.js';
import { withAnswer } from '../../src/facts/book.js';
import { FACT_IDS, factSpec } from '../../src/facts/catalog.js';
import { COMPLAINT_IDS } from '../../src/facts/complaints.js';
import { CAUSE_IDS } from '../../src/rules/cause-ids.js';

const owners = Array.from({ length: 400 }, (_, seed) => simulateOwner(seed + 1));

describe('simulated owners', () => {
  it('are drawn without a look at rules or reasoning', () => {
    const folder = fileURLToPath(new URL('../../eval/', import.meta.url));
    const files = ['simulate.ts', ...readdirSync(`${folder}simulate`).map((file) => `simulate/${file}`)];
    const imports = files.flatMap((file) =>
      [...readFileSync(folder + file, 'utf8').matchAll(/from '([^']+)'/g)].map(([, path]) => path ?? ''),
    );
    expect(imports.filter((path) => /\/(rules|reasoning)\//.test(path))).toEqual([]);
  });

  it('are the same for the same seed', () => {
    expect(simulateOwner(7)).toEqual(simulateOwner(7));
  });

  it('suffer from every cause of the contract, and now and then from two', () => {
    const seen = new Set<string>(owners.flatMap(({ truths }) => truths));
    expect(CAUSE_IDS.filter((id) => !seen.has(id))).toEqual([]);
    const two = owners.filter(({ truths }) => truths.length === 2).length / owners.length;
    expect(two).toBeGreaterThan(0.03);
    expect(two).toBeLessThan(0.2);
  });

  it('call with at least one complaint of the catalog', () => {
    expect(owners.filter(({ complaints }) => complaints.length === 0)).toEqual([]);
    const all = owners.flatMap(({ complaints }) => complaints);
    expect(all.every((id) => COMPLAINT_IDS.includes(id))).toBe(true);
  });

  it('answer only what a question accepts', () => {
    for (const { sheet } of owners.slice(0, 100)) {
      for (const [id, answer] of sheet) {
        if (!('value' in answer)) continue;
        const spec = factSpec(id);
        if (spec.kind === 'choice') expect(Object.keys(spec.choices), id).toContain(answer.value);
        if (spec.kind === 'number') {
          expect(answer.value, id).toBeGreaterThanOrEqual(spec.possible[0]);
          expect(answer.value, id).toBeLessThanOrEqual(spec.possible[1]);
        }
      }
    }
  });

  it('leave some questions open and know most', () => {
    const answers = owners.flatMap(({ sheet }) => [...sheet.values()]);
    const unknown = answers.filter(({ how }) => how === 'unknown').length / answers.length;
    expect(unknown).toBeGreaterThan(0.08);
    expect(unknown).toBeLessThan(0.25);
  });

  it('start from a system in which nothing is clearly audible', () => {
    for (let seed = 1; seed <= 40; seed += 1) {
      const world = healthyWorld(randomFrom(seed));
      expect(Math.abs(heightErrorDeg(world))).toBeLessThan(10);
      for (const seat of seatsIn(world)) expect(layoutAt(world, seat).dipDb).toBeGreaterThan(-4);
    }
  });
});

describe('disturbed books', () => {
  const book = FACT_IDS.filter((id) => factSpec(id).kind === 'choice')
    .slice(0, 10)
    .reduce(
      (soFar, id) => {
        const spec = factSpec(id);
        const value = spec.kind === 'choice' ? (Object.keys(spec.choices)[0] ?? '') : '';
        return withAnswer(soFar, id, { value, how: 'read' });
      },
      callOf(simulateOwner(1)),
    );

  it('lose just the part that is hidden, and no complaint', () => {
    const hidden = withHidden(book, 0.4, randomFrom(1));
    expect(hidden.answers.size).toBe(6);
    expect(hidden.complaints).toEqual(book.complaints);
  });

  it('say something else where an answer is flipped, and the same elsewhere', () => {
    const [id] = book.answers.keys();
    if (id === undefined) throw new Error('the book is empty');
    const turned = flipped(book, id, randomFrom(1));
    const differing = [...book.answers].filter(([key, answer]) => turned.answers.get(key) !== answer);
    expect(differing.map(([key]) => key)).toEqual([id]);
    expect(turned.answers.get(id)).not.toEqual(book.answers.get(id));
  });
});
