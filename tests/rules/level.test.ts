import { level } from '../../src/rules/causes/level.js';
import { testCause } from '../support/testCause.js';

const mains = { measuredLeftLevel: 75, measuredRightLevel: 75 } as const;

testCause(level, {
  firstPosts: [
    { complaints: ['voice-too-quiet'], facts: { voiceLoudness: 'softer', triedTrim: 'cured' } },
    {
      complaints: ['voice-too-quiet'],
      facts: { measuredCenterLevel: '69 dB', measuredLeftLevel: '75 dB', measuredRightLevel: '75 dB' },
    },
    { complaints: ['voice-too-loud'], facts: { centerTrim: '6 dB', voiceLoudness: 'louder' } },
  ],
  fires: [
    {
      name: 'a center 4 dB above the mains at the seat is too loud, whatever its trim says',
      facts: { ...mains, measuredCenterLevel: 79, centerTrim: 0 },
      rules: ['level-error'],
    },
    {
      name: 'a center 5 dB below the mains is too soft',
      facts: { ...mains, measuredCenterLevel: 70 },
      rules: ['level-error'],
    },
    {
      name: 'ear, trim, phantom and swap all point to the level of the channel',
      facts: {
        voiceLoudness: 'softer',
        testNoiseEach: 'softer',
        triedTrim: 'cured',
        alignmentBy: 'nobody',
        testPhantom: 'gone',
        testSwapAtAmplifier: 'moves-left',
      },
      rules: [
        'by-ear',
        'noise-differs',
        'noise-softer-or-louder',
        'turning-up-cured',
        'nobody-set-levels',
        'without-center-gone',
        'follows-the-channel',
      ],
    },
    {
      name: 'a microphone on a side table sets levels for the table',
      facts: { alignmentBy: 'automatic', calibrationSpot: 'elsewhere', voiceBoost: 'on' },
      rules: ['levels-set-elsewhere', 'voice-boost'],
    },
    {
      name: 'noise that is louder at the same tone is a level error',
      facts: { testNoiseEach: 'louder' },
      rules: ['noise-softer-or-louder'],
    },
    {
      name: 'too loud a voice is a level error as much as too soft a one',
      facts: { voiceLoudness: 'louder' },
      rules: ['by-ear'],
    },
    {
      name: 'levels set before something was moved are levels set elsewhere',
      facts: { alignmentBy: 'automatic', calibrationSpot: 'changed-since' },
      rules: ['levels-set-elsewhere'],
    },
  ],
  silent: [
    {
      name: 'a center of another tone tells nothing of its level',
      facts: { testNoiseEach: 'duller' },
      rules: ['noise-softer-or-louder'],
    },
    {
      name: 'a trim of 9 dB is no evidence where the levels at the seat are equal',
      facts: { ...mains, measuredCenterLevel: 75.5, centerTrim: 9 },
      rules: ['level-error'],
    },
    {
      name: 'louder but no clearer: level is not what is missing',
      facts: { triedTrim: 'louder' },
      rules: ['turning-up-cured'],
    },
    {
      name: 'a trim never tried says nothing',
      facts: { triedTrim: 'not-tried' },
      rules: ['turning-up-cured'],
    },
    {
      name: 'levels that match by ear, with noise and without the center leave level innocent',
      facts: {
        voiceLoudness: 'equal',
        testNoiseEach: 'alike',
        testPhantom: 'same',
        alignmentBy: 'automatic',
        calibrationSpot: 'main-seat',
        testSwapAtAmplifier: 'stays',
        voiceBoost: 'off',
      },
      rules: [
        'by-ear',
        'noise-differs',
        'without-center-gone',
        'nobody-set-levels',
        'levels-set-elsewhere',
        'follows-the-channel',
        'voice-boost',
      ],
    },
  ],
  cannotTell: [
    {
      name: 'a trim does not tell the level at the seat',
      facts: { ...mains, centerTrim: 6 },
      rule: 'level-error',
      asks: ['measuredCenterLevel'],
    },
    { name: 'not compared by ear', facts: {}, rule: 'by-ear', asks: ['voiceLoudness'] },
    { name: 'no noise yet', facts: {}, rule: 'noise-differs', asks: ['testNoiseEach'] },
    { name: 'no noise stepped', facts: {}, rule: 'noise-softer-or-louder', asks: ['testNoiseEach'] },
    { name: 'trim history unknown', facts: {}, rule: 'turning-up-cured', asks: ['triedTrim'] },
    { name: 'who set it is unknown', facts: {}, rule: 'nobody-set-levels', asks: ['alignmentBy'] },
    {
      name: 'microphone spot forgotten',
      facts: { alignmentBy: 'automatic' },
      rule: 'levels-set-elsewhere',
      asks: ['calibrationSpot'],
    },
    { name: 'phantom not tried', facts: {}, rule: 'without-center-gone', asks: ['testPhantom'] },
    { name: 'not swapped', facts: {}, rule: 'follows-the-channel', asks: ['testSwapAtAmplifier'] },
    { name: 'boost unknown', facts: {}, rule: 'voice-boost', asks: ['voiceBoost'] },
  ],
  boundary: [
    {
      name: '3 dB at the seat is the fair coin',
      rule: 'level-error',
      derived: { levelErrorDb: 3 },
      at: 'yes',
      below: 'no',
    },
  ],
});
