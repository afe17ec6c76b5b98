/** Options that many commands share, read in one way. */
import type { TerminalFlags } from '../explain/terminal.js';
import { UserError } from '../lib/user-error.js';
import type { GlobalOptions } from './io.js';

export interface FormatOptions {
  readonly format?: string;
  readonly json?: boolean;
}

/** `--json` is `--format json`; both with different words are refused. */
export function formatOf<F extends string>(options: FormatOptions): F | 'text' | 'json' {
  const { format, json } = options;
  if (json && format !== undefined && format !== 'json') {
    throw new UserError({
      where: '--json',
      what: `--json and --format ${format} ask for two things at once`,
      accepted: 'one of them',
      example: '--json',
    });
  }
  return json ? 'json' : ((format as F | undefined) ?? 'text');
}

export const wantsJson = (options: FormatOptions): boolean => formatOf(options) === 'json';

/** A flag that was not typed must not win over the environment. */
export function textFlags({ color, accessible }: GlobalOptions): TerminalFlags {
  return { ...(color ? {} : { color: false }), ...(accessible ? { accessible: true } : {}) };
}
