import { describe, expect, it } from 'vitest';
import { EMPTY_BOOK, type FactBook, withAnswer } from '../../src/facts/book.js';
import { FACT_IDS, factSpec } from '../../src/facts/catalog.js';
import { COMPLAINT_IDS } from '../../src/facts/complaints.js';
import { begin } from '../../src/interview/conversation.js';
import { progress } from '../../src/interview/flow.js';
import { newsLines } from '../../src/interview/news.js';
import { entriesOf, promptOf } from '../../src/interview/screens.js';
import { breathOf, MOST_SPOKEN, spokenGroups } from '../../src/interview/spoken.js';
import { bookOf, top } from '../../src/interview/state.js';
import { auditSync } from '../../src/reasoning/audit.js';
import { answer, asking, SETTINGS, saidBy, type } from './talk.js';

const noMiddle: FactBook = { ...EMPTY_BOOK, complaints: ['no-middle'] };
const news = (before: FactBook, after: FactBook): string[] => {
  const [was, is] = [auditSync(before), auditSync(after)];
  return newsLines(was.ranking, is.ranking, is.causes);
};

describe('what an answer changed', () => {
  it('is said at once: a crossed wire that was seen, and what is ruled out', () => {
    const crossed = withAnswer(noMiddle, 'polarityMarks', { value: 'center-crossed', how: 'seen' });
    expect(news(noMiddle, crossed).join(' ')).toMatch(/^That points to “[^”]*polarity/);
    const asked = type(asking('polarityMarks', noMiddle), '1');
    expect(asked.said.length).toBeGreaterThan(0);
  });
  it('is nothing where nobody would remark on it', () => {
    expect(news(noMiddle, noMiddle)).toEqual([]);
    expect(news(noMiddle, withAnswer(noMiddle, 'lipSync', { how: 'unknown' }))).toEqual([]);
  });
});

describe('a call', () => {
  const CALL = { ...SETTINGS, call: true };
  it.each([
    ['on the phone', CALL],
    ['on a screen', SETTINGS],
  ])('asks what is heard in two steps, each short enough to keep in mind: %s', (_, settings) => {
    const opened = type(begin(EMPTY_BOOK, settings), 'x');
    const first = promptOf(opened).choices;
    expect(first.length).toBeLessThanOrEqual(MOST_SPOKEN + 1);
    const second = type(opened, '2');
    expect(top(second).kind).toBe('among');
    expect(entriesOf(second, top(second)).length).toBeLessThan(11);
    const wanted = entriesOf(second, top(second))[0]?.value;
    expect(bookOf(type(second, '1')).complaints).toEqual([wanted]);
  });
  it('has every complaint and every layout in one of the groups', () => {
    for (const [topic, values] of [
      ['complaints', COMPLAINT_IDS],
      ['centerLayout', choicesOf('centerLayout')],
    ] as const) {
      const groups = spokenGroups(topic, values) ?? [];
      expect(groups.flatMap((group) => group.values).sort()).toEqual([...values].sort());
      expect(groups.map(({ say }) => say)).not.toContain('something else');
    }
  });
  it('gives the question to say, how to find out in a breath, and what to say back', () => {
    const state = type(begin({ ...EMPTY_BOOK, complaints: ['dull'] }, CALL), '?');
    const prompt = promptOf(state);
    expect(prompt.ask).toMatch(/^Say: “.*”$/);
    expect(prompt.hint).toMatch(/^If asked how: /);
    expect(saidBy(type(state, '?'))).toContain('Say: “Never mind');
    expect(saidBy(type(state, '1'))).toMatch(/Say back: “/);
  });
  it('has a breath for every question', () => {
    for (const id of FACT_IDS) {
      const [first] = factSpec(id).findOut;
      expect(breathOf(id).startsWith(first ?? '')).toBe(true);
      if (breathOf(id) !== first) expect(breathOf(id).split(/\s+/).length).toBeLessThanOrEqual(25);
    }
  });
});

describe('what is left', () => {
  it('is told in minutes too, and of a given time what remains of it', () => {
    let clock = 0;
    const limited = begin(noMiddle, { ...SETTINGS, minutes: 9, now: () => clock });
    clock = 4 * 60_000;
    const state = type(limited, '1');
    expect(progress(state)).toMatch(/^Question \d+, .*5 minutes left$/);
    expect(progress(type(begin(noMiddle, SETTINGS), '1'))).toMatch(/at most \d+ more, about /);
  });
  it('never is infinite, however often an answer is changed with everything asked', () => {
    const full = type(begin(EMPTY_BOOK, { ...SETTINGS, full: true }), 'x', '1', '1', '1', '1');
    expect(progress(type(full, 'r', '4', '2'))).not.toContain('Infinity');
    expect(answer(type(full, 'r', '4', '2'), 'playedContent')).toBe('multichannel-film');
  });
});

function choicesOf(id: 'centerLayout'): string[] {
  const spec = factSpec(id);
  return spec.kind === 'choice' ? Object.keys(spec.choices) : [];
}
