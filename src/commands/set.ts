/** `center-audit set`: changes a case and keeps it; the file is replaced in one step, a copy stays beside it. */
import { existsSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { responsesIn } from '../disk/response-files.js';
import { factText } from '../explain/words.js';
import { type Answer, type FactBook, told } from '../facts/book.js';
import { FACT_IDS, type FactId, factSpec, isFactId } from '../facts/catalog.js';
import { plainLine } from '../lib/sanitize.js';
import { UserError } from '../lib/user-error.js';
import { changeCase } from '../store/change-case.js';
import { EXIT, type ExitCode, type GlobalOptions, type Io } from './io.js';
import { STDIN } from './load-case.js';
import { type FormatOptions, wantsJson } from './options.js';
import { withChanges } from './try-changes.js';

interface SetChange {
  readonly path: string;
  readonly before: string | null;
  readonly after: string | null;
}

/** @param changes `FACT=VALUE` words */
export async function run(
  io: Io,
  path: string,
  changes: readonly string[],
  options: GlobalOptions & FormatOptions,
): Promise<ExitCode> {
  const json = wantsJson(options);
  if (path === STDIN || !existsSync(path)) throw noCase(path);
  let made: SetChange[] = [];
  changeCase(path, (before) => {
    const { book, echoes } = withChanges(
      before,
      factsLast(changes),
      responsesIn(dirname(resolve(path))),
      'set',
    );
    io.err(echoes.map((echo) => `${echo}\n`).join(''));
    made = changed(before, book);
    return book;
  });
  io.out(json ? `${JSON.stringify({ case: path, changes: made }, null, 2)}\n` : plain(path, made));
  return EXIT.done;
}

/** A trial lays aside how things were; facts of today that are told beside it, in whatever order, come after. */
const factsLast = (changes: readonly string[]): string[] => {
  const isFact = (word: string): boolean => isFactId(word.split('=')[0]?.trim() ?? '');
  return [...changes.filter((word) => !isFact(word)), ...changes.filter(isFact)];
};

function noCase(path: string): UserError {
  return new UserError({
    where: plainLine(path),
    what: path === STDIN ? 'a change is kept in a file, and this is none' : 'there is no such file',
    accepted: 'the path of a case file; an interview begins a new one',
    example: 'center-audit set case.json trial=center-tilted:better',
  });
}

/** Everything that differs, in words. */
function changed(before: FactBook, after: FactBook): SetChange[] {
  const text = (id: FactId, answers: ReadonlyMap<FactId, Answer>): string | null => {
    const value = told({ ...after, answers }, id);
    if (value !== undefined) return factText(id, value, after.units);
    return answers.has(id) ? 'not known' : null;
  };
  const facts = FACT_IDS.flatMap((id): SetChange[] => [
    { path: id, before: text(id, before.answers), after: text(id, after.answers) },
    { path: `before.${id}`, before: text(id, before.before), after: text(id, after.before) },
  ]);
  const lists = LISTS.map(
    (key): SetChange => ({ path: key, before: shown(before[key]), after: shown(after[key]) }),
  );
  return [...facts, ...lists].filter((row) => row.before !== row.after);
}

const LISTS = [
  'title',
  'words',
  'complaints',
  'absentComplaints',
  'trials',
  'constraints',
  'seats',
  'solved',
] as const;

function shown(value: unknown): string | null {
  if (value === undefined || (Array.isArray(value) && value.length === 0)) return null;
  if (!Array.isArray(value)) return String(value);
  return value.map((each) => (typeof each === 'string' ? each : Object.values(each).join(' '))).join(', ');
}

function plain(path: string, changes: readonly SetChange[]): string {
  if (changes.length === 0) return `${plainLine(path)}: nothing changed\n`;
  const lines = changes.map(({ path: key, before, after }) => {
    const label = isFactId(key) ? factSpec(key).label : key;
    const was = before === null ? '' : ` (was ${before})`;
    return `  ${label}: ${after ?? 'forgotten'}${was}\n`;
  });
  return `${plainLine(path)}: changed\n${lines.join('')}`;
}
