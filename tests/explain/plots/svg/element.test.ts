/** Markup of drawings: short numbers, escaped text, names cut to their room, a name and a description for each. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  colorOf,
  dashOf,
  drawing,
  el,
  fitting,
  label,
  line,
  px,
  tenth,
  textWidth,
  WIDTH,
} from '../../../../src/explain/plots/svg/element.js';

describe('an element', () => {
  it('is closed in its own tag where it holds nothing, else around what it holds', () => {
    expect(el('g', {})).toBe('<g/>');
    expect(el('g', { id: 'a' }, '<b/>', 'c')).toBe('<g id="a"><b/>c</g>');
  });
  it('leaves out what is not given and writes numbers with one decimal at most', () => {
    expect(el('rect', { x: 1.2345, y: 3, class: undefined, width: 0.04 })).toBe(
      '<rect x="1.2" y="3" width="0"/>',
    );
    expect(line(1, 2, 3, 4.56, { class: 'c' })).toBe('<line x1="1" y1="2" x2="3" y2="4.6" class="c"/>');
  });
  it('never holds the markup of a stranger', () => {
    expect(el('a', { title: '"<x>&' })).toBe('<a title="&quot;&lt;x&gt;&amp;"/>');
    expect(label('<b>', { x: 1, y: 2 })).toBe('<text x="1" y="2" class="c-text">&lt;b&gt;</text>');
  });
  it('of text begins at its place unless told, in the style told', () => {
    expect(label('a', { x: 1, y: 2, anchor: 'start' })).not.toContain('anchor');
    expect(label('a', { x: 1, y: 2, anchor: 'end', className: 'c-name' })).toBe(
      '<text x="1" y="2" text-anchor="end" class="c-name">a</text>',
    );
  });
});

describe('a number of a drawing', () => {
  it('has one decimal and is never minus zero', () => {
    expect([1.25, -1.26, 7, 0.04].map(tenth)).toEqual([1.3, -1.3, 7, 0]);
    expect(Object.is(tenth(-0.01), 0)).toBe(true);
    expect([12.04, 12.06].map(px)).toEqual(['12', '12.1']);
  });
});

describe('a name', () => {
  it('is as wide as its letters, whatever bytes they take', () => {
    expect(textWidth('seat')).toBe(2 * textWidth('🎬🎬'));
  });
  it('is whole where it fits, else cut with an ellipsis and no space before it', () => {
    const width = textWidth('seat');
    expect(fitting('seat', width)).toBe('seat');
    expect(fitting('seat', width - 1)).toBe('se…');
    expect(fitting('my seat', width)).toBe('my…');
    expect(fitting('🎬🎬🎬', textWidth('🎬🎬'))).toBe('🎬…');
    expect(fitting('seat', 1)).toBe('…');
  });
  it('cut to a width of two letters or more is never wider', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), fc.integer({ min: 15, max: 300 }), (name, width) => {
        expect(textWidth(fitting(name, width))).toBeLessThanOrEqual(width);
      }),
    );
  });
});

describe('a drawing', () => {
  it('says its name and what is to be seen before anything else', () => {
    expect(
      drawing({ id: 'tone', title: 'A & B', says: '<1 dB', height: 99.96, parts: ['<g/>', '<a/>'] }),
    ).toBe(
      `<svg class="c-plot" viewBox="0 0 ${WIDTH} 100" role="img" aria-labelledby="tone-title tone-desc">` +
        '<title id="tone-title">A &amp; B</title><desc id="tone-desc">&lt;1 dB</desc><g/><a/></svg>',
    );
  });
  it('tells four curves apart by dashes and colors, and begins again with the fifth', () => {
    const four = [0, 1, 2, 3];
    expect(new Set(four.map(dashOf)).size).toBe(4);
    expect(dashOf(0)).toBeUndefined();
    expect(four.map(colorOf)).toEqual(['c-0', 'c-1', 'c-2', 'c-3']);
    expect([dashOf(5), colorOf(5)]).toEqual([dashOf(1), 'c-1']);
  });
});
