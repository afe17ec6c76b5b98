/**
 * A strict JSON reader for texts from strangers. It differs from the built-in one in what it tells and refuses:
 * faults carry line and column, a key written twice is refused instead of silently lost, keys that reach into
 * an object's prototype are refused, nesting is limited before memory is spent, and every value remembers
 * where it stood, so that later faults can point at a line.
 */

export interface Place {
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

const REFUSED_KEYS = new Set(['__proto__', 'constructor', 'prototype']);
const ESCAPED: Readonly<Record<string, string>> = {
  '"': '"',
  '\\': '\\',
  '/': '/',
  b: '\b',
  f: '\f',
  n: '\n',
  r: '\r',
  t: '\t',
};
const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const HEX4 = /[0-9a-fA-F]{4}/y;

function startsOfLines(text: string): number[] {
  const starts = [0];
  for (let at = text.indexOf('\n'); at !== -1; at = text.indexOf('\n', at + 1)) starts.push(at + 1);
  return starts;
}

export interface JsonLimits {
  /** How deep lists and objects may be nested. */
  readonly depth: number;
  /** How many entries one list or object may hold. */
  readonly entries: number;
}

/** Reads JSON. Throws JsonFault. Time and memory grow with the length of the text and nothing else. */
export function parseJson(text: string, { depth: maxDepth, entries: maxEntries }: JsonLimits): JsonText {
  let at = 0;
  const starts = new Map<string, number>();

  let lineStarts: readonly number[] | undefined;
  const placeAt = (index: number): Place => {
    lineStarts ??= startsOfLines(text);
    let low = 0;
    let high = lineStarts.length - 1;
    while (low < high) {
      const middle = Math.ceil((low + high) / 2);
      if ((lineStarts[middle] ?? 0) <= index) low = middle;
      else high = middle - 1;
    }
    return { line: low + 1, column: index - (lineStarts[low] ?? 0) + 1 };
  };
  const fail = (what: string, accepted: string, index = at): never => {
    throw new JsonFault(what, placeAt(index), accepted);
  };
  const skipSpace = (): void => {
    while (at < text.length && ' \t\r\n'.includes(text[at] as string)) at++;
  };
  const found = (): string =>
    at >= text.length
      ? 'the text ends'
      : `${JSON.stringify(String.fromCodePoint(text.codePointAt(at) ?? 0))} stands`;

  const readString = (): string => {
    const start = at;
    at++;
    let out = '';
    for (;;) {
      const letter = text[at];
      if (letter === undefined) return fail('a text begins here and does not end', 'a closing "', start);
      if (letter === '"') break;
      if (letter < ' ')
        return fail('a line break or control character stands inside a text', '\\n for a line break');
      at++;
      if (letter !== '\\') {
        out += letter;
        continue;
      }
      const kind = text[at] ?? '';
      if (kind === 'u') {
        HEX4.lastIndex = at + 1;
        const code = HEX4.exec(text)?.[0];
        if (code === undefined)
          return fail('\\u is not followed by four hexadecimal digits', 'for example \\u00e9');
        out += String.fromCharCode(Number.parseInt(code, 16));
        at += 5;
      } else {
        const plain = ESCAPED[kind];
        if (plain === undefined) return fail(`\\${kind} is no JSON escape`, '\\\\ for a backslash');
        out += plain;
        at++;
      }
    }
    at++;
    return out;
  };

  const readNumber = (): number => {
    NUMBER.lastIndex = at;
    const match = NUMBER.exec(text)?.[0];
    if (match === undefined) return fail(`${found()} where a number should be`, 'a number such as 3.2');
    const after = text[at + match.length] ?? '';
    if (/[\w.+-]/.test(after))
      return fail('this is no JSON number', 'a number such as 3.2, or a text in quotes');
    const value = Number(match);
    if (!Number.isFinite(value)) return fail('this number is too large', 'a finite number');
    at += match.length;
    return value;
  };

  const checkEntries = (count: number): void => {
    if (count >= maxEntries) {
      fail(`this is more than ${maxEntries} entries in one list or object`, `at most ${maxEntries}`);
    }
  };

  const readList = (depth: number, path: string): Json[] => {
    const start = at;
    at++;
    const list: Json[] = [];
    skipSpace();
    if (text[at] === ']') {
      at++;
      return list;
    }
    for (;;) {
      checkEntries(list.length);
      list.push(readValue(depth + 1, path === '' ? String(list.length) : `${path}.${list.length}`));
      skipSpace();
      if (text[at] === ']') break;
      if (text[at] !== ',') {
        if (at >= text.length)
          return fail('the text ends inside a list that begins at this place', ']', start);
        return fail(`${found()} inside a list`, 'a comma or ]');
      }
      at++;
    }
    at++;
    return list;
  };

  const readObject = (depth: number, path: string): { [key: string]: Json } => {
    const start = at;
    at++;
    const object: { [key: string]: Json } = {};
    let count = 0;
    skipSpace();
    if (text[at] === '}') {
      at++;
      return object;
    }
    for (;;) {
      checkEntries(count++);
      skipSpace();
      if (text[at] !== '"') {
        if (at >= text.length)
          return fail('the text ends inside an object that begins at this place', '}', start);
        return fail(
          `${found()} where a key should be`,
          text[at] === '}' ? 'no comma before }' : 'a key in double quotes',
        );
      }
      const keyStart = at;
      const key = readString();
      if (REFUSED_KEYS.has(key))
        return fail(`the key "${key}" is not accepted`, 'the keys of a case file', keyStart);
      if (Object.hasOwn(object, key))
        return fail(
          `the key ${JSON.stringify(key.slice(0, 60))} stands here a second time`,
          'each key once',
          keyStart,
        );
      skipSpace();
      if (text[at] !== ':') return fail(`${found()} after a key`, 'a colon');
      at++;
      object[key] = readValue(depth + 1, path === '' ? key : `${path}.${key}`);
      skipSpace();
      if (text[at] === '}') break;
      if (text[at] !== ',') {
        if (at >= text.length)
          return fail('the text ends inside an object that begins at this place', '}', start);
        return fail(`${found()} inside an object`, 'a comma or }');
      }
      at++;
    }
    at++;
    return object;
  };

  const readValue = (depth: number, path: string): Json => {
    if (depth > maxDepth)
      return fail(`lists and objects are nested deeper than ${maxDepth}`, `at most ${maxDepth} levels`);
    skipSpace();
    starts.set(path, at);
    const letter = text[at];
    if (letter === '{') return readObject(depth, path);
    if (letter === '[') return readList(depth, path);
    if (letter === '"') return readString();
    for (const [word, value] of [
      ['true', true],
      ['false', false],
      ['null', null],
    ] as const) {
      if (text.startsWith(word, at) && !/\w/.test(text[at + word.length] ?? '')) {
        at += word.length;
        return value;
      }
    }
    if (letter !== undefined && (letter === '-' || (letter >= '0' && letter <= '9'))) return readNumber();
    return fail(
      `${found()} where a value should be`,
      'a value: a text in double quotes, a number, an object or a list',
    );
  };

  skipSpace();
  if (at >= text.length) return fail('the file is empty', 'a JSON object');
  const value = readValue(0, '');
  skipSpace();
  if (at < text.length) return fail(`${found()} after the end of the JSON text`, 'nothing more');
  return {
    value,
    placeOf: (path) => {
      const start = starts.get(path);
      return start === undefined ? undefined : placeAt(start);
    },
  };
}
