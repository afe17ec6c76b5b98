import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { UnitSystem } from '../../src/facts/book.js';
import { type FormatOptions, formatFact, formatValue } from '../../src/facts/format.js';
import type { Unit } from '../../src/facts/spec.js';
import {
  acceptedForm,
  bareUnit,
  bareValue,
  MAX_QUANTITY_LENGTH,
  parseQuantity,
} from '../../src/facts/units.js';

function read(
  text: string,
  unit: Unit = 'm',
  units: UnitSystem = 'metric',
  written?: FormatOptions['written'],
) {
  return parseQuantity(text, { unit, units, written: written ?? (unit === 'm' ? 'length' : 'plain') });
}
function value(...args: Parameters<typeof read>): number {
  const result = read(...args);
  if ('refused' in result) throw new Error(result.refused.what);
  return result.value;
}
function refusal(...args: Parameters<typeof read>): string {
  const result = read(...args);
  return 'refused' in result ? result.refused.what : `read as ${result.value}`;
}

describe('lengths as people write them', () => {
  // 1 in = 0.0254 m and 1 ft = 0.3048 m exactly: international yard and pound agreement, 1959 (from memory).
  it.each([
    ['10 ft 6 in', 3.2004],
    ['10\'6"', 3.2004],
    ['10\' 6 1/2"', 3.2131],
    ['10ft6', 3.2004],
    ['10 ft 6', 3.2004],
    ["10'", 3.048],
    ["10' 6", 3.2004],
    ['10 feet and 6 inches', 3.2004],
    ['10 ft, 6 in', 3.2004],
    ['126 in', 3.2004],
    ['126"', 3.2004],
    ["12''", 0.3048],
    ['10′6″', 3.2004],
    ['10’ 6”', 3.2004],
    ['10 1/2 ft', 3.2004],
    ['10½ ft', 3.2004],
    ['10-1/2 in', 0.2667],
    ['1/2 in', 0.0127],
    ['5 foot 11', 1.8034],
    ['2 yd', 1.8288],
    ['3.2 m', 3.2],
    ['3,2 m', 3.2],
    ['320 cm', 3.2],
    ['3 m 20', 3.2],
    ['3m20', 3.2],
    ['3 m 20 cm', 3.2],
    ['3 m 5 cm', 3.05],
    ['3 m 250 mm', 3.25],
    ['32 dm', 3.2],
    ['1 mm', 0.001],
    ['1 200 mm', 1.2],
    ['1,234.5 mm', 1.2345],
    ['1,234,567.5 mm', 1234.5675],
    ['1 234,5 mm', 1.2345],
    ['12 345 mm', 12.345],
    ['0,200 m', 0.2],
    ['1234,567 m', 1234.567],
    ['3.200 m', 3.2],
    ['2e+1 m', 20],
    ['10 126/7 in', 0.7112],

    ['1.234,5 mm', 1.2345],
    ['3 meters.', 3],
    ['3 metres', 3],
    ['.5 m', 0.5],
    ['1e-3 m', 0.001],
    ['-0.3 m', -0.3],
    ['−12 in', -0.3048],
    ['+ 3 m', 3],
  ])('%s', (text, meters) => {
    expect(value(text)).toBeCloseTo(meters, 12);
  });

  it.each([
    ['5 ft 2 1/2 in', 1.5875],
    ['5 ft 1/2 in', 1.5367],
    ['5 ft 1 1/2 in', 1.5621],
    ['5 ft .5 in', 1.5367],
    ['5 ft & 6 in', 1.6764],
    ['10  1/2 in', 0.2667],
    ['10 - 1/2 in', 0.2667],
    ['2e1 m', 20],
    ['  3 m ', 3],
    ['3 m 99 cm', 3.99],
    ['3 m 999 mm', 3.999],
    ['5 ft 11 3/4 in', 1.82245],
    [`3${' '.repeat(MAX_QUANTITY_LENGTH - 2)}m`, 3],
  ])('%s, too', (text, meters) => {
    expect(value(text)).toBeCloseTo(meters, 12);
  });

  it('has no zero below zero, and no bare number where one part has a unit', () => {
    expect(Object.is(value('-0 m'), 0)).toBe(true);
    expect(read('3 m 20')).toMatchObject({ bare: false });
  });

  it('takes a word for "about" as a guess', () => {
    for (const text of [
      'about 3 m',
      '~3 m',
      '≈ 3 m',
      'ca. 3 m',
      'ca 3 m',
      'approx. 3 m',
      '3 m or so',
      'roughly 3 m',
      'ca3 m',
      'approx.3 m',
      '3 m or so.',
      '3 m-ish',
      '3 m approx.',
      '~3 m roughly',
    ]) {
      expect(read(text)).toEqual({ value: 3, approximate: true, bare: false });
    }
    expect(read('3 m')).toMatchObject({ approximate: false });
  });

  it('takes a bare number in the unit system of the case', () => {
    expect(value('3', 'm', 'metric')).toBe(3);
    expect(value('3', 'm', 'metric', 'small-length')).toBe(3);
    expect(value('10', 'm', 'imperial')).toBeCloseTo(3.048, 12);
    expect(value('10', 'm', 'imperial', 'small-length')).toBeCloseTo(0.254, 12);
    expect(read('10', 'm', 'imperial')).toMatchObject({ bare: true });
    expect(read('10 ft', 'm', 'imperial')).toMatchObject({ bare: false });
  });

  it.each([
    ['3 kg', /is a mass, and a length is needed/],
    ['3 Hz', /is a frequency, and a length is needed/],
    ['3 parsecs', /unit that is not known here: "parsecs"/],
    ['10 ft 12 in', /12 inches or more/],
    ['10.5 ft 6 in', /fraction in its first part/],
    ['9-10 ft', /more than one value/],
    ['9 to 10 ft', /more than one value/],
    ['9 or 10 ft', /more than one value/],
    ['3,200 m', /two ways/],
    ['3 m 5', /two digits of centimeters/],
    ['3 m 120 cm', /do not belong together/],
    ['3 in 4 ft', /do not belong together/],
    ['3 yd 20 cm', /do not belong together/],
    ['3 m 2 m', /do not belong together/],
    ['3 m 2 dm', /do not belong together/],
    ['3 m 20 in', /do not belong together/],
    ['3 m 100 cm', /do not belong together/],
    ['3 m 1000 mm', /do not belong together/],
    ['3 m 20 kg', /is a mass/],
    ['5 ft 6 kg', /is a mass/],
    ['5 & 6 ft', /more than one value/],
    ['5 and 6 ft', /more than one value/],
    ['9 ft to 10 ft', /more than one value/],
    ['9 ft - 10 ft', /more than one value/],
    ['1 ft 2 ft 3 ft 4 ft', /more parts than one quantity/],
    ['10 ft 6 cm', /do not belong together/],
    ['3 m 20 cm 5 mm', /more parts/],
    ['1 2 3 4 m', /more parts/],
    ['10 6', /number without a unit/],
    ['1.2.3 m', /do not fit together/],
    ['1,23,4 m', /do not fit together/],
    ['1.234,567.8 m', /do not fit together/],
    ['1234,567.8 m', /do not fit together/],
    ['1,234,56 m', /do not fit together/],
    ['1,234,567,8 m', /do not fit together/],
    ['1,234 567 m', /do not fit together/],
    ['1,23 m 5', /fraction in its first part/],
    ['10 1/2 ft 6 in', /fraction in its first part/],
    ['3e m', /unit that is not known/],
    ['1/ 2 in', /unit that is not known|more than/],
    ['1/0 in', /divides by zero/],
    ['1 1/0 in', /divides by zero/],
    ['1e400 m', /too large/],
    ['NaN', /no number/],
    ['Infinity', /no number/],
    ['', /nothing is written/],
    ['about', /no number/],
    ['-', /no number/],
    ['0x10', /is needed/],
  ])('refuses %s', (text, words) => {
    expect(refusal(text)).toMatch(words);
  });

  it('names what is accepted and an example in the units of the owner', () => {
    const refused = (units: UnitSystem) => {
      const result = read('3 kg', 'm', units);
      return 'refused' in result ? result.refused : undefined;
    };
    expect(refused('imperial')).toEqual({
      what: '"3 kg" is a mass, and a length is needed',
      accepted: 'a length in ft and in, or m or cm',
      example: '10 ft 6 in',
    });
    expect(refused('metric')).toMatchObject({ example: '3.2 m' });
  });
});

