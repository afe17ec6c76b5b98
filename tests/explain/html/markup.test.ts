/** Pieces of the page: strangers' text escaped, markup kept, and nothing at all where there is nothing to show. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  cautionBox,
  dataTable,
  details,
  list,
  meter,
  p,
  section,
  texts,
} from '../../../src/explain/html/markup.js';

describe('a paragraph', () => {
  it('is escaped, has a class where one is told, and is none without text', () => {
    expect(p('a < b')).toBe('<p>a &lt; b</p>');
    expect(p('a', 'soft')).toBe('<p class="soft">a</p>');
    expect(p('', 'soft')).toBe('');
  });
});

describe('a list', () => {
  it('keeps markup, escapes texts, and is none without items', () => {
    expect(list(['<b>a</b>', 'b'])).toBe('<ul><li><b>a</b></li><li>b</li></ul>');
    expect(texts(['<b>', 'c'])).toBe('<ul><li>&lt;b&gt;</li><li>c</li></ul>');
    expect(list([])).toBe('');
    expect(texts([])).toBe('');
  });
  it('is numbered on request', () => {
    expect(list(['a'], 'ol')).toBe('<ol><li>a</li></ol>');
    expect(texts(['a'], 'ol')).toBe('<ol><li>a</li></ol>');
  });
});

describe('a section', () => {
  it('is named by its heading, and leaves out what is empty', () => {
    expect(section('seats', 'Seats & sofas', '', '<p>a</p>', '', '<p>b</p>')).toBe(
      '<section id="seats" aria-labelledby="seats-h">\n<h2 id="seats-h">Seats &amp; sofas</h2>\n<p>a</p>\n<p>b</p>\n</section>',
    );
  });
  it('is none where nothing is in it', () => {
    expect(section('seats', 'Seats')).toBe('');
    expect(section('seats', 'Seats', '', '')).toBe('');
  });
});

describe('a table', () => {
  const parts = {
    caption: 'a "table"',
    head: ['seat', 'dip <dB>'],
    rows: [
      ['sofa', '<6>', 'x'],
      ['end', '0'],
    ],
  };
  it('has a caption, headings over its columns and one before each row', () => {
    const html = dataTable(parts);
    expect(html).toContain('<table><caption>a &quot;table&quot;</caption>');
    expect(html).toContain(
      '<thead><tr><th scope="col">seat</th><th scope="col">dip &lt;dB&gt;</th></tr></thead>',
    );
    expect(html).toContain(
      '<tbody><tr><th scope="row">sofa</th><td>&lt;6&gt;</td><td>x</td></tr><tr><th scope="row">end</th><td>0</td></tr></tbody>',
    );
  });
  it('scrolls inside a frame that the keyboard reaches and a screen reader names', () => {
    expect(dataTable(parts)).toMatch(
      /^<div class="scroll" tabindex="0" role="group" aria-label="a &quot;table&quot;"><table>.*<\/table><\/div>$/,
    );
  });
  it('has a class where one is told, and is none without rows', () => {
    expect(dataTable(parts, 'told')).toContain('<table class="told">');
    expect(dataTable({ ...parts, rows: [] })).toBe('');
  });
});

describe('what is folded away', () => {
  it('has its summary escaped and its markup kept; nothing folds away to nothing', () => {
    expect(details('a & b', '<p>c</p>')).toBe('<details><summary>a &amp; b</summary><p>c</p></details>');
    expect(details('a', '')).toBe('');
  });
});

describe('a meter', () => {
  const widthOf = (share: number): number => Number(/class="fill" width="([\d.]+)"/.exec(meter(share))?.[1]);
  it('is filled by the share in percent, to a tenth', () => {
    expect([0, 0.05, 0.5, 0.8765, 1].map(widthOf)).toEqual([0, 5, 50, 87.7, 100]);
  });
  it('never leaves its track, and is not read aloud', () => {
    fc.assert(
      fc.property(fc.double({ min: -10, max: 10, noNaN: true }), (share) => {
        expect(widthOf(share)).toBeGreaterThanOrEqual(0);
        expect(widthOf(share)).toBeLessThanOrEqual(100);
      }),
    );
    expect([widthOf(-0.5), widthOf(1.5)]).toEqual([0, 100]);
    expect(meter(0.5)).toContain('aria-hidden="true"');
  });
});

describe('cautions', () => {
  it('stand in one box, escaped; there is no empty box', () => {
    expect(cautionBox(['Unplug it.', 'Two people < lift.'])).toBe(
      '<p class="caution"><strong>Caution:</strong> Unplug it. Two people &lt; lift.</p>',
    );
    expect(cautionBox([])).toBe('');
  });
});
