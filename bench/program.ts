/**
 * `npm run bench`: what the built program costs, beside a bare `node` in the same run. Best of several rounds that
 * take turns, since other work on the machine only ever slows things down; ratios carry over to other machines.
 */
import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { availableParallelism, tmpdir } from 'node:os';
import { join } from 'node:path';
import { responsesIn } from '../src/disk/response-files.js';
import { withAnswer } from '../src/facts/book.js';
import { readCase } from '../src/facts/case-file.js';
import { auditSync } from '../src/reasoning/audit.js';
import { possibleAnswers } from '../src/reasoning/hypotheses.js';
import { next } from '../src/reasoning/next.js';

const ROUNDS = 15;
const MANY = 1000;
/** Aims of the project: ratios to a bare node, seconds for a thousand cases, milliseconds for a question. */
const AIM = { help: 1.4, audit: 2.3, manySeconds: 10, nextMs: 20 };
const CLI = join(process.cwd(), 'dist', 'cli.js');
const MIB = 1024 * 1024;

const folder = mkdtempSync(join(tmpdir(), 'center-audit-bench-'));
const rows: [string, string, string][] = [];
try {
  await main();
} finally {
  rmSync(folder, { recursive: true, force: true });
}

async function main(): Promise<void> {
  const empty = join(folder, 'empty.mjs');
  writeFileSync(empty, '');
  const demo = join(process.cwd(), 'cases', 'demo.json');
  const commands = {
    'bare node': [empty],
    'start to help': [CLI, '--help'],
    'audit of a case': [CLI, 'audit', demo],
    'audit as JSON': [CLI, 'audit', demo, '--json'],
    'audit as a page': [CLI, 'audit', demo, '--format', 'html'],
    'ranking alone': [CLI, 'audit', demo, '--summary'],
    'next as a process': [CLI, 'next', demo],
  };
  const ms = bestOfProcesses(commands);
  const bare = ms['bare node'];
  const aims: Partial<Record<keyof typeof commands, number>> = {
    'start to help': AIM.help,
    'audit of a case': AIM.audit,
  };
  for (const name of Object.keys(commands) as (keyof typeof commands)[]) {
    const aim = aims[name];
    rows.push([
      name,
      `${ms[name].toFixed(0)} ms`,
      `${(ms[name] / bare).toFixed(2)} x node${aim ? ` (aim ${aim})` : ''}`,
    ]);
  }
  const [started, plain] = [await firstQuestionMs(), await bareTerminalMs(empty)];
  rows.push([
    'start to first question',
    `${started.toFixed(0)} ms`,
    `${(started / plain).toFixed(2)} x node in a terminal`,
  ]);

  const lines = join(folder, 'many.jsonl');
  writeFileSync(lines, manyCases());
  const cores = availableParallelism();
  for (const jobs of [...new Set([1, cores])]) {
    const ranked = await batch(lines, jobs, '--summary');
    const { seconds, earlyMib, lateMib, done } = await batch(lines, jobs, '--json');
    rows.push([
      `${MANY} cases, ${jobs === 1 ? 'one thread' : `${jobs} threads`}`,
      `${seconds.toFixed(1)} s`,
      `${done} answered (aim ${AIM.manySeconds} s)`,
    ]);
    rows.push(['  ranked alone (--summary)', `${ranked.seconds.toFixed(1)} s`, '']);
    rows.push(['  memory, first third and last', `${earlyMib.toFixed(0)} MiB`, `${lateMib.toFixed(0)} MiB`]);
  }
  const asked = nextMs();
  rows.push([
    'next question, warm, middle',
    `${asked.median.toFixed(1)} ms`,
    `worst ${asked.worst.toFixed(1)} ms (aim ${AIM.nextMs} ms)`,
  ]);
  print();
}

/** Wall time of whole processes, ms, each the best of its rounds. */
function bestOfProcesses<N extends string>(
  commands: Readonly<Record<N, readonly string[]>>,
): Record<N, number> {
  const names = Object.keys(commands) as N[];
  const best = Object.fromEntries(names.map((name) => [name, Number.POSITIVE_INFINITY])) as Record<N, number>;
  for (let round = 0; round < ROUNDS; round++) {
    for (const name of names) {
      const began = performance.now();
      const { status } = spawnSync(process.execPath, commands[name], {
        stdio: ['ignore', 'ignore', 'ignore'],
      });
      if (status !== 0) throw new Error(`${name}: exit code ${status}`);
      best[name] = Math.min(best[name], performance.now() - began);
    }
  }
  return best;
}

