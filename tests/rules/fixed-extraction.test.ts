import { fixedExtraction } from '../../src/rules/causes/fixed-extraction.js';
import { testCause } from '../support/testCause.js';

const fixed = { upmixUse: 'on', upmixCenterControl: 'none', playedContent: 'two-channel-music' } as const;
const heard = {
  upmixCommonPart: 'takes-out',
  testUnplugged: 'voice-gone',
  testUpmixOff: 'gone',
  testPhantom: 'gone',
  voiceDirection: 'center-box',
} as const;
const ALL = [
  'width-lost',
  'mains-are-empty',
  'upmix-off-cures',
  'gone-without-center',
  'from-the-small-box',
] as const;

testCause(fixedExtraction, {
  firstPosts: [
    { complaints: ['image-collapses-to-center'], facts: { upmixUse: 'on', upmixCenterControl: 'none' } },
  ],
  fires: [
    {
      name: 'full extraction without any control takes a third of the width by energy vectors',
      facts: { ...fixed, ...heard },
      rules: ALL,
    },
    {
      name: 'used now and then, and for everything, it takes the width all the same',
      facts: { ...fixed, ...heard, upmixUse: 'sometimes', playedContent: 'everything' },
      rules: ALL,
    },
    {
      name: 'it is music whose stage can shrink',
      facts: { ...fixed, ...heard },
      rules: ['music-is-played'],
    },
    {
      name: 'two channels that come in are enough, whatever they are',
      facts: { upmixUse: 'on', upmixCenterControl: 'none', sourceFormat: 'two-channel', ...heard },
      rules: ALL,
    },
  ],
  silent: [
    {
      name: 'television through an upmix has its voice in the center as it should',
      facts: { ...fixed, ...heard, playedContent: 'television', sourceFormat: 'two-channel' },
      rules: ['music-is-played'],
    },
    {
      name: 'a mode that leaves the singer in the mains takes hardly any width',
      facts: {
        ...fixed,
        upmixCommonPart: 'leaves',
        testUnplugged: 'voice-full',
        testUpmixOff: 'same',
        testPhantom: 'same',
        voiceDirection: 'aside',
      },
      rules: ALL,
    },
    {
      name: 'with a center control it is a matter of that setting',
      facts: { ...fixed, ...heard, upmixCenterControl: 'present' },
      rules: ALL,
    },
    {
      name: 'ambience modes have their own cause',
      facts: { ...fixed, ...heard, upmixAmbience: 'yes' },
      rules: ALL,
    },
    {
      name: 'a film with its own center passes by the upmix',
      facts: { ...fixed, ...heard, playedContent: 'multichannel-film' },
      rules: ALL,
    },
    {
      name: 'half extraction stays just below a clear loss',
      facts: { ...fixed, upmixCommonPart: 'shares' },
      rules: ['width-lost'],
    },
  ],
  cannotTell: [
    {
      name: 'the width lost hangs on what the upmix leaves in the mains',
      facts: fixed,
      rule: 'width-lost',
      asks: ['upmixCommonPart'],
    },
    { name: 'center not set to none', facts: fixed, rule: 'gone-without-center', asks: ['testPhantom'] },
    {
      name: 'what plays is not known',
      facts: { upmixUse: 'on', upmixCenterControl: 'none', sourceFormat: 'two-channel' },
      rule: 'music-is-played',
      asks: ['playedContent'],
    },
    { name: 'center not silenced', facts: fixed, rule: 'mains-are-empty', asks: ['testUnplugged'] },
    { name: 'upmix not switched off', facts: fixed, rule: 'upmix-off-cures', asks: ['testUpmixOff'] },
    {
      name: 'place of the voice unknown',
      facts: fixed,
      rule: 'from-the-small-box',
      asks: ['voiceDirection'],
    },
  ],
  boundary: [
    {
      name: 'a fifth of the width is the fair coin',
      rule: 'width-lost',
      facts: fixed,
      derived: { widthLossPct: 20 },
      at: 'yes',
      below: 'no',
    },
  ],
});
