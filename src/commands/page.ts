/** `center-audit page`: the whole program as one file for a browser, written out. */
import { readFileSync } from 'node:fs';
import { quietly } from '../disk/quietly.js';
import { plainLine } from '../lib/sanitize.js';
import { fileSink } from './batch/sink.js';
import { EXIT, type ExitCode, type StreamIo } from './io.js';
import { packageFile } from './package-file.js';

export async function run(io: StreamIo, path: string): Promise<ExitCode> {
  const page = quietly(() => readFileSync(packageFile('dist/center-audit.html'), 'utf8'));
  if (page === undefined) throw new Error('the page did not come with the program: npm run build makes it');
  const sink = await fileSink(io, path, []);
  try {
    await sink.write(page);
  } catch (error) {
    sink.drop();
    throw error;
  }
  sink.keep();
  io.err(`Written to ${plainLine(path)}. Open it by a double click; it needs no network.\n`);
  return EXIT.done;
}
