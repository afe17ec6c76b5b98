/** `try` and `compare` as pages: what is left out, what stands where, from changes made by hand. */
import { describe, expect, it } from 'vitest';
import { type ChangeReport, renderChanges } from '../../src/explain/change-words.js';
import type { CauseFate } from '../../src/explain/changes.js';

const cause = (title: string, changes: Partial<CauseFate> = {}): CauseFate => ({
  cause: 'delay',
  title,
  fate: 'unchanged',
  before: 0.5,
  after: 0.5,
  text: `how ${title} fared`,
  values: [],
  ...changes,
});
const NONE: ChangeReport = {
  format: 'center-audit/compare',
  version: 1,
  facts: [],
  causes: [],
  complaints: { fixed: [], unchanged: [], new: [] },
  seats: [],
  summary: '“B” is put right.',
  verdict: { before: 'A: likely', after: 'B: possible', sameLeader: false },
  seamless: { before: null, after: true, text: 'the voice stays' },
};
const flat = (page: string): string => page.replace(/\s+/g, ' ');
const tried = (changes: Partial<ChangeReport> = {}): string =>
  flat(renderChanges({ ...NONE, format: 'center-audit/try', ...changes }));
const compared = (changes: Partial<ChangeReport> = {}): string =>
  flat(renderChanges({ ...NONE, ...changes }));
const moved = cause('Delay', {
  fate: 'better',
  before: 0.6,
  after: 0.4,
  values: [{ label: 'delay error', before: '2 ms', after: '1 ms' }],
});

describe('both pages', () => {
  it.each([
    ['try', tried],
    ['compare', compared],
  ] as const)(
    '%s: the line that matters, facts side by side, seats that changed, and the switch',
    (_, page) => {
      const facts = [{ fact: 'testTape' as const, label: 'tape check', before: 'off', after: 'agrees' }];
      const seats = [{ seat: 'sofa', values: [{ label: 'voice dip', before: '-6 dB', after: '-1 dB' }] }];
      const full = page({ facts, seats });
      expect(full).toMatch(/Tape check .*off .*agrees/);
      expect(full).toMatch(/AT THE SEATS .*sofa .*voice dip .*-6 dB .*-1 dB/);
      expect(full.indexOf('“B” is put right.')).toBeLessThan(full.indexOf('Tape check'));
      expect(full).toContain('Seamless switch: cannot be told before, passes after. The voice stays.');
      expect(page({ seamless: { before: false, after: null, text: 'x' } })).toContain(
        'fails before, cannot be told after',
      );
      // What did not move is not told.
      expect(page({ seamless: { before: null, after: null, text: 'x' } })).not.toContain('Seamless');
    },
  );
  it.each([
    ['try', tried],
    ['compare', compared],
  ] as const)('%s: say that nothing else was told, and leave out empty parts', (_, page) => {
    expect(page()).toContain('The same was told in both.');
    expect(page()).not.toContain('AT THE SEATS');
    expect(page({ facts: [{ fact: 'testTape', label: 'x', before: 'a', after: 'b' }] })).not.toContain(
      'The same was told',
    );
  });
});

describe('try', () => {
  it('lists causes that move as far as people notice, with the numbers behind', () => {
    const page = tried({
      causes: [
        moved,
        cause('Level', { fate: 'better', before: 0.5, after: 0.48 }),
        cause('Just so', { fate: 'worse', before: 0.5, after: 0.525 }),
        cause('Untold', { fate: 'unchanged', before: 0.6, after: 0.3 }),
      ],
    });
    expect(page).toContain('Delay: how Delay fared.');
    expect(page).toContain('Delay error: 2 ms before, 1 ms after.');
    expect(page).toContain('Just so: how Just so fared.');
    expect(page).not.toMatch(/Level|Untold/);
    expect(page).toContain('1 cause as likely as before.');
  });
});

describe('compare', () => {
  it('tells what is heard no more, still and newly', () => {
    const page = compared({ complaints: { fixed: ['hollow'], unchanged: ['thin'], new: ['echo'] } });
    expect(page).toContain('Gone: hollow.');
    expect(page).toContain('Still: thin.');
    expect(page).toContain('New: echo.');
    expect(compared()).not.toContain('WHAT IS HEARD');
  });
  it('puts causes under what became of them, put right first, and counts those that did not move', () => {
    const page = compared({
      causes: [
        moved,
        cause('Aim', { fate: 'fixed', before: 0.9, after: 0.1 }),
        cause('Height'),
        cause('Level'),
        cause('Room', { fate: 'unknown' }),
      ],
    });
    expect(page).toMatch(
      /PUT RIGHT .*Aim: how Aim fared\..*LESS LIKELY .*Delay: how Delay fared\..*THE REST 2 causes as likely as before and 1 cause that cannot be told in one of the two\./,
    );
    expect(page).not.toMatch(/Height|MORE LIKELY|NEWLY/);
  });
});
