import { roomAcoustics } from '../../src/rules/causes/room-acoustics.js';
import { testCause } from '../support/testCause.js';

testCause(roomAcoustics, {
  firstPosts: [{ complaints: ['voice-unclear-everywhere'], facts: { backgroundNoise: 'loud' } }],
  fires: [
    {
      name: 'a dry room clears the ring',
      facts: { reverberationTime: 350 },
      rules: ['dry'],
    },
    {
      name: 'a room that is quiet as well drowns no voice',
      facts: { reverberationTime: 350, backgroundNoise: 'quiet' },
      rules: ['dry', 'dry-and-quiet'],
    },
    { name: 'a clap that flutters colors s and t', facts: { clapRing: 'flutter' }, rules: ['flutters'] },
    {
      name: 'far away a room that rings a little long drowns what it leaves clear close by',
      facts: { reverberationTime: 700, seatDistance: 7 },
      rules: ['voice-comes-late'],
    },
    {
      name: 'a recording shows more late sound than early',
      facts: { clarityMeasuredDb: -2 },
      rules: ['recording-shows-blur'],
    },
    {
      name: 'a room that rings for more than a second drowns speech',
      facts: { reverberationTime: 1200 },
      rules: ['voice-comes-late'],
    },
    {
      name: 'a clearly noisy room covers words at any level',
      facts: { backgroundNoise: 'loud' },
      rules: ['noise-covers-speech'],
    },
    {
      name: 'some hum is enough for those who listen softly',
      facts: { backgroundNoise: 'some', listeningLevel: 'soft' },
      rules: ['noise-covers-speech'],
    },
    {
      name: 'a voice good near by, bad at every seat and through any loudspeaker, is the room',
      facts: { testNearCenter: 'good-near', troubleSeats: 'everywhere', testPhantom: 'same' },
      rules: ['good-near-by', 'every-seat-alike', 'stays-without-center'],
    },
    {
      name: 'a voice as bad near by clears the room',
      facts: { testNearCenter: 'still-bad' },
      rules: ['as-bad-near-by'],
    },
  ],
  silent: [
    {
      name: 'a dry room clears no fan',
      facts: { reverberationTime: 350, backgroundNoise: 'loud' },
      rules: ['dry-and-quiet'],
    },
    { name: 'a room that rings is not dry', facts: { reverberationTime: 1200 }, rules: ['dry'] },
    {
      name: 'close to the loudspeaker the direct voice outweighs the same ring',
      facts: { reverberationTime: 700, seatDistance: 1.8, clapRing: 'some' },
      rules: ['voice-comes-late', 'flutters'],
    },
    { name: 'a flutter is no long ring', facts: { clapRing: 'flutter' }, rules: ['voice-comes-late'] },
    {
      name: 'a recording shows a clear center',
      facts: { clarityMeasuredDb: 8 },
      rules: ['recording-shows-blur'],
    },
    {
      name: 'a dry and quiet room is innocent',
      facts: { reverberationTime: 350, backgroundNoise: 'quiet' },
      rules: ['voice-comes-late', 'noise-covers-speech'],
    },
    {
      name: 'some hum does not cover loud speech',
      facts: { backgroundNoise: 'some', listeningLevel: 'loud' },
      rules: ['noise-covers-speech'],
    },
    {
      name: 'ringing does not pick the side seats',
      facts: { troubleSeats: 'off-middle', testPhantom: 'gone' },
      rules: ['every-seat-alike', 'stays-without-center'],
    },
    {
      name: 'better but not good near by says neither',
      facts: { testNearCenter: 'better' },
      rules: ['good-near-by', 'as-bad-near-by'],
    },
  ],
  cannotTell: [
    { name: 'nobody clapped, so nothing is dry', facts: {}, rule: 'dry', asks: ['clapRing'] },
    {
      name: 'dry, and of the noise nothing was told',
      facts: { reverberationTime: 350 },
      rule: 'dry-and-quiet',
      asks: ['backgroundNoise', 'listeningLevel'],
    },
    { name: 'nobody clapped', facts: {}, rule: 'flutters', asks: ['clapRing'] },
    {
      name: 'nothing was recorded',
      facts: {},
      rule: 'recording-shows-blur',
      asks: ['clarityMeasuredDb'],
    },
    {
      name: 'a hum is known, the listening level is not',
      facts: { backgroundNoise: 'some' },
      rule: 'noise-covers-speech',
      asks: ['listeningLevel'],
    },
    { name: 'nobody sat near', facts: {}, rule: 'good-near-by', asks: ['testNearCenter'] },
    { name: 'nobody sat near the center', facts: {}, rule: 'as-bad-near-by', asks: ['testNearCenter'] },
    { name: 'seats not told', facts: {}, rule: 'every-seat-alike', asks: ['troubleSeats'] },
    { name: 'center not set to none', facts: {}, rule: 'stays-without-center', asks: ['testPhantom'] },
    {
      name: 'nobody clapped and nobody measured',
      facts: {},
      rule: 'voice-comes-late',
      asks: ['clapRing'],
    },
  ],
  boundary: [
    {
      name: 'speech suffers from the clear grade of ringing on',
      rule: 'voice-comes-late',
      derived: { lateVoicePart: 0.33 },
      at: 'yes',
      below: 'no',
    },
  ],
});
