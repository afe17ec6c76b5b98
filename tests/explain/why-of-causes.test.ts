/** Why one cause and not another, for made-up causes whose decibans are known beforehand. */
import { describe, expect, it } from 'vitest';
import { type Why, whyOf } from '../../src/explain/why.js';
import { FACT_IDS, factSpec } from '../../src/facts/catalog.js';
import type { Audit } from '../../src/reasoning/audit.js';
import { atLeast, is } from '../../src/rules/condition.js';
import { absentDb, givenDb } from '../../src/rules/weight.js';
import { auditOf, mend, ruleOn, small, whenTest } from '../reasoning/smallCauses.js';
import { whyText } from './whyText.js';

const GROUPS = {
  g: 'independent',
  h: 'independent',
  i: 'independent',
  j: 'independent',
  k: 'independent',
} as const;
const sign = (id: string, test: Parameters<typeof is>[0], value: string, group: string, tp = 0.8) =>
  ruleOn(id, is(test, value as never), { group, tp, fp: 0.2 });
/** Four signs for it, rising, and three against it. */
const many = small('delay', {
  priorDb: -3,
  groups: { ...GROUPS, l: 'independent', m: 'independent' },
  rules: [
    sign('a', 'testTape', 'off', 'g', 0.5),
    sign('b', 'testLift', 'improves', 'h', 0.6),
    sign('c', 'testTilt', 'clearer', 'i', 0.7),
    sign('d', 'testPhantom', 'gone', 'j', 0.8),
    sign('e', 'testUpmixOff', 'gone', 'k', 0.5),
    sign('f', 'testSpreadOn', 'opens', 'l', 0.6),
    sign('g', 'testMuteDisplay', 'gone', 'm', 0.7),
  ],
});
const TOLD = {
  testTape: 'off',
  testLift: 'improves',
  testTilt: 'clearer',
  testPhantom: 'gone',
  testUpmixOff: 'same',
  testSpreadOn: 'same',
  testMuteDisplay: 'same',
} as const;
const rich = (): Audit => auditOf([many, small('level', { priorDb: -6 })], TOLD);
const flat = (...of: Parameters<typeof whyText>): string => whyText(...of).replace(/\s+/g, ' ');

describe('the balance of a cause', () => {
  it('has a line for every group, the complaints and last the prior, and sums to its decibans', () => {
    const why = whyOf(rich(), 'delay');
    expect(why).toMatchObject({
      format: 'center-audit/why',
      version: 1,
      cause: 'delay',
      against: null,
      complaints: [],
    });
    expect(why.lines).toHaveLength(7 + 2);
    expect(why.lines.at(-1)?.decibans).toBe(-3);
    expect(why.lines.at(-2)).toMatchObject({ title: 'complaints', decibans: 0 });
    expect(why.lines[0]?.decibans).toBeCloseTo(givenDb(0.8, 0.2, 'measured'), 9);
    expect(why.lines[0]?.note).not.toBe('');
    expect(why.lines.reduceRight((sum, line) => sum + line.decibans, 0)).toBeCloseTo(why.decibans, 9);
  });
  it('shows the three strongest for it and the two strongest against it', () => {
    const why = whyOf(rich(), 'delay');
    expect(why.strongestFor.map((item) => item.rule)).toEqual(['d', 'c', 'b']);
    expect(why.strongestAgainst.map((item) => item.rule)).toEqual(['g', 'f']);
    expect(why.strongestAgainst[0]?.decibans).toBeCloseTo(absentDb(0.7, 0.2, 'measured'), 9);
  });
  it('says so where nothing speaks for it or against it', () => {
    const told = flat(rich(), 'delay');
    expect(told).not.toMatch(/No answer and no number/);
    const open = auditOf([small('delay'), small('level')]);
    expect(flat(open, 'delay')).toMatch(/speaks for it yet\. .*speaks against it\./);
  });
  it('is of a cause of this audit', () => {
    expect(() => whyOf(auditOf([small('delay')]), 'level')).toThrow('no cause level');
  });
});

