/** What a calculator is: inputs, outputs, formula, source, and the model that runs. */

import type { ReadResponse } from '../../facts/responses.js';
import { type Problem, UserError } from '../../lib/user-error.js';
import type { Source } from '../../rules/sources.js';
import type { Input } from './input-kinds.js';

type Output = { readonly unit: string; readonly meaning: string };
/** A result as it is printed: numbers, lists, or rows of filters. What does not exist is null. */
export type Value = null | number | string | readonly Value[] | { readonly [key: string]: Value };
export type Result = { readonly [key: string]: Value };

type Inputs = Readonly<Record<string, Input<unknown>>>;
type Outputs = Readonly<Record<string, Output>>;
type ValueOf<I> = I extends Input<infer T> ? T : never;
type ValuesOf<I extends Inputs> = { readonly [K in keyof I]: ValueOf<I[K]> };

/** What a model may hand over: `Float64Array`, undefined and negative zero are put right by `settled`. */
type Loose<O extends Outputs> = { readonly [K in keyof O]: unknown };

export interface Calculator {
  readonly name: string;
  readonly title: string;
  /** The question it answers, one sentence. */
  readonly answers: string;
  readonly inputs: Inputs;
  readonly outputs: Outputs;
  readonly formula: string;
  /** Where the result holds, and where it does not. */
  readonly validity: string;
  readonly source: Source;
  /** Inputs of a good call, as written on the command line. */
  readonly example: string;
  /** What is wrong between inputs that are each fine by themselves. */
  readonly conflicts?: (values: Readonly<Record<string, unknown>>) => readonly Problem[];
  readonly run: (values: Readonly<Record<string, unknown>>, port: CalculatorPort) => Result;
}

/** What a calculator may ask of whoever runs it. */
export interface CalculatorPort {
  readonly tell: (notice: string) => void;
  readonly readResponse: ReadResponse;
}

type Definition<I extends Inputs, O extends Outputs> = Omit<
  Calculator,
  'inputs' | 'outputs' | 'run' | 'conflicts'
> & {
  readonly inputs: I;
  readonly outputs: O;
  readonly conflicts?: (values: ValuesOf<I>) => readonly Problem[];
  readonly run: (values: ValuesOf<I>, port: CalculatorPort) => Loose<O>;
};

/** A calculator from its table. Results keep exactly the keys of `outputs`, in their order. */
export function define<const I extends Inputs, const O extends Outputs>(d: Definition<I, O>): Calculator {
  const { conflicts, run, ...rest } = d;
  return {
    ...rest,
    ...(conflicts === undefined ? {} : { conflicts: (values) => conflicts(values as ValuesOf<I>) }),
    run: (values, port) => {
      const result = modelled(d.name, () => run(values as ValuesOf<I>, port));
      return Object.fromEntries(Object.keys(d.outputs).map((key) => [key, settled(key, result[key])]));
    },
  };
}

/** The models refuse what no room can have with a RangeError: for whoever typed it, that is an input error. */
function modelled<T>(name: string, run: () => T): T {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    const [what = error.message, accepted] = error.message.split('; accepted: ');
    throw new UserError({ where: `calc ${name}`, what, ...(accepted === undefined ? {} : { accepted }) });
  }
}

/** Below this a result is rounding of a zero; no quantity here has a meaning that small. */
const ROUNDING = 1e-12;

/** Plain JSON: no negative zero, no infinity (a depth that has no number is null). */
function settled(key: string, value: unknown): Value {
  if (value === undefined || value === null) return null;
  if (typeof value === 'string') return value;
  if (typeof value === 'number') {
    if (Number.isNaN(value)) throw new Error(`${key} is not a number`);
    if (Math.abs(value) < ROUNDING) return 0;
    return Number.isFinite(value) ? value : null;
  }
  if (Array.isArray(value) || ArrayBuffer.isView(value)) {
    return Array.from(value as unknown as ArrayLike<unknown>, (item) => settled(key, item));
  }
  if (typeof value === 'object') {
    return Object.fromEntries(Object.entries(value).map(([name, item]) => [name, settled(name, item)]));
  }
  throw new Error(`${key} is a ${typeof value}`);
}
