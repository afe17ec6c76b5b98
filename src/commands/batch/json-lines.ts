/** Standard input as one case or as JSON lines, read as it comes and never held as a whole. */
import { MAX_CASE_BYTES } from '../../facts/case-file.js';
import type { Problem } from '../../lib/user-error.js';
import type { Task } from './one.js';

const NEWLINE = 0x0a;
const TOO_LONG: Problem = {
  what: `the line is longer than ${MAX_CASE_BYTES} bytes`,
  accepted: `one case a line, of at most ${MAX_CASE_BYTES} bytes`,
};

type Line = { readonly number: number } & ({ readonly bytes: Uint8Array } | { readonly tooLong: true });

/**
 * Lines of at most the size of a case; a longer one is skipped to its end and told as too long, so that a
 * stream without line breaks costs no memory.
 */
export async function* linesOf(chunks: AsyncIterable<Uint8Array>): AsyncGenerator<Line> {
  let parts: Uint8Array[] = [];
  let size = 0;
  let number = 1;
  const line = (): Line =>
    size > MAX_CASE_BYTES ? { number, tooLong: true } : { number, bytes: Buffer.concat(parts) };
  const take = (part: Uint8Array): void => {
    size += part.length;
    if (size > MAX_CASE_BYTES) parts = [];
    else parts.push(part);
  };
  for await (const chunk of chunks) {
    let from = 0;
    for (let end = chunk.indexOf(NEWLINE); end !== -1; end = chunk.indexOf(NEWLINE, from)) {
      take(chunk.subarray(from, end));
      yield line();
      parts = [];
      size = 0;
      number += 1;
      from = end + 1;
    }
    if (from < chunk.length) take(chunk.subarray(from));
  }
  if (size > 0) yield line();
}

/**
 * The cases of a stream: JSON lines, or one case written over as many lines as its author liked.
 * @param name of the stream, for messages
 * @param want `lines` where it is said; `filter` where one line in shall be one line out, but a single case over
 * several lines is understood as well; `any` where a single line is a single case
 */
export async function* casesOf(
  chunks: AsyncIterable<Uint8Array>,
  name: string,
  want: 'lines' | 'filter' | 'any' = 'any',
): AsyncGenerator<Task> {
  const lines = linesOf(chunks);
  const { head, kind } =
    want === 'lines' ? { head: [], kind: 'lines' } : await begun(lines, want === 'filter');
  if (kind === 'whole') return yield { name, several: false, ...whole(await rest(head, lines)) };
  for (const each of head) if (!isBlank(each)) yield taskOf(each, name);
  for await (const each of lines) if (!isBlank(each)) yield taskOf(each, name);
}

/**
 * Lines where the first is a whole object, and there are more or one in is one out. Any of them may be broken: else what is
 * there is looked at as far as a single case can go. If it is no case as a whole, but one of its lines is, each begins
 * like one, or the last is a whole object (which no single case ends with), they are lines.
 */
async function begun(
  lines: AsyncGenerator<Line>,
  isFilter: boolean,
): Promise<{ readonly head: readonly Line[]; readonly kind: 'lines' | 'whole' }> {
  const head: Line[] = [];
  const written: Line[] = [];
  let size = 0;
  let startsWhole = false;
  while (size <= MAX_CASE_BYTES) {
    const { done, value: line } = await lines.next();
    if (done) break;
    head.push(line);
    size += 'bytes' in line ? line.bytes.length + 1 : MAX_CASE_BYTES;
    if (isBlank(line)) continue;
    if (written.push(line) === 1) startsWhole = isObject(line);
    if (startsWhole && (isFilter || written.length > 1)) return { head, kind: 'lines' };
  }
  if (written.length === 0 && isFilter) return { head, kind: 'lines' };
  if (written.length < 2) return { head, kind: 'whole' };
  const together = whole(head);
  const isOne = 'bytes' in together && isObject({ number: 1, bytes: together.bytes });
  const areLines = written.some(isCase) || written.every(opensObject) || isObject(written.at(-1) as Line);
  return { head, kind: !isOne && areLines ? 'lines' : 'whole' };
}

/** A line that is a case by itself; a seat inside a case that is written over several lines is not. */
const isCase = (line: Line): boolean =>
  isObject(line) &&
  /"(?:format|facts|complaints)"\s*:/.test(new TextDecoder().decode((line as { bytes: Uint8Array }).bytes));

const isBlank = (line: Line): boolean =>
  'bytes' in line && line.bytes.every((byte) => byte === 0x20 || byte === 0x09 || byte === 0x0d);

const opensObject = (line: Line): boolean =>
  'bytes' in line && new TextDecoder().decode(line.bytes).trimStart().startsWith('{');

function isObject(line: Line): boolean {
  if (!('bytes' in line)) return false;
  try {
    const value: unknown = JSON.parse(new TextDecoder().decode(line.bytes));
    return typeof value === 'object' && value !== null && !Array.isArray(value);
  } catch {
    return false;
  }
}

function taskOf(line: Line, name: string): Task {
  const where = `${name}, line ${line.number}`;
  return {
    name: where,
    several: true,
    ...('bytes' in line ? { bytes: line.bytes } : { problem: TOO_LONG }),
  };
}

/** The lines of a single case, up to a little more than a case may have. */
async function rest(head: readonly Line[], lines: AsyncIterable<Line>): Promise<Line[]> {
  const all = [...head];
  let size = all.reduce((sum, line) => sum + ('bytes' in line ? line.bytes.length : 0), 0);
  for await (const line of lines) {
    all.push(line);
    size += 'bytes' in line ? line.bytes.length + 1 : 0;
    if (size > MAX_CASE_BYTES || 'tooLong' in line) break;
  }
  return all;
}

/** Put together again, line breaks included, so that places in messages are right. */
function whole(lines: readonly Line[]): { bytes: Uint8Array } | { problem: Problem } {
  const parts = lines.flatMap((line, index) =>
    'bytes' in line ? [...(index > 0 ? [Buffer.from('\n')] : []), line.bytes] : [],
  );
  const bytes = Buffer.concat(parts);
  return lines.some((line) => 'tooLong' in line) || bytes.length > MAX_CASE_BYTES
    ? {
        problem: {
          what: `more than ${MAX_CASE_BYTES} bytes arrived`,
          accepted: `a case of at most ${MAX_CASE_BYTES} bytes, or JSON lines: one case a line`,
        },
      }
    : { bytes };
}
