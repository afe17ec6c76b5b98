/** From what was typed or piped in to checked inputs of a calculator. Everything that is wrong is told at once. */
import { JsonFault, parseJson } from '../../lib/json-text.js';
import { didYouMean, nearest } from '../../lib/nearest.js';
import { quoted } from '../../lib/sanitize.js';
import { type Problem, UserError } from '../../lib/user-error.js';
import type { Calculator } from './calculator.js';
import { isObject, JSON_LIMITS } from './input-kinds.js';

/** Values by key as given, not yet checked, and what was already wrong with the words. */
type Given = {
  readonly values: ReadonlyMap<string, unknown>;
  readonly problems: readonly Problem[];
};

const place = (calculator: Calculator, key?: string) =>
  key === undefined ? `calc ${calculator.name}` : `calc ${calculator.name}, ${key}`;

function unknownKey(calculator: Calculator, key: string): Problem {
  const known = Object.keys(calculator.inputs);
  return {
    where: place(calculator),
    what: `${quoted(key)} is not known${didYouMean(nearest(key, known))}`,
    accepted: known.join(', '),
    example: calculator.example,
  };
}

function throwAll(problems: readonly Problem[]): void {
  const [first, ...rest] = problems;
  if (first !== undefined) throw new UserError(first, ...rest);
}

/** Reads `KEY=VALUE` words. A dotted key fills one part of a value (`entered.left=3.3`). */
export function readWords(calculator: Calculator, words: readonly string[]): Given {
  const given = new Map<string, unknown>();
  const problems: Problem[] = [];
  for (const word of words) {
    const equals = word.indexOf('=');
    if (equals <= 0) {
      problems.push({
        where: place(calculator),
        what: `${quoted(word)} is no KEY=VALUE`,
        accepted: `KEY=VALUE, with KEY one of ${Object.keys(calculator.inputs).join(', ')}`,
        example: calculator.example,
      });
      continue;
    }
    const problem = take(calculator, given, word.slice(0, equals).trim(), word.slice(equals + 1).trim());
    if (problem !== undefined) problems.push(problem);
  }
  return { values: given, problems };
}

function take(
  calculator: Calculator,
  given: Map<string, unknown>,
  typed: string,
  text: string,
): Problem | undefined {
  const twice: Problem = {
    where: place(calculator, typed),
    what: 'is given twice',
    accepted: 'each key once',
  };
  const dot = typed.indexOf('.');
  const key = dot < 0 ? typed : typed.slice(0, dot);
  const input = Object.hasOwn(calculator.inputs, key) ? calculator.inputs[key] : undefined;
  if (input === undefined || (dot >= 0 && input.parts === undefined)) return unknownKey(calculator, typed);
  if (dot < 0) {
    if (given.has(key)) return twice;
    given.set(key, input.text(text));
    return undefined;
  }
  const part = typed.slice(dot + 1);
  if (!input.parts?.includes(part)) {
    return {
      where: place(calculator, key),
      what: `${quoted(part)} is not known${didYouMean(nearest(part, input.parts ?? []))}`,
      accepted: input.accepted,
      example: `${key}.${input.parts?.[0]}=3.3`,
    };
  }
  const whole = given.get(key) ?? {};
  if (!isObject(whole) || Object.hasOwn(whole, part)) return twice;
  const number = Number(text);
  given.set(key, { ...whole, [part]: text === '' || Number.isNaN(number) ? text : number });
  return undefined;
}

/** Reads a JSON object. Throws UserError with line and column. */
export function readObject(calculator: Calculator, text: string): Given {
  const fail = (what: string, accepted: string): never => {
    throw new UserError({
      where: `${place(calculator)}, standard input`,
      what,
      accepted,
      example: JSON.stringify(
        Object.fromEntries(readWords(calculator, calculator.example.split(' ')).values),
      ),
    });
  };
  try {
    const { value } = parseJson(text, JSON_LIMITS);
    if (!isObject(value)) return fail('this is no JSON object', 'a JSON object with the inputs');
    return { values: new Map(Object.entries(value)), problems: [] };
  } catch (error) {
    if (!(error instanceof JsonFault)) throw error;
    return fail(error.message, error.accepted);
  }
}

/** Joins values from the command line and from standard input; a key in both is a problem. */
export function join(calculator: Calculator, a: Given, b: Given): Given {
  const twice = [...a.values.keys()]
    .filter((key) => b.values.has(key))
    .map((key) => ({
      where: place(calculator, key),
      what: 'is given on the command line and on standard input',
      accepted: 'each key once',
    }));
  return {
    values: new Map([...a.values, ...b.values]),
    problems: [...a.problems, ...b.problems, ...twice],
  };
}

/** Checks values; null counts as not given. Throws UserError with every problem found. */
export function check(calculator: Calculator, given: Given): Readonly<Record<string, unknown>> {
  const strangers = [...given.values.keys()].filter((key) => !Object.hasOwn(calculator.inputs, key));
  const problems = [...given.problems, ...strangers.map((key) => unknownKey(calculator, key))];
  const values: Record<string, unknown> = {};
  for (const [key, input] of Object.entries(calculator.inputs)) {
    const value = given.values.get(key) ?? input.usual;
    if (value === undefined) {
      if (input.required) problems.push(missing(calculator, key));
      continue;
    }
    const checked = input.value(value);
    if ('value' in checked) values[key] = checked.value;
    else {
      for (const { what, accepted, example, at = '' } of checked.refused) {
        problems.push({ where: place(calculator, key + at), what, accepted, example: `${key}=${example}` });
      }
    }
  }
  throwAll(problems);
  throwAll(calculator.conflicts?.(values) ?? []);
  return values;
}

function missing(calculator: Calculator, key: string): Problem {
  const input = calculator.inputs[key];
  const unit = input?.unit ? `, in ${input.unit}` : '';
  return {
    where: place(calculator, key),
    what: `is missing${input === undefined ? '' : `: ${input.meaning}${unit}`}`,
    accepted: input?.accepted ?? '',
    example: `center-audit calc ${calculator.name} ${calculator.example}`,
  };
}
