/**
 * Numerals as people write them: decimal point or comma, thousands marks, fractions. One pass, no backtracking;
 * what does not fit together is refused in words that continue the sentence `"10.5.2 m" …`.
 */

export function isDigit(letter: string): boolean {
  return letter >= '0' && letter <= '9';
}

export interface ReadNumber {
  readonly value: number;
  /** Where the text goes on. */
  readonly end: number;
  readonly whole: boolean;
  /** How many digits were written. */
  readonly digits: number;
  /** A comma before exactly three digits: 3,200 is 3.2 or 3200. */
  readonly ambiguous: boolean;
}

/** A number at `start`: digits with decimal point or comma, thousands marks, a power of ten, a fraction. */
export function readNumber(body: string, start: number): ReadNumber | string {
  let at = start;
  let text = '';
  const marks: { mark: string; at: number }[] = [];
  for (;;) {
    const letter = body[at] ?? '';
    if (isDigit(letter)) text += letter;
    else if ((letter === '.' || letter === ',') && isDigit(body[at + 1] ?? '')) {
      marks.push({ mark: letter, at: text.length });
    } else if (letter === ' ' && text !== '' && isGroup(body, at + 1) && groupLength(marks, text) <= 3) {
      marks.push({ mark: ' ', at: text.length });
    } else break;
    at++;
  }
  if (text === '') return 'holds no number';
  const numeral = placeMarks(text, marks);
  if (numeral === undefined) return 'has decimal and thousands marks that do not fit together';
  const power = readPower(body, at);
  const fraction = power.text === '' ? readFraction(body, at, text, marks.length === 0) : undefined;
  if (fraction === 'zero') return 'divides by zero';
  if (fraction) {
    return { value: fraction.value, end: fraction.end, whole: false, digits: text.length, ambiguous: false };
  }
  const value = Number(numeral.text + power.text);
  return {
    value,
    end: at + power.text.length,
    whole: Number.isInteger(value),
    digits: text.length,
    ambiguous: numeral.ambiguous,
  };
}

/** Exactly three digits stand at `at`: a thousands group after a space. */
function isGroup(body: string, at: number): boolean {
  return (
    [0, 1, 2].every((step) => isDigit(body[at + step] ?? '')) &&
    !isDigit(body[at + 3] ?? '') &&
    body[at + 3] !== '/'
  );
}

function groupLength(marks: readonly { at: number }[], text: string): number {
  return text.length - (marks.at(-1)?.at ?? 0);
}

/** Decides which marks are thousands and which is the decimal point; undefined when they do not fit. */
function placeMarks(
  digits: string,
  marks: readonly { mark: string; at: number }[],
): { text: string; ambiguous: boolean } | undefined {
  const last = marks.at(-1);
  if (last === undefined) return { text: digits, ambiguous: false };
  const kinds = new Set(marks.map((mark) => mark.mark));
  const trailing = digits.length - last.at;
  const single = marks.length === 1;
  const onlyThousands = (kinds.size === 1 && !single) || last.mark === ' ';
  const ambiguous =
    single && last.mark === ',' && trailing === 3 && last.at > 0 && last.at <= 3 && digits[0] !== '0';
  const thousands = onlyThousands || ambiguous ? marks : marks.slice(0, -1);
  const ends = [
    ...thousands.slice(1).map((mark) => mark.at),
    onlyThousands || ambiguous ? digits.length : last.at,
  ];
  const groupsFit = thousands.every((mark, index) => (ends[index] ?? 0) - mark.at === 3);
  const firstFits = thousands.length === 0 || ((thousands[0]?.at ?? 0) >= 1 && (thousands[0]?.at ?? 0) <= 3);
  const oneKind = new Set(thousands.map((mark) => mark.mark)).size <= 1;
  if (!groupsFit || !firstFits || !oneKind) return undefined;
  if (onlyThousands || ambiguous) return { text: digits, ambiguous };
  if (thousands.some((mark) => mark.mark === last.mark)) return undefined;
  return { text: `${digits.slice(0, last.at)}.${digits.slice(last.at)}`, ambiguous: false };
}

function readPower(body: string, at: number): { text: string } {
  if (body[at] !== 'e') return { text: '' };
  let end = at + 1;
  if (body[end] === '-' || body[end] === '+') end++;
  const first = end;
  while (isDigit(body[end] ?? '')) end++;
  return { text: end > first ? body.slice(at, end) : '' };
}

/** `1/2`, or `10 1/2` where `whole` is the 10; also `10-1/2`. */
function readFraction(
  body: string,
  at: number,
  whole: string,
  mayBeFraction: boolean,
): { value: number; end: number } | 'zero' | undefined {
  if (!mayBeFraction) return undefined;
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
