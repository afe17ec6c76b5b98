/** Verdicts, doubts and contenders on three made-up causes whose decibans are known beforehand. */
import { describe, expect, it } from 'vitest';
import { COMPLAINTS } from '../../src/facts/complaints.js';
import { type Ranking, rank, sharesRemedy } from '../../src/reasoning/rank.js';
import { causeApplies, gateDb, groupLines, networkOf, ownScore, scores } from '../../src/reasoning/score.js';
import { TEMPERATURE } from '../../src/reasoning/temperature.js';
import type { Cause, Remedy, Rule } from '../../src/rules/cause.js';
import type { CauseId } from '../../src/rules/cause-ids.js';
import { is } from '../../src/rules/condition.js';
import type { Evidence, Outcome } from '../../src/rules/evidence.js';
import { causeOf } from '../../src/rules/index.js';

const remedy = (id: string): Remedy => ({ ...causeOf('delay').remedies[0], id });
const rule = (id: string, group = 'g'): Rule => ({ ...causeOf('delay').rules[0], id, group });
const cause = (id: CauseId, changes: Partial<Cause> = {}): Cause => {
  const { applies: _, appliesIn: __, ...bare } = causeOf(id);
  return {
    ...bare,
    priorDb: 0,
    links: {},
    groups: { g: 'independent', h: 'same-quantity' },
    rules: [rule('one'), rule('two'), rule('three', 'h')],
    remedies: [remedy(`mend-${id}`)],
    ...changes,
  };
};
const says = (of: CauseId, name: string, decibans: number, outcome: Outcome = 'yes'): Evidence => ({
  cause: of,
  rule: name,
  outcome,
  decibans,
  leaves: [],
  open: [],
  facts: [],
  assumed: [],
});
const [A, B, C] = [cause('delay'), cause('level'), cause('polarity')];
const QUIET = { present: [], absent: [] } as const;
const ranked = (evidence: Evidence[], causes: readonly Cause[] = [A, B, C]): Ranking =>
  rank(causes, evidence, QUIET, { temperature: 1 });
/** A cause at so many decibans by one settled rule. */
const at = (of: CauseId, decibans: number): Evidence =>
  says(of, 'one', decibans, decibans < 0 ? 'no' : 'yes');
const verdict = (ranking: Ranking, id: CauseId): string | undefined =>
  ranking.causes.find((r) => r.cause === id)?.verdict;

describe('a verdict', () => {
  it.each([
    [3.68, 'likely'],
    [10 * Math.log10(0.7 / 0.3), 'likely'],
    [3.67, 'possible'],
    [-6.02, 'possible'],
    [10 * Math.log10(0.2 / 0.8), 'possible'],
    [-6.03, 'unlikely'],
    [-16.9, 'unlikely'],
    [-16.91, 'ruled-out'],
  ])('at %f dB is %s: seven, two tenths and one in fifty', (db, word) => {
    expect(verdict(ranked([at('delay', db)]), 'delay')).toBe(word);
  });
  it('is never ruled out while something about it is open or failed', () => {
    for (const outcome of ['unknown', 'error'] as const)
      expect(verdict(ranked([at('delay', -30), says('delay', 'two', 0, outcome)]), 'delay')).toBe('unlikely');
    expect(verdict(ranked([at('delay', -30), says('delay', 'two', 0, 'not-applicable')]), 'delay')).toBe(
      'ruled-out',
    );
  });
  it('cannot be told while all that bears on it is open; without a rule that bears it stands by its odds', () => {
    const open = [says('delay', 'one', 0, 'unknown'), says('delay', 'two', 0, 'not-applicable')];
    expect(verdict(ranked(open), 'delay')).toBe('cannot-tell');
    expect(verdict(ranked([]), 'delay')).toBe('possible');
  });
  it('of a cause that cannot exist here is that it does not apply, at the foot of the list', () => {
    const gated = { ...A, priorDb: 20, applies: is('centerCount', 'two') };
    const gone = gated.rules.map(({ id }) => says('delay', id, 0, 'not-applicable'));
    const ranking = ranked(gone, [gated, B]);
    expect(verdict(ranking, 'delay')).toBe('not-applicable');
    expect(ranking.causes.at(-1)?.cause).toBe('delay');
    expect(ranking.causes.at(-1)?.decibans).toBe(20 - 60);
  });
  it('says at most 99 percent', () => {
    expect(ranked([at('delay', 60)]).causes[0]?.probability).toBe(0.99);
  });
});

