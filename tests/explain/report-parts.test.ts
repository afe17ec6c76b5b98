/** Causes, verdict, what is open and the asides of a report, on made-up causes. */
import { describe, expect, it } from 'vitest';
import { reportCauses } from '../../src/explain/report-causes.js';
import { asides, reportAssumed, reportSeats, reportUnknown } from '../../src/explain/report-open.js';
import type { ReportCause } from '../../src/explain/report-types.js';
import { reportVerdict, separatorsOf } from '../../src/explain/report-verdict.js';
import { type Answer, EMPTY_BOOK } from '../../src/facts/book.js';
import { type FactId, factSpec } from '../../src/facts/catalog.js';
import { type Audit, auditSync } from '../../src/reasoning/audit.js';
import { type Cause, confirmedBy } from '../../src/rules/cause.js';
import { CAUTIONS } from '../../src/rules/cautions.js';
import { all, atLeast, is } from '../../src/rules/condition.js';
import { causeOf } from '../../src/rules/index.js';
import { auditOf, mend, ruleOn, small, whenTest } from '../reasoning/smallCauses.js';
import { bookOf } from '../support/causeClaims.js';
import { inVain } from '../support/trials.js';

const db = (p: number): number => 10 * Math.log10(p / (1 - p));
const LIFT = is('testLift', 'improves');
const one = (audit: Audit): ReportCause => reportCauses(audit)[0] as ReportCause;
const wide = ruleOn('wide', atLeast('mainsBaseDeg', 'baseWideDeg'));

describe('a cause in the report', () => {
  it('stands in full where it leads or is likely, else by whether it is possible', () => {
    const at = (id: Cause['id'], p: number) =>
      small(id, { priorDb: db(p), rules: [ruleOn('one', whenTest('off'), { only: 'for' })] });
    const causes = [
      at('delay', 0.9),
      at('level', 0.85),
      at('aim', 0.8),
      at('height', 0.75),
      at('timbre', 0.3),
      at('polarity', 0.1),
    ];
    const places = reportCauses(auditOf(causes, { testTape: 'agrees' })).map((c) => c.place);
    expect(places).toEqual(['leading', 'leading', 'leading', 'leading', 'possible', 'aside']);
  });
  it('names its groups, why they count less, and what was tried or shut', () => {
    const kin = (g: 'same-quantity' | 'independent', ...extra: readonly ReturnType<typeof ruleOn>[]) =>
      one(
        auditOf(
          [
            small('delay', {
              groups: { 'where-heard': g },
              rules: [ruleOn('a', whenTest('off'), { group: 'where-heard' }), ...extra],
            }),
          ],
          {
            testTape: 'off',
            testLift: 'improves',
          },
        ),
      ).groups[0];
    const second = ruleOn('b', LIFT, { group: 'where-heard' });
    expect(kin('same-quantity')).toMatchObject({
      id: 'where-heard',
      title: 'where heard',
      note: '',
      rules: ['a'],
    });
    expect(kin('same-quantity', second)?.note).toContain('the most telling counts');
    expect(kin('independent', second)).toMatchObject({ note: '', rules: ['a', 'b'] });
    const tried = one(
      auditOf([small('delay', { remedies: [mend('x')] })], {}, { trials: inVain('delay/x') }),
    );
    expect(tried.groups[0]).toMatchObject({
      title: 'what was tried, and what it did',
      rules: [],
    });
    expect(tried.remedies[0]?.tried).toBe(true);
    const shut = one(
      auditOf([small('delay', { applies: is('centerCount', 'two') })], { centerCount: 'one' }),
    );
    expect(shut.groups[0]).toMatchObject({ title: 'does not arise in this system', note: '' });
  });
  it('tells of each confirming test what confirms it, and how it came out', () => {
    const cause = small('delay', { confirm: [confirmedBy('testTape', 'off', 'wrong-unit')] });
    const confirm = (facts = {}) => one(auditOf([cause], facts)).confirm[0];
    const spec = factSpec('testTape');
    const choices = (spec.kind === 'choice' ? spec.choices : {}) as Record<string, string>;
    expect(confirm()).toMatchObject({
      test: 'testTape',
      minutes: spec.minutes,
      outcomes: [choices.off, choices['wrong-unit']],
      confirmed: null,
      result: null,
    });
    expect(confirm({ testTape: 'off' })).toMatchObject({ confirmed: true, result: choices.off });
    expect(confirm({ testTape: 'agrees' })).toMatchObject({ confirmed: false, result: choices.agrees });
  });
  it('has the remedies that suit the system or may, with what is not known named in its place', () => {
    const remedies = [
      mend('no', { when: is('centerCount', 'two') }),
      mend('maybe', { when: is('upmixUse', 'on') }),
      mend('yes', {
        when: is('centerCount', 'one'),
        steps: ['raise it to {safeCrossoverHz}'],
        expect: 'The dip of {layoutDipDb} goes',
        verify: 'Hear {layoutDipDb}',
      }),
    ] as const;
    const found = one(auditOf([small('delay', { remedies })], { centerCount: 'one' })).remedies;
    expect(found.map((r) => [r.id, r.maybe])).toEqual([
      ['maybe', true],
      ['yes', false],
    ]);
    expect(found[1]?.steps).toEqual([expect.stringMatching(/^Raise it to a value not known yet \(.+\)\.$/)]);
    expect(found[1]?.expect).toMatch(/cannot be computed from what is known\.$/);
    expect(found[1]?.verify).toBe('Listen to the same minute before and after.');
    expect(found[1]?.tried).toBe(false);
    const told = causeOf('driver-fault').remedies;
    const real = one(auditOf([small('driver-fault', { remedies: told })]));
    for (const remedy of real.remedies) {
      const ids = told.find(({ id }) => id === remedy.id)?.cautions ?? [];
      expect(remedy.cautions).toEqual(ids.map((id) => CAUTIONS[id]));
    }
  });
  it('lists what would settle it, each answer once', () => {
    const cause = small('delay', {
      rules: [ruleOn('a', all(whenTest('off'), LIFT)), ruleOn('b', whenTest('agrees'))],
    });
    expect(one(auditOf([cause])).open).toEqual(['testTape', 'testLift']);
  });
});

