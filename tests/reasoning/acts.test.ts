/**
 * What acts and their outcomes say, over all acts and outcomes. That a cure points at what it cures, and that what
 * changed nothing clears it, is common practice of advisers, no source; the numbers of the model are judgement.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ACT_IDS, type ActId, actSpec, OUTCOME_IDS, type Outcome, type Trial } from '../../src/facts/acts.js';
import { EMPTY_BOOK, type FactBook, withAnswer } from '../../src/facts/book.js';
import { readCase, writeCase } from '../../src/facts/case-file.js';
import { auditSync } from '../../src/reasoning/audit.js';
import { plan } from '../../src/reasoning/plan.js';
import { openRemedies } from '../../src/reasoning/remedies.js';
import { bookAsHeard, remedyId, solvedBy, withTrial } from '../../src/reasoning/trials.js';
import { curesOf, outcomeDb } from '../../src/rules/acts-cure.js';
import { CAUSES, causeOf } from '../../src/rules/index.js';
import { anyTrial } from '../support/books.js';

/** Little is known of the system; without a subwoofer its polarity would mean nothing. */
const SYSTEM: FactBook['answers'] = new Map([
  ['subwoofer', { value: 'one', how: 'seen' }],
  ['centerBassSize', { value: 'small', how: 'read' }],
  ['centerBassCrossover', { value: 80, how: 'read' }],
]);
const heard = (trials: readonly Trial[] = []): FactBook => ({ ...EMPTY_BOOK, answers: SYSTEM, trials });
const decibans = (book: FactBook): Map<string, number> =>
  new Map(auditSync(book).ranking.causes.map((c) => [c.cause, c.decibans]));
const BEFORE = decibans(heard());
const moved = (book: FactBook): Map<string, number> =>
  new Map([...decibans(book)].map(([id, db]) => [id, db - (BEFORE.get(id) ?? 0)]));

const told = (act: ActId, outcome: Outcome): Trial => ({ act, outcome });
/** Causes that the act cures well enough to be told apart from luck. */
const cured = (act: ActId): string[] =>
  CAUSES.filter((cause) => (curesOf(cause, act) ?? 0) >= 0.5).map(({ id }) => id);
const specific = ACT_IDS.filter((act) => cured(act).length > 0);
const rows = specific.flatMap((act) => OUTCOME_IDS.map((outcome) => ({ act, outcome })));

describe('the model of outcomes', () => {
  it('raises what is cured and lowers what is not when the trouble is gone; the reverse when nothing changed', () => {
    expect(outcomeDb('gone', 0.85)).toBeGreaterThan(5);
    expect(outcomeDb('gone', 0)).toBeLessThan(-5);
    expect(outcomeDb('same', 0.85)).toBeLessThan(-5);
    expect(Math.abs(outcomeDb('same', 0))).toBeLessThan(1);
    expect(outcomeDb('cannot-tell', 0.85)).toBe(0);
  });
  it('leaves the rest open when it is only better', () => {
    expect(outcomeDb('better', 0.85)).toBeGreaterThan(1.5);
    expect(outcomeDb('better', 0)).toBeGreaterThan(-1.5);
  });
  it('says more the surer the cure', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 0.9, noNaN: true }), (cures) => {
        expect(outcomeDb('gone', cures + 0.1)).toBeGreaterThan(outcomeDb('gone', cures));
        expect(outcomeDb('same', cures + 0.1)).toBeLessThan(outcomeDb('same', cures));
      }),
    );
  });
});

describe('an act', () => {
  it.each(rows)('$act: $outcome', ({ act, outcome }) => {
    const change = moved(heard([told(act, outcome)]));
    const of = (id: string): number => change.get(id) ?? 0;
    const others = CAUSES.map(({ id }) => id).filter((id) => !cured(act).includes(id));
    const strongest = Math.max(...cured(act).map(of));
    const mirror = actSpec(act).mirror;
    if (outcome === 'cannot-tell') for (const [, db] of change) expect(Math.abs(db)).toBeLessThan(1e-9);
    if (outcome === 'gone') {
      expect(strongest).toBeGreaterThan(1);
      // No other cause gains as much; causes cured now and then may gain a little.
      for (const id of others)
        if (curesOf(CAUSES.find((c) => c.id === id) as never, act) === undefined && !mirror)
          expect(of(id), id).toBeLessThan(0.5);
    }
    if (outcome === 'same') for (const id of cured(act)) expect(of(id), id).toBeLessThan(0.01);
    if (outcome === 'worse' && !mirror) for (const id of cured(act)) expect(of(id), id).toBeLessThan(0);
  });

  const twins = ACT_IDS.flatMap((act) => {
    const { mirror } = actSpec(act);
    return mirror
      ? Object.entries(mirror.outcomes).map(([answer, outcome]) => ({ act, mirror, answer, outcome }))
      : [];
  });
  it.each(twins.filter(({ mirror, answer, outcome }) => mirror.answers[outcome] === answer))(
    'told as $act or as its home test ($answer) leads to the same ranking',
    ({ act, mirror, answer, outcome }) => {
      const asTest = withAnswer(heard(), mirror.fact, { value: answer, how: 'measured' });
      expect(decibans(heard([told(act, outcome)]))).toEqual(decibans(asTest));
      // Told both ways it counts once.
      expect(decibans({ ...asTest, trials: [told(act, outcome)] })).toEqual(decibans(asTest));
    },
  );

  const remedies = CAUSES.flatMap((cause) =>
    cause.remedies.flatMap((remedy) =>
      remedy.act ? [{ id: remedyId(cause, remedy), act: remedy.act }] : [],
    ),
  ).filter(({ act }) => act !== 'entry-corrected:subwoofer');
  it.each(remedies)('told as the remedy $id or as $act leads to the same ranking', ({ id, act }) => {
    for (const outcome of ['gone', 'same'] as const)
      expect(decibans(heard([{ act: id, outcome }]))).toEqual(decibans(heard([told(act as ActId, outcome)])));
  });

  it('told in another order or twice says the same', () => {
    fc.assert(
      fc.property(fc.array(anyTrial, { minLength: 2, maxLength: 4 }), (trials) => {
        const forth = decibans(heard(trials));
        const back = decibans(heard([...trials].reverse()));
        for (const [id, db] of forth) expect(back.get(id)).toBeCloseTo(db, 9);
      }),
      { numRuns: 25 },
    );
  });

  it('for one complaint says nothing of causes that do not make it', () => {
    const trial: Trial = { act: 'obstacle-removed', outcome: 'gone', complaint: 'voice-unclear-back-row' };
    const change = moved(heard([trial]));
    expect(change.get('blocked-path')).toBeGreaterThan(1);
    expect(Math.abs(change.get('double-playback') ?? 1)).toBeLessThan(1e-9);
  });
});