describe('the leader', () => {
  it('is the highest; of equals the one that comes first in the list', () => {
    expect(ranked([at('level', 3)]).leader).toBe('level');
    expect(ranked([]).causes.map((r) => r.cause)).toEqual(['delay', 'level', 'polarity']);
    expect(() => ranked([], [])).toThrow('at least one cause');
  });
  it('is decided with half a chance, five decibans ahead and five of its own', () => {
    const sure = ranked([at('delay', 6), at('level', 1)]);
    expect(sure).toMatchObject({ undecided: false, doubts: [], leadDb: 5, contenders: ['delay'] });
    // Exactly five of its own, beside a hint that alone would not do.
    expect(ranked([at('delay', 5), says('delay', 'two', 0.5)]).undecided).toBe(false);
    expect(ranked([at('delay', 5)]).undecided).toBe(false);
  });
  it('needs five decibans after the temperature, not before', () => {
    expect(rank([A], [at('delay', 6)], QUIET, { temperature: 2 }).doubts).toEqual(['no-own-evidence']);
    expect(rank([A], [at('delay', 10)], QUIET, { temperature: 2 }).doubts).toEqual([]);
  });
  it('has half a chance at zero decibans: that much is enough', () => {
    expect(ranked([at('level', -9), at('polarity', -9)]).doubts).toEqual(['no-own-evidence']);
    expect(ranked([]).undecided).toBe(true);
  });
  it('is ranked by evidence about the causes at hand only', () => {
    expect(ranked([at('level', 6), at('timbre', 30)]).causes.map((r) => r.cause)).toEqual([
      'level',
      'delay',
      'polarity',
    ]);
  });
  it('is ranked at the temperature and with the leaks it is told, else with those of the project', () => {
    const told = { present: ['hollow'], absent: [] } as const;
    const linked = cause('delay', { links: { hollow: 0.5 } });
    // One cause and a leak: odds times (1 - (1 - leak)(1 - link)) / leak.
    const gainDb = (leak: number): number => 10 * Math.log10((1 - (1 - leak) * 0.5) / leak);
    const own = rank([linked], [at('delay', 0)], told, { temperature: 1, leaks: { hollow: { leak: 0.2 } } });
    expect([own.temperature, own.causes[0]?.sharedDb]).toEqual([1, expect.closeTo(gainDb(0.2), 9)]);
    const usual = rank([linked], [at('delay', 0)], told);
    expect([usual.temperature, usual.causes[0]?.sharedDb]).toEqual([
      TEMPERATURE,
      expect.closeTo(gainDb(COMPLAINTS.hollow.leak), 9),
    ]);
  });
  it('is doubted by name: improbable, too close, without evidence of its own', () => {
    expect(ranked([at('delay', -1), at('level', -9), at('polarity', -9)]).doubts).toEqual([
      'nothing-probable',
      'no-own-evidence',
    ]);
    expect(ranked([at('delay', 6), at('level', 1.01)]).doubts).toEqual(['too-close']);
    const { doubts } = ranked(
      [says('delay', 'one', 4.9), says('delay', 'two', 4.9), at('level', -1), at('polarity', -1)],
      [A, B, C],
    );
    expect(doubts).toEqual(['no-own-evidence']);
  });
  it('is measured against causes that need another remedy', () => {
    const alike = cause('level', { remedies: [remedy('other'), remedy('mend-delay')] });
    const ranking = ranked([at('delay', 8), at('level', 7)], [A, alike, C]);
    expect(ranking.leadDb).toBe(8);
    expect(ranking.undecided).toBe(false);
    expect(ranked([at('delay', 8)], [A]).leadDb).toBe(Number.POSITIVE_INFINITY);
  });
  it('in doubt shares the stage with the next and with who is within five decibans, three at most', () => {
    const four = [A, B, C, cause('aim')];
    const names = (...dbs: readonly [number, number, number, number]): readonly CauseId[] =>
      ranked(
        four.map(({ id }, i) => at(id, dbs[i] as number)),
        four,
      ).contenders;
    expect(names(4, 3, -0.9, -2)).toEqual(['delay', 'level', 'polarity']);
    expect(names(4, 3, -1, -2)).toEqual(['delay', 'level']);
    expect(names(4, 3, 3, 3)).toEqual(['delay', 'level', 'polarity']);
    expect(names(-1, -9, -9, -9)).toEqual(['delay', 'level']);
  });
});

describe('two causes share a remedy', () => {
  it('when what is tried first for one is among those of the other', () => {
    const one = cause('delay', { remedies: [remedy('x'), remedy('y')] });
    const two = cause('level', { remedies: [remedy('z'), remedy('x')] });
    const three = cause('polarity', { remedies: [remedy('w'), remedy('y')] });
    expect([sharesRemedy(one, two), sharesRemedy(two, one)]).toEqual([true, true]);
    expect(sharesRemedy(one, three)).toBe(false);
  });
});

