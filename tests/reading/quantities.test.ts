import { describe, expect, it } from 'vitest';
import { findIn } from '../../src/reading/find.js';

/** Quantities of a text as `dimension value`, to three decimals. */
const quantities = (text: string): string[] =>
  findIn(text).words.flatMap(({ quantity }) =>
    quantity
      ? [`${quantity.dimension} ${Number(quantity.value.toFixed(3))}${quantity.approximate ? ' about' : ''}`]
      : [],
  );

// 1 ft = 0.3048 m and 1 in = 0.0254 m, exact by definition (international yard and pound agreement, 1959).
describe('quantities as people write them', () => {
  it.each([
    ['9 ft', 'length 2.743'],
    ['nine foot', 'length 2.743'],
    ['9\'0"', 'length 2.743'],
    ['108"', 'length 2.743'],
    ['9ft6', 'length 2.896'],
    ['9 1/2 ft', 'length 2.896'],
    ['nine and a half feet', 'length 2.896'],
    ['9’6”', 'length 2.896'],
    ["10'2", 'length 3.099'],
    ['ten foot four', 'length 3.15'],
    ['a foot and a half', 'length 0.457'],
    ['half a metre', 'length 0.5'],
    ['waist high', 'length 1 about'],
    ['2 m 50', 'length 2.5'],
    ['2m20', 'length 2.2'],
    ['2,5 m', 'length 2.5'],
    ['2½ m', 'length 2.5'],
    ['two metres fifty', 'length 2.5'],
    ['sixty-five inch', 'length 1.651'],
    ['10-12 ft', 'length 3.353 about'],
    ['between 3 and 3.5 metres', 'length 3.25 about'],
    ['7ish feet', 'length 2.134 about'],
    ['a good 4 m', 'length 4 about'],
    ['eleven point two feet', 'length 3.414'],
    ['2.5k', 'frequency 2500'],
    ['2,2 kHz', 'frequency 2200'],
    ['.4 sec', 'time 400'],
    ['minus three dB', 'level -3'],
    ['45 Pa s/m', 'Pa s/m 45'],
    ['300,000 holes per square meter', '1/m2 300000'],
    ['6 degrees', 'angle 6'],
  ])('reads %s as %s', (text, value) => {
    expect(quantities(text)).toEqual([value]);
  });

  it.each([
    ['a second voice'],
    ['one in the middle'],
    ['$899', 'other 899'],
    ['28 m2', 'other 28'],
    ['15 years old', 'other 15'],
    ['7 x 110 W', 'other 7'],
    ['4K beamer', 'other 4'],
    ['14:10', 'other 14'],
    ['it says "plus 8"', 'none 8'],
  ])('takes %s for no length', (text, ...found) => {
    expect(quantities(text)).toEqual(found);
  });

  it('keeps the place of every word in UTF-16 units', () => {
    const text = '🙂 Sofa 3,10 m — “dull”';
    const { words } = findIn(text);
    expect(words.map(({ start, end }) => text.slice(start, end))).toEqual(
      ['🙂', 'Sofa', '3,10 m', '—', '“', 'dull', '”'].flatMap((each) =>
        each === '🙂' ? ['\ud83d', '\ude42'] : [each],
      ),
    );
  });
});