describe('the words of a line', () => {
  const said = (id: string) => ({ yes: `${id} holds`, no: `${id} does not hold`, unknown: `${id} is open` });
  const rule = (id: string, when: Parameters<typeof ruleOn>[1], group = 'g', tp = 0.8) => ({
    ...ruleOn(id, when, { group, tp }),
    says: said(id),
  });
  const [tape, lift] = [whenTest('off'), is('testLift', 'improves')];
  const two = () =>
    auditOf(
      [
        small('delay', { groups: GROUPS, rules: [rule('mine', tape), rule('own', lift, 'h', 0.7)] }),
        small('level', { priorDb: -6, groups: GROUPS, rules: [rule('theirs', tape, 'g', 0.5)] }),
      ],
      { testTape: 'off', testLift: 'improves' },
    );
  it('are those of its own strongest rule', () => {
    const notes = whyOf(two(), 'delay').lines.map((line) => line.note);
    expect(notes.slice(0, 2)).toEqual([
      expect.stringMatching(/^Mine holds\.?$/),
      expect.stringMatching(/^Own holds\.?$/),
    ]);
  });
  it('tell why a group counts less than its sum', () => {
    const [line] = whyOf(
      auditOf(
        [
          small('delay', {
            groups: { g: 'same-quantity' },
            rules: [rule('mine', tape), rule('own', lift, 'g', 0.7)],
          }),
        ],
        {
          testTape: 'off',
          testLift: 'improves',
        },
      ),
      'delay',
    ).lines;
    expect(line?.note).toMatch(/^Mine holds\. [A-Z].+\.$/);
  });
  it('of a row are those of both, or of the one that has it', () => {
    const texts = (whyOf(two(), 'delay', 'level').against as NonNullable<Why['against']>).rows.map(
      (row) => row.text,
    );
    expect(texts).toEqual(
      expect.arrayContaining([expect.stringMatching(/^Mine holds\.? \/ Theirs holds\.?$/)]),
    );
    expect(texts).toEqual(expect.arrayContaining([expect.stringMatching(/^Own holds\.?$/)]));
    const turned = (whyOf(two(), 'level', 'delay').against as NonNullable<Why['against']>).rows;
    expect(
      turned.find((row) => row.theirsDb > 0 && row.mineDb === 0 && /^Own holds/.test(row.text)),
    ).toBeDefined();
  });
  it('of what both share are told in one clause', () => {
    const alike = auditOf(
      [small('delay', { rules: [rule('mine', tape)] }), small('level', { rules: [rule('theirs', tape)] })],
      { testTape: 'off' },
    );
    const { common } = whyOf(alike, 'delay', 'level').against as NonNullable<Why['against']>;
    expect(common).toMatch(/“Mine holds\.?”/);
    expect(common).toContain('how common they are');
    expect(common).toContain('how well they explain the complaints');
  });
});

describe('the page', () => {
  it('begins with how sure it is, prints each line, and sums', () => {
    const why = whyOf(rich(), 'delay');
    const page = flat(rich(), 'delay');
    const confidence = why.confidence.charAt(0).toUpperCase() + why.confidence.slice(1);
    expect(page.indexOf(`${confidence}.`)).toBeLessThan(page.indexOf('FOR IT'));
    expect(page).toMatch(
      new RegExp(`= \\${why.decibans > 0 ? '+' : '−'}?${Math.abs(why.decibans).toFixed(1)} ${confidence}\\.`),
    );
    expect(page).toMatch(/−3\.0 Prior: before anything was told/);
    expect(page).toMatch(/- \+5\.\d yes\.? \(substantial, for it\) Reason: why Source: /i);
  });
  it('is as wide as it is asked to be', () => {
    const lines = whyText(rich(), 'delay', undefined, { width: 40 }).split('\n');
    expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(40);
  });
});

describe('evidence in full', () => {
  const wide = small('mains-layout', {
    rules: [
      {
        ...ruleOn('wide', atLeast('mainsBaseDeg', 'baseWideDeg')),
        weigh: { kind: 'deviation', of: 'mainsBaseDeg', limit: 'limit.baseWideDeg.clear', lowIsBad: false },
      },
    ],
  });
  it('has its value, how many times the limit, what was assumed for it, reason and source', () => {
    // Six meters seen from three: 90 degrees of 75.
    const page = flat(auditOf([wide], { mainsBase: 6, seatDistance: 3 }), 'mains-layout');
    expect(page).toContain('Value 90°, 1.20 times the limit of 75°.');
    expect(page).toContain(`Assumed for it: ${factSpec('mainSeatOffset').label}`);
    expect(page).toContain('Reason: why');
    expect(page).toMatch(
      /Source: .* \[(read in the source|computed here|common practice, no source|from memory, not checked)\]\./,
    );
    const told = flat(auditOf([wide], { mainsBase: 6, seatDistance: 3, mainSeatOffset: 0 }), 'mains-layout');
    expect(told).not.toContain('Assumed for it');
    expect(flat(rich(), 'delay')).not.toContain('Value');
  });
});

describe('the complaints', () => {
  const linked = (link: number, complaints: Parameters<typeof auditOf>[2]) =>
    whyOf(
      auditOf([small('delay', { links: { hollow: link, echo: 0.3 } }), small('level')], {}, complaints),
      'delay',
    ).complaints;
  it('raise it where heard, lower it where not, most first', () => {
    const found = linked(0.9, { complaints: ['hollow'], absentComplaints: ['echo'] });
    expect(found.map((c) => c.heard)).toEqual([true, false]);
    expect(found[0]?.changeDb).toBeGreaterThan(1);
    // Not heard: one in three of its cases is out.
    expect(found[1]?.changeDb).toBeCloseTo(10 * Math.log10(0.7), 9);
  });
  it('come by how much they move it, not in the order they were told', () => {
    const found = linked(0.9, { complaints: [], absentComplaints: ['echo', 'hollow'] });
    expect(found.map((c) => Math.round(c.changeDb * 10) / 10)).toEqual([-10, -1.5]);
  });
  it('are left out where they say nothing about it', () => {
    expect(linked(0.9, { complaints: ['voice-too-quiet'] })).toEqual([]);
    const audit = auditOf([small('delay', { links: { echo: 0.3 } })], {}, { absentComplaints: ['echo'] });
    expect(flat(audit, 'delay')).toMatch(/Not heard: .*: −1\.5 \(a hint, against it\)\./);
  });
});

