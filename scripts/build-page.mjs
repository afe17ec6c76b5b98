// The whole program as one page. Script and style stand inside it, and the policy
// names both by their hash, so nothing else can run or load.
import { createHash } from 'node:crypto';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const root = new URL('../', import.meta.url);
const at = (path) => fileURLToPath(new URL(path, root));
/** The most a page may weigh, bytes. */
const MOST_BYTES = 1_500_000;

/** The page, and the source files that went into it. */
export async function buildPage(version) {
  const style = (await textOf('src/page/style.ts')).default;
  const { text, inputs } = await bundle('src/page/main.tsx', { __VERSION__: JSON.stringify(version) });
  const page = html({ style, script: text.replaceAll('</script', '<\\/script') });
  const bytes = Buffer.byteLength(page);
  if (bytes > MOST_BYTES) throw new Error(`the page has ${bytes} bytes; at most ${MOST_BYTES}`);
  return { html: page, inputs };
}

async function bundle(entry, define = {}) {
  const { outputFiles, metafile } = await build({
    absWorkingDir: at('.'),
    entryPoints: [entry],
    write: false,
    metafile: true,
    bundle: true,
    format: 'iife',
    platform: 'browser',
    target: ['chrome109', 'firefox115', 'safari16.4'],
    minify: true,
    legalComments: 'none',
    tsconfig: 'src/page/tsconfig.json',
    alias: { 'jsonc-parser': 'jsonc-parser/lib/esm/main.js' },
    loader: { '.css': 'text' },
    define,
    logLevel: 'warning',
  });
  return { text: outputFiles[0].text, inputs: Object.keys(metafile.inputs) };
}

/** What a module of texts exports. */
async function textOf(entry) {
  const { outputFiles } = await build({
    absWorkingDir: at('.'),
    entryPoints: [entry],
    write: false,
    bundle: true,
    format: 'esm',
    platform: 'node',
    loader: { '.css': 'text' },
    logLevel: 'warning',
  });
  const url = `data:text/javascript;base64,${Buffer.from(outputFiles[0].text).toString('base64')}`;
  return import(url);
}

const hash = (text) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;

function html({ style, script }) {
  // The report is shown in a frame that takes over this policy, so its own style is named here too: it is the first
  // part of the page's.
  const policy = [
    "default-src 'none'",
    `script-src ${hash(script)}`,
    `style-src ${hash(style.page)} ${hash(style.report)}`,
    'img-src data:',
    'media-src blob:',
    'worker-src blob:',
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ');
  return `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<meta name="referrer" content="no-referrer">
<title>Center loudspeaker audit</title>
<style>${style.page}</style>
</head>
<body>
<a class="skip" href="#main">Skip to the content</a>
<div id="app"></div>
<noscript><p>This page computes in your browser and needs its script; it loads nothing and sends nothing.</p></noscript>
<script>${script}</script>
</body>
</html>
`;
}
