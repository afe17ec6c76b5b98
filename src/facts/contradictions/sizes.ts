/** Heights above the ceiling, boxes larger than their bays, crossovers in the wrong order. */
import { told } from '../book.js';
import type { NumberFactId } from '../catalog.js';
import { type Check, clash, numberOf, withNumbers } from './clash.js';

export const aboveCeiling: Check = (book) => {
  const heights = [
    'centerTweeterHeight',
    'mainsTweeterHeight',
    'earHeight',
    'displayMiddleHeight',
    'obstacleHeight',
  ] as const;
  return heights.flatMap((id) =>
    withNumbers(book, [id, 'ceilingHeight'], (height = 0, ceiling = 0) =>
      height > ceiling ? [clash(book, `above-ceiling-${id}`, 'hard', [id, 'ceilingHeight'])] : [],
    ),
  );
};

/** Pairs where the first number must not exceed the second. */
const NOT_ABOVE: readonly (readonly [string, NumberFactId, NumberFactId, string])[] = [
  ['box-wider-than-bay', 'centerWidth', 'bayWidth', 'The box would not go in.'],
  ['box-higher-than-bay', 'centerHeight', 'bayHeight', 'The box would not go in.'],
  ['recess-deeper-than-bay', 'bayRecess', 'bayDepth', 'The face would be behind the back of the bay.'],
  ['cones-overlap', 'centerMidSize', 'centerDriverSpacing', 'The two cones would overlap.'],
  ['cones-beyond-box', 'centerDriverSpacing', 'centerWidth', 'The cones would be outside the box.'],
  ['tweeters-beyond-box', 'centerTweeterSpacing', 'centerWidth', 'The tweeters would be outside the box.'],
  ['crossover-order', 'centerLowCrossover', 'centerCrossover', 'The lower crossover is the lower figure.'],
  ['bass-above-crossover', 'centerBassCrossover', 'centerCrossover', 'The voice range would be empty.'],
];

export const sizes: Check = (book) =>
  NOT_ABOVE.flatMap(([id, small, large, note]) =>
    withNumbers(book, [small, large], (a = 0, b = 0) => {
      const isUpright = id.endsWith('-beyond-box') && told(book, 'centerOrientation') === 'upright';
      const isPair = id.endsWith('-beyond-box') && told(book, 'centerLayout') === 'paired-boxes';
      return a > b && !isUpright && !isPair ? [clash(book, id, 'hard', [small, large], note)] : [];
    }),
  );

/** A box that stands back in its bay must leave room for itself. The slack is for a rounded measure. */
const BAY_SLACK_M = 0.01;

export const bayDepth: Check = (book) =>
  withNumbers(book, ['centerDepth', 'bayRecess', 'bayDepth'], (box = 0, recess = 0, bay = 0) =>
    recess > 0 && box + recess > bay + BAY_SLACK_M
      ? [clash(book, 'box-and-recess-deeper-than-bay', 'hard', ['centerDepth', 'bayRecess', 'bayDepth'])]
      : [],
  );

/** A floor-standing center reaches knee height. Judgement. */
const FLOOR_HIGHEST_M = 0.8;

export const floorPlacement: Check = (book) => {
  const height = numberOf(book, 'centerTweeterHeight');
  return told(book, 'centerPlacement') === 'floor' && height !== undefined && height > FLOOR_HIGHEST_M
    ? [clash(book, 'floor-but-high', 'soft', ['centerPlacement', 'centerTweeterHeight'])]
    : [];
};

/** A voice heard on the far side of the picture from the box, by more than a hand's breadth. Judgement. */
const HEIGHT_MARGIN_M = 0.2;

export const heardHeight: Check = (book) =>
  withNumbers(book, ['centerTweeterHeight', 'displayMiddleHeight'], (center = 0, picture = 0) => {
    const heard = told(book, 'voiceDirection');
    const low = heard === 'low' && center > picture + HEIGHT_MARGIN_M;
    const high = heard === 'high' && center < picture - HEIGHT_MARGIN_M;
    const facts = ['voiceDirection', 'centerTweeterHeight', 'displayMiddleHeight'] as const;
    return low || high ? [clash(book, 'heard-on-the-other-side', 'soft', facts)] : [];
  });
