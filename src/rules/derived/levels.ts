/** Levels at the seat, the only ones that count. */
import { derive, number, type Reader } from './reader.js';

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

export const levels = {
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
