// Bundles the program into dist/: entries for the program, its worker threads and the library, split into chunks that
// are loaded when a command needs them. Libraries are bundled too, so that the installed package depends on
// nothing and starts fast. The same modules once more as one page for a browser: build-page.mjs.
import { execFileSync } from 'node:child_process';
import { chmodSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { basename, dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { buildPage } from './build-page.mjs';

const root = new URL('../', import.meta.url);
const at = (path) => fileURLToPath(new URL(path, root));
const { version } = JSON.parse(readFileSync(at('package.json'), 'utf8'));
// The pool starts its threads from a file of its own, which has to lie beside the bundle.
const poolWorker = join(dirname(createRequire(import.meta.url).resolve('piscina')), 'worker.js');

const { outputFiles, metafile } = await build({
  absWorkingDir: at('.'),
  entryPoints: {
    cli: 'src/cli.ts',
    library: 'src/library.ts',
    'batch-worker': 'src/commands/batch/worker.ts',
    worker: poolWorker,
  },
  outdir: 'dist',
  write: false,
  metafile: true,
  bundle: true,
  splitting: true,
  format: 'esm',
  platform: 'node',
  target: 'node20.19',
  minifySyntax: true,
  minifyWhitespace: true,
  legalComments: 'none',
  external: ['@napi-rs/nice'],
  // Its entry for Node asks for its parts in a way that no bundler can follow; the other one is the same code.
  alias: { 'jsonc-parser': 'jsonc-parser/lib/esm/main.js' },
  define: {
    __VERSION__: JSON.stringify(version),
    __dirname: 'centerAuditFolder',
    __filename: 'centerAuditFile',
  },
  // CommonJS libraries inside the bundle ask for `require`, `__dirname` and `__filename`; the odd names cannot clash with theirs.
  banner: {
    js: "import { createRequire as centerAuditCreateRequire } from 'node:module'; const require = centerAuditCreateRequire(import.meta.url), centerAuditFolder = import.meta.dirname, centerAuditFile = import.meta.filename;",
  },
  logLevel: 'warning',
});

const page = await buildPage(version);
const inputs = [...Object.keys(metafile.inputs), ...page.inputs];
outputFiles.push(
  { path: at('dist/center-audit.html'), contents: page.html },
  { path: at('dist/licenses.txt'), contents: licenses(inputs) },
  // Types that import nothing and hold no values are declarations as they stand; library.ts is checked against them.
  { path: at('dist/library.d.ts'), contents: readFileSync(at('src/library-types.ts'), 'utf8') },
);

// Names of chunks hold a hash of what is in them: new ones are added before old ones go, so that a program that
// is running meanwhile still finds its own.
mkdirSync(at('dist'), { recursive: true });
for (const file of outputFiles) put(file);
const schema = at('dist/case.schema.json');
const printed = execFileSync(process.execPath, [at('dist/cli.js'), 'facts', '--schema'], {
  maxBuffer: 2 ** 24,
});
put({ path: schema, contents: JSON.stringify(JSON.parse(printed)) });

const fresh = new Set([schema, ...outputFiles.map(({ path }) => path)].map((path) => basename(path)));
for (const name of readdirSync(at('dist'))) {
  if (!fresh.has(name)) rmSync(join(at('dist'), name), { recursive: true, force: true });
}

function put({ path, contents }) {
  const part = `${path}.${process.pid}.part`;
  writeFileSync(part, contents);
  if (basename(path) === 'cli.js') chmodSync(part, 0o755);
  renameSync(part, path);
}

/** Libraries in the bundle keep their notices: name, version and license text of each. */
function licenses(inputs) {
  const folders = inputs.flatMap((path) => /^(.*node_modules\/(?:@[^/]+\/)?[^/]+)\//.exec(path)?.[1] ?? []);
  return [...new Set(folders)]
    .sort()
    .map((folder) => {
      const { name, version, license } = JSON.parse(readFileSync(at(`${folder}/package.json`), 'utf8'));
      const file = readdirSync(at(folder)).find((each) => /^licen[cs]e/i.test(each));
      const text = file === undefined ? `License: ${license}` : readFileSync(at(`${folder}/${file}`), 'utf8');
      return `${name} ${version}\n\n${text.trim()}\n`;
    })
    .join(`\n${'-'.repeat(40)}\n\n`);
}
