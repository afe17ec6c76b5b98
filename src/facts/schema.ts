/**
 * The shape of a case file as zod schemas generated from the catalog. Shape only: units, ranges and paths are
 * read by `answer.ts`, words for people are added in `case-file.ts` and `json-schema.ts`. The small flavor of
 * zod is used since loading is most of its cost: an import of the large one anywhere puts all of it into every start.
 */
import * as z from 'zod/mini';
import { ACT_IDS, ENTRIES_OF, OUTCOME_IDS, REMEDY_REF } from './acts.js';
import { isObject } from './case-answers.js';
import { CASE_FORMAT, CASE_LIMITS, CASE_VERSION } from './case-limits.js';
import type { RawCase } from './case-text.js';
import { DIFFICULTIES } from './case-write.js';
import { type FactId, factSpec, isFactId } from './catalog.js';
import { COMPLAINT_IDS } from './complaints.js';
import { CONSTRAINT_IDS } from './constraints.js';
import { type FactSpec, HOWS } from './spec.js';

type Schema = z.ZodMiniType;

const text = (most: number, least = 0): Schema => z.string().check(z.minLength(least), z.maxLength(most));
const list = (each: Schema, most: number): Schema => z.array(each).check(z.maxLength(most));
const oneOf = (values: readonly string[]): Schema => z.enum(values as [string, ...string[]]);

const quantity = z.union([z.number(), text(CASE_LIMITS.answerLetters, 1)]);
const path = text(CASE_LIMITS.answerLetters, 1);
const how = z.optional(oneOf(HOWS));
const unknown = z.strictObject({ how: z.literal('unknown') });
const conflicting = (value: Schema): Schema =>
  z.strictObject({
    how: z.literal('conflicting'),
    values: z.array(value).check(z.minLength(2), z.maxLength(CASE_LIMITS.conflicting)),
  });

function rawValue(spec: FactSpec): Schema {
  switch (spec.kind) {
    case 'choice':
      return oneOf(Object.keys(spec.choices));
    case 'number':
      return quantity;
    case 'file':
      return path;
  }
}

const factSchemas = new Map<FactId, Schema>();

/** One entry under `facts`: a value, `{ value, how }`, `{ how: 'unknown' }`, or `{ how: 'conflicting', values }`. */
function factSchema(id: FactId): Schema {
  const known = factSchemas.get(id);
  if (known !== undefined) return known;
  const value = rawValue(factSpec(id));
  const schema = z.optional(z.union([value, z.strictObject({ value, how }), unknown, conflicting(value)]));
  factSchemas.set(id, schema);
  return schema;
}

/** Everything but the facts; built once. */
function caseShape() {
  const seat = z.strictObject({
    name: z.optional(text(CASE_LIMITS.seatNameLetters)),
    xM: quantity,
    yM: quantity,
    row: z.optional(z.int().check(z.gte(1), z.lte(10))),
    earHeightM: z.optional(quantity),
    main: z.optional(z.boolean()),
  });
  const trial = z.strictObject({
    act: z.union([oneOf(ACT_IDS), text(CASE_LIMITS.idLetters * 2).check(z.regex(REMEDY_REF))]),
    of: z.optional(oneOf(ENTRIES_OF)),
    outcome: oneOf(OUTCOME_IDS),
    complaint: z.optional(oneOf(COMPLAINT_IDS)),
    stays: z.optional(z.boolean()),
    note: z.optional(text(CASE_LIMITS.noteLetters)),
  });
  const complaints = z.optional(list(oneOf(COMPLAINT_IDS), COMPLAINT_IDS.length * 2));
  const causes = z.optional(list(text(CASE_LIMITS.idLetters, 1), CASE_LIMITS.expectIds));
  return {
    format: z.optional(z.literal(CASE_FORMAT)),
    version: z.optional(z.literal([1, CASE_VERSION])),
    units: z.optional(z.enum(['metric', 'imperial'])),
    title: z.optional(text(CASE_LIMITS.titleLetters)),
    words: z.optional(text(CASE_LIMITS.wordsLetters)),
    complaints,
    absentComplaints: complaints,
    seats: z.optional(list(seat, CASE_LIMITS.seats)),
    notes: z.optional(list(text(CASE_LIMITS.noteLetters), CASE_LIMITS.notes)),
    tried: z.optional(list(text(CASE_LIMITS.idLetters * 2), CASE_LIMITS.trials)),
    trials: z.optional(list(trial, CASE_LIMITS.trials)),
    constraints: z.optional(list(oneOf(CONSTRAINT_IDS), CONSTRAINT_IDS.length * 2)),
    solved: z.optional(z.boolean()),
    expect: z.optional(
      z.strictObject({
        top: causes,
        ruledOut: causes,
        undecided: z.optional(z.boolean()),
        separates: causes,
        difficulty: z.optional(z.enum(DIFFICULTIES)),
        setAside: z.optional(z.boolean()),
      }),
    ),
  };
}
let shape: ReturnType<typeof caseShape> | undefined;

/** The schema of a case with these facts; schemas of facts that are not asked for are not built. */
export function caseSchema(ids: readonly FactId[]): Schema {
  shape ??= caseShape();
  const facts = z.optional(z.strictObject(Object.fromEntries(ids.map((id) => [id, factSchema(id)]))));
  return z.strictObject({ ...shape, facts, before: z.optional(z.strictObject({ facts })) });
}

/** One thing zod found: where, what kind, and the keys it does not know. */
export interface ShapeIssue {
  readonly path: readonly (string | number)[];
  readonly code: string;
  readonly unknownKeys: readonly string[];
}

/** All faults of the shape of a raw case; an empty list when there are none. */
export function shapeIssues(raw: RawCase): ShapeIssue[] {
  const { facts, before } = raw;
  const told = [facts, isObject(before) ? before.facts : undefined].filter(isObject);
  const ids = [...new Set(told.flatMap((each) => Object.keys(each)))].filter(isFactId);
  const result = caseSchema(ids).safeParse(raw, { jitless: true });
  if (result.success) return [];
  return result.error.issues.map((issue) => ({
    path: issue.path.filter((step) => typeof step !== 'symbol'),
    code: issue.code ?? 'custom',
    unknownKeys: issue.code === 'unrecognized_keys' ? issue.keys : [],
  }));
}
