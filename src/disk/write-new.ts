/** A file that a command makes: whole or not at all, and never in the place of another unless that was said. */
import { existsSync, statSync } from 'node:fs';
import writeFileAtomic from 'write-file-atomic';
import { plainLine } from '../lib/sanitize.js';
import { UserError } from '../lib/user-error.js';

export function writeNew(path: string, content: Uint8Array | string, replace: boolean): void {
  const name = plainLine(path);
  if (existsSync(path) && (!replace || !statSync(path).isFile())) {
    throw new UserError({
      where: name,
      what: statSync(path).isDirectory() ? 'this is a folder' : 'there is a file of that name already',
      accepted: 'another name, or --force to replace it',
    });
  }
  try {
    writeFileAtomic.sync(path, typeof content === 'string' ? content : Buffer.from(content));
  } catch (error) {
    throw new UserError({
      where: name,
      what: `it cannot be written (${error instanceof Error ? plainLine(error.message) : 'unknown reason'})`,
      accepted: 'a name in a folder that may be written to',
    });
  }
}