/** A terminal around a command: `script` gives it one, and passes on what is drawn. */
function inTerminal(line: string): ChildProcess {
  return spawn('script', ['-qec', line, '/dev/null'], {
    stdio: ['pipe', 'pipe', 'ignore'],
    env: { ...process.env, XDG_STATE_HOME: folder, XDG_DATA_HOME: folder, XDG_CONFIG_HOME: folder },
  });
}

/** Until the program first waits for an answer. */
async function firstQuestionMs(): Promise<number> {
  let best = Number.POSITIVE_INFINITY;
  for (let round = 0; round < ROUNDS; round++) {
    const began = performance.now();
    const child = inTerminal(`${process.execPath} ${CLI} interview ${join(folder, `new-${round}.json`)}`);
    await new Promise<void>((resolve) => {
      let shown = '';
      child.stdout?.on('data', (text) => {
        shown += text;
        if (/Question 1[\s\S]*\n >/.test(shown)) resolve();
      });
      child.on('exit', () => resolve());
    });
    best = Math.min(best, performance.now() - began);
    child.stdin?.end('s\r');
    child.kill();
  }
  return best;
}

async function bareTerminalMs(empty: string): Promise<number> {
  let best = Number.POSITIVE_INFINITY;
  for (let round = 0; round < ROUNDS; round++) {
    const began = performance.now();
    const child = inTerminal(`${process.execPath} ${empty}`);
    await new Promise((resolve) => child.on('exit', resolve));
    best = Math.min(best, performance.now() - began);
  }
  return best;
}

/** The shipped cases over and over, one a line. */
function manyCases(): string {
  const texts = shippedCases().map((text) => JSON.stringify(JSON.parse(text)));
  return Array.from({ length: MANY }, (_, i) => `${texts[i % texts.length]}\n`).join('');
}

function shippedCases(): string[] {
  return readdirSync('cases')
    .filter((name) => name.endsWith('.json'))
    .map((name) => readFileSync(join('cases', name), 'utf8'));
}

/** A thousand cases through one process; memory is read from the system while it works. */
async function batch(lines: string, jobs: number, what: '--json' | '--summary') {
  const began = performance.now();
  const child = spawn(
    'sh',
    ['-c', `exec ${process.execPath} ${CLI} audit - ${what} --jobs ${jobs} < ${lines}`],
    {
      stdio: ['ignore', 'pipe', 'ignore'],
    },
  );
  const memory: { readonly done: number; readonly mib: number }[] = [];
  let done = 0;
  child.stdout.on('data', (bytes: Uint8Array) => {
    for (const byte of bytes) if (byte === 0x0a) done += 1;
  });
  const watch = setInterval(() => memory.push({ done, mib: residentMib(child.pid) }), 100);
  await new Promise((resolve) => child.on('close', resolve));
  clearInterval(watch);
  const most = (from: number, to: number): number =>
    Math.max(0, ...memory.filter((each) => each.done >= from && each.done < to).map((each) => each.mib));
  return {
    seconds: (performance.now() - began) / 1000,
    earlyMib: most(0, MANY / 3),
    lateMib: most((2 * MANY) / 3, MANY),
    done,
  };
}

function residentMib(pid: number | undefined): number {
  try {
    return Number(/VmRSS:\s+(\d+) kB/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1] ?? 0) / 1024;
  } catch {
    return process.memoryUsage().rss / MIB;
  }
}

/** From an answer to the next question, over the shipped cases, after a first lap that warms up. */
function nextMs(): { median: number; worst: number } {
  const times: number[] = [];
  for (const lap of ['warm up', 'measured']) {
    for (const text of shippedCases()) {
      const { book } = readCase(text, { readResponse: responsesIn('cases') });
      const before = auditSync(book);
      const proposed = next(before);
      const [answer] = proposed.fact === undefined ? [] : possibleAnswers(proposed.fact);
      if (proposed.fact === undefined || answer === undefined) continue;
      const began = performance.now();
      next(auditSync(withAnswer(book, proposed.fact, answer), before));
      if (lap === 'measured') times.push(performance.now() - began);
    }
  }
  times.sort((a, b) => a - b);
  return { median: times[Math.floor(times.length / 2)] ?? Number.NaN, worst: times.at(-1) ?? Number.NaN };
}

function print(): void {
  const wide = [0, 1].map((column) => Math.max(...rows.map((row) => (row[column] ?? '').length)));
  console.log(`node ${process.version}, ${availableParallelism()} cores, best of ${ROUNDS}`);
  for (const [what, value, more] of rows) {
    console.log(`${what.padEnd(wide[0] ?? 0)}  ${value.padStart(wide[1] ?? 0)}  ${more}`);
  }
}
