/** Lengths as a body has them: "knee height", "two hand widths", "an arm's length". Always about. */
import { spelledAt } from './numerals.js';
import type { Token } from './tokens.js';

/** Of a grown person, m, round figures. Common practice, no source. */
const BODY_LENGTHS_M: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  width: { finger: 0.02, thumb: 0.025, hand: 0.1, palm: 0.1, fist: 0.1, shoulder: 0.45 },
  span: { hand: 0.2 },
  length: { finger: 0.08, hand: 0.2, foot: 0.25, forearm: 0.45, arm: 0.7 },
  height: {
    ankle: 0.1,
    shin: 0.3,
    knee: 0.5,
    hip: 0.95,
    waist: 1,
    navel: 1.05,
    belly: 1.1,
    chest: 1.3,
    shoulder: 1.4,
  },
};
const KIND: Readonly<Record<string, string>> = {
  widths: 'width',
  wide: 'width',
  breadth: 'width',
  breadths: 'width',
  spans: 'span',
  lengths: 'length',
  long: 'length',
  high: 'height',
  level: 'height',
  deep: 'height',
};
const OWNERS = new Set(['a', 'an', 'the', 'my']);

interface BodyLength {
  readonly count: number;
  readonly meters: number;
  /** The token behind it. */
  readonly next: number;
}

export function bodyLengthAt(tokens: readonly Token[], start: number): BodyLength | undefined {
  const owned = OWNERS.has(tokens[start]?.raw ?? '');
  const counted = owned ? undefined : spelledAt(tokens, start);
  let at = owned ? start + 1 : (counted?.next ?? start);
  const part = (tokens[at]?.raw ?? '').replace(/s$/, '');
  at += tokens[at + 1]?.text === '-' ? 2 : 1;
  const word = tokens[at]?.raw ?? '';
  const meters = BODY_LENGTHS_M[KIND[word] ?? word]?.[part];
  // "I held it at arm's length" tells no length of anything.
  const isIdiom = part === 'arm' && counted === undefined && tokens[start - 1]?.raw === 'at';
  return meters === undefined || isIdiom ? undefined : { count: counted?.value ?? 1, meters, next: at + 1 };
}
