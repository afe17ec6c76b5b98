/** The priors that a command works with: those of `--priors FILE`, of the user's configuration folder, or built in. */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { readLimited } from '../disk/read-file.js';
import { plural } from '../explain/words.js';
import { plainLine } from '../lib/sanitize.js';
import type { AuditOptions } from '../reasoning/audit.js';
import { causesAfter, type Solved } from '../reasoning/priors.js';
import { configFolder } from '../store/state-folder.js';
import type { GlobalOptions, Io } from './io.js';
import { solvedFrom } from './priors-file.js';

const MAX_BYTES = 256 * 1024;

/** Where priors are found without being named. */
export const usualPriorsPath = (): string => join(configFolder(), 'priors.json');

export interface PriorsInUse {
  readonly name: string;
  readonly solved: Solved;
}

/** Never silent: what is in use is told on standard error. Throws a UserError for a file that cannot be used. */
export function priorsInUse(io: Io, { priors }: GlobalOptions): PriorsInUse | undefined {
  const found = priors === undefined ? usual() : read(priors);
  if (found !== undefined) io.err(`In use: ${priorsLine(found)}.\n`);
  return found;
}

export const priorsLine = ({ name, solved }: PriorsInUse): string =>
  `priors drawn toward ${plural(solved.cases, 'solved case')} of ${name}`;

/** What an audit takes from them. */
export function auditOptions(found: PriorsInUse | undefined): AuditOptions {
  return found === undefined ? {} : { causes: causesAfter(found.solved), priors: priorsLine(found) };
}

function read(path: string): PriorsInUse {
  const name = plainLine(path);
  return { name, solved: solvedFrom(name, Buffer.from(readLimited(path, MAX_BYTES)).toString('utf8')) };
}

function usual(): PriorsInUse | undefined {
  const path = usualPriorsPath();
  return existsSync(path) ? read(path) : undefined;
}
