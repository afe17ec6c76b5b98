/** Pairs of answers that hardly stand together, as a table. The ones that need arithmetic are in the files beside this one. */
import type { Choice, ChoiceFactId, FactId } from '../catalog.js';

/** One side of a pair: a choice fact with the values meant, or any fact that was told at all. */
export type Side =
  | { [Id in ChoiceFactId]: { readonly fact: Id; readonly is: readonly Choice<Id>[] } }[ChoiceFactId]
  | { readonly fact: FactId; readonly is: 'told' };

/** What hardly stands with another side, and how both may have come about, without blame. */
interface Other {
  readonly kind: 'hard' | 'soft';
  readonly b: Side;
  readonly note?: string | undefined;
}
interface Pair extends Other {
  readonly id: string;
  readonly a: Side;
}

const is = <Id extends ChoiceFactId>(fact: Id, ...values: readonly Choice<Id>[]): Side =>
  ({ fact, is: values }) as Side;
const given = (fact: FactId): Side => ({ fact, is: 'told' });
const hard = (b: Side, note?: string): Other => ({ kind: 'hard', b, note });
const soft = (b: Side, note?: string): Other => ({ kind: 'soft', b, note });
const against = (a: Side, others: Readonly<Record<string, Other>>): Pair[] =>
  Object.entries(others).map(([id, other]) => ({ id, a, ...other }));

const LATER = 'One of the two may be from another day.';
const SPEECH = 'The test with one minute of speech is the better witness.';
const MENU = 'A menu shows the one or the other.';

