/** How the result is shown on a terminal: width, color, letters. Decided once from the streams and the environment. */

export interface TextOptions {
  /** Columns, 40 to 100. */
  readonly width: number;
  readonly color: boolean;
  /** Only plain letters: no bars, dots or dashes beyond ASCII. */
  readonly ascii: boolean;
  /** Lines of `label: value`, no tables, bars or gauges: for screen readers. */
  readonly accessible: boolean;
}

export const PLAIN_TEXT: TextOptions = { width: 80, color: false, ascii: false, accessible: false };
const LEAST_WIDTH = 40;
const MOST_WIDTH = 100;
/** Width where the result does not go to a terminal. */
const FILE_WIDTH = 80;

export interface TerminalState {
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly stdoutIsTerminal: boolean;
  readonly columns: number;
}
export interface TerminalFlags {
  /** `--no-color` gives false, `--color` true. */
  readonly color?: boolean;
  readonly accessible?: boolean;
  /** The result goes into a file. */
  readonly toFile?: boolean;
}

export function textOptions(state: TerminalState, flags: TerminalFlags = {}): TextOptions {
  const accessible = flags.accessible ?? isSet(state.env.ACCESSIBLE);
  const onTerminal = state.stdoutIsTerminal && flags.toFile !== true;
  const columns = onTerminal ? state.columns : FILE_WIDTH;
  return {
    width: Math.min(MOST_WIDTH, Math.max(LEAST_WIDTH, Math.floor(columns) || FILE_WIDTH)),
    color: useColor(onTerminal, state.env, flags.color) && !accessible,
    ascii: onTerminal && lacksUnicode(state.env),
    accessible,
  };
}

/**
 * Color only on a terminal, never with a non-empty NO_COLOR, `--no-color` or a dumb terminal. A flag wins over
 * the environment, but color is never forced into a pipe or file.
 */
export function useColor(onTerminal: boolean, env: TerminalState['env'], flag?: boolean): boolean {
  if (!onTerminal || flag === false) return false;
  if (flag === true) return true;
  return !isSet(env.NO_COLOR) && env.TERM !== 'dumb';
}

const isSet = (value: string | undefined): boolean => value !== undefined && value !== '';

/** A locale that says plainly it is not UTF-8, or a terminal that draws nothing but ASCII. */
function lacksUnicode(env: TerminalState['env']): boolean {
  if (env.TERM === 'dumb' || env.TERM === 'linux') return true;
  const locale = [env.LC_ALL, env.LC_CTYPE, env.LANG].find(isSet);
  return locale !== undefined && !/utf-?8/i.test(locale);
}
