/** Notes are Markdown without anything that leads away, loads or runs. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { markdownHtml } from '../../../src/explain/html/markdown.js';

describe('a note', () => {
  it('keeps emphasis, lists, quotes and code', () => {
    expect(markdownHtml('**loud** and *soft* and `a < b`')).toBe(
      '<p><strong>loud</strong> and <em>soft</em> and <code>a &lt; b</code></p>\n',
    );
    expect(markdownHtml('- one\n- two')).toBe('<ul>\n<li>one</li>\n<li>two</li>\n</ul>\n');
    expect(markdownHtml('> so it was')).toContain('<blockquote>\n<p>so it was</p>');
  });
  it('keeps its line breaks', () => {
    expect(markdownHtml('one\ntwo')).toBe('<p>one<br>two</p>\n');
  });
  it('shows where a link would have led instead of leading there', () => {
    const html = markdownHtml('[my *photo*](https://example.org/?a=1&b=2) and [x](javascript:x)');
    expect(html).not.toContain('<a');
    expect(html).toContain('my <em>photo</em> (https://example.org/?a=1&amp;b=2)');
    expect(html).toContain('x (javascript:x)');
  });
  it('shows an address that is its own text once', () => {
    expect(markdownHtml('https://example.org')).toBe('<p>https://example.org</p>\n');
  });
  it('shows the words of a picture and where it lies, or where it lies alone', () => {
    expect(markdownHtml('![plan](https://example.org/b.png)')).toBe(
      '<p>plan (https://example.org/b.png)</p>\n',
    );
    expect(markdownHtml('![](https://example.org/b.png)')).toBe('<p>https://example.org/b.png</p>\n');
  });
  it('shows raw HTML as it was typed', () => {
    expect(markdownHtml('see <b onclick="x()">hi</b>')).toBe(
      '<p>see &lt;b onclick=&quot;x()&quot;&gt;hi&lt;/b&gt;</p>\n',
    );
    expect(markdownHtml('<script>x</script>')).toContain('&lt;script&gt;x&lt;/script&gt;');
  });
  it.each(['code', 'pre', 'kbd', 'script', 'style', 'a', 'textarea', 'svg', 'math', '!--', '?x'])(
    'holds no markup behind a raw <%s> either',
    (tag) => {
      for (const behind of [
        '<meta http-equiv=refresh content=0;url=//evil.example x',
        '<img src=x onerror=y>',
        '<a href=//x>',
      ]) {
        for (const text of [
          `an <${tag}> y ${behind}`,
          `<${tag}>\n${behind}`,
          `- <${tag}> ${behind}`,
          `> <${tag}>${behind}`,
          `**<${tag}>${behind}**`,
        ])
          expect(markdownHtml(text)).not.toMatch(/<(?!\/?(?:p|br|ul|li|blockquote|strong|em|pre|code)>)/);
      }
    },
  );
  it('holds nothing but plain structure, whatever was typed', () => {
    const pieces = [
      ...[
        '<code>',
        '</code>',
        '<pre>',
        '<script>',
        '</script>',
        '<meta x>',
        '<img src=x onerror=y>',
        '<a href=x>',
        '<!--',
      ],
      ...[
        '<',
        '>',
        '&',
        '&lt;',
        '"',
        "'",
        '`',
        '```',
        '*',
        '**',
        '_',
        '~~',
        '\\',
        '![',
        '[',
        '](',
        ')',
        ' ',
        '\n',
        '\n\n',
      ],
      ...[
        '- ',
        '> ',
        '# ',
        '1. ',
        '7) ',
        '    ',
        '| a |',
        '|---|',
        '- [ ] ',
        'https://x.example',
        '<https://x.example>',
        'word',
      ],
    ];
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...pieces), { maxLength: 14 }), (typed) => {
        expect(markdownHtml(typed.join(''))).not.toMatch(
          /<(?!\/?(?:p|br|ul|ol|ol start="\d+"|li|blockquote|strong|em|pre|code)>)/,
        );
      }),
      { numRuns: 3000 },
    );
  });
  it('has its headings as bold lines, which do not mix with those of the page', () => {
    expect(markdownHtml('# My *room*')).toBe('<p><strong>My <em>room</em></strong></p>\n');
  });
  it('has its tables and code as they were typed', () => {
    expect(markdownHtml('| a | b |\n|---|---|\n| <1> | 2 |\n\n')).toBe(
      '<pre>| a | b |\n|---|---|\n| &lt;1&gt; | 2 |</pre>\n',
    );
    expect(markdownHtml('| a |\n|---|\n| 1 |\n# Next')).toBe(
      '<pre>| a |\n|---|\n| 1 |</pre>\n<p><strong>Next</strong></p>\n',
    );
    expect(markdownHtml('```js\na < b\n```')).toBe('<pre>a &lt; b</pre>\n');
  });
  it('has boxes that cannot be ticked, no rules, and struck words unstruck', () => {
    expect(markdownHtml('- [x] done\n- [ ] open')).toBe('<ul>\n<li>☑ done</li>\n<li>☐ open</li>\n</ul>\n');
    expect(markdownHtml('a\n\n---\n\nb')).toBe('<p>a</p>\n<p>b</p>\n');
    expect(markdownHtml('~~*gone*~~')).toBe('<p><em>gone</em></p>\n');
  });
});
