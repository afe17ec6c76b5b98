import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { changeReport, renderChanges } from '../../src/explain/change-words.js';
import { nextWords, renderNext } from '../../src/explain/next-words.js';
import { whyOf } from '../../src/explain/why.js';
import { withAnswer } from '../../src/facts/book.js';
import { readCase } from '../../src/facts/case-file.js';
import { auditSync } from '../../src/reasoning/audit.js';
import { anyBook } from '../support/books.js';
import { LOBING, SPARSE, told } from './books.js';
import { whyText } from './whyText.js';

const audit = auditSync(LOBING);
const flat = (text: string): string => text.replace(/\s+/g, ' ');
const tenths = (text: string): number => Math.round(Number(text.replace('−', '-')) * 10);

describe('the numbers of an error in time', () => {
  it('do not divide to a ratio that is of the part alone that center and mains share', () => {
    const book = readCase(
      JSON.stringify({
        format: 'center-audit/case',
        version: 2,
        units: 'metric',
        complaints: ['hollow'],
        facts: {
          playedContent: 'multichannel-film',
          alignmentBy: 'by-hand',
          entryKind: 'distances',
          enteredLeft: '3.6 m',
          enteredCenter: '5.1 m',
          enteredRight: '3.6 m',
          tapedMains: '3.6 m',
          tapedCenter: '3.1 m',
        },
      }),
    ).book;
    const page = flat(whyText(auditSync(book), 'delay'));
    const [, value, times, limit] =
      /Value ([\d.]+) ms; what of it is heard is ([\d.]+) times the limit of ([\d.]+) ms/.exec(page) ?? [];
    expect(Number(value) / Number(limit)).toBeGreaterThan(2 * Number(times));
  });
});

describe('why', () => {
  const why = whyOf(audit, 'driver-layout', 'delay');
  const page = whyText(audit, 'driver-layout', 'delay');

  it('sums exactly', () => {
    const sum = why.lines.reduceRight((total, line) => total + line.decibans, 0);
    expect(sum).toBeCloseTo(why.decibans, 9);
  });
  it('adds up as printed, prior last and in words', () => {
    const lines = page.slice(page.indexOf('THE BALANCE')).split('\n');
    const end = lines.findIndex((line) => line.startsWith('  = '));
    const printed = lines.slice(1, end).flatMap((line) => /^ {2}([+−]?\d+\.\d)\s/.exec(line)?.[1] ?? []);
    const total = /= ([+−]?\d+\.\d)/.exec(lines[end] ?? '')?.[1] ?? 'NaN';
    expect(printed.reduce((sum, each) => sum + tenths(each), 0)).toBe(tenths(total));
    expect(why.lines.at(-1)?.note).toMatch(/before anything was told: (very unlikely|unlikely|possible)/);
  });
  it('gives at most three for and two against, each with value, limit, ratio, reason and source where it has them', () => {
    expect(why.strongestFor.length).toBeLessThanOrEqual(3);
    expect(why.strongestAgainst.length).toBeLessThanOrEqual(2);
    const weights = why.strongestFor.map((item) => item.decibans);
    expect(weights).toEqual([...weights].sort((a, b) => b - a));
    expect(page).toMatch(/Value [\d.]+ dB, [\d.]+ times the limit of [\d.]+ dB\./);
    expect(page).toContain('Reason: ');
    expect(page).toContain('Source: ');
  });
  it('contrasts two causes by rows that sum to their difference, the largest first', () => {
    const { against } = why;
    const shown = against?.rows.map((row) => Math.abs(row.mineDb - row.theirsDb)) ?? [];
    expect(shown).toEqual([...shown].sort((a, b) => b - a));
    expect(flat(page)).toContain(`decibans ahead of “${against?.title}”`);
  });
  it('names the smallest change that makes another cause lead, or says that there is none', () => {
    expect(page).toMatch(/would lead\.|No other choice of one or two/);
    for (const flip of why.flips) expect(flip.leader).not.toBe('driver-layout');
  });
});

