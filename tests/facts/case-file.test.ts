import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { EMPTY_BOOK, type FactBook, withAnswer } from '../../src/facts/book.js';
import {
  CaseError,
  type CaseProblem,
  decodeCase,
  MAX_CASE_BYTES,
  readCase,
  writeCase,
} from '../../src/facts/case-file.js';
import { CASE_LIMITS } from '../../src/facts/case-limits.js';
import { FACT_IDS, factSpec } from '../../src/facts/catalog.js';
import { caseJsonSchema } from '../../src/facts/json-schema.js';
import { anyBook } from '../support/books.js';

const CONTRACT_CASE = `{ "format": "center-audit/case", "version": 1, "units": "imperial",
  "title": "short name", "complaints": ["voice-unclear-off-side"],
  "facts": { "centerLayout": "mid-tweeter-mid",
             "seatDistance": { "value": "9 ft", "how": "measured" },
             "centerCrossover": { "how": "unknown" } },
  "seats": [ { "name": "middle", "xM": 0, "yM": "9 ft", "main": true }, { "name": "right end", "xM": "3 ft 6 in", "yM": "9 ft", "row": 1, "earHeightM": 0.97 } ],
  "expect": { "top": ["driver-layout"], "ruledOut": ["level"] } }`;

function problems(text: string): readonly CaseProblem[] {
  try {
    readCase(text);
  } catch (error) {
    if (error instanceof CaseError) return error.problems;
    throw error;
  }
  return [];
}
const caseOf = (parts: object): string => JSON.stringify(parts);
const problem = (parts: object): CaseProblem | undefined => problems(caseOf(parts))[0];
const facts = (entries: object): CaseProblem | undefined => problem({ facts: entries });

describe('a hand-written case', () => {
  it('reads as the contract shows it', () => {
    const { book, expect: expected, warnings } = readCase(CONTRACT_CASE);
    expect(book).toEqual({
      units: 'imperial',
      title: 'short name',
      complaints: ['voice-unclear-off-side'],
      absentComplaints: [],
      answers: new Map<string, unknown>([
        ['centerLayout', { value: 'mid-tweeter-mid', how: 'seen' }],
        ['centerCrossover', { how: 'unknown' }],
        ['seatDistance', { value: 2.7432, how: 'measured' }],
      ]),
      seats: [
        { name: 'middle', xM: 0, yM: 2.7432, row: 1, main: true },
        { name: 'right end', xM: 1.0668, yM: 2.7432, row: 1, earHeightM: 0.97, main: false },
      ],
      notes: [],
      trials: [],
      before: new Map(),
      constraints: [],
    });
    expect(expected).toEqual({ top: ['driver-layout'], ruledOut: ['level'] });
    expect(warnings).toEqual([]);
  });

  it('may be as short as one fact, with a byte order mark and Windows line ends', () => {
    const { book } = readCase('\ufeff{\r\n "facts": { "seatDistance": "3 m" }\r\n}\r\n');
    expect(book.units).toBe('metric');
    expect(book.answers.get('seatDistance')).toEqual({ value: 3, how: 'measured' });
  });

  it('echoes the unit it took for a number without one', () => {
    const { warnings, book } = readCase(caseOf({ units: 'imperial', facts: { seatDistance: 9 } }));
    expect(book.answers.get('seatDistance')).toMatchObject({ value: 2.7432 });
    expect(warnings).toEqual([
      {
        path: 'facts.seatDistance',
        text: 'a number without a unit is taken as ft: 9 ft (2.74 m)',
        bareUnit: 'ft',
      },
    ]);
  });

  it('says which system it took when none is given and it mattered', () => {
    const { warnings } = readCase(caseOf({ facts: { seatDistance: 3 } }));
    expect(warnings.map((warning) => warning.path)).toEqual(['facts.seatDistance', 'units']);
  });

  it('remarks on what is possible but unusual', () => {
    const { warnings } = readCase(caseOf({ facts: { mainsBase: '9 m' } }));
    expect(warnings[0]?.text).toMatch(/unusual for the distance between the mains/);
  });

  it('reads an undecided expectation', () => {
    const expected = { undecided: true, separates: ['delay', 'level'] };
    expect(readCase(caseOf({ expect: expected })).expect).toEqual(expected);
  });
});

