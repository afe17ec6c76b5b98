/** Levels at the seat, the only ones that count. */

import { choice, derive, number, type Reader } from '../../compute/reader.js';
import { LIMITS } from '../limits.js';

const LEVEL_FACTS = [
  'centerAgainstMainsDb',
  'measuredCenterLevel',
  'measuredLeftLevel',
  'measuredRightLevel',
] as const;
/** As told, else of three levels: meters show dB, so the mean of two mains is taken of what they show. */
function centerAgainstMains(r: Reader<(typeof LEVEL_FACTS)[number]>): number {
  const apartDb = r.toldNumber('centerAgainstMainsDb');
  if (apartDb !== undefined) return apartDb;
  const leftDb = r.toldNumber('measuredLeftLevel');
  const rightDb = r.toldNumber('measuredRightLevel');
  // One main stands for both where only one was metered.
  if (leftDb === undefined && rightDb !== undefined) return r.number('measuredCenterLevel') - rightDb;
  if (rightDb === undefined && leftDb !== undefined) return r.number('measuredCenterLevel') - leftDb;
  const [center, left, right] = r.numbers('measuredCenterLevel', 'measuredLeftLevel', 'measuredRightLevel');
  return center - (left + right) / 2;
}

const LOUDNESS_FACTS = [...LEVEL_FACTS, 'voiceLoudness', 'testNoiseEach'] as const;
/** As measured, where a difference shows; else as heard with test noise. */
function centerLoudness(r: Reader<(typeof LOUDNESS_FACTS)[number]>): 'softer' | 'equal' | 'louder' {
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
  return measured || noise === 'alike' ? 'equal' : r.stop('voiceLoudness');
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
    (r) => Math.abs(centerAgainstMains(r)),
  ),
  mainsLevelErrorDb: derive(
    number('dB', 'left against right at the seat, magnitude'),
    ['measuredLeftLevel', 'measuredRightLevel'],
    (r) => {
      const [left, right] = r.numbers('measuredLeftLevel', 'measuredRightLevel');
      return Math.abs(left - right);
    },
  ),
};
