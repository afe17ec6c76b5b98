/**
 * Measured responses from plain text: one measurement a line, frequency in Hz and level in dB, further columns
 * ignored; separated by spaces, tabs, commas or semicolons; lines that start with `*`, `#`, `;` or a letter are
 * comments. Decimal commas are understood where another separator leaves no doubt.
 */
import { positive } from './input.js';

type ResponseNotice = { readonly line: number; readonly message: string };
export type Response = {
  /** Ascending, without duplicates. */
  readonly frequencyHz: readonly number[];
  readonly levelDb: readonly number[];
};
export type ParsedResponse = Response & { readonly warnings: readonly ResponseNotice[] };

/** A response file that cannot be used. `line` counts from 1; null when the whole file is meant. */
export class ResponseError extends Error {
  readonly line: number | null;
  constructor(line: number | null, message: string) {
    super(line === null ? message : `line ${line}: ${message}`);
    this.name = 'ResponseError';
    this.line = line;
  }
}

/** Bounds against slips and abuse; ours. The longest export known to us has some 65,000 lines. */
const MOST_LINES = 200_000;
const MOST_CHARACTERS = 20_000_000;
const LONGEST_LINE = 1000;
const HIGHEST_HZ = 1_000_000;
const LOWEST_DB = -300;
const HIGHEST_DB = 300;
/** How many bad lines an error lists. */
const LISTED = 5;

