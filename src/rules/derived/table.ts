/**
 * Every computed fact: one entry each in its family file, with unit, label, the facts it may read, and what
 * computes it. Angles and errors that a rule compares with a limit are magnitudes (never negative).
 */

import type { Derivation, DerivedMeta } from '../../compute/reader.js';
import { bass } from './bass.js';
import { bayOfFurniture } from './bay.js';
import { geometry } from './geometry.js';
import { image } from './image.js';
import { latency } from './latency.js';
import { layout } from './layout.js';
import { levels } from './levels.js';
import { path } from './path.js';
import { placement } from './placement.js';
import { recording } from './recording.js';
import { room } from './room.js';
import { routes } from './routes.js';
import { sharing } from './sharing.js';
import { time } from './time.js';
import { told } from './told.js';
import { tone } from './tone.js';
import { trouble } from './trouble.js';

export const DERIVED = {
  ...geometry,
  ...layout,
  ...placement,
  ...bayOfFurniture,
  ...path,
  ...time,
  ...latency,
  ...levels,
  ...sharing,
  ...image,
  ...tone,
  ...bass,
  ...recording,
  ...room,
  ...routes,
  ...trouble,
  ...told,
} as const satisfies Record<string, DerivedMeta & Derivation>;

export type DerivedId = keyof typeof DERIVED;
export const DERIVED_IDS = Object.keys(DERIVED) as DerivedId[];
export function isDerivedId(id: string): id is DerivedId {
  return Object.hasOwn(DERIVED, id);
}
type DerivedOf<K extends DerivedMeta['kind']> = {
  [Id in DerivedId]: (typeof DERIVED)[Id] extends { readonly kind: K } ? Id : never;
}[DerivedId];
export type DerivedNumberId = DerivedOf<'number'>;
export type DerivedChoiceId = DerivedOf<'choice'>;
export type DerivedChoice<Id extends DerivedChoiceId> = (typeof DERIVED)[Id]['values'][number];
