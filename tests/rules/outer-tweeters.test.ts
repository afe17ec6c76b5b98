import { outerTweeters } from '../../src/rules/causes/outer-tweeters.js';
import { testCause } from '../support/testCause.js';

const outer = {
  centerLayout: 'tweeter-mid-mid-tweeter',
  centerOrientation: 'level',
  centerDriverSpacing: 0.18,
  centerTweeterSpacing: 0.46,
  centerCrossover: 2500,
} as const;
const sofa = { seating: 'one-row', seatCount: 3, seatSpacing: 0.6, seatDistance: 3 } as const;
const kind = { layoutKind: 'outer-tweeters' } as const;

testCause(outerTweeters, {
  firstPosts: [
    { complaints: ['swishes-with-head-movement'], facts: { centerLayout: 'tweeter-mid-mid-tweeter' } },
    { complaints: ['harsh'], facts: { centerLayout: 'tweeter-mid-tweeter', testCoverTweeter: 'steadier' } },
  ],
  fires: [
    {
      name: 'two whole boxes side by side cost words at the end of a near sofa',
      facts: {
        centerLayout: 'paired-boxes',
        centerDriverSpacing: 0.45,
        centerTweeterSpacing: 0.45,
        seatDistance: 2.4,
        seatCount: 3,
        seatSpacing: 0.65,
      },
      rules: ['speech-lost-at-worst-seat'],
    },
    {
      name: 'what stays with the box when the channels are swapped is the box or its place',
      facts: { centerLayout: 'tweeter-mid-mid-tweeter', testSwapAtAmplifier: 'stays' },
      rules: ['stays-in-its-place'],
    },
    {
      name: 'who tells how far its tweeters are apart has told that it has two',
      facts: { centerTweeterSpacing: 0.46, testCoverTweeter: 'steadier' },
      rules: ['steadier-with-one-covered'],
    },
    {
      name: 'tweeters 46 cm apart fail the ends of a sofa even from 3 m',
      facts: { ...outer, ...sofa },
      rules: ['treble-dip-at-worst-seat'],
    },
    {
      name: 'tweeters 70 cm apart fail the best seat from 2 m as soon as the head moves',
      facts: { ...outer, ...sofa, centerTweeterSpacing: 0.7, seatDistance: 2 },
      rules: ['treble-dip-at-main-seat'],
    },
    {
      name: 'two boxes lying side by side do the same',
      facts: {
        centerLayout: 'paired-boxes',
        centerOrientation: 'level',
        centerDriverSpacing: 0.3,
        centerTweeterSpacing: 0.6,
        centerCrossover: 2500,
        ...sofa,
      },
      rules: ['treble-dip-at-worst-seat'],
    },
    {
      name: 'covering one tweeter steadies the treble, noise is phasey, the end seat is worse',
      facts: {
        ...outer,
        testCoverTweeter: 'steadier',
        testNoiseEach: 'phasey',
        testSitMiddle: 'clear-in-middle',
        troubleSeats: 'off-middle',
      },
      rules: [
        'steadier-with-one-covered',
        'hard-to-place-noise',
        'worse-at-the-end',
        'trouble-off-the-middle',
      ],
    },
    {
      name: 'good close up speaks against two sources, which are plainest from near',
      facts: { ...outer, testNearCenter: 'good-near' },
      rules: ['good-close-up'],
    },
    {
      name: 'trouble at a single seat off the middle points the same way',
      facts: { ...outer, troubleSeats: 'one-seat' },
      rules: ['trouble-off-the-middle'],
    },
  ],
  silent: [
    {
      name: 'on the line between them no word is lost',
      facts: {
        centerLayout: 'paired-boxes',
        centerDriverSpacing: 0.45,
        centerTweeterSpacing: 0.45,
        seatDistance: 3,
        seating: 'single-seat',
        mainSeatOffset: 0,
      },
      rules: ['speech-lost-at-worst-seat'],
    },
    {
      name: 'what moves to the left loudspeaker with the channel is neither the box nor its place',
      facts: { centerLayout: 'tweeter-mid-mid-tweeter', testSwapAtAmplifier: 'moves-left' },
      rules: ['stays-in-its-place'],
    },
    {
      name: 'what is gone from both after touching the wires is no place',
      facts: { centerLayout: 'tweeter-mid-mid-tweeter', testSwapAtAmplifier: 'gone' },
      rules: ['stays-in-its-place'],
    },
    {
      name: 'stood on its end the row hears both tweeters equally far away',
      facts: { ...outer, ...sofa, centerOrientation: 'upright' },
      rules: ['treble-dip-at-worst-seat', 'treble-dip-at-main-seat'],
    },
    {
      name: 'two cones with a single tweeter between them are another matter',
      facts: { ...outer, centerLayout: 'mid-tweeter-mid', ...sofa, testCoverTweeter: 'steadier' },
      rules: ['treble-dip-at-worst-seat', 'treble-dip-at-main-seat', 'steadier-with-one-covered'],
    },
    {
      name: 'no change with one covered, noise alike, same at every seat, wrong close up',
      facts: {
        ...outer,
        testCoverTweeter: 'same',
        testNoiseEach: 'alike',
        testSitMiddle: 'same-everywhere',
        troubleSeats: 'everywhere',
        testNearCenter: 'still-bad',
      },
      rules: [
        'steadier-with-one-covered',
        'hard-to-place-noise',
        'worse-at-the-end',
        'trouble-off-the-middle',
        'good-close-up',
      ],
    },
    {
      name: 'trouble in the middle alone is not trouble off the middle',
      facts: { ...outer, troubleSeats: 'middle-only' },
      rules: ['trouble-off-the-middle'],
    },
  ],
  cannotTell: [
    {
      name: 'layout told by its tweeters, its kind not',
      facts: { centerTweeterSpacing: 0.45 },
      rule: 'speech-lost-at-worst-seat',
      asks: ['centerLayout'],
    },
    {
      name: 'left and center not swapped',
      facts: { centerLayout: 'tweeter-mid-mid-tweeter' },
      rule: 'stays-in-its-place',
      asks: ['testSwapAtAmplifier'],
    },
    {
      name: 'without the layout the treble cannot be computed',
      facts: sofa,
      rule: 'treble-dip-at-worst-seat',
      asks: ['centerLayout'],
    },
    {
      name: 'nor at the main seat',
      facts: sofa,
      rule: 'treble-dip-at-main-seat',
      asks: ['centerLayout'],
    },
    {
      name: 'nobody has covered a tweeter',
      facts: outer,
      rule: 'steadier-with-one-covered',
      asks: ['testCoverTweeter'],
    },
    { name: 'no noise compared', facts: outer, rule: 'hard-to-place-noise', asks: ['testNoiseEach'] },
    {
      name: 'middle and end not compared',
      facts: outer,
      rule: 'worse-at-the-end',
      asks: ['testSitMiddle'],
    },
    {
      name: 'seats with the trouble not told',
      facts: outer,
      rule: 'trouble-off-the-middle',
      asks: ['troubleSeats'],
    },
    { name: 'nobody has listened close up', facts: outer, rule: 'good-close-up', asks: ['testNearCenter'] },
  ],
  boundary: [
    {
      name: 'two decibels of speech are clear',
      rule: 'speech-lost-at-worst-seat',
      facts: { centerLayout: 'paired-boxes' },
      derived: { layoutSpeechLossDb: 2 },
      at: 'yes',
      below: 'no',
    },
    {
      name: 'a treble hole of 4 dB is clear',
      rule: 'treble-dip-at-worst-seat',
      derived: { tweeterDipDb: 4, ...kind },
      at: 'yes',
      below: 'no',
    },
    {
      name: 'at the main seat as well',
      rule: 'treble-dip-at-main-seat',
      derived: { tweeterDipMainDb: 4, ...kind },
      at: 'yes',
      below: 'no',
    },
  ],
});
