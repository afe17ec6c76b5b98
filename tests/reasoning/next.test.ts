import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Answer, EMPTY_BOOK, type FactBook, withAnswer } from '../../src/facts/book.js';
import { FACT_IDS, type FactId, factSpec, isFactId } from '../../src/facts/catalog.js';
import type { ComplaintId } from '../../src/facts/complaints.js';
import { impliedAnswer, toldOrImplied } from '../../src/facts/implied.js';
import { auditSync } from '../../src/reasoning/audit.js';
import { blockQuestion } from '../../src/reasoning/blocks.js';
import { isAsked, makesSense, openFacts, possibleAnswers } from '../../src/reasoning/hypotheses.js';
import { isSure, next, questionsLeft } from '../../src/reasoning/next.js';
import { answerChances, baseRates, hypothesesOf } from '../../src/reasoning/predict.js';
import { isSettled } from '../../src/reasoning/reach.js';
import { ruleIndex } from '../../src/reasoning/rule-index.js';
import { faultProbabilities } from '../../src/reasoning/suspects.js';
import { anyBook } from './books.js';

const RUNS = { numRuns: 8 };
const start: FactBook = { ...EMPTY_BOOK, complaints: ['voice-unclear-off-side'] };
const hollow: FactBook = { ...EMPTY_BOOK, complaints: ['hollow', 'image-collapses-to-center'] };

describe('the next question', () => {
  it('was not asked before, makes sense now, and can move a cause', () => {
    fc.assert(
      fc.property(anyBook, (book) => {
        const audit = auditSync(book);
        const step = next(audit);
        for (const { fact, moves } of step.candidates) {
          expect(book.answers.has(fact)).toBe(false);
          for (const [parent, accepted] of Object.entries(factSpec(fact).askedWhen ?? {}))
            expect(accepted).toContain(toldOrImplied(book, parent as FactId));
          expect(ruleIndex(audit.causes).causesOf.has(fact)).toBe(true);
          expect(moves.length).toBeGreaterThan(0);
        }
        if (step.kind === 'stop') expect(step.reason).toBeDefined();
        else expect(step.candidates.map((c) => c.fact)).toContain(step.fact);
      }),
      RUNS,
    );
  });
  it('pays: it saves more minutes than it costs', () => {
    const step = next(auditSync(start));
    const chosen = step.candidates.find((c) => c.fact === step.fact);
    expect(step.kind).toBe('question');
    expect(chosen?.netMinutes).toBeGreaterThan(0);
  });
  it('no answer is expected to raise a cause on average: today is the mean of tomorrow', () => {
    fc.assert(
      fc.property(anyBook, fc.constantFrom(...FACT_IDS), (book, fact) => {
        const audit = auditSync(withAnswer(book, fact, undefined));
        const hypotheses = hypothesesOf(audit, fact);
        if (hypotheses.length === 0) return;
        const p = faultProbabilities(audit);
        const chances = answerChances(hypotheses, baseRates(hypotheses), audit.causes.length);
        p.forEach((now, i) => {
          const later = chances.reduce((sum, row) => sum + now * (row[i] ?? 0), 0);
          expect(Math.abs(later - now)).toBeLessThan(1e-9);
        });
        expect(p.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 9);
      }),
      RUNS,
    );
  });
  it('stays with the topic of the last answer unless another topic saves clearly more', () => {
    const audit = auditSync(start);
    const { candidates } = next(audit, { questionsOnly: true });
    const paying = candidates.filter((c) => c.netMinutes > 0);
    const best = paying[0];
    for (const other of paying) {
      const family = factSpec(other.fact).family;
      const step = next(audit, { family, questionsOnly: true });
      const chosen = paying.find((c) => c.fact === step.fact);
      const loss = (best?.netMinutes ?? 0) - (chosen?.netMinutes ?? 0);
      expect(loss).toBeLessThanOrEqual(Math.max(0.5, 0.25 * (best?.netMinutes ?? 0)) + 1e-9);
    }
  });
  it('respects a time budget', () => {
    const audit = auditSync(start);
    const quick = next(audit, { minutesLeft: 0.3 });
    if (quick.fact) expect(factSpec(quick.fact).minutes).toBeLessThanOrEqual(0.3);
    for (const full of [false, true])
      expect(next(audit, { minutesLeft: 0, full })).toMatchObject({ kind: 'stop', reason: 'time-up' });
    expect(next(audit, { minutesLeft: 60, full: true }).kind).toBe('question');
  });
  it('asked in full, every question that makes sense comes once and the end is honest', () => {
    let book = start;
    const seen = new Set<FactId>();
    for (;;) {
      const step = next(auditSync(book), { full: true });
      if (step.kind === 'stop') break;
      const fact = step.fact as FactId;
      expect(seen.has(fact)).toBe(false);
      seen.add(fact);
      book = withAnswer(book, fact, possibleAnswers(fact)[0] ?? { how: 'unknown' });
      if (seen.size > FACT_IDS.length) throw new Error('asks for ever');
    }
    expect(seen.size).toBeGreaterThan(30);
  }, 60_000);
});

