import { offMidline } from '../../src/rules/causes/off-midline.js';
import { testCause } from '../support/testCause.js';

testCause(offMidline, {
  firstPosts: [{ complaints: ['voice-pulled-aside'], facts: { centerSideOffset: '0.4 m' } }],
  fires: [
    {
      name: 'a wall beside one main only leans the front to its side',
      facts: { sideWalls: 'one-side' },
      rules: ['wall-on-one-side'],
    },
    {
      name: 'what stays with the box when the channels are swapped is the box or its place',
      facts: { testSwapAtAmplifier: 'stays' },
      rules: ['stays-in-its-place'],
    },
    {
      name: 'half a meter to the side at 3 m is nine degrees: voice and picture part company',
      facts: { centerSideOffset: 0.5, seatDistance: 3 },
      rules: ['seen-from-the-seat', 'off-by-something'],
    },
    {
      name: 'a voice to one side that comes back to the middle without the center',
      facts: { voiceDirection: 'aside', testPhantom: 'gone' },
      rules: ['voice-to-one-side', 'straight-without-center'],
    },
    {
      name: 'heard at the picture, or gone with the person: not the place of the box',
      facts: { voiceDirection: 'picture', testSwapSeats: 'goes-with-person' },
      rules: ['voice-at-the-picture', 'goes-with-the-person'],
    },
    {
      name: 'seats exchanged, and nobody hears it any more: not the place of the box',
      facts: { testSwapSeats: 'no-one' },
      rules: ['goes-with-the-person'],
    },
  ],
  silent: [
    {
      name: 'walls alike on both sides lean nothing',
      facts: { sideWalls: 'both' },
      rules: ['wall-on-one-side'],
    },
    {
      name: 'right under a picture that hangs off the middle a center is in its place',
      facts: { centerSideOffset: 0.5, pictureSideOffset: 0.5, seatDistance: 3 },
      rules: ['seen-from-the-seat'],
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
      name: 'ten centimeters are under two degrees',
      facts: { centerSideOffset: 0.1, seatDistance: 3 },
      rules: ['seen-from-the-seat', 'off-by-something'],
    },
    {
      name: 'distance forgives: thirty centimeters are mild from 4 m',
      facts: { centerSideOffset: -0.3, seatDistance: 4 },
      rules: ['seen-from-the-seat'],
    },
    {
      name: 'a pull that stays without the center comes from the mains',
      facts: { testPhantom: 'same', voiceDirection: 'low', testSwapSeats: 'stays-with-seat' },
      rules: ['straight-without-center', 'voice-to-one-side', 'voice-at-the-picture', 'goes-with-the-person'],
    },
  ],
  cannotTell: [
    { name: 'walls not told', facts: {}, rule: 'wall-on-one-side', asks: ['sideWalls'] },
    {
      name: 'left and center not swapped',
      facts: {},
      rule: 'stays-in-its-place',
      asks: ['testSwapAtAmplifier'],
    },
    {
      name: 'nobody has told where the center stands sideways',
      facts: { seatDistance: 3 },
      rule: 'seen-from-the-seat',
      asks: ['centerSideOffset'],
    },
    {
      name: 'nobody has pointed at the voice',
      facts: {},
      rule: 'voice-to-one-side',
      asks: ['voiceDirection'],
    },
    { name: 'nor at the picture', facts: {}, rule: 'voice-at-the-picture', asks: ['voiceDirection'] },
    { name: 'center not set to none yet', facts: {}, rule: 'straight-without-center', asks: ['testPhantom'] },
    { name: 'no seats exchanged', facts: {}, rule: 'goes-with-the-person', asks: ['testSwapSeats'] },
    {
      name: 'a system without a center has no center off the middle',
      facts: { centerCount: 'none' },
      rule: 'seen-from-the-seat',
      asks: [],
    },
    {
      name: 'nor one that could be near the middle',
      facts: { centerCount: 'none' },
      rule: 'off-by-something',
      asks: [],
    },
  ],
  boundary: [
    {
      name: 'below three degrees nobody notices',
      rule: 'off-by-something',
      derived: { centerOffsetDeg: 3 },
      at: 'yes',
      below: 'no',
    },
    {
      name: 'six degrees are clear',
      rule: 'seen-from-the-seat',
      derived: { centerOffsetDeg: 6 },
      at: 'yes',
      below: 'no',
    },
  ],
});
