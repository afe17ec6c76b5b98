/** The image between the mains, and what a reversed center takes away. */
import { arrival, distanceM } from '../../acoustics/arrival.js';
import { phantom } from '../../acoustics/phantom.js';
import { sharedPolarityChangeDb } from '../../acoustics/polarity.js';
import { choice, derive, number, type Reader, seatsIn } from '../../compute/reader.js';
import { ARRIVAL_FACTS, mainsArrivalMs } from './arrivals.js';
import {
  type Head,
  headAt,
  mainHead,
  POINT_FACTS,
  type PointFact,
  type Points,
  pointOf,
  points,
} from './places.js';
import { SHARING_FACTS, sharedSound, voiceBy } from './sharing.js';

/** Level of left over right from equal loudspeakers, by distance alone, dB. */
function levelDb({ left, right }: Points, head: Head): number {
  const seat = pointOf(head);
  return 20 * Math.log10(distanceM(right, seat) / distanceM(left, seat));
}

function halfAngleDeg(r: Reader<PointFact>, head: Head): number {
  return (Math.atan2(r.number('mainsBase') / 2, head.yM) * 180) / Math.PI;
}

/** Pull at a seat with levels and arrivals right at the main seat, magnitude. */
export function pullAt(r: Reader<PointFact>, head: Head): number {
  const places = r.from(points);
  const main = r.from(mainHead);
  const late = (at: Head): number => arrival({ ...places, seat: pointOf(at) }).leftMinusRightMs;
  const { imageDeg } = phantom({
    levelDb: levelDb(places, head) - levelDb(places, main),
    timeMs: late(main) - late(head),
    halfAngleDeg: halfAngleDeg(r, head),
  });
  return Math.abs(imageDeg);
}

const MAINS_VOICE_FACTS = [...SHARING_FACTS, 'testUnplugged'] as const;
/** As heard with the center silenced while it is still set; else as content and settings have it. */
function mainsVoice(r: Reader<(typeof MAINS_VOICE_FACTS)[number]>): 'all' | 'part' | 'none' {
  const left = r.toldChoice('testUnplugged');
  if (left !== undefined)
    return left === 'voice-gone' ? 'none' : left === 'voice-full' || left === 'voice-fuller' ? 'all' : 'part';
  // Music straight is all in them, most upmixes leave a part: without a word on it, they play some of it.
  const untold = (['upmixUse', 'upmixCommonPart', 'centerSpread'] as const).every(
    (id) => r.toldChoice(id) === undefined,
  );
  if (untold && r.toldChoice('playedContent') === 'two-channel-music') {
    r.choiceOr('upmixUse', 'sometimes');
    return 'part';
  }
  const by = r.from(voiceBy);
  if (by === 'center') return 'none';
  if (by === 'mains' || by.law === 'add') return 'all';
  return (by.extraction ?? 0) < 1 ? 'part' : 'none';
}

/** Only where the mains carry the voice: alone, or with all of it left in them. */
export const mainsCarryVoice = (r: Reader<(typeof MAINS_VOICE_FACTS)[number]>): boolean =>
  r.from(mainsVoice) === 'all';
const PULL_FACTS = [...POINT_FACTS, ...MAINS_VOICE_FACTS] as const;

const MAIN_PULL_FACTS = [...ARRIVAL_FACTS, 'measuredLeftLevel', 'measuredRightLevel'] as const;
/** As set up now: nobody's entries leave the distances as they are, somebody's are taken as told or as right. */
function mainSeatPull(r: Reader<(typeof MAIN_PULL_FACTS)[number]>): number {
  const head = r.from(mainHead);
  const entriesTold = r.toldNumber('enteredLeft') !== undefined || r.toldNumber('delayLeft') !== undefined;
  const by = r.toldChoice('alignmentBy');
  const untouched = by === undefined || by === 'nobody';
  const timeMs = entriesTold
    ? -r.from(mainsArrivalMs)
    : untouched
      ? -arrival({ ...r.from(points), seat: pointOf(head) }).leftMinusRightMs
      : 0;
  const leftDb = r.toldNumber('measuredLeftLevel');
  const rightDb = r.toldNumber('measuredRightLevel');
  const level =
    leftDb !== undefined && rightDb !== undefined
      ? leftDb - rightDb
      : untouched
        ? levelDb(r.from(points), head)
        : 0;
  return Math.abs(phantom({ levelDb: level, timeMs, halfAngleDeg: halfAngleDeg(r, head) }).imageDeg);
}

/** What is left of a fully canceled voice is room sound, dB. Our own bound. */
const MOST_LOSS_DB = 20;

/** In the middle of what center and mains share: 2 x side = share x center. */
export function reversedMiddleDb(r: Reader<(typeof SHARING_FACTS)[number]>): number {
  const { changeDb } = sharedPolarityChangeDb({ sideGain: r.from(sharedSound) / 2, centerGain: 1 });
  return Math.min(MOST_LOSS_DB, changeDb === null ? MOST_LOSS_DB : Math.abs(changeDb));
}

export const image = {
  mainsVoice: derive(
    choice('what the mains play of a voice in the middle', ['all', 'part', 'none'] as const),
    MAINS_VOICE_FACTS,
    mainsVoice,
  ),
  mainsPullDeg: derive(
    number(
      'deg',
      'pull of a phantom image toward the nearer main at the worst seat that still has a center task',
    ),
    PULL_FACTS,
    (r) => {
      if (!mainsCarryVoice(r)) return 0;
      return r.worst(seatsIn(r), (seat) => pullAt(r, headAt(r, seat))).badness;
    },
  ),
  mainSeatPullDeg: derive(
    number('deg', 'pull of a phantom image at the main seat'),
    MAIN_PULL_FACTS,
    mainSeatPull,
  ),
  polarityLossDb: derive(
    number('dB', 'level lost in what center and mains share if the center is reversed', {
      atMost: MOST_LOSS_DB,
    }),
    SHARING_FACTS,
    reversedMiddleDb,
  ),
};
