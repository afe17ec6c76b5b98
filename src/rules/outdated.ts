/** What an act makes out of date, by what it touches: a remedy adds what is its own. */

/** The box itself: nothing that was told of the old one holds for another. */
export const BOX = [
  'centerLayout',
  'centerOrientation',
  'centerDriverSpacing',
  'centerTweeterSpacing',
  'centerMidSize',
  'centerCrossover',
  'centerLowCrossover',
  'centerFamily',
  'centerSizeAgainstMains',
  'centerLowLimit',
  'centerEnclosure',
  'centerSensitivity',
  'measuredCenterLevel',
  'testNoiseEach',
  'toneAcrossPan',
  'testMainInPlace',
  'testNearCenter',
  'testSwapAtAmplifier',
  'responseCenter',
  'toneMeasuredDb',
  'toneMeasuredHz',
] as const;

/** The tone of a channel, by its settings. */
export const TONE = [
  'testNoiseEach',
  'toneAcrossPan',
  'testEqBypass',
  'responseLeft',
  'responseCenter',
  'responseRight',
  'toneMeasuredDb',
  'toneMeasuredHz',
] as const;

/** Where the center stands, and what is heard of that. */
export const PLACE = [
  'centerPlacement',
  'shelfSetback',
  'centerTweeterHeight',
  'centerTilt',
  'tapedCenter',
  'testNoiseEach',
  'toneAcrossPan',
  'testLift',
  'responseCenter',
  'toneMeasuredDb',
  'toneMeasuredHz',
] as const;

/** The entries of the three fronts, and what judges them. */
export const ENTRIES = [
  'enteredLeft',
  'enteredCenter',
  'enteredRight',
  'arrivalMeasuredMs',
  'testTape',
] as const;
