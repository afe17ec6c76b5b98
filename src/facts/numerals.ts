/**
 * Numerals as people write them: decimal point or comma, thousands marks, fractions. One pass, no backtracking;
 * what does not fit together is refused in words that continue the sentence `"10.5.2 m" …`.
 */

export function isDigit(letter: string): boolean {
  return letter >= '0' && letter <= '9';
}

interface ReadNumber {
  readonly value: number;
  /** Where the text goes on. */
  readonly end: number;
  readonly whole: boolean;
  /** How many letters were written. */
  readonly digits: number;
  /** It could be read in two ways. */
  readonly ambiguous: boolean;
}

/** A number at `start`: digits with decimal point or comma, thousands marks, a power of ten, a fraction. */
export function readNumber(body: string, start: number): ReadNumber | string {
  let at = start;
  while (isDigit(body[at] ?? '') || goesOn(body, at, start)) at++;
  if (at === start) return 'holds no number';
  const written = body.slice(start, at);
  const numeral = readNumeral(written);
  if (numeral === undefined) return 'has decimal and thousands marks that do not fit together';
  const digits = written.length;
  const fraction = WHOLE.test(written) ? readFraction(body, at, written) : undefined;
  if (fraction === 'zero') return 'divides by zero';
  if (fraction) return { ...fraction, whole: false, digits, ambiguous: false };
  const power = readPower(body, at);
  const value = Number(numeral + power);
  const ambiguous = AMBIGUOUS.test(written);
  return { value, end: at + power.length, whole: Number.isInteger(value), digits, ambiguous };
}

/** A mark inside a numeral: a point or comma before a digit, a space before exactly three digits. */
function goesOn(body: string, at: number, start: number): boolean {
  const mark = body[at];
  if (mark === '.' || mark === ',') return isDigit(body[at + 1] ?? '');
  return mark === ' ' && at > start && GROUP_AHEAD.test(body.slice(at + 1, at + 5));
}

const GROUP_AHEAD = /^\d{3}(?![\d/])/;
const WHOLE = /^\d+$/;
/** 3,200 is 3.2 where the comma is a decimal mark and 3200 where it marks thousands. */
const AMBIGUOUS = /^[1-9]\d{0,2},\d{3}$/;
const DECIMAL = /^\d*[.,]\d+$/;
/** Groups of three behind one kind of mark, and perhaps a decimal mark of the other kind. */
const GROUPED = /^(\d{1,3}([ ,.])\d{3}(?:\2\d{3})*)(?:([.,])(\d+))?$/;

/** A numeral with a decimal point and without thousands marks; undefined when its marks do not fit together. */
function readNumeral(written: string): string | undefined {
  if (WHOLE.test(written)) return written;
  if (AMBIGUOUS.test(written)) return written.replace(',', '');
  if (DECIMAL.test(written)) return written.replace(',', '.');
  const [, groups = '', mark = '', point = '', decimals = ''] = GROUPED.exec(written) ?? [];
  if (groups === '' || mark === point) return undefined;
  return `${groups.replaceAll(mark, '')}.${decimals}`;
}

/** `e-3`, or nothing. */
function readPower(body: string, at: number): string {
  if (body[at] !== 'e') return '';
  let end = at + 1;
  if (body[end] === '-' || body[end] === '+') end++;
  const first = end;
  while (isDigit(body[end] ?? '')) end++;
  return end > first ? body.slice(at, end) : '';
}

/** `1/2`, or `10 1/2` where `whole` is the 10; also `10-1/2`. */
function readFraction(
  body: string,
  at: number,
  whole: string,
): { value: number; end: number } | 'zero' | undefined {
  if (body[at] === '/' && isDigit(body[at + 1] ?? '')) {
    const below = readDigits(body, at + 1);
    if (Number(below) === 0) return 'zero';
    return { value: Number(whole) / Number(below), end: at + 1 + below.length };
  }
  if (body[at] !== ' ' && body[at] !== '-') return undefined;
  let start = at;
  while (body[start] === ' ') start++;
  if (body[start] === '-') start++;
  while (body[start] === ' ') start++;
  const above = readDigits(body, start);
  const slash = start + above.length;
  if (above === '' || body[slash] !== '/' || !isDigit(body[slash + 1] ?? '')) return undefined;
  const below = readDigits(body, slash + 1);
  if (Number(below) === 0) return 'zero';
  return { value: Number(whole) + Number(above) / Number(below), end: slash + 1 + below.length };
}

function readDigits(body: string, at: number): string {
  let end = at;
  while (isDigit(body[end] ?? '')) end++;
  return body.slice(at, end);
}
