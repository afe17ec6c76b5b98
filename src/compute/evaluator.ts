/** Runs the models of computed facts: each once, with every fact it read entered in its ledger. */
import type { Grid } from '../acoustics/radiation.js';
import type { Response } from '../acoustics/response.js';
import type { FactBook, Seat } from '../facts/book.js';
import { FACT_IDS, type FactId, type FileFactId, factSpec } from '../facts/catalog.js';
import { responseOf } from '../facts/responses.js';
import { mainSeat, type SeatPlan } from '../facts/seats.js';
import type { How } from '../facts/spec.js';
import { type AskedState, ancestryOf } from './asked.js';
import { addAll, type FactSet, factSet } from './fact-set.js';
import { type Reader, SEAT_FACTS, type SeatReader, Stop, type Typical } from './reader.js';

/** A fact that went into a value. */
export interface Use {
  readonly value: number | string;
  readonly doubt: { readonly how: How } | { readonly spread: number };
}

/** A shared intermediate result, or what computes a value; it is its own name. */
export type Model = (r: Reader<FactId>) => unknown;

export interface Outcome {
  readonly value: unknown;
  /** True when the computation stopped; `missing` may still be empty: the value does not apply. */
  readonly stopped: boolean;
  readonly missing: readonly FactId[];
  /** Every fact looked at, also those not known: a change of any may change the outcome. */
  readonly reads: FactSet;
  readonly uses: ReadonlyMap<FactId, Use>;
  readonly doubt: number;
  /** True where it hangs on a grid of frequencies, so that a sketch of it differs. */
  readonly onGrid: boolean;
  /** Which of several was the worst. */
  readonly worst: number | undefined;
  /** Why the facts as told cannot be true together. */
  readonly remark: string | undefined;
}

/** What models are computed from. */
export interface Basis {
  readonly book: FactBook;
  readonly plan: SeatPlan;
  readonly state: (id: FactId) => AskedState;
  /** A result of another core that is known to hold here, if there is one. */
  readonly inherited: (model: Model) => Outcome | undefined;
  /** Of several, the one to look at alone for a result (see `worst` of the reader). */
  readonly likelyWorst: (model: Model) => number | undefined;
  readonly sketchGrid: Grid | undefined;
}

export interface Evaluator {
  readonly evaluate: (model: Model) => Outcome;
  /** A result that has been computed here, or that holds from elsewhere. */
  readonly known: (model: Model) => Outcome | undefined;
  readonly outcomes: ReadonlyMap<Model, Outcome>;
}

/** The facts and those that decide whether they are asked. */
const ANCESTRIES = new Map(FACT_IDS.map((id) => [id, factSet(ancestryOf(id))]));
export const ancestrySet = (id: FactId): FactSet => ANCESTRIES.get(id) as FactSet;

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
function usableResponse(book: FactBook, id: FileFactId): Response {
  const found = responseOf(book, id);
  const { label } = factSpec(id);
  if (found === undefined) throw new RangeError(`${label}: no file was told`);
  if ('refused' in found)
    throw new RangeError(`${label}: ${found.refused.what}; accepted: ${found.refused.accepted}`);
  return found;
}

