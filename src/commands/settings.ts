/** `center-audit settings`: the numbers to type into the menu, for all seats at once. */

import type { Response } from '../acoustics/response.js';
import { readSound } from '../disk/sound-file.js';
import { documentText } from '../explain/document-text.js';
import { REASON_TEXT } from '../explain/measurement/words.js';
import { settingsBlocks } from '../explain/settings-words.js';
import type { FactBook } from '../facts/book.js';
import { seatsOf } from '../facts/seats.js';
import { plainLine, quoted } from '../lib/sanitize.js';
import { type Problem, UserError } from '../lib/user-error.js';
import { measure } from '../recording/measure.js';
import type { Harms } from '../settings/cost.js';
import { type Sheet, settingsFor, type Weighting } from '../settings/sheet.js';
import { EXIT, type ExitCode, type GlobalOptions, type Io } from './io.js';
import { loadCase, warningsText } from './load-case.js';
import { type FormatOptions, wantsJson } from './options.js';
import { printResult } from './print.js';

interface SettingsOptions extends FormatOptions {
  readonly main?: boolean;
  readonly equal?: boolean;
  readonly weights?: readonly string[];
  readonly processorSpeed?: number;
  readonly recording?: string;
}

export async function run(io: Io, path: string, options: GlobalOptions & SettingsOptions): Promise<ExitCode> {
  wantsJson(options);
  const loaded = await loadCase(io, path);
  io.err(warningsText(loaded));
  const weighting = weightingOf(loaded.book, options);
  const { processorSpeed, recording } = options;
  const sheet = settingsFor(loaded.book, {
    ...(weighting === undefined ? {} : { weighting }),
    ...(processorSpeed === undefined ? {} : { processorSpeed }),
    ...(recording === undefined ? {} : { tone: await toneFrom(recording) }),
  });
  printResult(io, options, forPrograms(sheet), (_, text) =>
    documentText(settingsBlocks(sheet, loaded.book.units), text),
  );
  return EXIT.done;
}

/** Tone of the center against the mains; throws where the recording does not tell it, with its reasons. */
async function toneFrom(path: string): Promise<Response> {
  const { samples, rateHz } = await readSound(path);
  const { toneDb, reasons } = measure(samples, rateHz).measurement;
  const bands = toneDb.hz.flatMap((hz, i) => {
    const db = toneDb.centerMinusMains[i] ?? null;
    return db === null ? [] : [{ hz, db }];
  });
  if (bands.length === 0) {
    throw new UserError({
      where: plainLine(path),
      what: `it does not tell the tone of the center${reasons.map((reason) => `; ${REASON_TEXT[reason]}`).join('')}`,
      accepted: 'a recording of the test signal that measure finds nothing wrong with',
      example: 'center-audit measure recording.wav',
    });
  }
  return { frequencyHz: bands.map(({ hz }) => hz), levelDb: bands.map(({ db }) => db) };
}

function weightingOf(book: FactBook, { main, equal, weights }: SettingsOptions): Weighting {
  const asked = [main, equal, weights].filter(Boolean).length;
  if (asked > 1) {
    throw new UserError({
      where: 'settings',
      what: '--main, --equal and --weights say different things about the seats',
      accepted: 'one of them; without any the main seat counts twice',
    });
  }
  if (main) return 'main';
  if (equal) return 'equal';
  if (weights === undefined) return undefined;
  const names = seatsOf(book).seats.map(({ name }) => name);
  const found = new Map<string, number>();
  const problems = weights.flatMap((word): Problem[] => {
    const cut = word.lastIndexOf('=');
    const name = names.find((each) => each.toLowerCase() === word.slice(0, cut).trim().toLowerCase());
    const weight = Number(word.slice(cut + 1));
    if (
      cut < 1 ||
      name === undefined ||
      word.slice(cut + 1).trim() === '' ||
      !(weight >= 0 && weight <= 1000)
    ) {
      const what =
        cut >= 1 && name === undefined
          ? `no seat is called ${quoted(word.slice(0, cut))}`
          : `${quoted(word)} is no SEAT=NUMBER`;
      return [
        {
          where: '--weights',
          what,
          accepted: `a number from 0 to 1000 for: ${names.map(plainLine).join(', ')}`,
          example: `--weights '${plainLine(names[0] ?? 'middle')}=2'`,
        },
      ];
    }
    found.set(name, weight);
    return [];
  });
  const [first, ...rest] = problems;
  if (first !== undefined) throw new UserError(first, ...rest);
  if (![...found.values()].some((weight) => weight > 0)) {
    throw new UserError({
      where: '--weights',
      what: 'no seat has a weight over zero',
      accepted: 'at least one that has',
    });
  }
  return found;
}

const NOTHING = { imageDeg: null, levelDb: null, combDb: null, speechLossDb: null, arrivalMs: null };
const rounded = (harms: Harms | null): object =>
  harms === null
    ? NOTHING
    : Object.fromEntries(Object.entries(harms).map(([key, value]) => [key, Math.round(value * 1000) / 1000]));

const forPrograms = ({ seats, before, trimDb, assumed, ...sheet }: Sheet): object => ({
  format: 'center-audit/settings',
  version: 1,
  ...sheet,
  trimDb,
  seats: seats.map(({ name, weight, before: was, after, alone }) => ({
    name,
    weight,
    before: rounded(was),
    after: rounded(after),
    alone: rounded(alone),
  })),
  entriesBefore: before.entries,
  assumed,
});