describe('seats of a case', () => {
  const seats = (list: object[]) => readCase(caseOf({ units: 'imperial', seats: list }));

  it('are in meters where a number stands alone, in every unit system', () => {
    expect(seats([{ xM: 0.5, yM: 3, earHeightM: '3 ft' }]).book.seats).toEqual([
      { name: 'seat 1', xM: 0.5, yM: 3, row: 1, earHeightM: 0.9144, main: true },
    ]);
    expect(seats([{ xM: '0.5', yM: '3' }]).book.seats[0]).toMatchObject({ xM: 0.5, yM: 3 });
  });

  it('may name the side', () => {
    expect(seats([{ xM: '2 ft left', yM: 3 }]).book.seats[0]?.xM).toBeCloseTo(-0.6096, 12);
    expect(seats([{ xM: '2 ft right', yM: 3 }]).book.seats[0]?.xM).toBeCloseTo(0.6096, 12);
  });

  it('have exactly one main seat: the one nearest to the middle of the front row unless one is marked', () => {
    const { book, warnings } = seats([
      { name: 'a', xM: 0, yM: 4, row: 2 },
      { name: 'b', xM: -1, yM: 3 },
      { name: 'c', xM: 0.2, yM: 3 },
    ]);
    expect(book.seats.filter((seat) => seat.main).map((seat) => seat.name)).toEqual(['c']);
    expect(warnings[0]?.text).toMatch(/no main seat is marked; "c" is taken/);
  });

  it.each([
    [
      [
        { xM: 0, yM: 3, main: true },
        { xM: 1, yM: 3, main: true },
      ],
      'seats',
      /both marked as the main seat/,
    ],
    [
      [
        { name: 'a', xM: 0, yM: 3 },
        { name: 'a', xM: 1, yM: 3 },
      ],
      'seats.1.name',
      /two seats are called "a"/,
    ],
    [[{ xM: 0 }], 'seats.0.yM', /this key is missing/],
    [[{ xM: 0, yM: 300 }], 'seats.0.yM', /cannot be right for a seat/],
    [[{ xM: '3 kg', yM: 3 }], 'seats.0.xM', /a mass, and a length/],
    [[{ xM: 0, yM: 3, row: 1.5 }], 'seats.0.row', /does not fit here/],
    [[{ xM: 0, yM: 3, heigth: 1 }], 'seats.0.heigth', /no key that is known here/],
    [Array.from({ length: 31 }, () => ({ xM: 0, yM: 3 })), 'seats', /too long/],
  ])('%#: what cannot be is refused at its place', (list, path, words) => {
    const found = problem({ seats: list });
    expect(found?.path).toBe(path);
    expect(found?.what).toMatch(words);
  });
});