describe('next', () => {
  it('shows the question with its reason, its cost and how to find out', () => {
    const words = nextWords(auditSync(SPARSE));
    const page = renderNext(words);
    expect(words.kind).not.toBe('stop');
    expect(flat(page)).toContain(words.text);
    for (const part of ['Why', 'Takes', 'HOW TO FIND OUT']) expect(page).toContain(part);
    expect(flat(page)).toMatch(/more question|More may follow/);
  });
  it('says what to do once enough is known', () => {
    const stopped = nextWords(audit, {
      kind: 'stop',
      reason: 'sure',
      because: 'The first cause is sure.',
      candidates: [],
      mayFollowAtMost: 3,
    });
    expect(stopped.todo).not.toBeNull();
    expect(renderNext(stopped)).toContain('Enough is known');
  });
});

describe('try', () => {
  const after = auditSync(withAnswer(LOBING, 'seatDistance', { value: 4.2, how: 'measured' }));
  const changes = changeReport('try', audit, after);
  const page = renderChanges(changes);

  it('shows before and after side by side, in the units of the owner, and only what changed', () => {
    expect(changes.facts).toEqual([
      {
        fact: 'seatDistance',
        label: 'seat distance',
        before: '7 ft 2 1/2 in (2.20 m)',
        after: '13 ft 9 1/2 in (4.20 m)',
      },
    ]);
    for (const seat of changes.seats)
      for (const value of seat.values) expect(value.before).not.toBe(value.after);
  });
  it('shows that a row farther back is inside the angle of the center: the dip at the end gets smaller', () => {
    const end = changes.seats.find((seat) => seat.values.some((value) => value.label === 'voice dip'));
    const dip = end?.values.find((value) => value.label === 'voice dip');
    expect(Math.abs(Number.parseFloat((dip?.after ?? '').replace('−', '-')))).toBeLessThan(
      Math.abs(Number.parseFloat((dip?.before ?? '').replace('−', '-'))),
    );
    const layout = changes.causes.find((cause) => cause.cause === 'driver-layout');
    expect(layout?.after).toBeLessThan(layout?.before ?? 0);
  });
  it('begins with the one line that matters', () => {
    expect(flat(page)).toMatch(
      /─ “[^”]+” still comes first|─ Nothing that people|─ “[^”]+” (is put right|comes first no more)/,
    );
  });
});

describe('compare', () => {
  it('tells what is fixed, new and unchanged, and keeps apart what cannot be told', () => {
    const fixed = {
      ...told(LOBING, { centerLayout: { value: 'coaxial', how: 'read' } }),
      complaints: [],
      absentComplaints: LOBING.complaints,
    };
    const changes = changeReport('compare', audit, auditSync(fixed));
    const page = renderChanges(changes);
    expect(changes.complaints.fixed).toHaveLength(1);
    expect(changes.causes.find((cause) => cause.cause === 'driver-layout')?.fate).toBe('fixed');
    expect(page).toContain('PUT RIGHT');
    expect(page.replace(/\s+/g, ' ')).toMatch(/\d+ causes? that cannot be told in one of the two/);
  });
  it('finds nothing between a system and itself', () => {
    const changes = changeReport('compare', audit, audit);
    expect(changes).toMatchObject({ facts: [], seats: [], verdict: { sameLeader: true } });
    expect(changes.causes.every((cause) => cause.fate === 'unchanged' || cause.fate === 'unknown')).toBe(
      true,
    );
  });
});

describe('any two systems', () => {
  it('compare and explain without gaps', () => {
    fc.assert(
      fc.property(anyBook, anyBook, (a, b) => {
        const [before, after] = [auditSync(a), auditSync(b)];
        const own = [...a.seats, ...b.seats].map((seat) => seat.name).join('');
        for (const page of [
          renderChanges(changeReport('compare', before, after)),
          renderNext(nextWords(before)),
        ])
          if (!/[{}]/.test(own)) expect(page).not.toMatch(/undefined|NaN|Infinity|[{}]/);
      }),
      { numRuns: 10 },
    );
  }, 120_000);
});
