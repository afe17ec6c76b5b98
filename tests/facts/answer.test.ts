import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { acceptedAnswer, parseAnswer } from '../../src/facts/answer.js';
import type { UnitSystem } from '../../src/facts/book.js';
import { readCase } from '../../src/facts/case-file.js';
import { FACT_IDS, type FactId, factSpec } from '../../src/facts/catalog.js';
import { HOWS } from '../../src/facts/spec.js';
import { sameWord } from '../../src/lib/nearest.js';

const metric = { units: 'metric' } as const;
const imperial = { units: 'imperial' } as const;

function what(...args: Parameters<typeof parseAnswer>): string {
  const result = parseAnswer(...args);
  return 'refused' in result ? result.refused.what : 'accepted';
}

describe('every fact', () => {
  it.each(FACT_IDS)('%s reads the example it gives, in both unit systems', (id) => {
    for (const units of ['metric', 'imperial'] as const) {
      const { accepted, example } = acceptedAnswer(factSpec(id), units);
      expect(accepted).not.toBe('');
      expect(parseAnswer(id, example, { units })).toMatchObject({ answer: { how: factSpec(id).usually } });
    }
  });

  it.each(FACT_IDS)('%s takes "unknown" for an answer, and keeps how it was obtained', (id) => {
    expect(parseAnswer(id, "don't know", metric)).toMatchObject({ answer: { how: 'unknown' } });
    const { example } = acceptedAnswer(factSpec(id), 'metric');
    for (const how of HOWS)
      expect(parseAnswer(id, example, { ...metric, how })).toMatchObject({ answer: { how } });
  });

  it.each(FACT_IDS)('%s refuses nothing, lists and objects with words', (id) => {
    for (const raw of [undefined, null, [], {}, true]) expect(what(id, raw, metric)).not.toBe('accepted');
    expect(what(id, '', metric)).toMatch(/nothing is written/);
  });

  it('reads back any possible number written with its unit', () => {
    const numbers = FACT_IDS.filter((id) => factSpec(id).kind === 'number');
    fc.assert(
      fc.property(fc.constantFrom(...numbers), fc.double({ min: 0, max: 1, noNaN: true }), (id, share) => {
        const spec = factSpec(id);
        if (spec.kind !== 'number') return;
        const [low, high] = spec.possible;
        const exact = low + (high - low) * share;
        const value = spec.whole ? Math.round(exact) : exact;
        const unit = { '1': '', '1/m2': 'per m2' }[spec.unit as string] ?? spec.unit;
        const results = (['metric', 'imperial'] as UnitSystem[]).map((units) =>
          parseAnswer(id, `${value} ${unit}`, { units }),
        );
        for (const result of results) expect(result).toMatchObject({ answer: { value } });
      }),
    );
  });
});

describe('what is no answer', () => {
  it.each([
    [null, 'null'],
    [[3], 'a list'],
    [{}, 'an object'],
    [true, 'true'],
    [undefined, 'undefined'],
  ])('%j is told by its kind', (raw, kind) => {
    expect(what('seatDistance', raw, metric)).toBe(`${kind} is no number`);
    expect(what('centerLayout', raw, metric)).toBe(`${kind} is none of the choices`);
    expect(what('responseLeft', raw, metric)).toBe(`${kind} is no path`);
  });

  it('is told by itself where it is a number or a text', () => {
    expect(what('seatDistance', Number.NaN, metric)).toBe('NaN is no finite number');
    expect(what('seatCount', '2.5', metric)).toBe('"2.5" is not a whole number');
    expect(what('seatCount', 2.5, metric)).toBe('2.5 is not a whole number');
    expect(what('responseLeft', 5, metric)).toBe('5 is no path');
  });

  it('is "not known" in any apostrophe', () => {
    for (const raw of ['don’t know', 'Unknown', '  NOT SURE ', "I don't know"])
      expect(parseAnswer('seatDistance', raw, metric)).toEqual({
        answer: { how: 'unknown' },
        echo: 'not known',
      });
  });
});

