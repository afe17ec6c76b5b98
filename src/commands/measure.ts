/** `center-audit measure`: what recordings of the test signal tell, and into the case with it. */

import { existsSync } from 'node:fs';
import { readSound } from '../disk/sound-file.js';
import { writeNew } from '../disk/write-new.js';
import { type Block, bullets, heading, paragraph } from '../explain/document.js';
import { documentText } from '../explain/document-text.js';
import { measurementBlocks, type NamedMeasurement } from '../explain/measurement/words.js';
import { textOptions } from '../explain/terminal.js';
import { factText } from '../explain/words.js';
import type { Seat } from '../facts/book.js';
import { type FactId, factSpec } from '../facts/catalog.js';
import { seatsOf } from '../facts/seats.js';
import { plainLine } from '../lib/sanitize.js';
import { UserError } from '../lib/user-error.js';
import { withMeasurement } from '../recording/facts.js';
import { DEMO_TAKE, record } from '../recording/invented.js';
import { LEAST_RATE_HZ, measure } from '../recording/measure.js';
import type { Measured } from '../recording/measurement.js';
import { changeCase } from '../store/change-case.js';
import { EXIT, type ExitCode, type GlobalOptions, type Io } from './io.js';
import { type LoadedCase, loadCase, STDIN, warningsText } from './load-case.js';
import { type FormatOptions, textFlags, wantsJson } from './options.js';

interface MeasureOptions extends FormatOptions {
  readonly case?: string;
  readonly seat?: readonly string[];
  readonly demo?: boolean;
  readonly plot?: string;
  readonly force?: boolean;
}

type Result = NamedMeasurement & Pick<Measured, 'traces'>;

export async function run(
  io: Io,
  paths: readonly string[],
  options: GlobalOptions & MeasureOptions,
): Promise<ExitCode> {
  const json = wantsJson(options);
  const seats = options.seat ?? [];
  checkUsage(paths, seats, options);
  const loaded = options.case === undefined ? undefined : await loadCase(io, existing(options.case));
  if (loaded) io.err(warningsText(loaded));
  const places = seats.map((name) => ({ name, seat: loaded && seatNamed(loaded, name) }));
  const results: Result[] = [];
  const failures: string[] = [];
  for (const [i, path] of (options.demo ? ['(invented room)'] : paths).entries()) {
    const place = places[i] ?? (places.length === 1 ? places[0] : undefined);
    try {
      const sound = options.demo
        ? { samples: record(DEMO_TAKE), rateHz: DEMO_TAKE.rateHz }
        : await readSound(path);
      if (sound.rateHz < LEAST_RATE_HZ) throw tooSlow(path, sound.rateHz);
      results.push({
        file: plainLine(path),
        seat: place?.seat?.name ?? place?.name ?? null,
        ...measure(sound.samples, sound.rateHz),
      });
    } catch (error) {
      // With several recordings one bad file does not cost the others.
      if (!(error instanceof UserError) || paths.length < 2) throw error;
      failures.push(`${error.message}\n`);
    }
  }
  const written = loaded === undefined ? [] : intoCase(loaded.name, options.case ?? '', results);
  if (options.plot !== undefined) {
    const { measurementPage } = await import('../explain/measurement/page.js');
    writeNew(options.plot, measurementPage(results), options.force ?? false);
    io.err(`Written to ${plainLine(options.plot)}.\n`);
  }
  if (json) {
    for (const result of results)
      io.out(`${JSON.stringify(forPrograms(result), null, results.length > 1 ? 0 : 2)}\n`);
  } else {
    const blocks = [
      ...(options.demo ? demoBlocks() : []),
      ...results.flatMap(measurementBlocks),
      ...written,
      ...(options.demo || loaded !== undefined || !results.some(tells) ? [] : [INTO_A_CASE]),
    ];
    io.out(documentText(blocks, textOptions(io, textFlags(options))));
  }
  for (const failure of failures) io.err(failure);
  return failures.length > 0 ? EXIT.input : EXIT.done;
}

