/** Computes and remembers: each value once, with every fact it read. */
import { parseResponse, type Response, ResponseError } from '../../acoustics/response.js';
import type { FactBook, Seat } from '../../facts/book.js';
import { type FactId, type FileFactId, factSpec } from '../../facts/catalog.js';
import { readResponseFile } from '../../facts/response-file.js';
import { mainSeat, seatsOf } from '../../facts/seats.js';
import type { How } from '../../facts/spec.js';
import { ancestryOf, stateOf } from './asked.js';
import { type Reader, SEAT_FACTS, type SeatReader, Stop, type Typical } from './reader.js';

/** A fact that went into a value. */
export interface Use {
  readonly value: number | string;
  readonly doubt: { readonly how: How } | { readonly spread: number };
}

export interface Outcome {
  readonly value: unknown;
  /** True when the computation stopped; `missing` may still be empty: the value does not apply. */
  readonly stopped: boolean;
  readonly missing: readonly FactId[];
  /** Every fact looked at, also those not known: a change of any may change the outcome. */
  readonly reads: ReadonlySet<FactId>;
  readonly uses: ReadonlyMap<FactId, Use>;
  readonly doubt: number;
  /** Which of several was the worst. */
  readonly worst?: number;
  /** Why the facts as told cannot be true together. */
  readonly remark?: string;
}

type Compute = (r: Reader<FactId>) => unknown;
export interface Core {
  readonly book: FactBook;
  readonly seats: readonly Seat[];
  /** `key` names the result; a shared model is its own key. */
  readonly evaluate: (key: unknown, compute: Compute) => Outcome;
  readonly outcomes: ReadonlyMap<unknown, Outcome>;
}

/** What places a single row, and what places the main seat in it. */
const ROW_FACTS = ['seating', 'seatCount', 'seatSpacing', 'seatDistance', 'mainSeatOffset'] as const;
const MAIN_SEAT_FACTS = ['seatDistance', 'mainSeatOffset'] as const;

const toldUse = (answer: { readonly value: number | string; readonly how: How }): Use => ({
  value: answer.value,
  doubt: { how: answer.how },
});

function defaultUse(id: FactId): Use | undefined {
  const spec = factSpec(id);
  const assume = 'assume' in spec ? spec.assume : undefined;
  return assume && { value: assume.value, doubt: { spread: 'spread' in assume ? assume.spread : 0 } };
}

/** Throws RangeError for what cannot be used, as the acoustics does: it becomes a remark. */
function responseOf(book: FactBook, id: FileFactId): Response {
  const file = readResponseFile(book, id);
  if (file === undefined) throw new RangeError(`${factSpec(id).label}: no file was told`);
  if ('refused' in file)
    throw new RangeError(`${factSpec(id).label}: ${file.refused.what}; accepted: ${file.refused.accepted}`);
  try {
    return parseResponse(file.text);
  } catch (error) {
    if (!(error instanceof ResponseError)) throw error;
    throw new RangeError(`${factSpec(id).label}: ${error.message}`);
  }
}

interface Ledger {
  readonly reads: Set<FactId>;
  readonly uses: Map<FactId, Use>;
  doubt: number;
  worst?: number;
}

/**
 * @param inherited a result from another book that is known to hold for this one, if there is one
 * @param likelyWorst of several, the one to look at alone for a result (see `worst` of the reader)
 */
