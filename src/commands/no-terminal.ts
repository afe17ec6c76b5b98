/** An interview without a terminal: the facts it would ask for are listed instead. */

import { existsSync } from 'node:fs';
import { EMPTY_BOOK } from '../facts/book.js';
import { EXIT, type ExitCode, type Io } from './io.js';
import { loadFile } from './load-case.js';

export async function refuseInterview(
  io: Io,
  casePath: string | undefined,
  json: boolean,
): Promise<ExitCode> {
  const { missingFacts } = await import('../interview/missing.js');
  const book = casePath !== undefined && existsSync(casePath) ? loadFile(casePath).book : EMPTY_BOOK;
  const missing = missingFacts(book);
  io.err(
    'An interview needs a terminal for questions and answers, and there is none here. The facts it would ask for can be put into a case file; "center-audit facts" tells how each is written.\n',
  );
  if (json) {
    io.out(`${JSON.stringify({ format: 'center-audit/missing', version: 1, missing }, null, 2)}\n`);
  } else {
    io.out(missing.map(({ fact, ask, example }) => `${fact}: ${ask} (${example})\n`).join(''));
  }
  return EXIT.needsInterview;
}
