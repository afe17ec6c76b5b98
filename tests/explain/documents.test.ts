/** The document model and its writers, block by block, on documents of a few words. */
import { describe, expect, it } from 'vitest';
import {
  type Block,
  bullets,
  caution,
  details,
  gaugeText,
  heading,
  lines,
  lineText,
  numbered,
  pairs,
  paragraph,
  table,
  withoutDetails,
  withoutEmpty,
} from '../../src/explain/document.js';
import { blockBbcode } from '../../src/explain/document-bbcode.js';
import { documentMarkdown } from '../../src/explain/document-markdown.js';
import { documentText, gaugePlace } from '../../src/explain/document-text.js';
import { rangeBar } from '../../src/explain/report-evidence.js';
import { PLAIN_TEXT, type TextOptions } from '../../src/explain/terminal.js';

const text = (blocks: readonly Block[], options: Partial<TextOptions> = {}): string[] =>
  documentText(blocks, { ...PLAIN_TEXT, ...options })
    .split('\n')
    .slice(0, -1);
const markdown = (...blocks: readonly Block[]): string => documentMarkdown(blocks).slice(0, -1);
const bbcode = (...blocks: readonly Block[]): string => blocks.map(blockBbcode).join('\n\n');
const EMPTY: readonly Block[] = [
  bullets([]),
  table(['a'], []),
  pairs([]),
  { kind: 'meters', rows: [] },
  { kind: 'caution', texts: [] },
  details('more', bullets([])),
  paragraph(''),
  { kind: 'quote', text: '' },
];
const check: Block = {
  kind: 'list',
  style: 'check',
  items: [{ line: 'do', below: lines('so', 'and so') }, { line: 'then' }],
};
const meters: Block = {
  kind: 'meters',
  rows: [
    { share: 0.5, label: 'A', value: 'half' },
    { share: 2, label: 'B', value: 'all' },
    { share: -1, label: 'C', value: 'none' },
  ],
};
const gauge = (value: number, id: 'dipDb' | 'baseNarrowDeg' = 'dipDb') => rangeBar(id, value, (v) => `${v}`);

describe('what is empty', () => {
  it.each(EMPTY.map((block) => [block.kind, block] as const))(
    'a %s goes, with the heading over it',
    (_, block) => {
      expect(
        withoutEmpty([heading(1, 'x'), heading(2, 'a'), block, heading(2, 'b'), paragraph('c')]),
      ).toEqual([heading(1, 'x'), heading(2, 'b'), paragraph('c')]);
    },
  );
  it('headings stay over what is deeper, and go at the end and before their like', () => {
    const kept = [heading(1, 'x'), heading(2, 'a'), heading(3, 'b'), paragraph('c')];
    expect(withoutEmpty([...kept, heading(2, 'd')])).toEqual(kept);
    expect(withoutEmpty([heading(3, 'a'), heading(2, 'b'), paragraph('c')])).toEqual([
      heading(2, 'b'),
      paragraph('c'),
    ]);
    const code: Block = { kind: 'code', text: '' };
    expect(withoutEmpty([heading(2, 'a'), code])).toEqual([heading(2, 'a'), code]);
  });
  it('is judged by the letters of a line, whatever their emphasis', () => {
    expect(lineText([{ strong: 'a' }, 'b', { code: 'c' }, { page: 'p/x', text: 'd' }])).toBe('abcd');
    expect(withoutEmpty([paragraph({ strong: 'a' })])).toHaveLength(1);
    expect(lineText('x')).toBe('x');
  });
});

describe('a range bar', () => {
  it('is told by value, grade and the two bounds, whichever side is bad', () => {
    const { noticeable, clear } = gauge(3);
    expect(gaugeText(gauge(3))).toMatch(
      new RegExp(`: 3, borderline \\(good below ${noticeable}, poor from ${clear} on\\)$`),
    );
    const low = gauge(50, 'baseNarrowDeg');
    expect(gaugeText(low)).toMatch(
      new RegExp(`: 50, good \\(good from ${low.noticeable} up, poor at ${low.clear} and less\\)$`),
    );
  });
  it('puts a value into its third, by how far it is', () => {
    const bar = { ...gauge(0), noticeable: 2, clear: 4, severe: 8 };
    const at = (value: number) => gaugePlace({ ...bar, value });
    expect([0, 1, 2, 3, 4, 6].map(at)).toEqual([0, 0.5, 1, 1.5, 2, 2.5]);
    expect([at(-5), at(99)]).toEqual([0, 2.999]);
    expect(gaugePlace({ ...bar, severe: 4, value: 4 })).toBe(2);
    const low = { ...bar, lowIsBad: true, noticeable: 40, clear: 30, severe: 20 };
    expect([50, 45, 40, 35, 30, 25, 99, 0].map((value) => gaugePlace({ ...low, value }))).toEqual([
      0, 0.5, 1, 1.5, 2, 2.5, 0, 2.999,
    ]);
  });
});