describe('the verdict', () => {
  const verdictOf = (audit: Audit) => {
    const causes = reportCauses(audit);
    return reportVerdict(audit, causes, [], separatorsOf(audit, causes), null);
  };
  it('names who remains and what tells them apart, most of them first, nothing twice', () => {
    const sign = (id: string, test: Parameters<typeof is>[0], value: string) =>
      ruleOn(id, is(test, value as never));
    const delay = small('delay', {
      rules: [whenTest('off'), LIFT, is('testTilt', 'clearer')].map((when, i) =>
        ruleOn(`r${i}`, when),
      ) as never,
    });
    const audit = auditOf(
      [
        delay,
        small('level', { rules: [sign('q', 'upmixUse', 'on')] }),
        small('aim', { rules: [sign('p', 'testPhantom', 'gone')] }),
      ],
      {
        clapRing: 'dry',
      },
    );
    const verdict = verdictOf(audit);
    expect(verdict).toMatchObject({ leader: 'delay', undecided: true, first: null });
    expect(verdict.contenders.map((c) => c.id)).toEqual(['delay', 'level', 'aim']);
    expect(new Set(verdict.separatedBy.map((s) => s.fact)).size).toBe(verdict.separatedBy.length);
    expect(verdict.separatedBy.length).toBeGreaterThan(0);
    expect(verdict.separatedBy.length).toBeLessThanOrEqual(3);
    const [best] = verdict.separatedBy;
    // What tells the first from both others beats what tells it from one.
    expect(best?.causes).toEqual(['delay', 'level', 'aim']);
    expect(best?.text).toBe('It tells the candidates apart.');
    for (const { causes, text } of verdict.separatedBy)
      if (causes.length < 3) expect(text).toMatch(/^It tells “.+” and “.+” apart\.$/);
  });
  it('needs nothing to tell apart where it is decided', () => {
    const sure = small('delay', { rules: [ruleOn('one', whenTest('off'), { tp: 0.9, fp: 0.05 })] });
    const verdict = verdictOf(
      auditOf([sure, small('level', { priorDb: -12, rules: [ruleOn('l', LIFT)] })], { testTape: 'off' }),
    );
    expect(verdict).toMatchObject({ undecided: false, separatedBy: [] });
    expect(verdict.contenders).toEqual([
      expect.objectContaining({ id: 'delay', confidence: verdict.confidence }),
    ]);
  });
});

