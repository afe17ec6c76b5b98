/**
 * Center and mains are loudspeakers of another family or type: a voice changes its tone as it crosses the
 * front, at equal level and with every setting right. The owner hears it best with steady noise stepping
 * from box to box. A real center is also a little unlike a phantom one (crosstalk between the ears), and
 * that is no fault. Left out: the place, which can make two equal boxes sound unlike.
 */
import { answers, confirmedBy, defineCause, deviates } from '../cause.js';
import { all, is, isNot, noneOf, oneOf } from '../condition.js';
import { boxNotPlace } from '../home-tests.js';
import { BOX, PLACE, TONE } from '../outdated.js';
import { recordedTone } from '../recorded.js';
import { heard } from '../remarks.js';

export const timbre = defineCause({
  id: 'timbre',
  title: 'The center is a loudspeaker of another family than the mains',
  severity: 'mild',
  priorDb: -9,
  priorBecause:
    'Centers of another maker or series are common; most differ less than place and equalization make them.',
  story:
    'Other drivers, other crossovers, another size or way of radiating: the same voice has another tone in the center than in left and right, and moving sounds step as they cross the front.',
  notWhen:
    'An identical box that sounds unlike stands in another place or under other settings: the box is innocent. A real center sounds firmer, with a little less bass and more presence, than the same voice as a phantom between two perfectly equal mains. And speech that only the center plays may sound fine whatever the mains are.',
  links: {
    'voice-changes-tone': 0.75,
    dull: 0.15,
    harsh: 0.2,
    boomy: 0.1,
    hollow: 0.08,
    'voice-unclear-everywhere': 0.1,
    'just-prefer-two-channels': 0.1,
    'voice-unclear': 0.1,
    thin: 0.35,
    boxy: 0.35,
    'small-and-lifeless': 0.2,
    'gaps-between-speakers': 0.3,
    'weak-bass': 0.15,
  },
  pictures: ['tone'],
  groups: {
    family: 'same-quantity',
    build: 'same-mechanism',
    'tone-heard': 'same-mechanism',
    'tone-measured': 'same-quantity',
    exchange: 'same-session',
    where: 'same-session',
  },
  rules: [
    answers({
      id: 'not-the-same-box',
      group: 'family',
      when: isNot('centerFamily', 'identical-box'),
      tells: { no: 'proof' },
      yes: 'The center is not the same model as the mains.',
      no: 'The center is the same model as the mains: what sounds unlike is its place or its settings.',
      because:
        'Three equal boxes have one tone. In unlike places or under unlike settings they sound unlike all the same.',
    }),
    answers({
      id: 'other-family',
      group: 'family',
      // One maker has series of one tone and of several.
      applies: noneOf('centerFamily', 'identical-box', 'same-maker'),
      when: is('centerFamily', 'unrelated'),
      tells: { yes: 'hint', no: 'telling' },
      yes: 'Center and mains do not come from the same series.',
      no: 'Center and mains come from the same series, which makes a gross difference of tone unlikely.',
      because:
        'A series shares its tweeter and its tuning. Its matching center is still another layout, so alike does not mean equal.',
    }),
    answers({
      id: 'other-way-of-radiating',
      group: 'family',
      when: all(is('mainsKind', 'panel-or-horn'), noneOf('centerFamily', 'identical-box', 'same-series')),
      tells: { yes: 'telling' },
      yes: 'The mains are panels, horns or another special type, and the center is not made for them: it spreads sound unlike them.',
      no: 'The mains spread sound much like the center does.',
      because:
        'Two loudspeakers alike on their axis still differ in the room when one of them lights it otherwise.',
    }),
    answers({
      id: 'much-smaller',
      group: 'build',
      when: is('centerSizeAgainstMains', 'smaller'),
      tells: { yes: 'slight', no: 'slight' },
      yes: 'The center is much smaller than the mains.',
      no: 'The center has cones about the size of those in the mains.',
      because: 'A much smaller box is thinner in the lower voice, also above any crossover to a subwoofer.',
    }),
    deviates({
      id: 'measured-difference',
      group: 'tone-measured',
      of: 'toneWorstBandDb',
      limit: 'bandDb',
      maxDb: 8,
      yes: 'Measured at the seat, center and mains differ by {toneWorstBandDb} around {toneWorstBandHz}; {limit} is clearly heard.',
      no: 'Measured at the seat, center and mains stay within {toneWorstBandDb} in every third of an octave.',
      because:
        'The ear judges tone by the band that differs most, after the levels are matched. A measurement at the seat shows box, place and settings together, so it points less to the box than an exchange does.',
      source: 'band-match',
    }),
    recordedTone('tone-measured'),
    heard(
      'tone-steps-across',
      'tone-heard',
      { yes: 'hint', no: 'strong' },
      'One sound on three loudspeakers is the direct comparison.',
    ),
    heard(
      'noise-differs',
      'tone-heard',
      { yes: 'hint', no: 'strong' },
      'Steady noise shows differences of tone that speech hides.',
    ),
    answers({
      id: 'main-sounds-right-there',
      group: 'exchange',
      when: is('testMainInPlace', 'right'),
      tells: { yes: 'telling', no: 'strong' },
      yes: 'A main in the place of the center sounds right there: the box makes the difference, not the place.',
      no: 'A main in the place of the center sounds as wrong: the place or the channel makes the difference.',
      because: 'With place and channel unchanged, only the box has been exchanged.',
    }),
    boxNotPlace('exchange'),
    answers({
      id: 'stays-with-the-box',
      group: 'exchange',
      when: is('testSwapAtAmplifier', 'stays'),
      tells: { yes: 'hint', no: 'telling' },
      yes: 'With left and center swapped at the amplifier the trouble stays with the center box.',
      no: 'With left and center swapped at the amplifier the trouble does not stay with the box.',
      because: 'The tone of a box goes where the box is, whatever channel feeds it.',
    }),
    answers({
      id: 'goes-with-the-box',
      group: 'exchange',
      when: is('testSwapAtLoudspeakers', 'follows-box'),
      tells: { yes: 'hint', no: 'telling' },
      yes: 'On the cable of the left channel the center box sounds as wrong as before: the trouble goes with the box.',
      no: 'On the cable of the left channel the center box sounds right: cable or channel make the trouble.',
      because: 'The cables stayed with their channels; only the boxes changed places.',
    }),
    answers({
      id: 'still-there-near-by',
      group: 'where',
      when: oneOf('testNearCenter', 'still-bad', 'better'),
      tells: { yes: 'slight', no: 'hint' },
      yes: 'Near by, at one meter, the voice is not right either.',
      no: 'Near by, at one meter, the voice is good: room and place color it, not the box.',
      because: 'At one meter the box itself is heard with hardly any room.',
      source: 'direct-sound',
    }),
  ],
  telltales: [
    {
      id: 'another-box',
      when: oneOf('changedExactly', 'center-box', 'mains'),
      telling: 'strong',
      yes: 'Another center or other mains came last.',
      no: 'It was neither the center nor the mains that changed.',
      because: 'Two boxes that never met do not match by chance.',
    },
    {
      id: 'another-tone',
      when: is('toneDiffers', 'yes'),
      telling: 'telling',
      yes: 'The center has another tone than the mains.',
      no: 'The center has the tone of the mains.',
      because: 'Two boxes of another kind differ on every voice.',
    },
    {
      id: 'of-one-tone',
      when: is('toneDiffers', 'no'),
      telling: 'strong',
      speaks: 'against',
      yes: 'The center has the tone of the mains.',
      no: 'The center has another tone than the mains.',
      because: 'Where the three sound alike nothing is mismatched.',
    },
  ],
  confirm: [
    confirmedBy('testNoiseEach', 'duller', 'brighter', 'thin', 'boxy'),
    confirmedBy('testBesideMain', 'differs'),
    confirmedBy('testMainInPlace', 'right'),
    confirmedBy('testSwapAtAmplifier', 'stays'),
  ],
  acts: { 'center-set-to-none': 0.8, 'equalization-bypassed': 0.1, 'correction-run-again': 0.2 },
  remedies: [
    {
      id: 'know-what-is-normal',
      title: 'Compare like with like before anything is bought',
      steps: [
        'Step test noise left, center, right. Match the levels first, then compare the tone.',
        'Do not compare the voice with the center on and off: a phantom voice has up to 3 dB more bass and some 7 dB less around 1.6 to 2 kHz even between perfect mains.',
      ],
      minutes: 5,
      expect: 'What remains different with noise is the true mismatch.',
      verify:
        'If noise is alike in all three, the center matches: a firmer voice is how a real center sounds.',
      cautions: ['volume-down', 'test-noise'],
      changes: ['testNoiseEach', 'toneAcrossPan'],
      cures: 0.2,
    },
    {
      id: 'equalize-alike',
      title: 'Let the equalization bring all three to one target',
      steps: [
        'Photograph the sound pages.',
        'Run the automatic equalization with the same target for left, center and right.',
        'Step test noise across and judge. Undo it if the step got larger.',
        'By hand: lower what sticks out, boost little; a narrow dip is best left alone.',
      ],
      minutes: 30,
      expect:
        'Broad differences shrink, often to 1 or 2 dB. How a box lights the room and what it loses off its axis stay as they are.',
      verify: 'Noise steps across with less change of tone than before.',
      cautions: ['photograph-menu', 'test-noise', 'tweeter-power'],
      changes: [...TONE, 'equalization', 'equalizationReach'],
      cures: 0.5,
    },
    {
      id: 'place-alike',
      forbiddenBy: ['center-stays'],
      title: 'Give the center surroundings like those of the mains',
      steps: [
        'Bring its face flush with the edge of what it stands on, at or near the height of the mains.',
        'Aim it at the ears.',
      ],
      minutes: 10,
      expect: 'The share of the mismatch that comes from shelf, bay or floor goes.',
      verify: 'Step test noise across again.',
      cautions: ['lifting', 'thin-display'],
      changes: [...PLACE],
      cures: 0.3,
    },
    {
      id: 'matching-center',
      act: 'center-exchanged',
      title: 'Replace the center by one of the family of the mains, or by a third main',
      when: noneOf('centerFamily', 'same-series'),
      steps: [
        'Try a main in the place of the center first; it costs nothing.',
        'If that sounds right, look for the matching center, or for a single box like the mains, second hand too.',
        'For more than one seat prefer a layout that holds its tone off the axis.',
      ],
      minutes: 60,
      cost: 'high',
      expect: 'The same drivers give nearly the same tone; three equal boxes at one height give the same.',
      verify: 'Noise steps across without a change of tone.',
      cautions: ['power-off-wires', 'lifting'],
      changes: [...BOX],
      cures: 0.85,
    },
  ],
});
