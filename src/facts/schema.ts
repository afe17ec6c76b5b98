/**
 * The shape of a case file as zod schemas generated from the catalog, and the JSON Schema drawn from the same
 * source. Shape only: units, ranges and paths are read by `answer.ts`. zod costs about 45 ms to load, so it
 * is imported here and nowhere else.
 */
import { z } from 'zod';
import { acceptedAnswer } from './answer.js';
import { CASE_FORMAT, CASE_LIMITS, CASE_VERSION } from './case-limits.js';
import { FACT_IDS, type FactId, factSpec } from './catalog.js';
import { COMPLAINT_IDS, COMPLAINTS } from './complaints.js';
import { type FactSpec, HOWS } from './spec.js';

const how = z.enum(HOWS).describe('how the answer was obtained');
const unknown = z.strictObject({
  how: z.literal('unknown').describe('asked, and nobody could tell'),
});

function rawValue(spec: FactSpec): z.ZodType {
  switch (spec.kind) {
    case 'choice': {
      const values = z.enum(Object.keys(spec.choices) as [string, ...string[]]);
      return values.describe(
        Object.entries(spec.choices)
          .map(([value, words]) => `${value}: ${words}`)
          .join('; '),
      );
    }
    case 'number': {
      const { accepted, example } = acceptedAnswer(spec, 'metric');
      const note = `${accepted}; for example ${example}; a number alone takes the unit system of the case`;
      return z.union([z.number(), z.string().min(1).max(CASE_LIMITS.answerLetters)]).describe(note);
    }
    case 'file':
      return z
        .string()
        .min(1)
        .max(CASE_LIMITS.answerLetters)
        .describe('path of a text file in the folder of the case');
  }
}

function factSchema(id: FactId): z.ZodType {
  const spec = factSpec(id);
  const value = rawValue(spec);
  return z.union([value, z.strictObject({ value, how: how.optional() }), unknown]).describe(spec.ask);
}

const meters = z
  .union([z.number(), z.string().min(1).max(CASE_LIMITS.answerLetters)])
  .describe('meters, or a text with its unit');

function seatSchema(): z.ZodType {
  return z.strictObject({
    name: z.string().max(CASE_LIMITS.seatNameLetters).optional(),
    xM: meters.describe(
      'to the right of the midline, seen facing the picture; meters, or a text with its unit',
    ),
    yM: meters.describe('back from the line between the mains; meters, or a text with its unit'),
    row: z.number().int().min(1).max(10).optional().describe('counted from 1 at the front'),
    earHeightM: meters.optional(),
    main: z.boolean().optional().describe('true at the one main seat'),
  });
}

const id = z.string().min(1).max(CASE_LIMITS.idLetters);

function expectSchema(): z.ZodType {
  const ids = z.array(id).max(CASE_LIMITS.expectIds);
  return z
    .strictObject({
      top: ids.optional().describe('every true cause'),
      ruledOut: ids.optional().describe('causes that must not lead'),
      undecided: z.boolean().optional().describe('the right answer is that more must be found out'),
      separates: ids.optional().describe('the causes that remain'),
    })
    .describe('used by evaluation only');
}

/** Builds the schema of a whole case file. */
export function caseSchema(): z.ZodType {
  const complaint = z
    .enum(COMPLAINT_IDS as [string, ...string[]])
    .describe(COMPLAINT_IDS.map((each) => `${each}: ${COMPLAINTS[each].title}`).join('; '));
  const complaints = z.array(complaint).max(COMPLAINT_IDS.length * 2);
  return z
    .strictObject({
      format: z.literal(CASE_FORMAT).optional(),
      version: z.literal(CASE_VERSION).optional(),
      units: z
        .enum(['metric', 'imperial'])
        .optional()
        .describe('for numbers without a unit, and for reports'),
      title: z.string().max(CASE_LIMITS.titleLetters).optional(),
      words: z
        .string()
        .max(CASE_LIMITS.wordsLetters)
        .optional()
        .describe('the complaint in the words of the owner'),
      complaints: complaints.optional().describe('what the owner hears'),
      absentComplaints: complaints.optional().describe('what the owner was asked about and does not hear'),
      facts: z.strictObject(factShapes()).optional(),
      seats: z.array(seatSchema()).max(CASE_LIMITS.seats).optional(),
      notes: z.array(z.string().max(CASE_LIMITS.noteLetters)).max(CASE_LIMITS.notes).optional(),
      tried: z
        .array(z.string().max(CASE_LIMITS.idLetters * 2))
        .max(CASE_LIMITS.tried)
        .optional()
        .describe('remedies already carried out, as cause/remedy'),
      expect: expectSchema().optional(),
    })
    .describe('One home audio system and the complaint about its center loudspeaker');
}

function factShapes(): Record<string, z.ZodType> {
  return Object.fromEntries(FACT_IDS.map((each) => [each, factSchema(each).optional()]));
}

/** One thing zod found: where, what kind, and the keys it does not know. */
export interface ShapeIssue {
  readonly path: readonly (string | number)[];
  readonly code: string;
  readonly unknownKeys: readonly string[];
  readonly message: string;
}

let built: z.ZodType | undefined;

/** All faults of the shape, in the order of the file; an empty list when there are none. */
export function shapeIssues(value: unknown): ShapeIssue[] {
  built ??= caseSchema();
  const result = built.safeParse(value);
  if (result.success) return [];
  return result.error.issues.map((issue) => ({
    path: issue.path.filter((step) => typeof step !== 'symbol'),
    code: issue.code,
    unknownKeys: issue.code === 'unrecognized_keys' ? issue.keys : [],
    message: issue.message,
  }));
}

/** The JSON Schema (draft 2020-12) of a case file. */
export function caseJsonSchema(): Record<string, unknown> {
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: 'center-audit case',
    ...z.toJSONSchema(caseSchema(), { target: 'draft-2020-12' }),
  };
}
