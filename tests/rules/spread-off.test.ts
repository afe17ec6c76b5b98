import { spreadOff } from '../../src/rules/causes/spread-off.js';
import { testCause } from '../support/testCause.js';

const emptied = { upmixUse: 'on', upmixCommonPart: 'takes-out', upmixCenterControl: 'present' } as const;
const heard = {
  centerSpread: 'off',
  testSpreadOn: 'opens',
  testUpmixOff: 'gone',
  testUnplugged: 'voice-gone',
  voiceDirection: 'center-box',
  sourceFormat: 'two-channel',
  playedContent: 'two-channel-music',
} as const;
const ALL = [
  'spread-is-off',
  'spread-opens-stage',
  'upmix-off-cures',
  'mains-are-empty',
  'from-the-small-box',
  'two-channels-come-in',
  'music-is-played',
] as const;

testCause(spreadOff, {
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
      facts: { upmixUse: 'on', upmixCenterControl: 'present', centerSpread: 'off' },
      rules: ['spread-is-off'],
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
      rules: ['spread-is-off'],
    },
    {
      name: 'spread on, no gain from it, and trouble that stays without the upmix: not the spread',
      facts: {
        ...emptied,
        centerSpread: 'on',
        testSpreadOn: 'same',
        testUpmixOff: 'same',
        testUnplugged: 'voice-weaker',
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
      name: 'what is heard in the mains counts more than what the menu says',
      facts: { ...emptied, ...heard, upmixCommonPart: 'shares' },
      rules: ALL,
    },
    { name: 'no upmix, no spread', facts: { ...emptied, ...heard, upmixUse: 'off' }, rules: ALL },
  ],
  cannotTell: [
    {
      name: 'the spread setting must be read',
      facts: emptied,
      rule: 'spread-is-off',
      asks: ['centerSpread'],
    },
    {
      name: 'the switch says nothing while it is open what the upmix leaves in the mains',
      facts: { upmixUse: 'on', upmixCenterControl: 'present', testSpreadOn: 'same' },
      rule: 'spread-opens-stage',
      asks: ['upmixCommonPart'],
    },
    { name: 'spread not tried', facts: emptied, rule: 'spread-opens-stage', asks: ['testSpreadOn'] },
    { name: 'upmix not switched off', facts: emptied, rule: 'upmix-off-cures', asks: ['testUpmixOff'] },
    { name: 'center not silenced', facts: emptied, rule: 'mains-are-empty', asks: ['testUnplugged'] },
    {
      name: 'place of the voice unknown',
      facts: emptied,
      rule: 'from-the-small-box',
      asks: ['voiceDirection'],
    },
    { name: 'format unknown', facts: emptied, rule: 'two-channels-come-in', asks: ['sourceFormat'] },
    { name: 'content unknown', facts: emptied, rule: 'music-is-played', asks: ['playedContent'] },
  ],
});
