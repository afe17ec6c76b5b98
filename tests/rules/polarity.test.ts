import { polarity } from '../../src/rules/causes/polarity.js';
import { testCause } from '../support/testCause.js';

const shared = { playedContent: 'two-channel-music', upmixUse: 'on', upmixCommonPart: 'shares' } as const;

testCause(polarity, {
  firstPosts: [
    { complaints: ['no-middle'], facts: { testPolarity: 'fuller-swapped' } },
    { complaints: ['hollow'], facts: { polarityMarks: 'center-crossed' } },
  ],
  fires: [
    {
      name: 'a recording shows the center reversed',
      facts: { polarityMeasured: 'center-inverted' },
      rules: ['recording-shows-polarity'],
    },
    {
      name: 'a cone that jumps the other way on a cell is wired the other way',
      facts: { testCell: 'main-other' },
      rules: ['a-cone-jumps-the-other-way'],
    },
    {
      name: 'mains that are fuller with one pair swapped work against each other',
      facts: { testPolarityMains: 'fuller-swapped' },
      rules: ['mains-fuller-swapped'],
    },
    {
      name: 'the fuller position is the right one, once the tape has ruled out a delay error',
      facts: { testPolarity: 'fuller-swapped', testTape: 'agrees' },
      rules: ['fuller-swapped', 'no-delay-error-imitates-it'],
    },
    {
      name: 'crossed marks, a message, a placeless voice and a center nobody misses',
      facts: {
        polarityMarks: 'center-crossed',
        polarityMessage: 'center',
        voiceDirection: 'nowhere',
        testUnplugged: 'voice-fuller',
        lastChange: 'wiring',
        testNoiseEach: 'alike',
      },
      rules: [
        'marks-crossed',
        'setup-complained',
        'no-place',
        'more-voice-without',
        'began-with-wiring',
        'one-channel-is-normal',
      ],
    },
    {
      name: 'with a voice shared by center and mains a reversed center would be heard',
      facts: shared,
      rules: ['could-be-heard'],
    },
    {
      name: 'a crossed main counts as well',
      facts: { polarityMarks: 'main-crossed' },
      rules: ['marks-crossed'],
    },
  ],
  silent: [
    {
      name: 'a recording shows all three alike',
      facts: { polarityMeasured: 'alike' },
      rules: ['recording-shows-polarity'],
    },
    {
      name: 'a voice that is there as before is no fuller without the center',
      facts: { testUnplugged: 'voice-full' },
      rules: ['more-voice-without'],
    },
    {
      name: 'mains that agree, and cones that jump alike',
      facts: { testPolarityMains: 'fuller-as-wired', testCell: 'alike' },
      rules: ['mains-fuller-swapped', 'a-cone-jumps-the-other-way'],
    },
    {
      name: 'a singer whom only the center plays, without a subwoofer, does not change when its wires are swapped',
      facts: {
        playedContent: 'two-channel-music',
        upmixUse: 'on',
        upmixCommonPart: 'takes-out',
        subwoofer: 'none',
      },
      rules: ['could-be-heard'],
    },
    {
      name: 'a delay error imitates reversed polarity: with the tape off the test is not believed',
      facts: { testPolarity: 'fuller-swapped', testTape: 'off' },
      rules: ['no-delay-error-imitates-it'],
    },
    {
      name: 'no clear difference says nothing about polarity',
      facts: { testPolarity: 'no-difference', testTape: 'agrees' },
      rules: ['fuller-swapped', 'no-delay-error-imitates-it'],
    },
    {
      name: 'fuller as wired, marks that match and a voice with a place acquit the wires',
      facts: {
        testPolarity: 'fuller-as-wired',
        testTape: 'agrees',
        polarityMarks: 'all-match',
        polarityMessage: 'none',
        voiceDirection: 'picture',
        testUnplugged: 'voice-weaker',
        lastChange: 'furniture',
      },
      rules: [
        'fuller-swapped',
        'marks-crossed',
        'setup-complained',
        'no-place',
        'more-voice-without',
        'began-with-wiring',
      ],
    },
    {
      name: 'a center that is hollow by itself has another fault',
      facts: { testNoiseEach: 'phasey' },
      rules: ['one-channel-is-normal'],
    },
  ],
  cannotTell: [
    { name: 'no cell tried', facts: {}, rule: 'a-cone-jumps-the-other-way', asks: ['testCell'] },
    {
      name: 'left and right not compared',
      facts: {},
      rule: 'mains-fuller-swapped',
      asks: ['testPolarityMains'],
    },
    {
      name: 'nothing was recorded',
      facts: {},
      rule: 'recording-shows-polarity',
      asks: ['polarityMeasured'],
    },
    { name: 'polarities not compared', facts: {}, rule: 'fuller-swapped', asks: ['testPolarity'] },
    {
      name: 'delay first: the tape check is still missing',
      facts: { testPolarity: 'fuller-swapped' },
      rule: 'no-delay-error-imitates-it',
      asks: ['testTape'],
    },
    { name: 'marks not looked at', facts: {}, rule: 'marks-crossed', asks: ['polarityMarks'] },
    { name: 'message forgotten', facts: {}, rule: 'setup-complained', asks: ['polarityMessage'] },
    {
      name: 'whether it could be heard hangs on what the upmix leaves in the mains',
      facts: { playedContent: 'two-channel-music', upmixUse: 'on' },
      rule: 'could-be-heard',
      asks: ['upmixCommonPart'],
    },
    { name: 'place of the voice unknown', facts: {}, rule: 'no-place', asks: ['voiceDirection'] },
    { name: 'no noise yet', facts: {}, rule: 'one-channel-is-normal', asks: ['testNoiseEach'] },
    { name: 'center not silenced', facts: {}, rule: 'more-voice-without', asks: ['testUnplugged'] },
    { name: 'last change unknown', facts: {}, rule: 'began-with-wiring', asks: ['lastChange'] },
  ],
  boundary: [
    {
      name: 'a reversal that would cost less than 3 dB of shared voice explains nothing',
      rule: 'could-be-heard',
      derived: { reversedLossDb: 3 },
      at: 'yes',
      below: 'no',
    },
  ],
});