describe('a block of questions', () => {
  const asks = (book: FactBook, answers: Partial<Record<FactId, Answer>>): FactId[] => {
    const asked: FactId[] = [];
    for (let at = book; asked.length < 18; ) {
      const { fact } = next(auditSync(at), { questionsOnly: true });
      if (fact === undefined) break;
      asked.push(fact);
      at = withAnswer(at, fact, answers[fact] ?? { how: 'unknown' });
    }
    return asked;
  };
  const read = (value: number | string): Answer => ({ value, how: 'read' });
  const entries: Partial<Record<FactId, Answer>> = {
    alignmentBy: read('by-hand'),
    entryKind: read('distances'),
    enteredLeft: read(3.6),
    enteredCenter: read(2.4),
    enteredRight: read(3.6),
  };
  it('asks for the entries one after the other as soon as time stands among the first, tape last', () => {
    const asked = asks(hollow, entries);
    const at = Object.keys(entries).map((id) => asked.indexOf(id as FactId));
    expect(Math.min(...at)).toBeGreaterThanOrEqual(0);
    const menu = at.slice(1);
    expect(menu).toEqual([...menu].sort((a, b) => a - b));
    expect((menu.at(-1) ?? 0) - (menu[0] ?? 0)).toBe(3);
    if (asked.includes('tapedCenter')) expect(asked.indexOf('tapedCenter')).toBeGreaterThan(menu.at(-1) ?? 0);
  });
  it('ends where its owner cannot look into the menu', () => {
    const asked = asks(hollow, { alignmentBy: read('by-hand') });
    expect(asked).toContain('entryKind');
    for (const id of ['enteredCenter', 'tapedCenter'] as const) expect(asked).not.toContain(id);
  });
  it('is not begun for a complaint that time and level have nothing to do with', () => {
    expect(blockQuestion(auditSync({ ...EMPTY_BOOK, complaints: ['rattles'] }))).toBeUndefined();
    expect(blockQuestion(auditSync(EMPTY_BOOK))).toBeUndefined();
  });
});

describe('what a question presupposes', () => {
  it('is asked before it: no setting of an upmix before it is known that one is used', () => {
    let book: FactBook = { ...EMPTY_BOOK, complaints: ['image-collapses-to-center'] };
    for (let i = 0; i < 10; i++) {
      const { fact } = next(auditSync(book), { questionsOnly: true });
      if (fact === undefined) break;
      if (factSpec(fact).family === 'upmix' && fact !== 'upmixUse')
        expect(isAsked(book, 'upmixUse')).toBe(true);
      book = withAnswer(book, fact, { how: 'unknown' });
    }
    expect(book.answers.size).toBeGreaterThan(2);
  });
  it('names facts that exist and presuppose nothing themselves', () => {
    for (const id of FACT_IDS)
      for (const before of factSpec(id).presupposes ?? []) {
        expect(isFactId(before)).toBe(true);
        expect(factSpec(before as FactId).presupposes).toBeUndefined();
      }
  });
});

