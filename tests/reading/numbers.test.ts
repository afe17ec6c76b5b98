/** Which fact a number is of: the thing and the measure decide, in whatever order and list they are told. */
import { describe, expect, it } from 'vitest';
import { factSpec } from '../../src/facts/catalog.js';
import { readText } from '../../src/reading/read.js';

/** Numbers taken, in SI units, as `fact=value`. */
const numbers = (text: string): string[] =>
  readText(text)
    .taken.filter(({ value }) => typeof value === 'number')
    .map(({ fact, value }) => `${fact}=${Number(Number(value).toFixed(3))}`)
    .sort();

// 1 ft = 0.3048 m and 1 in = 0.0254 m, exact by definition (international yard and pound agreement, 1959).
describe('a number is of the thing and the measure beside it', () => {
  it.each([
    ['The sofa is 11 ft from the TV.', 'seatDistance=3.353'],
    ['Notes: dist 11ft, 65in TV.', 'displayDiagonal=1.651', 'seatDistance=3.353'],
    ['The two sides are 8 feet apart.', 'mainsBase=2.438'],
    ['Between the boxes there are 2,6 meters.', 'mainsBase=2.6'],
    ['The cubby is 20" wide, 7" high, 12" deep.', 'bayDepth=0.305', 'bayHeight=0.178', 'bayWidth=0.508'],
    ['Compartment: width 65cm height 25cm depth 40cm.', 'bayDepth=0.4', 'bayHeight=0.25', 'bayWidth=0.65'],
    ['The center measures 50 x 18 x 30 cm.', 'centerDepth=0.3', 'centerHeight=0.18', 'centerWidth=0.5'],
    ['Room 5 by 4 by 2.4 m.', 'ceilingHeight=2.4'],
    ['The compartment the center is in is 60 cm wide.', 'bayWidth=0.6'],
    ['The cubby is deep; the face is 4 in behind its front edge.', 'bayRecess=0.102'],
    ['It stands on the sideboard, 20 cm behind the front edge.', 'shelfSetback=0.2'],
    ['2.6 m to the speakers.', 'seatDistance=2.6'],
    ['Three cones, no: 2 x 6.5 in cones.', 'centerMidSize=0.165'],
    ['The crossover for the fronts is set at 60 Hz.', 'mainsBassCrossover=60'],
    ['Center set small, crossover somebody put at 200 Hz.', 'centerBassCrossover=200'],
    ['I sit 3.6 m from each of them.', 'tapedMains=3.6'],
    ['In the menu the center was at 30 ft. I changed the center to 9.5.', 'enteredCenter=2.896'],
    ['THD center: 4.5 percent.', 'distortionCenter=4.5'],
    ['Trims: C -6, the other two at 0.', 'centerTrim=-6', 'trimLeft=0', 'trimRight=0'],
    ['Trim C -6 (no idea who put it there).', 'centerTrim=-6'],
    ['3.3 m typed in for all of them.', 'enteredCenter=3.3', 'enteredLeft=3.3', 'enteredRight=3.3'],
    ['The center spread is opened half way.', 'centerSpreadAmount=0.5'],
    [
      "I gave the menu center 9'6, mains 10'2.",
      'enteredCenter=2.896',
      'enteredLeft=3.099',
      'enteredRight=3.099',
    ],
    ['In the menu the center is set to 3.2 m.', 'enteredCenter=3.2'],
    ['All speakers are set to 3.0 m.', 'enteredCenter=3', 'enteredLeft=3', 'enteredRight=3'],
    [
      'Entered 9 ft for all three. By tape: left 10 ft, center 8 ft.',
      'enteredCenter=2.743',
      'enteredLeft=2.743',
      'enteredRight=2.743',
      'tapedCenter=2.438',
      'tapedLeft=3.048',
    ],
    ['L 3.2, C 3.0, R 3.2 m', 'enteredCenter=3', 'enteredLeft=3.2', 'enteredRight=3.2'],
    ['tweeter heights: L/R 95 cm, C 60 cm', 'centerTweeterHeight=0.6', 'mainsTweeterHeight=0.95'],
    [
      'Meter: left 75, right 75, center 71.',
      'measuredCenterLevel=71',
      'measuredLeftLevel=75',
      'measuredRightLevel=75',
    ],
    [
      'A phone on a tripod shows 74 left, 69 center, 74 right.',
      'measuredCenterLevel=69',
      'measuredLeftLevel=74',
      'measuredRightLevel=74',
    ],
    [
      'Levels by meter: 75.0, 75.2, 74.9, left to right.',
      'measuredCenterLevel=75.2',
      'measuredLeftLevel=75',
      'measuredRightLevel=74.9',
    ],
    [
      'In the menu the center is at 3.1 m like the others.',
      'enteredCenter=3.1',
      'enteredLeft=3.1',
      'enteredRight=3.1',
    ],
    ['Distances: 8 ft each by tape.', 'tapedCenter=2.438', 'tapedMains=2.438'],
    ['trims left -1.5 right -2 center +3', 'centerTrim=3', 'trimLeft=-1.5', 'trimRight=-2'],
    [
      'Crossover for the centre is 120 Hz and for the fronts 60.',
      'centerBassCrossover=120',
      'mainsBassCrossover=60',
    ],
    [
      'The receiver wrote 4.2 m for the centre, real distance is 3.1 m.',
      'enteredCenter=4.2',
      'tapedCenter=3.1',
    ],
    ['big dip of 10 dB at 1.6k', 'measuredHoleDb=10', 'measuredHoleHz=1600'],
    ['RT60 is around 0.5 s', 'reverberationTime=500'],
    ['-3 dB at 55 Hz', 'centerLowLimit=55', 'centerLowLimitDrop=3'],
    ['center image at 3 of 10', 'centerSpreadAmount=0.3'],
    ['Distances: 3.2 m for all', 'enteredCenter=3.2', 'enteredLeft=3.2', 'enteredRight=3.2'],
    ['tall towers about 9 feet apart', 'mainsBase=2.743'],
    ['Ears at 1 m 05.', 'earHeight=1.05'],
    [
      'Towers left and right, tweeters at 38", 8\'6" between them.',
      'mainsBase=2.591',
      'mainsTweeterHeight=0.965',
    ],
    ['Center on the bench, its tweeter 11" off the floor.', 'centerTweeterHeight=0.279'],
    ['The TV hangs on the wall, top edge at 6 ft 2.', 'displayTopHeight=1.88'],
    ["Actual distances: C 9'4\", L/R 10'.", 'tapedCenter=2.845', 'tapedMains=3.048'],
    ['Chair to left 3.55 m, to right 3.5 m, by laser.', 'tapedLeft=3.55', 'tapedRight=3.5'],
    ['Trims are L 0, R -0.5, C -6.5.', 'centerTrim=-6.5', 'trimLeft=0', 'trimRight=-0.5'],
    // More than two thirds of the lowest plausible trim.
    ['It has set the center to -8.5 dB and left to -2 dB.', 'centerTrim=-8.5', 'trimLeft=-2'],
    ['strongest reflection comes 2.3 ms after the direct sound', 'reflectionMeasuredMs=2.3'],
    ['Levels were matched with a meter.', 'centerAgainstMainsDb=0'],
    ['The center is 3 dB below the mains.', 'centerAgainstMainsDb=-3'],
    [
      'Matched: 75 / 75.2 / 75 dB at the chair.',
      'measuredCenterLevel=75.2',
      'measuredLeftLevel=75',
      'measuredRightLevel=75',
    ],
    ['The data sheet says 110 Hz at -6.', 'centerLowLimit=110', 'centerLowLimitDrop=6'],
    ['Setup distances: 11 ft L/R 10.5 C', 'enteredCenter=3.2', 'enteredLeft=3.353', 'enteredRight=3.353'],
    ['L: 3.20 m tape / 3.10 m menu', 'enteredLeft=3.1', 'tapedLeft=3.2'],
    ['the two centers are 90 cm apart', 'twinSpacing=0.9'],
    ['mains have a latency of 20 ms', 'mainsLatency=20'],
    ['The singer drops only 3 dB in the mains with the upmixer on.', 'upmixMainsDrop=3'],
  ])('%s', (text, ...told) => {
    expect(numbers(text)).toEqual(told);
  });
});

