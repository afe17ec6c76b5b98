import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { complaintWords } from '../../src/facts/words/complaints.js';
import { IDIOMS } from '../../src/facts/words/idioms.js';
import { listeningWords } from '../../src/facts/words/listening.js';
import { CLASSES, NOUNS } from '../../src/facts/words/nouns.js';
import { setupWords } from '../../src/facts/words/setup.js';
import { telltaleWords } from '../../src/facts/words/telltales.js';
import { thingWords } from '../../src/facts/words/things.js';
import { DOING, OUTCOME_WORDS, trialWords } from '../../src/facts/words/trials.js';
import { readText } from '../../src/reading/read.js';

const lists = (value: unknown, key = ''): string[] => {
  if (typeof value === 'string') return key === 'outcome' ? [] : [value];
  return Object.entries(value as object).flatMap(([name, each]) =>
    name === 'outcome' ? [] : lists(each, name),
  );
};
const ALL = [
  complaintWords,
  listeningWords,
  setupWords,
  thingWords,
  telltaleWords,
  trialWords,
  OUTCOME_WORDS,
  IDIOMS,
  NOUNS,
  CLASSES,
  DOING,
]
  .flatMap((each) => lists(each))
  .flatMap((list) => list.split(';').map((phrase) => phrase.trim()))
  .filter((phrase) => phrase !== '');

describe('the lexicon', () => {
  it('holds only words, gaps, classes and quantities', () => {
    const piece = /^(?:\.\.\.?|\{[a-z]+\}|[=@a-z0-9&#_.+|-]+\??)$/i;
    expect(ALL.filter((phrase) => !phrase.split(/\s+/).every((each) => piece.test(each)))).toEqual([]);
  });

  it('holds no hyphen among alternatives, since a hyphen parts words', () => {
    expect(
      ALL.filter((phrase) => phrase.split(/\s+/).some((each) => each.includes('|') && each.includes('-'))),
    ).toEqual([]);
  });

  it('holds no phrase of nothing but words that may be left out', () => {
    expect(ALL.filter((phrase) => phrase.split(/\s+/).every((each) => each.endsWith('?')))).toEqual([]);
  });
});

/** Phrasings by fact; none of them stands in a text that is kept aside. */
const PHRASES = JSON.parse(
  readFileSync(join(import.meta.dirname, '../../eval/reading/phrases.json'), 'utf8'),
) as { fact: string; phrases: Record<string, string[]> }[];
/** Values that no single line can tell. */
const UNTOLD = new Set(['file', 'unknown']);

describe('phrasings by fact', () => {
  const told = PHRASES.filter(({ fact }) => !fact.startsWith('new:')).flatMap(({ fact, phrases }) =>
    Object.entries(phrases)
      .filter(([value]) => !UNTOLD.has(value))
      .flatMap(([value, list]) => list.map((phrase) => ({ fact, value, phrase }))),
  );
  const isRead = ({ fact, value, phrase }: (typeof told)[number]): boolean =>
    readText(phrase).taken.some((each) => {
      if (each.fact !== fact) return false;
      if (value === 'number') return typeof each.value === 'number';
      if (value === 'present' && each.value === true) return !each.negated;
      if (value === 'absent' || value.startsWith('not:'))
        return each.negated || each.value !== value.slice(4);
      return each.value === value && !each.negated;
    });

  it('are read, each as a text of its own, in at least three of four', () => {
    expect(told.filter(isRead).length / told.length).toBeGreaterThan(0.75);
  });
});
