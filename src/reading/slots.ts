/** Quantities that no phrase fits, given to the fact whose thing and property stand nearest. */
import type { NumberFactId } from '../facts/catalog.js';
import { SLOTS } from '../facts/words/slots.js';
import type { Classes } from './pattern.js';
import type { Word } from './sentences.js';
import { canonical } from './spelling.js';

interface Slotted {
  readonly fact: NumberFactId;
  readonly first: number;
  readonly last: number;
  readonly used: readonly number[];
}

interface Wanted {
  readonly fact: NumberFactId;
  readonly thing: ReadonlySet<string>;
  readonly property: ReadonlySet<string>;
  readonly alone: 'thing' | 'property' | 'either' | undefined;
}

/** Words before and behind a quantity that can say what it is of. */
const BEFORE = 9;
const BEHIND = 6;
/** A property this near decides; the thing may stand farther away. */
const PROPERTY_REACH = 4;
/** How much nearer the best fact must be than the next one, in words. */
const LEAD = 1.5;

let wanted: readonly Wanted[] | undefined;

function slots(classes: Classes): readonly Wanted[] {
  const members = (list: string): ReadonlySet<string> =>
    new Set(
      list
        .split(' ')
        .flatMap((each) =>
          each.startsWith('@')
            ? [...(classes.get(each.slice(1)) ?? [])]
            : [/[A-Z]/.test(each) ? each : canonical(each)],
        ),
    );
  wanted ??= Object.entries(SLOTS).map(([fact, { thing, property, alone }]) => ({
    fact: fact as NumberFactId,
    thing: members(thing),
    property: members(property),
    alone,
  }));
  return wanted;
}

/** The fact a length at this word is of; undefined where none or several are as near. */
export function slotOf(
  words: readonly Word[],
  at: number,
  classes: Classes,
  fits: (fact: NumberFactId) => boolean,
): Slotted | undefined {
  const ranked = slots(classes)
    .flatMap(({ fact, thing, property, alone }) => {
      const where = nearest(words, at, property, PROPERTY_REACH);
      const what = nearest(words, at, thing, BEFORE, where);
      const cost = costOf(at, where, what, alone);
      if (cost === undefined || !fits(fact)) return [];
      const used = [where, what, at].filter((each) => each !== undefined).sort((a, b) => a - b);
      return [{ fact, cost, used }];
    })
    .sort((a, b) => a.cost - b.cost);
  const [best, next] = ranked;
  if (best === undefined || (next !== undefined && next.cost - best.cost < LEAD)) return undefined;
  return {
    fact: best.fact,
    first: best.used[0] as number,
    last: best.used.at(-1) as number,
    used: best.used,
  };
}

/** Farthest that a word may stand which is enough alone, and what the missing one costs. */
const ALONE_REACH = 3;
const MISSING = 4;

function costOf(
  at: number,
  where: number | undefined,
  what: number | undefined,
  alone: Wanted['alone'],
): number | undefined {
  if (where !== undefined && what !== undefined) return distance(at, where) + 0.5 * distance(at, what);
  const only = where ?? what;
  const suffices = alone === 'either' || alone === (where === undefined ? 'thing' : 'property');
  if (only === undefined || !suffices || distance(at, only) > ALONE_REACH) return undefined;
  return distance(at, only) + MISSING;
}

/** What stands behind a number belongs to it more often than what stands before. */
const distance = (at: number, place: number): number => (place > at ? place - at : 1.3 * (at - place));

function nearest(
  words: readonly Word[],
  at: number,
  set: ReadonlySet<string>,
  reach: number,
  not?: number,
): number | undefined {
  const { sentence } = words[at] as Word;
  let best: number | undefined;
  for (const step of [1, -1]) {
    const most = step > 0 ? Math.min(reach, BEHIND) : reach;
    for (let ahead = 1; ahead <= most; ahead++) {
      const place = at + step * ahead;
      const word = words[place];
      if (word === undefined || word.sentence !== sentence || word.hard) break;
      // Another quantity has its own words.
      if (word.quantity !== undefined) break;
      if (step > 0 && word.text === ',') break;
      if (place !== not && set.has(word.text)) {
        if (best === undefined || distance(at, place) < distance(at, best)) best = place;
        break;
      }
    }
  }
  return best;
}
