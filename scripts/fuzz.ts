// The long fuzz run: `npm run fuzz [cases] [seed]`, 10,000 cases and a new seed when left out, on all cores.
// Bytes and command lines are tried as often. A failure prints the seed and the smallest example found.
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { availableParallelism, tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import * as fc from 'fast-check';
import { bytesProperty, caseProperty, commandLineProperty } from '../tests/fuzz/invariants.js';

const USUAL_CASES = 10_000;
const [cases = String(USUAL_CASES), seed = String(Date.now() % 2 ** 31), share] = process.argv.slice(2);

if (share === undefined) await allCores(Number(cases), Number(seed));
else await oneCore(Number(cases), Number(seed));

/** Each core gets a seed of its own. */
async function allCores(total: number, first: number): Promise<void> {
  if (!Number.isInteger(total) || total < 1 || !Number.isInteger(first)) {
    console.error('fuzz: accepted: a number of cases and a seed\n  example: npm run fuzz 10000 42');
    process.exit(2);
  }
  const cores = Math.min(total, availableParallelism());
  console.log(`fuzz: ${total} cases, seed ${first}, ${cores} at once`);
  const began = Date.now();
  const codes = await Promise.all(
    Array.from({ length: cores }, (_, i) => {
      const part = Math.floor(total / cores) + (i < total % cores ? 1 : 0);
      const args = [
        ...process.execArgv,
        fileURLToPath(import.meta.url),
        String(part),
        String(first + i),
        'share',
      ];
      return new Promise<number>((resolve) => {
        spawn(process.execPath, args, { stdio: 'inherit' }).on('close', (code) => resolve(code ?? 1));
      });
    }),
  );
  const failed = codes.filter((code) => code !== 0).length;
  console.log(
    `fuzz: ${failed === 0 ? 'all held' : `${failed} of ${cores} parts failed`}, ${Math.round((Date.now() - began) / 1000)} s`,
  );
  process.exit(failed === 0 ? 0 : 1);
}

async function oneCore(numRuns: number, start: number): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'center-audit-fuzz-'));
  const file = (name: string, text: string): string => {
    writeFileSync(join(folder, name), text);
    return join(folder, name);
  };
  const files = [
    file('case.json', '{"complaints":["dull"],"facts":{"centerLayout":"mid-tweeter-mid","seatDistance":3}}'),
    file('bad.json', '{"facts":{"seatDistance":"3 kg"}}'),
    folder,
    join(folder, 'none.json'),
  ];
  try {
    for (const [what, property] of [
      ['cases', caseProperty],
      ['bytes', bytesProperty],
      ['command lines', commandLineProperty(files)],
    ] as const) {
      await fc.assert(property as fc.IAsyncProperty<unknown>, { numRuns, seed: start });
      console.log(`fuzz: ${numRuns} ${what} held (seed ${start})`);
    }
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    process.exitCode = 1;
  } finally {
    rmSync(folder, { recursive: true });
  }
}
