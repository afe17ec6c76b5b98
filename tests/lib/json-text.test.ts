import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { JsonFault, parseJson } from '../../src/lib/json-text.js';

const LIMITS = { depth: 12, entries: 1000 };

function fault(text: string, limits = LIMITS): string {
  try {
    parseJson(text, limits);
  } catch (error) {
    if (error instanceof JsonFault) return error.message;
    throw error;
  }
  return 'read';
}

describe('JSON from strangers', () => {
  it('reads what the built-in reader reads', () => {
    fc.assert(
      fc.property(fc.json({ maxDepth: 4 }), (text) => {
        const expected: unknown = JSON.parse(text);
        if (/__proto__|constructor|prototype/.test(text)) return;
        expect(parseJson(text, LIMITS).value).toEqual(expected);
      }),
    );
    expect(
      parseJson(' { "a" : [ 1 , -2.5e3 , "\\u00e9\\n\\"" , true , false , null , { } , [ ] ] } ', LIMITS)
        .value,
    ).toEqual({
      a: [1, -2500, 'é\n"', true, false, null, {}, []],
    });
  });

  it('refuses what the built-in reader refuses', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.constantFrom('{', '}', '[', ']', '"', ':', ',', '1', '-', '.', 'e', 'true', '\\', 'u00', ' '),
          {
            maxLength: 12,
          },
        ),
        (pieces) => {
          const text = pieces.join('');
          let builtIn = true;
          try {
            JSON.parse(text);
          } catch {
            builtIn = false;
          }
          expect(fault(text).startsWith('read') || /second time/.test(fault(text))).toBe(builtIn);
        },
      ),
      { numRuns: 3000 },
    );
  });

  it.each([
    ['', 'line 1, column 1: the file is empty'],
    ['{\n  "a": 1,\n}', 'line 3, column 1: "}" stands where a key should be'],
    ['{"a":1', 'line 1, column 1: the text ends inside an object that begins at this place'],
    ['{\n"a": [1, 2', 'line 2, column 6: the text ends inside a list that begins at this place'],
    ['{"a": "half', 'line 1, column 7: a text begins here and does not end'],
    ['{"a" 1}', 'line 1, column 6: "1" stands after a key'],
    ['{"a": 1 "b": 2}', 'line 1, column 9: "\\"" stands inside an object'],
    ['[1 2]', 'line 1, column 4: "2" stands inside a list'],
    ['{} x', 'line 1, column 4: "x" stands after the end of the JSON text'],
    ['{"a": 1, "a": 2}', 'line 1, column 10: the key "a" stands here a second time'],
    ['{"__proto__": 1}', 'line 1, column 2: the key "__proto__" is not accepted'],
    ['{"a": {"constructor": 1}}', 'line 1, column 8: the key "constructor" is not accepted'],
    ['{"\\u005f_proto__": 1}', 'line 1, column 2: the key "__proto__" is not accepted'],
    ['{"a": 1e999}', 'line 1, column 7: this number is too large'],
    ['{"a": 01}', 'line 1, column 8: "1" stands inside an object'],
    ['{"a": 1.}', 'line 1, column 7: this is no JSON number'],
    ['{"a": 1 // one\n}', 'line 1, column 9: "/" stands inside an object'],
    ['{"a": NaN}', 'line 1, column 7: "N" stands where a value should be'],
    ['{"a": "\\x"}', 'line 1, column 7: a \\ in the text that begins here is no JSON escape'],
    ['{"a": "\\u12"}', 'line 1, column 7: a \\u in the text that begins here lacks four hexadecimal digits'],
    ['{"a": "x\ny"}', 'line 1, column 7: a line break stands in the text that begins here'],
    ['{"a": "x\ty"}', 'line 1, column 7: a control character stands in the text that begins here'],
  ])('%j', (text, message) => {
    expect(fault(text)).toBe(message);
  });

  it.each([
    ['', 'a JSON object'],
    ['{\n  "a": 1,\n}', 'no comma before }'],
    ['{a: 1}', 'a key in double quotes'],
    ['{"a":1', '}'],
    ['{"a":1,', '}'],
    ['{', '}'],
    ['[1, 2', ']'],
    ['{"a": "half', 'a closing "'],
    ['{"a" 1}', 'a colon'],
    ['{"a": 1 "b": 2}', 'a comma or }'],
    ['[1 2]', 'a comma or ]'],
    ['{} x', 'nothing more'],
    ['{"a": 1, "a": 2}', 'each key once'],
    ['{"prototype": 1}', 'the keys of a case file'],
    ['{"a": 1e999}', 'a finite number'],
    ['{"a": 1.}', 'a number such as 3.2, or a text in quotes'],
    ['{"a": 1, // one\n}', 'a key in double quotes'],
    ['{"a": NaN}', 'a value: a text in double quotes, a number, an object or a list'],
    ['{"a": "\\x"}', '\\\\ for a backslash'],
    ['{"a": "\\u12"}', 'for example \\u00e9'],
    ['{"a": "x\ny"}', '\\n for a line break'],
    ['['.repeat(14), 'at most 12 levels'],
    [`[${'1,'.repeat(1000)}1]`, 'at most 1000'],
  ])('%j is told with what is accepted: %s', (text, accepted) => {
    let told: unknown;
    try {
      parseJson(text, LIMITS);
    } catch (error) {
      told = error;
    }
    expect(told).toBeInstanceOf(JsonFault);
    expect(told).toMatchObject({ name: 'JsonFault', accepted });
  });

  it('reads every escape, and tells what stands where something else should', () => {
    expect(parseJson('"\\"\\\\\\/\\b\\f\\n\\r\\t\\u0041\\ud83d\\ude00"', LIMITS).value).toBe(
      '"\\/\b\f\n\r\tA😀',
    );
    expect(fault('[tru]')).toMatch(/"t" stands where a value should be/);
    expect(fault('[trueish]')).toMatch(/"t" stands where a value should be/);
    expect(fault('[1, ]')).toMatch(/"]" stands where a value should be/);
    expect(fault('{"a": -x}')).toMatch(/"-" stands where a value should be/);
    expect(fault('😀')).toMatch(/"😀" stands where a value should be/);
    expect(fault('{"a":')).toMatch(/the text ends where a value should be/);
    expect(fault(`{"${'k'.repeat(80)}":1,"${'k'.repeat(80)}":1}`)).toMatch(/the key "k{59}…" stands/);
  });

  it('remembers where a list or text at the top stands, and the last letter of a line', () => {
    const { placeOf } = parseJson('\n [ 1,\n2,\n\n   3 ]', LIMITS);
    expect(['', '0', '1', '2', '3'].map((path) => placeOf(path))).toEqual([
      { line: 2, column: 2 },
      { line: 2, column: 4 },
      { line: 3, column: 1 },
      { line: 5, column: 4 },
      undefined,
    ]);
  });

  it('limits nesting before it costs anything', () => {
    expect(fault('['.repeat(13) + ']'.repeat(13))).toBe('read');
    expect(fault('['.repeat(14) + ']'.repeat(14))).toMatch(/nested deeper than 12/);
    expect(fault(`${'{"a":'.repeat(14)}1${'}'.repeat(14)}`)).toMatch(/nested deeper than 12/);
    expect(fault('['.repeat(13) + ']'.repeat(13), { depth: 11, entries: 9 })).toMatch(
      /nested deeper than 11/,
    );
    expect(fault('['.repeat(1_000_000))).toMatch(/nested deeper than 12/);
  });

  it('limits the entries of one list or object', () => {
    const ones = (count: number) => `[${Array.from({ length: count }, () => '1').join(',')}]`;
    expect(fault(ones(1000))).toBe('read');
    expect(fault(ones(1001))).toMatch(/more than 1000 entries/);
    const keys = (count: number) => `{${Array.from({ length: count }, (_, at) => `"k${at}":1`).join(',')}}`;
    expect(fault(keys(1000))).toBe('read');
    expect(fault(keys(1001))).toMatch(/more than 1000 entries/);
  });

  it('remembers where values stood', () => {
    const { placeOf } = parseJson('{\n "a": [\n  1,\n  { "b": 2 } ]\n}', LIMITS);
    expect(placeOf('a.1.b')).toEqual({ line: 4, column: 10 });
    expect(placeOf('a.0')).toEqual({ line: 3, column: 3 });
    expect(placeOf('a.2')).toBeUndefined();
  });
});
