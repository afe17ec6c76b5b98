import { bassManagement } from '../../src/rules/causes/bass-management.js';
import { testCause } from '../support/testCause.js';

const sub = { subwoofer: 'one', centerBassSize: 'small' } as const;
/** Crossed at 80 Hz although the box ends at 90 Hz. */
const atTheLimit = { ...sub, centerBassCrossover: 80, centerLowLimit: 90, centerLowLimitDrop: 3 } as const;

testCause(bassManagement, {
  firstPosts: [
    { complaints: ['boomy'], facts: { centerBassSize: 'large', centerLowLimit: '110 Hz', subwoofer: 'one' } },
    { complaints: ['boomy'], facts: { voiceDirection: 'subwoofer', centerBassCrossover: '200 Hz' } },
  ],
  fires: [
    {
      name: 'a hole measured where center and subwoofer cancel is theirs',
      facts: {
        subwoofer: 'one',
        centerBassSize: 'small',
        centerBassCrossover: 80,
        centerLowLimit: 80,
        centerEnclosure: 'vented',
        highPassSlope: '24',
        subTiming: 'untouched',
        measuredHoleHz: 84,
      },
      rules: ['measured-hole'],
    },
    {
      name: 'a loudness compensation lifts the chest of every voice',
      facts: { loudnessCompensation: 'on' },
      rules: ['loudness-is-on'],
    },
    {
      name: 'a subwoofer that is too loud takes the boom along when it is switched off',
      facts: { subwoofer: 'one', testSubOff: 'gone' },
      rules: ['gone-without-subwoofer'],
    },
    {
      name: 'a small center set to large beside a subwoofer is the textbook case',
      facts: { subwoofer: 'one', centerBassSize: 'large', centerLowLimit: 110 },
      rules: ['large-without-the-bottom'],
    },
    {
      name: 'much smaller than the mains and set to large: its low limit need not be known',
      facts: { subwoofer: 'one', centerBassSize: 'large', centerSizeAgainstMains: 'smaller' },
      rules: ['small-box-set-to-large'],
    },
    {
      name: 'a subwoofer that is fuller with its phase turned works against the center',
      facts: { ...sub, subPolarity: 'fuller-other-way', subTiming: 'untouched' },
      rules: ['fuller-the-other-way', 'never-timed'],
    },
    {
      name: 'a ported box crossed at its limit with 24 dB, subwoofer left as it came, cancels',
      facts: { ...atTheLimit, centerEnclosure: 'vented', highPassSlope: '24', subTiming: 'untouched' },
      rules: ['hole-at-crossover', 'does-not-add-up'],
    },
    {
      name: 'a subwoofer crossed at 180 Hz is heard as a place',
      facts: { ...sub, centerBassCrossover: 180, voiceDirection: 'subwoofer' },
      rules: ['subwoofer-reaches-high', 'voice-from-subwoofer', 'heard-where-it-can-be'],
    },
    {
      name: 'center at 200 Hz beside large mains has another low voice',
      facts: { ...sub, centerBassCrossover: 200, mainsBassCrossover: 0 },
      rules: ['another-low-voice'],
    },
    {
      name: 'a small center set to large leaves the bottom of the voice to nobody',
      facts: { subwoofer: 'one', centerBassSize: 'large', centerLowLimit: 150 },
      rules: ['nobody-plays-the-bottom'],
    },
    {
      name: 'thin noise, thin pans and trouble that goes with the channel',
      facts: { testNoiseEach: 'thin', toneAcrossPan: 'thinner', testSwapAtAmplifier: 'moves-left' },
      rules: ['noise-thin-or-boxy', 'pan-thin-or-boxy', 'follows-the-channel'],
    },
    {
      name: 'trouble that is gone with the channels exchanged hangs on the channel',
      facts: { testSwapAtAmplifier: 'gone' },
      rules: ['follows-the-channel'],
    },
  ],
  silent: [
    {
      name: 'crossed at 60 Hz a subwoofer is heard by its level or its noises, hardly by its place',
      facts: { ...sub, centerBassCrossover: 60, voiceDirection: 'subwoofer' },
      rules: ['heard-where-it-can-be'],
    },
    {
      name: 'a hole in the middle of the voice is not the crossover of the subwoofer',
      facts: {
        subwoofer: 'one',
        centerBassSize: 'small',
        centerBassCrossover: 80,
        centerLowLimit: 80,
        centerEnclosure: 'vented',
        highPassSlope: '24',
        subTiming: 'untouched',
        measuredHoleHz: 500,
      },
      rules: ['measured-hole'],
    },
    { name: 'no compensation, no lift', facts: { loudnessCompensation: 'off' }, rules: ['loudness-is-on'] },
    {
      name: 'without a subwoofer nothing can be switched off',
      facts: { subwoofer: 'none', testSubOff: 'gone' },
      rules: ['gone-without-subwoofer'],
    },
    {
      name: 'a boom that stays without the subwoofer is not its doing',
      facts: { subwoofer: 'one', testSubOff: 'same' },
      rules: ['gone-without-subwoofer'],
    },
    {
      name: 'without a subwoofer nobody else could play the bass of a small box',
      facts: { subwoofer: 'none', centerBassSize: 'large', centerSizeAgainstMains: 'smaller' },
      rules: ['small-box-set-to-large'],
    },
    {
      name: 'a center as large as the mains may be set to large',
      facts: {
        subwoofer: 'one',
        centerBassSize: 'large',
        centerSizeAgainstMains: 'similar',
        centerLowLimit: 60,
      },
      rules: ['small-box-set-to-large', 'large-without-the-bottom'],
    },
    {
      name: 'a subwoofer fullest as it is set, and timed, adds up',
      facts: { ...sub, subPolarity: 'fuller-as-set', subTiming: 'by-ear' },
      rules: ['fuller-the-other-way', 'never-timed'],
    },
    {
      name: 'a crossover at the low limit is harmless with a closed box and 12 dB',
      facts: { ...atTheLimit, centerEnclosure: 'sealed', highPassSlope: '12', subTiming: 'untouched' },
      rules: ['hole-at-crossover', 'does-not-add-up'],
    },
    {
      name: 'a subwoofer timed to the center fills even the hole of a ported box',
      facts: { ...atTheLimit, centerEnclosure: 'vented', highPassSlope: '24', subTiming: 'by-ear' },
      rules: ['hole-at-crossover'],
    },
    {
      name: 'common crossovers near 80 Hz, alike in center and mains',
      facts: { ...sub, centerBassCrossover: 80, mainsBassCrossover: 80, voiceDirection: 'picture' },
      rules: [
        'subwoofer-reaches-high',
        'voice-from-subwoofer',
        'another-low-voice',
        'nobody-plays-the-bottom',
      ],
    },
    {
      name: 'large is harmless for the voice where the box plays low enough',
      facts: { subwoofer: 'one', centerBassSize: 'large', centerLowLimit: 60 },
      rules: ['nobody-plays-the-bottom', 'hole-at-crossover'],
    },
    {
      name: 'a leaner voice than without the center is no fault while noise is alike',
      facts: { testNoiseEach: 'alike', toneAcrossPan: 'no-change', testSwapAtAmplifier: 'stays' },
      rules: ['noise-thin-or-boxy', 'pan-thin-or-boxy', 'follows-the-channel'],
    },
    {
      name: 'without a subwoofer no crossover can leave a hole',
      facts: {
        ...atTheLimit,
        subwoofer: 'none',
        centerEnclosure: 'vented',
        highPassSlope: '24',
        subTiming: 'untouched',
      },
      rules: ['hole-at-crossover', 'does-not-add-up'],
    },
  ],
  cannotTell: [
    {
      name: 'the crossover decides whether the ear can find the subwoofer',
      facts: { ...sub, voiceDirection: 'subwoofer' },
      rule: 'heard-where-it-can-be',
      asks: ['centerBassCrossover'],
    },
    {
      name: 'no hole measured',
      facts: {
        subwoofer: 'one',
        centerBassSize: 'small',
        centerBassCrossover: 80,
        centerLowLimit: 80,
        centerEnclosure: 'vented',
        highPassSlope: '24',
        subTiming: 'untouched',
      },
      rule: 'measured-hole',
      asks: ['measuredHoleHz'],
    },
    {
      name: 'nobody looked for a compensation',
      facts: {},
      rule: 'loudness-is-on',
      asks: ['loudnessCompensation'],
    },
    {
      name: 'the subwoofer was not switched off',
      facts: { subwoofer: 'one' },
      rule: 'gone-without-subwoofer',
      asks: ['testSubOff'],
    },
    {
      name: 'size of the box not told',
      facts: { subwoofer: 'one', centerBassSize: 'large' },
      rule: 'small-box-set-to-large',
      asks: ['centerSizeAgainstMains'],
    },
    { name: 'size setting not told', facts: {}, rule: 'large-without-the-bottom', asks: ['centerBassSize'] },
    { name: 'phase not turned', facts: sub, rule: 'fuller-the-other-way', asks: ['subPolarity'] },
    { name: 'timing not told', facts: sub, rule: 'never-timed', asks: ['subTiming'] },
    {
      name: 'port or no port decides about a crossover near the limit',
      facts: atTheLimit,
      rule: 'hole-at-crossover',
      asks: ['centerEnclosure'],
    },
    {
      name: 'the same for the smooth sum',
      facts: atTheLimit,
      rule: 'does-not-add-up',
      asks: ['centerEnclosure'],
    },
    { name: 'crossover not read', facts: sub, rule: 'subwoofer-reaches-high', asks: ['centerBassCrossover'] },
    { name: 'place of the voice unknown', facts: {}, rule: 'voice-from-subwoofer', asks: ['voiceDirection'] },
    {
      name: 'crossover of the mains not read',
      facts: { ...sub, centerBassCrossover: 80 },
      rule: 'another-low-voice',
      asks: ['mainsBassCrossover'],
    },
    { name: 'size not read', facts: {}, rule: 'nobody-plays-the-bottom', asks: ['centerBassSize'] },
    { name: 'no noise yet', facts: {}, rule: 'noise-thin-or-boxy', asks: ['testNoiseEach'] },
    { name: 'no pan heard', facts: {}, rule: 'pan-thin-or-boxy', asks: ['toneAcrossPan'] },
    { name: 'not swapped', facts: {}, rule: 'follows-the-channel', asks: ['testSwapAtAmplifier'] },
  ],
  boundary: [
    {
      name: 'a center that ends at 90 Hz cannot play all it is given',
      rule: 'large-without-the-bottom',
      derived: { unplayedVoiceHz: 90 },
      at: 'yes',
      below: 'no',
    },
    {
      name: 'a hole of 4 dB is the fair coin',
      rule: 'hole-at-crossover',
      facts: sub,
      derived: { bassHoleDb: 4 },
      at: 'yes',
      below: 'no',
    },
    {
      name: 'below 2 dB nothing is missing',
      rule: 'does-not-add-up',
      facts: sub,
      derived: { bassHoleDb: 2 },
      at: 'yes',
      below: 'no',
    },
    {
      name: 'from 120 Hz on (Kelloniemi et al. 2005) the ear finds the subwoofer',
      rule: 'subwoofer-reaches-high',
      derived: { subReachHz: 120 },
      at: 'yes',
      below: 'no',
    },
    {
      name: 'crossovers 50 Hz apart',
      rule: 'another-low-voice',
      derived: { crossoverGapHz: 50 },
      at: 'yes',
      below: 'no',
    },
    {
      name: 'a large center that ends at 120 Hz',
      rule: 'nobody-plays-the-bottom',
      derived: { unplayedVoiceHz: 120 },
      at: 'yes',
      below: 'no',
    },
  ],
});
