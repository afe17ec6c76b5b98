/** What must hold for any case and any command line, as properties for short and long runs. */
import * as fc from 'fast-check';
import { auditOne, type Job } from '../../src/commands/batch/one.js';
import { FORMATS, render } from '../../src/commands/formats.js';
import { buildProgram, runProgram } from '../../src/commands/program.js';
import { buildReport } from '../../src/explain/report.js';
import { PLAIN_TEXT } from '../../src/explain/terminal.js';
import type { FactBook } from '../../src/facts/book.js';
import { readCase, writeCase } from '../../src/facts/case-file.js';
import { FACT_IDS } from '../../src/facts/catalog.js';
import { largestFirst } from '../../src/lib/ties.js';
import { UserError } from '../../src/lib/user-error.js';
import { type Audit, audit, auditSync } from '../../src/reasoning/audit.js';
import { MOST_CERTAIN } from '../../src/reasoning/decibans.js';
import { CAUSE_IDS } from '../../src/rules/cause-ids.js';
import { anyBook } from '../support/books.js';
import { memoryIo } from '../support/memoryIo.js';

function must(holds: boolean, what: string): asserts holds {
  if (!holds) throw new Error(what);
}

/** Every number of a value that is plain JSON; a path to the first that is not finite. */
export function unsoundNumber(value: unknown, path = ''): string | undefined {
  if (typeof value === 'number') return Number.isFinite(value) ? undefined : `${path} is ${value}`;
  if (value === undefined) return `${path} is undefined`;
  if (typeof value !== 'object' || value === null) return undefined;
  for (const [key, each] of Object.entries(value)) {
    const found = unsoundNumber(each, `${path}.${key}`);
    if (found !== undefined) return found;
  }
  return undefined;
}

/** The figures of a ranking, which no way of writing the same case may change. */
const figures = ({ ranking }: Audit): string =>
  JSON.stringify(
    ranking.causes.map(({ cause, decibans, probability, verdict }) => [
      cause,
      decibans,
      probability,
      verdict,
    ]),
  );

const sameFigures = (before: Audit, book: FactBook, what: string): void =>
  must(figures(auditSync(book)) === figures(before), what);

