import { routing } from '../../src/rules/causes/routing.js';
import { testCause } from '../support/testCause.js';

testCause(routing, {
  firstPosts: [
    { complaints: ['voice-missing'], facts: { centerMode: 'none' } },
    { complaints: ['voice-missing'], facts: { channelCheck: 'swapped' } },
    { complaints: ['voice-from-behind'], facts: { channelCheck: 'swapped', lastChange: 'wiring' } },
  ],
  fires: [
    {
      name: 'a box that is silent on the left output as well clears the channel',
      facts: { channelCheck: 'silent', testSwapAtAmplifier: 'stays' },
      rules: ['box-silent-on-any-output'],
    },
    {
      name: 'a voice in the box proves a channel that works',
      facts: { voiceDirection: 'center-box' },
      rules: ['voice-in-the-box'],
    },
    {
      name: 'a voice that is missing without the center too never came in',
      facts: { testPhantom: 'same' },
      rules: ['missing-without-center-too'],
    },
    {
      name: 'a center set to none gets nothing to play',
      facts: { centerMode: 'none' },
      rules: ['center-set-to-none'],
    },
    {
      name: 'test noise from another loudspeaker blames outputs and cables, whatever the source',
      facts: { channelCheck: 'swapped' },
      rules: ['noise-from-wrong-place'],
    },
    {
      name: 'a silent center on test noise is a routing suspect',
      facts: { channelCheck: 'silent' },
      rules: ['no-noise-at-all'],
    },
    {
      name: 'what moves with the channel at the amplifier is the signal, not the box',
      facts: { testSwapAtAmplifier: 'moves-left' },
      rules: ['trouble-follows-channel'],
    },
    {
      name: 'a film that arrives in two channels has lost its center on the way',
      facts: { playedContent: 'multichannel-film', sourceFormat: 'two-channel' },
      rules: ['film-arrives-as-two-channels'],
    },
    {
      name: 'two channels played straight leave the center without a task',
      facts: { sourceFormat: 'two-channel', upmixUse: 'off' },
      rules: ['two-channels-played-straight'],
    },
    {
      name: 'trouble from one player only is the setting of that player',
      facts: { troubleTitles: 'one-source', testOtherSource: 'gone' },
      rules: ['one-source-only', 'gone-from-other-source'],
    },
    {
      name: 'a player that alone puts the voice behind, where the noise of the receiver is right, sends its channels in another order',
      facts: { troubleTitles: 'one-source', voiceDirection: 'behind', channelCheck: 'right' },
      rules: ['other-place-from-one-source'],
    },
    {
      name: 'a voice as full with the center silenced never went through it',
      facts: {
        playedContent: 'multichannel-film',
        testUnplugged: 'voice-full',
        testNearCenter: 'still-bad',
        voiceDirection: 'nowhere',
      },
      rules: ['center-carried-nothing', 'not-good-near-center', 'voice-elsewhere'],
    },
    {
      name: 'channels get lost at resets, updates and moved cables',
      facts: { lastChange: 'settings' },
      rules: ['began-with-settings'],
    },
    {
      name: 'lips out of step hint at a device that works on the sound',
      facts: { lipSync: 'voice-late' },
      rules: ['out-of-step'],
    },
    {
      name: 'noise of one channel from several loudspeakers at once',
      facts: { channelCheck: 'several-at-once' },
      rules: ['noise-from-wrong-place'],
    },
    {
      name: 'a voice before the lips is out of step as well',
      facts: { lipSync: 'voice-early' },
      rules: ['out-of-step'],
    },
  ],
  silent: [
    {
      name: 'a center that plays on the left output was not sent its channel',
      facts: { channelCheck: 'silent', testSwapAtAmplifier: 'moves-left' },
      rules: ['box-silent-on-any-output'],
    },
    {
      name: 'a mode that leaves the singer in the mains leaves him there with the center silenced',
      facts: {
        playedContent: 'two-channel-music',
        upmixUse: 'on',
        upmixCommonPart: 'leaves',
        testUnplugged: 'voice-full',
      },
      rules: ['center-carried-nothing'],
    },
    {
      name: 'a voice at the picture is as it should be, and says nothing of the channel',
      facts: { voiceDirection: 'picture' },
      rules: ['voice-in-the-box', 'voice-elsewhere'],
    },
    {
      name: 'a voice that returns without the center was sent',
      facts: { testPhantom: 'gone' },
      rules: ['missing-without-center-too'],
    },
    {
      name: 'noise that comes from the center shows that it is connected',
      facts: { channelCheck: 'right' },
      rules: ['no-noise-at-all'],
    },
    {
      name: 'a center that is set, tested and heard is not misrouted',
      facts: {
        playedContent: 'multichannel-film',
        centerMode: 'present',
        channelCheck: 'right',
        testSwapAtAmplifier: 'stays',
        testUnplugged: 'voice-gone',
        testNearCenter: 'good-near',
        voiceDirection: 'center-box',
        lipSync: 'in-step',
        lastChange: 'furniture',
      },
      rules: [
        'center-set-to-none',
        'noise-from-wrong-place',
        'trouble-follows-channel',
        'center-carried-nothing',
        'not-good-near-center',
        'voice-elsewhere',
        'out-of-step',
        'began-with-settings',
      ],
    },
    {
      name: 'a film that arrives in many channels brings its center along',
      facts: { playedContent: 'multichannel-film', sourceFormat: 'multichannel' },
      rules: ['film-arrives-as-two-channels', 'two-channels-played-straight'],
    },
    {
      name: 'two-channel music that arrives in two channels is as it should be',
      facts: { playedContent: 'two-channel-music', sourceFormat: 'two-channel' },
      rules: ['film-arrives-as-two-channels'],
    },
    {
      name: 'an upmix gives the center work from two channels',
      facts: { sourceFormat: 'two-channel', upmixUse: 'on' },
      rules: ['two-channels-played-straight'],
    },
    {
      name: 'trouble on everything and from every source clears the players',
      facts: { troubleTitles: 'all', testOtherSource: 'same' },
      rules: ['one-source-only', 'gone-from-other-source'],
    },
    {
      name: 'noise from the wrong place blames outputs, not the player',
      facts: { troubleTitles: 'one-source', voiceDirection: 'behind', channelCheck: 'swapped' },
      rules: ['other-place-from-one-source'],
    },
  ],
  cannotTell: [
    {
      name: 'test noise not stepped to the end',
      facts: {},
      rule: 'box-silent-on-any-output',
      asks: ['channelCheck'],
    },
    { name: 'eyes not closed', facts: {}, rule: 'voice-in-the-box', asks: ['voiceDirection'] },
    { name: 'center not set to none', facts: {}, rule: 'missing-without-center-too', asks: ['testPhantom'] },
    { name: 'the menu was not looked at', facts: {}, rule: 'center-set-to-none', asks: ['centerMode'] },
    { name: 'no test noise stepped through', facts: {}, rule: 'no-noise-at-all', asks: ['channelCheck'] },
    { name: 'no test noise was played', facts: {}, rule: 'noise-from-wrong-place', asks: ['channelCheck'] },
    {
      name: 'no swap at the amplifier',
      facts: {},
      rule: 'trouble-follows-channel',
      asks: ['testSwapAtAmplifier'],
    },
    {
      name: 'a film plays, its incoming format was not read',
      facts: { playedContent: 'multichannel-film' },
      rule: 'film-arrives-as-two-channels',
      asks: ['sourceFormat'],
    },
    {
      name: 'two channels come in, the listening mode is not known',
      facts: { sourceFormat: 'two-channel' },
      rule: 'two-channels-played-straight',
      asks: ['upmixUse'],
    },
    { name: 'titles not compared', facts: {}, rule: 'one-source-only', asks: ['troubleTitles'] },
    {
      name: 'titles, place and noise not compared',
      facts: {},
      rule: 'other-place-from-one-source',
      asks: ['channelCheck', 'troubleTitles', 'voiceDirection'],
    },
    { name: 'no other source tried', facts: {}, rule: 'gone-from-other-source', asks: ['testOtherSource'] },
    {
      name: 'the center was not silenced',
      facts: { playedContent: 'multichannel-film' },
      rule: 'center-carried-nothing',
      asks: ['testUnplugged'],
    },
    { name: 'nobody went near', facts: {}, rule: 'not-good-near-center', asks: ['testNearCenter'] },
    { name: 'nobody closed the eyes', facts: {}, rule: 'voice-elsewhere', asks: ['voiceDirection'] },
    { name: 'history not told', facts: {}, rule: 'began-with-settings', asks: ['lastChange'] },
    { name: 'lips not watched', facts: {}, rule: 'out-of-step', asks: ['lipSync'] },
  ],
});
