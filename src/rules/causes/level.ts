/**
 * The center is too soft or too loud at the seats. Too soft, the voice drowns and the remote stays in the
 * hand; too loud, the stage shrinks into the middle. What counts is the level at the seat: a trim of any
 * size proves nothing, since it may just make up for an insensitive box or a longer distance. Left out:
 * tone (a dull center is often called soft) and the mix, which may bury the voice by itself.
 */
import { answers, confirmedBy, defineCause, deviates } from '../cause.js';
import { all, atLeast, is, isNot, noneOf, oneOf } from '../condition.js';
import { ENTRIES } from '../outdated.js';
import { heard, toldTale } from '../remarks.js';

export const level = defineCause({
  id: 'level',
  title: 'Center too soft or too loud at the seats',
  severity: 'clear',
  priorDb: -9,
  priorBecause:
    'Trims are the first thing that owners set, and the first that a new box or seat makes wrong.',
  story:
    'The center plays several decibels below or above the mains at the seat. The voice drowns in the rest, or it sticks out and draws the whole stage to itself.',
  notWhen:
    'A large trim is no fault by itself: it may be just what makes the levels equal. A voice that is loud enough and still unclear is not cured by level. And an upmix that leaves the singer in the mains adds the center on top, 3 to 5 dB more voice, with every trim right.',
  links: {
    'voice-too-quiet': 0.6,
    'voice-too-loud': 0.5,
    'image-collapses-to-center': 0.25,
    'voice-unclear-everywhere': 0.2,
    'no-middle': 0.12,
    'voice-unclear': 0.2,
    'voice-unclear-back-row': 0.15,
    thin: 0.1,
    'small-and-lifeless': 0.2,
    'gaps-between-speakers': 0.25,
    'whispers-lost-effects-loud': 0.3,
  },
  block: {
    group: 'level-at-seat',
    facts: ['voiceLoudness', 'measuredCenterLevel', 'measuredLeftLevel', 'measuredRightLevel'],
  },
  groups: {
    'level-at-seat': 'same-quantity',
    turned: 'same-session',
    origin: 'same-quantity',
    switching: 'same-mechanism',
    boost: 'independent',
  },
  rules: [
    deviates({
      id: 'level-error',
      group: 'level-at-seat',
      of: 'levelErrorDb',
      limit: 'levelDb',
      yes: 'At the seat the center differs from the mains by {levelErrorDb}; {limit} is clearly heard.',
      no: 'At the seat the center is within {levelErrorDb} of the mains.',
      because:
        'A step of 3 dB between speech and the rest is the smallest that changes how well it is understood; the same step to the loud side takes about a fifth of the stage width.',
      source: 'level-step',
    }),
    answers({
      id: 'by-ear',
      group: 'level-at-seat',
      when: oneOf('voiceLoudness', 'softer', 'louder'),
      tells: { yes: 'telling', no: 'telling' },
      yes: 'With test noise the center is {voiceLoudness} than the mains, by ear.',
      no: 'With test noise the center is about as loud as the mains, by ear.',
      because: 'The ear finds two or three decibels between loudspeakers without a meter.',
      source: 'level-step',
    }),
    answers({
      id: 'noise-differs',
      group: 'level-at-seat',
      when: noneOf('testNoiseEach', 'alike'),
      tells: { no: 'telling' },
      yes: 'Stepping test noise through the channels, the center does not sound like the mains.',
      no: 'Stepping test noise through the channels, the center sounds like the mains, so its level is right.',
      because:
        'Level is the first thing that steady noise gives away; a change of tone may go along with it.',
      source: 'level-step',
    }),
    answers({
      id: 'noise-softer-or-louder',
      group: 'level-at-seat',
      when: oneOf('testNoiseEach', 'softer', 'louder'),
      tells: { yes: 'strong' },
      yes: 'Stepping test noise through the channels, the center is {testNoiseEach}.',
      no: 'Stepping test noise through the channels, it is not level alone in which the center differs.',
      because: 'Noise of the same tone and another strength is a difference of level and nothing else.',
      source: 'level-step',
    }),
    answers({
      id: 'turning-up-cured',
      group: 'turned',
      applies: is('trialTells', 'yes'),
      when: is('triedTrim', 'cured'),
      tells: { yes: 'hint', no: 'hint' },
      yes: 'Turning the center up cured it.',
      no: 'Turning the center up made it louder and no clearer, so level is not what is missing.',
      because: 'Level cures a level fault and hardly anything else.',
    }),
    answers({
      id: 'nobody-set-levels',
      group: 'origin',
      when: is('alignmentBy', 'nobody'),
      tells: { yes: 'telling', no: 'slight' },
      yes: 'Nobody has set the levels.',
      no: 'The levels were set by somebody or by the automatic setup.',
      because: 'Boxes differ in sensitivity by several decibels; untouched trims leave that difference.',
    }),
    answers({
      id: 'levels-set-elsewhere',
      group: 'origin',
      when: oneOf('calibrationSpot', 'elsewhere', 'changed-since'),
      tells: { yes: 'hint', no: 'slight' },
      yes: 'The levels were measured somewhere else, or things have moved since.',
      no: 'The levels were measured at the main seat as it is now.',
      because: 'Near one loudspeaker the microphone finds that one too loud and turns it down.',
      source: 'direct-sound',
    }),
    answers({
      id: 'without-center-gone',
      group: 'switching',
      when: is('testPhantom', 'gone'),
      tells: { yes: 'hint', no: 'telling' },
      yes: 'With the center set to none the voice is as loud as it should be.',
      no: 'With the center set to none the voice is just as soft or loud, so the level of the center is not the cause.',
      because:
        'Left and right then carry the voice at their own level. What stays the same comes from the mix or the source.',
    }),
    heard(
      'follows-the-channel',
      'switching',
      { yes: 'hint', no: 'hint' },
      'A wrong trim stays with its channel, whichever box hangs on it.',
      { applies: is('swapTellsTrim', 'yes') },
    ),
    answers({
      id: 'voice-boost',
      group: 'boost',
      when: is('voiceBoost', 'on'),
      tells: { yes: 'hint' },
      yes: 'A voice boost is on somewhere in the chain; it raises the center on top of its trim.',
      no: 'No voice boost is on.',
      because: 'A boost in the player, the display or the receiver adds to the trim, and two of them add up.',
    }),
  ],
  telltales: [
    {
      id: 'trim-was-touched',
      when: is('changedExactly', 'trim'),
      telling: 'strong',
      yes: 'The level of the center was changed last.',
      no: 'It was not the level of the center that was changed last.',
      because: 'The last change is the first suspect, and this one is a matter of level.',
    },
    toldTale(
      'settings-from-elsewhere',
      'hint',
      'Trims fit the loudspeakers and the seat they were made for.',
    ),
    {
      id: 'off-aside-as-measured',
      when: oneOf('loudnessAside', 'softer', 'louder'),
      telling: 'telling',
      yes: 'At the side seat the center was measured {loudnessAside} than the mains.',
      no: 'At the side seat center and mains were measured equal.',
      because: 'A level that is off where people sit is off, whatever it is in the middle.',
    },
  ],
  confirm: [
    confirmedBy('testNoiseEach', 'softer', 'louder'),
    confirmedBy('testPhantom', 'gone'),
    confirmedBy('testSwapAtAmplifier', 'moves-left'),
  ],
  acts: { 'center-turned-down': 0.6, 'center-set-to-none': 0.4, 'night-mode-changed': 0.1 },
  remedies: [
    {
      id: 'trim-to-the-mains',
      title: 'Set the center level at the seat, with test noise',
      seen: atLeast('levelErrorDb', 'levelDb.severe'),
      steps: [
        'Photograph the level page.',
        'Hold a meter or a phone at ear height in the main seat.',
        'Step test noise left, center, right and note the three figures.',
        'Change the center trim until it reads the mean of left and right. Without a meter, match by ear.',
      ],
      minutes: 8,
      expect:
        'The center is now {levelErrorDb} off and comes level with the mains. A trim that ends up far from zero is no fault, as long as it is not at its stop.',
      verify:
        'Step the noise across once more: no jump in loudness. A little firmer with a little less bass than a voice between the mains is normal for a real center.',
      cautions: ['photograph-menu', 'volume-down', 'test-noise'],
      changes: [
        'centerTrim',
        'measuredCenterLevel',
        'voiceLoudness',
        'testPhantom',
        'testNoiseEach',
        'testSwapAtAmplifier',
      ],
      cures: 0.9,
    },
    {
      id: 'boost-off',
      act: 'voice-boost-changed',
      title: 'Switch the voice boost off',
      // Where the center is too soft, a boost is what still helps.
      when: all(is('voiceBoost', 'on'), isNot('centerLoudness', 'softer')),
      steps: [
        'Look for a voice or dialog boost in the receiver, the display and the player.',
        'Switch each of them off and listen to plain speech.',
      ],
      minutes: 4,
      expect: 'The voice falls back to the level of the mix.',
      verify: 'Speech sits among the other sounds instead of in front of them.',
      cautions: ['photograph-menu'],
      changes: ['voiceBoost', 'voiceLoudness', 'measuredCenterLevel'],
      cures: 0.5,
    },
    {
      id: 'taste-trim',
      act: 'center-turned-up',
      title: 'Raise the voice by taste, in small steps',
      when: is('centerLoudness', 'equal'),
      steps: [
        'Raise the center by 1 dB for one evening, then by another.',
        'Stop where the stage begins to shrink toward the middle with music.',
      ],
      minutes: 3,
      expect:
        'Up to 2 or 3 dB more voice for films. The price is stage width with upmixed music, about a fifth at 3 dB.',
      verify: 'Film speech is easy to follow, and a song still spans from left to right.',
      cautions: [],
      changes: ['centerTrim', 'measuredCenterLevel', 'voiceLoudness'],
      cures: 0.4,
    },
    {
      id: 'setup-at-main-seat',
      act: 'correction-run-again',
      title: 'Run the automatic setup again at the main seat',
      when: oneOf('calibrationSpot', 'elsewhere', 'changed-since'),
      steps: [
        'Photograph every page of the present settings.',
        'Put the microphone on a stand at ear height in the main seat.',
        'Run the setup in a quiet room, then check the three levels by ear with test noise.',
      ],
      minutes: 25,
      expect: 'Levels within about 1 dB at the main seat.',
      verify: 'Test noise steps left, center, right without a jump in loudness.',
      cautions: ['photograph-menu', 'test-noise'],
      changes: [
        ...ENTRIES,
        'alignmentBy',
        'calibrationSpot',
        'centerTrim',
        'measuredCenterLevel',
        'measuredLeftLevel',
        'measuredRightLevel',
        'voiceLoudness',
      ],
      cures: 0.8,
    },
  ],
});