describe('as text', () => {
  it('headings: the first underlined, the second in capitals right above what it heads', () => {
    expect(
      text([heading(1, 'Top'), heading(2, 'Two'), paragraph('a'), heading(3, 'Three'), paragraph('b')]),
    ).toEqual(['Top', '───', '', 'TWO', 'a', '', 'Three', 'b']);
    expect(text([heading(1, 'Top')], { ascii: true })).toEqual(['Top', '---']);
    expect(text([heading(1, 'Top')], { accessible: true })).toEqual(['Top']);
  });
  it('lists: marks, numbers and boxes, what is below indented alike', () => {
    expect(text([bullets(['a', 'b']), numbered(['c', 'd']), check])).toEqual([
      '  - a',
      '  - b',
      '',
      '  1. c',
      '  2. d',
      '',
      '  [ ] 1. do',
      '         so',
      '         and so',
      '  [ ] 2. then',
    ]);
    expect(text([bullets(['a']), check], { accessible: true })).toEqual([
      '  a',
      '',
      '  1. do',
      '     so',
      '     and so',
      '  2. then',
    ]);
  });
  it('tables: in columns where they fit, else each row as labels and values', () => {
    const rows = table(
      ['seat', 'dip', 'at'],
      [
        ['sofa', '-6 dB', '2 kHz'],
        ['end', '-', '-'],
      ],
    );
    const wanted = ['  seat  dip    at', '  sofa  -6 dB  2 kHz', '  end   -      -'];
    expect(text([rows])).toEqual(wanted);
    expect(text([rows], { width: 20 })).toEqual(wanted);
    const narrow = text([rows], { width: 19 });
    expect(narrow.join(' ').replace(/\s+/g, ' ').trim()).toBe(
      'sofa: dip: -6 dB; at: 2 kHz end: dip: -; at: -',
    );
    expect(text([rows], { accessible: true })).toEqual([
      '  sofa: dip: -6 dB; at: 2 kHz',
      '  end: dip: -; at: -',
    ]);
  });
  it('pairs: values in one column, a long label before its value', () => {
    const block = pairs([
      ['Why', 'so'],
      ['Takes', 'a minute'],
      ['A long label indeed', 'x'],
    ]);
    expect(text([block])).toEqual(['  Why         so', '  Takes       a minute', '  A long label indeed: x']);
    expect(
      text([
        pairs([
          ['Why', 'so'],
          ['', 'and so'],
        ]),
      ]),
    ).toEqual(['  Why  so', '       and so']);
    expect(text([block], { accessible: true })).toEqual([
      'Why: so',
      'Takes: a minute',
      'A long label indeed: x',
    ]);
    // No line begins with a colon, which a screen reader would read out as the label.
    expect(
      text(
        [
          pairs([
            ['Why', 'so'],
            ['', 'and so'],
          ]),
        ],
        { accessible: true },
      ),
    ).toEqual(['Why: so', 'and so']);
    expect(text([paragraph('p'), block, block])).toHaveLength(1 + 3 + 3);
  });
  it('meters: as long as the share, within the bar, or in words', () => {
    expect(text([meters])).toEqual([
      '  1. ██████░░░░░░  A: half',
      '  2. ████████████  B: all',
      '  3. ░░░░░░░░░░░░  C: none',
    ]);
    expect(text([meters], { ascii: true })[0]).toBe('  1. ######......  A: half');
    expect(text([meters], { accessible: true })).toEqual(['1. A: half', '2. B: all', '3. C: none']);
  });
  it('range bars: three parts with the value among them, right below what they show', () => {
    const bar = { ...gauge(3), noticeable: 2, clear: 4, severe: 8 };
    const shown = text([paragraph('p'), { kind: 'gauge', bar, id: 'g' }]);
    expect(shown[0]).toBe('p');
    expect(shown[1]).toBe(
      `    good ${'─'.repeat(10)}┼${'─'.repeat(5)}▲${'─'.repeat(4)}┼${'─'.repeat(10)} poor`,
    );
    expect(shown[2]).toMatch(/^ {4}\S.*borderline/);
    expect(text([{ kind: 'gauge', bar, id: 'g' }], { ascii: true, width: 49 })[0]).toBe(
      '    good ------|---^--|------ poor',
    );
    expect(text([{ kind: 'gauge', bar, id: 'g' }], { width: 50 })[0]).toHaveLength(9 + 32 + 5);
    expect(text([{ kind: 'gauge', bar: { ...bar, value: 99 }, id: 'g' }])[0]).toMatch(/─▲ poor$/);
    expect(text([{ kind: 'gauge', bar, id: 'g' }], { accessible: true })[0]).toMatch(/^\S.*borderline/);
  });
  it('quotes and code: every line marked', () => {
    const quote: Block = { kind: 'quote', text: 'one\ntwo' };
    expect(text([quote])).toEqual(['  │ one', '  │ two']);
    expect(text([quote], { ascii: true })).toEqual(['  | one', '  | two']);
    expect(text([quote], { accessible: true })).toEqual(['“one”', '“two”']);
    expect(text([{ kind: 'code', text: 'a\nb' }])).toEqual(['  a', '  b']);
  });
  it('pages are named by their id; marks are plain where only those can be shown', () => {
    expect(text([paragraph('see ', { page: 'facts/seat', text: 'seats' })])).toEqual(['see seats [seat]']);
    expect(text([paragraph('“a” – 3°… ’ ж')], { ascii: true })).toEqual(['"a" - 3 deg... \' ж']);
    expect(text([paragraph({ strong: 'x' }, ' y')], { color: true })[0]).toBe('\u001b[1mx\u001b[22m y');
  });
});

