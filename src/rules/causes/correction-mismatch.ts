/**
 * Equalization has left center and mains unlike each other: it was measured in the wrong spot, it reaches
 * only some of the channels, or it fought a hole that cannot be filled. The owner hears a step of tone that
 * is gone with the equalization bypassed. The proof is before against after: a mismatch that was there
 * before and is smaller now is the box or the place, and the equalization is innocent. Left out: the mean
 * level; a narrow dip, which is far less audible than a peak of the same size.
 */
import { answers, confirmedBy, defineCause, deviates } from '../cause.js';
import { all, any, is, isNot, oneOf } from '../condition.js';
import { TONE } from '../outdated.js';
import { heard, toldTale } from '../remarks.js';

/** An equalization, and what bends the tone without being called one. */
const SOMETHING_BENDS = is('correctionAtWork', 'yes');
/** Only noise that a player plays is sure to pass through all that a film passes through. */
const THROUGH_IT = is('noiseFrom', 'file');

export const correctionMismatch = defineCause({
  id: 'correction-mismatch',
  title: 'Equalization, or a boost, left center and mains unlike each other',
  severity: 'clear',
  priorDb: -12,
  priorBecause: 'Automatic equalization is common and mostly does more good than harm.',
  story:
    'The equalization bends the center and the mains to different results, or bends only one of them. Voices change their tone between center and sides although the loudspeakers themselves match.',
  notWhen:
    'A mismatch that is just as large with the equalization bypassed belongs to the box or its place. A narrow dip in a curve looks bad and is hardly heard; a peak of the same size is.',
  links: {
    'voice-changes-tone': 0.65,
    dull: 0.25,
    harsh: 0.25,
    boomy: 0.12,
    hollow: 0.08,
    'voice-unclear-everywhere': 0.15,
    'voice-unclear': 0.15,
    thin: 0.25,
    boxy: 0.2,
    'small-and-lifeless': 0.15,
    'gaps-between-speakers': 0.15,
  },
  pictures: ['tone'],
  groups: {
    'before-after': 'same-quantity',
    reach: 'same-quantity',
    noise: 'same-quantity',
    'tone-heard': 'same-mechanism',
    origin: 'same-session',
    exchange: 'independent',
  },
  rules: [
    deviates({
      id: 'made-it-worse',
      group: 'before-after',
      of: 'eqDamageDb',
      limit: 'bandDb',
      yes: 'Equalization made the worst band worse by {eqDamageDb}.',
      no: 'Equalization did not clearly worsen the match of center and mains (by {eqDamageDb}; negative is better).',
      because:
        'The band that differs most decides how unlike two loudspeakers sound; before against after tells who made the difference.',
      source: 'band-match',
    }),
    answers({
      id: 'better-bypassed',
      group: 'before-after',
      when: is('testEqBypass', 'better'),
      tells: { yes: 'strong' },
      yes: 'With the equalization bypassed the voice matches better.',
      no: 'Bypassing the equalization does not help the match.',
      because: 'Nothing else changes in that comparison, as long as both are equally loud.',
      source: 'band-match',
    }),
    answers({
      id: 'no-better-bypassed',
      group: 'before-after',
      applies: any(is('testEqBypass', 'worse'), THROUGH_IT),
      when: oneOf('testEqBypass', 'worse', 'same'),
      tells: { yes: 'strong', against: true },
      yes: 'Bypassed, with noise that passes through the equalization, the match is no better, so it is not the cause.',
      no: 'The bypass has cleared the equalization of nothing.',
      because:
        'The noise of a setup menu often passes by the correction. Then a bypass changes nothing, and that proves nothing.',
    }),
    answers({
      id: 'is-on',
      group: 'reach',
      when: SOMETHING_BENDS,
      tells: { no: 'proof' },
      yes: 'Something bends the tone: an equalization, a voice boost, a tone control or a switch.',
      no: 'No equalization, boost or tone control is on, so none can make center and mains unlike.',
      because: 'What is not at work cannot be at fault.',
    }),
    answers({
      id: 'reaches-only-some',
      group: 'reach',
      when: oneOf('equalizationReach', 'center-only', 'mains-only'),
      tells: { yes: 'telling', no: 'hint' },
      yes: 'The equalization works on the center or on the mains, and leaves the other alone.',
      no: 'The equalization works on left, center and right alike.',
      because: 'A center bent to a target beside mains left as they are no longer matches them.',
    }),
    heard(
      'noise-differs',
      'noise',
      { yes: 'hint' },
      'Steady noise shows differences of tone that speech hides.',
      { applies: SOMETHING_BENDS },
    ),
    answers({
      id: 'alike-through-it',
      group: 'noise',
      applies: all(SOMETHING_BENDS, THROUGH_IT),
      when: oneOf('testNoiseEach', 'alike', 'softer', 'louder'),
      tells: { yes: 'strong', against: true },
      yes: 'Noise from a file, which passes through the equalization, is alike in center and mains, so it has left them alike.',
      no: 'Noise that passes through the equalization has not shown them alike.',
      because:
        'The noise of a setup menu often passes by the correction and the sound modes: it tells the level, and the boxes.',
    }),
    heard(
      'tone-steps-across',
      'tone-heard',
      { yes: 'hint', no: 'telling' },
      'One sound on three loudspeakers is the direct comparison.',
      { applies: SOMETHING_BENDS },
    ),
    heard(
      'measured-elsewhere',
      'origin',
      { yes: 'hint', no: 'hint' },
      'On a table or against a wall the microphone hears reflections that no ear hears, and the filters answer to them.',
      { applies: SOMETHING_BENDS },
    ),
    answers({
      id: 'began-with-calibration',
      group: 'origin',
      applies: SOMETHING_BENDS,
      when: is('lastChange', 'calibration'),
      tells: { yes: 'strong', no: 'slight' },
      yes: 'It began with a new automatic setup.',
      no: 'It did not begin with a new automatic setup.',
      because: 'What begins with a change most often comes from it.',
    }),
    heard(
      'follows-the-channel',
      'exchange',
      { yes: 'telling', no: 'telling' },
      'Filters stay with their channel, whichever box hangs on it.',
      { applies: SOMETHING_BENDS },
    ),
  ],
  telltales: [
    {
      id: 'microphone-misplaced',
      when: oneOf('microphonePlacement', 'hand', 'cushion', 'shaded'),
      telling: 'strong',
      yes: 'During the setup the microphone was held in the hand, lay on something, or was shaded.',
      no: 'During the setup the microphone stood free.',
      because: 'What the microphone does not hear the correction puts in, and the other way round.',
    },
    toldTale('settings-from-elsewhere', 'telling', 'Filters fit one box in one place.'),
  ],
  confirm: [
    confirmedBy('testEqBypass', 'better'),
    confirmedBy('testNoiseEach', 'duller', 'brighter', 'thin', 'boxy'),
    confirmedBy('testSwapAtAmplifier', 'moves-left'),
  ],
  acts: { 'center-set-to-none': 0.5 },
  remedies: [
    {
      id: 'boost-off',
      title: 'Switch voice boost, loudness and tone controls off',
      when: any(is('voiceBoost', 'on'), is('toneControl', 'on')),
      steps: [
        'Photograph the sound pages and the back of powered boxes.',
        'Switch off one after the other, the level kept the same, and listen to a voice that crosses the front.',
      ],
      minutes: 4,
      expect: 'The step of tone between center and mains that the boost makes is gone.',
      verify: 'A voice keeps its tone as it crosses the front.',
      cautions: ['photograph-menu'],
      changes: ['voiceBoost', 'toneControl', 'toneAcrossPan', 'testNoiseEach', 'responseCenter'],
      cures: 0.7,
    },
    {
      id: 'bypass',
      act: 'equalization-bypassed',
      title: 'Switch the equalization off and live with it for an evening',
      when: isNot('equalization', 'none'),
      steps: [
        'Photograph the sound pages.',
        'Switch the equalization off, then look at levels and distances: some receivers drop them along with it, and a change of level passes for one of tone.',
        'Step test noise across, then listen to speech and music.',
      ],
      minutes: 5,
      expect:
        'The step of tone that the equalization made is gone ({eqDamageDb} in the worst band). The price: bass that it had tamed may boom again.',
      verify: 'Noise keeps its tone from left to center to right.',
      cautions: ['photograph-menu', 'test-noise'],
      changes: [...TONE, 'equalization'],
      cures: 0.75,
    },
    {
      id: 'all-three-alike',
      title: 'Let it work on all three alike',
      when: oneOf('equalizationReach', 'center-only', 'mains-only'),
      steps: [
        'Look for an option that bypasses left and right, or only the center.',
        'Choose one target for all three, or none for all three.',
      ],
      minutes: 4,
      expect: 'Center and mains are bent to the same result.',
      verify: 'Noise steps across without a change of tone.',
      cautions: ['photograph-menu'],
      changes: ['equalizationReach', 'testNoiseEach', 'toneAcrossPan', 'testEqBypass'],
      cures: 0.7,
    },
    {
      id: 'limit-its-range',
      title: 'Let it work on the bass only',
      when: isNot('equalization', 'none'),
      steps: [
        'Look for an upper limit of the equalization.',
        'Set it to about 300 Hz for all three and listen again.',
      ],
      minutes: 5,
      expect: 'Room resonances stay tamed, and the voice range is again what the loudspeakers make of it.',
      verify: 'Noise steps across without a change of tone, and bass does not boom.',
      cautions: ['photograph-menu'],
      changes: [...TONE],
      cures: 0.65,
    },
    {
      id: 'measure-again',
      act: 'correction-run-again',
      title: 'Run the automatic setup again with the microphone where heads are',
      when: isNot('equalization', 'none'),
      steps: [
        'Photograph every page of the present settings.',
        'Put the microphone on a stand at ear height, first at the main seat, never on a cushion or table.',
        'Take the other positions within a head or two of it, in a quiet room.',
        'Step test noise across. If the step of tone is no smaller than without equalization, leave it off.',
      ],
      minutes: 30,
      expect: 'All three come within about 2 dB of each other in the voice range, narrow dips aside.',
      verify: 'Noise keeps its tone across; bypassing makes it no better.',
      cautions: ['photograph-menu', 'test-noise'],
      changes: [
        ...TONE,
        'alignmentBy',
        'calibrationSpot',
        'equalization',
        'centerTrim',
        'enteredCenter',
        'enteredLeft',
        'enteredRight',
      ],
      cures: 0.7,
    },
  ],
});
