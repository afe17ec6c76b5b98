/** `npm start`: the interview where there is a terminal to hold it, the audit of a shipped case where there is none. */

import type { ExitCode, GlobalOptions, StreamIo } from './io.js';
import { packageFile } from './package-file.js';

export async function run(io: StreamIo, options: GlobalOptions): Promise<ExitCode> {
  if (io.stdinIsTerminal && io.stderrIsTerminal) {
    return (await import('./interview.js')).run(io, undefined, options);
  }
  io.err('There is no terminal for an interview, so a case that comes with the program is audited.\n');
  return (await import('./audit.js')).run(io, [packageFile('cases/demo.json')], options);
}