describe('seats at the edges', () => {
  const first = (seat: object, units = 'metric') => readCase(caseOf({ units, seats: [seat] })).book.seats[0];

  it.each([
    ['xM', -10, 10, -10.01, 10.01],
    ['yM', 0.2, 40, 0.19, 40.1],
    ['earHeightM', 0.3, 5, 0.29, 5.01],
  ] as const)('%s may lie from %d to %d m', (key, low, high, below, above) => {
    const seat = { xM: 0, yM: 3 };
    for (const value of [low, high]) expect(first({ ...seat, [key]: value })).toMatchObject({ [key]: value });
    for (const value of [below, above]) {
      expect(problem({ seats: [{ ...seat, [key]: value }] })).toMatchObject({
        path: `seats.0.${key}`,
        accepted: `meters, or a text with its unit, from ${low} to ${high} m`,
        example: '2.8',
      });
    }
    expect(problem({ units: 'imperial', seats: [{ ...seat, [key]: above }] })?.example).toBe('"9 ft 2 in"');
  });

  it('are named, or numbered where they are not; a side is no sign twice', () => {
    expect(first({ xM: 0, yM: 3 })).toMatchObject({ name: 'seat 1', row: 1, main: true });
    expect(first({ name: ' \u0007 ', xM: 0, yM: 3 })?.name).toBe('seat 1');
    expect(first({ xM: '0 left', yM: 3 })?.xM).toBe(0);
    for (const xM of ['-1 m left', '-1 m right'])
      expect(problem({ seats: [{ xM, yM: 3 }] })?.what).toMatch(/has a minus and a side as well/);
    expect(problem({ seats: [{ xM: 0, yM: '3 m left' }] })?.what).toMatch(/not known here/);
  });

  it('too far away are told in the units of the owner', () => {
    const far = { seats: [{ xM: 0, yM: 50 }] };
    expect(problem(far)?.what).toBe('50.00 m (164 ft 1/2 in) cannot be right for a seat');
    expect(problem({ ...far, units: 'imperial' })?.what).toMatch(/^164 ft 1\/2 in \(50.00 m\)/);
  });

  it('say nothing of a lone seat that is not marked, and two marks in words', () => {
    expect(readCase(caseOf({ seats: [{ xM: 0, yM: 3 }] })).warnings).toEqual([]);
    const both = [
      { name: 'a', xM: 0, yM: 3, main: true },
      { name: 'b', xM: 1, yM: 3, main: true },
    ];
    expect(problem({ seats: both })).toMatchObject({
      what: '"a" and "b" are both marked as the main seat',
      accepted: 'main: true at one seat',
    });
    const same = both.map((seat) => ({ ...seat, name: 'a', main: false }));
    expect(problem({ seats: same })).toMatchObject({
      what: 'two seats are called "a"',
      accepted: 'a name of its own for each seat',
      example: '"left end"',
    });
  });

  it('without a mark leave the main one to the front row, whatever its number, and to the first of two as near', () => {
    const { book } = readCase(
      caseOf({
        seats: [
          { name: 'back', xM: 0, yM: 4, row: 3 },
          { name: 'left', xM: -0.3, yM: 3, row: 2 },
          { name: 'right', xM: 0.3, yM: 3, row: 2 },
        ],
      }),
    );
    expect(book.seats.map(({ main }) => main)).toEqual([false, true, false]);
    expect(readCase(caseOf({ seats: [] })).book.seats).toEqual([]);
  });
});