function checkUsage(paths: readonly string[], seats: readonly string[], options: MeasureOptions): void {
  const refuse = (what: string, accepted: string): never => {
    throw new UserError({
      where: 'measure',
      what,
      accepted,
      example: 'center-audit measure middle.wav side.wav --seat middle --seat "left end" --case case.json',
    });
  };
  if (options.demo && paths.length > 0) refuse('--demo makes its own recording', 'recordings, or --demo');
  if (!options.demo && paths.length === 0)
    refuse('no recording is named', 'one recording or several, or --demo');
  if (options.demo && options.case !== undefined) {
    refuse('the recording of --demo is invented and belongs into no case', '--demo without --case');
  }
  if (options.case === STDIN) refuse('a case from standard input cannot be changed', 'a case file');
  if (seats.length > 1 && seats.length !== paths.length) {
    refuse(
      `${paths.length} recordings and ${seats.length} seats do not go together`,
      'one --seat for all, or one for each recording in their order',
    );
  }
}

/** The same path; throws where there is no case yet that could take the facts. */
function existing(path: string): string {
  if (existsSync(path)) return path;
  throw new UserError({
    where: plainLine(path),
    what: 'there is no such case to write into',
    accepted: 'a case file; an interview begins one, and without --case the recording is read all the same',
    example: `center-audit interview ${plainLine(path)}`,
  });
}

const tooSlow = (path: string, rateHz: number): UserError =>
  new UserError({
    where: plainLine(path),
    what: `its sample rate of ${rateHz} Hz is that of a telephone and holds too little of the sweep`,
    accepted: `recordings from ${LEAST_RATE_HZ} Hz; 44100 or 48000 Hz is best`,
  });

/** The keys that other programs rely on come first; what follows them may grow. */
const forPrograms = ({ file, seat, measurement }: Result): object => ({
  format: 'center-audit/measurement',
  version: 1,
  file,
  seat,
  ...measurement,
});

function seatNamed({ name: caseName, book }: LoadedCase, name: string): Seat {
  const { seats } = seatsOf(book);
  const found = seats.find((seat) => seat.name.toLowerCase() === name.trim().toLowerCase());
  if (found) return found;
  throw new UserError({
    where: `${caseName}: --seat`,
    what: `no seat is called “${plainLine(name)}”`,
    accepted: seats.length === 0 ? 'a case that knows its seats' : seats.map((seat) => seat.name).join(', '),
  });
}

/** Writes what was measured into the case, and tells what changed and what was told otherwise. */
function intoCase(name: string, path: string, results: readonly Result[]): Block[] {
  const lines: string[] = [];
  const clashes: string[] = [];
  const day = new Date().toISOString().slice(0, 10);
  changeCase(path, (told) =>
    results.reduce((book, result) => {
      const { book: changed, facts, clashes: found } = withMeasurement(book, result, day);
      const worded = (id: FactId, value: number | string): string => factText(id, value, book.units);
      for (const { id, told, measured } of found) {
        clashes.push(
          `${factSpec(id).label}: told ${worded(id, told)}, measured ${worded(id, measured)}. The measurement counts now.`,
        );
      }
      for (const { id, value } of facts) lines.push(`${factSpec(id).label}: ${worded(id, value)}`);
      return changed;
    }, told),
  );
  if (lines.length === 0) return [paragraph(`Nothing was written into ${name}: no value can be trusted.`)];
  return [
    heading(1, `Written into ${name}`),
    bullets(lines),
    ...(clashes.length > 0 ? [heading(2, 'Told otherwise before'), bullets(clashes)] : []),
    paragraph('Next: ', { code: `center-audit audit ${name}` }),
  ];
}

const tells = ({ measurement }: Result): boolean => measurement.delayMs.leftMinusRight !== null;
const INTO_A_CASE = paragraph(
  'To have an audit reckon with it, name the case: ',
  { code: 'center-audit measure RECORDING --case CASE' },
  '. An interview begins one.',
);

const demoBlocks = (): Block[] => [
  paragraph(
    'An invented room, recorded by an invented phone: the center stands on a shelf, 1.6 ms late, reversed, 4 dB weak and a little dull. This is what the measurement finds.',
  ),
];
