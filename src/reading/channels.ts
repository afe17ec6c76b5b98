/** Numbers of one loudspeaker in a list: which one is named beside it, and what the list is of. */
import type { NumberFactId } from '../facts/catalog.js';
import type { Classes } from './pattern.js';
import type { Quantity } from './quantities.js';
import type { Word } from './sentences.js';
import { canonical } from './spelling.js';

type Channel = 'left' | 'center' | 'right' | 'other';

const NAMES: readonly (readonly [string, readonly Channel[]])[] = [
  ['lcr', ['left', 'center', 'right']],
  ['allChannels', ['left', 'center', 'right']],
  ['mains', ['left', 'right']],
  ['leftMain', ['left']],
  ['rightMain', ['right']],
  ['center', ['center']],
  ['subwoofer', ['other']],
  ['surround', ['other']],
];
const canonicals = (list: string): ReadonlySet<string> => new Set(list.split(' ').map(canonical));

const TO = new Set(['for', 'to', 'on', 'at', 'from', 'in', 'with']);
const ARTICLES = new Set(['the', 'each', 'both', 'my', 'our', 'a', 'of']);
/** What may stand between a channel and its number. */
const LINKS = canonicals(
  'is are at to run current factory default line reading figure value : ~ @ = say says show shows reads set distance distances level levels trim trims crossover delay crossed cross small size only just about the still come came in out with have be sit up down on by and / speaker tweeter tweeters height real really actually an a measures measured',
);
const MOST_LINKS = 6;

/** The channels a number is of, and the word that names them. */
export interface Beside {
  readonly channels: readonly Channel[];
  readonly place: number;
}

/** "9.0 ft for the center", "fronts: 10 ft", "left and right 3.1 m"; undefined where none is named. */
export function channelsOf(words: readonly Word[], at: number, classes: Classes): Beside | undefined {
  const beside =
    triple(words, at) ??
    listedBehind(words, at, classes) ??
    behind(words, at, classes) ??
    before(words, at, classes) ??
    sameAs(words, at, classes);
  return beside && isOfOthersToo(words, at) ? { ...beside, channels: ORDER } : beside;
}

/** "The center reads 2.9 m, as do the other two" */
function isOfOthersToo(words: readonly Word[], at: number): boolean {
  const place = words[at + 1]?.text === ',' ? at + 2 : at + 1;
  if (!['as', 'like'].includes(words[place]?.raw ?? '')) return false;
  return [1, 2, 3].some((step) => {
    const { raw = '', sentence } = words[place + step] ?? {};
    return ['other', 'others', 'rest'].includes(raw) && sentence === words[at]?.sentence;
  });
}

const ORDER: readonly Channel[] = ['left', 'center', 'right'];

/** "75 / 75.2 / 75", and of levels and entries "75, 75.2, 75" and "75 75 75": three numbers are of left, center and right. */
function triple(words: readonly Word[], at: number): Beside | undefined {
  const isNumber = (place: number): boolean => words[place]?.quantity !== undefined;
  const isOfThree = hasNear(words, at, LEVELS, 1) || hasNear(words, at, DEVICE, 0);
  const signs = isOfThree && !hasNear(words, at, BASS, 0) ? ['/', ',', ''] : ['/'];
  for (const sign of signs) {
    const step = sign === '' ? 1 : 2;
    const isPart = (place: number): boolean =>
      isNumber(place) && (sign === '' || words[place - 1]?.text === sign);
    for (const [index, channel] of ORDER.entries()) {
      const start = at - step * index;
      const isThree = isNumber(start) && isPart(start + step) && isPart(start + 2 * step);
      const isMore = (isPart(start) && isNumber(start - step)) || isPart(start + 3 * step);
      if (isThree && !isMore) return { channels: [channel], place: at };
    }
  }
  return undefined;
}

