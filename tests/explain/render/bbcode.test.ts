/** The report as a forum post: what comes first, and what goes when it would grow too long. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LONGEST_POST, renderBbcode } from '../../../src/explain/render/bbcode.js';
import type { ReportSeparator } from '../../../src/explain/report-types.js';
import {
  fullReport,
  madeCause,
  madeEvidence,
  madeReport,
  madeStep,
  madeUnknown,
  times,
} from '../madeReport.js';

const DIVIDER = '[b]--- Details, can be cut ---[/b]';
const post = (changes: Parameters<typeof madeReport>[0] = {}, longest?: number): string =>
  renderBbcode(madeReport(changes), longest === undefined ? {} : { longest });
const headings = (text: string): string[] =>
  text.split('\n').flatMap((line) => /^\[b\]([^:]+)\[\/b\]$/.exec(line)?.[1] ?? []);

describe('a post', () => {
  it('begins with one paragraph: what is wrong and how sure that is', () => {
    expect(post().split('\n\n')[0]).toBe('[b]The center comes late.[/b] Likely, about 80%.');
  });
  it('says why nothing is decided, and the one thing that tells most apart', () => {
    const separatedBy = [{ text: 'One.' }, { text: 'Two.' }] as ReportSeparator[];
    const paragraphs = post({ verdict: { undecided: true, separatedBy } }).split('\n\n');
    expect(paragraphs.slice(0, 2)).toEqual([
      '[b]The center comes late.[/b] Likely, about 80% (the first named). One line of evidence speaks for it.',
      'One.',
    ]);
    expect(paragraphs).not.toContain('Two.');
  });
  it('tells the story of the leader with its four strongest lines, none that says nothing', () => {
    const evidence = [
      madeEvidence('Silent.', { speaks: 'neither' }),
      ...['One.', 'Two.', 'Three.', 'Four.', 'Five.'].map((text) => madeEvidence(text)),
    ];
    const text = post({
      causes: [madeCause('aim', { story: 'Not this.' }), madeCause('delay', { evidence })],
    });
    expect(text).toContain(
      '[b]Why[/b]\n\nThis is what happens.\n\n[list]\n[*]One. (a hint, for it)\n[*]Two. (a hint, for it)\n[*]Three. (a hint, for it)\n[*]Four. (a hint, for it)\n[/list]',
    );
    expect(post({ causes: [madeCause('aim')] })).not.toContain('[b]Why[/b]');
  });
  it('has four steps with their cautions, how, outlook and check, without the reason', () => {
    const plan = ['A', 'B', 'C', 'D', 'E'].map((title) => madeStep(title, { cautions: ['Unplug it.'] }));
    const text = post({ plan });
    expect(text).toContain(
      '[b]What to do, in this order[/b]\n\n[list=1]\n[*][b]A[/b] (5 minutes, free)\nCaution: Unplug it.\nHow: How to a.\nExpect: The voice clears.\nCheck: Listen again.\n[*][b]B[/b]',
    );
    expect(text).toContain('[*][b]D[/b]');
    expect(text).not.toContain('[*][b]E[/b]');
    expect(text).not.toContain('It costs least');
  });
  it('has its details below a line that says they can be cut', () => {
    const text = renderBbcode(fullReport());
    expect(headings(text)).toEqual([
      'Why',
      'What to do, in this order',
      '--- Details, can be cut ---',
      'Ranking',
      'Seats',
      'What does not fit together',
      'What you told us',
      'Not known yet, and how to find out',
      'Assumed, since it was not told',
      'Also possible',
      'Looked at, and fine or unlikely',
    ]);
    expect(text).toContain('[b]The seamless switch: how to hear that it is right[/b]');
    expect(times(text, DIVIDER)).toBe(1);
  });
  it('has three open questions', () => {
    const unknown = ['a', 'b', 'c', 'd'].map((label) => madeUnknown(label));
    const text = post({ unknown });
    expect(text).toContain('[*][b]C[/b] (2 minutes)');
    expect(text).not.toContain('[b]D[/b]');
    expect(text).toContain('1 more answer could be given');
  });
});

describe('a post that would grow too long', () => {
  const plan = [
    madeStep('First', { cautions: ['Unplug it.'] }),
    madeStep('Second', { cautions: ['Two people.', 'Wear gloves.'] }),
  ];
  const report = fullReport({ plan, words: `${'so muffled '.repeat(30)}end` });
  const whole = renderBbcode(report, { longest: 60_000 });
  it('is whole where it just fits, and six thousand letters at most unless told otherwise', () => {
    expect(renderBbcode(report, { longest: whole.length })).toBe(whole);
    expect(renderBbcode(report, { longest: whole.length - 1 }).length).toBeLessThan(whole.length);
    const words = 'long '.repeat(3000).trim();
    expect(post({ words }).length).toBeLessThanOrEqual(LONGEST_POST);
    expect(post({ words }).length).toBeGreaterThan(LONGEST_POST * 0.75);
  });
  it('never passes its limit, leaves no tag open, no heading bare, and no step without its cautions', () => {
    fc.assert(
      fc.property(fc.integer({ min: 60, max: whole.length }), (longest) => {
        const text = renderBbcode(report, { longest });
        expect(text.length).toBeLessThanOrEqual(longest);
        expect(times(text, '[b]')).toBe(times(text, '[/b]'));
        expect(text.split(/\[list(?:=1)?\]/).length).toBe(text.split('[/list]').length);
        expect(times(text, '[quote]')).toBe(times(text, '[/quote]'));
        for (const part of text.trimEnd().split('\n\n').slice(-1)) expect(headings(part)).toEqual([]);
        if (text.includes('[b]First[/b]')) expect(text).toContain('Caution: Unplug it.');
        if (text.includes('[b]Second[/b]'))
          expect(text).toContain('Caution: Two people.\nCaution: Wear gloves.');
        const details = /\[b\](Ranking|Seats|What does not|What you told|Not known|Assumed|Also)/.test(text);
        expect(text.includes(DIVIDER)).toBe(details);
      }),
      { numRuns: 300 },
    );
  });
  it('loses the last detail of a step first, then the step, and keeps the first one', () => {
    const longest = (text: string): string => renderBbcode(madeReport({ plan }), { longest: text.length });
    const full = post({ plan });
    const steps = full.slice(0, full.indexOf('[/list]') + 8);
    expect(longest(steps)).toBe(steps);
    const without = (line: string, text: string): string => {
      const at = text.lastIndexOf(line);
      return text.slice(0, at) + text.slice(at + line.length);
    };
    const short = without('Check: Listen again.\n', steps);
    expect(longest(short)).toBe(short);
    const shorter = without('How: How to second.\n', without('Expect: The voice clears.\n', short));
    expect(longest(shorter)).toBe(shorter);
    const one = `${shorter.slice(0, shorter.indexOf('[*][b]Second'))}[/list]\n`;
    expect(renderBbcode(madeReport({ plan }), { longest: shorter.length - 1 })).toBe(one);
    expect(post({ plan }, 120)).not.toMatch(/First|\[list/);
  });
  it('shortens the last of many steps alone', () => {
    const many = [...plan, madeStep('Third')];
    const full = post({ plan: many });
    const steps = full.slice(0, full.indexOf('[/list]') + 8);
    const check = 'Check: Listen again.\n';
    const short = `${steps.slice(0, steps.lastIndexOf(check))}[/list]\n`;
    expect(post({ plan: many }, steps.length - 1)).toBe(short);
  });
  it('cuts the words of the owner short, marked as cut, and drops them rather than leave a scrap', () => {
    const words = 'one two three four five six seven eight nine ten';
    const complaints = [{ title: 'hum' }] as never;
    const full = post({ words, complaints });
    const head = full.slice(0, full.indexOf('[quote]'));
    const cut = (room: number) =>
      /\[quote\](.*)\[\/quote\]/.exec(post({ words, complaints }, head.length + room))?.[1];
    expect(cut(15 + words.length + 1)).toBe(words);
    expect(cut(15 + words.length)).toBe('one two three four five six seven eigh…');
    expect(cut(40)).toBe('one two three four f…');
    expect(cut(28)).toBe('one two thr…');
    expect(cut(26)).toBeUndefined();
  });
  it('loses rows of a table from its end, and all of it rather than its last row', () => {
    const causes = (['delay', 'level', 'aim', 'height'] as const).map((id) =>
      madeCause(id, { place: 'aside' }),
    );
    const full = post({ causes });
    const item = '[*]Title of height: likely, about 80%\n';
    const end = full.indexOf('[/list]', full.indexOf('Ranking')) + 8;
    const less = full.slice(0, end).replace(item, '');
    expect(post({ causes }, less.length)).toBe(less);
    const first = `${full.slice(0, full.indexOf('[*]Title of level'))}[/list]\n`;
    expect(post({ causes }, first.length)).toBe(first);
    expect(post({ causes }, first.length - 1)).not.toContain('Ranking');
  });
});
