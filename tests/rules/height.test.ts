import { height } from '../../src/rules/causes/height.js';
import { testCause } from '../support/testCause.js';

const room = { seatDistance: 2.5, earHeight: 1.05, mainsTweeterHeight: 1, mainsBase: 2.6 } as const;
const film = { playedContent: 'multichannel-film', displayMiddleHeight: 1.1 } as const;

testCause(height, {
  firstPosts: [
    { complaints: ['voice-low-or-high'], facts: { centerTweeterHeight: '0.45 m', seatDistance: '2.2 m' } },
    {
      complaints: ['voice-low-or-high'],
      facts: { centerTweeterHeight: '1.9 m', displayMiddleHeight: '1.1 m' },
    },
  ],
  fires: [
    {
      name: 'with the center set to none the voice comes up',
      facts: { testPhantom: 'gone' },
      rules: ['gone-without-center'],
    },
    {
      name: 'what stays with the box when the channels are swapped is the box or its place',
      facts: { testSwapAtAmplifier: 'stays' },
      rules: ['stays-in-its-place'],
    },
    {
      name: 'a center on the lowest shelf, seen from 2.5 m, is far from mains and picture',
      facts: { ...room, ...film, centerTweeterHeight: 0.3 },
      rules: ['apart-in-height', 'apart-from-the-mains', 'apart-from-the-picture'],
    },
    {
      name: 'a picture high on the wall tears the voice off even beside mains of the same height',
      facts: { ...room, ...film, displayMiddleHeight: 1.8, centerTweeterHeight: 0.95 },
      rules: ['apart-in-height', 'apart-from-the-picture'],
    },
    {
      name: 'heard from below with eyes closed, better when lifted',
      facts: { voiceDirection: 'low', testLift: 'improves' },
      rules: ['voice-from-below-or-above', 'better-when-lifted'],
    },
    {
      name: 'a voice heard at the picture is high enough whatever the tape says',
      facts: { voiceDirection: 'picture' },
      rules: ['voice-at-the-picture'],
    },
  ],
  silent: [
    {
      name: 'a voice that stays low without the center does not come from it',
      facts: { testPhantom: 'same' },
      rules: ['gone-without-center'],
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
      name: 'distance forgives: half a meter low is mild from 4 m',
      facts: { ...room, ...film, seatDistance: 4, centerTweeterHeight: 0.55 },
      rules: ['apart-in-height', 'apart-from-the-mains', 'apart-from-the-picture'],
    },
    {
      name: 'music alone has no picture to miss',
      facts: {
        ...room,
        playedContent: 'two-channel-music',
        displayMiddleHeight: 1.8,
        centerTweeterHeight: 0.95,
      },
      rules: ['apart-in-height', 'apart-from-the-picture'],
    },
    {
      name: 'a change of tone alone when lifted is the floor, not the height',
      facts: { testLift: 'tone-only', voiceDirection: 'center-box' },
      rules: ['better-when-lifted', 'voice-from-below-or-above', 'voice-at-the-picture'],
    },
  ],
  cannotTell: [
    { name: 'center not set to none', facts: {}, rule: 'gone-without-center', asks: ['testPhantom'] },
    {
      name: 'left and center not swapped',
      facts: {},
      rule: 'stays-in-its-place',
      asks: ['testSwapAtAmplifier'],
    },
    {
      name: 'the height of the center is not told',
      facts: { ...room, ...film },
      rule: 'apart-in-height',
      asks: ['centerTweeterHeight'],
    },
    {
      name: 'nor can it be held against the mains',
      facts: { ...room, ...film },
      rule: 'apart-from-the-mains',
      asks: ['centerTweeterHeight'],
    },
    {
      name: 'what is played decides whether there is a picture to compare with',
      facts: { ...room, centerTweeterHeight: 0.5, displayMiddleHeight: 1.1 },
      rule: 'apart-from-the-picture',
      asks: ['playedContent'],
    },
    {
      name: 'nobody has pointed at the voice',
      facts: {},
      rule: 'voice-from-below-or-above',
      asks: ['voiceDirection'],
    },
    {
      name: 'nobody has pointed at the voice, so it cannot be at the picture',
      facts: {},
      rule: 'voice-at-the-picture',
      asks: ['voiceDirection'],
    },
    { name: 'nobody has lifted it', facts: {}, rule: 'better-when-lifted', asks: ['testLift'] },
  ],
  boundary: [
    {
      name: 'ten degrees from either are clear',
      rule: 'apart-in-height',
      derived: { heightApartDeg: 10 },
      at: 'yes',
      below: 'no',
    },
    {
      name: 'ten degrees from the mains are clear',
      rule: 'apart-from-the-mains',
      derived: { heightMismatchDeg: 10 },
      at: 'yes',
      below: 'no',
    },
    {
      name: 'ten degrees from the picture are clear',
      rule: 'apart-from-the-picture',
      derived: { pictureMismatchDeg: 10, playedContent: 'television' },
      at: 'yes',
      below: 'no',
    },
  ],
});
