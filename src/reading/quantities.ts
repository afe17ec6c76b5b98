/** Numbers and their units found among the tokens: digits and words, feet and inches, ranges, W x H x D. */
import type { UnitWord } from '../facts/unit-words.js';
import { bodyLengthAt } from './body-lengths.js';
import { type Spelled, spelledAt } from './numerals.js';
import type { Token } from './tokens.js';
import { MONEY, RATIO, unitAt } from './units.js';

/** What a number is of. `none`: no unit was written. `other`: money, power, age, an area: nothing we read. */
type Dimension = UnitWord['dimension'] | 'none' | 'other';

export interface Quantity {
  readonly dimension: Dimension;
  /** In the SI unit of its dimension; as written where there is no unit. */
  readonly value: number;
  readonly range?: readonly [number, number];
  /** "About", "-ish", a range. */
  readonly approximate: boolean;
  /** Written with plus or minus. */
  readonly signed: boolean;
  /** The parts of W x H x D, in the same unit; the value is the first. */
  readonly sides?: readonly number[];
  /** What one of the written unit is in the SI unit. */
  readonly scale?: number;
  /** A foot, inch or yard was written, or a metric length. */
  readonly system?: 'imperial' | 'metric';
}

/** A token, or several that make one quantity. */
export interface Part extends Token {
  readonly quantity?: Quantity;
}

const DEVICE_BEFORE = new Set(['with', 'using', 'by', 'on']);
const READING = new Set(['says', 'reads', 'shows']);
const ABOUT = new Set(
  'about around approximately approx roughly circa ca maybe some say like nearly almost ~ perhaps probably'.split(
    ' ',
  ),
);

/** Names with a number in them: RT60, T30, f3; C50, but no "C 75" of a list of levels. */
const NUMBERED = new Set(['rt', 't', 'f', 'edt', 'c']);
const CLARITIES = new Set(['50', '80']);

export function partsOf(tokens: readonly Token[]): Part[] {
  const parts: Part[] = [];
  let at = 0;
  while (at < tokens.length) {
    const token = tokens[at] as Token;
    const after = tokens[at + 1];
    if (
      NUMBERED.has(token.raw) &&
      after?.kind === 'number' &&
      !after.spaced &&
      (token.raw !== 'c' || CLARITIES.has(after.raw))
    ) {
      const raw = `${token.raw}${after.raw}`;
      parts.push({ ...token, text: raw, raw, end: after.end });
      at += 2;
      continue;
    }
    const found = quantityAt(tokens, at);
    if (found === undefined) {
      parts.push(token);
      at++;
      continue;
    }
    const last = tokens[found.next - 1] as Token;
    const numeral = tokens.slice(at, found.next).find(({ kind }) => kind !== 'mark') ?? token;
    parts.push({
      kind: 'number',
      text: numeral.text,
      raw: numeral.raw,
      start: token.start,
      end: last.end,
      spaced: token.spaced,
      number: found.written,
      quantity: found.quantity,
    });
    at = found.next;
  }
  return parts;
}

interface Found {
  readonly quantity: Quantity;
  readonly next: number;
  /** The number as written, for counts. */
  readonly written: number;
}

