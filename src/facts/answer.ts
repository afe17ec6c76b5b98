/**
 * One answer to one question, from the interview, the command line or a case file: read, checked against what
 * is possible, and remarked upon where it is unusual.
 */

import { didYouMean, nearest, sameWord } from '../lib/nearest.js';
import { plainLine, quoted } from '../lib/sanitize.js';
import type { Answer, UnitSystem } from './book.js';
import { type FactId, factSpec } from './catalog.js';
import { formatFact } from './format.js';
import { filePathProblem } from './paths.js';
import { stripSide } from './sides.js';
import type { ChoiceSpec, FactSpec, How, NumberSpec } from './spec.js';
import { acceptedForm, bareUnit, bareValue, parseQuantity, type Refusal } from './units.js';

interface AnswerOptions {
  readonly units: UnitSystem;
  /** How it was obtained, if that was said; otherwise what is usual for the fact, or `guessed` for "about". */
  readonly how?: How;
  /** A case file names choices by their exact value; at a prompt list numbers, beginnings and "unknown" do as well. */
  readonly strict?: boolean;
}

export type AnswerResult =
  | {
      readonly answer: Answer;
      /** The value as it was understood, to be echoed: `3.20 m (10 ft 6 in)`. */
      readonly echo: string;
      /** The unit that was taken for a number without one. */
      readonly bareUnit?: string;
      /** Told when the value is possible but unusual. */
      readonly remark?: string;
    }
  | { readonly refused: Refusal };

const UNKNOWN_WORDS = [
  'unknown',
  'not known',
  "don't know",
  'dont know',
  "i don't know",
  'do not know',
  'i do not know',
  'not sure',
  'no idea',
];

/** Reads one answer. Never throws. */
export function parseAnswer(id: FactId, raw: unknown, options: AnswerOptions): AnswerResult {
  const spec = factSpec(id);
  if (
    !options.strict &&
    typeof raw === 'string' &&
    UNKNOWN_WORDS.includes(plainLine(raw).toLowerCase().replaceAll('’', "'"))
  ) {
    return { answer: { how: 'unknown' }, echo: 'not known' };
  }
  switch (spec.kind) {
    case 'choice':
      return parseChoice(spec, raw, options);
    case 'number':
      return parseNumber(spec, raw, options);
    case 'file':
      return parseFile(spec, raw, options);
  }
}

/** What a fact accepts, and an example, for errors and help. */
export function acceptedAnswer(spec: FactSpec, units: UnitSystem): { accepted: string; example: string } {
  switch (spec.kind) {
    case 'choice': {
      const values = Object.keys(spec.choices);
      return { accepted: values.join(', '), example: values[0] ?? '' };
    }
    case 'number': {
      const { accepted } = acceptedForm({ unit: spec.unit, written: spec.written, units });
      const [low, high] = spec.possible.map((edge) => edgeText(edge, spec, units));
      return { accepted: `${accepted}, from ${low} to ${high}`, example: exampleOf(spec, units) };
    }
    case 'file':
      return { accepted: 'the path of a text file in the folder of the case', example: 'center.txt' };
  }
}

function edgeText(edge: number, spec: NumberSpec, units: UnitSystem): string {
  return formatFact(edge, spec, units, false);
}

function exampleOf(spec: NumberSpec, units: UnitSystem): string {
  const middle = spec.typical[Math.floor(spec.typical.length / 2)] ?? spec.plausible[0];
  return edgeText(middle, spec, units);
}

function refusal(what: string, spec: FactSpec, units: UnitSystem): AnswerResult {
  return { refused: { what, ...acceptedAnswer(spec, units) } };
}

function describe(raw: unknown): string {
  if (raw === null) return 'null';
  if (Array.isArray(raw)) return 'a list';
  if (typeof raw === 'object') return 'an object';
  return typeof raw === 'string' ? quoted(raw) : String(raw);
}

function parseChoice(spec: ChoiceSpec, raw: unknown, options: AnswerOptions): AnswerResult {
  const values = Object.keys(spec.choices);
  const refuse = (what: string): AnswerResult => refusal(what, spec, options.units);
  if (typeof raw !== 'string' && typeof raw !== 'number')
    return refuse(`${describe(raw)} is none of the choices`);
  const typed = plainLine(String(raw)).toLowerCase();
  if (typed === '') return refuse('nothing is written there');
  const found = options.strict ? values.filter((value) => value === raw) : matchChoice(typed, spec);
  const [value] = found;
  if (value !== undefined && found.length === 1) {
    return { answer: { value, how: options.how ?? spec.usually }, echo: spec.choices[value] ?? value };
  }
  if (found.length > 1) return refuse(`${quoted(String(raw))} could be ${found.join(' or ')}`);
  return refuse(`${quoted(String(raw))} is none of the choices${didYouMean(nearest(typed, values))}`);
}