/** Names and numbers of the acoustics as people say them: `speakerHeightM is 1.4742567` is “speaker height is 1.47 m”. */
const inWords = (message: string): string =>
  message.replace(
    /\b([A-Za-z]+?)(M|Hz|Db|Deg|Ms)\b is (-?\d+(?:\.\d+)?)/g,
    (_, name: string, unit: keyof typeof UNIT_NAMES, value: string) =>
      `${name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`).trim()} is ${Number(Number(value).toPrecision(3))} ${UNIT_NAMES[unit]}`,
  );
const UNIT_NAMES = { M: 'm', Hz: 'Hz', Db: 'dB', Deg: 'degrees', Ms: 'ms' } as const;

const NONE: readonly FactId[] = [];

/** An outcome in the making: facts are entered, and results of other models with all that went into them. */
class Ledger implements Outcome {
  value: unknown;
  stopped = false;
  missing: readonly FactId[] = NONE;
  remark: string | undefined;
  readonly reads = factSet();
  doubt = 0;
  onGrid = false;
  worst: number | undefined;
  readonly #entries: (readonly [FactId, Use] | Outcome)[] = [];
  #uses: ReadonlyMap<FactId, Use> | undefined;
  use(id: FactId, use: Use): void {
    this.#entries.push([id, use]);
  }
  take(outcome: Outcome): void {
    addAll(this.reads, outcome.reads);
    this.#entries.push(outcome);
    if (outcome.doubt > 0) this.doubt = Math.hypot(this.doubt, outcome.doubt);
    this.onGrid ||= outcome.onGrid;
  }
  /** Each fact once, where it came first, as it was used last. Put together when first asked for: few ask. */
  get uses(): ReadonlyMap<FactId, Use> {
    this.#uses ??= new Map(this.#entries.flatMap((entry) => ('uses' in entry ? [...entry.uses] : [entry])));
    return this.#uses;
  }
}

export function evaluatorOn({ book, plan, state, inherited, likelyWorst, sketchGrid }: Basis): Evaluator {
  const rows = Math.max(...plan.seats.map((seat) => seat.row));
  const outcomes = new Map<Model, Outcome>();
  const known = (model: Model): Outcome | undefined => {
    let outcome = outcomes.get(model);
    if (outcome === undefined) {
      outcome = inherited(model);
      if (outcome !== undefined) outcomes.set(model, outcome);
    }
    return outcome;
  };
  const evaluate = (model: Model): Outcome => known(model) ?? run(model);
  /** What the model that is being computed has read so far. */
  let ledger: Ledger;
  let running: Model;
  const run = (model: Model): Outcome => {
    const outer = [ledger, running] as const;
    const own = new Ledger();
    ledger = own;
    running = model;
    try {
      own.value = model(reader);
    } catch (error) {
      own.stopped = true;
      if (error instanceof Stop) own.missing = error.missing;
      // The acoustics refuses what no room can have: a box wider than its bay, a seat in front of the mains.
      else if (error instanceof RangeError) own.remark = inWords(error.message);
      else throw error;
    } finally {
      [ledger, running] = outer;
    }
    outcomes.set(model, own);
    return own;
  };
  const look = (id: FactId): AskedState => {
    addAll(ledger.reads, ancestrySet(id));
    return state(id);
  };
  /** The value as told or assumed, entered in the ledger; otherwise what is missing. */
  const take = (id: FactId): number | string | readonly FactId[] => {
    const found = look(id);
    if (found.kind === 'open') return found.missing;
    if (found.kind === 'inapplicable') throw new Stop([]);
    ledger.use(id, {
      value: found.value,
      doubt: found.kind === 'told' ? { how: found.how } : { spread: found.spread },
    });
    return found.value;
  };
  const takeAll = (ids: readonly FactId[]) => {
    const taken = ids.map(take);
    const missing = taken.flatMap((value) => (typeof value === 'object' ? value : []));
    if (missing.length > 0) throw new Stop([...new Set(missing)]);
    return taken;
  };
  const takeOne = (id: FactId) => {
    const taken = take(id);
    if (typeof taken === 'object') throw new Stop(taken);
    return taken;
  };
  const toldOnly = (id: FactId) => (look(id).kind === 'told' ? takeOne(id) : undefined);
  const typicalOr = (id: FactId, typical: Typical): number => {
    const { kind } = look(id);
    if (kind === 'inapplicable') return typical.value;
    if (kind === 'told') return takeOne(id) as number;
    ledger.use(id, { value: typical.value, doubt: { spread: typical.spread } });
    return typical.value;
  };
  const suggestedOr = (id: FactId, suggested: string): number | string => {
    if (look(id).kind === 'told') return takeOne(id);
    ledger.use(id, { value: suggested, doubt: { spread: 0 } });
    return suggested;
  };
  const from = (model: Model): unknown => {
    const outcome = evaluate(model);
    ledger.take(outcome);
    if (outcome.remark !== undefined) throw new RangeError(outcome.remark);
    if (outcome.stopped) throw new Stop(outcome.missing);
    return outcome.value;
  };
  const canTell = (model: Model): boolean => {
    const outcome = evaluate(model);
    addAll(ledger.reads, outcome.reads);
    return !outcome.stopped;
  };
  /** Enters those of the facts behind seats that have a say, as told or as the plan assumed them. */
  const enterSeatFacts = (ids: readonly FactId[]): void => {
    for (const id of SEAT_FACTS) if (id !== 'earHeight' || rows > 1) look(id);
    if (book.seats.length > 0) return;
    for (const id of ids) {
      const answer = book.answers.get(id);
      const use = answer && 'value' in answer ? toldUse(answer) : defaultUse(id);
      const isTold = answer !== undefined && 'value' in answer;
      if (use && (isTold || plan.assumed.some((assumed) => assumed === id))) ledger.use(id, use);
    }
  };
  const seats = (): readonly Seat[] => {
    enterSeatFacts(rows > 1 ? SEAT_FACTS : ROW_FACTS);
    return plan.seats;
  };
  const main = (): Seat => {
    const seat = mainSeat(plan);
    const told = state('mainSeatOffset').kind === 'told';
    enterSeatFacts(told || seat.xM === 0 ? MAIN_SEAT_FACTS : ROW_FACTS);
    return seat;
  };
  const worst = <T>(items: readonly T[], badness: (item: T) => number) => {
    const place = likelyWorst(running);
    const likely = place === undefined ? undefined : items[place];
    if (likely !== undefined) return { item: likely, badness: badness(likely) };
    const [first, ...rest] = items.map((item) => ({ item, badness: badness(item) }));
    if (first === undefined) throw new Error('worst of nothing');
    const found = rest.reduce((most, next) => (next.badness > most.badness ? next : most), first);
    ledger.worst = items.indexOf(found.item);
    return found;
  };
  const reader = {
    number: takeOne,
    numbers: (...ids: FactId[]) => takeAll(ids),
    numberOr: typicalOr,
    toldNumber: toldOnly,
    choice: takeOne,
    toldChoice: toldOnly,
    choiceOr: suggestedOr,
    responses: (...ids: FileFactId[]) => {
      takeAll(ids);
      return ids.map((id) => usableResponse(book, id));
    },
    sketchGrid: () => {
      ledger.onGrid = true;
      return sketchGrid;
    },
    from,
    canTell,
    seats,
    mainSeat: main,
    worst,
    doubt: (spread: number) => {
      ledger.doubt = Math.hypot(ledger.doubt, spread);
    },
    stop: (...missing: FactId[]) => {
      throw new Stop(missing);
    },
  } as SeatReader as unknown as Reader<FactId>;
  return { evaluate, known, outcomes };
}
