// Bundles the program into dist/: one entry, split into chunks that are loaded when a command needs them.
// Libraries are bundled too, so that the installed package depends on nothing and starts fast.
import { chmodSync, readFileSync, rmSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const root = new URL('../', import.meta.url);
const at = (path) => fileURLToPath(new URL(path, root));
const { version } = JSON.parse(readFileSync(at('package.json'), 'utf8'));

rmSync(at('dist'), { recursive: true, force: true });
await build({
  absWorkingDir: at('.'),
  entryPoints: ['src/cli.ts'],
  outdir: 'dist',
  bundle: true,
  splitting: true,
  format: 'esm',
  platform: 'node',
  target: 'node20.19',
  minifySyntax: true,
  minifyWhitespace: true,
  legalComments: 'none',
  define: { __VERSION__: JSON.stringify(version) },
  // CommonJS libraries inside the bundle ask for `require`; the odd name cannot clash with theirs.
  banner: {
    js: "import { createRequire as centerAuditCreateRequire } from 'node:module'; const require = centerAuditCreateRequire(import.meta.url);",
  },
  logLevel: 'warning',
});
chmodSync(at('dist/cli.js'), 0o755);
