/**
 * Two center boxes play the same signal, side by side or above and below the picture. At any place that is not
 * equally far from both, one arrives later and the two comb each other. The owner hears a hollow voice that
 * changes from seat to seat or from sitting to standing. In return the voice can seem to stand on the picture,
 * which is why people keep them. Left out: boxes of different type, and reflections that smear the comb.
 */
import { answers, confirmedBy, defineCause, deviates } from '../cause.js';
import { is, noneOf, oneOf } from '../condition.js';
import { measuredAt } from '../measured.js';
import { BOX } from '../outdated.js';

export const twinCenters = defineCause({
  id: 'twin-centers',
  title: 'Two centers share one signal',
  severity: 'clear',
  priorDb: -3,
  priorBecause: 'Few systems have two, and where there are two they usually interfere.',
  story:
    'Two center loudspeakers play the same voice. Only where both are equally far do they work as one; elsewhere one is late and cancels parts of the other.',
  notWhen:
    'Wrongly blamed where the second box is silent, or where every listener is equally far from both. Two boxes above and below can lift the voice onto the picture, at a price in tone.',
  applies: is('centerCount', 'two'),
  // Two centers: three systems in a hundred (judgement).
  appliesIn: 0.03,
  links: {
    hollow: 0.6,
    'swishes-with-head-movement': 0.4,
    'voice-changes-tone': 0.4,
    'voice-unclear-off-side': 0.35,
    'voice-unclear-everywhere': 0.25,
    'voice-low-or-high': 0.1,
    'voice-too-loud': 0.15,
    'voice-unclear': 0.35,
  },
  groups: {
    comb: 'same-quantity',
    'head-movement': 'same-mechanism',
    'where-heard': 'independent',
    history: 'independent',
    drivers: 'independent',
    measured: 'independent',
  },
  rules: [
    deviates({
      id: 'dip-between-the-two',
      group: 'comb',
      of: 'twinCenterDipDb',
      limit: 'dipDb',
      yes: 'At the worst seat the two boxes cancel by {twinCenterDipDb}; {limit} is clearly audible.',
      no: 'At the worst seat the two boxes cancel by no more than {twinCenterDipDb}; it takes {limit} to be clearly audible.',
      because:
        'The same voice from two places arrives twice. Where the paths differ by half a wave it cancels, at many pitches at once.',
      source: 'comb',
    }),
    answers({
      id: 'hollow-noise',
      group: 'head-movement',
      when: is('testNoiseEach', 'phasey'),
      tells: { yes: 'telling', no: 'telling' },
      yes: 'Steady noise from the center is hollow and hard to place.',
      no: 'Steady noise from the center is not hollow or hard to place, though two boxes would make it so.',
      because: 'Two equal sources comb steady noise into a hollow hiss that shifts with the head.',
      source: 'comb',
    }),
    answers({
      id: 'steadier-with-one-off',
      group: 'head-movement',
      when: is('testOneCenterOff', 'steadier'),
      tells: { yes: 'strong', no: 'strong' },
      yes: 'With one of the two boxes disconnected the voice is fuller and steadier.',
      no: 'With one of the two boxes disconnected nothing changes but the level.',
      because:
        'With a single source left there is nothing to interfere. Covering a tweeter is no such test: the rest of both boxes plays on.',
      source: 'comb',
    }),
    answers({
      id: 'changes-with-posture',
      group: 'head-movement',
      applies: oneOf('twinArrangement', 'above-below', 'stacked'),
      when: noneOf('testPosture', 'same'),
      tells: { yes: 'telling', no: 'telling' },
      yes: 'Standing up or sliding low changes the tone of the voice, as two boxes above each other would have it.',
      no: 'Standing, sitting and slouching, the voice keeps its tone, though two boxes above each other would change it.',
      because: 'Between two boxes above each other the paths differ with the height of the ears.',
      source: 'comb',
    }),
    answers({
      id: 'differs-from-seat-to-seat',
      group: 'where-heard',
      when: oneOf('testSitMiddle', 'clear-in-middle', 'worse-in-middle'),
      tells: { yes: 'slight', no: 'slight' },
      yes: 'It differs between the middle and the end of the row, as the paths from the two boxes do.',
      no: 'It is the same in the middle and at the end of the row.',
      because:
        'Side by side the two agree in the middle only; above and below they disagree at any seat not level with both.',
      source: 'geometry',
    }),
    answers({
      id: 'since-the-second-box',
      group: 'history',
      when: is('lastChange', 'loudspeaker'),
      tells: { yes: 'telling' },
      yes: 'It began with a new or moved loudspeaker, such as the second box.',
      no: 'It did not begin with a new or moved loudspeaker.',
      because: 'Two boxes rarely come together: what was good with one and is not with two tells its cause.',
    }),
    answers({
      id: 'one-stays-silent',
      group: 'drivers',
      when: is('testEarToDrivers', 'silent'),
      tells: { yes: 'telling', against: true },
      yes: 'An ear at the drivers finds one silent, and a silent box interferes with nothing.',
      no: 'An ear at the drivers finds them playing.',
      because: 'Interference needs two sources; a dead one points to a cable or a driver instead.',
    }),
    measuredAt('measured', 'hole', { what: 'the pair', at: 'twinCenterDipHz', source: 'comb' }),
  ],
  telltales: [
    {
      id: 'changes-up-and-down',
      when: is('smallHeadMove', 'up-down'),
      telling: 'telling',
      yes: 'The sound changes when the head moves up or down.',
      no: 'The sound does not change up and down alone.',
      because: 'Of two boxes above each other the nearer one changes with the height of the ear.',
    },
  ],
  confirm: [confirmedBy('testOneCenterOff', 'steadier'), confirmedBy('testNoiseEach', 'phasey')],
  acts: { 'seat-moved-to-middle': 0.2, 'center-set-to-none': 0.8 },
  remedies: [
    {
      id: 'use-one',
      act: 'one-center-disconnected',
      title: 'Disconnect one of the two and keep the better placed one',
      gain: { of: 'twinCenterDipDb', to: { centerCount: 'one' } },
      steps: [
        'Switch the power off.',
        'Disconnect the box that is farther from ear height or from the picture, and insulate its wires.',
        'Power on at low volume. If both are silent now they were in series: power off, and wire the one you keep straight to the amplifier.',
        'Set the center level and distance again.',
      ],
      minutes: 15,
      expect:
        'The cancellation of {twinCenterDipDb} goes; the level changes by up to 6 dB and is set again. The voice moves to the box that is left.',
      verify: 'Walk along the row and stand up while somebody reads the news: the voice keeps its tone.',
      cautions: ['power-off-wires', 'amplifier-load', 'test-noise'],
      changes: [
        'centerCount',
        'centerTweeterHeight',
        'enteredCenter',
        'tapedCenter',
        'centerTrim',
        'measuredCenterLevel',
        'voiceLoudness',
        'voiceDirection',
        'testNoiseEach',
        'testSitMiddle',
        'testOneCenterOff',
      ],
      cures: 0.9,
    },
    {
      id: 'close-together',
      forbiddenBy: ['center-stays'],
      title: 'Put the two boxes together, drivers above each other',
      gain: { of: 'twinCenterDipDb', to: { twinArrangement: 'stacked', twinSpacing: 0.2 } },
      steps: [
        'Switch the power off before you move them.',
        'Stack them tweeter to tweeter, one upside down, and secure them.',
        'Bring the pair to ear height or point it at the ears.',
      ],
      minutes: 20,
      expect:
        'The row hears both equally far away: {twinCenterDipDb} falls to {after}. People who stand up still hear the two cancel.',
      verify: 'Steady noise keeps its color along the row.',
      cautions: ['power-off-wires', 'lifting', 'thin-display'],
      changes: [
        'twinArrangement',
        'twinSpacing',
        'centerTweeterHeight',
        'centerTilt',
        'tapedCenter',
        'testNoiseEach',
        'testSitMiddle',
      ],
      cures: 0.5,
    },
    {
      id: 'one-larger-center',
      act: 'center-exchanged',
      title: 'Replace the pair by one center that matches the mains',
      steps: [
        'Choose a box with its voice drivers above each other or in one spot.',
        'Place it as near the picture as possible and point it at the ears.',
      ],
      minutes: 60,
      cost: 'high',
      expect: 'One source, one arrival, the same tone at every seat.',
      verify: 'The voice sounds alike in the middle and at the end of the row.',
      cautions: ['power-off-wires', 'lifting'],
      changes: [...BOX, 'centerCount', 'testSitMiddle', 'voiceDirection'],
      cures: 0.85,
    },
  ],
});