describe('what is left out', () => {
  it('is never proposed', () => {
    const first = next(auditSync(start), { questionsOnly: true }).fact;
    const other = next(auditSync(start), { questionsOnly: true, leaveOut: (id) => id === first });
    expect(other.fact).not.toBe(first);
    expect(other.candidates.map((c) => c.fact)).not.toContain(first);
  });
});

describe('what other answers make pointless', () => {
  it('is never put: a screen for a box in a bay, the display for discs, the count once one was described', () => {
    const open = (answers: readonly [FactId, string][]): FactId[] =>
      openFacts(answers.reduce((book, [id, value]) => withAnswer(book, id, { value, how: 'read' }), start));
    expect(open([])).toEqual(expect.arrayContaining(['screenKind', 'displaySpeakers', 'centerCount']));
    expect(open([['centerPlacement', 'bay']])).not.toContain('screenKind');
    expect(open([['centerPlacement', 'behind-screen']])).toContain('screenKind');
    for (const id of ['displaySpeakers', 'lipSync', 'testMuteDisplay'])
      expect(open([['playedContent', 'two-channel-music']])).not.toContain(id);
    expect(open([['centerLayout', 'mid-tweeter-mid']])).not.toContain('centerCount');
    expect(open([['centerLayout', 'paired-boxes']])).toContain('centerCount');
  });
  it('is never put: a meter once nobody had the noise by ear, newscasts of who told which titles are fine', () => {
    const told = (id: FactId, value?: string): FactId[] =>
      openFacts(withAnswer(start, id, value === undefined ? { how: 'unknown' } : { value, how: 'recalled' }));
    expect(told('voiceLoudness', 'equal')).toContain('measuredCenterLevel');
    expect(told('voiceLoudness')).not.toContain('measuredCenterLevel');
    expect(told('fineTitles', 'news')).not.toContain('speechOrder');
    expect(told('speechOrder', 'news-clear-film-buried')).not.toContain('fineTitles');
    expect(told('troubleTitles', 'all')).not.toContain('fineContent');
    // Nor of what an upmix does, of who does not know whether one is on.
    expect(told('upmixUse', 'on')).toContain('upmixCommonPart');
    expect(told('upmixUse')).not.toContain('upmixCommonPart');
    // Who cannot tell on which titles it is, or at which seats, cannot tell where it is not.
    for (const [one, other] of [
      ['troubleTitles', 'fineTitles'],
      ['troubleSeats', 'fineSeats'],
    ] as const) {
      expect(told(one)).not.toContain(other);
      expect(told(other)).not.toContain(one);
    }
  });
  it('is never put: what a mix buries, of a stage that collapses', () => {
    const open = (...complaints: ComplaintId[]): FactId[] => openFacts({ ...EMPTY_BOOK, complaints });
    for (const id of ['speechOrder', 'fineTitles'] as const) {
      expect(open('image-collapses-to-center')).not.toContain(id);
      expect(open('image-collapses-to-center', 'voice-unclear')).toContain(id);
      expect(open()).toContain(id);
    }
  });
  it('and an answer that was told before still counts', () => {
    const told = withAnswer(start, 'displaySpeakers', { value: 'playing', how: 'read' });
    const music = withAnswer(told, 'playedContent', { value: 'two-channel-music', how: 'read' });
    expect(makesSense(music, 'displaySpeakers')).toBe(true);
  });
  it('a place in plain sight tells that no screen is in front', () => {
    const wall = withAnswer(start, 'centerPlacement', { value: 'wall', how: 'recalled' });
    expect(impliedAnswer(wall, 'screenKind')).toEqual({ value: 'none', how: 'recalled' });
    const hidden = withAnswer(start, 'centerPlacement', { value: 'behind-screen', how: 'read' });
    expect(impliedAnswer(hidden, 'screenKind')).toBeUndefined();
  });
});

