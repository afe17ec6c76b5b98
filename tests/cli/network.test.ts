/** The program never talks to a network: nothing in it could, and it runs where there is none. */
import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { CLI, ROOT, runProcess } from '../support/program.js';

const DIST = join(ROOT, 'dist');
const files = readdirSync(DIST).map((name) => [name, readFileSync(join(DIST, name), 'utf8')] as const);

/** Modules of the platform that open sockets or look up names. */
const NETWORK_MODULES =
  /["'](?:node:)?(?:net|http|https|http2|tls|dgram|dns|dns\/promises|inspector|undici)["']/;
/** The same without a module. */
const NETWORK_GLOBALS = /\b(?:fetch\(|new WebSocket|XMLHttpRequest|new EventSource|sendBeacon)/;

describe('the built program', () => {
  it.each(files)('%s has no way to a network', (_, text) => {
    const calls = text.match(/(?:\bfrom|\bimport\(|\brequire\(|getBuiltinModule\()\s*["'][^"']+["']/g) ?? [];
    expect(calls.filter((call) => NETWORK_MODULES.test(call))).toEqual([]);
    expect(text).not.toMatch(NETWORK_GLOBALS);
  });

  const alone = spawnSync('unshare', ['--net', '--map-root-user', 'true']).status === 0;
  it.skipIf(!alone)('audits in a namespace without any network', async () => {
    const { code, out } = await runProcess('unshare', [
      ...['--net', '--map-root-user', process.execPath, CLI],
      ...['audit', 'cases/demo.json', '--format', 'html'],
    ]);
    expect(code).toBe(0);
    expect(out).toContain('</html>');
  });
});
