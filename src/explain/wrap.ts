/** Width of text on a terminal and wrapping to it: the one place that knows about wide letters. */
import stringWidth from 'string-width';
import wrapAnsi from 'wrap-ansi';

export const widthOf = (text: string): number => stringWidth(text);

/** Lines of at most `width` columns; words longer than that are cut. */
export function wrapped(text: string, width: number): string[] {
  return wrapAnsi(text, Math.max(8, width), { hard: true, trim: true }).split('\n');
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