describe('why this and not that', () => {
  it('tells how far ahead or behind, and row by row', () => {
    const against = (a: 'delay' | 'level', b: 'delay' | 'level') =>
      whyOf(rich(), a, b).against as NonNullable<Why['against']>;
    const [ahead, behind] = [against('delay', 'level'), against('level', 'delay')];
    expect(ahead.differenceDb).toBeCloseTo(-behind.differenceDb, 9);
    expect(ahead.rows.reduce((sum, row) => sum + row.mineDb - row.theirsDb, 0)).toBeCloseTo(
      ahead.differenceDb,
      9,
    );
    expect(ahead.rows.map((row) => row.text)).toContain('How common each is before anything was told.');
    expect(ahead.common).toBe('how well they explain the complaints');
    const page = flat(rich(), 'delay', 'level');
    expect(page).toContain('decibans ahead of');
    expect(page).toContain('Common to both: how well they explain the complaints.');
    expect(flat(rich(), 'level', 'delay')).toContain('decibans behind');
    expect(flat(rich(), 'delay')).not.toContain('decibans ahead of');
  });
  it('puts what rests on the same answers into one row, named once where both say the same', () => {
    const other = { rules: [ruleOn('one', whenTest('off'), { tp: 0.6, fp: 0.4 })] } as const;
    const audit = auditOf(
      [small('delay'), small('level', { ...other, links: { hollow: 0.9 } })],
      { testTape: 'off' },
      { complaints: ['hollow'] },
    );
    const { rows, common } = whyOf(audit, 'delay', 'level').against as NonNullable<Why['against']>;
    const row = rows.find((each) => each.mineDb > 5);
    expect(row?.theirsDb).toBeGreaterThan(1);
    expect(row?.text).not.toContain(' / ');
    expect(rows.map((each) => each.text)).toContain('How well each explains the complaints.');
    expect(common).toBe('how common they are');
  });
});

describe('what would change it', () => {
  it('is another answer, three at most, told with both answers', () => {
    const even = auditOf(
      [
        small('delay', { rules: [ruleOn('one', whenTest('off'))] }),
        small('level', { rules: [ruleOn('lift', is('testLift', 'improves'))] }),
      ],
      {
        testTape: 'off',
        testLift: 'improves',
      },
    );
    const why = whyOf(even, 'delay');
    expect(why.flips.length).toBeGreaterThan(0);
    expect(why.flips.length).toBeLessThanOrEqual(3);
    expect(why.flips[0]).toMatchObject({ leader: 'level' });
    expect(why.flips[0]?.text).toMatch(/^If .*tape.* were “.*” instead of “.*”, “.*” would lead\.$/i);
    expect(flat(even, 'delay')).toContain('would lead.');
    const six = auditOf(
      [
        small('delay', { rules: [ruleOn('one', is('testNoiseEach', 'duller'))] }),
        small('level', { rules: [ruleOn('lift', is('testLift', 'same'))] }),
      ],
      {
        testNoiseEach: 'duller',
      },
    );
    expect(whyOf(six, 'delay').flips).toHaveLength(3);
    expect(flat(auditOf([small('delay')], { testTape: 'off' }), 'delay')).toContain(
      'No other choice of one or two',
    );
  });
  it('names what is still open, five answers and how many more', () => {
    const facts = FACT_IDS.filter((id) => factSpec(id).kind === 'choice' && !factSpec(id).askedWhen).slice(
      0,
      7,
    );
    const rules = facts.map((id, i) =>
      ruleOn(`r${i}`, { fact: id as never, operator: 'equal', value: 'x' as never }),
    );
    const audit = (count: number) =>
      auditOf([small('delay', { rules: rules.slice(0, count) as never, remedies: [mend('x')] })]);
    expect(whyOf(audit(7), 'delay').open).toHaveLength(7);
    expect(flat(audit(7), 'delay')).toMatch(/Still open for this cause: ([^;]+; ){5}2 more answers\./);
    expect(flat(audit(6), 'delay')).toMatch(/; 1 more answer\./);
    expect(flat(audit(5), 'delay')).not.toContain('more answer');
    expect(flat(rich(), 'delay')).toContain('Every rule of this cause is settled.');
  });
});