/** The choice that the trade has this word for, if it is one of its words. */
export function choiceCalled({ alsoCalled = {} }: ChoiceSpec, word: string): string | undefined {
  return Object.keys(alsoCalled).find((value) => alsoCalled[value]?.some((each) => sameWord(each, word)));
}

/** By value, by number in the list, by the plain words, a word of the trade, or a beginning: all that fit. */
function matchChoice(typed: string, spec: ChoiceSpec): string[] {
  const choices = Object.entries(spec.choices);
  const bySame = choices.filter(([value, label]) => value === typed || label.toLowerCase() === typed);
  if (bySame.length > 0) return bySame.map(([value]) => value);
  if (/^\d{1,3}\.?$/.test(typed)) {
    const chosen = choices[Number.parseInt(typed, 10) - 1];
    return chosen === undefined ? [] : [chosen[0]];
  }
  const called = choiceCalled(spec, typed);
  if (called !== undefined) return [called];
  const dashed = typed.replaceAll(' ', '-');
  const byBeginning = choices.filter(
    ([value, label]) => value.startsWith(dashed) || label.toLowerCase().startsWith(typed),
  );
  return byBeginning.map(([value]) => value);
}

function parseNumber(spec: NumberSpec, raw: unknown, options: AnswerOptions): AnswerResult {
  const { units } = options;
  const context = { unit: spec.unit, written: spec.written, units };
  const refuse = (what: string): AnswerResult => refusal(what, spec, units);
  let value: number;
  let approximate = false;
  let bare = true;
  if (typeof raw === 'number') {
    if (!Number.isFinite(raw)) return refuse(`${String(raw)} is no finite number`);
    value = bareValue(raw, context);
  } else if (typeof raw === 'string') {
    const { text, turned } = spec.sides ? stripSide(raw, spec.sides) : { text: raw };
    const read = parseQuantity(text, context);
    if ('refused' in read) return refuse(read.refused.what);
    if (turned && read.value < 0) return refuse(`${quoted(raw)} has a minus and a side as well`);
    value = turned === 'minus' && read.value !== 0 ? -read.value : read.value;
    approximate = read.approximate;
    bare = read.bare;
  } else return refuse(`${describe(raw)} is no number`);

  const shown = formatFact(value, spec, units);
  const [low, high] = spec.possible;
  if (value < low || value > high) return refuse(`${outOfRange(spec, shown)}${bareNote(context, bare)}`);
  if (spec.whole && !Number.isInteger(value)) return refuse(`${describe(raw)} is not a whole number`);
  const how = options.how ?? (approximate ? 'guessed' : spec.usually);
  const taken = bareUnit(context);
  return {
    answer: { value: Object.is(value, -0) ? 0 : value, how },
    echo: shown,
    ...(bare && taken !== '' && value !== 0 ? { bareUnit: taken } : {}),
    ...remarkOn(value, spec, units),
  };
}

function outOfRange(spec: NumberSpec, shown: string): string {
  return `${shown} cannot be right for the ${spec.label}`;
}

function bareNote(context: Parameters<typeof bareUnit>[0], bare: boolean): string {
  const taken = bareUnit(context);
  return bare && taken !== '' ? `; a number without a unit is taken as ${taken} here` : '';
}

function remarkOn(value: number, spec: NumberSpec, units: UnitSystem): { remark?: string } {
  const [low, high] = spec.plausible;
  if (value >= low && value <= high) return {};
  const shown = formatFact(value, spec, units);
  const common = `${edgeText(low, spec, units)} to ${edgeText(high, spec, units)}`;
  return { remark: `${shown} is unusual for the ${spec.label}; common is ${common}` };
}

function parseFile(spec: FactSpec, raw: unknown, options: AnswerOptions): AnswerResult {
  const refuse = (what: string): AnswerResult => refusal(what, spec, options.units);
  if (typeof raw !== 'string') return refuse(`${describe(raw)} is no path`);
  const problem = filePathProblem(raw);
  if (problem !== undefined) return refuse(problem);
  return { answer: { value: raw, how: options.how ?? spec.usually }, echo: raw };
}
