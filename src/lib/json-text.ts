/**
 * Strict JSON for texts from strangers. The reading is a library's; what is added here is what it would let pass or
 * leave untold: words for a fault, keys written twice, keys that reach into an object's prototype, limits on nesting
 * and size, and where every value stood, so that later faults can point at a line.
 */
import { printParseErrorCode, visit } from 'jsonc-parser';
import { plainText, quoted } from './sanitize.js';

interface Place {
  readonly line: number;
  readonly column: number;
}

export type Json = null | boolean | number | string | Json[] | { [key: string]: Json };

export interface JsonText {
  readonly value: Json;
  /** Where a value stands, by its path (`facts.seatDistance`, `seats.1.xM`). */
  readonly placeOf: (path: string) => Place | undefined;
}

/** A fault of the text itself: what, where, and what was expected there. */
export class JsonFault extends Error {
  constructor(
    readonly what: string,
    readonly place: Place,
    readonly accepted: string,
  ) {
    super(`line ${place.line}, column ${place.column}: ${what}`);
    this.name = 'JsonFault';
  }
}

interface JsonLimits {
  /** How deep lists and objects may be nested. */
  readonly depth: number;
  /** How many entries one list or object may hold. */
  readonly entries: number;
}

const REFUSED_KEYS = new Set(['__proto__', 'constructor', 'prototype']);

/** What may come next: where a fault stands, and what would be right there. */
const EXPECTED = {
  value: {
    where: 'where a value should be',
    accepted: 'a value: a text in double quotes, a number, an object or a list',
  },
  key: { where: 'where a key should be', accepted: 'a key in double quotes' },
  colon: { where: 'after a key', accepted: 'a colon' },
  inList: { where: 'inside a list', accepted: 'a comma or ]' },
  inObject: { where: 'inside an object', accepted: 'a comma or }' },
  end: { where: 'after the end of the JSON text', accepted: 'nothing more' },
} as const;

/** A list or object that is being read. */
interface Open {
  readonly content: Json[] | { [key: string]: Json };
  readonly path: string;
  readonly place: Place;
  /** Key of the value that comes next, in an object. */
  key: string;
  entries: number;
}

/** Reads JSON. Throws JsonFault. Time and memory grow with the length of the text and nothing else. */
export function parseJson(text: string, limits: JsonLimits): JsonText {
  const places = new Map<string, Place>();
  const open: Open[] = [];
  let whole: Json = null;
  let expected: keyof typeof EXPECTED = 'value';

  const counted = (list: Open, place: Place): void => {
    list.entries += 1;
    if (list.entries <= limits.entries) return;
    const what = `this is more than ${limits.entries} entries in one list or object`;
    throw new JsonFault(what, place, `at most ${limits.entries}`);
  };
  /** Puts a value where it belongs and gives its path. */
  const put = (value: Json, place: Place): string => {
    const around = open.at(-1);
    let path = '';
    if (around === undefined) whole = value;
    else {
      const { content } = around;
      const step = Array.isArray(content) ? String(content.length) : around.key;
      path = around.path === '' ? step : `${around.path}.${step}`;
      if (Array.isArray(content)) {
        counted(around, place);
        content.push(value);
      } else content[around.key] = value;
    }
    places.set(path, place);
    return path;
  };
  const begin = (content: Open['content'], place: Place): void => {
    if (open.length > limits.depth) {
      const what = `lists and objects are nested deeper than ${limits.depth}`;
      throw new JsonFault(what, place, `at most ${limits.depth} levels`);
    }
    open.push({ content, path: put(content, place), place, key: '', entries: 0 });
    expected = Array.isArray(content) ? 'value' : 'key';
  };
  const ended = (): void => {
    const around = open.at(-1);
    expected = around === undefined ? 'end' : Array.isArray(around.content) ? 'inList' : 'inObject';
  };
  const close = (offset: number, _length: number, line: number, character: number): void => {
    if (offset >= text.length) throw faultBetween(text, offset, at(line, character), expected, open.at(-1));
    open.pop();
    ended();
  };
  const property = (key: string, place: Place): void => {
    const around = open.at(-1) as Open;
    if (REFUSED_KEYS.has(key))
      throw new JsonFault(`the key "${key}" is not accepted`, place, 'the keys of a case file');
    if (Object.hasOwn(around.content, key)) {
      throw new JsonFault(`the key ${quoted(key)} stands here a second time`, place, 'each key once');
    }
    counted(around, place);
    around.key = key;
    expected = 'colon';
  };
  const literal = (value: Json, place: Place): void => {
    if (typeof value === 'number' && !Number.isFinite(value))
      throw new JsonFault('this number is too large', place, 'a finite number');
    put(value, place);
    ended();
  };

  const at = (line: number, character: number): Place => ({ line: line + 1, column: character + 1 });
  visit(
    text,
    {
      onObjectBegin: (_offset, _length, line, character) => begin({}, at(line, character)),
      onArrayBegin: (_offset, _length, line, character) => begin([], at(line, character)),
      onObjectEnd: close,
      onArrayEnd: close,
      onObjectProperty: (key, _offset, _length, line, character) => property(key, at(line, character)),
      onLiteralValue: (value, _offset, _length, line, character) => literal(value, at(line, character)),
      onSeparator: (separator) => {
        expected = separator === ':' || Array.isArray(open.at(-1)?.content) ? 'value' : 'key';
      },
      onError: (code, offset, length, line, character) => {
        throw (
          faultInside(printParseErrorCode(code), text, offset + length, at(line, character)) ??
          faultBetween(text, offset, at(line, character), expected, open.at(-1))
        );
      },
    },
    { disallowComments: true, allowTrailingComma: false },
  );
  return { value: whole, placeOf: (path) => places.get(path) };
}

