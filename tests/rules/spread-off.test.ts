import { spreadOff } from '../../src/rules/causes/spread-off.js';
import { testCause } from '../support/testCause.js';

const emptied = { upmixUse: 'on', upmixCommonPart: 'takes-out', upmixCenterControl: 'present' } as const;
const music = { ...emptied, playedContent: 'two-channel-music' } as const;
const heard = {
  centerSpread: 'off',
  testSpreadOn: 'opens',
  testUpmixOff: 'gone',
  testUnplugged: 'voice-gone',
  testPhantom: 'gone',
  voiceDirection: 'center-box',
  sourceFormat: 'two-channel',
  playedContent: 'two-channel-music',
} as const;
const ALL = [
  'width-lost',
  'spread-opens-stage',
  'upmix-off-cures',
  'mains-are-empty',
  'from-the-small-box',
  'two-channels-come-in',
  'music-is-played',
  'gone-without-center',
] as const;

testCause(spreadOff, {
  firstPosts: [
    { complaints: ['image-collapses-to-center'], facts: { testSpreadOn: 'opens' } },
    {
      complaints: ['image-collapses-to-center'],
      facts: { upmixUse: 'on', upmixCenterControl: 'present', upmixCommonPart: 'takes-out' },
    },
  ],
  fires: [
    {
      name: 'an upmix that empties the mains with its spread off shrinks the stage into one box',
      facts: { ...emptied, ...heard },
      rules: ALL,
    },
    {
      name: 'used now and then, and for everything, it shrinks the stage all the same',
      facts: { ...emptied, ...heard, upmixUse: 'sometimes', playedContent: 'everything' },
      rules: ALL,
    },
    {
      name: 'a stage that opens with the spread on was empty before',
      facts: { testSpreadOn: 'opens' },
      rules: ['spread-opens-stage'],
    },
    {
      name: 'a spread that is off empties the mains, though nobody has put an ear to them',
      facts: {
        upmixUse: 'on',
        upmixCenterControl: 'present',
        centerSpread: 'off',
        playedContent: 'two-channel-music',
      },
      rules: ['width-lost'],
    },
    {
      name: 'a spread that is opened by a fifth takes nearly as much as one that is off',
      facts: {
        upmixUse: 'on',
        upmixCenterControl: 'present',
        centerSpread: 'on',
        centerSpreadAmount: 0.2,
        playedContent: 'two-channel-music',
      },
      rules: ['width-lost'],
    },
  ],
  silent: [
    {
      name: 'films with a center of their own leave an upmix nothing to do',
      facts: {
        upmixUse: 'on',
        upmixCommonPart: 'takes-out',
        centerSpread: 'off',
        playedContent: 'multichannel-film',
      },
      rules: ['width-lost'],
    },
    {
      name: 'spread on, no gain from it, and trouble that stays without the upmix: not the spread',
      facts: {
        ...emptied,
        centerSpread: 'on',
        testSpreadOn: 'same',
        testUpmixOff: 'same',
        testUnplugged: 'voice-weaker',
        testPhantom: 'same',
        voiceDirection: 'low',
        sourceFormat: 'multichannel',
        playedContent: 'multichannel-film',
      },
      rules: ALL,
    },
    {
      name: 'an upmix without a center control has no spread to be off',
      facts: { ...emptied, ...heard, upmixCenterControl: 'none' },
      rules: ALL,
    },
    {
      name: 'an ambience mode is a matter of its size, not of spread',
      facts: { ...emptied, ...heard, upmixAmbience: 'yes' },
      rules: ALL,
    },
    {
      name: 'an upmix that leaves the singer in the mains cannot empty them',
      facts: { ...emptied, ...heard, upmixCommonPart: 'leaves' },
      rules: ALL,
    },
    {
      name: 'half of the singer left in the mains costs less than is clearly heard, whatever the menu says',
      facts: { ...emptied, ...heard, upmixCommonPart: 'shares' },
      rules: ['width-lost'],
    },
    { name: 'no upmix, no spread', facts: { ...emptied, ...heard, upmixUse: 'off' }, rules: ALL },
  ],
  cannotTell: [
    {
      name: 'what is lost hangs on what the upmix leaves in the mains, as a menu or an ear tells',
      facts: { upmixUse: 'on', upmixCenterControl: 'present', playedContent: 'two-channel-music' },
      rule: 'width-lost',
      asks: ['centerSpread', 'upmixCommonPart'],
    },
    { name: 'center not set to none', facts: music, rule: 'gone-without-center', asks: ['testPhantom'] },
    { name: 'spread not tried', facts: music, rule: 'spread-opens-stage', asks: ['testSpreadOn'] },
    { name: 'upmix not switched off', facts: music, rule: 'upmix-off-cures', asks: ['testUpmixOff'] },
    { name: 'center not silenced', facts: music, rule: 'mains-are-empty', asks: ['testUnplugged'] },
    {
      name: 'place of the voice unknown',
      facts: music,
      rule: 'from-the-small-box',
      asks: ['voiceDirection'],
    },
    { name: 'format unknown', facts: emptied, rule: 'two-channels-come-in', asks: ['sourceFormat'] },
    {
      name: 'content unknown',
      facts: { upmixUse: 'on' },
      rule: 'music-is-played',
      asks: ['centerSpread', 'upmixCommonPart', 'upmixCenterControl', 'playedContent', 'sourceFormat'],
    },
  ],
  boundary: [
    {
      name: 'a fifth of the width is the fair coin',
      rule: 'width-lost',
      facts: music,
      derived: { widthLossPct: 20 },
      at: 'yes',
      below: 'no',
    },
  ],
});
