/** The shipped cases with their expectation, difficulty and whether they are set aside. */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { responsesIn } from '../src/disk/response-files.js';
import type { FactBook } from '../src/facts/book.js';
import { type Expectation, readCase } from '../src/facts/case-file.js';

export const CASES_FOLDER = fileURLToPath(new URL('../cases/', import.meta.url));
const EVAL_FOLDER = fileURLToPath(new URL('.', import.meta.url));

export const DIFFICULTIES = ['easy', 'medium', 'hard', 'undecidable'] as const;
export type Difficulty = (typeof DIFFICULTIES)[number];

export interface ShippedCase {
  readonly name: string;
  readonly difficulty: Difficulty;
  /** Scored apart: never looked at while weights are tuned. */
  readonly heldOut: boolean;
  readonly book: FactBook;
  readonly expect: Expectation;
  readonly warnings: readonly string[];
}

/** All cases by name. Throws where a case has no expectation or no difficulty. */
export function loadCases(): ShippedCase[] {
  const difficulties = readJson<Record<string, Difficulty>>('difficulty.json');
  const heldOut = new Set(readJson<{ cases: string[] }>('held-out.json').cases);
  return readdirSync(CASES_FOLDER)
    .filter((file) => file.endsWith('.json'))
    .sort()
    .map((file) => {
      const name = file.slice(0, -'.json'.length);
      const { book, expect, warnings } = readCase(readFileSync(CASES_FOLDER + file, 'utf8'), {
        readResponse: responsesIn(CASES_FOLDER),
      });
      const difficulty = difficulties[name];
      if (expect === undefined || difficulty === undefined) {
        throw new Error(`cases/${file} needs "expect" and a line in eval/difficulty.json`);
      }
      return {
        name,
        difficulty,
        heldOut: heldOut.has(name),
        book,
        expect,
        warnings: warnings.map(({ path, text }) => `${path}: ${text}`),
      };
    });
}

function readJson<T>(file: string): T {
  return JSON.parse(readFileSync(EVAL_FOLDER + file, 'utf8')) as T;
}

/** The causes that are true in a case; empty where nobody can tell. */
export const truthsOf = ({ expect }: ShippedCase): readonly string[] => expect.top ?? [];

/** What a case shows, in one line. */
function shows({ expect, difficulty }: ShippedCase): string {
  const excluded = expect.ruledOut?.length ? `; not ${expect.ruledOut.join(', ')}` : '';
  if (expect.undecided) return `cannot be decided yet between ${(expect.separates ?? []).join(' and ')}`;
  return `${(expect.top ?? []).join(' and ')} (${difficulty})${excluded}`;
}

/** The text of cases/README.md. */
export function caseList(cases: readonly ShippedCase[]): string {
  const lines = cases.map(
    (each, index) => `${index + 1}. \`${each.name}\` ${each.book.title ?? ''}: ${shows(each)}.`,
  );
  return `# Cases

Invented systems, written from the physics and the trade before any weight was set. Each names the causes that
must lead, and sometimes causes that the numbers or a told test exclude. How hard a case is stands in
\`eval/difficulty.json\`; a third is set aside in \`eval/held-out.json\` and scored apart. The files in
\`responses/\` are written by \`eval/make-responses.ts\`. This list is written by \`eval/list-cases.ts\`.

${lines.join('\n')}
`;
}