describe('a number alone', () => {
  it('is taken in the unit of the system and of the fact', () => {
    const context = (unit: Unit, units: UnitSystem, written: 'length' | 'small-length' = 'length') => ({
      unit,
      units,
      written,
    });
    expect(bareUnit(context('m', 'metric'))).toBe('m');
    expect(bareUnit(context('m', 'metric', 'small-length'))).toBe('m');
    expect(bareUnit(context('m', 'imperial'))).toBe('ft');
    expect(bareUnit(context('m', 'imperial', 'small-length'))).toBe('in');
    expect(bareUnit(context('Hz', 'imperial'))).toBe('');
    expect(bareValue(10, context('m', 'imperial'))).toBeCloseTo(3.048, 12);
    expect(bareValue(10, context('Hz', 'imperial'))).toBe(10);
  });

  it('is asked for with an example in its own kind', () => {
    const example = (unit: Unit, units: UnitSystem, written: 'length' | 'small-length') =>
      acceptedForm({ unit, units, written }).example;
    expect(example('m', 'metric', 'length')).toBe('3.2 m');
    expect(example('m', 'metric', 'small-length')).toBe('26 cm');
    expect(example('m', 'imperial', 'length')).toBe('10 ft 6 in');
    expect(example('m', 'imperial', 'small-length')).toBe('10 1/4 in');
    expect(example('Hz', 'metric', 'length')).toBe('2.5 kHz');
  });
});