/** Any case: no crash, sound numbers, an order that depends on nothing but what is known. */
export const caseProperty = fc.asyncProperty(
  anyBook,
  fc.infiniteStream(fc.double({ noNaN: true })),
  async (book, keys) => {
    const audited = await audit(book);
    const { causes } = audited.ranking;
    must(causes.length === CAUSE_IDS.length, 'every cause is ranked');
    for (const [place, { cause, probability, decibans }] of causes.entries()) {
      must(probability >= 0 && probability <= MOST_CERTAIN, `${cause} has probability ${probability}`);
      const next = causes[place + 1];
      if (next === undefined) continue;
      // Sums that differ only by rounding are level, and keep the order of the list.
      const order = largestFirst(decibans, next.decibans);
      const tie = order === 0 && CAUSE_IDS.indexOf(cause) < CAUSE_IDS.indexOf(next.cause);
      must(order < 0 || tie, `${cause} stands in front of ${next.cause}`);
    }
    sameFigures(audited, book, 'the same case gives the same figures again');
    const shuffled = [...book.answers]
      .map((entry) => [keys.next().value, entry] as const)
      .sort(([a], [b]) => a - b);
    sameFigures(
      audited,
      { ...book, answers: new Map(shuffled.map(([, entry]) => entry)) },
      'the order of facts is irrelevant',
    );
    const units = book.units === 'metric' ? 'imperial' : 'metric';
    sameFigures(audited, { ...book, units }, 'the unit system is irrelevant');
    const known = new Map([...book.answers].filter(([, answer]) => 'value' in answer));
    sameFigures(audited, { ...book, answers: known }, 'a fact marked unknown says nothing');
    sameFigures(audited, readCase(writeCase(book)).book, 'a written case reads back as the same case');

    const report = buildReport(audited);
    const unsound = unsoundNumber(report);
    must(unsound === undefined, `report${unsound}`);
    for (const format of FORMATS) {
      const text = await render(format, {
        report,
        audit: audited,
        text: PLAIN_TEXT,
        caseName: 'case.json',
        long: true,
      });
      must(text.length > 200 && text.endsWith('\n'), `${format} is whole`);
      must(
        !/\bNaN\b|\bInfinity\b|\bundefined\b|\[object /.test(withoutOwner(text, book)),
        `${format} shows what is no number`,
      );
    }
  },
);

/** The owner may write what he likes. */
function withoutOwner(text: string, book: FactBook): string {
  const own = [book.title, book.words, ...book.notes].join(' ');
  return /NaN|Infinity|undefined|object/.test(own) ? '' : text;
}

/** A piece of text cut out, put in, or doubled. */
const cut = fc.record({
  from: fc.nat(),
  length: fc.nat({ max: 30 }),
  insert: fc.oneof(
    fc.string({ maxLength: 8 }),
    fc.constantFrom(
      '{',
      '}',
      '"',
      ',',
      '[[[[',
      '1e999',
      'null',
      '\u0000',
      '\ufeff',
      '__proto__',
      '-',
      '"value":',
    ),
  ),
});

/** Text that was a case once, and text that never was. */
const anyBytes: fc.Arbitrary<Uint8Array> = fc.oneof(
  fc.tuple(anyBook, fc.array(cut, { minLength: 1, maxLength: 4 })).map(([book, cuts]) => {
    const broken = cuts.reduce((text, { from, length, insert }) => {
      const at = from % (text.length + 1);
      return text.slice(0, at) + insert + text.slice(at + length);
    }, writeCase(book));
    return new TextEncoder().encode(broken);
  }),
  fc.json({ maxDepth: 6 }).map((text) => new TextEncoder().encode(text)),
  fc
    .dictionary(
      fc.constantFrom('format', 'version', 'units', 'title', 'complaints', 'facts', 'seats', 'expect'),
      fc.jsonValue(),
    )
    .map((value) => new TextEncoder().encode(JSON.stringify(value))),
  fc
    .dictionary(fc.constantFrom(...FACT_IDS), fc.jsonValue())
    .map((facts) => new TextEncoder().encode(JSON.stringify({ facts }))),
  fc.uint8Array({ maxLength: 200 }),
);

const JOB: Job = { format: 'ranking', text: PLAIN_TEXT, long: false, debug: '1' };

/** Any bytes: a result, or a refusal that says what, where and what is accepted; never a fault. */
export const bytesProperty = fc.asyncProperty(anyBytes, async (bytes) => {
  const { code, err } = await auditOne({ name: 'case', several: false, bytes }, JOB);
  must(code === 0 || code === 2, `exit code ${code}: ${err}`);
  if (code === 2)
    must(/^case: /.test(err) && /\n {2}accepted: /.test(err), `a refusal without its parts: ${err}`);
});

/** Words of command lines: commands, options, ids, files and slips. */
function wordsOf(files: readonly string[]): fc.Arbitrary<string> {
  return fc.oneof(
    {
      weight: 4,
      arbitrary: fc.constantFrom(
        'audit',
        'why',
        'next',
        'try',
        'compare',
        'explain',
        'calc',
        'facts',
        'completion',
        'help',
        'interview',
      ),
    },
    { weight: 4, arbitrary: fc.constantFrom(...files, '-') },
    {
      weight: 3,
      arbitrary: fc.constantFrom(
        '--json',
        '--format',
        'text',
        'html',
        'bbcode',
        'json',
        '--summary',
        '--jobs',
        '1',
        '--against',
        '--schema',
        '--minutes',
        '--full',
        '--accessible',
        '--no-color',
        '--help',
        '-h',
        '-V',
        '--',
      ),
    },
    {
      weight: 3,
      arbitrary: fc.constantFrom(
        'delay',
        'level',
        'seatDistance',
        'seatDistance=3 m',
        'seats.0.xM=1',
        'centerLayout=?',
        'comb',
        'delayMs=1',
        'bash',
      ),
    },
    { weight: 1, arbitrary: fc.string({ maxLength: 12 }) },
  );
}

/**
 * Any command line: an exit code of the contract, or a refusal in the shape of all errors, and then nothing on
 * standard output.
 * @param files paths that may be named
 */
export const commandLineProperty = (files: readonly string[]) =>
  fc.asyncProperty(
    fc.array(wordsOf(files), { maxLength: 7 }),
    fc.constantFrom('', '{}', '{"facts":{}}\n{}\n', '['),
    async (words, stdin) => {
      const io = memoryIo({ stdin });
      let code: number = 0;
      try {
        await runProgram(
          buildProgram(io, '0.0.0', (told) => {
            code = told;
          }),
          words,
        );
      } catch (error) {
        must(
          error instanceof UserError,
          `${words.join(' ')}: ${error instanceof Error ? error.stack : error}`,
        );
        must(
          error.problems.every((problem) => problem.accepted !== undefined),
          `${words.join(' ')}: nothing accepted`,
        );
        must(io.printed.out === '', `${words.join(' ')}: printed before it refused`);
        return;
      }
      must([0, 2, 3].includes(code), `${words.join(' ')}: exit code ${code}: ${io.printed.err}`);
    },
  );
