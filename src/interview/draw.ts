/** A question as lines of text, wrapped at the width, with or without color. */
import pc from 'picocolors';
import { hanging, wrapped } from '../explain/wrap.js';
import { MARKS } from './marks.js';
import type { Prompt } from './port.js';

export interface Style {
  readonly columns: number;
  readonly color: boolean;
}

/** Lines longer than this are hard to read on a wide screen. */
const WIDEST = 88;
const NARROWEST = 20;
/** Lists up to this length are shown again after an interruption; longer ones have just scrolled by. */
const SHORT_LIST = 8;

/** Lines of plain text; what a listed line begins with (spaces, a number, a mark) is its hanging indent. */
export function drawLines(lines: readonly string[], style: Style): string {
  return lines
    .flatMap((line) => line.split('\n'))
    .flatMap((line) => listed(line, style))
    .map((line) => `${line}\n`)
    .join('');
}

/** The whole question, or after an interruption only what is needed to answer it. */
export function drawPrompt(prompt: Prompt, style: Style, isAgain: boolean): string {
  if (isAgain && prompt.draft !== '') return '';
  const colors = pc.createColors(style.color);
  const width = widthOf(style);
  const digits = String(prompt.choices.length).length;
  const choices = prompt.choices.flatMap((choice, i) =>
    hanging(`  ${String(i + 1).padStart(digits)}  `, choice, width),
  );
  const isLeftOut = isAgain && prompt.choices.length > SHORT_LIST;
  const dim = (text: string): string[] =>
    text === '' ? [] : wrapped(text, width).map((line) => colors.dim(line));
  return [
    '',
    ...(isAgain ? [] : dim(prompt.head)),
    ...wrapped(prompt.ask, width).map((line) => colors.bold(line)),
    ...(isLeftOut ? dim(`1 to ${prompt.choices.length}, as listed above.`) : choices),
    ...dim(prompt.hint),
    ...dim(prompt.onEnter === '' ? '' : `Enter ${prompt.onEnter}`),
    ...(isAgain || !prompt.marks ? [] : dim(MARKS_LINE)),
    '',
  ].join('\n');
}

/** Signs and words stay together when the line is wrapped. */
const MARKS_LINE = MARKS.map(({ key, short }) => `${key}\u00a0${short.replaceAll(' ', '\u00a0')}`).join('  ');

const LEAD = /^( +(?:\d+\.? +|\S {2})?|[-=] )(.*)$/u;

function listed(line: string, style: Style): string[] {
  // A path is copied whole: the terminal breaks it, not we.
  if (!line.includes(' ')) return [line];
  const [, lead, rest = ''] = line.match(LEAD) ?? [];
  const width = widthOf(style);
  return lead === undefined ? wrapped(line, width) : hanging(lead, rest, width);
}

const widthOf = ({ columns }: Style): number => Math.max(NARROWEST, Math.min(WIDEST, columns - 1));
