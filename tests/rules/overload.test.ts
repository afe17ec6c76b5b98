import { overload } from '../../src/rules/causes/overload.js';
import { testCause } from '../support/testCause.js';

testCause(overload, {
  firstPosts: [{ complaints: ['distorts-when-loud'], facts: { troubleWhenLoud: 'yes' } }],
  fires: [
    {
      name: 'a recording shows a center that distorts beside clean mains',
      facts: { distortionCenter: 12, distortionMains: 0.5 },
      rules: ['recording-shows-distortion'],
    },
    {
      name: '12 dB of trim, a boost and five meters ask for a hundred times the power',
      facts: { centerTrim: 12, voiceBoost: 'on', seatDistance: 5 },
      rules: ['much-is-asked'],
    },
    {
      name: '30 W into an 84 dB box four meters away do not pass the peaks of 90 dB',
      facts: { amplifierPower: 30, centerSensitivity: 84, seatDistance: 4, loudestAtSeat: 90 },
      rules: ['power-runs-out'],
    },
    {
      name: '100 W into a 90 dB box at three meters pass those of 80 dB with ease',
      facts: { amplifierPower: 100, centerSensitivity: 90, seatDistance: 3, loudestAtSeat: 80 },
      rules: ['amplifier-has-reserves'],
    },
    {
      name: 'cones of 5 in are small whatever the mains are',
      facts: { centerBassSize: 'large', centerMidSize: 0.133 },
      rules: ['small-box-set-to-large'],
    },
    {
      name: 'strain appears with level and with those who listen loud',
      facts: { troubleWhenLoud: 'yes', listeningLevel: 'loud' },
      rules: ['only-when-loud', 'loud-listening'],
    },
    {
      name: 'a small box set to large gets bass it cannot play',
      facts: { centerBassSize: 'large', centerSizeAgainstMains: 'smaller' },
      rules: ['small-box-set-to-large'],
    },
    {
      name: 'a crossover below the low limit of the box wastes its travel',
      facts: { centerBassSize: 'small', centerBassCrossover: 60, centerLowLimit: 90 },
      rules: ['crossover-below-its-limit'],
    },
    {
      name: 'strain creeps in with the volume',
      facts: { onset: 'gradual' },
      rules: ['crept-in'],
    },
    {
      name: 'what comes from one day to the next is not strain',
      facts: { onset: 'sudden' },
      rules: ['came-at-once'],
    },
    {
      name: 'clean when soft and near leaves strain possible',
      facts: { testNearCenter: 'good-near', testEarToDrivers: 'all' },
      rules: ['clean-when-soft-and-near', 'drivers-clean-when-soft'],
    },
    {
      name: 'near by and soft it gets better, if not good',
      facts: { testNearCenter: 'better' },
      rules: ['clean-when-soft-and-near'],
    },
  ],
  silent: [
    {
      name: 'with all channels loud 100 W of two are some 63, still enough here',
      facts: { amplifierPower: 100, centerSensitivity: 90, seatDistance: 3, loudestAtSeat: 80 },
      rules: ['power-runs-out'],
    },
    {
      name: 'an amplifier at its end has no reserves',
      facts: {
        amplifierPower: 30,
        powerRatedFor: 'all',
        centerSensitivity: 84,
        seatDistance: 4,
        loudestAtSeat: 90,
      },
      rules: ['amplifier-has-reserves'],
    },
    {
      name: 'a recording shows all three alike clean',
      facts: { distortionCenter: 0.6, distortionMains: 0.5 },
      rules: ['recording-shows-distortion'],
    },
    {
      name: 'a trim of zero at three meters asks for nothing special',
      facts: { centerTrim: 0, seatDistance: 3 },
      rules: ['much-is-asked'],
    },
    {
      name: 'the same at any volume is not strain',
      facts: { troubleWhenLoud: 'no', listeningLevel: 'soft', onset: 'always' },
      rules: ['only-when-loud', 'loud-listening', 'crept-in', 'came-at-once'],
    },
    {
      name: 'a small box set to small is spared the bass',
      facts: { centerBassSize: 'small', centerBassCrossover: 120, centerLowLimit: 70 },
      rules: ['small-box-set-to-large', 'crossover-below-its-limit'],
    },
    {
      name: 'a center as large as the mains may be set to large',
      facts: { centerBassSize: 'large', centerSizeAgainstMains: 'similar' },
      rules: ['small-box-set-to-large', 'crossover-below-its-limit'],
    },
    {
      name: 'a voice bad at low volume near by, and a rattling driver, are no strain',
      facts: { testNearCenter: 'still-bad', testEarToDrivers: 'rattles' },
      rules: ['clean-when-soft-and-near', 'drivers-clean-when-soft'],
    },
  ],
  cannotTell: [
    {
      name: 'without its power nobody knows whether the amplifier ends',
      facts: { loudestAtSeat: 90, seatDistance: 3 },
      rule: 'power-runs-out',
      asks: ['amplifierPower'],
    },
    {
      name: 'nor whether it has reserves',
      facts: { seatDistance: 3 },
      rule: 'amplifier-has-reserves',
      asks: ['amplifierPower'],
    },
    {
      name: 'nothing was recorded',
      facts: {},
      rule: 'recording-shows-distortion',
      asks: ['distortionCenter'],
    },
    {
      name: 'neither trim nor boost is known',
      facts: { seatDistance: 5 },
      rule: 'much-is-asked',
      asks: ['centerTrim', 'voiceBoost'],
    },
    { name: 'volume not varied', facts: {}, rule: 'only-when-loud', asks: ['troubleWhenLoud'] },
    { name: 'level not told', facts: {}, rule: 'loud-listening', asks: ['listeningLevel'] },
    {
      name: 'set to large, the size of the box is not known',
      facts: { centerBassSize: 'large' },
      rule: 'small-box-set-to-large',
      asks: ['centerSizeAgainstMains'],
    },
    {
      name: 'set to small, its crossover was not read',
      facts: { centerBassSize: 'small', centerLowLimit: 80 },
      rule: 'crossover-below-its-limit',
      asks: ['centerBassCrossover'],
    },
    { name: 'history not told', facts: {}, rule: 'crept-in', asks: ['onset'] },
    { name: 'onset not told', facts: {}, rule: 'came-at-once', asks: ['onset'] },
    { name: 'nobody sat near', facts: {}, rule: 'clean-when-soft-and-near', asks: ['testNearCenter'] },
    { name: 'no ear to the drivers', facts: {}, rule: 'drivers-clean-when-soft', asks: ['testEarToDrivers'] },
  ],
  boundary: [
    {
      name: 'the power that is there is the fair coin',
      rule: 'power-runs-out',
      derived: { powerNeededW: 50, powerThereW: 50 },
      at: 'yes',
      below: 'no',
    },
    {
      name: 'four times the power is the fair coin',
      rule: 'much-is-asked',
      derived: { centerDemandDb: 6 },
      at: 'yes',
      below: 'no',
    },
    {
      name: 'a crossover just at the low limit of the box is too low, just above it is not',
      rule: 'crossover-below-its-limit',
      facts: { centerBassSize: 'small' },
      derived: { centerBassCrossover: 80, centerLowLimit: 80 },
      at: 'yes',
      below: 'no',
      lowIsBad: true,
    },
  ],
});