describe('an interview', () => {
  const interview = (pick: number) => {
    let audit = auditSync(start);
    const bounds: number[] = [];
    for (let asked = 0; ; asked++) {
      const step = next(audit);
      if (step.kind !== 'question') return { audit, step, asked, bounds };
      bounds.push(step.mayFollowAtMost);
      const answers = possibleAnswers(step.fact as FactId);
      const answer = answers[(pick + asked) % answers.length] ?? { how: 'unknown' };
      audit = auditSync(withAnswer(audit.book, step.fact as FactId, answer), audit);
    }
  };
  it.each([0, 1, 2, 3])(
    'comes to an end with a reason, and never asks more than it announced (%i)',
    (pick) => {
      const { step, asked, bounds } = interview(pick);
      expect(step.kind === 'test' || step.reason !== undefined).toBe(true);
      bounds.forEach((bound, i) => {
        expect(asked - i).toBeLessThanOrEqual(bound);
      });
      expect(bounds).toEqual([...bounds].sort((a, b) => b - a));
    },
  );
});

describe('stopping', () => {
  it('a cause at 90 % and 10 dB ahead of every other remedy ends the questions', () => {
    fc.assert(
      fc.property(anyBook, (book) => {
        const audit = auditSync(book);
        const { leadDb, causes } = audit.ranking;
        expect(isSure(audit)).toBe((causes[0]?.probability ?? 0) >= 0.9 && leadDb >= 10);
        if (isSure(audit)) expect(next(audit)).toMatchObject({ kind: 'stop', reason: 'sure' });
      }),
      RUNS,
    );
  });
  it('where nothing still open can change the leader, no single answer does', () => {
    fc.assert(
      fc.property(anyBook, (book) => {
        const audit = auditSync(book);
        if (!isSettled(audit)) return;
        for (const fact of FACT_IDS.filter((id) => !book.answers.has(id)))
          for (const answer of possibleAnswers(fact))
            expect(auditSync(withAnswer(book, fact, answer), audit).ranking.leader).toBe(
              audit.ranking.leader,
            );
      }),
      RUNS,
    );
  });
  it('with one weak answer left and a clear leader, says that nothing still open changes it', () => {
    const open: FactId = 'lipSync';
    const answers = new Map<FactId, Answer>(
      FACT_IDS.filter((id) => id !== open).map((id) => [id, { how: 'unknown' }]),
    );
    answers.set('centerLayout', { value: 'mid-tweeter-mid', how: 'measured' });
    answers.set('centerOrientation', { value: 'level', how: 'measured' });
    answers.set('centerCount', { value: 'one', how: 'measured' });
    answers.set('seatDistance', { value: 2.5, how: 'measured' });
    answers.set('seating', { value: 'one-row', how: 'measured' });
    answers.set('seatCount', { value: 3, how: 'measured' });
    answers.set('seatSpacing', { value: 0.9, how: 'measured' });
    answers.set('testSitMiddle', { value: 'clear-in-middle', how: 'measured' });
    const audit = auditSync({ ...start, answers });
    expect(audit.ranking.leader).toBe('driver-layout');
    expect(questionsLeft(audit)).toBe(1);
    expect(isSettled(audit)).toBe(true);
    expect(next(audit)).toMatchObject({ kind: 'stop' });
  });
  it('a book in which everything was asked leaves no question', () => {
    const answers = new Map(FACT_IDS.map((id) => [id, { how: 'unknown' as const }]));
    const audit = auditSync({ ...start, answers });
    expect(questionsLeft(audit)).toBe(0);
    expect(next(audit)).toMatchObject({ kind: 'stop', reason: 'nothing-open', mayFollowAtMost: 0 });
  });
});