describe('the balance sheet', () => {
  it('puts rules into groups, the strongest group first, and leaves out what says nothing', () => {
    const lines = groupLines(
      A,
      [
        says('delay', 'one', 2),
        says('delay', 'two', 3),
        says('delay', 'three', -7),
        says('delay', 'gone', 9),
      ],
      2,
    );
    expect(lines.map(({ group, decibans, evidence }) => [group, decibans, evidence.length])).toEqual([
      ['h', -3.5, 1],
      ['g', 2.5, 2],
    ]);
    expect(groupLines(A, [says('delay', 'one', 0)], 1)).toEqual([]);
    // Remarks about one quantity repeat each other: the strongest counts.
    const [same] = groupLines(A, [says('delay', 'three', 7), says('delay', 'three', 5)], 1);
    expect(same?.decibans).toBe(7);
  });
  it('adds prior, groups and what was tried', () => {
    expect(ownScore({ ...A, priorDb: -3 }, [says('delay', 'one', 4)], 2, -6)).toMatchObject({
      priorDb: -3,
      ownDb: -3 + 2 - 3,
      applies: true,
    });
    expect(ownScore(A, [says('delay', 'one', 4)], 1).groups.map((line) => line.group)).toEqual(['g']);
    const rare = { ...A, priorDb: -3, appliesIn: 0.5 };
    const half: Evidence = { ...says('delay', 'one', 0, 'unknown'), gateOpen: 1 };
    expect(ownScore(rare, [half], 1).ownDb).toBeCloseTo(-3 + 10 * Math.log10(0.5), 12);
  });
  it('names no rule behind a remedy tried in vain or a gate that is shut', () => {
    const gated = { ...A, applies: is('centerCount', 'two') };
    expect(ownScore(A, [], 1, -6).groups).toEqual([{ group: 'trial', decibans: -6, evidence: [] }]);
    expect(ownScore(gated, [says('delay', 'one', 0, 'not-applicable')], 1).groups).toEqual([
      { group: 'applies', decibans: -60, evidence: [] },
    ]);
  });
  it('of a gated cause counts unless every rule says that it does not apply', () => {
    const gated = { ...A, applies: is('centerCount', 'two') };
    const off = says('delay', 'one', 0, 'not-applicable');
    expect(causeApplies(gated, [off])).toBe(false);
    expect(causeApplies(gated, [off, says('delay', 'two', 0, 'unknown')])).toBe(true);
    expect(causeApplies(gated, [])).toBe(true);
    expect(causeApplies(A, [off])).toBe(true);
  });
  it('lowers the prior by the share of systems of its kind, by the part that is open', () => {
    const rare = { ...A, appliesIn: 0.1 };
    const open = (gateOpen: number): Evidence => ({ ...says('delay', 'one', 0, 'unknown'), gateOpen });
    expect(gateDb(rare, [open(1)])).toBeCloseTo(-10, 12);
    expect(gateDb(rare, [open(0.5)])).toBeCloseTo(-5, 12);
    expect(gateDb({ ...A, appliesIn: 0.01 }, [says('delay', 'two', 0), open(1)])).toBeCloseTo(-20, 12);
    expect(gateDb(rare, [says('delay', 'one', 0)])).toBe(0);
    expect(gateDb(A, [open(1)])).toBe(0);
  });
  it('lets a complaint raise who is linked to it, and nobody who does not apply', () => {
    const linked = { ...A, links: { hollow: 0.5 } };
    const out = { ...B, links: { hollow: 0.9 } };
    const own = [linked, out, C].map((c) => ownScore(c, [], 1));
    const away = own.map((score, i) => ({ ...score, applies: i !== 1 }));
    const told = { present: ['hollow'], absent: ['echo'] } as const;
    const [a, b, c] = scores([linked, out, C], away, told, { hollow: { leak: 0.1 }, echo: { leak: 0.1 } });
    expect(a?.sharedDb).toBeGreaterThan(3);
    expect(b?.sharedDb).toBe(0);
    expect(c?.sharedDb).toBeCloseTo(0, 9);
    // One cause and a leak: odds times (1 - (1 - leak)(1 - link)) / leak.
    expect(a?.sharedDb).toBeCloseTo(10 * Math.log10((1 - 0.9 * 0.5) / 0.1), 9);
    expect(a?.decibans).toBeCloseTo((a?.sharedDb ?? 0) + 0, 12);
  });
  it('hears complaints in one row, those present first; one that nobody else makes has no leak', () => {
    const linked = { ...A, links: { hollow: 0.5, echo: 0.2 } };
    const own = [linked, B].map((c) => ownScore(c, [], 1));
    const told = { present: ['hollow'], absent: ['echo', 'no-middle'] } as const;
    expect(networkOf([linked, B], own, told, { echo: { leak: 0.1 } })).toEqual({
      net: {
        p: [0.5, 0.5],
        links: [
          [0.5, 0.2, 0],
          [0, 0, 0],
        ],
        leaks: [0, 0.1, 0],
      },
      heard: { present: [0], absent: [1, 2] },
    });
  });
});
