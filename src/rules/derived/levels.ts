/** Levels at the seat, the only ones that count. */

import { choice, derive, number, type Reader } from '../../compute/reader.js';
import { LIMITS } from '../limits.js';

const LEVEL_FACTS = ['measuredCenterLevel', 'measuredLeftLevel', 'measuredRightLevel'] as const;
/** Meters show dB: the mean of two mains is taken of what they show. */
function centerAgainstMains(r: Reader<(typeof LEVEL_FACTS)[number]>): number {
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
    metered('measuredCenterLevel') && (metered('measuredLeftLevel') || metered('measuredRightLevel'));
  const apartDb = measured ? r.from(centerAgainstMains) : 0;
  if (Math.abs(apartDb) >= LIMITS.levelDb.noticeable) return apartDb < 0 ? 'softer' : 'louder';
  const noise = r.toldChoice('testNoiseEach');
  if (noise === 'softer' || noise === 'louder') return noise;
  const heard = r.toldChoice('voiceLoudness');
  if (heard !== undefined) return heard;
  return measured || noise === 'alike' ? 'equal' : r.stop('voiceLoudness');
}

export const levels = {
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