describe('other quantities', () => {
  it.each<[string, Unit, number]>([
    ['2.5 kHz', 'Hz', 2500],
    ['2,5 kHz', 'Hz', 2500],
    ['2500 Hz', 'Hz', 2500],
    ['2,500 Hz', 'Hz', 2500],
    ['2 500', 'Hz', 2500],
    ['2.5k', 'Hz', 2500],
    ['80', 'Hz', 80],
    ['1.2 ms', 'ms', 1.2],
    ['0.4 s', 'ms', 400],
    ['500 µs', 'ms', 0.5],
    ['+1.5 dB', 'dB', 1.5],
    ['−3dB', 'dB', -3],
    ['74.5 dB(A)', 'dB', 74.5],
    ['5°', 'deg', 5],
    ['5 degrees', 'deg', 5],
    ['50 %', '1', 0.5],
    ['0,5', '1', 0.5],
    ['1/2', '1', 0.5],
    ['3 seats', '1', 3],
    ['59,200 per m²', '1/m2', 59_200],
    ['59200 1/m2', '1/m2', 59_200],
    ['1 per square inch', '1/m2', 1550.0031],
    ['40 Pa·s/m', 'Pa s/m', 40],
    ['40 rayl', 'Pa s/m', 40],
    ['40 N s/m3', 'Pa s/m', 40],
    ['350 g/m2', 'kg/m2', 0.35],
    ['0.35 kg/m²', 'kg/m2', 0.35],
  ])('%s in %s', (text, unit, expected) => {
    expect(value(text, unit)).toBeCloseTo(expected, 4);
  });

  it.each<[string, Unit, RegExp]>([
    ['2,500 kHz', 'Hz', /two ways/],
    ['2,500 ms', 'ms', /two ways/],
    ['3 m', 'Hz', /a length, and a frequency/],
    ['3 ft', '1', /a length, and a plain number/],
    ['3 ms 4', 'ms', /more than one number/],
    ['3 dB', 'deg', /a level in decibels, and an angle/],
    ['x', 'dB', /no number/],
    ['kHz', 'Hz', /no number/],
  ])('refuses %s as %s', (text, unit, words) => {
    expect(refusal(text, unit)).toMatch(words);
  });
});

describe('strange input', () => {
  it('never throws, never yields NaN or infinity, and ends soon', () => {
    const pieces = fc.array(
      fc.constantFrom(
        '1',
        '9',
        '0',
        '.',
        ',',
        ' ',
        '/',
        '-',
        "'",
        '"',
        'ft',
        'm',
        'in',
        'e',
        '~',
        'about',
        '²',
        'and',
      ),
      { maxLength: 60 },
    );
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string({ unit: 'binary' }),
          pieces.map((list) => list.join('')),
        ),
        (text) => {
          for (const unit of ['m', 'Hz', '1/m2'] as const) {
            const result = read(text, unit);
            if (!('refused' in result)) expect(Number.isFinite(result.value)).toBe(true);
          }
        },
      ),
      { numRuns: 2000 },
    );
  });

  it('refuses a text that is longer than any quantity', () => {
    expect(refusal('1'.repeat(MAX_QUANTITY_LENGTH + 1))).toMatch(/too long/);
    expect(refusal(`${'1 '.repeat(100_000)}m`)).toMatch(/too long/);
  });

  it('takes what steers a terminal out of what it quotes', () => {
    const words = refusal('3 \u001b[31mkg\u202e');
    expect(words).not.toContain('\u001b');
    expect(words).not.toContain('\u202e');
  });
});