/** "11 ft L/R 10.5 C", "74 left, 69 center": in a list that begins with a number the name stands right behind its number. */
function listedBehind(words: readonly Word[], at: number, classes: Classes): Beside | undefined {
  const channels = named(words, at + 1, classes);
  if (channels === undefined || channels.includes('other')) return undefined;
  const { sentence } = words[at] as Word;
  const isOfList = (place: number): boolean =>
    words[place]?.sentence === sentence &&
    (words[place]?.quantity !== undefined ||
      words[place]?.text === ',' ||
      named(words, place, classes) !== undefined);
  let start = at;
  while (isOfList(start - 1)) start--;
  while (words[start]?.text === ',') start++;
  const isList = start < at || [2, 3].some((step) => words[at + step]?.quantity && isOfList(at + 2));
  return isList && words[start]?.quantity !== undefined ? { channels, place: at + 1 } : undefined;
}

/** "C: 3.05 m tape / 3.95 m menu": the second number is of the same channel. */
function sameAs(words: readonly Word[], at: number, classes: Classes): Beside | undefined {
  if (words[at - 1]?.text !== '/') return undefined;
  const first = [at - 2, at - 3].find((place) => words[place]?.quantity !== undefined);
  return first === undefined ? undefined : before(words, first, classes);
}

function named(words: readonly Word[], place: number, classes: Classes): readonly Channel[] | undefined {
  const word = words[place];
  if (word === undefined || word.kind !== 'word') return undefined;
  if (word.text === 'left' || word.text === 'right') {
    // "The left edge", "right of the middle" and "to the right" are no loudspeakers.
    if (['of', 'edge', 'wall', 'corner', 'side', 'now', 'in', 'seat'].includes(words[place + 1]?.text ?? ''))
      return undefined;
    if (words[place - 1]?.raw === 'the' && ['to', 'on', 'at'].includes(words[place - 2]?.raw ?? ''))
      return undefined;
    return [word.text];
  }
  return NAMES.find(([name]) => classes.get(name)?.has(word.text))?.[1];
}

function behind(words: readonly Word[], at: number, classes: Classes): Beside | undefined {
  const link = words[at + 1];
  if (link === undefined || link.sentence !== words[at]?.sentence) return undefined;
  const all = allBehind(words, at, classes);
  if (all !== undefined) return all;
  if (!TO.has(link.raw)) return undefined;
  let place = at + 2;
  while (ARTICLES.has(words[place]?.raw ?? '')) place++;
  const word = words[place];
  // "50 cm to the right" is a direction.
  const isLength = words[at]?.quantity?.dimension === 'length';
  if (
    (word?.text === 'left' || word?.text === 'right') &&
    link.raw !== 'for' &&
    (isLength || link.raw !== 'on')
  )
    return undefined;
  const first = named(words, place, classes);
  if (first === undefined || words[place + 1]?.quantity !== undefined) return undefined;
  const second = words[place + 1]?.raw === 'and' ? named(words, place + 2, classes) : undefined;
  const isOwn = second !== undefined && words[place + 3]?.quantity === undefined;
  return isOwn ? { channels: [...first, ...second], place: place + 2 } : { channels: first, place };
}

/** "3.3 m typed in for all of them", "2.2 m all three", "3.4 m the lot" */
function allBehind(words: readonly Word[], at: number, classes: Classes): Beside | undefined {
  for (let place = at + 1; place <= at + 4; place++) {
    const word = words[place];
    if (word === undefined || word.sentence !== words[at]?.sentence || word.quantity || word.text === ',')
      return undefined;
    const isLot =
      (ALL.has(word.raw) && words[place + 1]?.kind !== 'word') ||
      (word.raw === 'each' && [LEVELS, DEVICE, DISTANCE].some((set) => hasNear(words, at, set, 0)));
    if (isLot || classes.get('allChannels')?.has(word.text) === true) return { channels: ORDER, place };
    if (
      ![TO, ARTICLES].some((set) => set.has(word.raw)) &&
      ![LINKS, DEVICE].some((set) => set.has(word.text))
    )
      return undefined;
  }
  return undefined;
}
const ALL = new Set(['lot', 'throughout']);

