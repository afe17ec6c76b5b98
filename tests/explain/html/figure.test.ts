/** A chart on the page: what is to be seen, the drawing, its numbers. */
import { describe, expect, it } from 'vitest';
import { figure, rangeFigure } from '../../../src/explain/html/figure.js';
import { madeBar, madeChart, times, wordsIn } from '../madeReport.js';

describe('a chart on the page', () => {
  const chart = madeChart('tone', { title: 'Tone & level', notes: ['Smoothed <1/3>.', 'At one seat.'] });
  it('says first what is to be seen, then draws it, then has its numbers folded away', () => {
    const html = figure(chart);
    expect(html).toMatch(/^<figure id="figure-tone">/);
    expect(html.indexOf('It falls.')).toBeLessThan(html.indexOf('<svg'));
    expect(html.indexOf('<details>')).toBeGreaterThan(html.indexOf('</svg>'));
    expect(html).toContain('<strong>Tone &amp; level</strong> It falls.');
  });
  it('has how it was made above the table, note by note', () => {
    const html = figure(chart);
    const folded = html.slice(html.indexOf('<details>'));
    expect(times(folded, '<p class="note">')).toBe(2);
    expect(wordsIn(folded)).toMatch(
      /^The numbers\|Smoothed &lt;1\/3&gt;\.\|At one seat\.\|numbers of tone\|Hz\|dB\|100\|0$/,
    );
    expect(figure(madeChart('tone'))).not.toContain('class="note"');
  });
});

describe('a range bar on the page', () => {
  it('says the same in words as it draws', () => {
    const html = rangeFigure(madeBar(), 'range-1');
    expect(html).toMatch(
      /^<div class="range"><p>Deepest dip: 5 dB, poor<\/p><svg.*id="range-1.*<\/svg><\/div>$/s,
    );
  });
});
