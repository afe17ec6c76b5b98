/**
 * Crossover, size setting or subwoofer timing leave a hole or a boom in the low voice, or let the voice
 * follow the subwoofer. A crossover at the low limit is harmless with a closed box and a 12 dB high-pass,
 * and deadly with a port and 24 dB, unless the subwoofer is timed to it. It is judged with the subwoofer
 * aligned unless its timing is known to be wrong. Left out: room resonances, which boom with any setting. A
 * real center has up to 3 dB less bass than a phantom voice: that is crosstalk at the ears, not this.
 */
import { answers, confirmedBy, defineCause, deviates } from '../cause.js';
import { above, all, any, atLeast, is, isNot, noneOf, oneOf } from '../condition.js';
import { measuredAt } from '../measured.js';
import { toldTale } from '../remarks.js';

/** There is a crossover between center and subwoofer. */
const CROSSED = all(isNot('subwoofer', 'none'), isNot('centerBassSize', 'large'));

export const bassManagement = defineCause({
  id: 'bass-management',
  title: 'Bass crossover, size or subwoofer timing spoils the low voice',
  severity: 'clear',
  priorDb: -12,
  priorBecause:
    'Set wrongly in many homes, but heard as a boomy or lean system rather than as a spoiled voice.',
  story:
    'Around the crossover center and subwoofer cancel, or nobody plays the lowest part of the voice, or the subwoofer reaches so high that the voice is heard from its corner.',
  notWhen:
    'A voice that is a little leaner and firmer than without the center is normal: between two mains the same voice gets up to 3 dB more bass at the ears. A crossover right at the low limit is harmless with a closed box and a gentle high-pass. Large is harmless for the voice where the box plays down to 100 Hz.',
  links: {
    boomy: 0.45,
    hollow: 0.15,
    'voice-changes-tone': 0.3,
    'voice-unclear-everywhere': 0.15,
    'voice-pulled-aside': 0.12,
    'voice-too-quiet': 0.08,
    'voice-low-or-high': 0.05,
    'voice-unclear': 0.15,
    thin: 0.5,
    boxy: 0.1,
    'weak-bass': 0.6,
  },
  groups: {
    crossover: 'same-quantity',
    gap: 'independent',
    reach: 'independent',
    heard: 'same-quantity',
    bottom: 'same-quantity',
    build: 'independent',
    'tone-heard': 'same-mechanism',
    exchange: 'independent',
    'without-subwoofer': 'independent',
    boost: 'independent',
  },
  rules: [
    answers(
      {
        id: 'gone-without-subwoofer',
        group: 'without-subwoofer',
        applies: isNot('subwoofer', 'none'),
        says: {
          yes: 'With the subwoofer off the trouble is gone: it is too loud, or plays too high.',
          no: 'With the subwoofer off the trouble is not gone, so the subwoofer does not make it.',
        },
        because:
          'Many subwoofers are turned up for effects; the low part of every voice comes along, and sounds like a chesty center.',
      },
      is('testSubOff', 'gone'),
      { yes: 'strong', no: 'telling' },
    ),
    answers(
      {
        id: 'loudness-is-on',
        group: 'boost',
        says: {
          yes: 'A loudness compensation is on; played softly it lifts the bass of every voice.',
          no: 'No loudness compensation is on.',
        },
        because: 'It is made for music at low level, and lifts the chest of a voice along with the drums.',
      },
      is('loudnessCompensation', 'on'),
      { yes: 'hint' },
    ),
    deviates(
      {
        id: 'hole-at-crossover',
        group: 'crossover',
        applies: CROSSED,
        says: {
          yes: 'Center and subwoofer leave a hole of {bassHoleDb} near {bassHoleHz}; {limit} is clearly heard.',
          no: 'Center and subwoofer add up with a hole of {bassHoleDb}, at best: with the subwoofer timed as well as can be unless told otherwise.',
        },
        because:
          'Near its low limit a box turns the phase of what it plays, one with a port twice as far. Where the crossover sits there, center and subwoofer cancel instead of adding.',
        source: 'bass-sum',
      },
      'bassHoleDb',
      'bassHoleDb',
      // No hole is weak evidence: a boom or a subwoofer that reaches too high is this cause as well.
      { only: 'for' },
    ),
    answers(
      {
        id: 'does-not-add-up',
        group: 'crossover',
        applies: CROSSED,
        says: {
          yes: 'Center and subwoofer do not add up smoothly: {bassHoleDb} are missing.',
          no: 'Center and subwoofer add up smoothly around the crossover.',
        },
        because:
          'A closed box with a 12 dB high-pass completes the filter of the crossover by itself, even at its low limit; so does any box crossed well above its limit.',
        source: 'bass-sum',
      },
      atLeast('bassHoleDb', 'bassHoleDb.noticeable'),
      { no: 'hint' },
    ),
    deviates(
      {
        id: 'subwoofer-reaches-high',
        group: 'heard',
        says: {
          yes: 'The subwoofer plays up to {subReachHz}, where it can be heard as a place.',
          no: 'The subwoofer plays up to {subReachHz} only, too low to be heard as a place.',
        },
        because:
          'Below some 80 to 100 Hz the ear hardly finds a subwoofer; from 120 Hz on listeners detect one by its place.',
        source: 'sub-detection',
      },
      'subReachHz',
      'subLocalHz',
      { only: 'for' },
    ),
    answers(
      {
        id: 'voice-from-subwoofer',
        group: 'reach',
        says: {
          yes: 'The low part of the voice is heard from the subwoofer.',
          no: 'The voice is not heard from the subwoofer.',
        },
        because:
          'The low voice is heard from the subwoofer only where the crossover, or its level, is too high.',
      },
      is('voiceDirection', 'subwoofer'),
      { yes: 'proof', no: 'slight' },
    ),
    answers(
      {
        id: 'heard-where-it-can-be',
        group: 'heard',
        applies: is('voiceDirection', 'subwoofer'),
        says: {
          yes: 'It is heard from the subwoofer, and a crossover of {subReachHz} is high enough for that.',
          no: 'It is heard from the subwoofer although that plays up to {subReachHz} only: it is too loud, or distorts and rattles.',
        },
        because:
          'What the ear reports and what the crossover lets it hear agree. Far lower, only harmonics, air noise or sheer level give the place away.',
        source: 'sub-detection',
      },
      atLeast('subReachHz', 'subLocalHz.noticeable'),
      { yes: 'strong', no: 'slight' },
    ),
    deviates(
      {
        id: 'another-low-voice',
        group: 'gap',
        says: {
          yes: 'The bass crossovers of center and mains are {crossoverGapHz} apart.',
          no: 'The bass crossovers of center and mains are {crossoverGapHz} apart, too little to matter.',
        },
        because: 'Filters far apart give center and mains another phase and another low voice.',
        source: 'practice',
      },
      'crossoverGapHz',
      'crossoverGapHz',
      { only: 'for', maxDb: 4 },
    ),
    deviates(
      {
        id: 'nobody-plays-the-bottom',
        group: 'bottom',
        says: {
          yes: 'The center is set to large and plays down to {unplayedVoiceHz} only: nobody plays the bottom of the voice.',
          no: 'The bottom of the voice is played, by the subwoofer or by a center that reaches low enough.',
        },
        because:
          'Set to large, a center gets all of the bass, and what it cannot play is lost. Low voices reach down to about 100 Hz.',
        source: 'practice',
      },
      'unplayedVoiceHz',
      'voiceFloorHz',
      { only: 'for' },
    ),
    answers(
      {
        id: 'noise-thin-or-boxy',
        group: 'tone-heard',
        says: {
          yes: 'Steady noise is thin or boomy in the center, compared with the mains.',
          no: 'Steady noise is neither thin nor boomy in the center, compared with the mains.',
        },
        because:
          'Loudspeaker against loudspeaker, one at a time, the ears play no trick; center on against center off they do.',
        source: 'crosstalk',
      },
      oneOf('testNoiseEach', 'thin', 'boxy'),
      { yes: 'telling', no: 'telling' },
    ),
    answers(
      {
        id: 'pan-thin-or-boxy',
        group: 'tone-heard',
        says: {
          yes: 'A moving sound gets thin or boomy as it passes the center.',
          no: 'A moving sound gets neither thin nor boomy as it passes the center.',
        },
        because: 'A hole or a boom at the crossover of the center alone shows where a sound moves past it.',
        source: 'bass-sum',
      },
      oneOf('toneAcrossPan', 'thinner', 'boxier'),
      { yes: 'hint', no: 'hint' },
    ),
    answers(
      {
        id: 'follows-the-channel',
        group: 'exchange',
        says: {
          yes: 'With left and center swapped at the amplifier the trouble moves to the left loudspeaker: a setting of the channel makes it.',
          no: 'With left and center swapped at the amplifier the trouble does not move to the left loudspeaker.',
        },
        because:
          'Size and crossover stay with their channel. A hole that needs box and crossover together may vanish from both.',
        source: 'bass-sum',
      },
      oneOf('testSwapAtAmplifier', 'moves-left', 'gone'),
      { yes: 'hint', no: 'telling' },
    ),
    answers(
      {
        id: 'large-without-the-bottom',
        group: 'bottom',
        says: {
          yes: 'The center is set to large and plays down to {unplayedVoiceHz} only: it gets bass that it cannot play.',
          no: 'What the center is given it can play.',
        },
        because:
          'Bass below its limit moves the cone and makes no sound: the voice turns thick and strains, while a subwoofer that could play it stands by.',
      },
      atLeast('unplayedVoiceHz', 'voiceFloorHz.noticeable'),
      { yes: 'strong' },
    ),
    answers(
      {
        id: 'small-box-set-to-large',
        group: 'build',
        applies: all(is('centerBassSize', 'large'), isNot('subwoofer', 'none')),
        says: {
          yes: 'The center is set to large although its cones are small and there is a subwoofer.',
          no: 'The center is set to large, and it is no smaller than the mains.',
        },
        because: 'Small cones end higher in the bass than large ones, whatever the menu says.',
      },
      is('boxSize', 'smaller'),
      { yes: 'hint', no: 'telling' },
    ),
    answers(
      {
        id: 'fuller-the-other-way',
        group: 'crossover',
        applies: CROSSED,
        says: {
          yes: 'With the phase of the subwoofer the other way the low voice is fuller: as it is set it works against the center.',
          no: 'As it is set the subwoofer does not work against the center.',
        },
        because:
          'Center and subwoofer share the range around the crossover; out of step they take it from each other.',
        source: 'bass-sum',
      },
      is('subPolarity', 'fuller-other-way'),
      { yes: 'strong', no: 'hint' },
    ),
    answers(
      {
        id: 'never-timed',
        group: 'crossover',
        applies: CROSSED,
        says: {
          yes: 'The distance and phase of the subwoofer were never set.',
          no: 'Distance and phase of the subwoofer were set.',
        },
        because:
          'A subwoofer is late by its own filters; without an entry for that, center and subwoofer meet out of step.',
      },
      is('subTiming', 'untouched'),
      { yes: 'hint', no: 'slight' },
    ),
    measuredAt('crossover', 'hole', {
      what: 'the crossover of center and subwoofer',
      at: 'crossoverHoleHz',
      source: 'bass-sum',
    }),
  ],
  telltales: [
    {
      id: 'subwoofer-moved-last',
      when: is('changedExactly', 'subwoofer'),
      telling: 'strong',
      says: 'The subwoofer or its place changed last.',
      otherwise: 'It was not the subwoofer that changed last.',
      because: 'Where a subwoofer stands decides whether it adds to the center or cancels it.',
    },
    {
      id: 'subwoofer-beside-the-seats',
      when: is('subwooferPlace', 'seats'),
      telling: 'hint',
      says: 'The subwoofer stands beside or behind the seats.',
      otherwise: 'The subwoofer stands in front.',
      because: 'A subwoofer near the seat is heard as a place, and is early against the center.',
    },
    toldTale('deep-voices-worst', 'hint', 'Bass management touches nothing but the low part.'),
  ],
  confirm: [
    { ...confirmedBy('testSubOff', 'gone'), unless: { subwoofer: ['none'] } },
    confirmedBy('testNoiseEach', 'thin', 'boxy'),
    confirmedBy('testSwapAtAmplifier', 'moves-left', 'gone'),
  ],
  acts: {
    'center-set-to-none': 0.6,
    'subwoofer-polarity-turned': 0.5,
    'subwoofer-off': 0.4,
    'subwoofer-turned-down': 0.3,
    'correction-run-again': 0.3,
  },
  remedies: [
    {
      id: 'hear-what-is-normal',
      title: 'Compare center with a main, not center on with center off',
      steps: [
        'Step test noise left, center, right.',
        'Judge the low part of the center against one main alone.',
      ],
      minutes: 4,
      cost: 'free',
      expect:
        'A voice between two mains has up to 3 dB more bass at the ears than one from a center. That difference is normal and no setting should chase it.',
      verify: 'If center and main alone are alike in the low part, nothing is wrong with the bass.',
      cautions: ['volume-down', 'test-noise'],
      changes: ['testNoiseEach'],
      cures: 0.1,
    },
    {
      id: 'turn-subwoofer-down',
      title: 'Turn the subwoofer down, and bass boosts off',
      when: all(isNot('subwoofer', 'none'), noneOf('testSubOff', 'same', 'thin')),
      steps: [
        'Note the level of the subwoofer.',
        'Switch bass boosts and loudness compensation off.',
        'Turn the subwoofer down by 3 dB, then by 6 dB, while a low voice plays.',
        'Stop where the voice is no longer chesty and music still has its bass.',
      ],
      minutes: 3,
      cost: 'free',
      expect: 'The low voice gets lean and stays at the picture; effects shake less.',
      verify: 'With the subwoofer switched off and on, the voice gets fuller but not another voice.',
      cautions: ['photograph-menu'],
      changes: ['loudnessCompensation', 'testSubOff', 'testNoiseEach', 'toneAcrossPan', 'voiceDirection'],
      cures: 0.5,
    },
    {
      id: 'bass-to-the-mains',
      title: 'Set the center to small: without a subwoofer its bass goes to the mains',
      when: all(is('centerBassSize', 'large'), is('subwoofer', 'none')),
      steps: [
        'Photograph the loudspeaker pages.',
        'Set the center to small with a crossover of 80 to 120 Hz, and left and right to large.',
        'Play a low male voice.',
      ],
      minutes: 4,
      cost: 'free',
      expect: 'The mains play what the center cannot, and the center strains less.',
      verify: 'A low male voice has body and stays in the middle.',
      cautions: ['photograph-menu'],
      changes: ['centerBassSize', 'centerBassCrossover', 'testNoiseEach', 'toneAcrossPan', 'troubleWhenLoud'],
      cures: 0.7,
    },
    {
      id: 'set-small',
      act: 'size-changed',
      title: 'Set the center to small, with a crossover that fits it',
      when: all(is('centerBassSize', 'large'), isNot('subwoofer', 'none')),
      seen: all(
        is('centerBassSize', 'large'),
        oneOf('subwoofer', 'one', 'several'),
        atLeast('unplayedVoiceHz', 'voiceFloorHz'),
      ),
      steps: [
        'Photograph the loudspeaker pages.',
        'Set the center to small and its crossover to {advisedCrossoverHz}.',
        'Step test noise across and listen to low voices.',
      ],
      minutes: 5,
      cost: 'free',
      expect: 'The bass that a small box cannot play goes to the subwoofer, and the box strains less.',
      verify: 'A low male voice has the same body in center and mains.',
      cautions: ['photograph-menu'],
      changes: ['centerBassSize', 'centerBassCrossover', 'testNoiseEach', 'toneAcrossPan', 'troubleWhenLoud'],
      cures: 0.8,
    },
    {
      id: 'time-the-subwoofer',
      title: 'Time the subwoofer to the center',
      when: all(isNot('subwoofer', 'none'), isNot('centerBassSize', 'large')),
      seen: is('subPolarity', 'fuller-other-way'),
      steps: [
        'Note the present distance, phase and filter of the subwoofer.',
        'Turn its own low-pass knob to the top or to bypass: two filters in series leave a hole, and turn the phase once more.',
        'Play low speech or noise on the center at the main seat.',
        'Let somebody flip the phase switch: keep the fuller position.',
        'Then change the distance of the subwoofer in steps of 1 ft (30 cm) and keep the fullest.',
        'Check left and right the same way afterwards: what suits the center can cost the mains. If so, take the best for all three.',
      ],
      minutes: 15,
      cost: 'free',
      expect:
        'With a ported box crossed at its limit a deep hole shrinks to 2 or 3 dB at best. With a closed box there is little to gain.',
      verify: 'The low voice is fuller than in any neighboring position.',
      cautions: ['photograph-menu', 'test-noise'],
      changes: ['subTiming', 'subDelay', 'subPolarity', 'testNoiseEach', 'toneAcrossPan'],
      cures: 0.6,
    },
    {
      id: 'raise-crossover',
      act: 'crossover-changed',
      title: 'Raise the crossover away from the low limit of the box',
      when: any(
        atLeast('bassHoleDb', 'bassHoleDb.noticeable'),
        above('safeCrossoverHz', { other: 'centerBassCrossover' }),
      ),
      steps: [
        'Photograph the crossover page.',
        'Raise the crossover of the center to {advisedCrossoverHz}, and not above 120 Hz: the rest is for the timing of the subwoofer.',
        'Use the same for left and right if they sound thin there too.',
      ],
      minutes: 4,
      cost: 'free',
      expect:
        'The hole of {bassHoleDb} near {bassHoleHz} gets shallower with each step. The price of a high crossover is a subwoofer that may be heard as a place.',
      verify: 'Noise on the center has as much body as on the mains.',
      cautions: ['photograph-menu'],
      changes: ['centerBassCrossover', 'testNoiseEach', 'toneAcrossPan', 'testSwapAtAmplifier'],
      cures: 0.75,
    },
    {
      id: 'lower-crossover',
      act: 'crossover-changed',
      title: 'Lower the crossover until the voice leaves the subwoofer',
      when: atLeast('subReachHz', 'subLocalHz.noticeable'),
      steps: [
        'Photograph the crossover page.',
        'Lower the crossover of the center step by step, but not below {advisedCrossoverHz}.',
        'If the limit of the box forbids that, move the subwoofer near the center instead.',
      ],
      minutes: 6,
      cost: 'free',
      expect: 'The low part of the voice comes back to the center.',
      verify: 'With eyes closed the voice comes from the front and not from the subwoofer.',
      cautions: ['photograph-menu', 'lifting'],
      changes: ['centerBassCrossover', 'voiceDirection', 'testNoiseEach'],
      cures: 0.8,
    },
    {
      id: 'same-crossovers',
      act: 'crossover-changed',
      title: 'Give center and mains crossovers that are close together',
      when: atLeast('crossoverGapHz', 'crossoverGapHz.noticeable'),
      steps: [
        'Photograph the crossover page.',
        'Set left, center and right to the same crossover, the one the smallest of them needs.',
      ],
      minutes: 4,
      cost: 'free',
      expect: 'Center and mains hand over to the subwoofer alike; a voice keeps its body as it moves.',
      verify: 'Noise steps across with the same low part.',
      cautions: ['photograph-menu'],
      changes: ['centerBassCrossover', 'mainsBassCrossover', 'testNoiseEach', 'toneAcrossPan'],
      cures: 0.4,
    },
  ],
});
