import { correctionMismatch } from '../../src/rules/causes/correction-mismatch.js';
import { testCause } from '../support/testCause.js';

const on = { equalization: 'automatic' } as const;
const evenMains = {
  responseLeft: 'even.txt',
  responseRight: 'even.txt',
  responseLeftBefore: 'even.txt',
  responseRightBefore: 'even.txt',
} as const;
const OTHERS = [
  'better-bypassed',
  'reaches-only-some',
  'noise-differs',
  'tone-steps-across',
  'measured-elsewhere',
  'began-with-calibration',
  'follows-the-channel',
] as const;
const guilty = {
  testEqBypass: 'better',
  equalizationReach: 'center-only',
  testNoiseEach: 'brighter',
  toneAcrossPan: 'brighter',
  alignmentBy: 'automatic',
  calibrationSpot: 'elsewhere',
  lastChange: 'calibration',
  testSwapAtAmplifier: 'moves-left',
} as const;

testCause(correctionMismatch, {
  firstPosts: [
    { complaints: ['dull'], facts: { testEqBypass: 'better' } },
    {
      complaints: ['voice-changes-tone'],
      facts: { equalization: 'automatic', equalizationReach: 'center-only' },
    },
  ],
  fires: [
    {
      name: 'bypassed with noise from a file the match is no better',
      facts: { equalization: 'automatic', testNoiseEach: 'alike', noiseFrom: 'file', testEqBypass: 'same' },
      rules: ['no-better-bypassed', 'alike-through-it'],
    },
    {
      name: 'a voice boost bends the tone with every equalizer off',
      facts: { equalization: 'none', voiceBoost: 'on', toneAcrossPan: 'brighter' },
      rules: ['is-on', 'tone-steps-across'],
    },
    {
      name: 'a center that matched before and has a peak now was bent by the equalization',
      facts: { ...on, ...evenMains, responseCenter: 'peak-at-1k.txt', responseCenterBefore: 'even.txt' },
      rules: ['made-it-worse'],
    },
    {
      name: 'better when bypassed, reaching only the center, measured on a table: the equalization made it',
      facts: { ...on, ...guilty },
      rules: [...OTHERS, 'is-on'],
    },
    {
      name: 'a bypass that was tried proves that there is something to bypass',
      facts: { testEqBypass: 'better' },
      rules: ['better-bypassed'],
    },
    {
      name: 'filters on the mains alone part the channels as well',
      facts: { equalization: 'automatic', equalizationReach: 'mains-only' },
      rules: ['reaches-only-some'],
    },
    {
      name: 'duller noise from the center with filters at work',
      facts: { equalization: 'automatic', testNoiseEach: 'duller' },
      rules: ['noise-differs'],
    },
    {
      name: 'thinner noise from the center with filters at work',
      facts: { equalization: 'automatic', testNoiseEach: 'thin' },
      rules: ['noise-differs'],
    },
    {
      name: 'filters made before something was moved were made for another place',
      facts: { equalization: 'automatic', alignmentBy: 'automatic', calibrationSpot: 'changed-since' },
      rules: ['measured-elsewhere'],
    },
  ],
  silent: [
    {
      name: 'the noise of the receiver passes by the correction, so that alike and same prove nothing',
      facts: {
        equalization: 'automatic',
        testNoiseEach: 'alike',
        noiseFrom: 'receiver',
        testEqBypass: 'same',
      },
      rules: ['no-better-bypassed', 'alike-through-it'],
    },
    {
      name: 'a mismatch that was larger before is not made by the equalization',
      facts: {
        ...on,
        ...evenMains,
        responseCenter: 'nearly-even.txt',
        responseCenterBefore: 'peak-at-1k.txt',
      },
      rules: ['made-it-worse'],
    },
    {
      name: 'an old mismatch that the equalization left as it was is the box',
      facts: { ...on, ...evenMains, responseCenter: 'dull.txt', responseCenterBefore: 'dull.txt' },
      rules: ['made-it-worse'],
    },
    {
      name: 'no worse with it, all three alike and measured at the seat: innocent',
      facts: {
        ...on,
        testEqBypass: 'worse',
        equalizationReach: 'all-alike',
        testNoiseEach: 'alike',
        toneAcrossPan: 'no-change',
        alignmentBy: 'automatic',
        calibrationSpot: 'main-seat',
        lastChange: 'furniture',
        testSwapAtAmplifier: 'stays',
      },
      rules: OTHERS,
    },
    {
      name: 'without equalization there is nothing to mismatch',
      facts: { ...guilty, equalization: 'none' },
      rules: [
        'is-on',
        'noise-differs',
        'tone-steps-across',
        'measured-elsewhere',
        'began-with-calibration',
        'follows-the-channel',
      ],
    },
  ],
  cannotTell: [
    {
      name: 'where the noise came from is not told',
      facts: { equalization: 'automatic', testNoiseEach: 'alike', testEqBypass: 'same' },
      rule: 'no-better-bypassed',
      asks: ['noiseFrom'],
    },
    {
      name: 'nor whether it passed through',
      facts: { equalization: 'automatic', testNoiseEach: 'alike' },
      rule: 'alike-through-it',
      asks: ['noiseFrom'],
    },
    {
      name: 'without the curves before there is no before against after',
      facts: { ...on, responseLeft: 'even.txt', responseRight: 'even.txt', responseCenter: 'dull.txt' },
      rule: 'made-it-worse',
      asks: ['responseLeftBefore', 'responseCenterBefore', 'responseRightBefore'],
    },
    { name: 'state unknown', facts: {}, rule: 'is-on', asks: ['equalization'] },
    { name: 'not bypassed', facts: on, rule: 'better-bypassed', asks: ['testEqBypass'] },
    { name: 'reach unknown', facts: on, rule: 'reaches-only-some', asks: ['equalizationReach'] },
    { name: 'no noise yet', facts: on, rule: 'noise-differs', asks: ['testNoiseEach'] },
    { name: 'no pan heard', facts: on, rule: 'tone-steps-across', asks: ['toneAcrossPan'] },
    {
      name: 'microphone spot forgotten',
      facts: { ...on, alignmentBy: 'automatic' },
      rule: 'measured-elsewhere',
      asks: ['calibrationSpot'],
    },
    { name: 'last change unknown', facts: on, rule: 'began-with-calibration', asks: ['lastChange'] },
    { name: 'not swapped', facts: on, rule: 'follows-the-channel', asks: ['testSwapAtAmplifier'] },
  ],
  boundary: [
    {
      name: '3 dB made worse in the worst band is the fair coin',
      rule: 'made-it-worse',
      facts: on,
      derived: { eqDamageDb: 3 },
      at: 'yes',
      below: 'no',
    },
  ],
});
