/**
 * The kinds of value a calculator takes, each with how it is checked and how it is read from the command line.
 * One table of inputs serves the check, the help and the reference page.
 */
import { type Json, JsonFault, parseJson } from '../../lib/json-text.js';
import { quoted } from '../../lib/sanitize.js';

/** What is wrong with a value; where it stands is added by the caller. */
export interface Refused {
  readonly what: string;
  readonly accepted: string;
  readonly example: string;
  /** Place inside the value, for example `.left` or `[2]`. */
  readonly at?: string;
}
export type Checked<T> = { readonly value: T } | { readonly refused: readonly Refused[] };

export interface Input<T> {
  /** SI unit, empty for a plain number, a word or a list of objects. */
  readonly unit: string;
  readonly meaning: string;
  /** What is accepted, in words. */
  readonly accepted: string;
  /** A good value as it is written on the command line. */
  readonly example: string;
  /** Used when nothing is given; absent where there is no usual value. */
  readonly usual?: number | string | boolean;
  /** False where the value may be left out. */
  readonly required: boolean;
  readonly value: (given: unknown) => Checked<T>;
  /** A command-line text as the value it stands for; a text that is none stays a text and is refused above. */
  readonly text: (text: string) => unknown;
  /** Names inside the value that dotted keys may use (`entered.left`). */
  readonly parts?: readonly string[];
}

/** Longest list of frequencies; a bound against slips and abuse, ours. */
const LONGEST_LIST = 10_000;
/** Deepest nesting: an object, a list of drivers, a driver, a list of filters, a filter; and room to spare. */
export const JSON_LIMITS = { depth: 8, entries: LONGEST_LIST } as const;
const POINT_NUMBER = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?$/;

const numberText = (text: string): unknown => (POINT_NUMBER.test(text) ? Number(text) : text);

