import { twinCenters } from '../../src/rules/causes/twin-centers.js';
import { testCause } from '../support/testCause.js';

const two = { centerCount: 'two' } as const;

testCause(twinCenters, {
  firstPosts: [{ complaints: ['hollow'], facts: { centerCount: 'two' } }],
  fires: [
    {
      name: 'what goes along with one person is hardly made by the system',
      facts: { centerCount: 'two', whoHears: 'one-person' },
      rules: ['one-person-alone'],
    },
    {
      name: 'boxes below and above the picture cancel at seats that are not level with their middle',
      facts: {
        ...two,
        centerTweeterHeight: 0.5,
        earHeight: 1.05,
        seatDistance: 2.5,
        displayDiagonal: 1.65,
        displayMiddleHeight: 1.2,
      },
      rules: ['dip-between-the-two'],
    },
    {
      name: 'hollow noise, steadier with one covered, different along the row, since the second box came',
      facts: {
        ...two,
        testNoiseEach: 'phasey',
        testCoverTweeter: 'steadier',
        testSitMiddle: 'clear-in-middle',
        lastChange: 'loudspeaker',
      },
      rules: [
        'hollow-noise',
        'steadier-with-one-covered',
        'differs-from-seat-to-seat',
        'since-the-second-box',
      ],
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
      name: 'what others hear as well stays possible',
      facts: { centerCount: 'two', whoHears: 'everyone', testSwapSeats: 'stays-with-seat' },
      rules: ['one-person-alone'],
    },
    {
      name: 'a single center cannot fight itself',
      facts: { centerCount: 'one', testNoiseEach: 'phasey', lastChange: 'loudspeaker' },
      rules: ['dip-between-the-two', 'hollow-noise', 'since-the-second-box'],
    },
    {
      name: 'noise alike, no change with one covered, the same along the row, all drivers play',
      facts: {
        ...two,
        testNoiseEach: 'alike',
        testCoverTweeter: 'same',
        testSitMiddle: 'same-everywhere',
        lastChange: 'nothing',
        testEarToDrivers: 'all',
      },
      rules: [
        'hollow-noise',
        'steadier-with-one-covered',
        'differs-from-seat-to-seat',
        'since-the-second-box',
        'one-stays-silent',
      ],
    },
  ],
  cannotTell: [
    {
      name: 'nobody said whether it is one person alone',
      facts: { centerCount: 'two' },
      rule: 'one-person-alone',
      asks: ['whoHears', 'testSwapSeats'],
    },
    {
      name: 'the number of centers is not told',
      facts: {},
      rule: 'dip-between-the-two',
      asks: ['centerCount'],
    },
    { name: 'no noise compared', facts: two, rule: 'hollow-noise', asks: ['testNoiseEach'] },
    { name: 'neither covered', facts: two, rule: 'steadier-with-one-covered', asks: ['testCoverTweeter'] },
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
