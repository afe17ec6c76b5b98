/** Numbers that tell by their shape what they are of: W x H x D, -3 dB at 55 Hz, "three of us". */

import type { UnitSystem } from '../facts/book.js';
import type { NumberFactId } from '../facts/catalog.js';
import type { Classes } from './pattern.js';
import type { Quantity } from './quantities.js';
import type { Word } from './sentences.js';
import { canonical } from './spelling.js';
import { matchOf, type Told, toList, toldBy } from './values.js';

const COUNTS = new Map('two three four five six seven eight'.split(' ').map((word, at) => [word, at + 2]));
const SEATS = new Set(['seat', 'seater', 'armchair', 'recliner', 'of', 'people', 'person'].map(canonical));

/** "Three of us", "a sofa for four", "two seats": counts are spelled out. */
export function seatsIn(words: readonly Word[]): Told[] {
  return words.flatMap((word, at): Told[] => {
    const value = COUNTS.get(word.raw);
    const next = words[at + (words[at + 1]?.text === '-' ? 2 : 1)];
    if (value === undefined || next?.sentence !== word.sentence) return [];
    if (MOVING.has(words[at - 1]?.raw ?? '')) return [];
    const isSeats = SEATS.has(next.text) && (next.raw !== 'of' || words[at + 2]?.raw === 'us');
    const isFor = words[at - 1]?.raw === 'for' && SOFAS.has(words[at - 2]?.text ?? '');
    const match = {
      meaning: { kind: 'number', fact: 'seatCount' } as const,
      first: at,
      last: at + 1,
      used: [at, at + 1],
    };
    return isSeats || isFor
      ? [{ fact: 'seatCount', value, approximate: false, match, sideMissing: false }]
      : [];
  });
}
/** Seats that are moved or stood on are not those of the row. */
const MOVING = new Set('moved move put pulled pushed took on between against removed borrowed'.split(' '));
const SOFAS = new Set(['sofa', 'loveseat', 'bench', 'row']);

/** "-3 dB at 55 Hz", "-3 dB point: 85 Hz": the drop, then the frequency it stands at. */
export function lowLimit(
  words: readonly Word[],
  at: number,
  told: readonly Told[],
  units: UnitSystem,
): Told[] {
  const { quantity, sentence } = words[at] as Word;
  const before = told.at(-1);
  if (
    quantity?.dimension === 'frequency' &&
    before?.fact === 'centerLowLimitDrop' &&
    at - before.match.last <= 8
  )
    return toList(toldBy(words, matchOf('centerLowLimit', at, [at]), 'centerLowLimit', units));
  if (quantity?.dimension === 'frequency' && quantity.value <= 200 && isDropBehind(words, at))
    return toList(toldBy(words, matchOf('centerLowLimit', at, [at]), 'centerLowLimit', units));
  if (quantity === undefined || !DROPS.has(quantity.value)) return [];
  const isAt = words
    .slice(at + 1, at + 9)
    .some(
      (word) =>
        word.sentence === sentence && word.quantity?.dimension === 'frequency' && word.quantity.value <= 200,
    );
  const isBehind = words
    .slice(Math.max(0, at - 3), at)
    .some((word) => word.quantity?.dimension === 'frequency');
  const isPoint =
    words[at + 1]?.raw === 'point' ||
    isBehind ||
    (isAt && ['at', '@', 'point'].includes(words[at + 1]?.raw ?? ''));
  const given = { ...quantity, value: Math.abs(quantity.value) };
  return isPoint ? toList(sized(words, at, 'centerLowLimitDrop', given, [at], units)) : [];
}

/** "110 Hz at -6", "65 Hz (-3 dB)" */
const isDropBehind = (words: readonly Word[], at: number): boolean =>
  words
    .slice(at + 1, at + 4)
    .some(({ quantity, sentence }) => sentence === words[at]?.sentence && DROPS.has(quantity?.value ?? 0));

const DROPS = new Set([-3, -6, -10]);

/** "60 x 20 x 40 cm": width, height and depth of the box or the bay, or a room with its height. */
export function sidesOf(words: readonly Word[], at: number, classes: Classes, units: UnitSystem): Told[] {
  const sides = words[at]?.quantity?.sides;
  if (sides === undefined) return [];
  const named = (name: string): number =>
    nearestBefore(words, at, (word) => classes.get(name)?.has(word.text) === true);
  const bay = named('bay');
  const room = nearestBefore(words, at, ({ raw }) => raw === 'room');
  const box = Math.max(
    named('center'),
    nearestBefore(words, at, ({ raw }) => raw === 'box'),
  );
  const last = Math.max(bay, box, room);
  if (last < 0 || (sides.length < 3 && last !== bay)) return [];
  const facts: readonly (NumberFactId | undefined)[] =
    last === room
      ? [undefined, undefined, 'ceilingHeight']
      : last === bay
        ? ['bayWidth', 'bayHeight', 'bayDepth']
        : ['centerWidth', 'centerHeight', 'centerDepth'];
  return facts.slice(0, sides.length).flatMap((fact, side) => {
    const given = { ...(words[at] as Word).quantity, value: sides[side] } as Quantity;
    return (fact && sized(words, at, fact, given, [last, at], units)) ?? [];
  });
}

function nearestBefore(words: readonly Word[], at: number, is: (word: Word) => boolean): number {
  const { sentence } = words[at] as Word;
  for (let place = at - 1; place >= Math.max(0, at - 25); place--) {
    const word = words[place] as Word;
    if (word.sentence < sentence - 1) return -1;
    if (is(word)) return place;
  }
  return -1;
}

function sized(
  words: readonly Word[],
  at: number,
  fact: NumberFactId,
  quantity: Quantity,
  used: readonly number[],
  units: UnitSystem,
): Told | undefined {
  const match = matchOf(fact, at, used);
  return toldBy(words, match, fact, units, { quantity, lenient: false });
}