describe('what folds, cautions and what stands out', () => {
  const blocks: Block[] = [
    caution(['Mind the edge.', 'And the heat.']),
    {
      kind: 'callout',
      label: 'Do first',
      blocks: [paragraph('Sit.'), details('How', paragraph('On a chair.'))],
    },
    { kind: 'list', style: 'number', items: [{ line: 'a', below: [details('More', paragraph('b'))] }] },
    details('All', bullets(['c'])),
  ];
  it('is all there in the long form', () => {
    expect(text(blocks)).toEqual([
      'Caution: Mind the edge. And the heat.',
      '',
      'Do first:',
      '  Sit.',
      '  How',
      '  On a chair.',
      '',
      '  1. a',
      '     More',
      '     b',
      '',
      'All',
      '  - c',
    ]);
    expect(markdown(...blocks)).toBe(
      '**Caution:** Mind the edge. And the heat.\n\n**Do first:**\n\nSit.\n\n**How**\n\nOn a chair.\n\n1. a\n\n   **More**\n\n   b\n\n**All**\n\n- c',
    );
    expect(bbcode(...blocks)).toBe(
      '[b]Caution:[/b] Mind the edge. And the heat.\n\n[b]Do first:[/b]\nSit.\n[b]How[/b]\n\nOn a chair.\n\n[list=1]\n[*]a\n[b]More[/b]\nb\n[/list]\n\n[b]All[/b]\n\n[list]\n[*]c\n[/list]',
    );
  });
  it('is left out of the short form at every depth, but no caution ever', () => {
    const short = text(withoutDetails(blocks)).join('\n');
    expect(short).toContain('Caution: Mind the edge.');
    for (const folded of ['How', 'chair', 'More', 'All']) expect(short).not.toContain(folded);
  });
  it('a list in a list is dashed lines on a board, and stays a list in Markdown', () => {
    const nested: Block = { kind: 'list', style: 'bullet', items: [{ line: 'a', below: [bullets(['b'])] }] };
    expect(bbcode(nested)).toBe('[list]\n[*]a\n– b\n[/list]');
    expect(markdown(nested)).toBe('- a\n  - b');
  });
  it('a command is never wrapped, so that it can be pasted', () => {
    const command = `center-audit why ${'long/'.repeat(20)}case.json delay`;
    expect(text([{ kind: 'code', text: command }], { width: 40 })).toEqual([`  ${command}`]);
  });
});

