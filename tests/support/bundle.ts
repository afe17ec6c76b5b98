/** One TypeScript file and all it needs as a single script, as the build makes it: starts much faster than tsx. */
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const BANNER = [
  "import { createRequire as testRequire } from 'node:module';",
  "import { fileURLToPath as testPath } from 'node:url';",
  'const require = testRequire(import.meta.url);',
  'const __filename = testPath(import.meta.url);',
].join(' ');

/** @param entry path from the root of the project */
export async function bundle(entry: string, outfile: string): Promise<void> {
  await build({
    absWorkingDir: fileURLToPath(new URL('../../', import.meta.url)),
    entryPoints: [entry],
    outfile,
    bundle: true,
    format: 'esm',
    platform: 'node',
    target: 'node20.19',
    banner: { js: BANNER },
    logLevel: 'error',
  });
}
