// Writes the handbook: `npm run handbook [markdown|html] [folder]`, Markdown into ./handbook when left out.
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { type HandbookFormat, handbook } from '../src/explain/pages/handbook.js';

const [format = 'markdown', folder = 'handbook'] = process.argv.slice(2);
if (format !== 'markdown' && format !== 'html') {
  console.error(
    `handbook: "${format}" is no format; accepted: markdown, html; example: npm run handbook html`,
  );
  process.exit(2);
}
const files = await handbook(format satisfies HandbookFormat);
mkdirSync(folder, { recursive: true });
for (const [name, content] of files) writeFileSync(join(folder, name), content);
console.log(`${files.size} files in ${folder}`);
