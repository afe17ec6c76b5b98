import { aim } from '../../src/rules/causes/aim.js';
import { testCause } from '../support/testCause.js';

const low = { centerTweeterHeight: 0.4, earHeight: 1.05, seatDistance: 2, seating: 'single-seat' } as const;
const upright = {
  centerLayout: 'vertical-two-way',
  centerDriverSpacing: 0.15,
  centerCrossover: 2500,
} as const;

testCause(aim, {
  firstPosts: [{ complaints: ['dull'], facts: { testTilt: 'clearer' } }],
  fires: [
    {
      name: 'clearer when the ears come down to the axis',
      facts: { testPosture: 'better-lower' },
      rules: ['changes-with-posture'],
    },
    {
      name: 'a row shares a wrong tilt, so trouble at the end seats speaks against it',
      facts: { troubleSeats: 'off-middle' },
      rules: ['only-off-the-middle'],
    },
    {
      name: 'what stays with the box when the channels are swapped is the box or its place',
      facts: { testSwapAtAmplifier: 'stays' },
      rules: ['stays-in-its-place'],
    },
    {
      name: 'a low upright two-way lying flat loses its crossover range at ears 18 degrees above its axis',
      facts: { ...low, ...upright, centerOrientation: 'level', centerTilt: 0 },
      rules: ['dip-above-or-below-axis', 'loses-something'],
    },
    {
      name: 'a lying pair turned on its end cancels upward instead of sideways',
      facts: {
        ...low,
        centerLayout: 'mid-tweeter-mid',
        centerDriverSpacing: 0.26,
        centerCrossover: 2500,
        centerOrientation: 'upright',
        centerTilt: 0,
      },
      rules: ['dip-above-or-below-axis', 'loses-something'],
    },
    {
      name: 'a box that is seen to lie as usual, pointed at the ears, is innocent',
      facts: { ...low, ...upright, centerOrientation: 'level', centerTilt: 18 },
      rules: ['nothing-lost-as-it-stands'],
    },
    {
      name: 'however it lies, a tweeter inside a cone is innocent',
      facts: { ...low, centerLayout: 'coaxial', centerTilt: 0 },
      rules: ['nothing-lost-as-it-stands'],
    },
    {
      name: 'a wedge makes it clearer, noise and pans are duller',
      facts: { testTilt: 'clearer', testNoiseEach: 'duller', toneAcrossPan: 'duller' },
      rules: ['clearer-when-tilted', 'noise-duller-in-center', 'pan-duller-in-center'],
    },
    {
      name: 'worse at the end only, or bad on its axis: not a matter of tilt',
      facts: { testSitMiddle: 'clear-in-middle', testNearCenter: 'still-bad' },
      rules: ['only-at-the-end-seats', 'bad-on-its-axis-too'],
    },
  ],
  silent: [
    {
      name: 'what is lost as it stands is no innocence',
      facts: { ...low, ...upright, centerOrientation: 'level', centerTilt: 0 },
      rules: ['nothing-lost-as-it-stands'],
    },
    {
      name: 'the same standing and slouching, and at every seat',
      facts: { testPosture: 'same', troubleSeats: 'everywhere' },
      rules: ['changes-with-posture', 'only-off-the-middle'],
    },
    {
      name: 'what moves to the left loudspeaker with the channel is neither the box nor its place',
      facts: { testSwapAtAmplifier: 'moves-left' },
      rules: ['stays-in-its-place'],
    },
    {
      name: 'what is gone from both after touching the wires is no place',
      facts: { testSwapAtAmplifier: 'gone' },
      rules: ['stays-in-its-place'],
    },
    {
      name: 'a lying pair with the tweeter in line does not mind eighteen degrees up',
      facts: {
        ...low,
        centerLayout: 'mid-tweeter-mid',
        centerDriverSpacing: 0.26,
        centerCrossover: 2500,
        centerOrientation: 'level',
        centerTilt: 0,
      },
      rules: ['dip-above-or-below-axis', 'loses-something'],
    },
    {
      name: 'tilted to the ears even an upright two-way is innocent',
      facts: { ...low, ...upright, centerOrientation: 'level', centerTilt: 18 },
      rules: ['dip-above-or-below-axis', 'loses-something'],
    },
    {
      name: 'a tweeter inside a cone forgives the angle',
      facts: { ...low, centerLayout: 'coaxial', centerOrientation: 'level', centerTilt: 0 },
      rules: ['dip-above-or-below-axis', 'loses-something'],
    },
    {
      name: 'no change with a wedge, nothing duller, the same along the row, good close up',
      facts: {
        testTilt: 'same',
        testNoiseEach: 'alike',
        toneAcrossPan: 'no-change',
        testSitMiddle: 'same-everywhere',
        testNearCenter: 'good-near',
      },
      rules: [
        'clearer-when-tilted',
        'noise-duller-in-center',
        'pan-duller-in-center',
        'only-at-the-end-seats',
        'bad-on-its-axis-too',
      ],
    },
  ],
  cannotTell: [
    {
      name: 'that it lies as usual is taken for granted, not seen',
      facts: { ...low, ...upright, centerTilt: 18 },
      rule: 'nothing-lost-as-it-stands',
      asks: ['centerOrientation'],
    },
    { name: 'nobody stood up', facts: {}, rule: 'changes-with-posture', asks: ['testPosture'] },
    { name: 'seats not told', facts: {}, rule: 'only-off-the-middle', asks: ['troubleSeats'] },
    {
      name: 'left and center not swapped',
      facts: {},
      rule: 'stays-in-its-place',
      asks: ['testSwapAtAmplifier'],
    },
    {
      name: 'without its height the angle to the ears is open',
      facts: upright,
      rule: 'dip-above-or-below-axis',
      asks: ['centerTweeterHeight'],
    },
    {
      name: 'the same for what is lost at all',
      facts: upright,
      rule: 'loses-something',
      asks: ['centerTweeterHeight'],
    },
    { name: 'nobody has wedged it', facts: {}, rule: 'clearer-when-tilted', asks: ['testTilt'] },
    { name: 'no noise compared', facts: {}, rule: 'noise-duller-in-center', asks: ['testNoiseEach'] },
    { name: 'no pan listened to', facts: {}, rule: 'pan-duller-in-center', asks: ['toneAcrossPan'] },
    {
      name: 'middle and end not compared',
      facts: {},
      rule: 'only-at-the-end-seats',
      asks: ['testSitMiddle'],
    },
    { name: 'nobody close up', facts: {}, rule: 'bad-on-its-axis-too', asks: ['testNearCenter'] },
  ],
  boundary: [
    {
      name: 'below a decibel and a half nobody notices',
      rule: 'loses-something',
      derived: { aimDipDb: 1.5 },
      at: 'yes',
      below: 'no',
    },
    {
      name: 'four decibels off the axis are clear',
      rule: 'dip-above-or-below-axis',
      derived: { aimDipDb: 4 },
      at: 'yes',
      below: 'no',
    },
  ],
});
