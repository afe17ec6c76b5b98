/**
 * An upmix with an adjustable center takes the common part out of the mains, and its spread is off: with
 * two-channel music everything in the middle comes from one small box. By energy vectors the stage loses a
 * third of its width; by velocity vectors, below some 700 Hz, hardly any. Half spread does not halve the
 * matter off the middle: shared parts comb there and the voice leans to the near main. Left out: ambience,
 * which a good extraction leaves in the mains.
 */
import { answers, confirmedBy, defineCause, deviates } from '../cause.js';
import { all, any, atLeast, is, isNot, oneOf } from '../condition.js';
import { staysWithoutCenter } from '../home-tests.js';
import { heard, toldTale } from '../remarks.js';

export const spreadOff = defineCause({
  id: 'spread-off',
  title: 'The upmix empties the mains, and its center spread is off',
  severity: 'clear',
  priorDb: -6,
  priorBecause: 'Where a control for it lies closed, one such stage in five is heard as a trouble.',
  story:
    'With two-channel music the upmix takes everything common to both channels out of the mains and gives it to the center alone. The stage shrinks into one small box, although a control for it is there.',
  notWhen:
    'It is not at work in films with their own center channel, where no upmix shares anything out. For a row of seats the closed setting is often the right one: it is the only one that keeps the voice in the middle for everybody.',
  // A spread that is open a little takes width all the same: what is lost decides, not how the switch is called.
  applies: all(
    is('upmixInUse', 'yes'),
    isNot('upmixMiddle', 'leaves'),
    // A spread that is on is not off; it may still be set too small.
    any(
      all(isNot('centerSpread', 'on'), atLeast('widthLossPct', 'widthLossPct.noticeable')),
      atLeast('widthLossPct', 'widthLossPct.clear'),
    ),
    is('upmixKind', 'adjustable-center'),
  ),
  // An upmix in use that takes the middle out and has a control: one system in ten (judgement).
  appliesIn: 0.1,
  links: {
    'image-collapses-to-center': 0.85,
    'voice-changes-tone': 0.12,
    'just-prefer-two-channels': 0.2,
    'small-and-lifeless': 0.35,
    'gaps-between-speakers': 0.15,
  },
  pictures: ['stage'],
  groups: {
    setting: 'same-quantity',
    switching: 'same-mechanism',
    'without-center': 'independent',
    emptied: 'same-quantity',
    heard: 'same-session',
  },
  rules: [
    deviates({
      id: 'width-lost',
      group: 'setting',
      of: 'widthLossPct',
      limit: 'widthLossPct',
      yes: 'As it is set the upmix takes about {widthLossPct} percent of the stage width; {limit} percent is clearly heard.',
      no: 'As it is set the upmix takes about {widthLossPct} percent of the stage width, which is not clearly heard.',
      because:
        'Half-panned sounds move toward the middle by as much of the common part as leaves the mains: computed by energy vectors, which rule above some 700 Hz.',
      source: 'stage-width',
    }),
    answers({
      id: 'spread-opens-stage',
      group: 'switching',
      when: is('testSpreadOn', 'opens'),
      tells: { yes: 'strong', no: 'proof' },
      yes: 'With center spread on the stage opens up.',
      no: 'Center spread does not open the stage, so the empty mains are not the trouble.',
      because: 'Spread puts part of the common sound back into the mains and nothing else changes.',
      source: 'stage-width',
    }),
    heard(
      'upmix-off-cures',
      'switching',
      { yes: 'hint', no: 'proof' },
      'What the upmix makes goes with it. So do faults of the center itself, which then plays no music: this alone does not tell the two apart.',
    ),
    heard(
      'mains-are-empty',
      'emptied',
      { yes: 'telling', no: 'strong' },
      'What is left when the center is silent is what the upmix leaves in the mains.',
    ),
    heard(
      'from-the-small-box',
      'heard',
      { yes: 'hint', no: 'telling' },
      'One source alone has no width of its own; shared with the mains it spreads.',
    ),
    answers({
      id: 'two-channels-come-in',
      group: 'setting',
      when: is('sourceFormat', 'two-channel'),
      tells: { no: 'strong' },
      yes: 'The trouble is heard while two channels come in, so the upmix is at work.',
      no: 'The trouble is heard while a signal with its own center comes in, where the upmix does nothing.',
      because: 'An upmix shares out two channels; a discrete center channel passes by it.',
      source: 'upmix-arithmetic',
    }),
    heard(
      'music-is-played',
      'setting',
      { no: 'proof' },
      'Only two-channel music has a wide stage for the upmix to shrink.',
    ),
    staysWithoutCenter('without-center'),
  ],
  telltales: [
    {
      id: 'mode-changed-last',
      when: oneOf('changedExactly', 'mode', 'reset'),
      telling: 'telling',
      yes: 'The listening mode changed last, or a reset did it.',
      no: 'It was neither the listening mode nor a reset.',
      because: 'A reset leaves the spread of an upmix at off.',
    },
    toldTale('films-are-fine', 'telling', 'An upmix leaves alone what has its own center.'),
    toldTale('two-channels-are-fine', 'strong', 'It is two-channel music that an upmix shrinks.', 'against'),
  ],
  confirm: [
    confirmedBy('testSpreadOn', 'opens'),
    confirmedBy('testUpmixOff', 'gone'),
    confirmedBy('testUnplugged', 'voice-gone'),
  ],
  acts: {
    'other-listening-mode': 0.6,
    'center-turned-down': 0.3,
    'center-set-to-none': 0.85,
    'center-unplugged': 0.2,
  },
  boundTo: 'source',
  remedies: [
    {
      id: 'spread-for-one-seat',
      act: 'spread-on',
      title: 'Switch center spread on, for the seat in the middle',
      when: is('seating', 'single-seat'),
      steps: [
        'Switch the upmix on and play a singer in the middle.',
        'Open its settings and switch center spread on; on a scale, start at half.',
        'Listen from the middle seat and go up or down by taste.',
      ],
      minutes: 3,
      expect:
        'Now about {widthLossPct} percent of the stage is lost; half spread brings back about half of that, full spread all of it at best. In the one seat in the middle this costs nothing, as long as the distances are right.',
      verify:
        'Switch the upmix off and on: the stage keeps nearly its width and the singer stays in the middle.',
      cautions: [],
      changes: ['centerSpread', 'centerSpreadAmount', 'upmixCommonPart', 'testUpmixOff', 'testUnplugged'],
      cures: 0.9,
    },
    {
      id: 'spread-for-a-row',
      act: 'spread-changed',
      title: 'Open center spread a little, and know whom it serves',
      when: oneOf('seating', 'one-row', 'several-rows'),
      steps: [
        'Switch the upmix on and play a singer in the middle.',
        'Open center spread to a fifth, not to half: half leaves most of the off-side trouble.',
        'Where the setting is only on or off: on for one listener in the middle, off for company.',
        'Let one person sit in the middle and one at the end, and agree on a setting.',
      ],
      minutes: 6,
      expect:
        'It serves the middle seat: a fifth of spread brings back about a fifth of the lost width (now about {widthLossPct} percent). The end seats pay: what center and mains share combs there, and the singer leans to the near main ({offSeatLean} at the worst seat as it is set now). In a common room, 2 ft (60 cm) off the middle, a fifth of spread already moves him in part, half of it most of the way.',
      verify:
        'In the middle the stage opens; at the end the singer must still stand in the middle. If not, close it again.',
      cautions: [],
      changes: ['centerSpread', 'centerSpreadAmount', 'upmixCommonPart', 'testUpmixOff', 'testUnplugged'],
      cures: 0.7,
    },
    {
      id: 'two-channels-for-music',
      act: 'upmix-off',
      title: 'Play music for one listener in two channels, and keep the upmix for company',
      steps: [
        'Put plain two-channel playback on one key and the upmix on another.',
        'Use the first alone in the middle seat, the second when the sofa is full.',
      ],
      minutes: 3,
      expect:
        'Full width for the middle seat. At the ends the phantom singer goes to the near main; with company the upmix holds the middle for all.',
      verify:
        'Alone in the middle the stage spans both mains; with company everybody hears the singer in the middle.',
      cautions: [],
      changes: ['upmixUse', 'testUpmixOff'],
      cures: 0.75,
    },
    {
      id: 'trim-check',
      title: 'Check that the center is not too loud as well',
      when: any(is('testSpreadOn', 'same'), is('voiceLoudness', 'louder')),
      steps: ['Step test noise left, center, right.', 'Match the center to the mains by ear or meter.'],
      minutes: 6,
      expect: 'Each decibel too much in the center shrinks the stage further.',
      verify: 'Test noise steps across without a jump in loudness.',
      cautions: ['volume-down', 'test-noise'],
      changes: ['centerTrim', 'measuredCenterLevel', 'voiceLoudness'],
      cures: 0.3,
    },
  ],
});