describe('what is open', () => {
  const unknownOf = (causes: readonly Cause[], answers: readonly (readonly [FactId, Answer])[] = []) => {
    const audit = auditOf(causes, {}, { answers: new Map(answers) });
    return reportUnknown(audit, reportCauses(audit));
  };
  const on = (id: Cause['id'], p: number, ...whens: Parameters<typeof ruleOn>[1][]): Cause =>
    small(id, { priorDb: db(p), rules: whens.map((when, i) => ruleOn(`r${i}`, when)) as never });
  it('comes by how probable the causes are that it settles', () => {
    const found = unknownOf([
      on('delay', 0.3, whenTest('off')),
      on('level', 0.4, LIFT),
      on('aim', 0.2, whenTest('agrees')),
    ]);
    expect(found.map((u) => [u.fact, u.settles, u.asked])).toEqual([
      ['testTape', ['delay', 'aim'], false],
      ['testLift', ['level'], false],
    ]);
    const spec = factSpec('testTape');
    expect(found[0]).toMatchObject({
      kind: 'test',
      label: spec.label,
      steps: spec.findOut,
      howToFindOut: spec.findOut.join(' '),
      minutes: spec.minutes,
    });
  });
  it('comes by how much it tells of them too: one strong answer before one that touches many a little', () => {
    const weak = { tp: 0.55, fp: 0.45 };
    const strong = small('delay', { priorDb: db(0.3), rules: [ruleOn('a', LIFT, { tp: 0.9, fp: 0.1 })] });
    const touched = (['level', 'aim', 'height'] as const).map((id) =>
      small(id, { priorDb: db(0.3), rules: [ruleOn('a', whenTest('off'), weak)] }),
    );
    expect(unknownOf([...touched, strong]).map((u) => u.fact)).toEqual(['testLift', 'testTape']);
  });
  it('names first the cause of which it tells most', () => {
    const found = unknownOf([
      small('level', { priorDb: db(0.4), rules: [ruleOn('a', LIFT, { tp: 0.6, fp: 0.4 })] }),
      small('delay', { priorDb: db(0.2), rules: [ruleOn('a', LIFT, { tp: 0.9, fp: 0.1 })] }),
    ]);
    expect(found[0]?.settles).toEqual(['delay', 'level']);
  });
  it('leaves out what only improbable causes wait for, or makes no sense, and keeps what nobody knew', () => {
    expect(unknownOf([on('delay', 0.049, whenTest('off'))])).toEqual([]);
    expect(unknownOf([on('delay', 0.051, whenTest('off'))])).toHaveLength(1);
    const spread = on('delay', 0.5, is('centerSpread', 'off'));
    expect(unknownOf([spread], [['upmixCenterControl', { value: 'none', how: 'read' }]])).toEqual([]);
    const asked = unknownOf([on('delay', 0.01, whenTest('off'))], [['upmixUse', { how: 'unknown' }]]);
    expect(asked).toEqual([
      expect.objectContaining({ fact: 'upmixUse', kind: 'question', settles: [], asked: true }),
    ]);
  });
  it('asks nothing for a cause that cannot exist here', () => {
    const gated = small('twin-centers', { priorDb: 20, applies: is('centerCount', 'two') });
    expect(unknownOf([gated], [['centerCount', { value: 'one', how: 'read' }]])).toEqual([]);
  });
});

describe('what was assumed', () => {
  it('is told with its value and the causes it bears on, three by name', () => {
    const titled = (id: Cause['id']) => small(id, { rules: [wide, { ...wide, id: 'again' }] });
    const assumed = (...ids: Cause['id'][]) => {
      const audit = auditOf(ids.map(titled), { mainsBase: 6 });
      return reportAssumed(audit, reportCauses(audit)).find((a) => a.fact === 'seatDistance');
    };
    const t = (id: Cause['id']): string =>
      `“${causeOf(id).title.charAt(0).toUpperCase()}${causeOf(id).title.slice(1)}”`;
    expect(assumed('delay')?.effect).toBe(`It bears on ${t('delay')}.`);
    expect(assumed('delay', 'level')?.effect).toBe(`It bears on ${t('delay')} and ${t('level')}.`);
    expect(assumed('delay', 'level', 'aim', 'height')?.effect).toMatch(/ and one other\.$/);
    expect(assumed('delay', 'level', 'aim', 'height', 'timbre')?.effect).toMatch(/ and 2 others\.$/);
    expect(assumed('delay')?.value).toMatch(/ m/);
  });
  it('for the seats alone places them', () => {
    const audit = auditOf([small('delay')]);
    const found = reportAssumed(audit, reportCauses(audit));
    expect(found.length).toBeGreaterThan(0);
    expect(found.every((a) => a.effect === 'It places the seats.')).toBe(true);
  });
});

