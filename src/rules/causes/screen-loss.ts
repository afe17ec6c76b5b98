/**
 * A projection screen in front of the center takes treble away, and nothing gives it back. In front of the
 * center only, it makes center and mains differ; in front of all three it is no mismatch, but dulls all. The
 * loss follows from hole size, hole count and thickness, or from the flow resistance of a cloth; a published
 * open area is often wrong by half or more. Tilting the sheet costs nothing. Left out: moire, the edges of
 * the box, and the color of the back wave beyond its mean.
 */
import { answers, confirmedBy, defineCause, deviates } from '../cause.js';
import { all, atLeast, below, is, isNot, noneOf, not, oneOf } from '../condition.js';
import { PLACE } from '../outdated.js';
import { alikeAlongTheRow } from '../place-or-box.js';
import { staysInPlace } from '../swap.js';

export const screenLoss = defineCause({
  id: 'screen-loss',
  title: 'Treble lost in the screen and not given back',
  severity: 'clear',
  priorDb: -9,
  priorBecause: 'Where there is a sheet, something is lost behind every one, and most of it is given back.',
  story:
    'The sheet between center and seat passes the lower voice and holds back the treble. The voice sounds covered, and duller than mains that stand free beside the screen.',
  notWhen:
    'A fine or open weave costs less than one decibel and is innocent. A screen in front of all three cannot make center and mains differ. A slanted screen loses no more than an upright one. Above 12 kHz some loss is part of how films are made to be heard.',
  applies: is('screenInFront', 'yes'),
  // A screen in front: one system in ten (judgement).
  appliesIn: 0.1,
  links: {
    dull: 0.75,
    'voice-unclear-everywhere': 0.3,
    'voice-changes-tone': 0.4,
    'voice-unclear': 0.3,
  },
  pictures: ['screen', 'tone'],
  groups: {
    loss: 'same-mechanism',
    'treble-heard': 'same-quantity',
    exchange: 'same-session',
    'near-by': 'independent',
    'where-heard': 'independent',
    origin: 'independent',
  },
  rules: [
    deviates(
      {
        id: 'treble-lost',
        group: 'loss',
        says: {
          yes: 'Above 4 kHz the screen takes {screenLossDb} that nothing gives back; {limit} is clearly heard.',
          no: 'Above 4 kHz the screen takes {screenLossDb} after what is given back, which is not clearly heard.',
        },
        because:
          'Air in small holes is a mass that blocks high tones, the more the fewer the holes. Hole size and count tell; a stated open area often does not fit its own count.',
        source: 'screen-sheet',
      },
      'screenLossDb',
      'trebleDb',
    ),
    deviates(
      {
        id: 'center-against-mains',
        group: 'loss',
        says: {
          yes: 'The screen makes the center {screenMismatchDb} duller than the mains.',
          no: 'The screen makes center and mains differ by {screenMismatchDb} only: it can dull them, not tear them apart.',
        },
        because: 'Only a sheet in front of one and not of the other makes a difference between them.',
        source: 'screen-sheet',
      },
      'screenMismatchDb',
      'trebleDb',
      { only: 'for' },
    ),
    deviates(
      {
        id: 'treble-measured',
        group: 'loss',
        applies: is('screenCovers', 'center-only'),
        says: {
          yes: 'Measured above 4 kHz, the center is {trebleDeficitDb} below the mains.',
          no: 'Measured above 4 kHz, the center is {trebleDeficitDb} below the mains, which is not clearly heard.',
        },
        because:
          'With the mains beside the screen, what the sheet takes shows as missing treble of the center.',
        source: 'treble-shelf',
      },
      'trebleDeficitDb',
      'trebleDb',
    ),
    answers(
      {
        id: 'noise-duller',
        group: 'treble-heard',
        applies: is('screenCovers', 'center-only'),
        says: {
          yes: 'Steady noise is duller in the center than in the mains beside the screen.',
          no: 'Steady noise is not duller in the center than in the mains beside the screen.',
        },
        because: 'Treble lost in front of one loudspeaker alone is heard as soon as noise steps to the next.',
        source: 'treble-shelf',
      },
      is('testNoiseEach', 'duller'),
      { yes: 'telling', no: 'strong' },
    ),
    answers(
      {
        id: 'unlike-behind-one-sheet',
        group: 'treble-heard',
        applies: is('screenCovers', 'all-three'),
        says: {
          yes: 'Center and mains stand behind the same sheet, and a sound changes its tone from one to the other all the same: the sheet does not make that.',
          no: 'Behind the same sheet center and mains sound alike.',
        },
        because: 'One sheet takes the same from all three.',
        source: 'screen-sheet',
      },
      noneOf('toneAcrossPan', 'no-change'),
      { yes: 'telling', against: true },
    ),
    answers(
      {
        id: 'pan-duller',
        group: 'treble-heard',
        applies: is('screenCovers', 'center-only'),
        says: {
          yes: 'A moving sound gets duller as it passes behind the screen.',
          no: 'A moving sound does not get duller as it passes behind the screen.',
        },
        because: 'Treble lost in front of one loudspeaker alone is heard as a sound moves past it.',
        source: 'treble-shelf',
      },
      is('toneAcrossPan', 'duller'),
      { yes: 'telling', no: 'strong' },
    ),
    answers(
      {
        id: 'main-is-dull-there-too',
        group: 'exchange',
        applies: is('screenCovers', 'center-only'),
        says: {
          yes: 'A main behind the screen sounds as wrong as the center did: what stands in front is to blame.',
          no: 'A main behind the screen sounds right there: the screen is not to blame, the center is.',
        },
        because: 'The sheet takes the same treble from whatever stands behind it.',
        source: 'screen-sheet',
      },
      is('testMainInPlace', 'wrong'),
      { yes: 'hint', no: 'strong' },
    ),
    answers(
      {
        id: 'as-dull-near-by',
        group: 'near-by',
        says: {
          yes: 'One meter away, with the sheet still between, the voice is not right either, as the sheet would have it.',
          no: 'One meter away, with the sheet still between, the voice is good: what the sheet takes it would take there too.',
        },
        because: 'A sheet takes the same treble at one meter as at the seat; room and angle do not.',
        source: 'screen-sheet',
      },
      oneOf('testNearCenter', 'still-bad', 'better'),
      { yes: 'hint', no: 'telling' },
    ),
    alikeAlongTheRow('where-heard', 'a sheet', 'The loss of a sheet hardly changes with the angle.'),
    answers(
      {
        id: 'began-with-screen',
        group: 'origin',
        says: {
          yes: 'It began when the screen changed.',
          no: 'It did not begin with a change of the screen.',
        },
        because: 'What begins with a change most often comes from it.',
      },
      is('lastChange', 'screen'),
      { yes: 'strong' },
    ),
    staysInPlace('exchange'),
  ],
  telltales: [
    {
      id: 'clearer-without-the-screen',
      when: is('screenAgainst', 'clearer-up'),
      telling: 'strong',
      says: 'With the screen out of the way the voice is clearer.',
      otherwise: 'With the screen out of the way the voice is the same.',
      because: 'What the screen takes is back at once when it is up.',
    },
    {
      id: 'same-without-the-screen',
      when: is('screenAgainst', 'same'),
      telling: 'strong',
      speaks: 'against',
      says: 'With the screen out of the way the voice is the same.',
      otherwise: 'With the screen out of the way the voice is clearer.',
      because: 'A loss that stays without the screen is not made by it.',
    },
    {
      id: 'screen-came-last',
      when: is('changedExactly', 'screen'),
      telling: 'strong',
      says: 'The screen or its cloth changed last.',
      otherwise: 'It was not the screen that changed last.',
      because: 'The last change is the first suspect.',
    },
  ],
  confirm: [confirmedBy('testNoiseEach', 'duller'), confirmedBy('testMainInPlace', 'wrong')],
  acts: { 'center-set-to-none': 0.6, 'center-taken-out': 0.3 },
  remedies: [
    {
      id: 'correct-again',
      title: 'Run the automatic correction again with the screen down',
      when: all(is('equalization', 'automatic'), isNot('correctionState', 'as-now')),
      steps: [
        'Photograph the pages of the present settings.',
        'Let the screen down, everything else as it is used, and run the automatic setup.',
        'Set a treble that was raised by hand for the screen back to zero first: twice given back is harm.',
      ],
      minutes: 25,
      cost: 'free',
      expect:
        'The correction hears the sheet and gives back what it takes, up to its own limit of some 6 dB.',
      verify: 'S sounds and breath are there, and noise steps from main to center without turning dull.',
      cautions: ['photograph-menu', 'test-noise', 'tweeter-power'],
      changes: ['correctionState', 'screenCompensation', 'testNoiseEach', 'toneAcrossPan', 'responseCenter'],
      cures: 0.75,
    },
    {
      id: 'hear-it-without',
      act: 'screen-removed',
      title: 'Hear it once without the screen',
      steps: [
        'Roll the screen up or take it off, or lift the center in front of it for five minutes.',
        'Play the same minute of speech with and without the sheet in between.',
        'Note hole size and holes per square inch while you are there: a stated open area is often wrong.',
      ],
      minutes: 8,
      cost: 'free',
      expect: 'The treble above 4 kHz comes up by about {screenLossDb}.',
      verify: 'S sounds and breath are there without the sheet and covered with it.',
      cautions: ['lifting', 'thin-display'],
      changes: ['screenHoleDiameter', 'screenHolesPerArea'],
      cures: 0.1,
    },
    {
      id: 'give-treble-back',
      title: 'Give the treble back with a shelf, alike for all that stand behind the screen',
      when: all(not(is('screenKind', 'solid')), atLeast('screenLossDb', 'trebleDb.noticeable')),
      gain: { of: 'screenLossDb', to: { screenCompensation: { by: 3 } } },
      steps: [
        'Photograph the tone page of the center channel.',
        'Raise a high shelf by about the computed loss, at most 6 dB.',
        'Do the same for left and right if they stand behind the screen too; leave them alone if not.',
        'Do not try to restore the last octave above 12 kHz.',
      ],
      minutes: 10,
      cost: 'free',
      expect:
        'Of the {screenLossDb} missing, up to 6 dB come back. The price is tweeter power: 3 dB are twice, 6 dB four times as much.',
      verify: 'Noise steps from main to center without turning dull, and loud speech stays clean.',
      cautions: ['photograph-menu', 'tweeter-power'],
      changes: ['screenCompensation', 'testNoiseEach', 'toneAcrossPan', 'responseCenter'],
      cures: 0.75,
    },
    {
      id: 'absorb-the-back-wave',
      title: 'Quiet the space between sheet and box',
      when: below('screenLossDb', 'trebleDb.severe'),
      steps: [
        'Leave 4 to 12 in (10 to 30 cm) between sheet and box.',
        'Cover the hard front around the drivers and the wall beside it with a thin layer of soft material.',
        'Keep ports, vents and domes free.',
      ],
      minutes: 40,
      cost: 'low',
      expect:
        'What the sheet throws back no longer bounces off the box: the ripple on top of the treble shrinks to a third or less. The mean loss stays.',
      verify: 'Noise on the center loses its metallic edge.',
      cautions: ['domes', 'fiber', 'heat'],
      changes: ['testNoiseEach', 'responseCenter'],
      cures: 0.2,
    },
    {
      id: 'move-out',
      forbiddenBy: ['center-stays'],
      title: 'Move the center out from behind a solid screen',
      when: is('screenKind', 'solid'),
      steps: [
        'Put the center under or above the screen, as near to the picture as it goes, aimed at the ears.',
        'Enter its new distance and set its level again.',
      ],
      minutes: 40,
      cost: 'low',
      expect:
        'All of the treble is back. The price is height: the voice comes from below or above the picture.',
      verify: 'Speech is clear; close your eyes and point to check the height.',
      cautions: ['lifting', 'thin-display', 'photograph-menu'],
      changes: [
        ...PLACE,
        'screenKind',
        'screenCovers',
        'enteredCenter',
        'measuredCenterLevel',
        'testMainInPlace',
      ],
      cures: 0.85,
    },
    {
      id: 'other-cloth',
      forbiddenBy: ['screen-stays'],
      title: 'Change to a more open cloth, or bring all three behind the same one',
      steps: [
        'Ask for the measured loss at 8 and 16 kHz, or for hole size and count, not for the open area.',
        'A fine or open weave loses less than one decibel.',
        'All three behind one sheet match each other at least.',
      ],
      minutes: 240,
      cost: 'high',
      final: true,
      expect: 'The loss falls from {screenLossDb} to below 1 dB with a good weave.',
      verify: 'Noise on the center sounds the same with the cloth held in front and taken away.',
      cautions: ['lifting'],
      changes: [
        'screenKind',
        'screenCovers',
        'screenFlowResistance',
        'screenHoleDiameter',
        'screenHolesPerArea',
        'screenThickness',
        'testNoiseEach',
        'toneAcrossPan',
        'responseCenter',
      ],
      cures: 0.9,
    },
  ],
});
