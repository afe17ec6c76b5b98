/** The report for a terminal: which parts it has, in which order, and how it ends. */
import { describe, expect, it } from 'vitest';
import { renderText, type TextReportOptions } from '../../../src/explain/render/text.js';
import type { ReportSeparator } from '../../../src/explain/report-types.js';
import { fullReport, madeReport } from '../madeReport.js';

/** Lines in capitals. */
const headings = (text: string): string[] => text.split('\n').filter((line) => /^[A-Z][A-Z ,:]+$/.test(line));
const BEGIN = [
  'WHAT YOU TOLD US',
  'WHAT DOES NOT FIT TOGETHER',
  'RANKING',
  'SEATS',
  'THE LEADING CAUSE',
  'ALSO POSSIBLE',
  'WHAT TO DO, IN THIS ORDER',
];
const SWITCH = 'THE SEAMLESS SWITCH: HOW TO HEAR THAT IT IS RIGHT';

describe('the text report', () => {
  it('has the title first and the verdict last, and tells the later parts briefly', () => {
    const text = renderText(fullReport());
    expect(text.split('\n')[0]).toBe('Center loudspeaker audit: Near sofa');
    expect(headings(text)).toEqual([
      ...BEGIN,
      'NOT KNOWN YET',
      'ASSUMED, SINCE IT WAS NOT TOLD',
      SWITCH,
      'THE OTHER CAUSES',
      'VERDICT',
    ]);
    expect(text).toContain('Ear height (2 minutes).');
    expect(text).not.toContain('Measure ear height');
  });
  it('tells all of it on request, with how to find out, sources and words', () => {
    const text = renderText(fullReport(), { long: true });
    expect(headings(text)).toEqual([
      ...BEGIN,
      'NOT KNOWN YET, AND HOW TO FIND OUT',
      'ASSUMED, SINCE IT WAS NOT TOLD',
      SWITCH,
      'LOOKED AT, AND FINE OR UNLIKELY',
      'NOT JUDGED',
      'WHERE THE NUMBERS COME FROM',
      'WORDS',
      'VERDICT',
    ]);
    expect(text).toContain('Measure ear height.');
  });
  it('leaves out what has nothing in it', () => {
    expect(headings(renderText(madeReport()))).toEqual(['RANKING', 'SEATS', 'VERDICT']);
  });
  it('keeps to the width and the marks that were asked for', () => {
    const narrow = renderText(fullReport(), { width: 40, ascii: true });
    expect(Math.max(...narrow.split('\n').map((line) => line.length))).toBeLessThanOrEqual(40);
    expect(narrow).not.toContain('│');
    expect(renderText(fullReport())).toContain('│ muffled at the ends');
  });
});

describe('the end of the text report', () => {
  const end = (changes: Parameters<typeof madeReport>[0], options: TextReportOptions = {}): string => {
    const text = renderText(madeReport(changes), { width: 100, ...options });
    return text.slice(text.indexOf('VERDICT\n') + 8);
  };
  const question = { kind: 'question', fact: 'upmixUse', text: '?', because: '', minutes: 1 } as const;
  it('is what is wrong and how sure that is, what to do first, and the next command', () => {
    expect(end({ verdict: { first: 'turn it' } }, { caseName: 'a.json' })).toBe(
      'The center comes late. Likely, about 80%.\n  First  Turn it.\n  Next   center-audit why a.json delay\n',
    );
    expect(end({})).toContain('  First  There is nothing to do.\n  Next   center-audit why CASE delay\n');
  });
  it('says what tells the causes apart, where anything does', () => {
    const separatedBy = [{ text: 'Question: Who? It tells.' }, { text: 'More.' }] as ReportSeparator[];
    expect(end({ verdict: { separatedBy } })).toMatch(/about 80%\. Question: Who\? It tells\.\n {2}First/);
  });
  it('leads to the interview while it is undecided or a question is worth asking', () => {
    expect(end({ verdict: { undecided: true } })).toContain('center-audit interview CASE\n');
    expect(end({ next: question })).toContain('center-audit interview CASE\n');
    expect(end({ next: { ...question, kind: 'test' } })).toContain('center-audit why CASE delay\n');
  });
  it('writes the case as a shell takes it', () => {
    const named = (caseName: string): string => / why (.*) delay\n/.exec(end({}, { caseName }))?.[1] ?? '';
    expect(named('cases/a-b_1.json')).toBe('cases/a-b_1.json');
    expect(named('~root.json')).toBe("'~root.json'");
    expect(named('my case.json')).toBe("'my case.json'");
  });
});
