/**
 * The center is not pointed at the ears, and its drivers stand above each other or beam: above or below the axis
 * mid and tweeter fall out of step around the crossover. The owner hears a dull or hollow voice in the whole row,
 * better when standing up or crouching.
 * The angle alone convicts nobody: a level pair with the tweeter in line, or a tweeter inside a cone, hardly minds
 * twenty degrees. Left out: waveguides, which narrow or tilt the treble.
 */
import { answers, confirmedBy, defineCause, deviates } from '../cause.js';
import { all, any, atLeast, below, is, noneOf, oneOf } from '../condition.js';
import { alikeAlongTheRow, staysInPlace } from '../home-tests.js';
import { PLACE } from '../outdated.js';

export const aim = defineCause({
  id: 'aim',
  title: 'The center is not aimed at the ears',
  severity: 'clear',
  priorDb: -12,
  priorBecause: 'Low boxes lying flat are common, but most layouts forgive the angle.',
  story:
    'The center lies flat and low (or high), and its axis passes below or above the heads. Mid and tweeter above each other then reach the ears out of step, and the treble beams past them.',
  notWhen:
    'Wrongly blamed for a voice that comes from too low: tilting changes the tone, not the place. A lying box with cones and tweeter in one line loses almost nothing above and below its axis.',
  links: {
    dull: 0.5,
    'voice-unclear-everywhere': 0.4,
    'voice-changes-tone': 0.4,
    hollow: 0.3,
    'voice-unclear': 0.4,
    'voice-unclear-back-row': 0.15,
  },
  pictures: ['room-side'],
  groups: {
    'off-axis': 'same-quantity',
    tilted: 'same-session',
    tone: 'same-session',
    'where-heard': 'same-mechanism',
    'near-by': 'independent',
    swapped: 'independent',
  },
  rules: [
    deviates({
      id: 'dip-above-or-below-axis',
      group: 'off-axis',
      of: 'aimDipDb',
      limit: 'dipDb',
      // How the box points is mostly a guess: what it costs counts in full, that it costs nothing less so.
      only: 'for',
      yes: 'The ears are {aimErrorDeg} off the axis up or down, where this center loses {aimDipDb}; {limit} is clearly audible.',
      no: 'The ears are {aimErrorDeg} off the axis up or down, where this center loses only {aimDipDb}.',
      because:
        'Drivers above each other are equally far from the ears only on the axis. The angle is harmless where they share one height or one spot.',
      source: 'interference',
    }),
    answers({
      id: 'loses-something',
      group: 'off-axis',
      when: atLeast('aimDipDb', 'dipDb.noticeable'),
      tells: { no: 'hint' },
      yes: 'Toward the ears this center loses {aimDipDb}.',
      no: 'Toward the ears this center loses only {aimDipDb}, which nobody notices.',
      because: 'On its axis, or where its drivers share one height, a center is innocent of its aim.',
      source: 'interference',
    }),
    answers({
      id: 'nothing-lost-as-it-stands',
      group: 'off-axis',
      // A box that was turned is how such a fault begins: that it lies as usual is seen, not taken for granted.
      when: all(
        below('aimDipDb', 'dipDb.noticeable'),
        any(is('orientationSeen', 'yes'), oneOf('centerLayout', 'coaxial', 'full-range')),
      ),
      tells: { yes: 'strong', against: true },
      yes: 'As it stands, this center loses only {aimDipDb} toward the ears, which nobody notices.',
      no: 'As it stands, this center loses {aimDipDb} toward the ears.',
      because: 'On its axis, or where its drivers share one height, a center is innocent of its aim.',
      source: 'interference',
    }),
    answers({
      id: 'clearer-when-tilted',
      group: 'tilted',
      when: is('testTilt', 'clearer'),
      tells: { yes: 'strong', no: 'strong' },
      yes: 'Pointed at the ears with a wedge, the voice became clearer.',
      no: 'Pointed at the ears with a wedge, the voice did not change.',
      because: 'A wedge takes the whole angle away for nothing; a fault of aim must follow it.',
    }),
    answers({
      id: 'changes-with-posture',
      group: 'tilted',
      when: noneOf('testPosture', 'same'),
      tells: { yes: 'telling', no: 'telling' },
      yes: 'Standing up or sliding low changes the tone of the voice, as an axis that misses the ears would have it.',
      no: 'Standing, sitting and slouching, the voice keeps its tone, so the height of the ears is not it.',
      because: 'Ten seconds on the same spot change the vertical angle and hardly anything else.',
    }),
    answers({
      id: 'noise-duller-in-center',
      group: 'tone',
      when: is('testNoiseEach', 'duller'),
      tells: { yes: 'hint', no: 'hint' },
      yes: 'Steady noise is duller from the center than from the mains, as when the treble passes over the heads.',
      no: 'Steady noise is not duller from the center than from the mains.',
      because: 'Treble is what beams, so a box that points past the ears loses treble first.',
    }),
    answers({
      id: 'pan-duller-in-center',
      group: 'tone',
      when: is('toneAcrossPan', 'duller'),
      tells: { yes: 'hint', no: 'slight' },
      yes: 'A voice that crosses the front gets duller as it passes the center.',
      no: 'A voice that crosses the front does not get duller as it passes the center.',
      because:
        'Mains that point at the ears beside a center that does not make the treble drop in the middle.',
    }),
    answers({
      id: 'only-at-the-end-seats',
      group: 'where-heard',
      when: is('testSitMiddle', 'clear-in-middle'),
      tells: { yes: 'telling', no: 'slight', against: true },
      yes: 'It is clear in the middle and worse at the end; a wrong tilt is shared by the whole row.',
      no: 'It is not a matter of middle or end, as a wrong tilt would have it.',
      because: 'All heads of a row are about equally high, so a vertical angle harms them alike.',
      source: 'geometry',
    }),
    alikeAlongTheRow(
      'where-heard',
      'a wrong tilt',
      'All heads of a row are about equally high, so a vertical angle harms them alike.',
    ),
    answers({
      id: 'bad-on-its-axis-too',
      group: 'near-by',
      when: is('testNearCenter', 'still-bad'),
      tells: { yes: 'telling', no: 'slight', against: true },
      yes: 'One meter in front, with the head at its height, the voice is as bad as at the seat.',
      no: 'One meter in front, with the head at its height, the voice is better than at the seat.',
      because: 'With the head at its height the listener is on the axis; a fault of aim is gone there.',
    }),
    staysInPlace('swapped'),
  ],
  telltales: [
    {
      id: 'axis-passes-the-heads',
      when: oneOf('centerPointsAt', 'below', 'above'),
      telling: 'telling',
      yes: 'Looking along its top, the center points past the ears.',
      no: 'Looking along its top, the center points at the ears.',
      because: 'Treble goes where the box points; what passes the heads is lost to them.',
    },
    {
      id: 'points-at-the-ears',
      when: is('centerPointsAt', 'ears'),
      telling: 'telling',
      speaks: 'against',
      yes: 'Looking along its top, the center points at the ears.',
      no: 'Looking along its top, the center points past the ears.',
      because: 'On its axis no box is wrongly aimed.',
    },
    {
      id: 'fine-at-another-height',
      when: is('fineSeats', 'other-height'),
      telling: 'strong',
      yes: 'It is fine standing up or crouching.',
      no: 'Standing or crouching is not where it is fine.',
      because: 'Only the vertical angle changes when a listener stands up in one place.',
    },
  ],
  confirm: [
    confirmedBy('testPosture', 'better-higher', 'better-lower', 'changes'),
    confirmedBy('testTilt', 'clearer'),
    confirmedBy('testNoiseEach', 'duller'),
  ],
  acts: {
    'center-lowered': 0.5,
    'ears-lowered': 0.7,
    'ears-raised': 0.7,
    'center-set-to-none': 0.8,
    'center-exchanged': 0.3,
  },
  remedies: [
    {
      id: 'wedge',
      act: 'center-tilted',
      title: 'Tilt the center so that it points at the ears',
      when: is('hangsOnWall', 'no'),
      gain: { of: 'aimDipDb', to: { centerTilt: { like: 'tiltToEarsDeg' } } },
      steps: [
        'Put rubber wedges under the front edge if the box is low, under the back edge if it is high.',
        'Sight along the top of the box: it should point at the ears of the main seat.',
        'Make sure that it cannot slide or tip.',
      ],
      minutes: 5,
      expect:
        'The ears are {aimErrorDeg} off its axis now; pointed at them, the dip falls from {aimDipDb} to {after}.',
      verify: 'The voice is as clear seated as when you bend down (or stand up) into its axis.',
      cautions: ['thin-display'],
      changes: ['centerTilt', 'testTilt', 'testNoiseEach', 'toneAcrossPan'],
      cures: 0.85,
    },
    {
      id: 'turn-upside-down',
      act: 'center-turned-over',
      title: 'Turn the box over so that its good side faces the ears',
      when: oneOf('centerLayout', 'vertical-two-way', 'nested-mid-tweeter-mid', 'woofer-mid-tweeter-woofer'),
      steps: [
        'Turn the box upside down and listen again.',
        'Keep the position in which the voice is fuller at the seat.',
      ],
      minutes: 5,
      expect:
        'Where mid and tweeter are not in step to begin with, one way up serves ears above the axis better than the other.',
      verify: 'Steady noise from the center is closer to that of the mains.',
      cautions: ['domes', 'thin-display'],
      changes: ['centerOrientation', 'testNoiseEach', 'toneAcrossPan'],
      cures: 0.25,
    },
    {
      id: 'tilt-on-wall',
      forbiddenBy: ['no-holes'],
      act: 'center-tilted',
      title: 'Tilt the center on its wall mount so that it points at the ears',
      when: is('hangsOnWall', 'yes'),
      gain: { of: 'aimDipDb', to: { centerTilt: { like: 'tiltToEarsDeg' } } },
      steps: [
        'Look whether its mount tilts; if not, fit one that does and carries its weight.',
        'Sight along the top of the box: it should point at the ears of the main seat.',
        'Tighten the mount and listen again.',
      ],
      minutes: 30,
      cost: 'low',
      expect:
        'The ears are {aimErrorDeg} off its axis now; pointed at them, the dip falls from {aimDipDb} to {after}.',
      verify: 'The voice is as clear seated as when you bend down (or stand up) into its axis.',
      cautions: ['lifting'],
      changes: ['centerTilt', 'testTilt', 'testNoiseEach', 'toneAcrossPan'],
      cures: 0.85,
    },
    {
      id: 'raise-to-ears',
      forbiddenBy: ['cannot-stay-raised', 'center-stays'],
      act: 'center-raised',
      title: 'Raise or lower the center toward ear height',
      gain: { of: 'aimDipDb', to: { centerTweeterHeight: { like: 'earHeight' }, centerTilt: 0 } },
      steps: [
        'Use a firm stand or shelf.',
        'Aim for an axis that passes through the ears without a steep tilt.',
      ],
      minutes: 30,
      cost: 'low',
      expect: 'The angle of {aimErrorDeg} shrinks, and the voice moves toward the picture as well.',
      verify: 'Seated and standing the voice has the same tone.',
      cautions: ['thin-display', 'lifting'],
      changes: [...PLACE, 'testTilt'],
      cures: 0.8,
    },
  ],
});