describe('what is wrong with a case', () => {
  it('is told all at once, in the order of the file, with line, column, accepted values and an example', () => {
    const found = problems(`{
  "units": "imperial",
  "facts": {
    "centerLayot": "coaxial",
    "centerCrossover": "3 kg",
    "seatDistance": { "value": "9 ft", "hw": "measured" }
  },
  "complaints": ["dul"],
  "titel": "x"
}`);
    expect(found.map(({ path, line, column }) => [path, line, column])).toEqual([
      ['facts.centerLayot', 4, 20],
      ['facts.centerCrossover', 5, 24],
      ['facts.seatDistance.hw', 6, 46],
      ['complaints.0', 8, 18],
      ['titel', 9, 12],
    ]);
    expect(found[0]?.what).toBe('"centerLayot" is no fact that is known here; did you mean centerLayout?');
    expect(found[1]).toMatchObject({ example: '2.5 kHz', where: 'facts.centerCrossover, line 5, column 24' });
    expect(found[3]?.what).toMatch(/did you mean dull\?/);
    expect(found[4]?.example).toBe('title');
    for (const each of found) expect(each.accepted).not.toBe('');
  });

  it.each<[object, RegExp]>([
    [{ seatDistance: { value: 3, how: 'unknown' } }, /has a value and is marked unknown/],
    [{ seatDistance: {} }, /neither a value nor how: unknown/],
    [{ seatDistance: { how: 'measured' } }, /neither a value nor how: unknown/],
    [{ seatDistance: { value: 3, how: 'dreamt' } }, /"dreamt" says not how it was obtained/],
    [{ seatDistance: { how: 'unknown', values: ['3 m'] } }, /has a value and is marked unknown/],
    [{ centerSpread: { how: 'conflicting' } }, /needs the values that were told/],
    [{ centerSpread: { how: 'conflicting', values: ['on'] } }, /needs the values that were told/],
    [{ centerSpread: { how: 'conflicting', values: ['on', 'of'] } }, /"of" is none of the choices/],
    [{ centerSpread: { how: 'read', values: ['on', 'off'] } }, /several values stand there/],
    [{ seatDistance: true }, /true is no number/],
    [{ seatDistance: null }, /null is no number/],
    [{ seatDistance: [3] }, /a list is no number/],
    [{ seatDistance: '300 m' }, /cannot be right/],
    [{ centerLayout: 1 }, /none of the choices/],
    [{ centerLayout: 'mid-tweter-mid' }, /did you mean mid-tweeter-mid/],
    [{ responseLeft: '../secret.txt' }, /climbs out/],
    [{ responseLeft: 5 }, /is no path/],
    [{ toString: 1 }, /no fact that is known here/],
  ])('%j', (entries, words) => {
    expect(facts(entries)?.what).toMatch(words);
  });

  it.each<[object, string]>([
    [{ units: 'stones' }, 'units'],
    [{ title: 5 }, 'title'],
    [{ title: 'x'.repeat(CASE_LIMITS.titleLetters + 1) }, 'title'],
    [{ words: 'x'.repeat(CASE_LIMITS.wordsLetters + 1) }, 'words'],
    [{ notes: Array.from({ length: CASE_LIMITS.notes + 1 }, () => 'x') }, 'notes'],
    [{ notes: ['x'.repeat(CASE_LIMITS.noteLetters + 1)] }, 'notes.0'],
    [{ tried: 'x' }, 'tried'],
    [{ tried: ['delay/x', 3] }, 'tried.1'],
    [{ trials: {} }, 'trials'],
    [{ trials: [{ outcome: 'gone' }] }, 'trials.0.act'],
    [{ trials: [{ act: 'center-tilted' }] }, 'trials.0.outcome'],
    [{ trials: [{ act: 'center-tilted', outcome: 'gone', stays: 'yes' }] }, 'trials.0.stays'],
    [{ trials: [{ act: 'center-tilted', outcome: 'gone', when: 1 }] }, 'trials.0.when'],
    [{ before: { facts: { enteredCenter: '3 kg' } } }, 'before.facts.enteredCenter'],
    [{ before: { facts: { entredCenter: '3 m' } } }, 'before.facts.entredCenter'],
    [{ before: { seats: [] } }, 'before.seats'],
    [{ constraints: ['no-money'] }, 'constraints.0'],
    [{ solved: 'yes' }, 'solved'],
    [{ complaints: 'dull' }, 'complaints'],
    [{ complaints: [3] }, 'complaints.0'],
    [{ facts: [] }, 'facts'],
    [{ seats: {} }, 'seats'],
    [{ expect: { top: 'x' } }, 'expect.top'],
    [{ expect: { tops: [] } }, 'expect.tops'],
  ])('%#: a wrong kind or size at %s is refused there', (parts, path) => {
    expect(problem(parts)?.path).toBe(path);
    expect(problem(parts)?.accepted).not.toBe('');
  });

  it.each<[object, Partial<CaseProblem>]>([
    [
      { complaints: 'dull' },
      { what: 'this is no list of complaints', accepted: 'a list', example: '["dull", "hollow"]' },
    ],
    [{ complaints: ['xyzzy'] }, { path: 'complaints.0', what: '"xyzzy" is no complaint', example: 'dull' }],
    [
      { absentComplaints: ['dul'] },
      { path: 'absentComplaints.0', what: '"dul" is no complaint; did you mean dull?', example: 'dull' },
    ],
    [{ complaints: [3] }, { what: '3 is no complaint', example: 'dull' }],
    [{ complaints: [[]] }, { what: 'a list is no complaint' }],
    [{ complaints: [{}] }, { what: 'an object is no complaint' }],
    [
      { facts: { zzz: 1 } },
      {
        path: 'facts.zzz',
        what: '"zzz" is no fact that is known here',
        accepted: 'the facts that "center-audit facts" lists',
      },
    ],
    [{ zzzzzz: 1 }, { path: 'zzzzzz', what: '"zzzzzz" is no key that is known here', example: 'format' }],
    [
      { seats: [{ xM: 0, yM: 3, hight: 1 }] },
      { path: 'seats.0.hight', accepted: 'name, xM, yM, row, earHeightM, main', example: 'name' },
    ],
    [
      { expect: { tops: [] } },
      {
        path: 'expect.tops',
        accepted: 'top, ruledOut, undecided, separates, difficulty, setAside',
        example: 'top',
      },
    ],
    [
      { facts: { seatDistance: { value: 3, hw: 'measured' } } },
      {
        path: 'facts.seatDistance.hw',
        accepted: 'value, how, values',
        what: '"hw" is no key that is known here; did you mean how?',
      },
    ],
    [
      { facts: { seatDistance: { value: 3, how: 'unknown' } } },
      { path: 'facts.seatDistance', accepted: 'one of the two', example: '{ "how": "unknown" }' },
    ],
    [
      { facts: { seatDistance: { value: 3, how: 'dreamt' } } },
      { path: 'facts.seatDistance.how', example: 'measured' },
    ],
    [
      { facts: { seatDistance: {} } },
      {
        path: 'facts.seatDistance',
        accepted: 'a value, or { "value", "how" }',
        example: '{ "how": "unknown" }',
      },
    ],
    [
      { facts: [] },
      {
        path: 'facts',
        what: 'a list does not fit here',
        accepted: 'an object of facts',
        example: '{ "seatDistance": "9 ft" }',
      },
    ],
    [{ seats: {} }, { what: 'an object does not fit here', accepted: 'a list of at most 30 seats' }],
    [
      { units: 'stones' },
      { what: '"stones" does not fit here', accepted: 'metric, imperial', example: '"imperial"' },
    ],
    [{ title: null }, { what: 'null does not fit here', accepted: 'a text of at most 200 letters' }],
    [{ title: 'x'.repeat(201) }, { what: `"${'x'.repeat(59)}…" is too long` }],
    [{ seats: [{ yM: 3 }] }, { path: 'seats.0.xM', what: 'this key is missing', example: '"3 ft 6 in"' }],
    [
      { seats: [{ xM: 0, yM: 3, main: 1 }] },
      { path: 'seats.0.main', what: '1 does not fit here', example: 'true' },
    ],
    [{ facts: { seatDistance: 'x'.repeat(301) } }, { path: 'facts.seatDistance', example: '3.00 m' }],
    [{ facts: { seatDistance: { value: [3], how: 'measured' } } }, { what: 'a list is no number' }],
    [{ facts: { seatDistance: { value: {}, how: 'measured' } } }, { what: 'an object is no number' }],
  ])('%j: says what, where, what is accepted and an example', (parts, expected) => {
    expect(problem(parts)).toMatchObject(expected);
  });

  it('says for every shape that does not fit what would, in words', () => {
    const anything = {
      format: 1,
      version: 1,
      units: 1,
      title: 1,
      words: 1,
      facts: 1,
      notes: 1,
      tried: 1,
      trials: 1,
      before: 1,
      constraints: 1,
      solved: 1,
      seats: 1,
      expect: 1,
    };
    for (const key of Object.keys(anything)) {
      if (key === 'format' || key === 'version') continue;
      expect(problem({ [key]: 1 })?.accepted, key).not.toBe('another kind of value');
    }
    expect(problem({ how: { deep: 1 } })?.accepted).toMatch(/^format, version, units/);
  });

  it('looks for a near word for twenty unknown keys, not for every one of a stranger', () => {
    const many = Object.fromEntries(
      Array.from({ length: 25 }, (_, i) => [`seatDistanc${String.fromCharCode(97 + i)}`, 1]),
    );
    const found = problems(caseOf({ facts: many }));
    const hints = found.filter(({ what }) => what.includes('did you mean seatDistance?'));
    expect(hints).toHaveLength(20);
    const [long] = problems(caseOf({ ['k'.repeat(500)]: 1 }));
    expect(long?.path).toBe('k'.repeat(CASE_LIMITS.idLetters));
  });

  it('is an error whose first problem can be read part by part', () => {
    try {
      readCase(caseOf({ facts: { seatDistance: '3 kg' } }));
      expect.unreachable();
    } catch (error) {
      if (!(error instanceof CaseError)) throw error;
      const { path, what, accepted, example } = error;
      expect([path, example]).toEqual(['facts.seatDistance', '3.00 m']);
      expect(what).toBe('"3 kg" is a mass, and a length is needed');
      expect(accepted).toBe('a length in m, cm, or ft and in, from 50 cm to 30.00 m');
      expect(error.message).toBe(
        `facts.seatDistance, line 1, column 26: ${what}\n  accepted: ${accepted}\n  example: 3.00 m`,
      );
    }
  });

  it('is told from left to right, and what is missing at the place of what it is missing from', () => {
    const found = problems(
      '{ "titel": 1, "units": "stones",\n "seats": [ { "xM": 0 } ], "facts": { "zz": 1 } }',
    );
    expect(found.map(({ path, line, column }) => [path, line, column])).toEqual([
      ['titel', 1, 12],
      ['units', 1, 24],
      ['seats.0.yM', 2, 13],
      ['facts.zz', 2, 45],
    ]);
  });

  it('does not hide behind a taken unit: that is told only where a number stood alone', () => {
    const alone = readCase(caseOf({ facts: { seatDistance: 3 } })).warnings;
    expect(alone.at(-1)).toEqual({ path: 'units', text: 'no unit system is given; metric is taken' });
    expect(readCase(caseOf({ facts: { mainsBase: '9 m' } })).warnings.map(({ path }) => path)).toEqual([
      'facts.mainsBase',
    ]);
    const book = readCase(caseOf({ words: 'a\u0007b\u0008' }));
    expect(book.warnings).toEqual([{ path: 'words', text: '2 control characters were taken out' }]);
  });

  it('is limited in how much it tells', () => {
    const many = Object.fromEntries(Array.from({ length: 500 }, (_, index) => [`zz${index}`, 1]));
    let message = '';
    try {
      readCase(caseOf({ facts: many }));
    } catch (error) {
      message = String(error);
    }
    expect(message).toMatch(/and 480 more$/);
    expect(message.length).toBeLessThan(10_000);
  });

  it.each([
    ['a newer version', { version: 3 }, /newer than this program reads/],
    ['a version that never was', { version: 0 }, /no version of a case file/],
    ['a version in words', { version: 'one' }, /no version of a case file/],
    ['another format', { format: 'center-audit/report' }, /the format is "center-audit\/report"/],
  ])('%s is refused clearly', (_name, parts, words) => {
    expect(problem(parts)?.what).toMatch(words);
  });
});

