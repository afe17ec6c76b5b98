/**
 * `npm run bench:acoustics`: what the models cost, and the same off-axis curve in plain NumPy and SciPy in the same
 * run. Filters and the curve on the axis are computed beforehand on both sides; every angle is a new one, so that
 * no result comes from a cache. Processor time, best of several rounds, since other work on the machine only ever slows
 * things down; a whole audit after a hundred others.
 * Runs bundled, as the program is shipped: a loader that keeps function names would cost a fifth more.
 */
import { spawnSync } from 'node:child_process';
import { analogFilterDb } from '../src/acoustics/filter.js';
import { layoutDrivers } from '../src/acoustics/layouts.js';
import { offAxis, thresholdAngle } from '../src/acoustics/offaxis.js';
import { COARSE_GRID, FINE_GRID, type Grid } from '../src/acoustics/radiation.js';
import { gridHz, type Response } from '../src/acoustics/response.js';
import { tonalMatch } from '../src/acoustics/tonal.js';
import { auditSync } from '../src/reasoning/audit.js';
import { eightSeats } from './audit-case.js';

const ROUNDS = 12;
const SEATS = 40;
const LAYOUT = 'woofer-mid-tweeter-woofer';

/** Audits before the first that counts: by then the machine code is there. */
const WARM_UP = 100;

function processorMs(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

/** Best processor time of one call, ms. `call` gets a number that never repeats. */
function bestMs(calls: number, call: (n: number) => void): number {
  let best = Number.POSITIVE_INFINITY;
  for (let round = 0; round < ROUNDS; round += 1) {
    const start = processorMs();
    for (let i = 0; i < calls; i += 1) call(round * calls + i);
    best = Math.min(best, (processorMs() - start) / calls);
  }
  return best;
}

/** An angle off the axis that no other call has. */
const freshAngle = (n: number): number => 5 + 50 * ((n * 0.6180339887) % 1);

function curveMs(grid: Grid): number {
  const drivers = layoutDrivers(LAYOUT);
  return bestMs(SEATS, (n) => void offAxis({ drivers, azimuthDeg: freshAngle(n) }, grid));
}

type Yardstick = { numpy: string; scipy: string; secondsPerSeat: number };

function numpyCurve(grid: Grid): Yardstick {
  const job = {
    drivers: layoutDrivers(LAYOUT),
    seats: Array.from({ length: SEATS }, (_, n) => ({ azimuthDeg: freshAngle(n), distanceM: 3 })),
    frequenciesHz: [...grid.frequencyHz],
    repeats: ROUNDS,
  };
  const { stdout, stderr, status } = spawnSync('python3', ['bench/off_axis_numpy.py'], {
    input: JSON.stringify(job),
    encoding: 'utf8',
    maxBuffer: 1e9,
  });
  if (status !== 0) throw new Error(`python3 with NumPy and SciPy is needed for the comparison.\n${stderr}`);
  return JSON.parse(stdout) as Yardstick;
}

function responses(): { left: Response; center: Response; right: Response } {
  const frequencyHz = Array.from({ length: 479 }, (_, n) => gridHz(n));
  const response = (level: (hz: number) => number) => ({ frequencyHz, levelDb: frequencyHz.map(level) });
  const hole = { type: 'peaking', frequencyHz: 2300, gainDb: -6, q: 1.8 } as const;
  const shelf = { type: 'highShelf', frequencyHz: 8000, gainDb: -3, q: 0.7 } as const;
  return {
    left: response((hz) => 0.5 * Math.sin(6 * Math.log2(hz))),
    right: response((hz) => 0.4 * Math.sin(6 * Math.log2(hz) + 0.3)),
    center: response((hz) => analogFilterDb(hole, hz) + analogFilterDb(shelf, hz)),
  };
}

const rows: [what: string, oursMs: number, numpyMs?: number][] = [];
const grids = [
  ['working grid', COARSE_GRID],
  ['fine grid', FINE_GRID],
] as const;
let versions = '';
for (const [name, grid] of grids) {
  const yardstick = numpyCurve(grid);
  versions = `NumPy ${yardstick.numpy}, SciPy ${yardstick.scipy}`;
  const what = `off-axis curve, four drivers, ${grid.frequencyHz.length} points (${name})`;
  rows.push([what, curveMs(grid), yardstick.secondsPerSeat * 1000]);
}
rows.push([
  'threshold search, mid-tweeter-mid, 6 dB',
  bestMs(5, (n) => {
    // A new spacing each time, so that neither curves nor filters are remembered.
    thresholdAngle({
      layout: 'mid-tweeter-mid',
      spacingM: 0.2 + n * 1e-4,
      targetDipDb: 6,
      plane: 'horizontal',
    });
  }),
]);
const measured = responses();
rows.push(['tonal match, three responses of 479 points', bestMs(3, () => void tonalMatch(measured))]);

const books = Array.from({ length: WARM_UP + ROUNDS * 5 }, (_, n) => eightSeats(n));
const book = (n: number) => books[n] ?? eightSeats(n);
const started = processorMs();
auditSync(book(0));
rows.push(['whole audit, 8 seats, the first of a process', processorMs() - started]);
for (let n = 1; n < WARM_UP; n += 1) auditSync(book(n));
rows.push([
  'whole audit, 8 seats, new geometry each time',
  bestMs(5, (n) => void auditSync(book(WARM_UP + n))),
]);
rows.push(['whole audit, 8 seats, the same system again', bestMs(5, () => void auditSync(book(0)))]);

console.log(`Node ${process.versions.node}, ${versions}; best of ${ROUNDS} rounds`);
console.log(`${'what'.padEnd(64)}${'ours'.padStart(10)}${'NumPy'.padStart(10)}${'ratio'.padStart(8)}`);
for (const [what, ours, numpy] of rows) {
  const beside = numpy === undefined ? '' : `${numpy.toFixed(3)} ms`;
  const ratio = numpy === undefined ? '' : `${(ours / numpy).toFixed(2)}`;
  console.log(
    `${what.padEnd(64)}${`${ours.toFixed(3)} ms`.padStart(10)}${beside.padStart(10)}${ratio.padStart(8)}`,
  );
}
console.log('ratio: ours over NumPy; below 1 is faster than NumPy');