export const PAIRS: readonly Pair[] = [
  ...against(is('centerMode', 'none'), {
    'center-none-but-trim': soft(given('centerTrim'), 'A center set to none has no trim of its own.'),
    'center-none-but-level': hard(given('measuredCenterLevel'), 'A center set to none plays no noise.'),
    'center-none-but-plays': hard(is('channelCheck', 'right', 'center-elsewhere-too'), LATER),
    'center-none-but-heard': soft(is('voiceDirection', 'center-box')),
  }),
  ...against(is('centerCount', 'none'), {
    'no-center-but-layout': hard(given('centerLayout')),
    'no-center-but-heard': hard(is('channelCheck', 'right', 'center-elsewhere-too')),
    'no-center-but-present': soft(
      is('centerMode', 'present'),
      'A menu can say present while no box is connected; that is worth knowing.',
    ),
  }),
  ...against(is('centerCount', 'one'), {
    'one-center-but-pair': soft(
      is('centerLayout', 'paired-boxes'),
      'Two complete boxes side by side count as two.',
    ),
  }),
  ...against(is('centerCount', 'two'), {
    'two-centers-but-one-layout': soft(
      given('testPullForward'),
      'With two boxes it matters which of them was moved.',
    ),
  }),
  ...against(is('upmixUse', 'off'), {
    'upmix-off-but-cures': soft(
      is('testUpmixOff', 'gone'),
      'If switching it off cures the trouble, it was on.',
    ),
    'upmix-off-but-spread-works': soft(
      is('testSpreadOn', 'opens', 'worse'),
      'Center spread acts only while an upmix is on.',
    ),
  }),
  ...against(is('upmixCenterControl', 'none'), {
    'no-control-but-spread': hard(is('centerSpread', 'on')),
    'no-control-but-spread-works': hard(is('testSpreadOn', 'opens', 'worse')),
  }),
  ...against(is('centerSpread', 'off'), {
    'spread-off-but-amount': soft(given('centerSpreadAmount')),
  }),
  ...against(is('upmixAmbience', 'no'), {
    'no-ambience-but-size': soft(given('ambienceSize')),
  }),
  ...against(is('playedContent', 'multichannel-film'), {
    'film-but-two-channels': soft(
      is('sourceFormat', 'two-channel'),
      'The mix may have a center channel that is lost on the way.',
    ),
  }),
  ...against(is('playedContent', 'two-channel-music'), {
    'music-but-multichannel': soft(
      is('sourceFormat', 'multichannel'),
      'The player may do the upmix itself, or the display may show the listening mode.',
    ),
  }),
  ...against(is('polarityMarks', 'all-match'), {
    'marks-match-but-swapped-fuller': soft(
      is('testPolarity', 'fuller-swapped'),
      'A wrong delay imitates reversed polarity, and a box can be reversed inside.',
    ),
  }),
  ...against(is('polarityMarks', 'center-crossed'), {
    'marks-crossed-but-fuller-as-wired': soft(
      is('testPolarity', 'fuller-as-wired'),
      'The wires may have been put right before the test.',
    ),
  }),
  ...against(is('driversHeard', 'all'), {
    'drivers-play-but-silent': hard(is('testEarToDrivers', 'silent', 'rattles'), LATER),
  }),
  ...against(is('driversHeard', 'tweeter-silent', 'cone-silent'), {
    'drivers-silent-but-play': hard(is('testEarToDrivers', 'all'), LATER),
  }),
  ...against(is('channelCheck', 'silent'), {
    'channel-silent-but-drivers-play': hard(is('driversHeard', 'all'), LATER),
  }),
  ...against(is('jumpers', 'loose'), {
    'straps-loose-but-all-play': soft(is('driversHeard', 'all'), 'A loose strap may still touch.'),
  }),
  ...against(is('displaySpeakers', 'muted'), {
    'display-silent-but-cures': soft(
      is('testMuteDisplay', 'gone'),
      'If muting it cures the trouble, it was playing.',
    ),
  }),
  ...against(is('equalization', 'none'), {
    'no-equalization-but-reach': soft(given('equalizationReach')),
    'no-equalization-but-bypass-matters': soft(
      is('testEqBypass', 'better', 'worse'),
      'If bypassing it changes the sound, it was on.',
    ),
  }),
  ...against(is('alignmentBy', 'nobody'), {
    'nobody-set-but-microphone': soft(given('calibrationSpot')),
  }),
  ...against(is('entryKind', 'distances'), {
    'distances-but-delay': soft(given('delayCenter'), MENU),
  }),
  ...against(is('entryKind', 'delays'), {
    'delays-but-distance': soft(given('enteredCenter'), MENU),
  }),
  ...against(is('subwoofer', 'none'), {
    'no-subwoofer-but-timing': hard(is('subTiming', 'automatic', 'by-ear')),
    'no-subwoofer-but-late': hard(given('subDelay')),
    'no-subwoofer-but-polarity': hard(given('subPolarity')),
    'no-subwoofer-but-voice-from-it': hard(is('voiceDirection', 'subwoofer')),
  }),
  ...against(is('centerBassSize', 'large'), {
    'large-but-crossover': soft(given('centerBassCrossover'), 'Set to large, its crossover is out of use.'),
  }),
  ...against(is('screenKind', 'none'), {
    'no-screen-but-behind-it': hard(is('centerPlacement', 'behind-screen')),
    'no-screen-but-covered': hard(given('screenCovers')),
  }),
  ...against(is('seating', 'single-seat'), {
    'single-seat-but-side-seats': soft(
      is('troubleSeats', 'off-middle'),
      'Perhaps guests sit there now and then.',
    ),
  }),
  ...against(is('troubleSeats', 'off-middle'), {
    'off-middle-but-same-everywhere': soft(is('testSitMiddle', 'same-everywhere', 'worse-in-middle'), SPEECH),
  }),
  ...against(is('troubleSeats', 'everywhere', 'middle-only'), {
    'everywhere-but-clear-in-middle': soft(is('testSitMiddle', 'clear-in-middle'), SPEECH),
  }),
  ...against(is('whoHears', 'one-person'), {
    'one-person-but-seat': soft(is('testSwapSeats', 'stays-with-seat')),
  }),
  ...against(is('whoHears', 'one-place', 'everyone'), {
    'one-place-but-person': soft(is('testSwapSeats', 'goes-with-person')),
  }),
  ...against(is('onset', 'with-change'), {
    'with-change-but-nothing-changed': hard(is('lastChange', 'nothing')),
  }),
  ...against(is('centerPowered', 'no'), {
    'passive-but-latency': soft(
      given('centerLatency'),
      'A center without a power cord adds no delay of its own.',
    ),
  }),
  ...against(is('obstacle', 'none'), {
    'clear-view-but-obstacle': soft(given('obstacleHeight')),
  }),
  ...against(is('testNoiseEach', 'alike'), {
    'alike-but-changes-tone': soft(
      is('toneAcrossPan', 'duller', 'brighter', 'thinner', 'boxier'),
      'Steady noise from one seat is the better witness.',
    ),
  }),
  ...against(is('voiceLoudness', 'equal', 'louder'), {
    'equal-but-noise-softer': soft(is('testNoiseEach', 'softer')),
  }),
  ...against(is('voiceLoudness', 'equal', 'softer'), {
    'equal-but-noise-louder': soft(is('testNoiseEach', 'louder')),
  }),
];