const EXPONENT = String.raw`(?:[eE][+-]?\d+)?`;
const POINT_NUMBER = String.raw`([+-]?(?:\d+(?:\.\d*)?|\.\d+)${EXPONENT})`;
const COMMA_NUMBER = String.raw`([+-]?\d+(?:,\d+)?${EXPONENT})`;
const POINT_LINE = new RegExp(String.raw`^${POINT_NUMBER}(?:\s*[,;]\s*|\s+)${POINT_NUMBER}(?=$|[\s,;])`);
const COMMA_LINE = new RegExp(String.raw`^${COMMA_NUMBER}(?:\s*;\s*|\s+)${COMMA_NUMBER}(?=$|[\s;])`);
/** 1,000.5 or 1.000,5 in the first column, with a further column after white space or a semicolon. */
const THOUSANDS_LINE = /^\d{1,3}(?:(?:,\d{3})+(?:\.\d+)?|(?:\.\d{3})+,\d+)[\s;]+\S/;
const THOUSANDS_NUMBER = /^\d{1,3},\d{3}$/;
const COMMENT = /^(?:[*#;]|\p{L})/u;
/** A letter that begins a failed computation is no comment: dropping it in silence would hide a bad file. */
const NOT_A_NUMBER = /^(?:nan|inf|infinity)\b/i;

const EXAMPLE = 'accepted: frequency in Hz and level in dB, for example "1000 84.2"';
const show = (text: string): string => JSON.stringify(text.length > 40 ? `${text.slice(0, 40)}…` : text);

type Row = { readonly line: number; readonly hz: number; readonly db: number };
type Reading = {
  readonly line: number;
  readonly text: string;
  readonly point: string[] | null;
  readonly comma: string[] | null;
};

function readLine(raw: string, line: number): Reading | null {
  // Trimming takes a byte order mark along: it counts as white space.
  const text = raw.trim().replaceAll('\u2212', '-');
  if (text === '' || (COMMENT.test(text) && !NOT_A_NUMBER.test(text))) return null;
  if (text.length > LONGEST_LINE) return { line, text, point: null, comma: null };
  return {
    line,
    text,
    point: POINT_LINE.exec(text)?.slice(1, 3) ?? null,
    comma: COMMA_LINE.exec(text)?.slice(1, 3) ?? null,
  };
}

/** The pair of numbers of a line, or what is wrong with it. */
function resolve(
  { line, text, point, comma }: Reading,
  fileUsesPoints: boolean,
  lastHz: number,
): Row | string {
  const ambiguous = point !== null && comma !== null && point.some((part, i) => part !== comma[i]);
  if (ambiguous && fileUsesPoints)
    return `${show(text)} has decimal commas in a file with decimal points; ${EXAMPLE}`;
  const withComma = comma !== null && (ambiguous || point === null);
  if (!withComma && THOUSANDS_LINE.test(text)) return `${show(text)} has a thousands separator; ${EXAMPLE}`;
  const parts = withComma ? comma : point;
  if (parts === null) return `${show(text)} is not a measurement; ${EXAMPLE}`;
  const [hz = Number.NaN, db = Number.NaN] = parts.map((part) => Number(part.replace(',', '.')));
  if (withComma && hz < lastHz && THOUSANDS_NUMBER.test(parts[0] ?? '')) {
    return `${show(text)} seems to have a thousands separator; ${EXAMPLE}`;
  }
  if (!(hz >= 0 && hz <= HIGHEST_HZ))
    return `${show(text)}: accepted are frequencies above 0 and up to ${HIGHEST_HZ} Hz`;
  if (!(db >= LOWEST_DB && db <= HIGHEST_DB))
    return `${show(text)}: accepted are levels from ${LOWEST_DB} to ${HIGHEST_DB} dB`;
  return { line, hz, db };
}

function splitLines(text: string): string[] {
  if (text.length > MOST_CHARACTERS) {
    throw new ResponseError(
      null,
      `the file has ${text.length} characters; accepted: up to ${MOST_CHARACTERS}`,
    );
  }
  const lines = text.split(/\r\n|\r|\n/);
  if (lines.length > MOST_LINES) {
    throw new ResponseError(
      MOST_LINES + 1,
      `the file has ${lines.length} lines; accepted: up to ${MOST_LINES}`,
    );
  }
  return lines;
}

function refuseBadLines(bad: readonly ResponseNotice[]): void {
  const first = bad[0];
  if (first === undefined) return;
  const others = bad.slice(1, LISTED).map(({ line }) => line);
  const more = bad.length > LISTED ? ` and ${bad.length - LISTED} more` : '';
  const tail = others.length === 0 ? '' : ` (also bad: line ${others.join(', ')}${more})`;
  throw new ResponseError(first.line, first.message + tail);
}

/** Ascending rows; equal frequencies become one row with the mean of their levels in dB. */
function ordered(rows: readonly Row[], warnings: ResponseNotice[]): { hz: number; db: number }[] {
  const outOfOrder = rows.find((row, i) => i > 0 && row.hz < (rows[i - 1]?.hz ?? 0));
  if (outOfOrder !== undefined) {
    warnings.push({ line: outOfOrder.line, message: 'frequencies are out of order here; they were sorted' });
  }
  const sorted = [...rows].sort((a, b) => a.hz - b.hz);
  const merged: { hz: number; sum: number; count: number; line: number }[] = [];
  for (const { hz, db, line } of sorted) {
    const last = merged.at(-1);
    if (last !== undefined && last.hz === hz) {
      last.sum += db;
      last.count += 1;
    } else merged.push({ hz, sum: db, count: 1, line });
  }
  const repeated = merged.filter(({ count }) => count > 1);
  const first = repeated[0];
  if (first !== undefined) {
    const more = repeated.length - 1;
    const others = more > 0 ? ` (and ${more} other ${more === 1 ? 'frequency' : 'frequencies'})` : '';
    warnings.push({
      line: first.line,
      message: `${first.hz} Hz occurs ${first.count} times${others}; the levels were averaged in dB`,
    });
  }
  return merged.map(({ hz, sum, count }) => ({ hz, db: sum / count }));
}

/**
 * Reads a response. Sorts and averages with a warning; throws ResponseError with the line number for lines that
 * are no measurement, and for files with fewer than two frequencies.
 */
export function parseResponse(text: string): ParsedResponse {
  const readings = splitLines(text).flatMap((raw, i) => readLine(raw, i + 1) ?? []);
  const fileUsesPoints = readings.some(({ point }) => point?.some((part) => part.includes('.')) ?? false);
  const rows: Row[] = [];
  const bad: ResponseNotice[] = [];
  const warnings: ResponseNotice[] = [];
  for (const reading of readings) {
    const row = resolve(reading, fileUsesPoints, rows.at(-1)?.hz ?? 0);
    if (typeof row === 'string') bad.push({ line: reading.line, message: row });
    else if (row.hz === 0)
      warnings.push({ line: row.line, message: '0 Hz has no place on a frequency axis; left out' });
    else rows.push(row);
  }
  refuseBadLines(bad);
  const points = ordered(rows, warnings);
  if (points.length < 2) {
    const found = points.length === 0 ? 'no measurement' : 'only one frequency';
    throw new ResponseError(
      null,
      `${found} found; accepted: two or more lines, ${EXAMPLE.replace('accepted: ', '')}`,
    );
  }
  return { frequencyHz: points.map(({ hz }) => hz), levelDb: points.map(({ db }) => db), warnings };
}

/** Points per octave of the common grid, and its first and last point: 20 Hz to 19.9 kHz. */
export const GRID_PER_OCTAVE = 48;
const GRID_FROM_HZ = 20;
const GRID_LAST = 478;

/** Frequency of grid point n, Hz. */
export const gridHz = (n: number): number => GRID_FROM_HZ * 2 ** (n / GRID_PER_OCTAVE);

/** Level at a frequency, dB over log frequency in straight lines; null outside the measurement. */
export function levelAt({ frequencyHz, levelDb }: Response, hz: number): number | null {
  positive('frequency', hz);
  let low = 0;
  let high = frequencyHz.length - 1;
  if (hz < (frequencyHz[0] ?? 0) || hz > (frequencyHz[high] ?? 0)) return null;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((frequencyHz[middle] ?? 0) <= hz) low = middle;
    else high = middle;
  }
  const from = frequencyHz[low] ?? hz;
  const to = frequencyHz[high] ?? hz;
  const share = to === from ? 0 : Math.log(hz / from) / Math.log(to / from);
  const fromDb = levelDb[low] ?? 0;
  return fromDb + share * ((levelDb[high] ?? fromDb) - fromDb);
}

export type GridResponse = {
  /** Number of the first grid point that the measurement covers. */
  readonly first: number;
  readonly levelDb: Float64Array;
};

/** The response on the grid 20 * 2^(n/48) Hz, only where it was measured: never extrapolated. */
export function resample(response: Response): GridResponse {
  const levels: number[] = [];
  let first = 0;
  for (let n = 0; n <= GRID_LAST; n += 1) {
    const level = levelAt(response, gridHz(n));
    if (level === null) continue;
    if (levels.length === 0) first = n;
    levels.push(level);
  }
  return { first, levelDb: Float64Array.from(levels) };
}

/** Power mean over a sliding window of 1/fraction octave on the grid (17 points for a third), cut off at the ends. */
export function smooth(levelDb: Float64Array, fraction: number): Float64Array {
  const half = Math.floor(GRID_PER_OCTAVE / positive('fraction', fraction) / 2);
  const power = levelDb.map((level) => 10 ** (level / 10));
  return levelDb.map((_, i) => {
    const from = Math.max(0, i - half);
    const to = Math.min(levelDb.length, i + half + 1);
    // Summed anew for each point: a running sum would lose what is 150 dB weaker than what went before it.
    let sum = 0;
    for (let k = from; k < to; k += 1) sum += power[k] ?? 0;
    return 10 * Math.log10(sum / (to - from));
  });
}
