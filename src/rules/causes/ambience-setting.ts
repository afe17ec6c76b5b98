/**
 * A listening mode that adds ambience has its size set too small, and, as some modes of this kind do, takes the common
 * part out of the mains then: the music shrinks to the center with some hall around it. At a large size such a mode leaves the
 * mains full and is innocent of a narrow stage, though it may blur. Left out: the ambience itself; a voice
 * that is wide, vague and wet has too much of it, which is the opposite setting.
 */
import { answers, confirmedBy, defineCause } from '../cause.js';
import { all, is, isNot, noneOf } from '../condition.js';
import { staysWithoutCenter } from '../home-tests.js';
import { heard } from '../remarks.js';

export const ambienceSetting = defineCause({
  id: 'ambience-setting',
  title: 'The size of an ambience mode is set too small',
  severity: 'clear',
  priorDb: -6,
  priorBecause:
    'Where such a mode with such a setting is in use, the setting is at fault in one home of five or so.',
  story:
    'The mode adds a hall of its own. In some of these modes a small size also moves the middle of the music out of the mains into the center, and the stage shrinks.',
  notWhen:
    'Where the singer stays in the mains, by a large size or because the mode never takes him out, the stage does not shrink. A voice that is wide and vague instead of small has too much ambience, not too little.',
  // Some modes of this kind leave the middle in the mains whatever their size: nothing shrinks there.
  applies: all(is('upmixInUse', 'yes'), is('upmixAmbience', 'yes'), isNot('upmixMiddle', 'leaves')),
  // An ambience upmix in use: three systems in a hundred (judgement).
  appliesIn: 0.03,
  links: {
    'image-collapses-to-center': 0.7,
    hollow: 0.15,
    'just-prefer-two-channels': 0.2,
    'small-and-lifeless': 0.15,
  },
  pictures: ['stage'],
  groups: {
    setting: 'same-quantity',
    emptied: 'same-mechanism',
    switching: 'independent',
    heard: 'same-session',
    content: 'same-session',
    'without-center': 'independent',
  },
  rules: [
    answers({
      id: 'size-small',
      group: 'setting',
      when: is('ambienceSize', 'small'),
      tells: { yes: 'telling', no: 'telling' },
      yes: 'The size of the ambience mode is set to small.',
      no: 'The size of the ambience mode is not set to small.',
      because:
        'In some of these modes the size also decides how much of the middle is drawn out of the mains.',
    }),
    answers({
      id: 'singer-leaves-the-mains',
      group: 'emptied',
      when: is('upmixCommonPart', 'takes-out'),
      tells: { yes: 'telling', no: 'strong' },
      yes: 'With the mode on the singer is almost gone from the mains.',
      no: 'With the mode on the singer is still in the mains.',
      because: 'A stage can shrink only when its middle is taken out of the mains.',
      source: 'upmix-arithmetic',
    }),
    heard(
      'mains-are-empty',
      'emptied',
      { yes: 'telling', no: 'telling' },
      'What is left when the center is silent is what the mode leaves in the mains.',
    ),
    answers({
      id: 'mode-off-cures',
      group: 'switching',
      when: is('testUpmixOff', 'gone'),
      tells: { yes: 'hint', no: 'proof' },
      yes: 'With the mode off the trouble is gone.',
      no: 'With the mode off the trouble stays, so the mode does not make it.',
      because: 'What the mode makes goes with it.',
      source: 'upmix-arithmetic',
    }),
    answers({
      id: 'not-vague',
      group: 'heard',
      when: noneOf('voiceDirection', 'nowhere'),
      tells: { no: 'telling' },
      yes: 'The voice is in some definite place.',
      no: 'The voice is wide and vague: that is too much ambience or another fault, not a size set too small.',
      because: 'A middle taken out of the mains is small and firm, never vague.',
      source: 'stage-width',
    }),
    heard(
      'music-is-played',
      'content',
      { no: 'proof' },
      'Only two-channel music has a wide stage for the mode to shrink.',
    ),
    staysWithoutCenter('without-center'),
  ],
  telltales: [
    {
      id: 'mode-changed-last',
      when: is('changedExactly', 'mode'),
      telling: 'telling',
      yes: 'The listening mode changed last.',
      no: 'It was not the listening mode that changed last.',
      because: 'Modes that add a hall are switched on for one evening and forgotten.',
    },
  ],
  confirm: [confirmedBy('testUpmixOff', 'gone'), confirmedBy('testUnplugged', 'voice-gone')],
  acts: { 'spread-changed': 0.2, 'center-set-to-none': 0.8 },
  boundTo: 'source',
  remedies: [
    {
      id: 'size-up',
      act: 'ambience-changed',
      title: 'Set the size one step larger',
      steps: [
        'Play a singer in the middle with the mode on.',
        'Open its settings and set the size one step larger, then listen; go on to large if it helps.',
        'If the hall gets too much, look for a separate level of the ambience and lower that.',
      ],
      minutes: 4,
      expect:
        'The singer comes back into the mains and the middle seat gets its stage back (now about {widthLossPct} percent is lost). The price off the middle: what center and mains then share combs there, and the singer leans to the near main.',
      verify:
        'Switch the mode off and on at the middle seat: the stage keeps its width. Check the end seat too.',
      cautions: [],
      changes: ['ambienceSize', 'upmixCommonPart', 'testUpmixOff', 'testUnplugged', 'voiceDirection'],
      cures: 0.8,
    },
    {
      id: 'mode-without-ambience',
      act: 'other-listening-mode',
      title: 'Use an upmix without ambience, with its center opened',
      steps: [
        'Step to a plain upmix and look for its center setting.',
        'Open it to half for a single seat in the middle; for a row leave it nearly closed.',
      ],
      minutes: 5,
      expect:
        'Width can be set without a hall in the music. Opening serves the middle seat; the end seats keep a firm singer only while it is nearly closed.',
      verify:
        'The song spans the mains at the middle seat, and the end seat still hears the singer in the middle.',
      cautions: [],
      changes: [
        'upmixAmbience',
        'ambienceSize',
        'upmixCenterControl',
        'centerSpread',
        'upmixCommonPart',
        'testUpmixOff',
        'testUnplugged',
      ],
      cures: 0.75,
    },
    {
      id: 'mode-off-for-music',
      act: 'upmix-off',
      title: 'Switch the mode off for music',
      steps: ['Choose plain two-channel playback for the music inputs.'],
      minutes: 2,
      expect: 'Full width for the middle seat; off the middle the singer goes to the near main.',
      verify: 'From the middle seat a song spans both mains.',
      cautions: [],
      changes: ['upmixUse', 'testUpmixOff'],
      cures: 0.85,
    },
  ],
});
