/** `center-audit read`: an owner's own words into a draft case. */
import { readLimited } from '../disk/read-file.js';
import { type TextOptions, textOptions } from '../explain/terminal.js';
import { hanging, wrapped } from '../explain/wrap.js';
import { writeCase } from '../facts/case-file.js';
import { CONSTRAINTS } from '../facts/constraints.js';
import { plural } from '../facts/format.js';
import { plainLine } from '../lib/sanitize.js';
import { UserError } from '../lib/user-error.js';
import { draftOf } from '../reading/draft.js';
import { MOST_LETTERS } from '../reading/find.js';
import { type Reading, readText } from '../reading/read.js';
import { explained, takenText } from '../reading/words.js';
import { fileSink } from './batch/sink.js';
import { EXIT, type ExitCode, type GlobalOptions, type StreamIo } from './io.js';
import { STDIN, STDIN_NAME } from './load-case.js';
import { type FormatOptions, textFlags, wantsJson } from './options.js';

interface ReadOptions extends GlobalOptions, FormatOptions {
  readonly explain?: boolean;
  /** Where the draft case goes. */
  readonly output?: string;
}

const MOST_BYTES = 4_000_000;

export async function run(io: StreamIo, path: string, options: ReadOptions): Promise<ExitCode> {
  const asJson = wantsJson(options);
  const reading = readText(await textFrom(io, path));
  if (reading.taken.length + reading.unsure.length === 0)
    io.err(
      'Nothing was understood: the draft holds the words alone. Read is English, about the own system.\n',
    );
  const draft = writeCase(draftOf(reading));
  if (options.output !== undefined) {
    const sink = await fileSink(io, options.output, [path]);
    await sink.write(draft);
    sink.keep();
    io.err(`Written to ${plainLine(options.output)}.\n`);
  }
  if (asJson) {
    io.out(`${JSON.stringify(readingJson(reading, draft), null, 2)}\n`);
  } else if (options.explain || options.output !== undefined || io.stdoutIsTerminal) {
    const text = textOptions(io, textFlags(options));
    io.out(options.explain ? explainText(reading, text) : summaryText(reading, text));
  } else {
    // Into a pipe goes the case itself, so that `read - | audit -` is all one needs.
    io.out(draft);
  }
  return EXIT.done;
}

async function textFrom(io: StreamIo, path: string): Promise<string> {
  if (path === STDIN && io.stdinIsTerminal)
    io.err('Paste or type the text; Ctrl-D on a line of its own ends it.\n');
  const bytes = path === STDIN ? await io.readStdin(MOST_BYTES) : readLimited(path, MOST_BYTES);
  const text = new TextDecoder('utf-8').decode(bytes);
  if (text.trim() === '') {
    throw new UserError({
      where: path === STDIN ? STDIN_NAME : plainLine(path),
      what: 'there are no words in it',
      accepted: 'a post, a mail or a call note in plain text',
      example: 'center-audit read post.txt',
    });
  }
  if (text.length > MOST_LETTERS)
    io.err(
      `Only the first ${MOST_LETTERS} letters are read; the other ${text.length - MOST_LETTERS} are not.\n`,
    );
  return text;
}

function readingJson({ taken, unsure, left }: Reading, draft: string): object {
  return {
    format: 'center-audit/reading',
    version: 1,
    case: JSON.parse(draft) as object,
    taken,
    unsure,
    left,
  };
}

function explainText(reading: Reading, { width }: TextOptions): string {
  const lines = explained(reading).flatMap(({ sentence, taken, unsure }) => [
    ...wrapped(sentence, width),
    ...(taken.length + unsure.length === 0 ? ['  left unread'] : []),
    ...taken.flatMap((each) => hanging('  + ', each, width)),
    ...unsure.flatMap((each) => hanging('  ? ', each, width)),
    '',
  ]);
  return `${lines.join('\n')}${countText(reading)}\n`;
}

function summaryText(reading: Reading, { width }: TextOptions): string {
  const units = reading.units ?? 'metric';
  const part = (head: string, list: readonly string[], mark: string): string[] =>
    list.length === 0 ? [] : [head, ...list.flatMap((each) => hanging(`  ${mark} `, each, width)), ''];
  const lines = [
    ...part(
      'UNDERSTOOD',
      reading.taken.map((each) => takenText(each, units)),
      '+',
    ),
    ...part(
      'RULED OUT IN THIS HOME',
      reading.constraints.map((id) => CONSTRAINTS[id]),
      '+',
    ),
    ...part(
      'TO ASK',
      reading.unsure.map(({ question }) => question),
      '?',
    ),
  ];
  return `${lines.join('\n')}${lines.length > 0 ? '\n' : ''}${countText(reading)}\n`;
}

function countText({ taken, unsure, left }: Reading): string {
  const asked = unsure.length === 0 ? '' : `, ${plural(unsure.length, 'thing')} to ask`;
  return `${plural(taken.length, 'thing')} understood${asked}, ${plural(left.length, 'sentence')} left unread.`;
}
