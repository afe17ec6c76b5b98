/** The unit behind a number: words, marks, and what only looks like one. */
import { UNIT_WORDS, type UnitWord } from '../facts/unit-words.js';
import type { Spelled } from './numerals.js';
import type { Token } from './tokens.js';

const OTHER_UNITS = new Set(
  (
    'eur euro euros quid dollar dollars buck bucks usd gbp grand w watt watts kw ohm ohms ω year years yr yrs week weeks wk day days ' +
    'month months minute minutes min mins hour hours hrs sqm sqft square sq m2 p i bit kbps gauge awg kg lb lbs ' +
    'km kms mile miles mph rd nd th st stars percentile oct octave litre litres liters am pm oclock mbit gb cd wpc sheep k_'
  ).split(' '),
);
/** "10 in the corner": what follows shows that `in` is no inch. */
const AFTER_PREPOSITION = new Set(
  'the a an my our your his her this that front total all it its there each every stereo surround 5.1 between'.split(
    ' ',
  ),
);
const PICTURES = new Set(
  'disc discs tv tvs beamer projector uhd hdr movie movies oled streaming film films set content stream'.split(
    ' ',
  ),
);
export const MONEY = new Set(['$', '£', '€', '#']);

interface UnitFound {
  readonly unit: UnitWord | 'other';
  readonly next: number;
}

const unitNamed = (name: string): UnitWord | undefined => UNIT_WORDS.get(name);
const PERCENT = unitNamed('%') as UnitWord;
export const RATIO = unitNamed('x') as UnitWord;
const KILO = unitNamed('khz') as UnitWord;
/** Nobody tells of longer times in a room. */
const MOST_SECONDS = 4;
const SECOND = unitNamed('second') as UnitWord;
/** The biggest number before a bare k that is a frequency; no loudspeaker plays 25 kHz to anybody. */
const MOST_KILOHERTZ = 24;

export function unitAt(tokens: readonly Token[], from: number, number: Spelled): UnitFound | undefined {
  let at = from;
  if (tokens[at]?.raw === 'ish') at++;
  if (
    tokens[at]?.text === '-' &&
    !tokens[at]?.spaced &&
    tokens[at + 1]?.kind === 'word' &&
    !tokens[at + 1]?.spaced
  )
    at++;
  const token = tokens[at];
  if (token === undefined) return undefined;
  if (token.kind === 'mark') return markUnit(tokens, at);
  if (token.kind !== 'word') return undefined;
  const name = token.raw;
  const after = tokens[at + 1];
  const found = (unit: UnitWord | 'other', next = at + 1): UnitFound => ({
    unit,
    next: dotted(tokens, next),
  });
  if (name === 'k') {
    if (PICTURES.has(after?.raw ?? '') || number.value > MOST_KILOHERTZ) return found('other');
    return found(KILO);
  }
  if (name === 'in' && (after === undefined ? token.spaced : AFTER_PREPOSITION.has(after.raw)))
    return undefined;
  if (name === 'm' && (after?.text === '2' || after?.text === '²') && !after.spaced)
    return found('other', at + 2);
  if (name === 'pa') return pascals(tokens, at);
  if (name === 'percent') return found(PERCENT);
  if (name === 'per' && tokens[at + 1]?.raw === 'cent') return found(PERCENT, at + 2);
  if (name === 'holes' || name === 'per') return holes(tokens, at);
  if (OTHER_UNITS.has(name)) return number.needsUnit ? undefined : found('other');
  const unit = unitNamed(name);
  if (unit === undefined || unit.dimension === 'ratio') return undefined;
  // "A second voice", "one in five": short units go with digits only, and nobody means a second by "a second".
  // "Two 6.5s" are cones, not seconds.
  if (name === 's' && number.value > MOST_SECONDS) return undefined;
  if (!number.digits && (name.length < 2 || name === 'in' || unit === SECOND)) return undefined;
  // A slope is no level.
  const isPerOctave = unit.dimension === 'level' && ['/', 'per'].includes(after?.text ?? '');
  return unit.dimension === 'mass' || isPerOctave ? found('other') : found(unit);
}

/** `45 Pa s/m`, `60 Pa·s/m`, `50 Pa.s/m` */
function pascals(tokens: readonly Token[], at: number): UnitFound | undefined {
  let next = at + 1;
  if (tokens[next]?.text === '·' || tokens[next]?.text === '.') next++;
  if (tokens[next]?.raw !== 's' || tokens[next + 1]?.text !== '/' || tokens[next + 2]?.raw !== 'm')
    return undefined;
  return { unit: unitNamed('pas/m') as UnitWord, next: next + 3 };
}

/** `holes per square inch`, `holes/cm2` */
function holes(tokens: readonly Token[], at: number): UnitFound | undefined {
  let next = at;
  let name = '';
  while (next < at + 6 && name.length < 30) {
    const word = tokens[next]?.raw ?? '';
    if (word !== 'holes') name += word;
    next++;
    const unit = unitNamed(name);
    if (unit !== undefined && unit.dimension === '1/m2' && tokens[next]?.text !== '2') return { unit, next };
  }
  return undefined;
}

/** The point behind a short unit belongs to it where the sentence goes on. */
function dotted(tokens: readonly Token[], next: number): number {
  const after = tokens[next + 1];
  const isShort = (tokens[next - 1]?.raw.length ?? 9) <= 3;
  const goesOn = after !== undefined && after.text !== '\n' && !after.capital;
  return isShort &&
    tokens[next]?.text === '.' &&
    !tokens[next]?.spaced &&
    goesOn &&
    after.kind !== 'mark' &&
    !after.spaced
    ? next + 1
    : next;
}

function markUnit(tokens: readonly Token[], at: number): UnitFound | undefined {
  const token = tokens[at] as Token;
  const after = tokens[at + 1];
  if (token.text === '%') return { unit: PERCENT, next: at + 1 };
  if (token.text === '°') return { unit: unitNamed('°') as UnitWord, next: at + 1 };
  if (MONEY.has(token.text)) return { unit: 'other', next: at + 1 };
  if (token.text === 'ω') return { unit: 'other', next: at + 1 };
  if (token.spaced) return undefined;
  if (token.text === '"')
    return isClosingQuote(tokens, at) ? undefined : { unit: unitNamed('in') as UnitWord, next: at + 1 };
  if (token.text !== "'") return undefined;
  if (after?.text === "'" && !after.spaced) return { unit: unitNamed('in') as UnitWord, next: at + 2 };
  if (after?.kind === 'word' && !after.spaced) return undefined;
  return { unit: unitNamed('ft') as UnitWord, next: at + 1 };
}

/** How far back an opening quote is looked for. */
const QUOTE_REACH = 40;

/** A quote sign that closes what another one opened is no inch: "it says plus 8". */
function isClosingQuote(tokens: readonly Token[], at: number): boolean {
  let open = false;
  for (let back = Math.max(0, at - QUOTE_REACH); back < at; back++) {
    const token = tokens[back] as Token;
    if (token.text !== '"') continue;
    const before = tokens[back - 1];
    const isInch = before?.kind === 'number' && !token.spaced && !open;
    if (!isInch) open = !open;
  }
  return open;
}
