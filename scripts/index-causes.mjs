// Writes what follows from the cause files: the ids (src/rules/cause-ids.ts), the typed index (src/rules/index.ts) and the
// list of cases (cases/README.md, by eval/list-cases.ts). Run it after adding or removing one: `npm run index`.
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';

const folder = new URL('../src/rules/', import.meta.url);
const idsFile = new URL('cause-ids.ts', folder);
const text = readFileSync(idsFile, 'utf8');
const known = [
  ...text
    .split('CAUSE_IDS = [')[1]
    .split(']')[0]
    .matchAll(/'([^']+)'/g),
].map((m) => m[1]);
const files = readdirSync(new URL('causes/', folder))
  .filter((name) => name.endsWith('.ts'))
  .map((name) => name.slice(0, -3));
// An id keeps its place, for ties in a ranking fall in this order; a new one comes last.
const ids = [
  ...known.filter((id) => files.includes(id)),
  ...files.filter((id) => !known.includes(id)).sort(),
];
const camel = (id) => id.replace(/-(.)/g, (_, letter) => letter.toUpperCase());

writeFileSync(
  idsFile,
  `${text.split('CAUSE_IDS = [')[0]}CAUSE_IDS = [
${ids.map((id) => `  '${id}',`).join('\n')}
] as const;
export type CauseId = (typeof CAUSE_IDS)[number];
`,
);
writeFileSync(
  new URL('index.ts', folder),
  `/** All causes, in the order of the contract. Written by \`npm run index\`; do not edit. */
import type { Cause } from './cause.js';
import type { CauseId } from './cause-ids.js';
${[...ids]
  .sort()
  .map((id) => `import { ${camel(id)} } from './causes/${id}.js';`)
  .join('\n')}

export const CAUSES: readonly Cause[] = [
${ids.map((id) => `  ${camel(id)},`).join('\n')}
];

const BY_ID = new Map<CauseId, Cause>(CAUSES.map((cause) => [cause.id, cause]));

export function causeOf(id: CauseId): Cause {
  const cause = BY_ID.get(id);
  if (!cause) throw new RangeError(\`no cause file for \${id}\`);
  return cause;
}
export function isCauseId(id: string): id is CauseId {
  return BY_ID.has(id as CauseId);
}
`,
);
