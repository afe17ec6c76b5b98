/** `FACT=VALUE` words put into a book: facts as they are typed at a prompt, places of seats, trials and lists. */
import { parseAnswer } from '../facts/answer.js';
import { type FactBook, type Seat, withAnswer } from '../facts/book.js';
import type { Findings } from '../facts/case-error.js';
import { FACT_IDS, isFactId } from '../facts/catalog.js';
import { type ReadResponse, unusableFiles, withResponses } from '../facts/responses.js';
import { readSeats, SEAT_RANGES } from '../facts/seat-list.js';
import { seatsOf } from '../facts/seats.js';
import { didYouMean, nearest } from '../lib/nearest.js';
import { quoted } from '../lib/sanitize.js';
import { type Problem, UserError } from '../lib/user-error.js';
import { FORGET, LIST_PATHS, listChange } from './change-lists.js';

interface Changed {
  readonly book: FactBook;
  /** What was understood where it was not plain: units taken for bare numbers, unusual values. */
  readonly echoes: readonly string[];
}

const SEAT_KEYS = Object.keys(SEAT_RANGES);

/** All changes at once. Throws a UserError with everything that is wrong with them. */
export function withChanges(
  before: FactBook,
  words: readonly string[],
  readResponse?: ReadResponse,
  command: 'try' | 'set' = 'try',
): Changed {
  const problems: Problem[] = [];
  const echoes: string[] = [];
  const book = words.reduce((current, word) => {
    const cut = word.indexOf('=');
    if (cut < 1) {
      problems.push({ where: command, what: `${quoted(word)} is no FACT=VALUE`, ...ACCEPTED });
      return current;
    }
    const [path, value] = [word.slice(0, cut).trim(), word.slice(cut + 1).trim()];
    const list = listChange(path);
    const found = list?.(current, value, path);
    if (found && 'book' in found) return found.book;
    if (found) {
      problems.push(found.problem);
      return current;
    }
    const change = path.startsWith('seats.') ? changeSeat : changeFact;
    const result = change(current, path, value);
    if ('problems' in result) {
      problems.push(...result.problems);
      return current;
    }
    echoes.push(...result.echoes);
    return result.book;
  }, before);
  const [first, ...rest] = problems;
  if (first !== undefined) throw new UserError(first, ...rest);
  if (readResponse === undefined) return { book, echoes };
  const whole = withResponses(book, readResponse);
  return {
    book: whole,
    echoes: [...echoes, ...unusableFiles(whole).map(([id, { what }]) => `${id}: ${what}`)],
  };
}

const ACCEPTED = {
  accepted: 'a fact id, =, and its value; ? as the value forgets the fact; quote what holds spaces',
  example: "center-audit try case.json seatDistance='3.2 m'",
};

type Result = Changed | { readonly problems: readonly Problem[] };

function changeFact(book: FactBook, path: string, value: string): Result {
  if (!isFactId(path)) {
    const near = nearest(path, [...FACT_IDS, ...LIST_PATHS]);
    const what = `there is no fact ${quoted(path)}${didYouMean(near)}`;
    return { problems: [{ where: 'try', what, ...ACCEPTED }] };
  }
  if (value === FORGET) return { book: withAnswer(book, path, undefined), echoes: [] };
  const earlier = book.answers.get(path);
  const how = earlier !== undefined && 'value' in earlier ? { how: earlier.how } : {};
  const read = parseAnswer(path, value, { units: book.units, ...how });
  if ('refused' in read) return { problems: [{ where: path, ...read.refused }] };
  const echoes = [
    ...(read.bareUnit === undefined
      ? []
      : [`${path}: a number without a unit is taken as ${read.bareUnit}: ${read.echo}`]),
    ...(read.remark === undefined ? [] : [`${path}: ${read.remark}`]),
  ];
  return { book: withAnswer(book, path, read.answer), echoes };
}

/** `seats.1.xM=0.4`: seats are counted from 0 as in the messages about case files. */
function changeSeat(book: FactBook, path: string, value: string): Result {
  const { seats } = seatsOf(book);
  const [, place = '', key = '', ...more] = path.split('.');
  const index = /^\d{1,2}$/.test(place) ? Number(place) : Number.NaN;
  const refuse = (what: string): Result => ({
    problems: [
      {
        where: path,
        what,
        accepted: `seats.N.KEY with N from 0 to ${seats.length - 1} (${seats.map((seat, n) => `${n} is ${quoted(seat.name)}`).join(', ')}) and KEY one of ${SEAT_KEYS.join(', ')}`,
        example: `center-audit try case.json seats.${Math.max(0, seats.length - 1)}.xM=0.4`,
      },
    ],
  });
  const changed = seats[index];
  if (changed === undefined) return refuse(`there is no seat ${quoted(place)}`);
  if (!SEAT_KEYS.includes(key) || more.length > 0) return refuse(`a seat has no ${quoted(key)}`);
  if (key === 'earHeightM' && value === FORGET) {
    const { earHeightM: _, ...bare } = changed;
    return { book: { ...book, seats: replaced(seats, index, bare) }, echoes: [] };
  }
  const found: Findings = { problems: [], warnings: [] };
  const typed = /^[-+]?\d*\.?\d+$/.test(value) ? Number(value) : value;
  const raw = seats.map((seat, n) => (n === index ? { ...seat, [key]: typed } : seat));
  const read = readSeats(raw as unknown as Parameters<typeof readSeats>[0], book.units, found);
  return found.problems.length > 0
    ? { problems: found.problems }
    : { book: { ...book, seats: read }, echoes: found.warnings.map(({ text }) => text) };
}

function replaced(seats: readonly Seat[], index: number, seat: Seat): Seat[] {
  return seats.map((each, n) => (n === index ? seat : each));
}
