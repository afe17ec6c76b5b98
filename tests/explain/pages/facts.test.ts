/** Pages of questions and home tests: what is asked, why, what may be answered and what follows from it. */
import { describe, expect, it } from 'vitest';
import { factPage, factPages } from '../../../src/explain/pages/facts.js';
import { capital } from '../../../src/explain/words.js';
import { FACT_IDS, factSpec } from '../../../src/facts/catalog.js';
import type { CauseId } from '../../../src/rules/cause-ids.js';
import { CAUTIONS } from '../../../src/rules/cautions.js';
import { causeOf } from '../../../src/rules/index.js';
import { belowItems, headings, labeled, linesUnder, linksUnder } from './sections.js';

const titleOf = (id: CauseId): string => capital(causeOf(id).title);

describe('the page of a question', () => {
  it('asks it, says why, how long it takes, how the answer is known and how to find out', () => {
    const spec = factSpec('centerPowered');
    const page = factPage('centerPowered');
    expect(linesUnder(page)).toEqual([spec.ask]);
    expect(labeled(page)).toMatchObject({
      Hint: spec.hint,
      Why: spec.why,
      Takes: 'Half a minute.',
      Usually: 'The answer is plain to see.',
    });
    expect(linesUnder(page, 'How to find out')).toEqual(spec.findOut);
  });
  it('is that of a home test where one has to do something', () => {
    expect([factPage('testTape').kind, factPage('earHeight').kind]).toEqual(['test', 'fact']);
  });
  it('says where alone it is asked, in words', () => {
    expect(labeled(factPage('centerSpreadAmount')).Asked).toBe('Only where center spread is “on”.');
    expect(labeled(factPage('earHeight')).Asked).toBeUndefined();
    for (const id of FACT_IDS) {
      const asked = labeled(factPage(id)).Asked ?? '';
      const values = Object.values(factSpec(id).askedWhen ?? {}).flat();
      expect(asked.split(/“[^”]+”/).length - 1, id).toBe(values.length);
    }
    const several = FACT_IDS.find((id) => Object.values(factSpec(id).askedWhen ?? {}).flat().length === 2);
    expect(several && labeled(factPage(several)).Asked).toMatch(/^Only where .+ is “[^”]+” or “[^”]+”\.$/);
  });
  it('says what is assumed where it is not known, as a guess, or that nothing is', () => {
    expect(labeled(factPage('earHeight'))['Not known']).toMatch(
      /^1\.05 m \(3 ft 5 1\/2 in\) is assumed: seated on a sofa.* It then counts as a guess\.$/,
    );
    expect(labeled(factPage('testTape'))['Not known']).toMatch(/^Nothing is assumed/);
  });
  it('has the caution of what can hurt someone', () => {
    expect(labeled(factPage('testTape')).Caution).toBe(CAUTIONS.laser);
    expect(labeled(factPage('earHeight')).Caution).toBeUndefined();
  });
  it('says what a number may be and what is asked again', () => {
    const told = labeled(factPage('centerSpreadAmount'));
    expect(told.Possible).toBe('0 to 1; anything else is refused.');
    expect(labeled(factPage('earHeight')).Plausible).toMatch(
      /^80 cm \(.*\) to 1\.40 m \(.*\); anything else is asked again\.$/,
    );
    expect(headings(factPage('earHeight'))).toEqual(['How to find out', 'Answers', 'Causes that read it']);
  });
  it('says what a file has to hold', () => {
    expect(linesUnder(factPage('responseLeft'), 'Answers')).toEqual([
      expect.stringMatching(/frequency in Hz and level/),
    ]);
  });
  it('links the causes that read it, itself or by what is computed from it, and no others', () => {
    expect(linksUnder(factPage('testTape'), 'Causes that read it')).toEqual([
      'cause/delay',
      'cause/polarity',
    ]);
    const readers = linksUnder(factPage('earHeight'), 'Causes that read it');
    expect(readers).toEqual(expect.arrayContaining(['cause/height', 'cause/aim', 'cause/delay']));
    expect(readers).not.toContain('cause/preference');
  });
  it('stands once for every question', () => {
    expect(factPages().map(({ id }) => id)).toEqual(FACT_IDS);
  });
});

describe('the answers to choose from', () => {
  it('each say what they mean, and for or against which causes they speak by themselves', () => {
    const page = factPage('testTape');
    expect(linesUnder(page, 'Answers')).toEqual([
      'agrees: they agree within 4 in (10 cm)',
      'off: off by more than 4 in (10 cm)',
      'wrong-unit: off by a factor of about three',
    ]);
    const [agrees, off, wrongUnit] = belowItems(page, 'Answers');
    // 0.92 against 0.15: odds of five to one.
    expect(off).toContain(`${titleOf('delay')}: substantial, for it.`);
    expect(agrees).toContain(`${titleOf('delay')}: substantial, against it.`);
    expect(wrongUnit).toEqual(off);
  });
  it('say nothing of a rule that only ever speaks the other way', () => {
    const [no, yes, too] = belowItems(factPage('centerPowered'), 'Answers');
    expect(yes).toEqual([`${titleOf('delay')}: substantial, for it.`]);
    expect([no, too]).toEqual([[], []]);
  });
  it('say nothing of rules that read more than this one question', () => {
    // Noise that covers speech is a matter of how loud it is and how loud one listens.
    expect(causeOf('room-acoustics').rules.map(({ id }) => id)).toContain('noise-covers-speech');
    const told = belowItems(factPage('listeningLevel'), 'Answers').flat();
    expect(told.filter((line) => line.startsWith(titleOf('room-acoustics')))).toEqual([]);
  });
});
