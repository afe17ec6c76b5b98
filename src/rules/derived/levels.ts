/** Levels at the seat, the only ones that count. */

import { powerForLevelW } from '../../acoustics/power.js';
import { choice, derive, mainSeatIn, number, type Reader, SEAT_FACTS } from '../../compute/reader.js';
import { LIMITS } from '../limits.js';

const LEVEL_FACTS = [
  'centerAgainstMainsDb',
  'measuredCenterLevel',
  'measuredLeftLevel',
  'measuredRightLevel',
] as const;
/** Loudspeakers that play at all are less far apart, dB: beyond, a meter was misread or a channel is silent. Common practice. */
const MOST_APART_DB = 20;
function believed(apartDb: number): number {
  if (Math.abs(apartDb) <= MOST_APART_DB) return apartDb;
  throw new RangeError(
    `levels ${Math.round(Math.abs(apartDb))} dB apart are no matter of trims: a meter was misread, or a channel is silent`,
  );
}

const centerAgainstMains = (r: Reader<(typeof LEVEL_FACTS)[number]>): number =>
  believed(r.from(centerAgainstMainsDb));
/** As told, else of three levels: meters show dB, so the mean of two mains is taken of what they show. */
function centerAgainstMainsDb(r: Reader<(typeof LEVEL_FACTS)[number]>): number {
  const apartDb = r.toldNumber('centerAgainstMainsDb');
  if (apartDb !== undefined) return apartDb;
  const leftDb = r.toldNumber('measuredLeftLevel');
  const rightDb = r.toldNumber('measuredRightLevel');
  // One main stands for both where only one was metered.
  if (leftDb === undefined && rightDb !== undefined) return r.number('measuredCenterLevel') - rightDb;
  if (rightDb === undefined && leftDb !== undefined) return r.number('measuredCenterLevel') - leftDb;
  const [center, left, right] = r.numbers('measuredCenterLevel', 'measuredLeftLevel', 'measuredRightLevel');
  believed(left - right);
  return center - (left + right) / 2;
}

const LOUDNESS_FACTS = [...LEVEL_FACTS, 'voiceLoudness', 'testNoiseEach'] as const;
/** As measured, where a difference shows; else as heard with test noise. */
function heardLoudness(
  r: Reader<(typeof LOUDNESS_FACTS)[number]>,
): 'softer' | 'equal' | 'louder' | undefined {
  const metered = (id: (typeof LEVEL_FACTS)[number]): boolean => r.toldNumber(id) !== undefined;
  const measured =
    metered('centerAgainstMainsDb') ||
    (metered('measuredCenterLevel') && (metered('measuredLeftLevel') || metered('measuredRightLevel')));
  const apartDb = measured ? r.from(centerAgainstMains) : 0;
  const shown = loudness(apartDb);
  if (shown !== 'equal') return shown;
  const noise = r.toldChoice('testNoiseEach');
  if (noise === 'softer' || noise === 'louder') return noise;
  const heard = r.toldChoice('voiceLoudness');
  if (heard !== undefined) return heard;
  return measured || noise === 'alike' ? 'equal' : undefined;
}
const centerLoudness = (r: Reader<(typeof LOUDNESS_FACTS)[number]>): 'softer' | 'equal' | 'louder' =>
  heardLoudness(r) ?? r.stop('voiceLoudness');

/** Turned up, a center that is too loud only gets louder: the trial says nothing then. */
const TRIAL_FACTS = [...LOUDNESS_FACTS, 'triedTrim'] as const;
function trialTells(r: Reader<(typeof TRIAL_FACTS)[number]>): 'yes' | 'no' {
  if (r.toldChoice('triedTrim') === 'not-tried') return 'no';
  return heardLoudness(r) === 'louder' ? 'no' : 'yes';
}

/** Trims that nobody set leave a box that is insensitive soft on any channel: what stays with it is no answer then. */
const SWAP_FACTS = ['testSwapAtAmplifier', 'alignmentBy'] as const;
const swapTellsTrim = (r: Reader<(typeof SWAP_FACTS)[number]>): 'yes' | 'no' =>
  r.toldChoice('alignmentBy') === 'nobody' && r.toldChoice('testSwapAtAmplifier') === 'stays' ? 'no' : 'yes';