/** JSON on the command line. A list of plain numbers may leave out the brackets. */
function jsonText(text: string): unknown {
  if (/^[[{]/.test(text)) {
    try {
      return parseJson(text, JSON_LIMITS).value;
    } catch (error) {
      if (error instanceof JsonFault) return text;
      throw error;
    }
  }
  const parts = text.split(',').map((part) => part.trim());
  return parts.every((part) => POINT_NUMBER.test(part)) ? parts.map(Number) : text;
}

/** How a refused value is quoted back. */
export function shown(given: unknown): string {
  if (typeof given === 'string') return quoted(given);
  if (Array.isArray(given)) return `a list of ${given.length}`;
  return typeof given === 'object' && given !== null ? 'an object' : String(given);
}

type Range = {
  readonly unit?: string;
  /** Smallest and largest accepted value. */
  readonly min?: number;
  readonly max?: number;
  /** Accepted only above this value. */
  readonly above?: number;
};

export function rangeText({ min, max, above }: Range): string {
  if (above !== undefined) return `a number above ${above}${max === undefined ? '' : `, up to ${max}`}`;
  if (min !== undefined)
    return max === undefined ? `a number ${min} or more` : `a number from ${min} to ${max}`;
  return max === undefined ? 'a number' : `a number up to ${max}`;
}

function refuseNumber(given: unknown, range: Range): string | undefined {
  if (typeof given !== 'number') return `${shown(given)} is no number`;
  if (!Number.isFinite(given)) return 'the number is not finite';
  const { min = Number.NEGATIVE_INFINITY, max = Number.POSITIVE_INFINITY, above } = range;
  if (above !== undefined && given <= above) return `${given} is not above ${above}`;
  if (given < min) return `${given} is below ${min}`;
  return given > max ? `${given} is above ${max}` : undefined;
}

type Refuse = (what: string, at?: string) => Refused;
/** What one kind of value adds to the words it is told in. */
interface Kind<T> extends Pick<Input<T>, 'text' | 'parts'> {
  readonly value: (given: unknown, refuse: Refuse) => Checked<T>;
}

/** A required input: what it means, a good value as it is typed, what is accepted, and one way to refuse a value. */
function needed<T>(
  meaning: string,
  example: string,
  accepted: string,
  { value, ...kind }: Kind<T>,
  unit = '',
): Input<T> {
  const refuse: Refuse = (what, at) => ({
    what,
    accepted,
    example,
    ...(at === undefined ? {} : { at }),
  });
  return {
    unit,
    meaning,
    accepted,
    example,
    required: true,
    ...kind,
    value: (given) => value(given, refuse),
  };
}

const asWritten = (text: string): unknown => text;

/** Required number. */
export const number = (meaning: string, example: string, range: Range): Input<number> =>
  needed(
    meaning,
    example,
    rangeText(range),
    {
      text: numberText,
      value: (given, refuse) => {
        const what = refuseNumber(given, range);
        return what === undefined ? { value: given as number } : { refused: [refuse(what)] };
      },
    },
    range.unit,
  );

/** One of a few words. */
export const choice = <const T extends string>(
  words: readonly T[],
  meaning: string,
  example: string,
): Input<T> =>
  needed(meaning, example, words.join(', '), {
    text: asWritten,
    value: (given, refuse) =>
      words.includes(given as T)
        ? { value: given as T }
        : { refused: [refuse(`${shown(given)} is not known`)] },
  });

export const flag = (meaning: string, example: string): Input<boolean> =>
  needed(meaning, example, 'true or false', {
    text: (text) => (text === 'true' ? true : text === 'false' ? false : text),
    value: (given, refuse) =>
      typeof given === 'boolean' ? { value: given } : { refused: [refuse(`${shown(given)} is neither`)] },
  });

/** Path of a file, as given. */
export const path = (meaning: string, example: string): Input<string> =>
  needed(meaning, example, 'the path of a text file', {
    text: asWritten,
    value: (given, refuse) =>
      typeof given === 'string' && given.trim() !== '' && !given.includes('\0')
        ? { value: given }
        : { refused: [refuse(`${shown(given)} is no path`)] },
  });

/** A list of numbers, of one of the `lengths` where these are stated. */
export function numbers(
  meaning: string,
  example: string,
  range: Range & { lengths?: readonly number[] },
): Input<readonly number[]> {
  const { lengths, unit } = range;
  const count = lengths === undefined ? '' : `${lengths.join(' or ')} numbers: `;
  const value: Kind<readonly number[]>['value'] = (given, refuse) => {
    if (!Array.isArray(given)) return { refused: [refuse(`${shown(given)} is no list of numbers`)] };
    if (lengths !== undefined ? !lengths.includes(given.length) : given.length === 0)
      return { refused: [refuse(`the list has ${given.length} numbers`)] };
    if (given.length > LONGEST_LIST) return { refused: [refuse(`the list is longer than ${LONGEST_LIST}`)] };
    const refused = given.flatMap((item, i) => {
      const what = refuseNumber(item, range);
      return what === undefined ? [] : [refuse(what, `[${i}]`)];
    });
    return refused.length > 0 ? { refused } : { value: given as number[] };
  };
  return needed(
    meaning,
    example,
    `a list, ${count}each ${rangeText(range)}`,
    { text: jsonText, value },
    unit,
  );
}

export type Channels = 'left' | 'center' | 'right';
const CHANNELS: readonly Channels[] = ['left', 'center', 'right'];

/** One number for each of left, center and right; `partial` ones may leave some out. */
export function channels(
  meaning: string,
  example: string,
  range: Range & { partial: boolean },
): Input<Partial<Record<Channels, number>>> {
  const { partial, unit } = range;
  const value: Kind<Partial<Record<Channels, number>>>['value'] = (given, refuse) => {
    if (!isObject(given)) return { refused: [refuse(`${shown(given)} is no object`)] };
    const known: readonly string[] = CHANNELS;
    const strangers = Object.keys(given).filter((key) => !known.includes(key));
    const refused = [
      ...strangers.map((key) => refuse(`${quoted(key)} is not known`)),
      ...CHANNELS.flatMap((key) => {
        const item = given[key] ?? undefined;
        if (item === undefined) return partial ? [] : [refuse('is missing', `.${key}`)];
        const what = refuseNumber(item, range);
        return what === undefined ? [] : [refuse(what, `.${key}`)];
      }),
    ];
    if (refused.length > 0) return { refused };
    const entries = CHANNELS.flatMap((key) => (typeof given[key] === 'number' ? [[key, given[key]]] : []));
    return { value: Object.fromEntries(entries) as Partial<Record<Channels, number>> };
  };
  const accepted = `an object with ${partial ? 'any of ' : ''}left, center and right, each ${rangeText(range)}`;
  return needed(meaning, example, accepted, { text: jsonText, parts: CHANNELS, value }, unit);
}

export function isObject(given: unknown): given is { [key: string]: Json } {
  return typeof given === 'object' && given !== null && !Array.isArray(given);
}

/** The same input with a usual value for when nothing is given. */
export function usually<T extends number | string | boolean>(usual: T, input: Input<T>): Input<T> {
  return { ...input, usual, required: false };
}

/** The same input, which may be left out. */
export function optional<T>(input: Input<T>): Input<T | undefined> {
  return { ...input, required: false };
}

/** A value read from JSON, for kinds that are defined elsewhere. */
export const textOfJson = jsonText;
