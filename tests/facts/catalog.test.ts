import { describe, expect, it } from 'vitest';
import { FACT_IDS, FACTS, type FactId, factSpec, TEST_IDS } from '../../src/facts/catalog.js';
import { COMPLAINT_IDS, COMPLAINTS } from '../../src/facts/complaints.js';
import { FAMILIES, type FactSpec } from '../../src/facts/spec.js';

/** A question is read aloud in one breath. */
const WORDS_IN_ONE_BREATH = 25;
/** A hint is one short line. */
const HINT_LETTERS = 80;

const specs: readonly (readonly [FactId, FactSpec])[] = FACT_IDS.map((id) => [id, factSpec(id)]);
const wordCount = (text: string): number => text.trim().split(/\s+/).length;

describe.each(specs)('%s', (id, spec) => {
  it('can be asked aloud in one breath, as one question', () => {
    expect(wordCount(spec.ask)).toBeLessThanOrEqual(WORDS_IN_ONE_BREATH);
    expect(spec.ask).toMatch(/^[A-Z].*\?$/);
    expect(spec.ask.match(/\?/g)).toHaveLength(1);
    expect(spec.ask).not.toMatch(/and\/or/);
  });

  it('has a hint of one line, a reason, a way to find out and its price in minutes', () => {
    expect(spec.hint.length).toBeGreaterThan(0);
    expect(spec.hint.length).toBeLessThanOrEqual(HINT_LETTERS);
    expect(spec.why).toMatch(/\.$/);
    expect(spec.findOut.length).toBeGreaterThan(0);
    for (const step of spec.findOut) expect(step.trim()).not.toBe('');
    expect(spec.minutes).toBeGreaterThan(0);
    expect(FAMILIES).toContain(spec.family);
    expect(spec.label.length).toBeLessThanOrEqual(50);
  });

  it('is worded in American English, without blame and without words of alarm', () => {
    const prose = [spec.label, spec.ask, spec.hint, spec.why, ...spec.findOut].join(' ');
    expect(prose).not.toMatch(/colour|centre|metre\b|metres|equalis|programme|behaviour/i);
    expect(prose).not.toMatch(
      /\b(invalid|illegal|forbidden|wrongly|your fault|you should have|oops|sorry|please)\b/i,
    );
  });

  it('asks only under conditions that exist', () => {
    for (const [condition, values] of Object.entries(spec.askedWhen ?? {})) {
      expect(FACT_IDS).toContain(condition);
      const asked = factSpec(condition as FactId);
      expect(asked.kind).toBe('choice');
      if (asked.kind !== 'choice') continue;
      expect(values.length).toBeGreaterThan(0);
      for (const value of values) expect(Object.keys(asked.choices)).toContain(value);
    }
  });

  it('has ranges, typical answers and a default inside each other', () => {
    if (spec.kind === 'choice') {
      expect(Object.keys(spec.choices).length).toBeGreaterThan(1);
      if (spec.assume) expect(Object.keys(spec.choices)).toContain(spec.assume.value);
    }
    if (spec.kind !== 'number') return;
    const [least, most] = spec.possible;
    const [low, high] = spec.plausible;
    expect(least).toBeLessThanOrEqual(low);
    expect(low).toBeLessThan(high);
    expect(high).toBeLessThanOrEqual(most);
    expect(spec.typical.length).toBeGreaterThan(1);
    for (const value of [...spec.typical, spec.assume?.value ?? low]) {
      expect(value).toBeGreaterThanOrEqual(low);
      expect(value).toBeLessThanOrEqual(high);
    }
    if (spec.assume) {
      expect(spec.assume.spread).toBeGreaterThan(0);
      expect(spec.assume.note).not.toBe('');
    }
    if (spec.whole) expect([...spec.possible, ...spec.typical].every(Number.isInteger)).toBe(true);
    expect(spec.written === 'plain').toBe(spec.unit !== 'm');
  });

  it('is never a condition of itself, directly or around a corner', () => {
    const reach = (from: FactId, seen: readonly FactId[]): void => {
      for (const next of Object.keys(factSpec(from).askedWhen ?? {}) as FactId[]) {
        expect([id, ...seen], `${id} depends on itself`).not.toContain(next);
        reach(next, [...seen, next]);
      }
    };
    reach(id, []);
  });
});

describe('the catalog', () => {
  it('names every fact differently on review screens', () => {
    const labels = specs.map(([, spec]) => spec.label);
    expect(new Set(labels).size).toBe(labels.length);
  });

  it('asks no two facts with the same words', () => {
    const asks = specs.map(([, spec]) => spec.ask);
    expect(new Set(asks).size).toBe(asks.length);
  });

  it('keeps plain words of choices apart within a fact', () => {
    for (const [, spec] of specs) {
      if (spec.kind !== 'choice') continue;
      const words = Object.values(spec.choices);
      expect(new Set(words).size).toBe(words.length);
    }
  });

  it('holds all the home tests of the trade, each with at least two outcomes', () => {
    expect(TEST_IDS).toHaveLength(29);
    for (const id of TEST_IDS) expect(Object.keys(FACTS[id].choices).length).toBeGreaterThanOrEqual(2);
  });

  it('warns where a step touches wires or goes near a driver', () => {
    for (const [id, spec] of specs) {
      const steps = [spec.ask, ...spec.findOut].join(' ');
      const all = `${spec.hint} ${steps}`;
      if (
        /\b(swap|off the center|terminals|change the cable)\b/i.test(steps) &&
        /cable|wire|clamp/i.test(steps)
      ) {
        expect(all, id).toMatch(/power (is )?off/i);
      }
      if (/\bear (close|near|to each|goes near)\b|listen close/i.test(steps))
        expect(all, id).toMatch(/volume/i);
    }
  });

  it('tells complaints apart with a title and a hint, and a chance that nothing listed explains them', () => {
    for (const id of COMPLAINT_IDS) {
      const { title, hint, leak } = COMPLAINTS[id];
      expect(title).not.toBe('');
      expect(hint.length).toBeLessThanOrEqual(HINT_LETTERS);
      expect(leak).toBeGreaterThan(0);
      expect(leak).toBeLessThan(0.5);
    }
    expect(COMPLAINT_IDS).toHaveLength(30);
  });
});
