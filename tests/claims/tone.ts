/** Tone of center and mains, correction, screen, and the room. */
import {
  leads,
  leaves,
  likely,
  lowers,
  offers,
  offersFirst,
  offersNot,
  outweighs,
  raises,
  type Table,
  tellsMore,
  unlikely,
} from './claim.js';

const FILM = { playedContent: 'multichannel-film' } as const;
const CORRECTION_ON = {
  complaints: ['voice-changes-tone', 'dull'],
  playedContent: 'everything',
  equalization: 'automatic',
  equalizationReach: 'center-only',
  lastChange: 'calibration',
  toneAcrossPan: 'duller',
  centerFamily: 'identical-box',
} as const;
const VINYL = {
  ...FILM,
  complaints: ['dull'],
  centerPlacement: 'behind-screen',
  screenKind: 'perforated',
  screenCovers: 'all-three',
  screenHoleDiameter: '1 mm',
  screenHolesPerArea: 59200,
  screenThickness: '0.3 mm',
} as const;
const CORRECTED = {
  equalization: 'automatic',
  equalizationReach: 'all-alike',
  correctionState: 'as-now',
} as const;
const RINGS = {
  ...FILM,
  complaints: ['voice-unclear-everywhere'],
  troubleSeats: 'everywhere',
  troubleTitles: 'all',
} as const;

