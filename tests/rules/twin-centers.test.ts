import { twinCenters } from '../../src/rules/causes/twin-centers.js';
import { testCause } from '../support/testCause.js';

const two = { centerCount: 'two' } as const;

testCause(twinCenters, {
  firstPosts: [{ complaints: ['hollow'], facts: { centerCount: 'two' } }],
  fires: [
    {
      name: 'a hole where the pair puts its deepest is the pair',
      facts: {
        ...two,
        twinArrangement: 'side-by-side',
        twinSpacing: 1,
        seatDistance: 3,
        seatCount: 3,
        measuredHoleHz: 860,
      },
      rules: ['measured-hole'],
    },
    {
      name: 'side by side under the picture they cancel along the row',
      facts: { ...two, twinArrangement: 'side-by-side', twinSpacing: 1, seatDistance: 3, seatCount: 3 },
      rules: ['dip-between-the-two'],
    },
    {
      name: 'above each other, standing up changes the tone',
      facts: { ...two, twinArrangement: 'above-below', testPosture: 'changes' },
      rules: ['changes-with-posture'],
    },
    {
      name: 'boxes below and above the picture cancel at seats that are not level with their middle',
      facts: {
        ...two,
        twinArrangement: 'above-below',
        centerTweeterHeight: 0.5,
        earHeight: 1.05,
        seatDistance: 2.5,
        displayDiagonal: 1.65,
        displayMiddleHeight: 1.2,
      },
      rules: ['dip-between-the-two'],
    },
    {
      name: 'hollow noise, steadier with one off, different along the row, since the second box came',
      facts: {
        ...two,
        testNoiseEach: 'phasey',
        testOneCenterOff: 'steadier',
        testSitMiddle: 'clear-in-middle',
        lastChange: 'loudspeaker',
      },
      rules: ['hollow-noise', 'steadier-with-one-off', 'differs-from-seat-to-seat', 'since-the-second-box'],
    },
    {
      name: 'a silent box interferes with nothing',
      facts: { ...two, testEarToDrivers: 'silent' },
      rules: ['one-stays-silent'],
    },
    {
      name: 'worse in the middle than at the end differs from seat to seat too',
      facts: { ...two, testSitMiddle: 'worse-in-middle' },
      rules: ['differs-from-seat-to-seat'],
    },
  ],
  silent: [
    {
      name: 'a hole three octaves above is not',
      facts: {
        ...two,
        twinArrangement: 'side-by-side',
        twinSpacing: 1,
        seatDistance: 3,
        seatCount: 3,
        measuredHoleHz: 7600,
      },
      rules: ['measured-hole'],
    },
    {
      name: 'side by side they agree for one seat in the middle',
      facts: {
        ...two,
        twinArrangement: 'side-by-side',
        twinSpacing: 1,
        seatDistance: 3,
        seating: 'single-seat',
      },
      rules: ['dip-between-the-two'],
    },
    {
      name: 'side by side, standing up tells nothing',
      facts: { ...two, twinArrangement: 'side-by-side', testPosture: 'changes' },
      rules: ['changes-with-posture'],
    },
    {
      name: 'stacked and steady from standing to slouching',
      facts: { ...two, twinArrangement: 'stacked', testPosture: 'same' },
      rules: ['changes-with-posture'],
    },
    {
      name: 'a single center cannot fight itself',
      facts: { centerCount: 'one', testNoiseEach: 'phasey', lastChange: 'loudspeaker' },
      rules: ['dip-between-the-two', 'hollow-noise', 'since-the-second-box'],
    },
    {
      name: 'noise alike, no change with one off, the same along the row, all drivers play',
      facts: {
        ...two,
        testNoiseEach: 'alike',
        testOneCenterOff: 'same',
        testSitMiddle: 'same-everywhere',
        lastChange: 'nothing',
        testEarToDrivers: 'all',
      },
      rules: [
        'hollow-noise',
        'steadier-with-one-off',
        'differs-from-seat-to-seat',
        'since-the-second-box',
        'one-stays-silent',
      ],
    },
  ],
  cannotTell: [
    {
      name: 'no hole measured',
      facts: { ...two, twinArrangement: 'side-by-side', twinSpacing: 1, seatDistance: 3, seatCount: 3 },
      rule: 'measured-hole',
      asks: ['measuredHoleHz'],
    },
    {
      name: 'how the two stand is not told',
      facts: { ...two, centerTweeterHeight: 0.9, displayMiddleHeight: 1.05 },
      rule: 'dip-between-the-two',
      asks: ['twinArrangement'],
    },
    {
      name: 'nobody stood up',
      facts: { ...two, twinArrangement: 'stacked' },
      rule: 'changes-with-posture',
      asks: ['testPosture'],
    },
    {
      name: 'the number of centers is not told',
      facts: {},
      rule: 'dip-between-the-two',
      asks: ['centerCount'],
    },
    { name: 'no noise compared', facts: two, rule: 'hollow-noise', asks: ['testNoiseEach'] },
    { name: 'neither disconnected', facts: two, rule: 'steadier-with-one-off', asks: ['testOneCenterOff'] },
    { name: 'seats not compared', facts: two, rule: 'differs-from-seat-to-seat', asks: ['testSitMiddle'] },
    { name: 'last change not told', facts: two, rule: 'since-the-second-box', asks: ['lastChange'] },
    { name: 'no ear at the drivers', facts: two, rule: 'one-stays-silent', asks: ['testEarToDrivers'] },
  ],
  boundary: [
    {
      name: 'a dip of 4 dB is clear',
      rule: 'dip-between-the-two',
      facts: two,
      derived: { twinCenterDipDb: 4 },
      at: 'yes',
      below: 'no',
    },
  ],
});
