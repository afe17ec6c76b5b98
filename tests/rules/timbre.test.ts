import { timbre } from '../../src/rules/causes/timbre.js';
import { testCause } from '../support/testCause.js';

const mains = { responseLeft: 'even.txt', responseRight: 'even.txt' } as const;
const foreign = {
  centerFamily: 'unrelated',
  mainsKind: 'panel-or-horn',
  centerSizeAgainstMains: 'smaller',
} as const;

testCause(timbre, {
  firstPosts: [
    { complaints: ['voice-changes-tone'], facts: { centerFamily: 'unrelated' } },
    {
      complaints: ['voice-changes-tone'],
      facts: { testNoiseEach: 'thin', centerFamily: 'unrelated', equalization: 'none' },
    },
  ],
  fires: [
    {
      name: 'what differs beside a main too is the box or its settings',
      facts: { testBesideMain: 'differs' },
      rules: ['unlike-beside-a-main'],
    },
    {
      name: 'a small center of another maker beside panels cannot have their tone',
      facts: foreign,
      rules: ['not-the-same-box', 'other-family', 'other-way-of-radiating', 'much-smaller'],
    },
    {
      name: 'a broad peak of the center against even mains is a difference of tone',
      facts: { ...mains, responseCenter: 'peak-at-1k.txt' },
      rules: ['measured-difference'],
    },
    {
      name: 'a recording that shows the center 6 dB short of presence is a difference of tone',
      facts: { toneMeasuredDb: -6, toneMeasuredHz: 3150 },
      rules: ['recording-shows-tone'],
    },
    {
      name: 'noise and pans that change, a main that sounds right there, and trouble that stays with the box blame the box',
      facts: {
        toneAcrossPan: 'thinner',
        testNoiseEach: 'thin',
        testMainInPlace: 'right',
        testSwapAtAmplifier: 'stays',
        testSwapAtLoudspeakers: 'follows-box',
        testNearCenter: 'still-bad',
      },
      rules: [
        'tone-steps-across',
        'noise-differs',
        'main-sounds-right-there',
        'stays-with-the-box',
        'goes-with-the-box',
        'still-there-near-by',
      ],
    },
    {
      name: 'a brighter center is as much another tone as a duller one',
      facts: { testNoiseEach: 'brighter' },
      rules: ['noise-differs'],
    },
    {
      name: 'near by it gets better, but the tone stays another',
      facts: { testNearCenter: 'better' },
      rules: ['still-there-near-by'],
    },
  ],
  silent: [
    {
      name: 'horn mains with the matching horn center spread sound alike',
      facts: { mainsKind: 'panel-or-horn', centerFamily: 'same-series', testBesideMain: 'alike' },
      rules: ['other-way-of-radiating', 'unlike-beside-a-main'],
    },
    {
      name: 'noise that is softer and of the same tone shows no other family',
      facts: { testNoiseEach: 'softer' },
      rules: ['noise-differs'],
    },
    {
      name: 'an identical box is innocent of tone: its place or its settings are not',
      facts: { centerFamily: 'identical-box' },
      rules: ['not-the-same-box', 'other-family'],
    },
    {
      name: 'the center of the same series beside common boxes makes a gross difference unlikely',
      facts: { centerFamily: 'same-series', mainsKind: 'tower', centerSizeAgainstMains: 'similar' },
      rules: ['other-family', 'other-way-of-radiating', 'much-smaller'],
    },
    {
      name: 'a firmer voice with a little less bass is no fault while noise is alike in all three',
      facts: { testNoiseEach: 'alike', toneAcrossPan: 'no-change' },
      rules: ['noise-differs', 'tone-steps-across'],
    },
    {
      name: 'curves within a decibel match',
      facts: { ...mains, responseCenter: 'nearly-even.txt' },
      rules: ['measured-difference'],
    },
    {
      name: 'what a recording shows within a decibel is alike',
      facts: { toneMeasuredDb: 1, toneMeasuredHz: 500 },
      rules: ['recording-shows-tone'],
    },
    {
      name: 'a main that sounds as wrong there blames the place',
      facts: {
        testMainInPlace: 'wrong',
        testSwapAtAmplifier: 'moves-left',
        testSwapAtLoudspeakers: 'stays-with-cable',
        testNearCenter: 'good-near',
      },
      rules: ['main-sounds-right-there', 'stays-with-the-box', 'goes-with-the-box', 'still-there-near-by'],
    },
  ],
  cannotTell: [
    { name: 'not stood beside a main', facts: {}, rule: 'unlike-beside-a-main', asks: ['testBesideMain'] },
    { name: 'family unknown', facts: {}, rule: 'not-the-same-box', asks: ['centerFamily'] },
    { name: 'series unknown', facts: {}, rule: 'other-family', asks: ['centerFamily'] },
    {
      name: 'type of the mains unknown',
      facts: {},
      rule: 'other-way-of-radiating',
      asks: ['mainsKind', 'centerFamily'],
    },
    { name: 'sizes not compared', facts: {}, rule: 'much-smaller', asks: ['centerSizeAgainstMains'] },
    {
      name: 'without a curve of the center there is no measured difference',
      facts: mains,
      rule: 'measured-difference',
      asks: ['responseCenter'],
    },
    {
      name: 'no recording compared the tone',
      facts: {},
      rule: 'recording-shows-tone',
      asks: ['toneMeasuredDb', 'toneMeasuredHz'],
    },
    { name: 'no pan heard', facts: {}, rule: 'tone-steps-across', asks: ['toneAcrossPan'] },
    { name: 'no noise yet', facts: {}, rule: 'noise-differs', asks: ['testNoiseEach'] },
    { name: 'no main tried there', facts: {}, rule: 'main-sounds-right-there', asks: ['testMainInPlace'] },
    { name: 'not swapped', facts: {}, rule: 'stays-with-the-box', asks: ['testSwapAtAmplifier'] },
    { name: 'boxes not swapped', facts: {}, rule: 'goes-with-the-box', asks: ['testSwapAtLoudspeakers'] },
    { name: 'not heard near by', facts: {}, rule: 'still-there-near-by', asks: ['testNearCenter'] },
  ],
  boundary: [
    {
      name: '3 dB in the worst band of a recording is the fair coin',
      rule: 'recording-shows-tone',
      derived: { toneRecordedDb: 3 },
      at: 'yes',
      below: 'no',
    },
    {
      name: '3 dB in the band that differs most is the fair coin',
      rule: 'measured-difference',
      derived: { toneWorstBandDb: 3 },
      at: 'yes',
      below: 'no',
    },
  ],
});