/** What is wrong inside a text or number, and what would be right there. */
const INSIDE: Readonly<Record<string, readonly [what: string, accepted: string]>> = {
  InvalidCharacter: [
    'a control character stands in the text that begins here',
    '\\n for a line break, \\t for a tab',
  ],
  InvalidEscapeCharacter: ['a \\ in the text that begins here is no JSON escape', '\\\\ for a backslash'],
  InvalidUnicode: ['a \\u in the text that begins here lacks four hexadecimal digits', 'for example \\u00e9'],
  UnexpectedEndOfNumber: ['this is no JSON number', 'a number such as 3.2, or a text in quotes'],
};
const LINE_BREAK = ['a line break stands in the text that begins here', '\\n for a line break'] as const;
const NO_END = ['a text begins here and does not end', 'a closing "'] as const;

/** The fault inside a text or number that begins at this place and was read up to `end`, if it is one. */
function faultInside(code: string, text: string, end: number, place: Place): JsonFault | undefined {
  const isCutOff = code === 'UnexpectedEndOfString';
  const told = isCutOff ? (end < text.length ? LINE_BREAK : NO_END) : INSIDE[code];
  return told && new JsonFault(told[0], place, told[1]);
}

/** A letter in quotes; one that steers a display or cannot be seen by its number. */
function shownLetter(letter: number): string {
  const text = String.fromCodePoint(letter);
  if (text === '\n' || text === '\t') return JSON.stringify(text);
  return plainText(`.${text}.`) === `.${text}.`
    ? JSON.stringify(text)
    : `U+${letter.toString(16).toUpperCase().padStart(4, '0')}`;
}

/** What stands where something else should. */
function faultBetween(
  text: string,
  offset: number,
  place: Place,
  expected: keyof typeof EXPECTED,
  around: Open | undefined,
): JsonFault {
  const { where, accepted } = EXPECTED[expected];
  const letter = text.codePointAt(offset);
  if (letter !== undefined) {
    const what = `${shownLetter(letter)} stands ${where}`;
    return new JsonFault(
      what,
      place,
      expected === 'key' && text[offset] === '}' ? 'no comma before }' : accepted,
    );
  }
  if (text.trim() === '') return new JsonFault('the file is empty', place, 'a JSON object');
  if (around === undefined || expected === 'value' || expected === 'colon')
    return new JsonFault(`the text ends ${where}`, place, accepted);
  const [kind, mark] = Array.isArray(around.content) ? ['a list', ']'] : ['an object', '}'];
  return new JsonFault(`the text ends inside ${kind} that begins at this place`, around.place, mark);
}
