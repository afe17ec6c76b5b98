/** The JSON Schema (draft 2020-12) of a case file: the shape from zod, the words from the catalog. */
import { toJSONSchema } from 'zod/mini';
import { ACT_IDS, ACTS } from './acts.js';
import { acceptedAnswer } from './answer.js';
import { FACT_IDS, factSpec } from './catalog.js';
import { COMPLAINT_IDS, COMPLAINTS } from './complaints.js';
import { CONSTRAINT_IDS, CONSTRAINTS } from './constraints.js';
import { caseSchema } from './schema.js';
import type { FactSpec } from './spec.js';

type JsonSchema = { [key: string]: unknown; description?: string; properties?: Record<string, JsonSchema> };

const KEY_WORDS: Readonly<Record<string, string>> = {
  units: 'for numbers without a unit, and for reports',
  title: 'a short name',
  words: 'the complaint in the words of the owner',
  complaints: `what the owner hears: ${COMPLAINT_IDS.map((id) => `${id}: ${COMPLAINTS[id].title}`).join('; ')}`,
  absentComplaints: 'what the owner was asked about and does not hear',
  facts:
    'what is known about the system; a fact nobody could tell is { "how": "unknown" }, one told in several ways { "how": "conflicting", "values": [] }',
  seats:
    'xM: to the right of the midline, yM: back from the line between the mains, seen facing the picture; meters, or a text with its unit; row counted from 1 at the front',
  tried: 'of version 1: remedies carried out in vain, as cause/remedy; a trial says more',
  trials: `what was done and what it did; act: ${ACT_IDS.map((id) => `${id}: ${ACTS[id].done}`).join('; ')}, or a remedy as cause/remedy; stays: it still stands as changed; complaint: when only that one was meant`,
  before: 'facts as they were when the trouble was heard, where a trial changed them since',
  constraints: `what must not be done: ${CONSTRAINT_IDS.map((id) => `${id}: ${CONSTRAINTS[id]}`).join('; ')}`,
  solved: 'the owner holds the trouble for settled',
  expect: 'used by evaluation only',
};

/** What a value of this fact may be, in words. */
function valueWords(spec: FactSpec): string {
  if (spec.kind === 'choice') {
    const words = Object.entries(spec.choices).map(([value, plain]) => `${value}: ${plain}`);
    return words.join('; ');
  }
  const { accepted, example } = acceptedAnswer(spec, 'metric');
  const bare = spec.kind === 'number' ? '; a number alone takes the unit system of the case' : '';
  return `${accepted}; for example ${example}${bare}`;
}

export function caseJsonSchema(): Record<string, unknown> {
  const schema = toJSONSchema(caseSchema(FACT_IDS), { target: 'draft-2020-12' }) as JsonSchema;
  const properties = schema.properties ?? {};
  for (const [key, words] of Object.entries(KEY_WORDS)) describe(properties[key], words);
  for (const id of FACT_IDS) {
    const spec = factSpec(id);
    describe(properties.facts?.properties?.[id], `${spec.ask} ${valueWords(spec)}`);
  }
  const description = 'One home audio system and the complaint about its center loudspeaker';
  return { ...schema, title: 'center-audit case', description };
}

function describe(schema: JsonSchema | undefined, words: string): void {
  if (schema !== undefined) schema.description = words;
}