function before(words: readonly Word[], at: number, classes: Classes): Beside | undefined {
  const { sentence } = words[at] as Word;
  for (let place = at - 1; place >= Math.max(0, at - 1 - MOST_LINKS); place--) {
    const word = words[place] as Word;
    if (word.sentence !== sentence || word.hard || word.quantity !== undefined) return undefined;
    const last = named(words, place, classes);
    if (last !== undefined) {
      // "9 ft for the center and 10 ft": that channel has its own number before it.
      if (isTaken(words, place)) return undefined;
      const joined = ['and', '/', '&', ','].includes(words[place - 1]?.raw ?? '');
      const first =
        joined && words[place - 3]?.quantity === undefined ? named(words, place - 2, classes) : undefined;
      const both = first !== undefined && words[place - 1]?.raw !== ',';
      return both ? { channels: [...first, ...last], place: place - 2 } : { channels: last, place };
    }
    if (word.text === ',' && place < at - 1) return undefined;
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
  'menu receiver display enter entered entry setup processor microphone calibration typed type autoSetup correction factory default wizard routine automatic put came auto reads',
);
const TAPE = canonicals(
  'tape taped measure measured remeasured laser ruler string really real nose ear ears head actual actually true',
);
const BY_TAPE = canonicals('tape taped measured laser ruler actual actually real');
const TRIMS = canonicals('trim trims level levels volume gain');
const DISTANCE = canonicals('distance distances dist');
const SEATED = canonicals('sofa seat ear nose head mainSeat');
/** Other lengths of a loudspeaker than its distance. */
const OTHER_LENGTHS = canonicals(
  'tall wide width deep apart floor wall edge between behind shelf off above below carpet long inside recessed cubby high tilt toe cone diagonal aside farther',
);
const OTHER_LEVELS = canonicals('treble shelf cloth screen octave point drop hole dip peak hump from around');
const AWAY = canonicals('away from back out to');
const HEIGHTS = canonicals('height heights tweeter tweeters');
const LEVELS = canonicals('meter spl noise level phone app testNoise db dbc pink');
const BASS = canonicals('crossover hz bass small large cross crossed crosses hpf');
const LATENESS = canonicals('late later early behind after latency processing dsp measured arrives');

/** A word of the set in the sentence, or in the one before where that is wished. */
const hasNear = (words: readonly Word[], at: number, set: ReadonlySet<string>, reach: number): boolean => {
  const { sentence } = words[at] as Word;
  for (let place = Math.max(0, at - MOST_WORDS); place <= at + MOST_WORDS; place++) {
    const word = words[place];
    if (word && word.sentence <= sentence && word.sentence >= sentence - reach && set.has(word.text))
      return true;
  }
  return false;
};

/** "Entered 9.5 ft, by tape left 10 ft, center 9 ft": the last word before it that says where numbers come from is the tape. */
function isByTape(words: readonly Word[], at: number): boolean {
  const { sentence } = words[at] as Word;
  const isCue = (word: Word): boolean =>
    word.sentence === sentence && (BY_TAPE.has(word.text) || DEVICE.has(word.text));
  const cue =
    words.slice(Math.max(0, at - MOST_WORDS), at).findLast(isCue) ??
    words.slice(at, at + MOST_WORDS).find(isCue);
  return cue !== undefined && BY_TAPE.has(cue.text);
}

/** Words beside the number, up to the next number. */
function ownWords(words: readonly Word[], at: number): Word[] {
  const { sentence } = words[at] as Word;
  const out: Word[] = [];
  for (const step of [1, -1]) {
    for (let place = at + step; Math.abs(place - at) <= OWN_WORDS; place += step) {
      const word = words[place];
      if (word === undefined || word.sentence !== sentence || word.quantity || word.hard) break;
      if (step > 0 && word.text === ',') break;
      out.push(word);
    }
  }
  return out;
}

/** The facts a number is the value of that has a channel beside it; none where nothing tells what the list is of. */
export function factsOfChannel(
  words: readonly Word[],
  at: number,
  quantity: Quantity,
  { channels }: Beside,
  isList: boolean,
): readonly NumberFactId[] {
  const { dimension, value, signed } = quantity;
  const own = ownWords(words, at);
  const kind = kindOf();
  if (kind === undefined) return [];
  const isPair = kind === 'taped' && channels.includes('left') && channels.includes('right');
  return channels.flatMap((each) =>
    each === 'other' ? [] : isPair && each !== 'center' ? ['tapedMains' as const] : (FACTS[kind][each] ?? []),
  );

  function kindOf(): keyof typeof FACTS | undefined {
    if (dimension === 'time') return own.some(({ text }) => LATENESS.has(text)) ? undefined : 'delay';
    if (dimension === 'level' || dimension === 'none') {
      if (signed && Math.abs(value) <= 12 && !own.some(({ text }) => OTHER_LEVELS.has(text))) return 'trim';
      if (Math.abs(value) <= 12 && hasNear(words, at, TRIMS, 1) && !hasNear(words, at, DISTANCE, 0) && isList)
        return 'trim';
      const isLevel = dimension === 'level' || isList || hasNear(words, at, LEVELS, 1);
      if (value >= 50 && value <= 95 && isLevel && !hasNear(words, at, BASS, 0)) return 'level';
    }
    if (dimension === 'frequency' || dimension === 'none') {
      if (
        value >= 40 &&
        value <= 250 &&
        hasNear(words, at, BASS, 0) &&
        !own.some(({ text }) => text === 'together')
      )
        return 'crossover';
    }
    if (dimension !== 'length' && dimension !== 'none') return undefined;
    if (hasNear(words, at, HEIGHTS, 0)) return isList && dimension === 'length' ? 'height' : undefined;
    if (own.some(({ text }) => OTHER_LENGTHS.has(text))) return undefined;
    const next = words[at + 1]?.text ?? '';
    if (DEVICE.has(next)) return 'entered';
    if (own.some(({ text }) => TAPE.has(text))) return 'taped';
    if (dimension === 'length' && next === 'away') return 'taped';
    if (isByTape(words, at)) return 'taped';
    const ofDevice = hasNear(words, at, DEVICE, 1);
    if (dimension === 'none' && !ofDevice && !isList && !hasNear(words, at, DISTANCE, 0)) return undefined;
    if (dimension === 'none' && (value < 1 || value > 20)) return undefined;
    if (ofDevice) return 'entered';
    if (hasNear(words, at, TAPE, 0) || (isList && hasNear(words, at, SEATED, 0))) return 'taped';
    const isShort =
      own.length <= 3 &&
      dimension === 'length' &&
      value >= 1.8 &&
      channels.includes('center') &&
      !own.some(({ text }) => AWAY.has(text));
    return isList || isShort || hasNear(words, at, DISTANCE, 0) ? 'entered' : undefined;
  }
}

const MOST_WORDS = 30;
const OWN_WORDS = 5;
type OfChannel = Readonly<Partial<Record<Channel, NumberFactId>>>;
const FACTS = {
  entered: { left: 'enteredLeft', center: 'enteredCenter', right: 'enteredRight' },
  taped: { left: 'tapedLeft', center: 'tapedCenter', right: 'tapedRight' },
  delay: { left: 'delayLeft', center: 'delayCenter', right: 'delayRight' },
  trim: { left: 'trimLeft', center: 'centerTrim', right: 'trimRight' },
  level: { left: 'measuredLeftLevel', center: 'measuredCenterLevel', right: 'measuredRightLevel' },
  crossover: { left: 'mainsBassCrossover', center: 'centerBassCrossover', right: 'mainsBassCrossover' },
  height: { left: 'mainsTweeterHeight', center: 'centerTweeterHeight', right: 'mainsTweeterHeight' },
} as const satisfies Record<string, OfChannel>;

/** Facts of one channel only: no other channel may be named beside the number. */
const OF = new Map<NumberFactId, Channel>(
  Object.values(FACTS).flatMap((each) =>
    (Object.entries(each) as [Channel, NumberFactId][]).map(([channel, fact]): [NumberFactId, Channel] => [
      fact,
      channel,
    ]),
  ),
);

export function isOfChannel(fact: NumberFactId, beside: Beside | undefined): boolean {
  const own = OF.get(fact);
  if (own === undefined || beside === undefined) return true;
  return beside.channels.includes(own) || (own !== 'center' && beside.channels.includes('left'));
}
