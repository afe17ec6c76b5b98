/** The report as one page: its sections, the way to each, and its pictures. */
import { describe, expect, it } from 'vitest';
import { renderHtml } from '../../../src/explain/render/html.js';
import { fullReport, madeCause, madeChart, madeReport, times } from '../madeReport.js';

const ids = (html: string): string[] =>
  [...html.matchAll(/<section id="([\w-]+)"/g)].map((match) => match[1] ?? '');
const links = (html: string): string[] =>
  [...(/<nav.*?<\/nav>/s.exec(html)?.[0] ?? '').matchAll(/<a href="#([\w-]+)">/g)].map(
    (match) => match[1] ?? '',
  );

describe('the page', () => {
  it('has the verdict first, then what to do, then the reasons, and a link to each section', () => {
    const html = renderHtml(fullReport(), { charts: [madeChart('tone')] });
    const sections = [
      'clash',
      'plan',
      'ranking',
      'causes',
      'possible',
      'seats',
      'pictures',
      'seamless',
      'told',
      'unknown',
      'assumed',
      'judged',
      'sources',
      'words',
    ];
    expect(ids(html)).toEqual(['verdict', ...sections]);
    expect(links(html)).toEqual(sections);
    expect(html.indexOf('<nav')).toBeGreaterThan(html.indexOf('id="verdict"'));
    expect(html.indexOf('<nav')).toBeLessThan(html.indexOf('id="clash"'));
    expect(html.indexOf('</main>')).toBeLessThan(html.indexOf('<footer>'));
  });
  it('leaves out sections without content, and the links to them', () => {
    const html = renderHtml(madeReport());
    expect(ids(html)).toEqual(['verdict', 'ranking', 'seats']);
    expect(links(html)).toEqual(['ranking', 'seats']);
  });
  it('is titled by the case, also in the window, escaped', () => {
    const html = renderHtml(madeReport({ title: 'A < B' }));
    expect(html).toContain('<title>Center loudspeaker audit: A &lt; B</title>');
    expect(html).toContain('<strong>A &lt; B</strong></p></header>');
    expect(renderHtml(madeReport())).toContain('<title>Center loudspeaker audit: Untitled case</title>');
  });
  it('tells of one leading cause or of several', () => {
    const one = [madeCause('delay'), madeCause('aim', { place: 'possible' })];
    expect(renderHtml(madeReport({ causes: one }))).toContain('>The leading cause</h2>');
    expect(renderHtml(madeReport({ causes: [...one, madeCause('level')] }))).toContain(
      '>The leading causes</h2>',
    );
  });
  it('has each picture once: beside its cause, or among the others', () => {
    const charts = [madeChart('arrivals'), madeChart('tone'), madeChart('stage')];
    const html = renderHtml(madeReport({ causes: [madeCause('delay')] }), { charts });
    for (const { id } of charts) expect(times(html, `<figure id="figure-${id}">`)).toBe(1);
    const pictures = html.slice(html.indexOf('<section id="pictures"'));
    expect(html.indexOf('figure-arrivals')).toBeLessThan(html.indexOf('<section id="pictures"'));
    expect(pictures).toMatch(
      /<div class="two"><figure id="figure-tone">.*<\/figure>\n<figure id="figure-stage">/s,
    );
    const all = renderHtml(madeReport({ causes: [madeCause('delay')] }), { charts: charts.slice(0, 1) });
    expect(all).not.toContain('id="pictures"');
  });
});