describe('choices', () => {
  it('are told as a list, echoed in plain words, and read by them in capitals too', () => {
    const spec = factSpec('centerLayout');
    if (spec.kind !== 'choice') throw new Error('the layout is a choice');
    const values = Object.keys(spec.choices);
    expect(acceptedAnswer(spec, 'metric')).toEqual({ accepted: values.join(', '), example: values[0] });
    for (const [at, [id, label]] of Object.entries(spec.choices).entries()) {
      for (const raw of [id, label, label.toUpperCase(), `${at + 1}`, `${at + 1}.`])
        expect(parseAnswer('centerLayout', raw, metric)).toMatchObject({
          answer: { value: id },
          echo: label,
        });
    }
    for (const raw of ['1 mid', 'x1', '1.5', `${values.length + 1}`])
      expect(what('centerLayout', raw, metric)).toMatch(/none of the choices/);
  });

  const value = (raw: unknown) => {
    const result = parseAnswer('centerLayout', raw, metric);
    return 'refused' in result ? result.refused.what : 'value' in result.answer && result.answer.value;
  };

  it('are read by value, number in the list, plain words, or an unambiguous beginning', () => {
    expect(value('mid-tweeter-mid')).toBe('mid-tweeter-mid');
    expect(value('Mid-Tweeter-Mid ')).toBe('mid-tweeter-mid');
    expect(value('mid tweeter mid')).toBe('mid-tweeter-mid');
    expect(value('1')).toBe('mid-tweeter-mid');
    expect(value(2)).toBe('nested-mid-tweeter-mid');
    expect(value('coax')).toBe('coaxial');
    expect(value('two complete')).toBe('paired-boxes');
  });

  it('ask back when a beginning fits several, and never guess a near miss', () => {
    expect(value('tweeter')).toMatch(/could be tweeter-mid-mid-tweeter or tweeter-mid-tweeter/);
    expect(value('mid-tweter-mid')).toMatch(/none of the choices; did you mean mid-tweeter-mid\?/);
    expect(value('zebra')).toBe('"zebra" is none of the choices');
    expect(value('12')).toMatch(/none of the choices/);
    expect(value('0')).toMatch(/none of the choices/);
  });

  it('prefer a value that is itself a number over the place in the list', () => {
    expect(parseAnswer('highPassSlope', '24', metric)).toMatchObject({ answer: { value: '24' } });
    expect(parseAnswer('highPassSlope', 12, metric)).toMatchObject({ answer: { value: '12' } });
    expect(parseAnswer('highPassSlope', '1', metric)).toMatchObject({ answer: { value: '12' } });
  });

  it('need their exact value in a case file', () => {
    const strict = { ...metric, strict: true };
    expect(what('centerLayout', 'coaxial', strict)).toBe('accepted');
    for (const raw of ['1', 1, 'coax', 'Coaxial', 'unknown']) {
      expect(what('centerLayout', raw, strict)).toMatch(/none of the choices/);
    }
  });
});

describe('words of the trade for a choice', () => {
  it.each([
    ['MTM', 'mid-tweeter-mid'],
    ['wmtw', 'woofer-mid-tweeter-woofer'],
    ['2.5 way', 'two-and-a-half-way'],
    ['MTMT', undefined],
  ])('are understood at a prompt and in a case file, and kept as the value: %s', (word, value) => {
    const said = parseAnswer('centerLayout', word, { units: 'metric' });
    expect('answer' in said ? said.answer : {}).toEqual(value === undefined ? {} : { value, how: 'seen' });
    for (const entry of [word, { value: word, how: 'guessed' }]) {
      const read = () =>
        readCase(JSON.stringify({ facts: { centerLayout: entry } })).book.answers.get('centerLayout');
      if (value === undefined) expect(read).toThrow(/none of the choices/);
      else expect(read()).toMatchObject({ value });
    }
  });

  it('each means one choice of its fact, and is none of its values or plain words', () => {
    for (const id of FACT_IDS) {
      const spec = factSpec(id);
      if (spec.kind !== 'choice' || !spec.alsoCalled) continue;
      const words = Object.values(spec.alsoCalled).flat();
      const taken = [...Object.keys(spec.choices), ...Object.values(spec.choices)];
      for (const value of Object.keys(spec.alsoCalled)) expect(Object.keys(spec.choices)).toContain(value);
      for (const [i, word] of words.entries()) {
        const others = [...taken, ...words.filter((_, k) => k !== i)];
        expect(
          others.filter((other) => sameWord(other, word)),
          `${id}: ${word}`,
        ).toEqual([]);
      }
    }
  });
});

