/**
 * A second device plays the same voice: the loudspeakers of the display, a portable box, another zone. Its
 * copy comes a few hundredths of a second earlier or later; the owner hears an echo, a hollow voice, or a
 * voice drawn to the display. Muting the display settles it in seconds. Left out: the size of the time
 * difference, which owners cannot measure, and a delay of the whole sound, which is another fault.
 */
import { answers, confirmedBy, defineCause } from '../cause.js';
import { all, any, is, noneOf, oneOf } from '../condition.js';

export const doublePlayback = defineCause({
  id: 'double-playback',
  title: 'The display or a second device plays the voice too',
  severity: 'clear',
  priorDb: -15,
  priorBecause: 'Not common, but found and cured in a minute.',
  story:
    'The display, or another device, plays the same sound as the system. Display and receiver take different times to work on it, so the voice comes twice: close together it sounds hollow, further apart it is an echo, and it seems to sit in the display.',
  notWhen:
    'An echo that stays with the display muted is the room or the delay entries. Lips out of step with one single voice is a delay of the whole sound, which the lip-sync setting cures.',
  links: {
    echo: 0.7,
    hollow: 0.45,
    'voice-unclear-everywhere': 0.3,
    'swishes-with-head-movement': 0.15,
    harsh: 0.15,
    // Display loudspeakers sit low or behind it and draw the voice there.
    'voice-low-or-high': 0.35,
    'voice-pulled-aside': 0.08,
    // A delay of the whole sound is another fault; the copy from the display hints at one.
    'out-of-step-with-picture': 0.25,
    'voice-unclear': 0.3,
  },
  groups: {
    'second-voice': 'same-mechanism',
    picture: 'independent',
    noise: 'independent',
    'which-source': 'independent',
    'without-center': 'same-quantity',
    history: 'independent',
  },
  rules: [
    answers({
      id: 'second-device-plays',
      group: 'second-voice',
      when: is('displaySpeakers', 'playing'),
      tells: { yes: 'proof', no: 'strong' },
      yes: 'The display or a second device plays the same sound.',
      no: 'The display is silent and no second device plays.',
      because:
        'A copy some hundredths of a second apart colors the voice, and further apart it is heard as a second voice.',
      source: 'echo',
    }),
    answers({
      id: 'gone-with-display-muted',
      group: 'second-voice',
      when: is('testMuteDisplay', 'gone'),
      tells: { yes: 'proof', no: 'strong' },
      yes: 'With the display muted the trouble is gone.',
      no: 'With the display muted the trouble is the same, so the display is innocent.',
      because: 'What stops with the display was in the display.',
    }),
    answers({
      id: 'out-of-step',
      group: 'picture',
      when: oneOf('lipSync', 'voice-late', 'voice-early'),
      tells: { yes: 'hint', no: 'slight' },
      yes: 'Lips and voice are out of step: a delay of the whole sound is another fault, but it tells that display and receiver work at different speeds.',
      no: 'Lips and voice are in step, so a copy from the display would come at nearly the same time.',
      because:
        'A whole-system delay moves all loudspeakers alike and makes no echo by itself; with the display playing too, the same delay does.',
    }),
    answers({
      id: 'noise-is-innocent',
      group: 'noise',
      when: is('testNoiseEach', 'alike'),
      tells: { yes: 'hint', no: 'hint' },
      yes: 'Test noise sounds alike from left, center and right, so the trouble is in what programs do and not in the loudspeakers.',
      no: 'Test noise already shows the center to be different, and the display never plays that noise.',
      because: 'The receiver makes the test noise itself; a display or second device cannot copy it.',
    }),
    answers({
      id: 'one-source-only',
      group: 'which-source',
      when: is('troubleTitles', 'one-source'),
      tells: { yes: 'telling', no: 'slight' },
      yes: 'It happens with one player or channel only, as when the sound of that one runs through the display.',
      no: 'It is not tied to one player or channel.',
      because: 'Programs received by the display itself are the ones it likes to play aloud.',
    }),
    answers({
      id: 'stays-without-center',
      group: 'without-center',
      when: oneOf('testPhantom', 'same', 'worse'),
      tells: { yes: 'hint', no: 'strong' },
      yes: 'With the center set to none the trouble stays, as it would if something else plays too.',
      no: 'With the center set to none the trouble is gone, so no second device makes it.',
      because: 'The display does not care how the loudspeakers of the receiver are set.',
    }),
    answers({
      id: 'low-without-center',
      group: 'without-center',
      when: all(is('testPhantom', 'same'), is('voiceDirection', 'low')),
      tells: { yes: 'strong' },
      yes: 'Even with the center set to none the voice comes from below the picture: another loudspeaker plays there.',
      no: 'It is not so that the voice comes from below even without a center.',
      because: 'Mains stand near the height of the ears; only what lies below can be heard below.',
    }),
    answers({
      id: 'began-with-display-or-source',
      group: 'history',
      when: oneOf('lastChange', 'screen', 'source', 'settings'),
      tells: { yes: 'hint', no: 'slight' },
      yes: 'The last change before it began was {lastChange}, after which displays often play aloud again.',
      no: 'The last change before it began does not touch the display or the players.',
      because: 'A new display, a new player or an update sets the sound output back to its own loudspeakers.',
    }),
  ],
  telltales: [
    {
      id: 'display-came-last',
      when: is('changedExactly', 'display'),
      telling: 'telling',
      yes: 'Another display came last.',
      no: 'It was not the display that changed last.',
      because: 'A new display plays along until somebody mutes it.',
    },
  ],
  confirm: [confirmedBy('testMuteDisplay', 'gone')],
  remedies: [
    {
      id: 'mute-display-for-good',
      act: 'display-muted',
      title: 'Switch the loudspeakers of the display off',
      seen: any(
        is('testMuteDisplay', 'gone'),
        all(is('displaySpeakers', 'playing'), noneOf('testMuteDisplay', 'same')),
      ),
      steps: [
        'Open the sound menu of the display.',
        'Set its sound output to the receiver or to external loudspeakers, not to both.',
        'Mute the receiver: now nothing may speak any more.',
      ],
      minutes: 3,
      expect: 'One voice is left; echo and hollowness go at once.',
      verify: 'With the receiver muted the room is silent.',
      cautions: ['photograph-menu'],
      changes: [
        'displaySpeakers',
        'testMuteDisplay',
        'lipSync',
        'voiceDirection',
        'testNearCenter',
        'testPhantom',
      ],
      cures: 0.95,
    },
    {
      id: 'silence-second-device',
      title: 'Silence whatever else plays',
      when: is('testMuteDisplay', 'same'),
      steps: [
        'Mute the receiver and the display, and follow your ears to what still speaks.',
        'Look for portable boxes, a second zone of the receiver, and computers that play along.',
        'Switch it off, or take it out of the group of playing devices.',
      ],
      minutes: 5,
      expect: 'The second voice stops.',
      verify: 'With the receiver muted the room is silent.',
      cautions: [],
      changes: ['displaySpeakers', 'voiceDirection', 'lipSync'],
      cures: 0.6,
    },
    {
      id: 'set-lip-sync-after',
      title: 'Then set picture and sound in step',
      when: oneOf('lipSync', 'voice-late', 'voice-early'),
      steps: [
        'Do this only after a single voice is left: it is a matter of its own.',
        'Watch a newsreader and change the audio delay of the receiver until lips and voice agree.',
        'If the voice is late even at zero delay, take a fast or game mode of the picture off: a slower picture meets it. Else lead the sound to the receiver by a shorter way.',
      ],
      minutes: 5,
      expect: 'Lips and voice agree; the place of the voice does not change.',
      verify: 'Words with b and p are seen and heard together.',
      cautions: ['photograph-menu'],
      changes: ['lipSync'],
      cures: 0.1,
    },
  ],
});
