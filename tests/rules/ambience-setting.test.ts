import { ambienceSetting } from '../../src/rules/causes/ambience-setting.js';
import { testCause } from '../support/testCause.js';

const mode = { upmixUse: 'on', upmixAmbience: 'yes' } as const;
const emptied = { ...mode, upmixCommonPart: 'takes-out' } as const;
const heard = {
  ambienceSize: 'small',
  upmixCommonPart: 'takes-out',
  testUnplugged: 'voice-gone',
  testUpmixOff: 'gone',
  testPhantom: 'gone',
  voiceDirection: 'center-box',
  playedContent: 'two-channel-music',
} as const;
const ALL = [
  'size-small',
  'singer-leaves-the-mains',
  'mains-are-empty',
  'mode-off-cures',
  'not-vague',
  'music-is-played',
  'gone-without-center',
] as const;

testCause(ambienceSetting, {
  firstPosts: [
    { complaints: ['image-collapses-to-center'], facts: { upmixAmbience: 'yes', ambienceSize: 'small' } },
    { complaints: ['image-collapses-to-center'], facts: { ambienceSize: 'small', upmixUse: 'on' } },
  ],
  fires: [
    {
      name: 'an ambience mode set small draws the middle out of the mains',
      facts: { ...mode, ...heard },
      rules: ALL,
    },
    {
      name: 'used now and then, and for everything, it empties the mains all the same',
      facts: { ...mode, ...heard, upmixUse: 'sometimes', playedContent: 'everything' },
      rules: ALL,
    },
    {
      name: 'a voice at the picture has a place, so it is not vague',
      facts: { ...mode, ...heard, voiceDirection: 'picture' },
      rules: ['not-vague'],
    },
  ],
  silent: [
    {
      name: 'films with a center of their own leave an upmix nothing to do',
      facts: {
        upmixUse: 'on',
        upmixAmbience: 'yes',
        ambienceSize: 'small',
        playedContent: 'multichannel-film',
      },
      rules: ['size-small'],
    },
    {
      name: 'at a large size the mains stay full, and a vague voice is another matter',
      facts: {
        ...mode,
        ambienceSize: 'large',
        upmixCommonPart: 'leaves',
        testUnplugged: 'voice-full',
        testUpmixOff: 'same',
        testPhantom: 'same',
        voiceDirection: 'nowhere',
        playedContent: 'television',
      },
      rules: ALL,
    },
    {
      name: 'a mode without ambience has no size',
      facts: { ...mode, ...heard, upmixAmbience: 'no', upmixCenterControl: 'none' },
      rules: ALL,
    },
    {
      name: 'a mode of this kind that leaves the singer in the mains shrinks nothing at any size',
      facts: { ...mode, ...heard, upmixCommonPart: 'leaves' },
      rules: ALL,
    },
    { name: 'no mode in use', facts: { ...mode, ...heard, upmixUse: 'off' }, rules: ALL },
    {
      name: 'films with a center of their own are not what the mode is used on',
      facts: { ...mode, ...heard, playedContent: 'multichannel-film' },
      rules: ['music-is-played'],
    },
  ],
  cannotTell: [
    { name: 'the size must be read', facts: emptied, rule: 'size-small', asks: ['ambienceSize'] },
    { name: 'ear not at the main', facts: mode, rule: 'singer-leaves-the-mains', asks: ['upmixCommonPart'] },
    { name: 'center not silenced', facts: emptied, rule: 'mains-are-empty', asks: ['testUnplugged'] },
    { name: 'mode not switched off', facts: emptied, rule: 'mode-off-cures', asks: ['testUpmixOff'] },
    { name: 'center not set to none', facts: emptied, rule: 'gone-without-center', asks: ['testPhantom'] },
    { name: 'place of the voice unknown', facts: emptied, rule: 'not-vague', asks: ['voiceDirection'] },
    { name: 'content unknown', facts: emptied, rule: 'music-is-played', asks: ['playedContent'] },
  ],
});
