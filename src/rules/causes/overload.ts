/**
 * Amplifier or box strains when loud: a small center set to large or crossed over too low moves its cones
 * too far, or the amplifier runs out of voltage. The owner hears a clean voice when soft and a hard, torn
 * one when loud, and the strain may have crept in with the years and the volume. Where its data sheet is at hand, the
 * power that the seat takes is held against the power that is there. Broken parts: `driver-fault`.
 */
import { answers, confirmedBy, defineCause, deviates } from '../cause.js';
import { all, any, atMost, below, is, noneOf, oneOf } from '../condition.js';
import { BOX } from '../outdated.js';
import { recordedDistortion } from '../recorded.js';
import { toldTale } from '../remarks.js';

export const overload = defineCause({
  id: 'overload',
  title: 'The center or its amplifier strains when loud',
  severity: 'clear',
  priorDb: -15,
  priorBecause: 'Needs loud listening and a small box or a weak amplifier.',
  story:
    'At low volume the voice is clean. Turned up, a small box with too much bass, or an amplifier at its end, makes it hard, torn and tiring, and it no longer gets louder as the rest does. Nothing is broken yet.',
  notWhen:
    'A rattle, scratch or dull voice at low volume too is a broken part. A voice that is thin at any volume is not strain.',
  links: {
    'distorts-when-loud': 0.85,
    harsh: 0.45,
    rattles: 0.2,
    'voice-too-quiet': 0.1,
    'voice-unclear-everywhere': 0.15,
    'image-collapses-to-center': 0.05,
    'voice-unclear': 0.15,
    thin: 0.15,
    'small-and-lifeless': 0.15,
  },
  groups: {
    loudness: 'same-mechanism',
    bass: 'same-quantity',
    demand: 'independent',
    power: 'same-quantity',
    history: 'same-quantity',
    'soft-check': 'same-mechanism',
    recorded: 'independent',
  },
  rules: [
    answers(
      {
        id: 'only-when-loud',
        group: 'loudness',
        says: {
          yes: 'It appears, or gets clearly worse, only when loud.',
          no: 'It is the same at any volume, and strain would not be.',
        },
        because: 'Strain grows with level; geometry, timing and broken parts do not care how loud you play.',
      },
      is('troubleWhenLoud', 'yes'),
      { yes: 'telling', no: 'strong' },
    ),
    answers(
      {
        id: 'loud-listening',
        group: 'loudness',
        says: {
          yes: 'You usually listen loud, which asks much of a center.',
          no: 'You do not usually listen loud, so box and amplifier have reserves.',
        },
        because: 'Each 10 dB more takes ten times the power, and the center carries most of a film.',
        source: 'cone-travel',
      },
      is('listeningLevel', 'loud'),
      { yes: 'telling', no: 'hint' },
    ),
    answers(
      {
        id: 'small-box-set-to-large',
        group: 'bass',
        says: {
          yes: 'The center is set to large though its cones are small, so it gets bass it cannot play.',
          no: 'The center is not a small box that is set to large.',
        },
        because:
          'A cone moves four times as far for each octave lower; bass that it cannot play uses up its travel and tears the voice.',
        source: 'cone-travel',
      },
      all(is('centerBassSize', 'large'), is('boxSize', 'smaller')),
      { yes: 'strong', no: 'slight' },
    ),
    answers(
      {
        id: 'crossover-below-its-limit',
        group: 'bass',
        applies: is('centerBassSize', 'small'),
        says: {
          yes: 'The bass crossover of the center is {centerBassCrossover}, at or below the {centerLowLimit} down to which the box plays.',
          no: 'The bass crossover of the center is {centerBassCrossover}, above the low limit of the box at {centerLowLimit}.',
        },
        because: 'Below its limit a box makes no more sound, only more travel of the cone.',
        source: 'bass-sum',
      },
      atMost('centerBassCrossover', { other: 'centerLowLimit' }),
      { yes: 'telling', no: 'slight' },
    ),
    deviates(
      {
        id: 'much-is-asked',
        group: 'demand',
        says: {
          yes: 'Trim, boost and distance together ask about {centerDemandDb} more of the center than usual; {limit} is four times the power.',
          no: 'Trim, boost and distance ask about {centerDemandDb} more of the center than usual.',
        },
        because:
          'Every 3 dB double the power, and every doubling of the distance takes four times as much for the same voice at the seat.',
        source: 'cone-travel',
      },
      'centerDemandDb',
      'demandDb',
      { only: 'for', maxDb: 8 },
    ),
    deviates(
      {
        id: 'power-runs-out',
        group: 'power',
        says: {
          yes: 'At the seat the peaks of loud scenes take about {powerNeededW} from the amplifier, and with all channels loud it has about {powerThereW}.',
          no: 'At the seat the peaks of loud scenes take about {powerNeededW}, and the amplifier has about {powerThereW}.',
        },
        because:
          'Sensitivity, power and distance set the loudest peak. What goes beyond it is cut off, and a cut voice is hard.',
        source: 'seat-power',
      },
      'powerNeededW',
      { computed: 'powerThereW' },
      { only: 'for', maxDb: 8 },
    ),
    answers(
      {
        id: 'amplifier-has-reserves',
        group: 'power',
        says: {
          yes: 'The amplifier has about {powerThereW} where the loud scenes take about {powerNeededW}: it is not the limit. The box still can be.',
          no: 'The amplifier has no more than the loud scenes take.',
        },
        because: 'An amplifier that is not cut off leaves the travel of the cones as the only limit.',
        source: 'seat-power',
      },
      below('powerNeededW', { other: 'powerThereW' }),
      { yes: 'slight', against: true },
    ),
    answers(
      {
        id: 'crept-in',
        group: 'history',
        says: {
          yes: 'It crept in slowly, as when the volume rises with the years or a part ages.',
          no: 'It did not creep in slowly.',
        },
        because: 'People turn up little by little until the box reaches its end.',
      },
      is('onset', 'gradual'),
      { yes: 'telling' },
    ),
    answers(
      {
        id: 'came-at-once',
        group: 'history',
        says: {
          yes: 'It came suddenly, which points to a broken part or a setting rather than to strain.',
          no: 'It did not come suddenly, so strain remains possible.',
        },
        because: 'A box that was strong enough yesterday is strong enough today unless something broke.',
      },
      is('onset', 'sudden'),
      { yes: 'telling', against: true },
    ),
    answers(
      {
        id: 'clean-when-soft-and-near',
        group: 'soft-check',
        says: {
          yes: 'A meter in front of the center, at low volume, the voice is better or good.',
          no: 'A meter in front of the center, at low volume, the voice is still bad, so strain is not the reason.',
        },
        because: 'That test is made softly, and a box that strains has nothing to do at low volume.',
      },
      oneOf('testNearCenter', 'good-near', 'better'),
      { yes: 'slight', no: 'strong' },
    ),
    answers(
      {
        id: 'drivers-clean-when-soft',
        group: 'soft-check',
        says: {
          yes: 'At low volume every driver plays clean, so nothing is broken.',
          no: 'Even at low volume one driver is not sound, so a part has failed.',
        },
        because: 'Strain leaves the drivers whole; a broken one is heard at any volume.',
      },
      is('testEarToDrivers', 'all'),
      { yes: 'slight', no: 'telling' },
    ),
    recordedDistortion('recorded'),
  ],
  telltales: [
    {
      id: 'small-box',
      when: is('centerSizeAgainstMains', 'smaller'),
      telling: 'slight',
      group: 'bass',
      says: 'The center is much smaller than the mains.',
      otherwise: 'The center has cones about the size of those in the mains.',
      because: 'Half the cone area has to travel twice as far for the same voice, whatever the crossover.',
    },
    {
      id: 'only-the-center-strains',
      when: is('mainsWhenLoud', 'clean'),
      telling: 'telling',
      says: 'When the voice strains, the mains stay clean.',
      otherwise: 'The mains strain as well.',
      because: 'What strains alone is at its own limit.',
    },
    toldTale('soft-voices-worst', 'telling', 'A loudspeaker at its limit fails when it is loud.', 'against'),
  ],
  confirm: [confirmedBy('testNearCenter', 'good-near', 'better'), confirmedBy('testEarToDrivers', 'all')],
  acts: {
    'crossover-changed': 0.4,
    'center-turned-down': 0.4,
    'amplifier-exchanged': 0.4,
    'center-set-to-none': 0.5,
  },
  remedies: [
    {
      id: 'send-bass-to-subwoofer',
      act: 'size-changed',
      title: 'Set the center to small and cross it over higher',
      when: all(
        noneOf('subwoofer', 'none'),
        any(is('centerBassSize', 'large'), atMost('centerBassCrossover', { other: 'safeCrossoverHz' })),
      ),
      steps: [
        'Photograph the loudspeaker page of the menu.',
        'Set the center to small.',
        'Set its crossover to {advisedCrossoverHz}.',
        'Play the loud scene again at the same volume.',
      ],
      minutes: 3,
      cost: 'free',
      expect: 'The cones are relieved of bass, and the voice stays clean at a clearly higher volume.',
      verify: 'The loudest scene you know no longer tears the voice.',
      cautions: ['photograph-menu', 'hearing'],
      changes: [
        'centerBassSize',
        'centerBassCrossover',
        'troubleWhenLoud',
        'testNearCenter',
        'responseCenter',
      ],
      cures: 0.65,
    },
    {
      id: 'bass-to-the-mains',
      title: 'Without a subwoofer: set the center to small, so that the mains take its bass',
      when: all(is('subwoofer', 'none'), noneOf('centerBassSize', 'small')),
      steps: [
        'Photograph the loudspeaker page of the menu.',
        'Set the center to small with a crossover of 80 to 120 Hz, and left and right to large.',
        'Play the loud scene again at the same volume.',
      ],
      minutes: 3,
      cost: 'free',
      expect:
        'The mains take the bass that moved the small cones most, and the voice stays clean for longer.',
      verify: 'The loudest scene you know no longer tears the voice.',
      cautions: ['photograph-menu', 'hearing'],
      changes: ['centerBassSize', 'centerBassCrossover', 'troubleWhenLoud', 'testNearCenter'],
      cures: 0.55,
    },
    {
      id: 'take-boosts-back',
      title: 'Take back bass, treble and voice boosts of the center',
      steps: [
        'Note the present settings.',
        'Switch off voice boost and set tone controls to zero.',
        'Look for equalizer boosts of more than a few decibels and halve them.',
        'Play the loud scene again.',
      ],
      minutes: 5,
      cost: 'free',
      expect: 'Every 3 dB of boost less halves the power in that range.',
      verify: 'The same scene at the same volume is less hard.',
      cautions: ['photograph-menu', 'tweeter-power'],
      changes: ['voiceBoost', 'equalization', 'troubleWhenLoud', 'responseCenter', 'testEqBypass'],
      cures: 0.35,
    },
    {
      id: 'play-softer',
      title: 'Play a little softer, or compress the dynamics',
      steps: [
        'Turn the volume down by 3 dB for one film.',
        'If soft voices then get lost, switch on the light step of dynamic compression.',
      ],
      minutes: 2,
      cost: 'free',
      expect: 'Half the power is asked of box and amplifier.',
      verify: 'The voice stays clean through the loudest scene.',
      cautions: ['hearing'],
      changes: ['listeningLevel', 'dynamicCompression', 'troubleWhenLoud'],
      cures: 0.6,
    },
    {
      id: 'stronger-box-or-amplifier',
      act: 'center-exchanged',
      title: 'Use a larger center or a stronger amplifier for it',
      steps: [
        'First try a main in the place of the center: if it stays clean, the box was the limit; if not, the amplifier is.',
        'Choose a center of the same series with larger cones, or an amplifier with more power at the load of your box.',
        'Connect it with the power off and set the levels again.',
      ],
      minutes: 60,
      cost: 'high',
      expect: 'Twice the power is 3 dB; a box of twice the cone area gives up to 6 dB in the bass.',
      verify: 'The loudest scene you know stays clean at the same volume.',
      cautions: ['power-off-wires', 'amplifier-load', 'lifting', 'hearing'],
      changes: [...BOX, 'troubleWhenLoud'],
      cures: 0.75,
    },
  ],
});
