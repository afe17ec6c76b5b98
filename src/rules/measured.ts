/**
 * A hole or a peak that somebody measured, or that a correction tries to fill, held against where a mechanism puts one
 * in this very case. One rule for every mechanism, so that all say it alike and weigh it alike.
 */
import type { Rule } from './cause.js';
import { atLeast, type NumberVar } from './condition.js';
import type { DerivedNumberId } from './derived/table.js';
import type { SourceId } from './sources.js';

const TOLD = { hole: 'toldHoleHz', peak: 'toldPeakHz' } as const satisfies Record<string, NumberVar>;

/**
 * @param what the mechanism as it stands in a sentence: "the floor", "the layout of the drivers at that angle"
 * @param at the frequency that it makes, computed
 */
export function measuredAt<const G extends string>(
  group: G,
  kind: keyof typeof TOLD,
  { what, at, source }: { readonly what: string; readonly at: DerivedNumberId; readonly source: SourceId },
): Rule & { readonly group: G } {
  const of = TOLD[kind];
  return {
    id: `measured-${kind}`,
    group,
    says: {
      yes: `The ${kind} you measured at {${of}} is where ${what} puts one, {range}.`,
      no: `The ${kind} you measured at {${of}} is not where ${what} puts one, {range}.`,
      unknown: `No ${kind} has been measured, or what it takes to compute where ${what} puts one is not known.`,
    },
    because:
      'Each mechanism has a pitch of its own that follows from distances and heights. Agreement within what the tape may be off is seldom chance.',
    source,
    // Both have to be known; the weight then decides which of the two is said.
    when: atLeast(of, { other: at as never }),
    weigh: { kind: 'match', of, with: at },
  };
}