export function createCore(
  book: FactBook,
  inherited: (key: unknown) => Outcome | undefined,
  likelyWorst?: (key: unknown) => number | undefined,
): Core {
  const placed = seatsOf(book);
  const rows = Math.max(...placed.seats.map((seat) => seat.row));
  const outcomes = new Map<unknown, Outcome>();
  const evaluate = (key: unknown, compute: Compute): Outcome => {
    const known = outcomes.get(key) ?? inherited(key);
    const outcome = known ?? run(key, compute);
    outcomes.set(key, outcome);
    return outcome;
  };
  const run = (key: unknown, compute: Compute): Outcome => {
    const ledger: Ledger = { reads: new Set(), uses: new Map(), doubt: 0 };
    try {
      const value = compute(readerFor(key, ledger));
      return { ...ledger, value, stopped: false, missing: [] };
    } catch (error) {
      const { reads, uses, doubt } = ledger;
      const base = { reads, uses, doubt, value: undefined, stopped: true };
      if (error instanceof Stop) return { ...base, missing: error.missing };
      // The acoustics refuses what no room can have: a box wider than its bay, a seat in front of the mains.
      if (error instanceof RangeError) return { ...base, missing: [], remark: error.message };
      throw error;
    }
  };
  const readerFor = (key: unknown, ledger: Ledger): Reader<FactId> => {
    const look = (id: FactId) => {
      for (const read of ancestryOf(id)) ledger.reads.add(read);
      return stateOf(book, id);
    };
    /** The value as told or assumed, entered in the ledger; otherwise what is missing. */
    const take = (id: FactId): number | string | readonly FactId[] => {
      const state = look(id);
      if (state.kind === 'open') return state.missing;
      if (state.kind === 'inapplicable') throw new Stop([]);
      ledger.uses.set(id, {
        value: state.value,
        doubt: state.kind === 'told' ? { how: state.how } : { spread: state.spread },
      });
      return state.value;
    };
    const takeAll = (ids: readonly FactId[]) => {
      const taken = ids.map(take);
      const missing = taken.flatMap((value) => (typeof value === 'object' ? value : []));
      if (missing.length > 0) throw new Stop([...new Set(missing)]);
      return taken;
    };
    const toldOnly = (id: FactId) => (look(id).kind === 'told' ? takeAll([id])[0] : undefined);
    const typicalOr = (id: FactId, typical: Typical): number => {
      const state = look(id);
      if (state.kind === 'inapplicable') return typical.value;
      if (state.kind === 'told') return takeAll([id])[0] as number;
      ledger.uses.set(id, { value: typical.value, doubt: { spread: typical.spread } });
      return typical.value;
    };
    const from = (model: Compute): unknown => {
      const outcome = evaluate(model, model);
      for (const read of outcome.reads) ledger.reads.add(read);
      for (const [id, use] of outcome.uses) ledger.uses.set(id, use);
      ledger.doubt = Math.hypot(ledger.doubt, outcome.doubt);
      if (outcome.remark !== undefined) throw new RangeError(outcome.remark);
      if (outcome.stopped) throw new Stop(outcome.missing);
      return outcome.value;
    };
    /** Enters those of the facts behind seats that have a say, as told or as the plan assumed them. */
    const enterSeatFacts = (ids: readonly FactId[]): void => {
      for (const id of SEAT_FACTS) if (id !== 'earHeight' || rows > 1) look(id);
      if (book.seats.length > 0) return;
      for (const id of ids) {
        const answer = book.answers.get(id);
        const use = answer && 'value' in answer ? toldUse(answer) : defaultUse(id);
        const isTold = answer !== undefined && 'value' in answer;
        if (use && (isTold || placed.assumed.some((assumed) => assumed === id))) ledger.uses.set(id, use);
      }
    };
    const seats = (): readonly Seat[] => {
      enterSeatFacts(rows > 1 ? SEAT_FACTS : ROW_FACTS);
      return placed.seats;
    };
    const main = (): Seat => {
      const seat = mainSeat(placed);
      const told = stateOf(book, 'mainSeatOffset').kind === 'told';
      enterSeatFacts(told || seat.xM === 0 ? MAIN_SEAT_FACTS : ROW_FACTS);
      return seat;
    };
    return {
      number: (id: FactId) => takeAll([id])[0],
      numbers: (...ids: FactId[]) => takeAll(ids),
      numberOr: typicalOr,
      toldNumber: toldOnly,
      choice: (id: FactId) => takeAll([id])[0],
      toldChoice: toldOnly,
      responses: (...ids: FileFactId[]) => {
        takeAll(ids);
        return ids.map((id) => responseOf(book, id));
      },
      from,
      seats,
      mainSeat: main,
      worst: <T>(items: readonly T[], badness: (item: T) => number) => {
        const likely = items[likelyWorst?.(key) ?? items.length];
        if (likely !== undefined) return { item: likely, badness: badness(likely) };
        const [first, ...rest] = items.map((item) => ({ item, badness: badness(item) }));
        if (first === undefined) throw new Error('worst of nothing');
        const found = rest.reduce((worst, next) => (next.badness > worst.badness ? next : worst), first);
        ledger.worst = items.indexOf(found.item);
        return found;
      },
      doubt: (spread: number) => {
        ledger.doubt = Math.hypot(ledger.doubt, spread);
      },
      stop: (...missing: FactId[]) => {
        throw new Stop(missing);
      },
    } as SeatReader as unknown as Reader<FactId>;
  };
  return { book, seats: placed.seats, evaluate, outcomes };
}