export const TONE_CLAIMS: Table = {
  'correction and boosts': [
    [
      'the noise of the receiver may pass by the correction, so alike and same clear nothing',
      { ...CORRECTION_ON, testNoiseEach: 'alike', testEqBypass: 'same' },
      leads('correction-mismatch'),
      leaves('correction-mismatch', { noiseFrom: 'receiver' }),
    ],
    [
      'noise from a file goes through it, and then they do',
      { ...CORRECTION_ON, testNoiseEach: 'alike', testEqBypass: 'same' },
      lowers('correction-mismatch', { noiseFrom: 'file' }, 6),
    ],
    [
      'better bypassed names the correction, worse bypassed clears it',
      CORRECTION_ON,
      raises('correction-mismatch', { testEqBypass: 'better' }, 6),
      lowers('correction-mismatch', { testEqBypass: 'worse' }, 6),
      likely('correction-mismatch'),
    ],
    [
      'a voice boost bends the tone with every equalizer off',
      {
        ...FILM,
        complaints: ['voice-changes-tone', 'harsh'],
        equalization: 'none',
        toneAcrossPan: 'brighter',
        voiceBoost: 'on',
        centerFamily: 'same-series',
      },
      leads('correction-mismatch'),
      offersFirst('correction-mismatch', 'boost-off'),
      offersNot('correction-mismatch', 'bypass', 'measure-again'),
    ],
    [
      'no equalizer, no boost and no tone control can bend nothing',
      {
        ...FILM,
        complaints: ['voice-changes-tone'],
        equalization: 'none',
        voiceBoost: 'off',
        toneControl: 'off',
      },
      unlikely('correction-mismatch'),
    ],
    [
      'a filter at the back of a powered box is a correction too',
      { ...FILM, equalization: 'none' },
      raises('correction-mismatch', { toneControl: 'on' }, 2),
    ],
    [
      'a correction that reaches the center alone leaves it unlike the mains',
      { ...FILM, equalization: 'automatic' },
      raises('correction-mismatch', { equalizationReach: 'center-only' }, 3),
      lowers('correction-mismatch', { equalizationReach: 'all-alike' }),
    ],
    [
      'a bypass tells more than where the microphone stood',
      { ...FILM, equalization: 'automatic', alignmentBy: 'automatic' },
      tellsMore('correction-mismatch', { testEqBypass: 'better' }, { calibrationSpot: 'elsewhere' }),
    ],
    [
      'what moves to the left with the channel may be its filters',
      { ...FILM, equalization: 'automatic' },
      raises('correction-mismatch', { testSwapAtAmplifier: 'moves-left' }, 3),
      lowers('correction-mismatch', { testSwapAtAmplifier: 'stays' }, 2),
    ],
  ],
  'family of loudspeakers': [
    [
      'horn mains with their own matching center spread sound alike',
      { ...FILM, complaints: ['voice-changes-tone'], mainsKind: 'panel-or-horn' },
      lowers('timbre', { centerFamily: 'same-series' }, 3),
      raises('timbre', { centerFamily: 'unrelated' }, 4),
    ],
    [
      'three equal boxes have one tone',
      { ...FILM, complaints: ['voice-changes-tone'], centerFamily: 'identical-box' },
      unlikely('timbre'),
    ],
    [
      'a main that sounds right in that place names the box',
      { ...FILM, complaints: ['voice-changes-tone'] },
      raises('timbre', { testMainInPlace: 'right' }, 4),
      lowers('timbre', { testMainInPlace: 'wrong' }, 6),
    ],
    [
      'an exchange tells more than a label',
      FILM,
      tellsMore('timbre', { testMainInPlace: 'right' }, { centerFamily: 'unrelated' }),
    ],
    [
      'unrelated boxes and a step of tone across the front are a mismatch',
      {
        ...FILM,
        complaints: ['voice-changes-tone'],
        centerFamily: 'unrelated',
        testNoiseEach: 'brighter',
        centerSizeAgainstMains: 'smaller',
      },
      leads('timbre'),
      offers('timbre', 'matching-center'),
    ],
    ['near by the box itself is heard', FILM, lowers('timbre', { testNearCenter: 'good-near' }, 2)],
  ],
  screen: [
    [
      'cinema vinyl without anything to give its treble back dulls',
      { ...VINYL, equalization: 'none' },
      leads('screen-loss'),
      offers('screen-loss', 'give-treble-back'),
    ],
    [
      'a correction measured through it gives it back',
      { ...VINYL, equalization: 'none' },
      lowers('screen-loss', CORRECTED, 5),
    ],
    [
      'one measured with the screen up gives back nothing',
      { ...VINYL, equalization: 'none' },
      leaves('screen-loss', { ...CORRECTED, correctionState: 'changed' }),
    ],
    [
      'then the free remedy is to run it again with the screen down',
      { ...VINYL, ...CORRECTED, correctionState: 'changed' },
      leads('screen-loss'),
      offersFirst('screen-loss', 'correct-again'),
    ],
    [
      'twice given back is harm',
      { ...VINYL, ...CORRECTED, screenCompensation: '4 dB' },
      offersNot('screen-loss', 'give-treble-back', 'correct-again'),
    ],
    [
      'good one meter away with the sheet between, and bad off the middle only, is not the sheet',
      { ...VINYL, equalization: 'none' },
      lowers('screen-loss', { testNearCenter: 'good-near' }, 2),
      lowers('screen-loss', { troubleSeats: 'off-middle' }, 2),
    ],
    [
      'a sheet dulls: what began with it comes from it',
      { ...VINYL, equalization: 'none' },
      raises('screen-loss', { lastChange: 'screen' }, 4),
    ],
    [
      'an open weave is innocent',
      {
        ...FILM,
        complaints: ['dull'],
        screenKind: 'woven',
        screenFlowResistance: 15,
        screenCovers: 'all-three',
      },
      unlikely('screen-loss'),
    ],
  ],
  room: [
    [
      'far away a room drowns what it leaves clear near by',
      { ...RINGS, reverberationTime: '0.7 s' },
      raises('room-acoustics', { seatDistance: '7 m' }, 0.1),
      lowers('room-acoustics', { seatDistance: '1.5 m' }, 1),
    ],
    [
      'a bare hall that rings for more than a second drowns speech',
      { ...RINGS, reverberationTime: '1.4 s', seatDistance: '4 m' },
      leads('room-acoustics'),
    ],
    [
      'a flutter between two walls is no long ring',
      RINGS,
      lowers('room-acoustics', { clapRing: 'flutter', floorCover: 'carpet' }, 1),
      raises('room-acoustics', { clapRing: 'long' }, 1),
    ],
    [
      'one of the two walls is dressed',
      { ...RINGS, clapRing: 'flutter' },
      offers('room-acoustics', 'break-the-flutter'),
    ],
    [
      'a room without a flutter has none to break',
      { ...RINGS, clapRing: 'dry' },
      offersNot('room-acoustics', 'break-the-flutter'),
    ],
    [
      'against noise night mode and a voice boost help before walls are treated',
      { ...RINGS, backgroundNoise: 'loud', dynamicCompression: 'off', voiceBoost: 'off' },
      offers('room-acoustics', 'quiet-the-noise', 'voice-against-noise'),
    ],
    [
      'noise covers words',
      RINGS,
      raises('room-acoustics', { backgroundNoise: 'loud' }, 3),
      lowers('room-acoustics', { backgroundNoise: 'quiet' }),
    ],
    [
      'as bad one meter away clears the room, good there names it',
      RINGS,
      lowers('room-acoustics', { testNearCenter: 'still-bad' }, 5),
      raises('room-acoustics', { testNearCenter: 'good-near' }, 3),
    ],
    [
      'a trouble that goes with the center is not the room',
      RINGS,
      lowers('room-acoustics', { testPhantom: 'gone' }, 4),
    ],
    [
      'a meter nearer counts where the room rings',
      { ...RINGS, reverberationTime: '0.9 s', seatDistance: '2.5 m' },
      offers('room-acoustics', 'sit-nearer'),
    ],
    [
      'a room that rings outweighs the mains where everything is drowned everywhere',
      { ...RINGS, reverberationTime: '1.4 s', testPhantom: 'same', seatDistance: '4 m' },
      outweighs('room-acoustics', 'mains-layout', 'driver-layout'),
    ],
  ],
};
