import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Report } from '../../src/explain/report-types.js';
import { auditSync } from '../../src/reasoning/audit.js';
import { CAUSE_IDS } from '../../src/rules/cause-ids.js';
import { anyBook } from '../support/books.js';
import { renderJson, reportOn } from '../support/formats.js';
import { LOBING, SPARSE, told } from './books.js';

const toTwelveDigits = (report: object): object =>
  JSON.parse(
    JSON.stringify(report, (_, value) => (typeof value === 'number' ? Number(value.toPrecision(12)) : value)),
  );

const report = reportOn(LOBING);
const parsed = JSON.parse(renderJson(report)) as Report;
const leader = parsed.causes[0];

/** Every number in a tree. */
function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersIn) : [];
}

describe('JSON report', () => {
  it('carries the keys of the contract, in their place', () => {
    expect(Object.keys(parsed).slice(0, 12)).toEqual([
      'format',
      'version',
      'verdict',
      'causes',
      'plan',
      'seats',
      'complaints',
      'seamlessSwitch',
      'unknown',
      'assumed',
      'contradictions',
      'cautions',
    ]);
    expect(parsed).toMatchObject({ format: 'center-audit/report', version: 1 });
    expect(Object.keys(parsed.verdict).slice(0, 4)).toEqual([
      'headline',
      'confidence',
      'leader',
      'undecided',
    ]);
    expect(Object.keys(leader ?? {}).slice(0, 8)).toEqual([
      'id',
      'title',
      'probability',
      'decibans',
      'verdict',
      'severity',
      'evidence',
      'remedies',
    ]);
    expect(Object.keys(leader?.evidence[0] ?? {}).slice(0, 9)).toEqual([
      'rule',
      'decibans',
      'text',
      'facts',
      'value',
      'threshold',
      'unit',
      'source',
      'assumed',
    ]);
    expect(Object.keys(leader?.remedies[0] ?? {}).slice(0, 8)).toEqual([
      'id',
      'title',
      'steps',
      'minutes',
      'cost',
      'expect',
      'verify',
      'cautions',
    ]);
    expect(Object.keys(parsed.plan[0] ?? {}).slice(0, 5)).toEqual([
      'kind',
      'id',
      'cause',
      'minutes',
      'because',
    ]);
    expect(Object.keys(parsed.seats[0] ?? {}).slice(0, 6)).toEqual([
      'name',
      'azimuthDeg',
      'dipDb',
      'dipHz',
      'speechLossDb',
      'centerMinusMainsMs',
    ]);
    expect(Object.keys(parsed.complaints[0] ?? {}).slice(0, 2)).toEqual(['id', 'leakShare']);
    expect(Object.keys(parsed.seamlessSwitch).slice(0, 2)).toEqual(['passes', 'steps']);
    expect(Object.keys(parsed.unknown[0] ?? {}).slice(0, 3)).toEqual(['fact', 'howToFindOut', 'settles']);
    expect(Object.keys(parsed.assumed[0] ?? {}).slice(0, 3)).toEqual(['fact', 'value', 'effect']);
  });
  it('survives being read back: nothing in it is undefined or not a number', () => {
    const ids = (of: Report) =>
      of.causes.flatMap(({ id, evidence }) => evidence.map(({ rule }) => `${id}/${rule}`));
    expect(ids(parsed)).toEqual(ids(report));
    expect(JSON.stringify(parsed)).not.toContain('undefined');
    expect(numbersIn(parsed).every(Number.isFinite)).toBe(true);
  });
  it('holds every cause once, most probable first', () => {
    expect([...parsed.causes.map((cause) => cause.id)].sort()).toEqual([...CAUSE_IDS].sort());
    const decibans = parsed.causes.map((cause) => cause.decibans);
    expect(decibans).toEqual([...decibans].sort((a, b) => b - a));
  });
  it('blames the driver layout of a lying mid-tweeter-mid at a near sofa, with numbers', () => {
    expect(parsed.verdict).toMatchObject({ leader: 'driver-layout', undecided: false });
    const dip = leader?.evidence.find((item) => item.rule === 'dip-at-worst-seat');
    expect(dip).toMatchObject({ unit: 'dB', threshold: 4 });
    expect(dip?.text).toContain(`${Math.round(dip?.value ?? 0)} dB`);
  });
  it('gives dips as zero or negative, and the deepest equals the computed fact', () => {
    for (const seat of parsed.seats) expect(seat.dipDb).toBeLessThanOrEqual(0);
    const deepest = Math.min(...parsed.seats.map((seat) => seat.dipDb ?? 0));
    expect(-deepest).toBeCloseTo(auditSync(LOBING).view.read('layoutDipDb').value as number, 9);
  });
  it('names for what is not known how to find out and what it settles', () => {
    const asked = reportOn(told(LOBING, { centerMidSize: { how: 'unknown' } }));
    const entry = asked.unknown.find((each) => each.fact === 'centerMidSize');
    expect(entry?.asked).toBe(true);
    expect(entry?.howToFindOut.length).toBeGreaterThan(10);
    for (const each of asked.unknown) expect(each.howToFindOut).not.toBe('');
  });
  it('says neither pass nor fail of the seamless switch where its numbers are unknown', () => {
    expect(reportOn(SPARSE).seamlessSwitch.passes).toBeNull();
  });
  it('fails the seamless switch where the center is 4 dB louder than the mains', () => {
    const loud = told(LOBING, {
      measuredCenterLevel: { value: 79, how: 'measured' },
      measuredLeftLevel: { value: 75, how: 'measured' },
      measuredRightLevel: { value: 75, how: 'measured' },
    });
    const { seamlessSwitch } = reportOn(loud);
    expect(seamlessSwitch.passes).toBe(false);
    expect(seamlessSwitch.summary).toContain('loudness');
  });
});

