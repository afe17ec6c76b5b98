/** The fact a quantity is of: the thing and the measure that stand nearest to it, from one table. */
import type { NumberFactId } from '../facts/catalog.js';
import { SLOTS } from '../facts/words/slots.js';
import { isMiddleOfPicture, isPlaceOnly, isSideOfSomething, LITTLE } from './no-thing.js';
import { type Classes, nameOf } from './pattern.js';
import type { Word } from './sentences.js';
import { canonical } from './spelling.js';

interface Slotted {
  readonly fact: NumberFactId;
  readonly first: number;
  readonly last: number;
  readonly used: readonly number[];
}

type Role = 'of' | 'as' | 'not' | 'need';
interface Place {
  readonly at: number;
  /** Never enough alone. */
  readonly weak: boolean;
  readonly cost: number;
}
type Roles = Readonly<Record<'of' | 'as', Place[]>> & { not: boolean };

/** Words before and behind a quantity that can say what it is of. */
const BEFORE = 12;
const BEHIND = 6;
/** Whatever stands between. */
const FARTHEST = 40;
/** A measure stands this near, a word that excludes a fact nearer still. */
const MEASURE_REACH = 6;
const NOT_REACH = 7;
/** What stands behind a number belongs to it more often than what stands before. */
const BACK = 1.3;
/** A comma, another quantity and the end of a sentence part what belongs together. */
const COMMA = 1.5;
const QUANTITY = 4;
const SENTENCE = 7;
/** "It" may be anything named before. */
const PRONOUN = 6;
/** "At", "from", "off" say little. */
const WEAK = 1.5;
const PRONOUNS = new Set(['it', 'they', 'them']);
/** Parts and pronouns that are of the loudspeaker named last before them. */
const PARTS = new Set(
  'it they them box tweeter cone speaker face baffle front axis'.split(' ').map(canonical),
);
const SHORT: Readonly<Record<string, string>> = { its: 'it', im: 'i', w: canonical('wide') };
const SURROUND = /^surround/;
/** Loudspeakers of which such a part can be, and how the facts of each begin. */
const OWNERS: readonly (readonly [string, RegExp])[] = [
  ['mains', /^(?:mains|toeIn|sideWall|tapedMains|centerBehind)/],
  ['leftMain', /^(?:mains|toeIn|sideWall|tapedMains|centerBehind)/],
  ['rightMain', /^(?:mains|toeIn|sideWall|tapedMains|centerBehind)/],
  ['subwoofer', /^sub/],
  ['surround', SURROUND],
  ['center', /^(?!mains|toeIn|sideWall)/],
];
/** The thing may stand farther away than the measure. */
const THING = 0.4;
/** Farthest that a word may stand which is enough alone, and what the missing one costs. */
const ALONE_REACH = 5;
const MOST_ALONE = 7.5;
const MISSING = 3.5;
/** What stands farther apart is not of one thing. */
const MOST_COST = 9.5;
/** How much nearer the best fact must be than the next one. */
const LEAD = 0.6;
const CUE_REACH = 18;

/** "65 inch TV", "8 ft ceilings", "5 inch cones": the name right behind the number decides. */
const NAMED: ReadonlySet<NumberFactId> = new Set<NumberFactId>([
  'displayDiagonal',
  'ceilingHeight',
  'centerMidSize',
  'obstacleHeight',
  'seatCount',
  'rowRiser',
]);

/** Words that say which measure it is, whatever the thing: a fact that does not name one of them is out. */
const MEASURES = new Set(
  'wide width long breit tall high height deep depth apart between spacing thick diagonal angle tilt toe wall edge behind ceiling farther below crossover late hot'
    .split(' ')
    .map(canonical),
);

interface Known {
  /** What a word can do for which facts, and that it weighs less. */
  readonly byWord: ReadonlyMap<string, readonly (readonly [NumberFactId, Role, boolean])[]>;
  readonly needy: ReadonlySet<NumberFactId>;
  readonly alone: ReadonlyMap<NumberFactId, Alone>;
}
type Alone = 'of' | 'as' | 'either';

let known: Known | undefined;

function table(classes: Classes): Known {
  if (known) return known;
  const byWord = new Map<string, [NumberFactId, Role, boolean][]>();
  const needy = new Set<NumberFactId>();
  const alone = new Map<NumberFactId, Alone>();
  const add = (id: NumberFactId, role: Role, list: string): void => {
    for (const each of list.trim().split(' ')) {
      const weak = each.startsWith('~');
      const name = weak ? each.slice(1) : each;
      const words = name.startsWith('@') ? (classes.get(name.slice(1)) ?? []) : [nameOf(name)];
      for (const word of words) byWord.set(word, [...(byWord.get(word) ?? []), [id, role, weak]]);
    }
  };
  for (const [id, row] of Object.entries(SLOTS) as [NumberFactId, string][]) {
    const [of = '', as = '', ...rest] = row.split(' | ');
    add(id, 'of', of);
    add(id, 'as', as);
    for (const each of rest) {
      const [kind = '', list = ''] = [each.slice(0, each.indexOf(' ')), each.slice(each.indexOf(' '))];
      if (kind === 'alone') alone.set(id, list.trim() as Alone);
      else add(id, kind as Role, list);
      if (kind === 'need') needy.add(id);
    }
  }
  known = { byWord, needy, alone };
  return known;
}

