/**
 * A hole, a peak, a reflection or a drop of level that somebody measured, held against what a mechanism makes in this
 * very case. One rule for every mechanism, so that all say it alike and weigh it alike.
 */
import type { Match, Rule } from './cause.js';
import { atLeast, type NumberVar } from './condition.js';
import type { DerivedNumberId } from './derived/table.js';
import type { SourceId } from './sources.js';

/** What was told, how it is called, and what a mechanism does with it. */
const TOLD = {
  hole: { of: 'toldHoleHz', name: 'hole you measured at {toldHoleHz}', makes: 'where # puts one' },
  peak: { of: 'toldPeakHz', name: 'peak you measured at {toldPeakHz}', makes: 'where # puts one' },
  reflection: {
    of: 'reflectionMeasuredMs',
    name: 'reflection you measured {reflectionMeasuredMs} behind the voice',
    makes: 'what # sends back',
  },
  drop: {
    of: 'sideDropDb',
    name: 'drop of the center at the side seat, {sideDropDb} measured,',
    makes: 'what # takes there',
  },
} as const satisfies Record<string, { of: NumberVar; name: string; makes: string }>;

/**
 * @param what the mechanism as it stands in a sentence: "the floor", "the layout of the drivers at that angle"
 * @param at what it makes, computed; 0 where it makes none
 * @param only `for` where the measurement need not show it
 */
export function measuredAt<const G extends string>(
  group: G,
  kind: keyof typeof TOLD,
  { what, at, source, only }: { what: string; at: DerivedNumberId; source: SourceId } & Pick<Match, 'only'>,
): Rule & { readonly group: G } {
  const { of, name, makes } = TOLD[kind];
  const here = makes.replace('#', what);
  return {
    id: `measured-${kind}`,
    group,
    says: {
      yes: `The ${name} is ${here}, {range}.`,
      no: `The ${name} is not ${here}: {range}.`,
    },
    because:
      'Each mechanism makes a number of its own that follows from distances and heights. Agreement within what the tape may be off is seldom chance.',
    source,
    // Both have to be known; the weight then decides which of the two is said.
    when: atLeast(of, { other: at as never }),
    weigh: { kind: 'match', of, with: at, ...(only ? { only } : {}) },
  };
}
