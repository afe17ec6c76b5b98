import { surroundSpill } from '../../src/rules/causes/surround-spill.js';
import { testCause } from '../support/testCause.js';

testCause(surroundSpill, {
  firstPosts: [{ complaints: ['voice-from-behind'], facts: { upmixUse: 'on', voiceDirection: 'behind' } }],
  fires: [
    {
      name: 'only something that plays behind can put a voice behind',
      facts: { voiceDirection: 'behind' },
      rules: ['voice-heard-behind'],
    },
    {
      name: 'center noise from the surrounds too shows the spill at once',
      facts: { channelCheck: 'center-elsewhere-too', testNoiseEach: 'phasey' },
      rules: ['center-noise-elsewhere-too', 'noise-hard-to-place'],
    },
    {
      name: 'a hall mode feeds the voice to the surrounds, and is gone with the mode',
      facts: { upmixAmbience: 'yes', testUpmixOff: 'gone' },
      rules: ['mode-adds-ambience', 'gone-without-upmix'],
    },
    {
      name: 'a voice that spills goes on when the center is silenced',
      facts: { testUnplugged: 'voice-weaker' },
      rules: ['voice-left-without-center'],
    },
    {
      name: 'with the center unplugged the voice plays on in full',
      facts: { testUnplugged: 'voice-full' },
      rules: ['voice-left-without-center'],
    },
  ],
  silent: [
    {
      name: 'a voice in front, from the center alone, does not spill',
      facts: {
        voiceDirection: 'picture',
        channelCheck: 'right',
        testUnplugged: 'voice-gone',
        testNoiseEach: 'alike',
      },
      rules: [
        'voice-heard-behind',
        'center-noise-elsewhere-too',
        'voice-left-without-center',
        'noise-hard-to-place',
      ],
    },
    {
      name: 'a plain mode that makes no difference is innocent',
      facts: { upmixAmbience: 'no', testUpmixOff: 'same' },
      rules: ['mode-adds-ambience', 'gone-without-upmix'],
    },
  ],
  cannotTell: [
    { name: 'nobody closed the eyes', facts: {}, rule: 'voice-heard-behind', asks: ['voiceDirection'] },
    {
      name: 'no test noise was played',
      facts: {},
      rule: 'center-noise-elsewhere-too',
      asks: ['channelCheck'],
    },
    { name: 'the mode is not known', facts: {}, rule: 'mode-adds-ambience', asks: ['upmixAmbience'] },
    { name: 'upmix not switched off', facts: {}, rule: 'gone-without-upmix', asks: ['testUpmixOff'] },
    {
      name: 'the center was not silenced',
      facts: {},
      rule: 'voice-left-without-center',
      asks: ['testUnplugged'],
    },
    { name: 'noise not compared', facts: {}, rule: 'noise-hard-to-place', asks: ['testNoiseEach'] },
  ],
});
