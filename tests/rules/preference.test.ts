import { preference } from '../../src/rules/causes/preference.js';
import { testCause } from '../support/testCause.js';

testCause(preference, {
  firstPosts: [{ complaints: ['just-prefer-two-channels'], facts: { likesTwoChannel: 'like-two' } }],
  fires: [
    {
      name: 'two channels that still please when all is matched are taste',
      facts: { testStillTwo: 'still-two' },
      rules: ['still-two'],
    },
    {
      name: 'who simply likes two channels better needs no repair',
      facts: { likesTwoChannel: 'like-two' },
      rules: ['likes-two-channels'],
    },
    {
      name: 'who says that something is wrong is taken at his word',
      facts: { likesTwoChannel: 'something-wrong' },
      rules: ['says-something-is-wrong'],
    },
    {
      name: 'content in plain two channels and without the center fits taste',
      facts: { testUpmixOff: 'gone', testPhantom: 'gone', playedContent: 'two-channel-music' },
      rules: ['content-without-upmix', 'not-worse-without-center', 'about-two-channel-music'],
    },
  ],
  silent: [
    {
      name: 'a shared and level middle that pleases was a matter of settings',
      facts: { testStillTwo: 'shared-pleases' },
      rules: ['still-two'],
    },
    {
      name: 'a bit of both decides nothing',
      facts: { likesTwoChannel: 'both' },
      rules: ['likes-two-channels', 'says-something-is-wrong'],
    },
    {
      name: 'who is no happier in two channels, misses the center, and watches films, does not prefer two channels',
      facts: { testUpmixOff: 'same', testPhantom: 'worse', playedContent: 'multichannel-film' },
      rules: ['content-without-upmix', 'not-worse-without-center', 'about-two-channel-music'],
    },
  ],
  cannotTell: [
    {
      name: 'not compared with the usual faults put right',
      facts: {},
      rule: 'still-two',
      asks: ['testStillTwo'],
    },
    { name: 'taste not asked', facts: {}, rule: 'likes-two-channels', asks: ['likesTwoChannel'] },
    { name: 'own word not heard', facts: {}, rule: 'says-something-is-wrong', asks: ['likesTwoChannel'] },
    { name: 'upmix not switched off', facts: {}, rule: 'content-without-upmix', asks: ['testUpmixOff'] },
    { name: 'center not set to none', facts: {}, rule: 'not-worse-without-center', asks: ['testPhantom'] },
    { name: 'content not told', facts: {}, rule: 'about-two-channel-music', asks: ['playedContent'] },
  ],
});
