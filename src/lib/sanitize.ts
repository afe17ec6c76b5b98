/**
 * Text from strangers. Titles, words, notes, seat names and paths end up on terminals, in web pages and in
 * forum posts, so everything that steers a display instead of saying something is taken out where it enters.
 */

/** Whole terminal escape sequences: control sequences, and commands up to their terminator. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is looked for
const ESCAPES = /[\u001b\u009b]\[?[0-?]{0,32}[ -/]{0,8}[@-~]?/g;
// biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is looked for
const CONTROLS = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f]/g;
/** Direction overrides and isolates, invisible joiners without use here, byte order marks, tag characters. */
const INVISIBLE =
  /[\u00ad\u061c\u180e\u200b\u200e\u200f\u202a-\u202e\u2060-\u206f\ufeff\ufff9-\ufffb]|\u{e0001}|[\u{e0020}-\u{e007f}]/gu;
const LONE_SURROGATES = /[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

/** Text of several lines without anything that steers a display. Doing it twice changes nothing. */
export function plainText(text: string): string {
  return text
    .replace(/\r\n?|[\u2028\u2029\u0085]/g, '\n')
    .replace(ESCAPES, '')
    .replace(CONTROLS, '')
    .replace(LONE_SURROGATES, '')
    .replace(INVISIBLE, '')
    .normalize('NFC')
    .trim();
}

/** The same in a single line: any run of white space becomes one space. */
export function plainLine(text: string): string {
  return plainText(text).replace(/\s+/g, ' ');
}

/** A stranger's text as it is quoted back inside an error: one short line in quotes. */
export function quoted(text: string, longest = 60): string {
  const line = plainLine(text.slice(0, longest * 4));
  const letters = Array.from(line);
  return `"${letters.length > longest ? `${letters.slice(0, longest - 1).join('')}…` : line}"`;
}