describe('the seats of a report', () => {
  it('have finite numbers or none, and dips that are never above zero', () => {
    const seats = bookOf({}, [
      { xM: -0, yM: 3, name: 'sofa' },
      { xM: 1, yM: 3, row: 2 },
    ]).seats;
    const [sofa, end] = reportSeats(
      auditOf(
        [small('delay')],
        { centerLayout: 'mid-tweeter-mid', centerOrientation: 'level', centerSideOffset: 0 },
        { seats },
      ),
    );
    expect(sofa).toMatchObject({ name: 'sofa', main: true, row: 1, yM: 3 });
    expect(Object.is(sofa?.xM, 0)).toBe(true);
    expect(end).toMatchObject({ main: false, row: 2, xM: 1 });
    expect(end?.dipDb).toBeLessThan(0);
    const bare = reportSeats(auditOf([small('delay')], {}, { seats }));
    expect(bare[0]).toMatchObject({ dipDb: null, speechLossDb: null, centerMinusMainsMs: null });
  });
});

describe('causes told in one line', () => {
  const asidesOf = (causes: readonly Cause[], facts = {}) => {
    const audit = auditOf(
      [small('delay', { priorDb: 20, rules: [ruleOn('own', is('testPhantom', 'gone'))] }), ...causes],
      facts,
    );
    return asides(audit, reportCauses(audit));
  };
  it('are fine by the strongest argument against them', () => {
    const rules = [
      { ...ruleOn('a', whenTest('off')), says: { yes: '-', no: 'the tape agrees' } },
      { ...ruleOn('b', LIFT, { tp: 0.95 }), says: { yes: '-', no: 'lifting changes nothing' } },
    ] as const;
    const { fine, cannotTell, notApplicable } = asidesOf([small('level', { priorDb: -9, rules })], {
      testPhantom: 'gone',
      testTape: 'agrees',
      testLift: 'same',
    });
    expect(fine.map((a) => [a.cause, a.text])).toEqual([['level', 'Lifting changes nothing.']]);
    expect([cannotTell, notApplicable]).toEqual([[], []]);
    const silent = small('level', { priorDb: -9, rules: [ruleOn('a', whenTest('off'), { only: 'for' })] });
    const quiet = asidesOf([silent], { testPhantom: 'gone', testTape: 'agrees' });
    expect(quiet.fine).toEqual([]);
    expect(quiet.cannotTell.map((a) => a.text)).toEqual(['Nothing that was told speaks for or against it.']);
  });
  it('are not judged where only what is usual speaks against them', () => {
    const view = auditSync({ ...EMPTY_BOOK, complaints: ['dull'] });
    const all = asides(view, reportCauses(view));
    expect(all.fine).toEqual([]);
    expect(all.cannotTell.map((a) => a.cause)).toContain('mains-layout');
  });
  it('name each cause of the book once, shown in full or aside', () => {
    for (const audit of [
      auditSync(EMPTY_BOOK),
      auditSync({ ...EMPTY_BOOK, complaints: ['boomy', 'echo'] }),
    ]) {
      const causes = reportCauses(audit);
      const { fine, cannotTell, notApplicable } = asides(audit, causes);
      const named = [...causes.filter(({ place }) => place !== 'aside').map(({ id }) => id)];
      const aside = [...fine, ...cannotTell, ...notApplicable].map(({ cause }) => cause);
      expect([...named, ...aside].sort()).toEqual(causes.map(({ id }) => id).sort());
    }
  });
  it('do not apply by what shut them', () => {
    const gated = small('twin-centers', { applies: is('centerCount', 'two') });
    const { notApplicable } = asidesOf([gated], { testPhantom: 'gone', centerCount: 'one' });
    expect(notApplicable.map((a) => a.cause)).toEqual(['twin-centers']);
    expect(notApplicable[0]?.text).toMatch(/: “.+”\.$/);
  });
  it('cannot be told for want of answers, three by name', () => {
    const facts = ['upmixUse', 'clapRing', 'jumpers', 'subwoofer'] as const;
    const open = small('level', {
      priorDb: -12,
      rules: facts.map((fact, i) =>
        ruleOn(`r${i}`, { fact, operator: 'equal', value: 'x' } as never),
      ) as never,
    });
    const { cannotTell } = asidesOf([open], { testPhantom: 'gone' });
    expect(cannotTell.map((a) => a.text)).toEqual([
      `It would take: ${facts
        .slice(0, 3)
        .map((id) => factSpec(id).label)
        .join('; ')}.`,
    ]);
  });
});
