// Writes src/rules/index.ts, the typed index of the cause files, in the order of the contract (CAUSE_IDS).
// Run it after adding a file to src/rules/causes: `npm run index:causes`.
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';

const folder = new URL('../src/rules/', import.meta.url);
const order = [
  ...readFileSync(new URL('cause.ts', folder), 'utf8')
    .split('CAUSE_IDS = [')[1]
    .split(']')[0]
    .matchAll(/'([^']+)'/g),
].map((m) => m[1]);
const files = readdirSync(new URL('causes/', folder))
  .filter((name) => name.endsWith('.ts'))
  .map((name) => name.slice(0, -3));
const unknown = files.filter((id) => !order.includes(id));
if (unknown.length > 0) throw new Error(`not in CAUSE_IDS of src/rules/cause.ts: ${unknown.join(', ')}`);
const ids = order.filter((id) => files.includes(id));
const camel = (id) => id.replace(/-(.)/g, (_, letter) => letter.toUpperCase());

writeFileSync(
  new URL('index.ts', folder),
  `/** All causes, in the order of the contract. Written by \`npm run index:causes\`; do not edit. */
import type { Cause, CauseId } from './cause.js';
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