describe('as Markdown', () => {
  it('headings, lists, pairs, tables', () => {
    expect(markdown(heading(2, 'Two'), bullets(['a', 'b']), numbered(['c', 'd']), check)).toBe(
      '## Two\n\n- a\n- b\n\n1. c\n2. d\n\n- [ ] do\n\n  so\n\n  and so\n- [ ] then',
    );
    expect(
      markdown({
        kind: 'list',
        style: 'number',
        items: [{ line: 'a', below: [bullets(['b']), paragraph('c')] }],
      }),
    ).toBe('1. a\n   - b\n\n   c');
    expect(
      markdown(
        pairs([
          ['Why', 'so'],
          ['', 'and so'],
        ]),
      ),
    ).toBe('- **Why**: so\n  - and so');
    expect(markdown(table(['a', 'b'], [['1', '2|3']]))).toBe('| a | b |\n| --- | --- |\n| 1 | 2\\|3 |');
    expect(markdown(meters).split('\n')[2]).toBe('| 1 | A | half |');
    expect(markdown({ kind: 'quote', text: 'a\n# b' })).toBe('> a\n> \\# b');
    expect(markdown({ kind: 'gauge', bar: gauge(3), id: 'g' })).toMatch(/^- .*borderline/);
  });
  it('emphasis does not touch blanks, and is none around nothing', () => {
    expect(markdown(paragraph({ strong: ' a b ' }, 'c'))).toBe(' **a b** c');
    expect(markdown(paragraph({ strong: '' }, 'c'))).toBe('c');
  });
  it('code is fenced by more ticks than it holds', () => {
    expect(markdown({ kind: 'code', text: 'a' })).toBe('```\na\n```');
    expect(markdown({ kind: 'code', text: 'a ``` b' })).toBe('````\na ``` b\n````');
    expect(markdown(paragraph({ code: 'a  b' }))).toBe('`a b`');
    expect(markdown(paragraph({ code: '`a' }))).toBe('`` `a ``');
    expect(markdown(paragraph({ code: 'a`' }))).toBe('`` a` ``');
    expect(markdown(paragraph({ code: 'a`b' }))).toBe('``a`b``');
  });
  it('links lead where a page is, else the text stands alone', () => {
    const link = paragraph('see ', { page: 'p', text: 'a*b' });
    expect(documentMarkdown([link], (page) => `${page}.md`)).toBe('see [a\\*b](p.md)\n');
    expect(markdown(link)).toBe('see a\\*b');
  });
  it('no word of a stranger opens markup, a link or a mention', () => {
    const said = (words: string): string => markdown(paragraph(words));
    expect(said('a_b*c`d[e]<f>&g~h$i^j\\k')).toBe('a\\_b\\*c\\`d\\[e\\]&lt;f\\>&amp;g\\~h\\$i\\^j\\\\k');
    expect(said('a://b www.c WWW.d @e #1 #x')).toBe(
      'a:&#8203;//b www&#8203;.c WWW&#8203;.d @&#8203;e #&#8203;1 #x',
    );
    for (const start of ['# a', '+ a', '- a', '= a']) expect(said(start)).toBe(`\\${start}`);
    expect([said('1. a'), said(' 12) a'), said('a - b'), said('a 1. b')]).toEqual([
      '1\\. a',
      ' 12\\) a',
      'a - b',
      'a 1. b',
    ]);
    expect(said('a \n  b')).toBe('a b');
    expect(markdown(paragraph('a', '- b'))).toBe('a- b');
  });
});

describe('as BBCode', () => {
  it('headings, lists, pairs, quotes, code', () => {
    expect(bbcode(heading(2, 'Two'), bullets(['a', 'b']))).toBe('[b]Two[/b]\n\n[list]\n[*]a\n[*]b\n[/list]');
    expect(bbcode(check)).toBe('[list=1]\n[*]do\nso\nand so\n[*]then\n[/list]');
    expect(
      bbcode(
        pairs([
          ['Why', 'so'],
          ['', 'and so'],
        ]),
      ),
    ).toBe('[b]Why:[/b] so\nand so');
    expect(bbcode(meters)).toBe('[list=1]\n[*]A: half\n[*]B: all\n[*]C: none\n[/list]');
    expect(bbcode({ kind: 'quote', text: 'q' }, { kind: 'code', text: 'c' })).toBe(
      '[quote]q[/quote]\n\n[code]c[/code]',
    );
    expect(bbcode(paragraph({ strong: 'a' }, { code: 'b' }, { strong: ' ' }, { page: 'p', text: 'd' }))).toBe(
      '[b]a[/b]b d',
    );
    expect(bbcode({ kind: 'gauge', bar: gauge(3), id: 'g' })).toContain('borderline');
  });
  it('tables in columns of sixty letters at most, else as a list', () => {
    expect(bbcode(table(['a', 'bb'], [['111', '2']]))).toBe('[code]a    bb\n111  2[/code]');
    const wide = (n: number): string => bbcode(table(['a', 'b'], [['x'.repeat(n), '2']]));
    expect(wide(57)).toMatch(/^\[code\]/);
    expect(wide(58)).toBe(`[list]\n[*]${'x'.repeat(58)}: b 2\n[/list]`);
  });
  it('no word of a stranger opens a tag, draws a smiley, or becomes a link or mention', () => {
    const said = (words: string): string => bbcode(paragraph(words));
    const Z = '\u200b';
    expect(said('[b]x[/b]')).toBe('［b］x［/b］');
    expect([':)', ';-)', '=D', ':/', ':-|', '8)', 'B-)', ':smile:'].map(said)).toEqual([
      `:${Z})`,
      `;${Z}-)`,
      `=${Z}D`,
      `:${Z}/`,
      `:${Z}-|`,
      `8${Z})`,
      `B${Z}-)`,
      `:${Z}smile:`,
    ]);
    expect(said('www.a @b')).toBe(`www${Z}.a @${Z}b`);
    expect(said('at 8 o : clock; so = 3')).toBe('at 8 o : clock; so = 3');
  });
});
