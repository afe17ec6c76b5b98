/** Calculators written for people: the list, the help of one, and a result with units, formula and source. */
import { markText } from '../words.js';
import { hanging, wrapped } from '../wrap.js';
import type { Calculator, Result, Value } from './calculator.js';

/** Narrowest and widest text; longer lines are hard to read. */
const NARROWEST = 40;
const WIDEST = 100;
const INDENT = '  ';

const lineWidth = (columns: number): number => Math.max(NARROWEST, Math.min(WIDEST, columns));

/** Four significant digits, never in powers of ten where plain digits do. */
function digits(value: number): string {
  const rounded = Number(value.toPrecision(4));
  return String(rounded);
}

function inWords(value: Value, unit: string): string {
  if (value === null) return 'none';
  if (typeof value === 'number') return unit === '' ? digits(value) : `${digits(value)} ${unit}`;
  if (typeof value === 'string') return value;
  if (isList(value)) {
    if (value.length === 0) return 'none';
    if (value.every((item) => typeof item === 'number')) {
      const list = value.map(digits).join(', ');
      return unit === '' ? list : `${list} ${unit}`;
    }
    return value.map((item) => inWords(item, unit)).join('; ');
  }
  return Object.entries(value)
    .map(([key, item]) => `${key} ${inWords(item, '')}`)
    .join(', ');
}

/** `Array.isArray` does not narrow a readonly list. */
const isList = (value: Value): value is readonly Value[] => Array.isArray(value);

/** Rows of `label  text`, the text wrapped beside the labels. */
function table(rows: readonly (readonly [label: string, text: string])[], width: number): string[] {
  const wide = Math.max(...rows.map(([label]) => label.length));
  return rows.flatMap(([label, text]) => hanging(`${INDENT}${label.padEnd(wide)}  `, text, width));
}

function sourceRows(calculator: Calculator): [string, string][] {
  const { formula, validity, source } = calculator;
  return [
    ['formula', formula],
    ['holds', validity],
    ['source', `${source.cite} (${markText(source.mark)})`],
  ];
}

/** A result with its inputs, formula, source and where it holds. */
export function showResult(
  calculator: Calculator,
  values: Readonly<Record<string, unknown>>,
  result: Result,
  columns: number,
): string {
  const width = lineWidth(columns);
  const inputs = Object.entries(calculator.inputs).flatMap(([key, input]): [string, string][] => {
    const value = values[key];
    if (value === undefined) return [];
    const text = typeof value === 'boolean' ? String(value) : inWords(value as Value, input.unit);
    return [[key, value === input.usual ? `${text} (usual)` : text]];
  });
  const outputs = Object.entries(calculator.outputs).map(([key, output]): [string, string] => [
    key,
    `${inWords(result[key] ?? null, output.unit)}   (${output.meaning})`,
  ]);
  return [
    calculator.title,
    ...(inputs.length > 0 ? ['', ...table(inputs, width)] : []),
    '',
    ...table(outputs, width),
    '',
    ...table(sourceRows(calculator), width),
    '',
  ].join('\n');
}

function inputRows(calculator: Calculator): [string, string][] {
  return Object.entries(calculator.inputs).map(([key, input]) => {
    const unit = input.unit === '' ? '' : ` [${input.unit}]`;
    const usual =
      input.usual !== undefined
        ? `; usual: ${input.usual}`
        : input.required
          ? '; needed'
          : '; may be left out';
    return [key, `${input.meaning}${unit}: ${input.accepted}${usual}`];
  });
}

/** The help of one calculator. */
export function showHelp(calculator: Calculator, columns: number): string {
  const width = lineWidth(columns);
  const outputs = Object.entries(calculator.outputs).map(([key, { unit, meaning }]): [string, string] => [
    key,
    unit === '' ? meaning : `${meaning} [${unit}]`,
  ]);
  return [
    `${calculator.name}: ${calculator.title}`,
    ...wrapped(calculator.answers, width),
    '',
    'Inputs (KEY=VALUE)',
    ...table(inputRows(calculator), width),
    '',
    'Results',
    ...table(outputs, width),
    '',
    ...table(sourceRows(calculator), width),
    '',
    'Example',
    `${INDENT}center-audit calc ${calculator.name} ${calculator.example}`,
    '',
  ].join('\n');
}

/** All calculators with their inputs. */
export function showList(calculators: readonly Calculator[], columns: number): string {
  const width = lineWidth(columns);
  return [
    'center-audit calc NAME KEY=VALUE...   one acoustic calculation, SI units',
    '',
    ...calculators.flatMap((calculator) => [
      ...wrapped(`${calculator.name}: ${calculator.answers}`, width),
      ...hanging(INDENT, inputSummary(calculator), width),
    ]),
    '',
    ...wrapped(
      'calc NAME --help tells more; calc NAME - reads the inputs as a JSON object from standard input; --json prints the result for programs.',
      width,
    ),
    '',
  ].join('\n');
}

function inputSummary({ inputs }: Calculator): string {
  return Object.entries(inputs)
    .map(([key, input]) =>
      input.required ? key : input.usual === undefined ? `[${key}]` : `[${key}=${input.usual}]`,
    )
    .join(' ');
}

/** The list for programs. */
export function listForPrograms(calculators: readonly Calculator[]): object[] {
  return calculators.map(({ name, title, answers, inputs, outputs, formula, validity, source, example }) => ({
    name,
    title,
    answers,
    inputs: Object.entries(inputs).map(([key, input]) => ({
      key,
      unit: input.unit,
      meaning: input.meaning,
      accepted: input.accepted,
      required: input.required,
      default: input.usual ?? null,
    })),
    outputs: Object.entries(outputs).map(([key, output]) => ({ key, ...output })),
    formula,
    validity,
    source,
    example,
  }));
}
