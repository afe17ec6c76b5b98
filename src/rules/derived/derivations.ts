/** What computes each derived fact: complete by type, so that a fact without a computation does not compile. */
import type { FactId } from '../../facts/catalog.js';
import { bass } from './bass.js';
import { geometry } from './geometry.js';
import { image } from './image.js';
import { layout } from './layout.js';
import { levels } from './levels.js';
import { path } from './path.js';
import { placement } from './placement.js';
import type { Derivation } from './reader.js';
import { room } from './room.js';
import { sharing } from './sharing.js';
import type { DerivedChoice, DerivedChoiceId, DerivedId } from './table.js';
import { time } from './time.js';
import { tone } from './tone.js';

type Derivations = {
  readonly [Id in DerivedId]: Derivation<FactId, Id extends DerivedChoiceId ? DerivedChoice<Id> : number>;
};

export const DERIVATIONS: Derivations = {
  ...geometry,
  ...layout,
  ...placement,
  ...path,
  ...time,
  ...sharing,
  ...levels,
  ...image,
  ...tone,
  ...bass,
  ...room,
};