/** The fact the quantity at this word is of; undefined where none or several are as near. */
export function slotOf(
  words: readonly Word[],
  at: number,
  classes: Classes,
  fits: (fact: NumberFactId) => boolean,
): Slotted | undefined {
  const { byWord, needy, alone } = table(classes);
  const found = new Map<NumberFactId, Roles>();
  const measures: string[] = [];
  const owners = new Map<number, RegExp | undefined>();
  const isOfAnother = (fact: NumberFactId, place: number): boolean => {
    if (!owners.has(place)) owners.set(place, ownerBefore(words, place, classes));
    const owner = owners.get(place);
    return owner === undefined ? fact === 'mainsTweeterHeight' : !owner.test(fact);
  };
  const see: See = (place, cost, isOwn, isBeside) => {
    const { raw } = words[place] as Word;
    const text = SHORT[raw] ?? (words[place] as Word).text;
    const far = Math.abs(place - at);
    if (isBeside && far <= 3 && MEASURES.has(text) && !isAdjective(words, place, at, byWord))
      measures.push(text);
    for (const [fact, role, weak] of byWord.get(text) ?? []) {
      if (role === 'need' || (role === 'as' && (!isOwn || far > MEASURE_REACH))) continue;
      if (role === 'of' && fact.startsWith('center') && isMiddleOfPicture(words, place)) continue;
      if (role === 'of' && raw === 'set' && place !== at + 1) continue;
      if (role === 'of' && isSideOfSomething(words, place)) continue;
      if (role === 'of' && PARTS.has(text) && LOUDSPEAKER.test(fact) && isOfAnother(fact, place)) continue;
      if (role === 'of' && fact.startsWith('display') && isPlaceOnly(words, place)) continue;
      let roles = found.get(fact);
      if (roles === undefined) {
        roles = { of: [], as: [], not: false };
        found.set(fact, roles);
      }
      const isPronoun = role === 'of' && PRONOUNS.has(text);
      if (role === 'not') {
        if (isBeside && far <= NOT_REACH) roles.not = true;
      } else roles[role].push({ at: place, cost: cost + (isPronoun ? PRONOUN : weak ? WEAK : 0), weak });
    }
  };
  lookBehind(words, at, see);
  lookBefore(words, at, see);
  const isElsewhere = ownerBefore(words, at, classes) === SURROUND;
  const ranked = [...found]
    .flatMap(([fact, roles]) => {
      const isNamed = NAMED.has(fact) && roles.of.some((thing) => thing.at === at + 1);
      if ((roles.not && !isNamed) || (needy.has(fact) && !hasNeed(words, at, fact, byWord))) return [];
      if (isElsewhere && LOUDSPEAKER.test(fact)) return [];
      const best = isNamed ? { cost: 1, used: [at, at + 1] } : fitOf(at, roles, alone.get(fact));
      if (best === undefined || !fits(fact)) return [];
      if (best.cost > MOST_COST) return [];
      const isStrange = measures.some((text) => !knows(text, fact, byWord));
      return isStrange && !isNamed ? [] : [{ fact, ...best, cost: best.cost - (needy.has(fact) ? LEAD : 0) }];
    })
    .sort((a, b) => a.cost - b.cost);
  const [best, next] = ranked;
  if (best === undefined || (next !== undefined && next.cost - best.cost < LEAD)) return undefined;
  return { ...best, first: best.used[0] as number, last: best.used.at(-1) as number };
}

/** Facts of a loudspeaker. */
const LOUDSPEAKER = /^(?:center(?!Trim)|mains|tweeter|wall|toe|sideWall|bass|shelf|sub)/;

/** "Tall towers": no measure of the number behind. */
const isAdjective = (words: readonly Word[], place: number, at: number, byWord: Known['byWord']): boolean =>
  place < at && (byWord.get(words[place + 1]?.text ?? '') ?? []).some(([, role]) => role === 'of');

/** Whose part is meant: the loudspeaker named last before it in the sentence. */
function ownerBefore(words: readonly Word[], place: number, classes: Classes): RegExp | undefined {
  const { sentence } = words[place] as Word;
  for (let at = place - 1; at >= Math.max(0, place - FARTHEST) && words[at]?.sentence === sentence; at--) {
    if (isMiddleOfPicture(words, at)) continue;
    const owner = OWNERS.find(([name]) => classes.get(name)?.has((words[at] as Word).text));
    if (owner) return owner[1];
  }
  return undefined;
}

const knows = (text: string, fact: NumberFactId, byWord: Known['byWord']): boolean =>
  (byWord.get(text) ?? []).some(([id, role]) => id === fact && role !== 'not');

/** `isOwn`: no other quantity stands between; `isBeside`: no comma either. */
type See = (place: number, cost: number, isOwn: boolean, isBeside: boolean) => void;