function quantityAt(tokens: readonly Token[], start: number): Found | undefined {
  const body = bodyLengthAt(tokens, start);
  if (body) {
    const { count, meters, next } = body;
    const length = { dimension: 'length', value: count * meters, scale: meters } as const;
    return { quantity: { ...length, approximate: true, signed: false }, next, written: count };
  }
  let at = start;
  const sign = signAt(tokens, at);
  if (sign !== 0) at++;
  const money = MONEY.has(tokens[at]?.text ?? '');
  if (money) at++;
  const first = spelledAt(tokens, at);
  if (first === undefined) return undefined;
  // "Matched with a meter": a device.
  if (first.needsUnit && DEVICE_BEFORE.has(tokens[start - 1]?.raw ?? '')) return undefined;
  const other = (next: number): Found => ({
    quantity: { dimension: 'other', value: first.value, approximate: false, signed: false },
    next,
    written: first.value,
  });
  if (money) return other(first.next);
  if (isGlued(tokens, first.next, ':') && spelledAt(tokens, first.next + 1)) return other(first.next + 2);
  const sides = sidesAt(tokens, first);
  const pair = sides ?? rangeAt(tokens, first, tokens[at - 1]?.text === 'between') ?? single(tokens, first);
  if (pair.unit === 'other') return first.needsUnit ? undefined : other(pair.next);
  // "Says ten", "eleven point two" are numbers; "one in the middle" is none.
  const isWord =
    !first.digits &&
    sign === 0 &&
    first.value < 20 &&
    Number.isInteger(first.value) &&
    !READING.has(tokens[start - 1]?.raw ?? '');
  if (pair.unit === undefined && (first.needsUnit || isWord)) return undefined;
  const scale = pair.unit === undefined ? 1 : pair.unit.over / pair.unit.under;
  const signed = sign === 0 ? 1 : sign;
  let next = pair.next;
  let value = pair.value * scale;
  const rest = pair.range || sides ? undefined : secondPart(tokens, pair, first);
  if (rest) {
    value += rest.si;
    next = rest.next;
  }
  const after = afterAbout(tokens, next);
  const approximate =
    first.approximate ||
    tokens[first.next]?.raw === 'ish' ||
    pair.range !== undefined ||
    after > next ||
    isAbout(tokens, start);
  return {
    quantity: {
      dimension: pair.unit?.dimension ?? 'none',
      value: signed * value,
      approximate,
      signed: sign !== 0,
      ...(pair.unit ? { scale } : {}),
      ...(pair.range ? { range: [pair.range[0] * scale, pair.range[1] * scale] as const } : {}),
      ...(sides?.sides.length ? { sides: sides.sides.map((side) => side * scale) } : {}),
      ...(pair.unit?.dimension === 'length' ? { system: isImperial(pair.unit) ? 'imperial' : 'metric' } : {}),
    },
    next: after,
    written: signed * pair.value,
  };
}

const isImperial = (unit: UnitWord): boolean => unit.under === 10_000;

/** +1 or -1 where a sign or the word for it stands right before a number, else 0. */
function signAt(tokens: readonly Token[], at: number): -1 | 0 | 1 {
  const token = tokens[at];
  const next = tokens[at + 1];
  if (token === undefined || next === undefined) return 0;
  if (token.raw === 'minus' || token.raw === 'plus')
    return spelledAt(tokens, at + 1) ? (token.raw === 'minus' ? -1 : 1) : 0;
  if (token.text !== '+' && token.text !== '-') return 0;
  const before = tokens[at - 1];
  const free =
    token.spaced || before === undefined || (before.kind === 'mark' && '(=:@/'.includes(before.text));
  return free && !next.spaced && next.kind === 'number' ? (token.text === '-' ? -1 : 1) : 0;
}

interface Measured {
  readonly value: number;
  readonly unit: UnitWord | 'other' | undefined;
  readonly next: number;
  readonly range?: readonly [number, number];
}

function single(tokens: readonly Token[], first: Spelled): Measured {
  // "5 out of 10", "3 of 7": a part of a scale.
  const isOut = tokens[first.next]?.raw === 'out';
  const whole =
    tokens[first.next + (isOut ? 1 : 0)]?.raw === 'of'
      ? spelledAt(tokens, first.next + (isOut ? 2 : 1))
      : undefined;
  if (whole?.digits && first.digits && whole.value >= first.value && first.value > 0)
    return { value: first.value / whole.value, unit: RATIO, next: whole.next };
  const unit = unitAt(tokens, first.next, first);
  return { value: first.value, unit: unit?.unit, next: unit?.next ?? first.next };
}

const SIDE_NAMES = new Set(['w', 'h', 'd', 'wide', 'high', 'deep']);

const MANY = new Set([2, 3, 4]);
const CONES = new Set('cone cones woofer woofers mid mids driver drivers midwoofers midranges'.split(' '));

/** `50 x 17 x 28 cm`, `24" W x 8" H x 16" D` */
function sidesAt(tokens: readonly Token[], first: Spelled): (Measured & { sides: number[] }) | undefined {
  const sides = [first.value];
  let unit = unitAt(tokens, first.next, first);
  let next = unit?.next ?? first.next;
  while (sides.length < 3) {
    if (SIDE_NAMES.has(tokens[next]?.raw ?? '') && tokens[next + 1]?.text === 'x') next++;
    if (tokens[next]?.text !== 'x' && !(tokens[next]?.raw === 'by' && first.digits)) break;
    const more = spelledAt(tokens, next + 1);
    if (more === undefined) break;
    sides.push(more.value);
    unit = unitAt(tokens, more.next, more) ?? unit;
    next = Math.max(more.next, unit?.next ?? 0);
  }
  // "2 x 6.5 in cones": so many, of that size.
  const [count = 0, size = 0] = sides;
  if (sides.length === 2 && MANY.has(count) && CONES.has(tokens[next]?.raw ?? ''))
    return { value: size, unit: unit?.unit, next, sides: [] };
  return sides.length < 2 ? undefined : { value: first.value, unit: unit?.unit, next, sides };
}