describe('bytes from strangers', () => {
  const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
  it.each([
    ['Latin-1', new Uint8Array([0x7b, 0x22, 0xe9, 0x22, 0x7d]), /not written in UTF-8/],
    ['UTF-16', new Uint8Array([0xff, 0xfe, 0x7b, 0x00]), /UTF-16/],
    ['zero bytes', new Uint8Array([0x7b, 0x00, 0x7d]), /zero byte at position 1/],
    ['too much', new Uint8Array(MAX_CASE_BYTES + 1).fill(0x20), /bytes/],
  ])('%s are refused clearly', (_name, data, words) => {
    expect(() => decodeCase(data)).toThrow(words);
    expect(() => decodeCase(data)).toThrow(CaseError);
  });

  it.each<[string, () => unknown, string, RegExp]>([
    [
      'too many bytes',
      () => decodeCase(new Uint8Array(MAX_CASE_BYTES + 1).fill(0x20)),
      'a case file of at most 1048576 bytes (1 MiB)',
      /^the file is 1048577 bytes$/,
    ],
    [
      'UTF-16, little end first',
      () => decodeCase(new Uint8Array([0xff, 0xfe, 0x7b, 0])),
      'a text file in UTF-8',
      /UTF-16/,
    ],
    [
      'UTF-16, big end first',
      () => decodeCase(new Uint8Array([0xfe, 0xff, 0, 0x7b])),
      'a text file in UTF-8',
      /UTF-16/,
    ],
    ['zero bytes', () => decodeCase(new Uint8Array([0x7b, 0, 0x7d])), 'a text file in UTF-8', /position 1$/],
    [
      'Latin-1',
      () => decodeCase(new Uint8Array([0x22, 0xe9, 0x22])),
      'a text file saved as UTF-8',
      /perhaps in Latin-1/,
    ],
    [
      'one byte that begins UTF-16 and does not',
      () => decodeCase(new Uint8Array([0xff, 0x20])),
      'a text file saved as UTF-8',
      /not written in UTF-8/,
    ],
    [
      'too many letters',
      () => readCase(' '.repeat(MAX_CASE_BYTES + 1)),
      'a case of at most 1048576 bytes (1 MiB)',
      /^the text has 1048577 letters$/,
    ],
    ['a list', () => readCase('[]'), 'an object in braces', /^the text is no JSON object$/],
    ['nothing', () => readCase('null'), 'an object in braces', /no JSON object/],
    ['a number', () => readCase('3'), 'an object in braces', /no JSON object/],
    ['broken JSON', () => readCase('{"a" 1}'), 'a colon', /"1" stands after a key/],
    ['another format', () => readCase('{"format": "x"}'), '"center-audit/case"', /^the format is "x"$/],
    [
      'a format that is no text',
      () => readCase('{"format": 3}'),
      '"center-audit/case"',
      /^the format is something else$/,
    ],
    ['half a version', () => readCase('{"version": 1.5}'), 'a version up to 2', /no version of a case file/],
    [
      'a newer version',
      () => readCase('{"version": 3}'),
      'a version up to 2',
      /has version 3, which is newer/,
    ],
  ])('%s: told with what is accepted', (_name, read, accepted, what) => {
    let told: unknown;
    try {
      read();
    } catch (error) {
      told = error;
    }
    expect(told).toMatchObject({ name: 'CaseError', accepted, what: expect.stringMatching(what) });
  });

  it('of exactly the size that is allowed are read', () => {
    const text = `{"title":"x"}${' '.repeat(MAX_CASE_BYTES - 13)}`;
    expect(readCase(decodeCase(bytes(text))).book.title).toBe('x');
  });

  it('that are broken are placed by line and column', () => {
    try {
      readCase('{\n "a" 1}');
      expect.unreachable();
    } catch (error) {
      expect(String(error)).toMatch(/line 2, column 6: "1" stands after a key/);
    }
  });

  it('are read when they are UTF-8, with or without a mark', () => {
    expect(readCase(decodeCase(bytes('\ufeff{"title":"Café"}'))).book.title).toBe('Café');
  });

  it('lose what steers a terminal or turns the direction of writing', () => {
    const { book, warnings } = readCase(
      caseOf({ title: 'a\u001b[2Jb\u202ec\u0007', notes: ['x\ty\r\nz', '\u200b'], words: ' hi ' }),
    );
    expect(book.title).toBe('abc');
    expect(book.notes).toEqual(['x\ty\nz']);
    expect(book.words).toBe('hi');
    expect(warnings.map((warning) => warning.path)).toEqual(['title', 'notes.1']);
  });

  it('of any sort never make the reader fail in another way', () => {
    const junk = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.json(),
      fc.json().map((text) => `{"facts":${text}}`),
    );
    fc.assert(
      fc.property(junk, (text) => {
        problems(text);
      }),
      { numRuns: 300 },
    );
  });
});