describe('verdict', () => {
  it('is open where only a complaint was told, and names what remains and what separates it', () => {
    const { verdict } = reportOn(SPARSE);
    expect(verdict.undecided).toBe(true);
    expect(verdict.contenders.length).toBeGreaterThanOrEqual(2);
    expect(verdict.separatedBy.length).toBeGreaterThan(0);
    expect(verdict.headline).toBe('Not enough is known yet');
    const [apart] = verdict.separatedBy;
    expect(verdict.contenders.map(({ id }) => id)).toEqual(
      expect.arrayContaining([...(apart?.causes ?? [])]),
    );
  });
  it('tells one who told nothing that nothing can be named', () => {
    const { verdict } = reportOn({ ...SPARSE, complaints: [] });
    expect(verdict.headline).toMatch(/Nothing was told yet/);
  });
  it('says a word and the nearest five percent', () => {
    expect(report.verdict.confidence).toMatch(/^[a-z ]+, (about \d?[05]%|over 95%|under 5%)$/);
  });
});

describe('any system', () => {
  it('lists every value that a weight rests on without having been told, those that follow from other answers too', () => {
    fc.assert(
      fc.property(anyBook, (book) => {
        const audited = auditSync(book);
        const listed = new Set(reportOn(book).assumed.map(({ fact }) => fact));
        const weighs = [...audited.byCause.values()].flat().filter(({ decibans }) => decibans !== 0);
        expect(weighs.flatMap(({ assumed }) => assumed).filter((id) => !listed.has(id))).toEqual([]);
      }),
      { numRuns: 12 },
    );
  }, 120_000);
  it('gives sums that are exact, probabilities within bounds and finite numbers', () => {
    fc.assert(
      fc.property(anyBook, (book) => {
        const built = reportOn(book);
        for (const cause of built.causes) {
          const sum =
            cause.groups.reduce((total, group) => total + group.decibans, cause.priorDb) + cause.sharedDb;
          expect(sum).toBe(cause.decibans);
          expect(cause.probability).toBeLessThanOrEqual(0.99);
          for (const item of cause.evidence)
            expect(item.speaks).toBe(item.decibans > 0 ? 'for' : item.decibans < 0 ? 'against' : 'neither');
        }
        expect(numbersIn(built).every(Number.isFinite)).toBe(true);
        for (const seat of built.seats) expect(seat.dipDb ?? 0).toBeLessThanOrEqual(0);
        expect(built.verdict.contenders[0]?.id).toBe(built.verdict.leader);
        // What is printed is the report itself, to twelve digits, without what only renderers read.
        expect(toTwelveDigits(built)).toMatchObject(JSON.parse(renderJson(built)));
      }),
      { numRuns: 12 },
    );
  }, 120_000);
});
