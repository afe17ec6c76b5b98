/** Two made-up balance sheets side by side: what rests on the same facts shares a row, the rest stands alone. */
import { describe, expect, it } from 'vitest';
import type { FactId } from '../../src/facts/catalog.js';
import type { Audit } from '../../src/reasoning/audit.js';
import { contrast, rankedOf } from '../../src/reasoning/contrast.js';
import type { Ranked } from '../../src/reasoning/rank.js';
import type { GroupLine } from '../../src/reasoning/score.js';
import type { CauseId } from '../../src/rules/cause-ids.js';
import type { Evidence } from '../../src/rules/evidence.js';

const line = (group: string, decibans: number, ...items: readonly (readonly FactId[])[]): GroupLine => ({
  group,
  decibans,
  evidence: items.map((facts) => ({ facts }) as unknown as Evidence),
});
const ranked = (cause: CauseId, priorDb: number, sharedDb: number, ...groups: GroupLine[]): Ranked =>
  ({
    cause,
    priorDb,
    sharedDb,
    groups,
    decibans: priorDb + sharedDb + groups.reduce((sum, g) => sum + g.decibans, 0),
  }) as unknown as Ranked;
const delay = ranked(
  'delay',
  -9,
  3.2,
  line('tape', 8, ['testTape'], ['tapedCenter', 'testTape']),
  line('phantom', 4, ['testPhantom']),
  line('tried', -2),
  line('pan', 0.5, ['toneAcrossPan']),
);
const polarity = ranked(
  'polarity',
  -9.5,
  3,
  line('phantom', 3.5, ['testPhantom']),
  line('tape', 1, ['tapedCenter'], ['testTape']),
  line('tried', -3),
  line('marks', -6, ['polarityMarks']),
);
const audit = { ranking: { causes: [delay, polarity] } } as unknown as Audit;
/** Made within each test: mutants are awake only there. */
const made = () => contrast(audit, 'delay', 'polarity');
const brief = (rows: ReturnType<typeof made>['rows']): unknown[] =>
  rows.map((r) => [r.about, r.mine?.group, r.theirs?.group, r.mineDb, r.theirsDb]);

describe('a contrast', () => {
  it('pairs lines that rest on the same facts in whatever order, and lists what only one has', () => {
    expect(brief(made().rows)).toEqual([
      ['evidence', 'tape', 'tape', 8, 1],
      ['evidence', undefined, 'marks', 0, -6],
      ['evidence', undefined, 'tried', 0, -3],
      ['evidence', 'tried', undefined, -2, 0],
      ['evidence', 'pan', undefined, 0.5, 0],
    ]);
  });
  it('sets aside what both have and what hardly differs: under a decibel, prior and complaints too', () => {
    expect(brief(made().common)).toEqual([
      ['evidence', 'phantom', 'phantom', 4, 3.5],
      ['prior', undefined, undefined, -9, -9.5],
      ['complaints', undefined, undefined, 3.2, 3],
    ]);
    const apart = { ...polarity, priorDb: -10 };
    const rows = contrast(
      { ranking: { causes: [delay, apart] } } as unknown as Audit,
      'delay',
      'polarity',
    ).rows;
    expect(rows.some((r) => r.about === 'prior' && r.differenceDb === 1)).toBe(true);
  });
  it('sums up to the difference of the two', () => {
    const sum = [...made().rows, ...made().common].reduce((s, r) => s + r.differenceDb, 0);
    expect(sum).toBeCloseTo(made().differenceDb, 12);
    expect(made()).toMatchObject({ cause: 'delay', against: 'polarity' });
  });
  it('leaves out of a row what is not there', () => {
    const named = made().rows.map((row) => ['mine', 'theirs'].filter((side) => side in row));
    expect(named).toEqual([['mine', 'theirs'], ['theirs'], ['theirs'], ['mine'], ['mine']]);
  });
  it('of a cause that is not in the audit says so', () => {
    expect(() => rankedOf(audit, 'level')).toThrow('no cause level in this audit');
  });
});
