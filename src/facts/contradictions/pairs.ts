/** Pairs of answers that hardly stand together, as a table. The ones that need arithmetic are in the files beside this one. */
import type { Choice, ChoiceFactId, FactId } from '../catalog.js';

/** One side of a pair: a choice fact with the values meant, or any fact that was told at all. */
export type Side =
  | { [Id in ChoiceFactId]: { readonly fact: Id; readonly is: readonly Choice<Id>[] } }[ChoiceFactId]
  | { readonly fact: FactId; readonly is: 'told' };

interface Pair {
  readonly id: string;
  readonly kind: 'hard' | 'soft';
  readonly a: Side;
  readonly b: Side;
  /** How both may have come about, without blame. */
  readonly note?: string;
}

const LATER = 'One of the two may be from another day.';

export const PAIRS: readonly Pair[] = [
  {
    id: 'center-none-but-trim',
    kind: 'soft',
    a: { fact: 'centerMode', is: ['none'] },
    b: { fact: 'centerTrim', is: 'told' },
    note: 'A center set to none has no trim of its own.',
  },
  {
    id: 'center-none-but-level',
    kind: 'hard',
    a: { fact: 'centerMode', is: ['none'] },
    b: { fact: 'measuredCenterLevel', is: 'told' },
    note: 'A center set to none plays no noise.',
  },
  {
    id: 'center-none-but-plays',
    kind: 'hard',
    a: { fact: 'centerMode', is: ['none'] },
    b: { fact: 'channelCheck', is: ['right', 'center-elsewhere-too'] },
    note: LATER,
  },
  {
    id: 'center-none-but-heard',
    kind: 'soft',
    a: { fact: 'centerMode', is: ['none'] },
    b: { fact: 'voiceDirection', is: ['center-box'] },
  },
  {
    id: 'no-center-but-layout',
    kind: 'hard',
    a: { fact: 'centerCount', is: ['none'] },
    b: { fact: 'centerLayout', is: 'told' },
  },
  {
    id: 'no-center-but-heard',
    kind: 'hard',
    a: { fact: 'centerCount', is: ['none'] },
    b: { fact: 'channelCheck', is: ['right', 'center-elsewhere-too'] },
  },
  {
    id: 'no-center-but-present',
    kind: 'soft',
    a: { fact: 'centerCount', is: ['none'] },
    b: { fact: 'centerMode', is: ['present'] },
    note: 'A menu can say present while no box is connected; that is worth knowing.',
  },
  {
    id: 'one-center-but-pair',
    kind: 'soft',
    a: { fact: 'centerCount', is: ['one'] },
    b: { fact: 'centerLayout', is: ['paired-boxes'] },
    note: 'Two complete boxes side by side count as two.',
  },
  {
    id: 'two-centers-but-one-layout',
    kind: 'soft',
    a: { fact: 'centerCount', is: ['two'] },
    b: { fact: 'testPullForward', is: 'told' },
    note: 'With two boxes it matters which of them was moved.',
  },
  {
    id: 'upmix-off-but-cures',
    kind: 'soft',
    a: { fact: 'upmixUse', is: ['off'] },
    b: { fact: 'testUpmixOff', is: ['gone'] },
    note: 'If switching it off cures the trouble, it was on.',
  },
  {
    id: 'upmix-off-but-spread-works',
    kind: 'soft',
    a: { fact: 'upmixUse', is: ['off'] },
    b: { fact: 'testSpreadOn', is: ['opens', 'worse'] },
    note: 'Center spread acts only while an upmix is on.',
  },
  {
    id: 'no-control-but-spread',
    kind: 'hard',
    a: { fact: 'upmixCenterControl', is: ['none'] },
    b: { fact: 'centerSpread', is: ['on'] },
  },
  {
    id: 'no-control-but-spread-works',
    kind: 'hard',
    a: { fact: 'upmixCenterControl', is: ['none'] },
    b: { fact: 'testSpreadOn', is: ['opens', 'worse'] },
  },
  {
    id: 'spread-off-but-amount',
    kind: 'soft',
    a: { fact: 'centerSpread', is: ['off'] },
    b: { fact: 'centerSpreadAmount', is: 'told' },
  },
  {
    id: 'no-ambience-but-size',
    kind: 'soft',
    a: { fact: 'upmixAmbience', is: ['no'] },
    b: { fact: 'ambienceSize', is: 'told' },
  },
  {
    id: 'film-but-two-channels',
    kind: 'soft',
    a: { fact: 'playedContent', is: ['multichannel-film'] },
    b: { fact: 'sourceFormat', is: ['two-channel'] },
    note: 'The mix may have a center channel that is lost on the way.',
  },
  {
    id: 'music-but-multichannel',
    kind: 'soft',
    a: { fact: 'playedContent', is: ['two-channel-music'] },
    b: { fact: 'sourceFormat', is: ['multichannel'] },
    note: 'The player may do the upmix itself, or the display may show the listening mode.',
  },
  {
    id: 'marks-match-but-swapped-fuller',
    kind: 'soft',
    a: { fact: 'polarityMarks', is: ['all-match'] },
    b: { fact: 'testPolarity', is: ['fuller-swapped'] },
    note: 'A wrong delay imitates reversed polarity, and a box can be reversed inside.',
  },
  {
    id: 'marks-crossed-but-fuller-as-wired',
    kind: 'soft',
    a: { fact: 'polarityMarks', is: ['center-crossed'] },
    b: { fact: 'testPolarity', is: ['fuller-as-wired'] },
    note: 'The wires may have been put right before the test.',
  },
  {
    id: 'drivers-play-but-silent',
    kind: 'hard',
    a: { fact: 'driversHeard', is: ['all'] },
    b: { fact: 'testEarToDrivers', is: ['silent', 'rattles'] },
    note: LATER,
  },
  {
    id: 'drivers-silent-but-play',
    kind: 'hard',
    a: { fact: 'driversHeard', is: ['tweeter-silent', 'cone-silent'] },
    b: { fact: 'testEarToDrivers', is: ['all'] },
    note: LATER,
  },
  {
    id: 'channel-silent-but-drivers-play',
    kind: 'hard',
    a: { fact: 'channelCheck', is: ['silent'] },
    b: { fact: 'driversHeard', is: ['all'] },
    note: LATER,
  },
  {
    id: 'straps-loose-but-all-play',
    kind: 'soft',
    a: { fact: 'jumpers', is: ['loose'] },
    b: { fact: 'driversHeard', is: ['all'] },
    note: 'A loose strap may still touch.',
  },
  {
    id: 'display-silent-but-cures',
    kind: 'soft',
    a: { fact: 'displaySpeakers', is: ['muted'] },
    b: { fact: 'testMuteDisplay', is: ['gone'] },
    note: 'If muting it cures the trouble, it was playing.',
  },
  {
    id: 'no-equalization-but-reach',
    kind: 'soft',
    a: { fact: 'equalization', is: ['none'] },
    b: { fact: 'equalizationReach', is: 'told' },
  },
  {
    id: 'no-equalization-but-bypass-matters',
    kind: 'soft',
    a: { fact: 'equalization', is: ['none'] },
    b: { fact: 'testEqBypass', is: ['better', 'worse'] },
    note: 'If bypassing it changes the sound, it was on.',
  },
  {
    id: 'nobody-set-but-microphone',
    kind: 'soft',
    a: { fact: 'alignmentBy', is: ['nobody'] },
    b: { fact: 'calibrationSpot', is: 'told' },
  },
  {
    id: 'distances-but-delay',
    kind: 'soft',
    a: { fact: 'entryKind', is: ['distances'] },
    b: { fact: 'delayCenter', is: 'told' },
    note: 'A menu shows the one or the other.',
  },
  {
    id: 'delays-but-distance',
    kind: 'soft',
    a: { fact: 'entryKind', is: ['delays'] },
    b: { fact: 'enteredCenter', is: 'told' },
    note: 'A menu shows the one or the other.',
  },
  {
    id: 'no-subwoofer-but-timing',
    kind: 'hard',
    a: { fact: 'subwoofer', is: ['none'] },
    b: { fact: 'subTiming', is: ['automatic', 'by-ear'] },
  },
  {
    id: 'no-subwoofer-but-late',
    kind: 'hard',
    a: { fact: 'subwoofer', is: ['none'] },
    b: { fact: 'subDelay', is: 'told' },
  },
  {
    id: 'no-subwoofer-but-polarity',
    kind: 'hard',
    a: { fact: 'subwoofer', is: ['none'] },
    b: { fact: 'subPolarity', is: 'told' },
  },
  {
    id: 'no-subwoofer-but-voice-from-it',
    kind: 'hard',
    a: { fact: 'subwoofer', is: ['none'] },
    b: { fact: 'voiceDirection', is: ['subwoofer'] },
  },
  {
    id: 'large-but-crossover',
    kind: 'soft',
    a: { fact: 'centerBassSize', is: ['large'] },
    b: { fact: 'centerBassCrossover', is: 'told' },
    note: 'Set to large, its crossover is out of use.',
  },
  {
    id: 'no-screen-but-behind-it',
    kind: 'hard',
    a: { fact: 'screenKind', is: ['none'] },
    b: { fact: 'centerPlacement', is: ['behind-screen'] },
  },
  {
    id: 'no-screen-but-covered',
    kind: 'hard',
    a: { fact: 'screenKind', is: ['none'] },
    b: { fact: 'screenCovers', is: 'told' },
  },
  {
    id: 'single-seat-but-side-seats',
    kind: 'soft',
    a: { fact: 'seating', is: ['single-seat'] },
    b: { fact: 'troubleSeats', is: ['off-middle'] },
    note: 'Perhaps guests sit there now and then.',
  },
  {
    id: 'off-middle-but-same-everywhere',
    kind: 'soft',
    a: { fact: 'troubleSeats', is: ['off-middle'] },
    b: { fact: 'testSitMiddle', is: ['same-everywhere', 'worse-in-middle'] },
    note: 'The test with one minute of speech is the better witness.',
  },
  {
    id: 'everywhere-but-clear-in-middle',
    kind: 'soft',
    a: { fact: 'troubleSeats', is: ['everywhere', 'middle-only'] },
    b: { fact: 'testSitMiddle', is: ['clear-in-middle'] },
    note: 'The test with one minute of speech is the better witness.',
  },
  {
    id: 'one-person-but-seat',
    kind: 'soft',
    a: { fact: 'whoHears', is: ['one-person'] },
    b: { fact: 'testSwapSeats', is: ['stays-with-seat'] },
  },
  {
    id: 'one-place-but-person',
    kind: 'soft',
    a: { fact: 'whoHears', is: ['one-place', 'everyone'] },
    b: { fact: 'testSwapSeats', is: ['goes-with-person'] },
  },
  {
    id: 'with-change-but-nothing-changed',
    kind: 'hard',
    a: { fact: 'onset', is: ['with-change'] },
    b: { fact: 'lastChange', is: ['nothing'] },
  },
  {
    id: 'passive-but-latency',
    kind: 'soft',
    a: { fact: 'centerPowered', is: ['no'] },
    b: { fact: 'centerLatency', is: 'told' },
    note: 'A center without a power cord adds no delay of its own.',
  },
  {
    id: 'clear-view-but-obstacle',
    kind: 'soft',
    a: { fact: 'obstacle', is: ['none'] },
    b: { fact: 'obstacleHeight', is: 'told' },
  },
  {
    id: 'alike-but-changes-tone',
    kind: 'soft',
    a: { fact: 'testNoiseEach', is: ['alike'] },
    b: { fact: 'toneAcrossPan', is: ['duller', 'brighter', 'thinner', 'boxier'] },
    note: 'Steady noise from one seat is the better witness.',
  },
  {
    id: 'equal-but-noise-softer',
    kind: 'soft',
    a: { fact: 'voiceLoudness', is: ['equal', 'louder'] },
    b: { fact: 'testNoiseEach', is: ['softer'] },
  },
  {
    id: 'equal-but-noise-louder',
    kind: 'soft',
    a: { fact: 'voiceLoudness', is: ['equal', 'softer'] },
    b: { fact: 'testNoiseEach', is: ['louder'] },
  },
];
