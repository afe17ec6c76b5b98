/**
 * `npx tsx eval/reproduce.ts [name ...]`: cases on which the first build judged wrongly. Prints what it said then
 * and what is said now, and whether each cause moved the way `moves.json` asks for. `--record` keeps the present
 * probabilities as those of then: only ever done on the build they are named after.
 */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { responsesIn } from '../src/disk/response-files.js';
import { readCase } from '../src/facts/case-file.js';
import { auditSync } from '../src/reasoning/audit.js';
import type { CauseId } from '../src/rules/cause-ids.js';

const FOLDER = fileURLToPath(new URL('./reproducers/', import.meta.url));
/** Probabilities of the first build, by case and cause; those below 1 % are left out. */
type Then = Record<string, Partial<Record<CauseId, number>>>;
/** What must be true now: `leads`, or a cause that must have risen or fallen by more than a hair. */
interface Moves {
  readonly leads?: CauseId;
  readonly up?: readonly CauseId[];
  readonly down?: readonly CauseId[];
}
/** Beyond rounding: a change of probability that a reader of the report can see. */
const SEEN = 0.005;
const SHOWN = 4;

const readJson = <T>(file: string): T => JSON.parse(readFileSync(FOLDER + file, 'utf8')) as T;
const args = process.argv.slice(2);
const named = args.filter((arg) => !arg.startsWith('--'));
const cases = readdirSync(FOLDER)
  .filter((file) => /^[a-z]-.*\.json$/.test(file))
  .map((file) => file.slice(0, -'.json'.length))
  .filter((name) => named.length === 0 || named.some((part) => name.startsWith(part)));

function now(name: string): Map<CauseId, number> {
  const { book } = readCase(readFileSync(`${FOLDER}${name}.json`, 'utf8'), {
    readResponse: responsesIn(FOLDER),
  });
  return new Map(auditSync(book).ranking.causes.map(({ cause, probability }) => [cause, probability]));
}

if (args.includes('--record')) {
  const then: Then = Object.fromEntries(
    cases.map((name) => {
      const seen = [...now(name)].filter(([, p]) => p >= 0.01);
      return [name, Object.fromEntries(seen.map(([id, p]) => [id, Math.round(p * 1000) / 1000]))];
    }),
  );
  writeFileSync(`${FOLDER}before.json`, `${JSON.stringify(then, null, 1)}\n`);
} else compare();

function compare(): void {
  const then = readJson<Then>('before.json');
  const moves = readJson<Record<string, Moves>>('moves.json');
  let wrong = 0;
  for (const name of cases) {
    const [was, is] = [new Map(Object.entries(then[name] ?? {})), now(name)];
    const { leads, up = [], down = [] } = moves[name] ?? {};
    const delta = (id: CauseId): number => (is.get(id) ?? 0) - (was.get(id) ?? 0);
    const faults = [
      ...(leads && [...is.keys()][0] !== leads ? [`${leads} should lead`] : []),
      ...up.filter((id) => delta(id) < SEEN).map((id) => `${id} should have risen`),
      ...down.filter((id) => delta(id) > -SEEN).map((id) => `${id} should have fallen`),
    ];
    wrong += faults.length > 0 ? 1 : 0;
    const asked = leads || up.length + down.length > 0;
    console.log(
      `${name.padEnd(24)}${faults.length > 0 ? `WRONG ${faults.join('; ')}` : asked ? 'right' : '-'}`,
    );
    console.log(`  then  ${line(was)}\n  now   ${line(is)}`);
  }
  console.log(`${cases.length} cases, ${wrong} wrong`);
  process.exitCode = wrong > 0 ? 1 : 0;
}

function line(ps: ReadonlyMap<string, number>): string {
  return [...ps]
    .slice(0, SHOWN)
    .map(([id, p]) => `${id} ${(100 * p).toFixed(0)}`)
    .join(', ');
}