describe('the trouble is solved', () => {
  const cure: Trial = { act: 'center-tilted', outcome: 'gone', stays: true };
  const book: FactBook = { ...EMPTY_BOOK, complaints: ['dull'] };
  it('by an act after which it was gone and that stays', () => {
    expect(solvedBy({ ...book, trials: [cure] })).toEqual({ trials: [cure] });
    expect(solvedBy({ ...book, trials: [{ act: 'center-tilted', outcome: 'gone' }] })?.trials).toHaveLength(
      1,
    );
  });
  it('not by a mere look, an undone act, something that was better, or against the word of the owner', () => {
    const trials = (...list: Trial[]) => solvedBy({ ...book, trials: list });
    expect(trials({ act: 'headphones-tried', outcome: 'gone' })).toBeUndefined();
    expect(trials({ ...cure, stays: false })).toBeUndefined();
    expect(trials({ ...cure, outcome: 'better' })).toBeUndefined();
    expect(solvedBy({ ...book, trials: [cure], solved: false })).toBeUndefined();
    expect(solvedBy({ ...book, solved: true })).toEqual({ trials: [] });
  });
  it('only when every complaint has ended', () => {
    const two: FactBook = { ...EMPTY_BOOK, complaints: ['dull', 'boomy'] };
    const forDull: Trial = { ...cure, complaint: 'dull' };
    expect(solvedBy({ ...two, trials: [forDull] })).toBeUndefined();
    expect(solvedBy({ ...two, trials: [forDull, { ...cure, complaint: 'boomy' }] })).toBeDefined();
  });
  it('leaves no step in the plan', () => {
    expect(plan(auditSync(book)).steps.length).toBeGreaterThan(0);
    expect(plan(auditSync({ ...book, trials: [cure] })).steps).toEqual([]);
  });
});

describe('a trial that stays', () => {
  const flat: FactBook = {
    ...EMPTY_BOOK,
    complaints: ['dull'],
    answers: new Map([
      ['centerTilt', { value: 0, how: 'measured' }],
      ['centerTweeterHeight', { value: 0.4, how: 'measured' }],
      ['centerLayout', { value: 'vertical-two-way', how: 'seen' }],
    ]),
  };
  const after = withTrial(flat, { act: 'aim/wedge', outcome: 'gone', stays: true }, CAUSES);
  it('moves what it changed to what was before; the diagnosis goes on with that', () => {
    expect(after.before.get('centerTilt')).toEqual({ value: 0, how: 'measured' });
    expect(after.answers.has('centerTilt')).toBe(false);
    expect(bookAsHeard(after, CAUSES).answers.get('centerTilt')).toEqual({ value: 0, how: 'measured' });
    const today = withAnswer(after, 'centerTilt', { value: 12, how: 'measured' });
    expect(decibans(today)).toEqual(decibans(after));
    expect(auditSync(today).book.answers.get('centerTilt')).toMatchObject({ value: 12 });
  });
  it('is kept by a case file', () => {
    const { book } = readCase(writeCase(after));
    expect(book).toEqual(after);
  });
  it('told again replaces what was told, and is the book as heard of itself', () => {
    const again = withTrial(after, { act: 'aim/wedge', outcome: 'same', stays: true }, CAUSES);
    expect(again.trials).toHaveLength(1);
    const heardOnce = bookAsHeard(after, CAUSES);
    expect(bookAsHeard(heardOnce, CAUSES)).toBe(heardOnce);
  });
});

describe('what must not be done', () => {
  const offered = (constraints: FactBook['constraints'], id: 'cabinet-bay' | 'height'): string[] =>
    openRemedies(auditSync({ ...EMPTY_BOOK, constraints }), causeOf(id)).map((remedy) => remedy.id);
  it('is not proposed: nothing bought, nothing raised, no furniture changed', () => {
    expect(offered([], 'height')).toContain('raise-or-lower');
    expect(offered(['cannot-stay-raised'], 'height')).not.toContain('raise-or-lower');
    expect(offered(['furniture-stays'], 'cabinet-bay')).not.toContain('move-out');
    const free = new Set(
      causeOf('cabinet-bay')
        .remedies.filter((r) => r.cost === 'free')
        .map((r) => r.id),
    );
    expect(offered(['no-purchase'], 'cabinet-bay').every((id) => free.has(id))).toBe(true);
  });
});
