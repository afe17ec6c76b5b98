import { doublePlayback } from '../../src/rules/causes/double-playback.js';
import { testCause } from '../support/testCause.js';

testCause(doublePlayback, {
  firstPosts: [
    { complaints: ['echo'], facts: { displaySpeakers: 'playing' } },
    { complaints: ['echo'], facts: { testMuteDisplay: 'gone' } },
  ],
  fires: [
    {
      name: 'a voice that stays low without a center comes from another loudspeaker below',
      facts: { testPhantom: 'same', voiceDirection: 'low' },
      rules: ['low-without-center'],
    },
    {
      name: 'a display that plays along makes a second voice',
      facts: { displaySpeakers: 'playing' },
      rules: ['second-device-plays'],
    },
    {
      name: 'what stops with the display was in the display',
      facts: { testMuteDisplay: 'gone' },
      rules: ['gone-with-display-muted'],
    },
    {
      name: 'a delay of the whole sound only hints at a second voice',
      facts: { lipSync: 'voice-late' },
      rules: ['out-of-step'],
    },
    {
      name: 'test noise that is alike everywhere leaves the loudspeakers innocent',
      facts: { testNoiseEach: 'alike' },
      rules: ['noise-is-innocent'],
    },
    {
      name: 'trouble with one source, still there without the center, after a new display',
      facts: { troubleTitles: 'one-source', testPhantom: 'same', lastChange: 'screen' },
      rules: ['one-source-only', 'stays-without-center', 'began-with-display-or-source'],
    },
    {
      name: 'a voice before the lips is out of step as well',
      facts: { lipSync: 'voice-early' },
      rules: ['out-of-step'],
    },
  ],
  silent: [
    {
      name: 'a voice at the picture comes from nowhere below',
      facts: { testPhantom: 'same', voiceDirection: 'picture' },
      rules: ['low-without-center'],
    },
    {
      name: 'a silent display cannot double the voice',
      facts: { displaySpeakers: 'muted', testMuteDisplay: 'same' },
      rules: ['second-device-plays', 'gone-with-display-muted'],
    },
    {
      name: 'a trouble that shows on test noise and goes without the center is not the display',
      facts: {
        testNoiseEach: 'boxy',
        testPhantom: 'gone',
        lipSync: 'in-step',
        troubleTitles: 'all',
        lastChange: 'furniture',
      },
      rules: [
        'noise-is-innocent',
        'stays-without-center',
        'out-of-step',
        'one-source-only',
        'began-with-display-or-source',
      ],
    },
  ],
  cannotTell: [
    {
      name: 'nobody said where the voice seems to be',
      facts: { testPhantom: 'same' },
      rule: 'low-without-center',
      asks: ['voiceDirection'],
    },
    {
      name: 'nobody put an ear to the display',
      facts: {},
      rule: 'second-device-plays',
      asks: ['displaySpeakers'],
    },
    { name: 'display not muted', facts: {}, rule: 'gone-with-display-muted', asks: ['testMuteDisplay'] },
    { name: 'lips not watched', facts: {}, rule: 'out-of-step', asks: ['lipSync'] },
    { name: 'noise not compared', facts: {}, rule: 'noise-is-innocent', asks: ['testNoiseEach'] },
    { name: 'titles not compared', facts: {}, rule: 'one-source-only', asks: ['troubleTitles'] },
    { name: 'center not set to none', facts: {}, rule: 'stays-without-center', asks: ['testPhantom'] },
    { name: 'history not told', facts: {}, rule: 'began-with-display-or-source', asks: ['lastChange'] },
  ],
});
