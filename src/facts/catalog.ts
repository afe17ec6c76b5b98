/**
 * The catalog of everything that can be known about a system. One file a family; ids, once landed, stay.
 */
import { bassFacts } from './families/bass.js';
import { complaintFacts } from './families/complaint.js';
import { entryFacts } from './families/entries.js';
import { geometryFacts } from './families/geometry.js';
import { historyFacts } from './families/history.js';
import { placementFacts } from './families/placement.js';
import { recordingFacts } from './families/recording.js';
import { roomFacts } from './families/room.js';
import { sourceFacts } from './families/source.js';
import { speakerFacts } from './families/speakers.js';
import { testFacts } from './families/tests.js';
import { toneFacts } from './families/tone.js';
import { upmixFacts } from './families/upmix.js';
import { wiringFacts } from './families/wiring.js';
import type { FactSpec } from './spec.js';

export const FACTS = {
  ...complaintFacts,
  ...sourceFacts,
  ...speakerFacts,
  ...geometryFacts,
  ...placementFacts,
  ...upmixFacts,
  ...entryFacts,
  ...toneFacts,
  ...bassFacts,
  ...wiringFacts,
  ...roomFacts,
  ...recordingFacts,
  ...historyFacts,
  ...testFacts,
} as const satisfies Record<string, FactSpec>;

type Facts = typeof FACTS;
export type FactId = keyof Facts;
type IdsOf<Kind extends FactSpec['kind']> = {
  [Id in FactId]: Facts[Id] extends { readonly kind: Kind } ? Id : never;
}[FactId];
export type ChoiceFactId = IdsOf<'choice'>;
export type NumberFactId = IdsOf<'number'>;
export type FileFactId = IdsOf<'file'>;
export type TestId = Extract<FactId, `test${string}`>;

/** The choice values of one choice fact. */
export type Choice<Id extends ChoiceFactId> = keyof Facts[Id]['choices'] & string;
/** The unit of one number fact, as a literal type. */
export type UnitOf<Id extends NumberFactId> = Facts[Id]['unit'];

export const FACT_IDS = Object.keys(FACTS) as FactId[];
export const TEST_IDS = Object.keys(testFacts) as TestId[];

export function factSpec(id: FactId): FactSpec {
  return FACTS[id];
}
export function isFactId(id: string): id is FactId {
  return Object.hasOwn(FACTS, id);
}
