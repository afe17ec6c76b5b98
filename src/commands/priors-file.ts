/** The file that `learn` writes and `--priors` reads: counts of solved cases, and the priors that follow for people. */
import { en } from 'zod/locales';
import * as z from 'zod/mini';
import { didYouMean, nearest } from '../lib/nearest.js';
import { UserError } from '../lib/user-error.js';
import { priorShiftsDb, type Solved } from '../reasoning/priors.js';
import { CAUSE_IDS } from '../rules/cause-ids.js';
import { CAUSES } from '../rules/index.js';

const PRIORS_FORMAT = 'center-audit/priors';
/** No support desk has solved more. */
const MOST_CASES = 1_000_000;

const SHAPE = z.strictObject({
  format: z.literal(PRIORS_FORMAT),
  version: z.literal(2),
  cases: z.int().check(z.gte(0), z.lte(MOST_CASES)),
  causes: z.record(
    z.string(),
    z.strictObject({
      solved: z.number().check(z.gte(0), z.lte(MOST_CASES)),
      expected: z.number().check(z.gte(0), z.lte(MOST_CASES)),
      builtInDb: z.optional(z.number()),
      priorDb: z.optional(z.number()),
    }),
  ),
});

/** Whole decibans with one decimal are as fine as a prior is known. */
const rounded = (db: number): number => Number(db.toFixed(1));

export function priorsText(solved: Solved): string {
  const shifts = priorShiftsDb(solved);
  const causes = Object.fromEntries(
    CAUSES.map(({ id, priorDb }, i) => [
      id,
      {
        solved: solved.byCause[id]?.solved ?? 0,
        expected: Number((solved.byCause[id]?.expected ?? 0).toFixed(3)),
        builtInDb: priorDb,
        priorDb: rounded(priorDb + (shifts[i] ?? 0)),
      },
    ]),
  );
  return `${JSON.stringify({ format: PRIORS_FORMAT, version: 2, cases: solved.cases, causes }, null, 2)}\n`;
}

/** Throws a UserError that names the file. The counts decide; the priors beside them are for reading. */
export function solvedFrom(name: string, text: string): Solved {
  const found = SHAPE.safeParse(parsed(name, text), { error: en().localeError });
  if (!found.success) {
    const [issue] = found.error.issues;
    throw refused(`${name}: ${issue?.path.join('.') || 'the file'}`, issue?.message ?? 'not as expected');
  }
  const { cases, causes } = found.data;
  const unknown = Object.keys(causes).find((id) => !(CAUSE_IDS as readonly string[]).includes(id));
  if (unknown !== undefined) {
    const hint = didYouMean(nearest(unknown, CAUSE_IDS));
    throw refused(`${name}: causes.${unknown}`, `no cause is called so${hint}`);
  }
  const byCause = Object.fromEntries(
    Object.entries(causes).map(([id, { solved, expected }]) => [id, { solved, expected }]),
  );
  const counted = Object.values(byCause).reduce((sum, { solved }) => sum + solved, 0);
  if (counted > cases + 1e-6)
    throw refused(`${name}: cases`, `${cases} cases cannot have cured ${counted} causes`);
  return { cases, byCause };
}

function parsed(name: string, text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    throw refused(name, 'this is no JSON');
  }
}

const refused = (where: string, what: string): UserError =>
  new UserError({
    where,
    what,
    accepted: 'a file that center-audit learn has written',
    example: 'center-audit learn solved/*.json --output priors.json',
  });
