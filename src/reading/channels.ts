/** Which loudspeaker a written number is of: the one named right beside it, in its own phrase. */
import type { NumberFactId } from '../facts/catalog.js';
import type { Classes } from './pattern.js';
import type { Word } from './sentences.js';
import { canonical } from './spelling.js';

type Channel = 'left' | 'center' | 'right' | 'other';

const NAMES: readonly (readonly [string, readonly Channel[]])[] = [
  ['lcr', ['left', 'center', 'right']],
  ['mains', ['left', 'right']],
  ['leftMain', ['left']],
  ['rightMain', ['right']],
  ['center', ['center']],
  ['subwoofer', ['other']],
  ['surround', ['other']],
];
const canonicals = (list: string): ReadonlySet<string> => new Set(list.split(' ').map(canonical));

const TO = new Set(['for', 'to', 'on', 'at']);
const ARTICLES = new Set(['the', 'each', 'both', 'my', 'our', 'a']);
/** What may stand between a channel and its number. */
const LINKS = canonicals(
  'is are at to : = say says show shows reads set distance level trim crossover delay crossed',
);
const MOST_LINKS = 3;

/** The channels a number is of, and the word that names them. */
export interface Beside {
  readonly channels: readonly Channel[];
  readonly place: number;
}

/** The facts that are of one channel only. */
const OF: { readonly [Id in NumberFactId]?: readonly Channel[] } = {
  enteredLeft: ['left'],
  enteredCenter: ['center'],
  enteredRight: ['right'],
  tapedCenter: ['center'],
  tapedMains: ['left', 'right'],
  centerTrim: ['center'],
  measuredCenterLevel: ['center'],
  measuredLeftLevel: ['left'],
  measuredRightLevel: ['right'],
  centerBassCrossover: ['center'],
  mainsBassCrossover: ['left', 'right'],
};

/** The number may be the value of this fact: no other channel is named beside it. */
export function isOfChannel(fact: NumberFactId, beside: Beside | undefined): boolean {
  const own = OF[fact];
  return own === undefined || beside === undefined || own.some((each) => beside.channels.includes(each));
}

/** "9.0 ft for the center", "fronts: 10 ft", "left and right 3.1 m"; undefined where none is named. */
export function channelsOf(words: readonly Word[], at: number, classes: Classes): Beside | undefined {
  return behind(words, at, classes) ?? before(words, at, classes);
}

function named(word: Word | undefined, classes: Classes): readonly Channel[] | undefined {
  if (word === undefined || word.kind !== 'word') return undefined;
  if (word.text === 'left' || word.text === 'right') return [word.text];
  return NAMES.find(([name]) => classes.get(name)?.has(word.text))?.[1];
}

function behind(words: readonly Word[], at: number, classes: Classes): Beside | undefined {
  const link = words[at + 1];
  if (link === undefined || link.sentence !== words[at]?.sentence || !TO.has(link.raw)) return undefined;
  let place = at + 2;
  while (ARTICLES.has(words[place]?.raw ?? '')) place++;
  const word = words[place];
  // "50 cm to the right" is a direction.
  if ((word?.text === 'left' || word?.text === 'right') && link.raw !== 'for') return undefined;
  const first = named(word, classes);
  if (first === undefined || words[place + 1]?.quantity !== undefined) return undefined;
  const second = words[place + 1]?.raw === 'and' ? named(words[place + 2], classes) : undefined;
  const isOwn = second !== undefined && words[place + 3]?.quantity === undefined;
  return isOwn ? { channels: [...first, ...second], place: place + 2 } : { channels: first, place };
}

function before(words: readonly Word[], at: number, classes: Classes): Beside | undefined {
  const { sentence } = words[at] as Word;
  for (let place = at - 1; place >= Math.max(0, at - 1 - MOST_LINKS); place--) {
    const word = words[place] as Word;
    if (word.sentence !== sentence || word.hard) return undefined;
    const last = named(word, classes);
    if (last !== undefined) {
      const first = words[place - 1]?.raw === 'and' ? named(words[place - 2], classes) : undefined;
      // "9 ft for the center and 10 ft": that channel has its own number before it.
      if (isTaken(words, place)) return undefined;
      return first === undefined
        ? { channels: last, place }
        : { channels: [...first, ...last], place: place - 2 };
    }
    if (!LINKS.has(word.text)) return undefined;
  }
  return undefined;
}

/** A number before the channel, joined by a preposition, has taken it. */
function isTaken(words: readonly Word[], place: number): boolean {
  let at = place - 1;
  while (ARTICLES.has(words[at]?.raw ?? '')) at--;
  return TO.has(words[at]?.raw ?? '') && words[at - 1]?.quantity !== undefined;
}

const DEVICE = canonicals(
  'menu receiver display enter entered entry setup processor microphone calibration typed',
);
const TAPE = canonicals('tape measure laser ruler string');
const DISTANCE = canonicals('distance distances');
/** Other lengths of a loudspeaker than its distance. */
const OTHER_LENGTHS = canonicals(
  'high height tall wide width deep apart tweeter floor ear wall edge between behind shelf off above below seat sofa away back',
);

/** The distances that a length with a channel beside it is: entered, taped, or neither where nothing tells. */
export function distancesOf(
  words: readonly Word[],
  at: number,
  { channels }: Beside,
  isList: boolean,
): NumberFactId[] {
  const { sentence } = words[at] as Word;
  let start = at;
  while (words[start - 1]?.sentence === sentence && at - start < MOST_WORDS) start--;
  let end = at;
  while (words[end + 1]?.sentence === sentence && end - at < MOST_WORDS) end++;
  const own = words.slice(start, end + 1);
  const has = (set: ReadonlySet<string>): boolean => own.some(({ text }) => set.has(text));
  if (has(OTHER_LENGTHS)) return [];
  if (has(DEVICE) || (!has(TAPE) && (has(DISTANCE) || isList)))
    return channels.flatMap((each) => ENTERED[each] ?? []);
  if (!has(TAPE)) return [];
  return [
    ...(channels.includes('center') ? (['tapedCenter'] as const) : []),
    ...(channels.includes('left') || channels.includes('right') ? (['tapedMains'] as const) : []),
  ];
}

const MOST_WORDS = 30;
const ENTERED: Readonly<Partial<Record<Channel, NumberFactId>>> = {
  left: 'enteredLeft',
  center: 'enteredCenter',
  right: 'enteredRight',
};
