/** The shipped cases with their expectation, difficulty and whether they are set aside. */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { responsesIn } from '../src/disk/response-files.js';
import type { FactBook } from '../src/facts/book.js';
import { type Difficulty, type Expectation, readCase } from '../src/facts/case-file.js';

export const CASES_FOLDER = fileURLToPath(new URL('../cases/', import.meta.url));

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
  return readdirSync(CASES_FOLDER)
    .filter((file) => file.endsWith('.json'))
    .sort()
    .map((file) => {
      const name = file.slice(0, -'.json'.length);
      const { book, expect, warnings } = readCase(readFileSync(CASES_FOLDER + file, 'utf8'), {
        readResponse: responsesIn(CASES_FOLDER),
      });
      if (expect?.difficulty === undefined)
        throw new Error(`cases/${file} needs "expect" with its "difficulty"`);
      return {
        name,
        difficulty: expect.difficulty,
        heldOut: expect.setAside === true,
        book,
        expect,
        warnings: warnings.map(({ path, text }) => `${path}: ${text}`),
      };
    });
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
its \`expect\`, and whether it is set aside: about a third is, and is scored apart. The files in \`responses/\` are written
by \`eval/make-responses.ts\`. This list is written by \`npm run index\`.

${lines.join('\n')}
`;
}