describe('writing quantities', () => {
  it.each<[number, Unit, FormatOptions, string]>([
    [3.2004, 'm', { units: 'metric' }, '3.20 m (10 ft 6 in)'],
    [3.2004, 'm', { units: 'imperial' }, '10 ft 6 in (3.20 m)'],
    [3.048, 'm', { units: 'imperial', both: false }, '10 ft'],
    [3.5941, 'm', { units: 'imperial', both: false }, '11 ft 9 1/2 in'],
    [3.6575, 'm', { units: 'imperial', both: false }, '12 ft'],
    [0.2667, 'm', { units: 'imperial', written: 'small-length' }, '10.5 in (26.7 cm)'],
    [1.651, 'm', { units: 'imperial', written: 'small-length' }, '65 in (1.65 m)'],
    [0.001016, 'm', { units: 'metric', written: 'small-length' }, '1.02 mm (0.04 in)'],
    [-0.1524, 'm', { units: 'imperial' }, '−6 in (−15.2 cm)'],
    [-0.001, 'm', { units: 'imperial', both: false }, '0 in'],
    [0, 'm', { units: 'metric' }, '0 cm'],
    [0.0127, 'm', { units: 'imperial', both: false }, '1/2 in'],
    [2500, 'Hz', { units: 'metric' }, '2.5 kHz'],
    [2480, 'Hz', { units: 'metric' }, '2.48 kHz'],
    [80, 'Hz', { units: 'metric' }, '80 Hz'],
    [12_345, 'Hz', { units: 'metric' }, '12.3 kHz'],
    [0.25, 'ms', { units: 'metric' }, '0.25 ms'],
    [400, 'ms', { units: 'metric' }, '400 ms'],
    [1.5, 'dB', { units: 'metric', sign: true }, '+1.5 dB'],
    [-0.04, 'dB', { units: 'metric', sign: true }, '0 dB'],
    [0, 'dB', { units: 'metric', sign: true }, '0 dB'],
    [12.34, 'ms', { units: 'metric' }, '12.3 ms'],
    [-2, 'm', { units: 'metric', both: false }, '−2.00 m'],
    [0.133, 'm', { units: 'metric', written: 'small-length' }, '13.3 cm (5.25 in)'],
    [0.165, 'm', { units: 'imperial', written: 'small-length', both: false }, '6.5 in'],
    [0.2863, 'm', { units: 'imperial', written: 'small-length', both: false }, '11.3 in'],
    [0.2857, 'm', { units: 'imperial', written: 'small-length', both: false }, '11.25 in'],
    [0.2609, 'm', { units: 'imperial', written: 'small-length', both: false }, '10.3 in'],
    [5, 'deg', { units: 'metric' }, '5°'],
    [3, '1', { units: 'metric' }, '3'],
    [0.35, 'kg/m2', { units: 'metric' }, '0.35 kg/m2'],
    [40, 'Pa s/m', { units: 'metric' }, '40 Pa s/m'],
    [59_200, '1/m2', { units: 'metric' }, '59200 per m2'],
  ])('%d %s', (number, unit, options, text) => {
    expect(formatValue(number, unit, options)).toBe(text);
  });

  it('says the side of a fact in its word, not as a sign', () => {
    const left = { unit: 'm', written: 'length', sides: { plus: 'right', minus: 'left' } } as const;
    expect(formatFact(-0.3048, left, 'imperial')).toBe('1 ft (30.5 cm) left');
    expect(formatFact(0.15, left, 'metric')).toBe('15 cm (6 in) right');
    expect(formatFact(0, left, 'metric')).toBe('0 cm');
    expect(formatFact(-3, { unit: 'dB', written: 'plain' }, 'metric')).toBe('−3 dB');
  });

  const lengths = fc.double({ min: -12, max: 12, noNaN: true });

  it('never writes twelve inches beside feet', () => {
    fc.assert(
      fc.property(lengths, (meters) => {
        expect(formatValue(meters, 'm', { units: 'imperial', both: false })).not.toMatch(/\b12( 1\/2)? in/);
      }),
      { numRuns: 2000 },
    );
  });

  it('reads back what it wrote, within its rounding', () => {
    const halfStep = { metric: 0.005, imperial: 0.0254 / 4 };
    fc.assert(
      fc.property(lengths, fc.constantFrom<UnitSystem>('metric', 'imperial'), (meters, units) => {
        const text = formatValue(meters, 'm', { units, both: false });
        expect(Math.abs(value(text, 'm', units) - meters)).toBeLessThanOrEqual(halfStep[units] + 1e-9);
      }),
    );
    fc.assert(
      fc.property(fc.double({ min: 0, max: 12, noNaN: true }), (meters) => {
        const text = formatValue(meters, 'm', { units: 'imperial', written: 'small-length', both: false });
        expect(Math.abs(value(text) - meters)).toBeLessThanOrEqual(0.05 * 0.0254 + 1e-9);
      }),
    );
    fc.assert(
      fc.property(fc.double({ min: 20, max: 20_000, noNaN: true }), (hertz) => {
        const text = formatValue(hertz, 'Hz', { units: 'metric' });
        expect(Math.abs(value(text, 'Hz') / hertz - 1)).toBeLessThan(0.03);
      }),
    );
  });
});
