/**
 * Two drivers that play the same part of the voice side by side are equally far from the middle seat and
 * unequally far from the end seats; half a wavelength apart they cancel. The owner hears a clear voice in the
 * middle and a muffled or thin one at the ends of the sofa, first as a change of tone, then as lost words.
 * Distance decides: the same sofa is mild at 3 m and clearly wrong at 2.2 m. A woofer pair is harmless where
 * spacing times handover frequency stays low, which the computed dip covers.
 * Left out: cabinet edges, waveguides and room reflections, which fill very deep holes a little.
 */
import { answers, confirmedBy, defineCause, deviates } from '../cause.js';
import { above, all, is, isNot, oneOf } from '../condition.js';
import { staysInPlace } from '../home-tests.js';
import { measuredAt } from '../measured.js';
import { BOX } from '../outdated.js';

export const driverLayout = defineCause({
  id: 'driver-layout',
  title: 'Drivers side by side cancel for the outer seats',
  severity: 'severe',
  priorDb: -9,
  priorBecause:
    'Lying centers with paired cones are the commonest kind, and many of them serve a sofa seen from near.',
  story:
    'Two cones of the center play the same part of the voice, one beside the other. In the middle both arrive together. At the outer seats one arrives later, and the middle of the voice cancels.',
  notWhen:
    'Wrongly blamed for a single seat straight in front, for a row far away, for outer cones that hand over to the middle low enough, and for any box whose voice drivers stand above each other or share one spot.',
  inVain:
    'A louder center raises the hole with the rest. Boosting the hole costs power and overdrives the middle seat. Turning the box toward the bad seat moves the hole to the other end of the row. A correction measured over several seats averages the hole and brightens the middle.',
  applies: is('layoutKind', 'shared-band-side-by-side'),
  // Cones side by side in the voice range: more than half of all centers (judgement).
  appliesIn: 0.6,
  links: {
    'voice-unclear-off-side': 0.8,
    'voice-changes-tone': 0.3,
    hollow: 0.3,
    dull: 0.2,
    'swishes-with-head-movement': 0.1,
    'voice-unclear-everywhere': 0.05,
    'voice-unclear': 0.8,
    'voice-unclear-back-row': 0.15,
  },
  pictures: ['off-axis', 'room-above'],
  groups: {
    // One hole, told as depth, as lost speech and as an angle: only the most telling of the three counts.
    lobing: 'same-quantity',
    'where-heard': 'same-mechanism',
    'near-by': 'independent',
    history: 'independent',
    measured: 'independent',
    dropped: 'independent',
    swapped: 'independent',
  },
  rules: [
    deviates({
      id: 'dip-at-worst-seat',
      group: 'lobing',
      of: 'layoutDipDb',
      limit: 'dipDb',
      yes: 'At the worst seat the drivers cancel by {layoutDipDb} near {layoutDipHz}; {limit} is clearly audible.',
      no: 'At the worst seat the drivers cancel by no more than {layoutDipDb}; it takes {limit} to be clearly audible.',
      because:
        'The path from the two drivers to an outer seat differs; where the difference is half a wavelength they cancel. Spacing, crossover and the angle of the seat set how deep.',
      source: 'lobing-grades',
    }),
    deviates({
      id: 'seat-beyond-its-angle',
      group: 'lobing',
      of: 'seatAngleMaxDeg',
      limit: { computed: 'layoutFailDeg' },
      yes: 'The outermost seat is at {seatAngleMaxDeg}, outside the {layoutFailDeg} that this very center serves.',
      no: 'The outermost seat is at {seatAngleMaxDeg}, inside the {layoutFailDeg} that this very center serves.',
      because:
        'Each layout keeps its voice up to an angle that follows from spacing times crossover. Sitting farther back makes the angle of the same sofa smaller, so distance decides.',
      source: 'interference',
    }),
    deviates({
      id: 'speech-lost-at-worst-seat',
      group: 'lobing',
      of: 'layoutSpeechLossDb',
      limit: 'speechLossDb',
      only: 'for',
      yes: 'Weighted by what speech needs, the worst seat loses {layoutSpeechLossDb}; {limit} is clear.',
      no: 'Weighted by what speech needs, the worst seat loses only {layoutSpeechLossDb}; a narrow hole is heard as tone first.',
      because:
        'A broad hole between 1 and 2.5 kHz sits where consonants are told apart, so it costs words and not only tone.',
      source: 'speech-index',
    }),
    answers({
      id: 'worse-off-the-middle',
      group: 'where-heard',
      when: is('troubleSeats', 'off-middle'),
      tells: { yes: 'telling', no: 'telling' },
      yes: 'It is heard at the seats off to the side, where such a layout cancels.',
      no: 'It is not a matter of the seats off to the side, and only there does such a layout cancel.',
      because:
        'On its axis a level pair is as good as any other center; it harms only listeners who are off to the side.',
      source: 'interference',
    }),
    answers({
      id: 'clear-in-the-middle',
      group: 'where-heard',
      when: is('testSitMiddle', 'clear-in-middle'),
      tells: { yes: 'telling', no: 'strong' },
      yes: 'The same minute of speech is clear in the middle and worse at the end, as a cancellation by angle would have it.',
      no: 'The same minute of speech is no better in the middle, which a cancellation by angle cannot explain.',
      because:
        'Walking from the end seat to the middle changes the angle and hardly anything else, so it tells a fault of angle from one that is everywhere.',
    }),
    answers({
      id: 'stays-with-the-seat',
      group: 'where-heard',
      when: is('testSwapSeats', 'stays-with-seat'),
      tells: { yes: 'hint', no: 'telling' },
      yes: 'After changing places the trouble stayed with the seat.',
      no: 'After changing places the trouble did not stay with the seat, so the angle of that seat is not it.',
      because: 'What cancels at a place cancels for whoever sits there.',
    }),
    answers({
      id: 'bad-on-its-axis-too',
      group: 'near-by',
      when: is('testNearCenter', 'still-bad'),
      tells: { yes: 'telling', no: 'slight', against: true },
      yes: 'One meter straight in front the voice is as bad as at the seat, where its drivers arrive together.',
      no: 'One meter straight in front the voice is better, as it should be where the drivers arrive together.',
      because:
        'On the axis the paired drivers are equally far away and cannot cancel; what is wrong there is the loudspeaker, its channel or the program.',
      source: 'interference',
    }),
    answers({
      id: 'came-suddenly',
      group: 'history',
      when: is('onset', 'sudden'),
      tells: { yes: 'telling', against: true },
      yes: 'It came suddenly, and a driver layout does not change overnight.',
      no: 'It did not come suddenly, which is all the same to a driver layout.',
      because:
        'The layout has been the same since the box was bought; only new seats or a new center bring it on.',
    }),
    measuredAt('measured', 'hole', {
      what: 'the layout of its drivers',
      at: 'layoutHoleHz',
      source: 'interference',
    }),
    measuredAt('dropped', 'drop', {
      what: 'the layout of its drivers',
      at: 'layoutDropDb',
      source: 'interference',
    }),
    staysInPlace('swapped'),
  ],
  telltales: [
    {
      id: 'hole-follows-the-seat',
      when: is('holeFollows', 'seat'),
      telling: 'telling',
      yes: 'The measured hole moves from seat to seat along the row.',
      no: 'The measured hole does not move along the row.',
      because: 'The angle of the seat sets where two drivers cancel.',
    },
    {
      id: 'two-cones-in-sight',
      when: is('conesSeen', 'two-side-by-side'),
      telling: 'telling',
      yes: 'Two equal cones lie side by side.',
      no: 'No two equal cones lie side by side.',
      because:
        'Only drivers that share a band side by side cancel off to the side; two equal cones in a lying box mostly do.',
    },
    {
      id: 'fine-in-the-middle',
      when: is('fineSeats', 'middle'),
      telling: 'telling',
      yes: 'It is fine in the middle seat.',
      no: 'The middle seat is not the one place where it is fine.',
      because: 'On its axis a lying pair is in step; only off the axis it cancels.',
    },
    {
      id: 'alike-on-both-sides',
      when: is('troubleSide', 'both'),
      telling: 'hint',
      yes: 'It is alike on both sides of the middle.',
      no: 'It is not alike on both sides of the middle.',
      because: 'A box is symmetrical; what it does to the left it does to the right.',
    },
  ],
  confirm: [confirmedBy('testSitMiddle', 'clear-in-middle'), confirmedBy('testSwapSeats', 'stays-with-seat')],
  acts: { 'seat-moved-back': 0.3, 'center-set-to-none': 0.7, 'center-unplugged': 0.3 },
  remedies: [
    {
      id: 'turn-over',
      act: 'center-turned-over',
      title: 'Turn the center over so that its full-range cone serves the poorer side',
      when: is('centerLayout', 'two-and-a-half-way'),
      steps: [
        'Find the end of the row that hears the voice worse.',
        'Turn the center upside down, so that its two cones change sides.',
        'Listen again at both ends and keep the better way.',
      ],
      minutes: 5,
      expect:
        'In this design the two ends of the row hear different loudspeakers; turning it over swaps them, it does not cure both.',
      verify: 'Play one minute of speech at the end seat that matters, before and after.',
      cautions: ['thin-display'],
      changes: ['centerOrientation', 'fullRangeMidSide', 'troubleSeats', 'testSitMiddle'],
      cures: 0.35,
    },
    {
      id: 'sit-inside-its-angle',
      forbiddenBy: ['seats-stay'],
      act: 'seat-moved-to-middle',
      title: 'Bring the outer seats inside the angle that the center serves',
      when: above('seatAngleMaxDeg', { other: 'layoutFailDeg' }),
      gain: { of: 'layoutDipDb', to: { seatDistance: { times: 1.3 } } },
      steps: [
        'Move the row back, or the outer seats toward the middle, as far as the room allows.',
        'Measure how far the outermost head is from the middle line and from the center.',
        'Measure and enter the distances again if the row has moved.',
      ],
      minutes: 15,
      expect:
        'The outermost seat is at {seatAngleMaxDeg} now; inside {layoutFailDeg} this center keeps its voice. A third farther away the dip falls from {layoutDipDb} to {after}.',
      verify: 'Speech at the end seat is as clear as in the middle seat.',
      cautions: ['lifting'],
      changes: ['seatDistance', 'seatSpacing', 'tapedCenter', 'tapedMains', 'troubleSeats', 'testSitMiddle'],
      cures: 0.5,
    },
    {
      id: 'stand-upright',
      forbiddenBy: ['center-stays', 'cannot-stay-raised'],
      act: 'center-stood-upright',
      title: 'Stand the center on its end, tweeter level with the ears',
      when: all(
        oneOf(
          'centerLayout',
          'mid-tweeter-mid',
          'nested-mid-tweeter-mid',
          'two-and-a-half-way',
          'horizontal-two-way',
        ),
        isNot('centerOrientation', 'upright'),
      ),
      gain: { of: 'layoutDipDb', to: { centerOrientation: 'upright' } },
      steps: [
        'Stand the box on its end where the picture leaves room, and secure it.',
        'Point it at the ears: upright it cancels above and below its axis instead.',
        'Listen at both ends of the row.',
      ],
      minutes: 10,
      expect:
        'Every seat of the row now hears the drivers equally far away; the {layoutDipDb} dip at the outer seat falls to {after}. Standing up or lying down costs voice instead.',
      verify: 'Walk along the row while somebody reads the news: the voice keeps its tone.',
      cautions: ['thin-display', 'lifting'],
      changes: ['centerOrientation', 'centerTweeterHeight', 'centerTilt', 'troubleSeats', 'testSitMiddle'],
      cures: 0.8,
    },
    {
      id: 'replace-layout',
      act: 'center-exchanged',
      title: 'Change to a center whose voice drivers stand above each other or share one spot',
      steps: [
        'Look for a tweeter above a mid between the outer cones, a tweeter inside a cone, or a third upright main.',
        'For outer cones ask for their spacing and for the frequency at which they hand over: the closer and the lower, the wider it serves.',
        'Put the figures into this case before you buy and compare the seats.',
      ],
      minutes: 60,
      cost: 'high',
      expect: 'The dip at the outer seat falls from {layoutDipDb} to below 2 dB with a suitable layout.',
      verify: 'The same minute of speech sounds alike in the middle and at the end of the row.',
      cautions: ['power-off-wires', 'lifting'],
      changes: [...BOX, 'troubleSeats', 'testSitMiddle'],
      cures: 0.9,
    },
  ],
});
