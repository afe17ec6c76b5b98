/**
 * Two tweeters (or two complete boxes) some hand widths apart play the same treble. Their paths are equal on one
 * upright plane only; beside it the treble is full of narrow holes that move with the head.
 * The owner hears treble that swishes, thins or turns phasey. Off the middle words suffer too: where the cones lie apart
 * as well, as in two whole boxes, more than with a common pair beside one tweeter.
 * Left out: room reflections, which smear the comb, and the ear's own smoothing of very fine teeth.
 */
import { answers, confirmedBy, defineCause, deviates } from '../cause.js';
import { is, isNot, oneOf } from '../condition.js';
import { staysInPlace } from '../home-tests.js';
import { BOX } from '../outdated.js';

export const outerTweeters = defineCause({
  id: 'outer-tweeters',
  title: 'Two tweeters apart play the same treble',
  severity: 'clear',
  priorDb: -6,
  priorBecause: 'Rare as a product, common in systems where two small boxes are laid down as a center.',
  story:
    'The center has a tweeter at each end, or two boxes lie side by side. Only on the line exactly between them do both arrive together; everywhere else their treble interferes, and it changes with every inch of head movement.',
  notWhen:
    'Wrongly blamed for one listener exactly on the line between the two, and for a room that rings. Two cones with a single tweeter between them are another matter.',
  applies: is('layoutKind', 'outer-tweeters'),
  // Tweeters at both ends, or two boxes on their sides: one center in twenty (judgement).
  appliesIn: 0.05,
  links: {
    'swishes-with-head-movement': 0.7,
    'voice-changes-tone': 0.4,
    'voice-unclear-off-side': 0.65,
    hollow: 0.4,
    dull: 0.3,
    harsh: 0.2,
    'voice-unclear': 0.4,
    'image-follows-head': 0.1,
  },
  pictures: ['off-axis', 'room-above'],
  groups: {
    comb: 'same-quantity',
    'head-movement': 'same-mechanism',
    'where-heard': 'same-mechanism',
    'near-by': 'independent',
    swapped: 'independent',
  },
  rules: [
    deviates({
      id: 'treble-dip-at-worst-seat',
      group: 'comb',
      of: 'tweeterDipDb',
      limit: 'dipDb',
      yes: 'At the worst seat the two tweeters leave a hole of {tweeterDipDb} in the treble; {limit} is clearly audible.',
      no: 'At the worst seat the two tweeters leave no more than {tweeterDipDb} of a hole; it takes {limit} to be clearly audible.',
      because:
        'A treble wave is a few centimeters long; tweeters a foot apart are out of step already two or three degrees beside the line between them.',
      source: 'interference',
    }),
    deviates({
      id: 'speech-lost-at-worst-seat',
      group: 'comb',
      of: 'layoutSpeechLossDb',
      limit: 'speechLossDb',
      only: 'for',
      yes: 'Weighted by what speech needs, the worst seat loses {layoutSpeechLossDb}; {limit} is clear.',
      no: 'Weighted by what speech needs, the worst seat loses only {layoutSpeechLossDb}.',
      because:
        'Two cones as far apart as their tweeters cancel in the middle of the voice, at smaller angles than a common pair.',
      source: 'speech-index',
    }),
    deviates({
      id: 'treble-dip-at-main-seat',
      group: 'comb',
      of: 'tweeterDipMainDb',
      limit: 'dipDb',
      only: 'for',
      yes: 'Even in the main seat a small sideways move of the head costs {tweeterDipMainDb} of treble; nobody sits as still as that.',
      no: 'In the main seat, a small sideways move of the head included, the treble loses only {tweeterDipMainDb}.',
      because:
        'Seen from near, even the best seat is served on a plane hardly wider than a head; a small move crosses the first hole.',
      source: 'interference',
    }),
    answers({
      id: 'steadier-with-one-covered',
      group: 'head-movement',
      when: is('testCoverTweeter', 'steadier'),
      tells: { yes: 'strong', no: 'strong' },
      yes: 'With one of the two tweeters covered the treble is steadier.',
      no: 'With one of the two tweeters covered the treble is no steadier, so the two were not fighting audibly.',
      because:
        'With a single source left there is nothing to interfere, at the small price of some treble level.',
      source: 'interference',
    }),
    answers({
      id: 'hard-to-place-noise',
      group: 'head-movement',
      when: is('testNoiseEach', 'phasey'),
      tells: { yes: 'telling', no: 'hint' },
      yes: 'Steady noise from the center is hollow and hard to place, as from two spots at once.',
      no: 'Steady noise from the center is not hollow or hard to place, though two tweeters apart would make it so.',
      because:
        'Noise holds all frequencies at once, so the comb of two sources is heard as a hollow hiss that moves.',
      source: 'comb',
    }),
    answers({
      id: 'worse-at-the-end',
      group: 'where-heard',
      when: is('testSitMiddle', 'clear-in-middle'),
      tells: { yes: 'hint', no: 'hint' },
      yes: 'It is clear in the middle and worse at the end of the row.',
      no: 'It is not worse at the end of the row, where the two tweeters are out of step most.',
      because: 'The narrow line on which the two agree passes through the middle seat at best.',
      source: 'interference',
    }),
    answers({
      id: 'trouble-off-the-middle',
      group: 'where-heard',
      when: oneOf('troubleSeats', 'off-middle', 'one-seat'),
      tells: { yes: 'hint', no: 'hint' },
      yes: 'It is heard at the seats off the line between the two tweeters.',
      no: 'It is not tied to the seats off the line between the two tweeters.',
      because: 'Off the line the paths differ and the treble interferes; on it there is nothing wrong.',
      source: 'interference',
    }),
    answers({
      id: 'good-close-up',
      group: 'near-by',
      when: is('testNearCenter', 'good-near'),
      tells: { yes: 'hint', no: 'slight', against: true },
      yes: 'One meter in front the voice is good, though there the two tweeters differ more, not less.',
      no: 'One meter in front the voice is not right either, as two sources seen from near would have it.',
      because:
        'Coming closer widens the angle between the two tweeters, so their comb gets coarser and plainer; a fault that goes away near by is the room or the path.',
      source: 'comb',
    }),
    staysInPlace('swapped'),
  ],
  telltales: [
    {
      id: 'changes-within-inches',
      when: is('smallHeadMove', 'changes'),
      telling: 'strong',
      yes: 'The sound changes at once when the head moves by a hand width.',
      no: 'The sound does not change with every small movement sideways.',
      because: 'Two tweeters far apart cancel at places that lie inches from each other.',
    },
  ],
  confirm: [
    confirmedBy('testCoverTweeter', 'steadier'),
    confirmedBy('testSitMiddle', 'clear-in-middle'),
    confirmedBy('testNoiseEach', 'phasey'),
  ],
  acts: { 'center-set-to-none': 0.7, 'seat-moved-to-middle': 0.3 },
  remedies: [
    {
      id: 'cover-one',
      title: 'Damp one of the two tweeters for good',
      when: oneOf('centerLayout', 'tweeter-mid-mid-tweeter', 'tweeter-mid-tweeter'),
      steps: [
        'Put a pad of thick felt behind the cloth in front of one tweeter, without touching the dome.',
        'Listen with noise while you move your head sideways by a foot.',
        'Raise the treble of the center by up to 3 dB if the voice has become dull.',
      ],
      minutes: 15,
      expect:
        'The {tweeterDipDb} of holes in the treble at the outer seat go; up to 6 dB of treble level goes with them and can be given back in part. Two cones apart play on, and off the middle still cost some speech.',
      verify: 'The hiss of steady noise keeps its color while the head moves sideways.',
      cautions: ['domes', 'test-noise', 'tweeter-power'],
      changes: ['testCoverTweeter', 'testNoiseEach', 'testSitMiddle', 'toneAcrossPan'],
      cures: 0.6,
    },
    {
      id: 'use-one-box',
      act: 'one-center-disconnected',
      title: 'Use only one of the two boxes, standing upright in the middle',
      when: is('centerLayout', 'paired-boxes'),
      steps: [
        'Switch the power off.',
        'Disconnect one box and stand the other upright in the middle, tweeter toward the ears.',
        'Set the center level again with the test noise.',
      ],
      minutes: 15,
      expect: 'The holes of {tweeterDipDb} at the outer seat go; level falls by up to 6 dB and is set again.',
      verify: 'Walk along the row with steady noise on the center: no swishing.',
      cautions: ['power-off-wires', 'test-noise', 'amplifier-load'],
      changes: [
        'centerLayout',
        'centerTweeterSpacing',
        'centerDriverSpacing',
        'measuredCenterLevel',
        'centerTrim',
        'voiceLoudness',
        'testSitMiddle',
      ],
      cures: 0.85,
    },
    {
      id: 'stand-upright',
      forbiddenBy: ['center-stays', 'cannot-stay-raised'],
      act: 'center-stood-upright',
      title: 'Stand the center on its end, middle at ear height',
      when: isNot('centerLayout', 'paired-boxes'),
      gain: { of: 'tweeterDipDb', to: { centerOrientation: 'upright' } },
      steps: [
        'Stand the box on its end where the picture leaves room, and secure it.',
        'Bring its middle to ear height, or tilt it so that it points at the ears.',
        'Listen along the row.',
      ],
      minutes: 10,
      expect:
        'The row hears both tweeters equally far away; the holes appear for people who stand up or slouch.',
      verify: 'Steady noise keeps its color from one end of the row to the other.',
      cautions: ['thin-display', 'lifting'],
      changes: ['centerOrientation', 'centerTweeterHeight', 'centerTilt', 'testSitMiddle', 'testNoiseEach'],
      cures: 0.6,
    },
    {
      id: 'replace-layout',
      act: 'center-exchanged',
      title: 'Change to a center with a single tweeter',
      steps: [
        'Look for one tweeter above a mid, or inside a cone.',
        'Put its figures into this case and compare the seats before you buy.',
      ],
      minutes: 60,
      cost: 'high',
      expect: 'Treble that stays the same from seat to seat and under movement of the head.',
      verify: 'Steady noise keeps its color while the head moves.',
      cautions: ['power-off-wires'],
      changes: [...BOX, 'testSitMiddle', 'testCoverTweeter'],
      cures: 0.9,
    },
  ],
});