describe('a case written', () => {
  it('reads back as exactly the same book', () => {
    fc.assert(
      fc.property(anyBook, (book) => {
        const { book: again } = readCase(writeCase(book));
        expect(again).toEqual(book);
        expect([...again.answers]).toEqual([...book.answers]);
      }),
      { numRuns: 150 },
    );
  });

  it('reads as the same answers in the other unit system', () => {
    fc.assert(
      fc.property(anyBook, (book) => {
        const other: FactBook = { ...book, units: book.units === 'metric' ? 'imperial' : 'metric' };
        expect(readCase(writeCase(other)).book.answers).toEqual(book.answers);
      }),
      { numRuns: 50 },
    );
  });

  it('does not depend on the order in which facts were told', () => {
    fc.assert(
      fc.property(anyBook, (book) => {
        const backward = { ...book, answers: new Map([...book.answers].reverse()) };
        expect(writeCase(backward)).toBe(writeCase(book));
      }),
      { numRuns: 50 },
    );
  });

  it('is the same text when read and written again', () => {
    const once = writeCase(readCase(CONTRACT_CASE).book);
    expect(writeCase(readCase(once).book)).toBe(once);
  });

  it('of an empty book has no facts and no seats', () => {
    expect(writeCase(EMPTY_BOOK)).toBe(`{
  "format": "center-audit/case",
  "version": 2,
  "units": "metric",
  "complaints": [],
  "facts": {}
}
`);
  });

  it.each([
    ['metric', 3.2, '3.20 m'],
    ['metric', 3.2045, '3.2045 m'],
    ['metric', 0.7654, '765.4 mm'],
    ['metric', 0.5125, '51.25 cm'],
    ['imperial', 2.7432, '9 ft'],
    ['imperial', 2.83464, '111.6 in'],
    ['imperial', (7.1234567 * 3048) / 10_000, '7.1234567 ft'],
    ['imperial', 3.2045678912, '3.2045678912 m'],
  ] as const)('in %s units writes %d m as short as it reads back: %s', (units, value, text) => {
    const book: FactBook = withAnswer({ ...EMPTY_BOOK, units }, 'seatDistance', { value, how: 'measured' });
    expect(writeCase(book)).toContain(`"seatDistance": "${text}"\n`);
    expect(readCase(writeCase(book)).book.answers.get('seatDistance')).toEqual({ value, how: 'measured' });
  });

  it('keeps feet and inches as they were told, one fact a line', () => {
    const { book, expect: expected } = readCase(CONTRACT_CASE);
    expect(writeCase(book, expected ? { expect: expected } : {})).toBe(`{
  "format": "center-audit/case",
  "version": 2,
  "units": "imperial",
  "title": "short name",
  "complaints": ["voice-unclear-off-side"],
  "facts": {
    "centerLayout": "mid-tweeter-mid",
    "centerCrossover": { "how": "unknown" },
    "seatDistance": "9 ft"
  },
  "seats": [
    { "name": "middle", "xM": 0, "yM": 2.7432, "row": 1, "main": true },
    { "name": "right end", "xM": 1.0668, "yM": 2.7432, "row": 1, "earHeightM": 0.97 }
  ],
  "expect": { "top": ["driver-layout"], "ruledOut": ["level"] }
}
`);
  });
});