describe('numbers', () => {
  it('out of the possible range are refused with range and example', () => {
    expect(parseAnswer('seatDistance', '300 m', metric)).toEqual({
      refused: {
        what: '300.00 m (984 ft 3 in) cannot be right for the seat distance',
        accepted: 'a length in m, cm, or ft and in, from 50 cm to 30.00 m',
        example: '3.00 m',
      },
    });
  });

  it('at the edge of the possible range are accepted', () => {
    expect(what('seatDistance', '0.5 m', metric)).toBe('accepted');
    expect(what('seatDistance', '30 m', metric)).toBe('accepted');
    expect(what('seatDistance', '30.01 m', metric)).not.toBe('accepted');
    expect(what('seatDistance', '0.49 m', metric)).not.toBe('accepted');
  });

  it('that are possible but unusual are taken with a remark', () => {
    const unusual = parseAnswer('seatDistance', '9 m', metric);
    expect(unusual).toMatchObject({ answer: { value: 9 } });
    expect(unusual).toHaveProperty(
      'remark',
      expect.stringMatching(/unusual for the seat distance; common is 1.50 m to 7.00 m/),
    );
    expect(parseAnswer('seatDistance', '7 m', metric)).not.toHaveProperty('remark');
  });

  it('without a unit are echoed with the one that was taken', () => {
    expect(parseAnswer('seatDistance', '9', imperial)).toMatchObject({
      bareUnit: 'ft',
      echo: '9 ft (2.74 m)',
    });
    expect(parseAnswer('displayDiagonal', 65, imperial)).toMatchObject({
      bareUnit: 'in',
      echo: '65 in (1.65 m)',
    });
    expect(parseAnswer('seatDistance', 3, metric)).toMatchObject({ bareUnit: 'm' });
    expect(parseAnswer('seatDistance', '9 ft', metric)).not.toHaveProperty('bareUnit');
    expect(parseAnswer('seatCount', 3, metric)).not.toHaveProperty('bareUnit');
    expect(what('centerDriverSpacing', '26', metric)).toMatch(/a number without a unit is taken as m here/);
  });

  it('of zero need no unit, and one with a unit or of things is not told about units', () => {
    expect(parseAnswer('mainSeatOffset', 0, metric)).not.toHaveProperty('bareUnit');
    expect(parseAnswer('mainSeatOffset', '0', imperial)).not.toHaveProperty('bareUnit');
    expect(what('centerDriverSpacing', '26 m', metric)).toMatch(
      /driver spacing$|cannot be right for the [^;]*$/,
    );
    expect(what('seatCount', '300', metric)).not.toMatch(/without a unit/);
  });

  it('at the edge of what is common need no remark, beside it they do', () => {
    expect(parseAnswer('seatDistance', '1.5 m', metric)).not.toHaveProperty('remark');
    expect(parseAnswer('seatDistance', '1.49 m', metric)).toHaveProperty(
      'remark',
      '1.49 m (4 ft 10 1/2 in) is unusual for the seat distance; common is 1.50 m to 7.00 m',
    );
    expect(parseAnswer('displayDiagonal', '200 in', imperial)).toHaveProperty(
      'remark',
      expect.stringMatching(/^200 in \(5.08 m\) is unusual/),
    );
  });

  it('said with "about" count as guessed unless told otherwise', () => {
    expect(parseAnswer('seatDistance', 'about 3 m', metric)).toMatchObject({ answer: { how: 'guessed' } });
    expect(parseAnswer('seatDistance', 'about 3 m', { ...metric, how: 'measured' })).toMatchObject({
      answer: { how: 'measured' },
    });
  });

  it('may name a side instead of a sign', () => {
    const offset = (text: string) => parseAnswer('mainSeatOffset', text, imperial);
    expect(offset('1 ft left')).toMatchObject({ answer: { value: -0.3048 } });
    expect(offset('1 ft to the left')).toMatchObject({ answer: { value: -0.3048 } });
    expect(offset('1 ft right')).toMatchObject({ answer: { value: 0.3048 } });
    expect(offset('0 left')).toMatchObject({ answer: { value: 0 } });
    expect(parseAnswer('centerTilt', '5 deg down', metric)).toMatchObject({ answer: { value: -5 } });
    expect(parseAnswer('centerBehindMains', '20 cm in front', metric)).toMatchObject({
      answer: { value: -0.2 },
    });
    expect(what('mainSeatOffset', '-1 ft left', imperial)).toMatch(/a minus and a side/);
    expect(what('seatDistance', '1 m left', metric)).toMatch(/not known here/);
  });

  it('that count things are whole', () => {
    expect(what('seatCount', '2.5', metric)).toMatch(/not a whole number/);
    expect(what('seatCount', '3', metric)).toBe('accepted');
  });

  it('that are no finite numbers are refused', () => {
    for (const raw of [Number.NaN, Number.POSITIVE_INFINITY, -1e308, '1e999']) {
      expect(what('seatDistance', raw, metric)).not.toBe('accepted');
    }
  });
});

describe('paths of response files', () => {
  it.each([
    ['/etc/passwd', /absolute/],
    ['C:\\data\\left.txt', /absolute/],
    ['c:left.txt', /absolute/],
    ['\\\\server\\left.txt', /absolute/],
    ['../left.txt', /climbs out/],
    ['a/../../left.txt', /climbs out/],
    ['a\\..\\left.txt', /climbs out/],
    ['left\u0000.txt', /characters/],
    ['left\u202etxt.exe', /characters/],
    ['x'.repeat(300), /longer/],
    ['  ', /nothing is written/],
  ])('%j are refused', (path, words) => {
    expect(what('responseLeft', path, metric)).toMatch(words);
  });

  it('stay inside the folder of the case', () => {
    for (const path of [
      'left.txt',
      'responses/left.txt',
      './left.txt',
      'é.txt',
      'e\u0301.txt',
      '..left.txt',
    ]) {
      expect(what('responseLeft', path, metric)).toBe('accepted');
    }
  });
});

it('no answer of any kind makes it throw', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...(FACT_IDS as FactId[])),
      fc.anything(),
      fc.boolean(),
      (id, raw, strict) => {
        const result = parseAnswer(id, raw, { units: 'imperial', strict });
        if ('refused' in result) expect(result.refused.what).not.toBe('');
        else if ('value' in result.answer && typeof result.answer.value === 'number') {
          expect(Number.isFinite(result.answer.value)).toBe(true);
        }
      },
    ),
  );
});
