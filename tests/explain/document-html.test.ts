/** A document as a fragment of HTML, block by block. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Block,
  bullets,
  gaugeText,
  heading,
  numbered,
  pairs,
  paragraph,
  table,
} from '../../src/explain/document.js';
import { documentHtml, escapeHtml } from '../../src/explain/document-html.js';
import { HOSTILE } from './hostile.js';
import { madeBar } from './madeReport.js';

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
    expect(documentHtml([link], (page) => `${page}.html?a&b`)).toBe(
      '<p>see <a href="fact/seat.html?a&amp;b">seats &amp; sofas</a></p>\n',
    );
    expect(html(link)).toBe('<p>see seats &amp; sofas</p>');
  });
  it('lists: bullets, numbers for what has an order, and what stands below an item', () => {
    expect(html(bullets(['a', '<b>']))).toBe('<ul><li>a</li><li>&lt;b&gt;</li></ul>');
    expect(html(numbered(['a']))).toBe('<ol><li>a</li></ol>');
    const items = [{ line: 'do', below: ['so', '<and>'] }, { line: 'then' }];
    expect(html({ kind: 'list', style: 'check', items })).toBe(
      '<ol><li>do<br>so<br>&lt;and&gt;</li><li>then</li></ol>',
    );
  });
  it('tables have headings over their columns; so has a ranking', () => {
    expect(
      html(
        table(
          ['a', '<b>'],
          [
            ['1', '<2>'],
            ['3', '4'],
          ],
        ),
      ),
    ).toBe(
      '<table><thead><tr><th scope="col">a</th><th scope="col">&lt;b&gt;</th></tr></thead><tbody><tr><td>1</td><td>&lt;2&gt;</td></tr><tr><td>3</td><td>4</td></tr></tbody></table>',
    );
    expect(html({ kind: 'bars', rows: [{ share: 0.5, label: 'A', value: 'half' }] })).toBe(
      '<table><thead><tr><th scope="col">cause</th><th scope="col">how sure</th></tr></thead><tbody><tr><td>A</td><td>half</td></tr></tbody></table>',
    );
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
  it('a range bar is its sentence, a quote keeps its lines, code is code', () => {
    const bar = madeBar({ label: 'dip <x>' });
    expect(html({ kind: 'gauge', bar })).toBe(`<p>${escapeHtml(gaugeText(bar))}</p>`);
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
      { kind: 'bars', rows: [{ share: 1, label: text, value: text }] },
    ];
    const found = documentHtml(blocks, () => 'x.html');
    for (const [tag] of found.matchAll(/<[^>]*>/g))
      expect(tag).toMatch(
        /^<\/?(h2|p|strong|code|a href="x\.html"|a|dl|dt|dd|table|thead|tbody|tr|th scope="col"|th|td|blockquote|pre|br)>$/,
      );
  });
});