const BETWEEN = new Set(['-', 'to', 'or', '/', 'maybe', '.']);

/** `10-12 ft`, `between 10 and 12 feet`, `10 ft maybe 12`, `ten or twelve feet`. */
function rangeAt(tokens: readonly Token[], first: Spelled, between: boolean): Measured | undefined {
  const own = unitAt(tokens, first.next, first);
  let at = own?.next ?? first.next;
  const link = tokens[at]?.text ?? '';
  if (!BETWEEN.has(link) && !(between && link === 'and')) return undefined;
  if ((link === '-' || link === '/') && tokens[at]?.spaced && !tokens[at + 1]?.spaced) return undefined;
  while (tokens[at + 1]?.text === '.' || tokens[at + 1]?.text === 'maybe') at++;
  const second = spelledAt(tokens, at + 1);
  if (second === undefined || second.needsUnit) return undefined;
  // "75/75.2/75": three loudspeakers.
  if (link === '/' && (tokens[second.next]?.text === '/' || tokens[at - 2]?.text === '/')) return undefined;
  const unit = unitAt(tokens, second.next, second) ?? own;
  const low = first.value;
  const high = second.value;
  // "2 to 6 kHz" is a band, no value of anything.
  if (high > low * 2.5 && own === undefined && unit !== undefined && link === 'to')
    return { value: low, unit: 'other', next: Math.max(second.next, unit.next) };
  if (!(high > low) || high > low * 2.5) return undefined;
  if (unit === undefined && link !== '-') return undefined;
  const next = Math.max(second.next, unit?.next ?? 0);
  return { value: (low + high) / 2, unit: unit?.unit, next, range: [low, high] };
}

/** The inches behind the feet, the centimeters behind the meters, in meters. */
function secondPart(
  tokens: readonly Token[],
  pair: Measured,
  first: Spelled,
): { readonly si: number; readonly next: number } | undefined {
  if (pair.unit === undefined || pair.unit === 'other' || !Number.isInteger(first.value)) return undefined;
  let at = pair.next;
  if (tokens[at]?.raw === 'and' || tokens[at]?.text === ',') at++;
  const more = spelledAt(tokens, at);
  if (more === undefined || more.needsUnit) return undefined;
  const unit = unitAt(tokens, more.next, more);
  const inch = unit !== undefined && unit.unit !== 'other' && unit.unit.over === 254;
  if (pair.unit.over === 3048 && more.value < 12) {
    if (inch) return { si: more.value * 0.0254, next: unit.next };
    const bare = unit === undefined && at === pair.next && (!more.digits || Number.isInteger(more.value));
    return bare ? { si: more.value * 0.0254, next: more.next } : undefined;
  }
  if (pair.unit.dimension !== 'length' || pair.unit.over !== 1 || pair.unit.under !== 1 || at !== pair.next)
    return undefined;
  if (unit === undefined)
    return (more.value >= 10 || tokens[at]?.raw.length === 2) && more.value < 100
      ? { si: more.value / 100, next: more.next }
      : undefined;
  const centimeters = unit.unit !== 'other' && unit.unit.under === 100 && more.value < 100;
  return centimeters ? { si: more.value / 100, next: unit.next } : undefined;
}

const isGlued = (tokens: readonly Token[], at: number, mark: string): boolean =>
  tokens[at]?.text === mark && !tokens[at]?.spaced && !tokens[at + 1]?.spaced;

function isAbout(tokens: readonly Token[], start: number): boolean {
  const before = tokens[start - 1];
  return (
    before !== undefined &&
    (ABOUT.has(before.raw) ||
      before.text === '~' ||
      (before.text === '.' && ABOUT.has(tokens[start - 2]?.raw ?? '')))
  );
}

/** Where the text goes on behind "or so", "give or take", "-ish", "maybe"; the same place where nothing of it stands. */
function afterAbout(tokens: readonly Token[], next: number): number {
  const at = tokens[next]?.text === '-' || tokens[next]?.text === ',' ? next + 1 : next;
  const words = [0, 1, 2].map((ahead) => tokens[at + ahead]?.raw ?? '');
  if (words[0] === 'ish' || words[0] === 'roughly' || words[0] === 'er') return at + 1;
  if (words[0] === 'maybe' && at === next) return at + 1;
  if (words[0] === 'or' && words[1] === 'so') return at + 2;
  if (words[0] === 'give' && words[1] === 'or') return at + 3;
  return next;
}
