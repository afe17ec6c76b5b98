/** All calculators, in the order in which they are listed. */
import { didYouMean, nearest } from '../../lib/nearest.js';
import { quoted } from '../../lib/sanitize.js';
import { UserError } from '../../lib/user-error.js';
import type { Calculator } from './calculator.js';
import { phantomCalculator, upmixCalculator } from './image.js';
import { lobingAngleCalculator, offAxisCalculator, pairNullCalculator } from './loudspeaker.js';
import {
  barrierCalculator,
  bayCalculator,
  elevationCalculator,
  floorBounceCalculator,
  frontWallCalculator,
  recessCalculator,
  sightlineCalculator,
} from './placement.js';
import { screenCalculator } from './screen.js';
import { arrivalCalculator, combCalculator, soundSpeedCalculator } from './timing.js';
import { bassSumCalculator, filterCalculator, speechLossCalculator, tonalMatchCalculator } from './tone.js';

export const CALCULATORS: readonly Calculator[] = [
  soundSpeedCalculator,
  combCalculator,
  pairNullCalculator,
  lobingAngleCalculator,
  offAxisCalculator,
  elevationCalculator,
  floorBounceCalculator,
  frontWallCalculator,
  bayCalculator,
  recessCalculator,
  barrierCalculator,
  sightlineCalculator,
  arrivalCalculator,
  phantomCalculator,
  screenCalculator,
  upmixCalculator,
  filterCalculator,
  bassSumCalculator,
  speechLossCalculator,
  tonalMatchCalculator,
];

/** The calculator of this name. Throws UserError with the nearest name. */
export function calculatorOf(name: string): Calculator {
  const found = CALCULATORS.find((calculator) => calculator.name === name);
  if (found !== undefined) return found;
  const names = CALCULATORS.map((calculator) => calculator.name);
  throw new UserError({
    where: 'calc',
    what: `${quoted(name)} is no calculator${didYouMean(nearest(name, names))}`,
    accepted: names.join(', '),
    example: 'center-audit calc comb delayMs=1',
  });
}
