/** A document as a fragment of HTML, block by block. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Block,
  bullets,
  caution,
  details,
  gaugeText,
  heading,
  numbered,
  pairs,
  paragraph,
  table,
} from '../../src/explain/document.js';
import { documentHtml } from '../../src/explain/document-html.js';
import { escapeHtml } from '../../src/explain/escape-html.js';
import { HOSTILE } from './hostile.js';
import { madeBar, madeChart } from './madeReport.js';

const html = (...blocks: readonly Block[]): string => documentHtml(blocks).slice(0, -1);

describe('as HTML', () => {
  it('blocks stand one below the other', () => {
    expect(documentHtml([heading(1, 'A & B'), heading(3, 'C'), paragraph('d < e')])).toBe(
      '<h1>A &amp; B</h1>\n<h3>C</h3>\n<p>d &lt; e</p>\n',
    );
  });
  it('lines keep their emphasis, escaped', () => {
    expect(html(paragraph('a ', { strong: '<b>' }, ' ', { code: 'c & d' }))).toBe(
      '<p>a <strong>&lt;b&gt;</strong> <code>c &amp; d</code></p>',
    );
  });
  it('links lead where a page is, else the text stands alone', () => {
    const link = paragraph('see ', { page: 'fact/seat', text: 'seats & sofas' });
    expect(documentHtml([link], { linkTo: (page) => `${page}.html?a&b` })).toBe(
      '<p>see <a href="fact/seat.html?a&amp;b">seats &amp; sofas</a></p>\n',
    );
    expect(html(link)).toBe('<p>see seats &amp; sofas</p>');
  });
  it('lists: bullets, numbers for what has an order, and what stands below an item', () => {
    expect(html(bullets(['a', '<b>']))).toBe('<ul><li>a</li><li>&lt;b&gt;</li></ul>');
    expect(html(numbered(['a']))).toBe('<ol><li>a</li></ol>');
    const items = [
      { line: 'do', id: 'first', below: [paragraph('so'), caution(['<and>'])] },
      { line: 'then' },
    ];
    expect(html({ kind: 'list', style: 'bullet', items })).toBe(
      '<ul><li id="first">do<p>so</p><p class="caution"><strong>Caution:</strong> &lt;and&gt;</p></li><li>then</li></ul>',
    );
  });
  it('steps tick without a script, each box named by its step', () => {
    const found = html({ kind: 'list', style: 'check', items: [{ line: '<do>', below: [paragraph('so')] }] });
    expect(found).toBe(
      '<ol class="plan"><li id="step-1"><div class="head"><input type="checkbox" id="step-1-done"><label for="step-1-done">1. &lt;do&gt;</label></div><div class="body"><p>so</p></div></li></ol>',
    );
  });
  it('what folds can be opened, and stands open in the long form', () => {
    const block = details('More <b>', paragraph('x'));
    expect(html(block)).toBe('<details><summary>More &lt;b&gt;</summary><p>x</p></details>');
    expect(documentHtml([block], { open: true })).toContain('<details open>');
  });
  it('a link to a place of the page leads there', () => {
    expect(html(paragraph({ to: 'step-1', text: 'how' }))).toBe('<p><a href="#step-1">how</a></p>');
  });
  it('a figure has its caption, its drawing and its numbers', () => {
    const found = html({ kind: 'figure', chart: madeChart('off-axis') });
    expect(found).toMatch(
      /^<figure id="figure-off-axis">\n<figcaption><strong>Chart off-axis<\/strong> It falls\./,
    );
    expect(found).toContain('<svg class="c-plot"');
    expect(found).toContain('<summary>The numbers</summary>');
  });
  it('tables have headings over their columns and before their rows, and scroll by keyboard', () => {
    expect(html(table(['a', '<b>'], [['1', '<2>']], 'All'))).toBe(
      '<div class="scroll" tabindex="0" role="group" aria-label="All"><table><caption>All</caption><thead><tr><th scope="col">a</th><th scope="col">&lt;b&gt;</th></tr></thead><tbody><tr><th scope="row">1</th><td>&lt;2&gt;</td></tr></tbody></table></div>',
    );
  });
  it('a meter is a bar beside its words, never beyond its ends', () => {
    const found = html({
      kind: 'meters',
      rows: [
        { share: 0.5, label: 'A', value: 'half' },
        { share: 2, label: '<B>', value: 'all' },
      ],
    });
    expect(found).toContain('<span>A</span><span class="how">half</span><svg class="meter"');
    expect(found).toContain('<rect class="fill" width="50" height="6"/>');
    expect(found).toContain('<rect class="fill" width="100" height="6"/>');
    expect(found).toContain('&lt;B&gt;');
  });
  it('a label may have several values', () => {
    expect(
      html(
        pairs([
          ['Why', 'so'],
          ['', { strong: 'and so' }],
          ['<W>', 'x'],
        ]),
      ),
    ).toBe('<dl><dt>Why</dt><dd>so</dd><dd><strong>and so</strong></dd><dt>&lt;W&gt;</dt><dd>x</dd></dl>');
  });
  it('a range bar is drawn and told, a quote keeps its lines, code is code', () => {
    const bar = madeBar({ label: 'dip <x>' });
    expect(html({ kind: 'gauge', bar, id: 'g' })).toContain(
      `<desc id="g-desc">${escapeHtml(gaugeText(bar))}</desc>`,
    );
    expect(html({ kind: 'quote', text: 'one <b>\ntwo' })).toBe(
      '<blockquote><p>one &lt;b&gt;<br>two</p></blockquote>',
    );
    expect(html({ kind: 'code', text: 'a < b\nc' })).toBe('<pre><code>a &lt; b\nc</code></pre>');
  });
});

describe('text of strangers', () => {
  it('has each mark that could open markup or end an attribute replaced, and nothing else', () => {
    expect(escapeHtml(`<a href="x" id='y'>&amp;</a>`)).toBe(
      '&lt;a href=&quot;x&quot; id=&#39;y&#39;&gt;&amp;amp;&lt;/a&gt;',
    );
    expect(escapeHtml('3° – “a” ж 7 dB')).toBe('3° – “a” ж 7 dB');
  });
  it('reads the same after a browser resolved it', () => {
    const marks: Record<string, string> = { lt: '<', gt: '>', quot: '"', '#39': "'", amp: '&' };
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom('<', '>', '&', '"', "'", 'a', ';', '#') }), (text) => {
        const escaped = escapeHtml(text);
        expect(escaped).not.toMatch(/[<>"']/);
        expect(escaped.replace(/&(\w+|#39);/g, (_, name: string) => marks[name] ?? '?')).toBe(text);
      }),
    );
  });
  it.each(HOSTILE)('opens no tag in any block: %j', (text) => {
    const blocks: Block[] = [
      heading(2, text),
      paragraph(text, { strong: text }, { code: text }, { page: `fact/${text}`, text }),
      pairs([[text, text]]),
      table([text], [[text]]),
      { kind: 'quote', text },
      { kind: 'code', text },
      { kind: 'meters', rows: [{ share: 1, label: text, value: text }] },
      caution([text]),
      details(text, paragraph(text)),
      { kind: 'callout', label: text, blocks: [paragraph(text)] },
    ];
    const found = documentHtml(blocks, { linkTo: () => 'x.html' });
    for (const [tag] of found.matchAll(/<[^>]*>/g))
      expect(tag).toMatch(
        /^<\/?(h2|p|strong|code|a href="x\.html"|a|dl|dt|dd|table|thead|tbody|tr|th scope="(?:col|row)"|th|td|blockquote|pre|br|ol class="rank"|ol|li|span class="how"|span|details|summary|div class="callout"|p class="(?:caution|eyebrow)"|div|(?:svg|rect) [^<>]*\/?|svg|div class="scroll" [^<>]*)>$/,
      );
  });
});
