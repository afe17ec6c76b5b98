/** What every check uses: quoting answers, and running only where numbers were told. */
import { type FactBook, type Seat, told } from '../book.js';
import { type FactId, factSpec, type NumberFactId } from '../catalog.js';
import type { ComplaintId } from '../complaints.js';
import { formatFact } from '../format.js';
import { mainSeat, seatsOf } from '../seats.js';
import type { Side } from './pairs.js';

export interface Contradiction {
  readonly id: string;
  /** Facts to look at again. */
  readonly facts: readonly FactId[];
  readonly complaints?: readonly ComplaintId[];
  readonly text: string;
  /** hard: both cannot be true; soft: unusual, or two days mixed. */
  readonly kind: 'hard' | 'soft';
}

export type Check = (book: FactBook) => Contradiction[];

/** The answer in words, as it is quoted: `the seat distance is given as 3.00 m (9 ft 10 in)`. */
function sayAnswer(book: FactBook, id: FactId): string {
  const spec = factSpec(id);
  const value = told(book, id);
  const words =
    typeof value === 'number' && spec.kind === 'number'
      ? formatFact(value, spec, book.units)
      : `"${spec.kind === 'choice' ? (spec.choices[String(value)] ?? value) : value}"`;
  return `${spec.label} is given as ${words}`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

export function clash(
  book: FactBook,
  id: string,
  kind: 'hard' | 'soft',
  facts: readonly FactId[],
  note = '',
): Contradiction {
  const said = facts.map((fact) => sayAnswer(book, fact)).join(', and ');
  return { id, kind, facts, text: `${capital(said)}. ${note}`.trim() };
}

export function holds(book: FactBook, side: Side): boolean {
  const value = told(book, side.fact);
  if (value === undefined) return false;
  return side.is === 'told' || (side.is as readonly string[]).includes(String(value));
}

export function numberOf(book: FactBook, id: NumberFactId): number | undefined {
  const value = told(book, id);
  return typeof value === 'number' ? value : undefined;
}

/** Runs `find` where every one of the numbers was told. */
export function withNumbers(
  book: FactBook,
  ids: readonly NumberFactId[],
  find: (...values: number[]) => Contradiction[],
): Contradiction[] {
  const values = ids.map((id) => numberOf(book, id));
  return values.every((value) => value !== undefined) ? find(...values) : [];
}

/** The main seat where its place was told, by a list of seats or a distance. */
export function toldMainSeat(book: FactBook): Seat | undefined {
  const isTold = book.seats.length > 0 || told(book, 'seatDistance') !== undefined;
  return isTold ? mainSeat(seatsOf(book)) : undefined;
}
