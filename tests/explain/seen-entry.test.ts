/** Where entry and tape are both known, every way of telling says which number to type instead of which. */
import { describe, expect, it } from 'vitest';
import { renderPost } from '../../src/explain/render/bbcode.js';
import { renderHtml } from '../../src/explain/render/html.js';
import { renderText } from '../../src/explain/render/text.js';
import { renderTicket } from '../../src/explain/render/ticket.js';
import { buildReport } from '../../src/explain/report.js';
import { EMPTY_BOOK } from '../../src/facts/book.js';
import { auditSync } from '../../src/reasoning/audit.js';

const told = (entered: number, how: 'read' | 'recalled' = 'read') =>
  auditSync({
    ...EMPTY_BOOK,
    units: 'metric',
    complaints: ['hollow'],
    answers: new Map([
      ['enteredCenter', { value: entered, how }],
      ['tapedCenter', { value: 3.1, how: 'measured' }],
    ] as const),
  });

describe('an entry of 4.6 m against a tape of 3.1 m', () => {
  const report = buildReport(told(4.6));
  it('decides the verdict, and is mended before any test', () => {
    expect(report.verdict).toMatchObject({ leader: 'delay', undecided: false });
    expect(report.plan[0]).toMatchObject({ kind: 'remedy', id: 'enter-taped-distances' });
  });
  it.each([
    ['verdict', () => report.verdict.first ?? ''],
    ['report', () => renderText(report)],
    ['ticket', () => renderTicket(report)],
    ['post', () => renderPost(report)],
    ['page', () => renderHtml(report)],
  ])('stands with both numbers in the %s', (_, text) => {
    expect(text().replaceAll(/\s+/g, ' ')).toMatch(/Enter 3\.10 m .{0,20}for the center instead of 4\.60 m/);
  });
  it('names no numbers where the two agree', () => {
    expect(renderText(buildReport(told(3.15)))).not.toContain('instead of 3.1');
  });
});
