/** What the house lacks of causes and cases, all of it at once: each place by name, and the command that mends it. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const ROOT = join(import.meta.dirname, '..');
const GOLDEN = 'tests/golden/evidence';
const namesIn = (folder: string, ending: string): string[] =>
  readdirSync(join(ROOT, folder))
    .filter((name) => name.endsWith(ending))
    .map((name) => name.slice(0, -ending.length));
const textOf = (path: string): string => {
  try {
    return readFileSync(join(ROOT, path), 'utf8');
  } catch {
    return '';
  }
};

export function missingPlaces(): string[] {
  const causes = namesIn('src/rules/causes', '.ts');
  const cases = namesIn('cases', '.json');
  const ids = textOf('src/rules/cause-ids.ts');
  const index = textOf('src/rules/index.ts');
  const list = textOf('cases/README.md');
  const shown = new Set(
    cases.flatMap((name): string[] => JSON.parse(textOf(`cases/${name}.json`)).expect?.top ?? []),
  );
  const lacks = (isThere: boolean, what: string): string[] => (isThere ? [] : [what]);
  return [
    ...causes.flatMap((id) => [
      ...lacks(
        textOf(`src/rules/causes/${id}.ts`).includes(`id: '${id}'`),
        `src/rules/causes/${id}.ts: no id '${id}'`,
      ),
      ...lacks(
        textOf(`tests/rules/${id}.test.ts`).includes('testCause('),
        `tests/rules/${id}.test.ts: no testCause`,
      ),
      ...lacks(shown.has(id), `cases/: no case whose expect.top names ${id}`),
      ...lacks(
        ids.includes(`'${id}'`) && index.includes(`causes/${id}.js`),
        `src/rules/index.ts: without ${id}; npm run index`,
      ),
      ...lacks(
        existsSync(join(ROOT, GOLDEN, 'causes', `${id}.json`)),
        `${GOLDEN}/causes/${id}.json; npm run golden:evidence`,
      ),
    ]),
    ...cases.flatMap((name) => [
      ...lacks(
        /"expect"[^}]*"difficulty"/s.test(textOf(`cases/${name}.json`)),
        `cases/${name}.json: expect has no difficulty`,
      ),
      ...lacks(list.includes(`\`${name}\``), `cases/README.md: without ${name}; npm run index`),
      ...lacks(
        existsSync(join(ROOT, GOLDEN, 'cases', `${name}.json`)),
        `${GOLDEN}/cases/${name}.json; npm run golden:evidence`,
      ),
    ]),
    ...[...causes.map((id) => `src/rules/causes/${id}.ts`), ...cases.map((name) => `cases/${name}.json`)]
      .filter((path) => textOf(path).includes('…'))
      .filter((path) => /['"`]…|\* …|\/\/ …/.test(textOf(path)))
      .map((path) => `${path}: something is still to be said where “…” stands`),
  ];
}