/** Usual distance and voice boost for which a center has reserves: common practice, no source. */
const USUAL_DISTANCE_M = 3;
const VOICE_BOOST_DB = 4;
const DEMAND_FACTS = ['centerTrim', 'voiceBoost', 'seatDistance'] as const;
/** Trim, boost and distance beyond the usual: 6 dB a doubling of the way, by arithmetic. */
function centerDemand(r: Reader<(typeof DEMAND_FACTS)[number]>): number {
  const trimDb = r.toldNumber('centerTrim');
  const boost = r.toldChoice('voiceBoost');
  if (trimDb === undefined && boost === undefined) return r.stop('centerTrim', 'voiceBoost');
  const awayDb = 20 * Math.log10(r.number('seatDistance') / USUAL_DISTANCE_M);
  return Math.max(0, (trimDb ?? 0) + (boost === 'on' ? VOICE_BOOST_DB : 0) + awayDb);
}

/** With all channels loud a receiver gives each some 2 dB less than with two. Common practice, no source. */
const ALL_DRIVEN = 0.63;
const POWER_FACTS = ['loudestAtSeat', 'centerSensitivity', ...SEAT_FACTS] as const;
function powerNeeded(r: Reader<(typeof POWER_FACTS)[number]>): number {
  const [levelDb, sensitivityDb] = r.numbers('loudestAtSeat', 'centerSensitivity');
  return powerForLevelW({ levelDb, sensitivityDb, distanceM: mainSeatIn(r).yM });
}

/** A difference in words: below what is noticed it is none. */
const loudness = (apartDb: number): 'softer' | 'equal' | 'louder' =>
  Math.abs(apartDb) < LIMITS.levelDb.noticeable ? 'equal' : apartDb < 0 ? 'softer' : 'louder';

export const levels = {
  loudnessAside: derive(
    choice('center against the mains at the side seat, measured', ['softer', 'equal', 'louder'] as const),
    ['centerAgainstMainsSideDb'],
    (r) => loudness(r.number('centerAgainstMainsSideDb')),
  ),
  mainsTrims: derive(
    choice('level trims of left and right', ['alike', 'apart'] as const),
    ['trimLeft', 'trimRight'],
    (r) => {
      const [left, right] = r.numbers('trimLeft', 'trimRight');
      return Math.abs(left - right) < LIMITS.levelDb.clear ? 'alike' : 'apart';
    },
  ),
  trialTells: derive(
    choice('whether turning the center up can tell of its level', ['yes', 'no'] as const),
    TRIAL_FACTS,
    trialTells,
  ),
  swapTellsTrim: derive(
    choice('whether the swap can tell of a trim', ['yes', 'no'] as const),
    SWAP_FACTS,
    swapTellsTrim,
  ),
  centerDemandDb: derive(
    number('dB', 'what trim, boost and distance ask of the center beyond the usual'),
    DEMAND_FACTS,
    centerDemand,
  ),
  powerNeededW: derive(
    number('W', 'power that the peaks of the loud scenes take, by level, sensitivity and distance'),
    POWER_FACTS,
    powerNeeded,
  ),
  powerThereW: derive(
    number('W', 'power that the amplifier has for the center with all channels loud'),
    ['amplifierPower', 'powerRatedFor'],
    (r) => r.number('amplifierPower') * (r.choice('powerRatedFor') === 'all' ? 1 : ALL_DRIVEN),
  ),
  centerLoudness: derive(
    choice('center against the mains, as measured or heard', ['softer', 'equal', 'louder'] as const),
    LOUDNESS_FACTS,
    centerLoudness,
  ),
  levelSignedDb: derive(
    number('dB', 'center minus the mean of the mains at the seat'),
    LEVEL_FACTS,
    centerAgainstMains,
  ),
  levelErrorDb: derive(
    number('dB', 'center against the mean of the mains at the seat, magnitude'),
    LEVEL_FACTS,
    (r) => Math.abs(r.from(centerAgainstMains)),
  ),
  mainsLevelErrorDb: derive(
    number('dB', 'left against right at the seat, magnitude'),
    ['measuredLeftLevel', 'measuredRightLevel'],
    (r) => {
      const [left, right] = r.numbers('measuredLeftLevel', 'measuredRightLevel');
      return Math.abs(believed(left - right));
    },
  ),
};