function lookBehind(words: readonly Word[], at: number, see: See): void {
  const { sentence } = words[at] as Word;
  let steps = 0;
  let isBeside = true;
  // "Width 65 cm height 25 cm": names stand before their numbers here.
  const isNamed = MEASURES.has(words[at - 1]?.text ?? '') || words[at - 1]?.raw.length === 1;
  for (let place = at + 1; steps <= BEHIND && place <= at + FARTHEST; place++) {
    const word = words[place];
    if (word === undefined || word.sentence !== sentence || word.hard || word.quantity || word.text === ',')
      return;
    if (LITTLE.has(word.raw)) continue;
    if (!word.soft) steps++;
    // "60 cm and mains 95": a name right before the next quantity is of that one.
    if (word.raw === 'and' || word.raw === 'or') isBeside = false;
    if ((!isBeside || isNamed) && isNameOfNext(words, place)) return;
    see(place, Math.max(1, steps), true, isBeside);
  }
}

const LINK = new Set(['at', 'is', ':', '=', 'are', 'to', '@', 'only', 'about']);
function isNameOfNext(words: readonly Word[], place: number): boolean {
  let next = place + 1;
  while (LINK.has(words[next]?.raw ?? '')) next++;
  return words[next]?.quantity !== undefined;
}

function lookBefore(words: readonly Word[], at: number, see: See): void {
  const { sentence, quantity } = words[at] as Word;
  let extra = 0;
  let isOwn = true;
  let isBeside = true;
  let steps = 0;
  for (let place = at - 1; place >= Math.max(0, at - FARTHEST) && steps < 2 * BEFORE; place--) {
    const word = words[place] as Word;
    if (word.sentence !== sentence) {
      // What the sentence before was about.
      if (sentence - word.sentence > 1) return;
      extra = SENTENCE;
      isOwn = false;
    }
    if (word.text === '\n' || LITTLE.has(word.raw)) continue;
    if (word.quantity) {
      const isOther = word.quantity.dimension !== quantity?.dimension;
      extra += isOther ? COMMA : QUANTITY;
      if (!isOther) isOwn = false;
      isBeside = false;
    } else if (word.hard && word.sentence === sentence) {
      extra += QUANTITY;
      isOwn = false;
    } else if (word.text === ',' && place === at - 1 && isApposition(words, at)) {
      // "Atop a sideboard, 20 inches deep": right behind the comma it is of what stands before it.
      extra += COMMA;
      see(at - 2, BACK + COMMA, true, true);
    } else if (word.text === ',' || word.text === '(' || word.raw === 'and') {
      extra += COMMA;
      isBeside = false;
      // Behind another quantity, up to the comma, is what that one is of.
      if (isSameBefore(words, place, at)) isOwn = false;
    }
    if (!word.soft && word.kind === 'word') steps++;
    see(place, BACK * Math.max(1, steps) + extra, isOwn, isOwn && isBeside);
  }
}

/** "A sideboard, 20 inches deep", and no list of measures: "18 cm high, 30 cm deep". */
const isApposition = (words: readonly Word[], at: number): boolean =>
  MEASURES.has(words[at + 1]?.text ?? '') &&
  words[at - 2]?.kind === 'word' &&
  !MEASURES.has(words[at - 2]?.text ?? '') &&
  words[at - 3]?.quantity === undefined;

function isSameBefore(words: readonly Word[], comma: number, at: number): boolean {
  for (let place = comma - 1; place >= Math.max(0, comma - 4); place--) {
    const word = words[place] as Word;
    if (word.sentence !== words[at]?.sentence || word.text === ',') return false;
    if (word.quantity) return true;
  }
  return false;
}

function hasNeed(words: readonly Word[], at: number, fact: NumberFactId, byWord: Known['byWord']): boolean {
  const { sentence } = words[at] as Word;
  for (let place = Math.max(0, at - CUE_REACH); place <= at + 10; place++) {
    const word = words[place];
    if (word === undefined || word.sentence > sentence || word.sentence < sentence - 1) continue;
    if (
      !isSideOfSomething(words, place) &&
      (byWord.get(word.text) ?? []).some(([id, role]) => id === fact && role === 'need')
    )
      return true;
  }
  return false;
}

function fitOf(
  at: number,
  { of, as }: Roles,
  alone: Alone | undefined,
): { cost: number; used: number[] } | undefined {
  const pairs = as.flatMap((measure) =>
    of
      .filter((thing) => thing.at !== measure.at)
      .map((thing) => ({ cost: measure.cost + THING * thing.cost, used: [measure.at, thing.at, at] })),
  );
  const lone = [...(alone === 'as' ? [] : of), ...(alone === 'of' ? [] : as)].filter(
    (place) =>
      alone !== undefined &&
      !place.weak &&
      Math.abs(at - place.at) <= ALONE_REACH &&
      place.cost <= MOST_ALONE,
  );
  const all = [...pairs, ...lone.map((place) => ({ cost: place.cost + MISSING, used: [place.at, at] }))];
  const [best] = all.sort((a, b) => a.cost - b.cost);
  return best && { cost: best.cost, used: best.used.sort((a, b) => a - b) };
}