describe('the last of two numbers holds', () => {
  it.each([
    ['I set the center trim to +4, then back to 0.', 'centerTrim=0'],
    [
      'The center crossover is 200 Hz. I changed the crossover of the center to 80 Hz.',
      'centerBassCrossover=80',
    ],
    ['Before I moved the couch it was 14 ft away, now 9.', 'seatDistance=2.743'],
    ['We went from a flat TV (50") to a 77" screen.', 'displayDiagonal=1.956'],
  ])('%s', (text, told) => {
    expect(numbers(text)).toEqual([told]);
  });
});

describe('a number is of nothing we read', () => {
  it.each([
    ['The surrounds are 4 m apart.'],
    ['The left main has a C50 of 9 dB.'],
    ['The bedroom ceiling is 2.4 m high.'],
    ['40" tall towers on both sides'],
    ['The center sits 14 inches below my ears.'],
    ['My friend sits 8 ft from his TV.'],
    ['If I sat 6 ft away would it be better?'],
    ['I could move the couch to 3 m.'],
    ['The couch is 84 inches long.'],
    ['The bottom of the TV is at 36 inches.'],
    ['We have lived here 12 years, room 20 m2.'],
    ['A slope of 12 dB/oct.'],
    ['The sofa is 2.2 m wide.'],
    ['The center was matched with a meter.'],
    ['Turning the center up 4 dB did nothing.'],
    ['I turned the center down by 2 dB.'],
    ['The center points straight ahead at our shins.'],
    ['The sub is 30 cm tall.'],
    ['Set the crossover to 120 Hz for an evening.'],
  ])('%s', (text) => {
    expect(numbers(text)).toEqual([]);
  });
});

it('every row of the table is of a number', async () => {
  const { SLOTS } = await import('../../src/facts/words/slots.js');
  for (const [id, row] of Object.entries(SLOTS)) {
    expect(factSpec(id as 'seatDistance').kind, id).toBe('number');
    expect(row.split(' | ').length, id).toBeGreaterThanOrEqual(2);
  }
});
