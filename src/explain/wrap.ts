/**
 * Width of text on a terminal and wrapping to it: the one place that knows about wide letters. The usual libraries
 * do the same and cost as much time as the whole start of the program (the segmenter and emoji tables of the
 * platform are loaded for the first curly quote); tests hold this to what they say.
 */

// biome-ignore lint/suspicious/noControlCharactersInRegex: the sequences that make text bold or dim
const STYLES = /\u001b\[[\d;]*m/g;
/** Letters one column wide, by code: Latin, Greek, Cyrillic, our own marks, arrows, lines and blocks. */
const NARROW =
  /^[ -~\u00a0-\u00ac\u00ae-\u02ff\u0370-\u0482\u048a-\u052f\u2010-\u2027\u2030-\u205e\u2190-\u21ff\u2500-\u25a0\u25b2]*$/;
/** No column of their own: accents put on the letter before, joiners and other format marks, control characters. */
const EMPTY = /^[\p{Mn}\p{Me}\p{Cf}\p{Cc}\p{Cs}]$/u;
const JOINER = 0x200d;
/** First and last code of letters two columns wide (East Asian Width wide and full, and pictures). */
const WIDE: readonly (readonly [number, number])[] = [
  [0x1100, 0x115f],
  [0x231a, 0x231b],
  [0x23e9, 0x23ec],
  [0x25fd, 0x25fe],
  [0x2614, 0x2615],
  [0x2e80, 0x303e],
  [0x3041, 0x33ff],
  [0x3400, 0x4dbf],
  [0x4e00, 0x9fff],
  [0xa000, 0xa4cf],
  [0xa960, 0xa97f],
  [0xac00, 0xd7a3],
  [0xf900, 0xfaff],
  [0xfe30, 0xfe6f],
  [0xff00, 0xff60],
  [0xffe0, 0xffe6],
  [0x1f300, 0x1f64f],
  [0x1f680, 0x1f6ff],
  [0x1f900, 0x1f9ff],
  [0x20000, 0x3fffd],
];

export function widthOf(text: string): number {
  const bare = text.includes('\u001b') ? text.replace(STYLES, '') : text;
  if (NARROW.test(bare)) return bare.length;
  let width = 0;
  let joined = false;
  for (const letter of bare) {
    const code = letter.codePointAt(0) ?? 0;
    if (!joined) width += letterWidth(letter, code);
    // What is joined to the letter before is drawn in its place.
    joined = code === JOINER;
  }
  return width;
}

function letterWidth(letter: string, code: number): 0 | 1 | 2 {
  if (EMPTY.test(letter)) return 0;
  return WIDE.some(([first, last]) => code >= first && code <= last) ? 2 : 1;
}

/** Lines of at most `width` columns, broken at spaces; words longer than that are cut. */
export function wrapped(text: string, width: number): string[] {
  const columns = Math.max(8, width);
  return restyled(text.split('\n').flatMap((line) => broken(line, columns)));
}

/** Without spaces at its ends; a space that must not break is a letter. */
const trimmed = (line: string): string => line.replace(/^ +| +$/g, '');

function broken(text: string, columns: number): string[] {
  const lines: string[] = [];
  let line = '';
  let used = 0;
  const breakLine = (next: string): void => {
    lines.push(trimmed(line));
    line = next;
    used = widthOf(next);
  };
  for (const word of trimmed(text).split(' ')) {
    const wide = widthOf(word);
    if (used > 0 && used + 1 + wide > columns && !beginsHere(wide, columns - used - 1, columns))
      breakLine('');
    // Spaces at the beginning of a line are dropped.
    const gap = used > 0 ? ' ' : '';
    const left = columns - used - gap.length;
    const [first = '', ...rest] = wide > left ? pieces(word, left, columns) : [word];
    line += gap + first;
    used += gap.length + widthOf(first);
    rest.forEach(breakLine);
  }
  return [...lines, trimmed(line)];
}

/** A word too long for any line begins where the last one ends, unless a line of its own saves a cut. */
function beginsHere(wide: number, left: number, columns: number): boolean {
  const cutsHere = 1 + Math.floor((wide - left - 1) / columns);
  const cutsOnNext = Math.floor((wide - 1) / columns);
  return wide > columns && cutsOnNext >= cutsHere;
}

/** A word cut into pieces, the first for what is left of a line; sequences that style it have no width. */
function pieces(word: string, left: number, columns: number): string[] {
  const list: string[] = [];
  let piece = '';
  // biome-ignore lint/suspicious/noControlCharactersInRegex: the sequences that make text bold or dim
  for (const letter of word.match(/\u001b\[[\d;]*m|[\s\S]/gu) ?? []) {
    if (widthOf(piece + letter) > (list.length === 0 ? left : columns)) {
      list.push(piece);
      piece = '';
    }
    piece += letter;
  }
  return [...list, piece];
}

const CLOSED = '\u001b[22m';

/** Bold and dim end with each line and begin again on the next, so that an indent before it stays plain. */
function restyled(lines: readonly string[]): string[] {
  let open = '';
  return lines.map((line) => {
    const before = open;
    for (const [style] of line.matchAll(STYLES)) open = style === CLOSED ? '' : style;
    return before + line + (open === '' ? '' : CLOSED);
  });
}

/** Fills up with spaces on the right. */
export function padded(text: string, width: number): string {
  return text + ' '.repeat(Math.max(0, width - widthOf(text)));
}

/** First line after `first`, the others indented to the same column. */
export function hanging(first: string, text: string, width: number): string[] {
  const indent = widthOf(first);
  return wrapped(text, width - indent).map((line, i) => (i === 0 ? first : ' '.repeat(indent)) + line);
}

/** A figure stays with its unit and its side: the space between them does not break. */
export const unbroken = (text: string): string =>
  text.replace(/([\d°]) (?=(?:dB|ms|k?Hz|mm|cm|m|ft|in|minutes?|left|right)\b)/g, '$1\u00a0');