describe('the JSON Schema', () => {
  const schema = caseJsonSchema() as {
    $schema: string;
    additionalProperties: boolean;
    properties: Record<string, { properties?: Record<string, { description?: string }> }>;
  };

  it('is draft 2020-12, strict, and describes every fact with its question', () => {
    expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
    expect(schema.additionalProperties).toBe(false);
    const described = schema.properties.facts?.properties ?? {};
    expect(Object.keys(described)).toEqual(FACT_IDS);
    for (const id of FACT_IDS) expect(described[id]?.description).toContain(factSpec(id).ask);
  });

  it('says in words what a choice, a number and a file may be, and what the whole is', () => {
    expect(schema).toMatchObject({
      title: 'center-audit case',
      description: 'One home audio system and the complaint about its center loudspeaker',
    });
    const words = (id: string) => schema.properties.facts?.properties?.[id]?.description ?? '';
    expect(words('centerLayout')).toContain('mid-tweeter-mid: ');
    expect(words('centerLayout')).toContain('; coaxial: ');
    expect(words('centerLayout')).not.toContain('for example');
    expect(words('seatDistance')).toMatch(
      /a length in m, cm, or ft and in, from 50 cm to 30.00 m; for example 3.00 m; a number alone takes the unit system of the case$/,
    );
    expect(words('responseLeft')).toMatch(
      /the path of a text file in the folder of the case; for example center.txt$/,
    );
    expect(schema.properties.units).toMatchObject({ description: expect.stringContaining('without a unit') });
  });

  it('holds nothing that is not JSON', () => {
    expect(JSON.parse(JSON.stringify(schema))).toEqual(schema);
  });
});
