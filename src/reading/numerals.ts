/** Numbers as they are said: digits, `ten`, `sixty-five`, `two and a half`, `eleven point two`, `half a`. */
import type { Token } from './tokens.js';

export interface Spelled {
  readonly value: number;
  /** The token behind it. */
  readonly next: number;
  readonly digits: boolean;
  /** "A foot", "half a meter": a number only where a unit follows. */
  readonly needsUnit: boolean;
  readonly approximate: boolean;
}

const numbered = (words: string, from: number, step: number): [string, number][] =>
  words.split(' ').map((word, index) => [word, from + step * index]);

const SMALL: ReadonlyMap<string, number> = new Map([
  ...numbered('one two three four five six seven eight nine ten eleven twelve', 1, 1),
  ...numbered('thirteen fourteen fifteen sixteen seventeen eighteen nineteen', 13, 1),
  ['zero', 0],
]);
const TENS: ReadonlyMap<string, number> = new Map(
  numbered('twenty thirty forty fifty sixty seventy eighty ninety', 20, 10),
);

export function spelledAt(tokens: readonly Token[], at: number): Spelled | undefined {
  const token = tokens[at];
  if (token === undefined) return undefined;
  if (token.kind === 'number') {
    if (token.number === undefined) return undefined;
    return { digits: true, needsUnit: false, approximate: false, ...addHalf(tokens, at + 1, token.number) };
  }
  if (token.kind !== 'word') return undefined;
  return articleAt(tokens, at) ?? wordsAt(tokens, at);
}

const addHalf = (tokens: readonly Token[], at: number, whole: number): { value: number; next: number } => {
  const { part, next } = halves(tokens, at);
  return { value: whole + part, next };
};

/** `and a half`, `and a quarter`, `point two` behind a number. */
function halves(tokens: readonly Token[], at: number): { part: number; next: number } {
  const raw = (ahead: number): string => tokens[at + ahead]?.raw ?? '';
  if (raw(0) === 'and' && raw(1) === 'a') {
    if (raw(2) === 'half') return { part: 0.5, next: at + 3 };
    if (raw(2) === 'quarter') return { part: 0.25, next: at + 3 };
  }
  if (raw(0) === 'point') {
    const tenth = SMALL.get(raw(1));
    if (tenth !== undefined && tenth < 10) return { part: tenth / 10, next: at + 2 };
  }
  return { part: 0, next: at };
}

function wordsAt(tokens: readonly Token[], at: number): Spelled | undefined {
  const plain = { digits: false, needsUnit: false, approximate: false };
  const raw = tokens[at]?.raw ?? '';
  const tens = TENS.get(raw);
  let value = tens ?? SMALL.get(raw);
  if (value === undefined) return undefined;
  let next = at + 1;
  if (tens !== undefined) {
    const dash = tokens[next]?.text === '-' ? 1 : 0;
    const ones = SMALL.get(tokens[next + dash]?.raw ?? '');
    if (ones !== undefined && ones > 0 && ones < 10) {
      value += ones;
      next += dash + 1;
    }
  }
  if (tokens[next]?.raw === 'hundred') {
    value *= 100;
    next++;
  }
  return { ...plain, ...addHalf(tokens, next, value) };
}

/** `a foot`, `half a meter`, `a foot and a half` (the half is added by its unit), `a couple of feet`, `a hundred`. */
function articleAt(tokens: readonly Token[], at: number): Spelled | undefined {
  const raw = (ahead: number): string => tokens[at + ahead]?.raw ?? '';
  const unit = (value: number, length: number, approximate = false): Spelled => ({
    value,
    next: at + length,
    digits: false,
    needsUnit: true,
    approximate,
  });
  if (raw(0) === 'half') return unit(0.5, raw(1) === 'a' || raw(1) === 'an' ? 2 : 1);
  if (raw(0) !== 'a' && raw(0) !== 'an') return undefined;
  if (raw(1) === 'half') return unit(0.5, 2);
  if (raw(1) === 'good' || raw(1) === 'full') {
    const rest = spelledAt(tokens, at + 2);
    return rest && { ...rest, approximate: true };
  }
  if (raw(1) === 'couple') return unit(2, raw(2) === 'of' ? 3 : 2, true);
  if (raw(1) === 'hundred') return { ...unit(100, 2), needsUnit: false };
  const isAndHalf = raw(2) === 'and' && raw(3) === 'a' && raw(4) === 'half';
  return unit(isAndHalf ? 1.5 : 1, 1);
}
