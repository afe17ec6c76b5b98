/** What reaches the loudspeakers: times, levels, wires, channels, bass, and the program itself. */
import {
  atMost,
  leads,
  leaves,
  likely,
  lowers,
  offers,
  offersFirst,
  offersNot,
  outweighs,
  plans,
  raises,
  type Table,
  tellsMore,
  unlikely,
} from './claim.js';

const FILM = { playedContent: 'multichannel-film', sourceFormat: 'multichannel' } as const;
const MUSIC = { playedContent: 'two-channel-music', upmixUse: 'on', upmixCommonPart: 'leaves' } as const;
const TAPED = { tapedCenter: '2.9 m', tapedMains: '3.2 m' } as const;
const ENTERED = { enteredLeft: '3.2 m', enteredCenter: '2.9 m', enteredRight: '3.2 m' } as const;
const HOLLOW_MUSIC = { complaints: ['hollow'], ...MUSIC } as const;
const LATE = { complaints: ['voice-changes-tone'], ...MUSIC, ...TAPED, ...ENTERED } as const;
const QUIET = { complaints: ['voice-too-quiet'], ...FILM } as const;
const MISSING = { complaints: ['voice-missing'], ...FILM } as const;
const BOOMY = { complaints: ['boomy'], ...FILM, subwoofer: 'one', centerBassSize: 'small' } as const;
const STRAIN = { complaints: ['distorts-when-loud'], ...FILM } as const;

export const SIGNAL_CLAIMS: Table = {
  'times of arrival': [
    [
      'a meter too much in the entry of the center is a delay where music is shared',
      { ...LATE, enteredCenter: '3.9 m' },
      leads('delay'),
      offersFirst('delay', 'enter-taped-distances'),
    ],
    ['entries as taped leave nothing', LATE, unlikely('delay')],
    [
      'one service alone may send another mix as well as another format, and speaks against neither',
      { complaints: ['voice-unclear-everywhere'], ...FILM },
      raises('routing', { troubleTitles: 'one-source' }, 2),
      leaves('programme', { troubleTitles: 'one-source' }),
      lowers('programme', { troubleTitles: 'all' }, 3),
    ],
    [
      'noise that also comes from elsewhere does not clear cables and outputs',
      { complaints: ['voice-from-behind'], ...FILM },
      raises('surround-spill', { channelCheck: 'center-elsewhere-too' }, 8),
      leaves('routing', { channelCheck: 'center-elsewhere-too' }),
      lowers('routing', { channelCheck: 'right' }, 2),
    ],
    [
      'a change may be what broke a driver, and does not speak for a box that is whole',
      { complaints: ['dull'], driversHeard: 'tweeter-silent' },
      leaves('driver-fault', { onset: 'with-change' }),
      raises('driver-fault', { onset: 'sudden' }, 3),
      lowers('driver-fault', { onset: 'always' }, 1),
    ],
    [
      'a voice that one service alone puts behind, while the noise of the receiver is right, comes in another order',
      {
        complaints: ['voice-from-behind'],
        voiceDirection: 'behind',
        troubleTitles: 'one-source',
        channelCheck: 'right',
        lastChange: 'source',
        sourceFormat: 'multichannel',
      },
      leads('routing'),
      unlikely('polarity', 'height', 'driver-layout'),
    ],
    [
      'a small box may sound different, and may strain',
      STRAIN,
      raises('overload', { centerSizeAgainstMains: 'smaller' }),
      raises('timbre', { centerSizeAgainstMains: 'smaller' }),
    ],
    [
      'one maker builds series of one tone and of several',
      { complaints: ['voice-changes-tone'] },
      leaves('timbre', { centerFamily: 'same-maker' }),
      raises('timbre', { centerFamily: 'unrelated' }, 2),
      lowers('timbre', { centerFamily: 'same-series' }, 3),
    ],
    [
      'half a millisecond that was measured is heard in music that is shared, and not in a film',
      { complaints: ['hollow'], ...FILM },
      tellsMore(
        'delay',
        { ...MUSIC, sourceFormat: 'two-channel', arrivalMeasuredMs: { value: 0.5, how: 'measured' } },
        { arrivalMeasuredMs: { value: 0.1, how: 'measured' } },
      ),
      lowers('delay', { arrivalMeasuredMs: { value: 0.5, how: 'measured' } }, 3),
    ],
    [
      'a reading of half the decibels is a misread meter, no level fault',
      {
        ...QUIET,
        measuredLeftLevel: { value: 75, how: 'measured' },
        measuredRightLevel: { value: 75, how: 'measured' },
      },
      raises('level', { measuredCenterLevel: { value: 69, how: 'measured' } }, 4),
      leaves('level', { measuredCenterLevel: { value: 37.5, how: 'measured' } }),
      leaves('level', { measuredCenterLevel: 75, measuredLeftLevel: { value: 37.5, how: 'measured' } }),
    ],
    [
      'an entry that the tape shows to be 38 cm off is set right first, though nobody blames it',
      {
        complaints: ['boomy'],
        centerPlacement: 'bay',
        alignmentBy: 'by-hand',
        enteredLeft: '9.5 ft',
        enteredCenter: '9.5 ft',
        enteredRight: '9.5 ft',
        tapedLeft: '10 ft 2 in',
        tapedCenter: '8 ft 11 in',
      },
      plans('delay/enter-taped-distances'),
    ],
    [
      'feet in a field of meters are mended first, films or not, whatever leads',
      { complaints: ['voice-changes-tone'], ...FILM, ...TAPED, ...ENTERED, enteredCenter: '9.5 m' },
      plans('delay/correct-unit'),
    ],
    [
      'what is 19 ms out of step in a film is no longer nothing: pans, effects and score are shared',
      { complaints: ['voice-changes-tone'], ...FILM, ...TAPED, ...ENTERED },
      raises('delay', { enteredCenter: '9.5 m' }, 10),
      lowers('delay', { enteredCenter: '2.9 m' }, 0),
    ],
    [
      'the same error says more in music that center and mains share than in a film',
      { complaints: ['hollow'], ...FILM, ...TAPED, ...ENTERED, enteredCenter: '3.5 m' },
      raises('delay', { ...MUSIC, sourceFormat: 'two-channel' }, 5),
    ],
    [
      'an automatic entry that is longer than the tape asks for a power cord before it is undone',
      { ...LATE, enteredCenter: '4.3 m', alignmentBy: 'automatic' },
      offersNot('delay', 'enter-taped-distances'),
      offersFirst('delay', 'look-for-latency'),
      atMost('delay', 0.25),
    ],
    [
      'the same entry typed by hand is an error',
      { ...LATE, enteredCenter: '4.3 m', alignmentBy: 'automatic' },
      raises('delay', { alignmentBy: 'by-hand' }, 6),
    ],
    [
      'told that nothing in front is powered, the automatic entry is an error too',
      { ...LATE, enteredCenter: '4.3 m', alignmentBy: 'automatic' },
      raises('delay', { centerPowered: 'no' }, 6),
    ],
    [
      'told that the center is powered, it is the latency',
      { ...LATE, enteredCenter: '4.3 m', alignmentBy: 'automatic' },
      lowers('delay', { centerPowered: 'yes' }, 1),
    ],
    [
      'automatic entries of the mains longer than the tape may be theirs',
      { ...LATE, enteredLeft: '4.6 m', enteredRight: '4.6 m', alignmentBy: 'automatic', centerPowered: 'no' },
      atMost('delay', 0.25),
      raises('delay', { mainsPowered: 'no' }, 6),
    ],
    [
      'a latency of 20 ms that the entry makes up for is no slip of the unit',
      { ...LATE, enteredCenter: '9.76 m', centerPowered: 'yes', centerLatency: 20 },
      unlikely('delay'),
      offersNot('delay', 'enter-taped-distances'),
    ],
    ['a tape that disagrees tells of a delay', HOLLOW_MUSIC, raises('delay', { testTape: 'off' }, 5)],
    [
      'where the menu moves by the foot, a hand width on the tape says nothing more',
      { ...HOLLOW_MUSIC, entryStep: '30.48 cm' },
      leaves('delay', { testTape: 'off' }),
    ],
    ['a tape that agrees speaks against it', HOLLOW_MUSIC, lowers('delay', { testTape: 'agrees' }, 5)],
    [
      'a tape sees no latency: with a powered center it says nothing',
      { ...HOLLOW_MUSIC, centerPowered: 'yes' },
      leaves('delay', { testTape: 'agrees' }),
    ],
    [
      'a trouble at the end seat alone is not made by the entries',
      HOLLOW_MUSIC,
      lowers('delay', { testSitMiddle: 'clear-in-middle' }, 3),
    ],
    [
      'a middle as bad as the end may be',
      HOLLOW_MUSIC,
      raises('delay', { testSitMiddle: 'same-everywhere' }),
    ],
    [
      'what stays without a center is not center against mains',
      HOLLOW_MUSIC,
      lowers('delay', { testPhantom: 'same' }, 4),
    ],
    [
      'music of which the mains keep nothing hides any delay',
      { ...LATE, enteredCenter: '3.9 m' },
      lowers('delay', { upmixCommonPart: 'takes-out' }, 8),
    ],
  ],
  polarity: [
    [
      'a crossed pair that was seen is mended first, with a delay error beside it',
      {
        complaints: ['hollow', 'no-middle'],
        ...MUSIC,
        ...TAPED,
        ...ENTERED,
        tapedCenter: '3.15 m',
        polarityMarks: 'center-crossed',
      },
      leads('polarity'),
      plans('polarity/uncross'),
    ],
    [
      'a crossed pair is likely the fault in films too where a subwoofer plays the low voice',
      {
        complaints: ['hollow'],
        ...FILM,
        subwoofer: 'one',
        centerBassSize: 'small',
        centerBassCrossover: '80 Hz',
        centerLowLimit: '50 Hz',
        centerEnclosure: 'sealed',
      },
      raises('polarity', { polarityMarks: 'center-crossed' }, 8),
      leaves('polarity', { subTiming: 'automatic' }),
    ],
    [
      'center with left agreeing does not clear the other main',
      {
        complaints: ['no-middle'],
        ...MUSIC,
        voiceDirection: 'nowhere',
        testPhantom: 'worse',
        testPolarity: 'fuller-as-wired',
      },
      outweighs('polarity', 'routing'),
      lowers('polarity', { testPolarityMains: 'fuller-as-wired' }),
      raises('polarity', { testPolarityMains: 'fuller-swapped' }, 7),
    ],
    [
      'as before with the center silenced is what a mode makes that leaves the singer in the mains',
      { complaints: ['hollow'], ...MUSIC, sourceFormat: 'two-channel', testUnplugged: 'voice-full' },
      unlikely('routing', 'polarity'),
    ],
    [
      'fuller with the center silenced is a center that works against the mains',
      HOLLOW_MUSIC,
      raises('polarity', { testUnplugged: 'voice-fuller' }, 7),
    ],
    [
      'a voice from nowhere tells of it, one with a place speaks against',
      HOLLOW_MUSIC,
      raises('polarity', { voiceDirection: 'nowhere' }, 5),
      lowers('polarity', { voiceDirection: 'picture' }, 2),
    ],
    [
      'a message of the setup is a hint, not a proof',
      HOLLOW_MUSIC,
      raises('polarity', { polarityMessage: 'center' }, 2),
      unlikely('routing'),
    ],
    [
      'marks that match speak against it',
      HOLLOW_MUSIC,
      lowers('polarity', { polarityMarks: 'all-match' }, 5),
    ],
    [
      'hollow noise on the center alone is inside the box',
      HOLLOW_MUSIC,
      lowers('polarity', { testNoiseEach: 'phasey' }, 3),
    ],
    [
      'of a singer whom only the center plays, no subwoofer near, nothing can cancel',
      { complaints: ['hollow'], ...MUSIC },
      lowers('polarity', { upmixCommonPart: 'takes-out', subwoofer: 'none' }, 5),
    ],
    [
      'a cone that jumps the other way on a cell is the fault seen',
      HOLLOW_MUSIC,
      raises('polarity', { testCell: 'center-other' }, 8),
    ],
  ],
  level: [
    [
      'six decibels too loud is level, and turning it up in vain says nothing against it',
      {
        complaints: ['voice-too-loud'],
        ...MUSIC,
        measuredCenterLevel: 81,
        measuredLeftLevel: 75,
        measuredRightLevel: 75,
      },
      leads('level'),
      likely('level'),
      leaves('level', { triedTrim: 'louder' }),
      offersNot('level', 'taste-trim'),
    ],
    [
      'six too soft as well',
      { ...QUIET, measuredCenterLevel: 69, measuredLeftLevel: 75, measuredRightLevel: 75 },
      leads('level'),
    ],
    [
      'equal at the seat, the voice is too quiet by its mix',
      {
        ...QUIET,
        measuredCenterLevel: 75,
        measuredLeftLevel: 75,
        measuredRightLevel: 75,
        troubleTitles: 'some',
      },
      outweighs('programme', 'level'),
      unlikely('level'),
    ],
    [
      'a trial upward helps a buried mix as much: it proves no level',
      { ...QUIET, troubleTitles: 'some', triedTrim: 'cured' },
      outweighs('programme', 'level'),
    ],
    ['louder but no clearer speaks against level', QUIET, lowers('level', { triedTrim: 'louder' }, 2)],
    [
      'trims that nobody set leave an insensitive box soft on any output',
      { ...QUIET, alignmentBy: 'nobody' },
      leaves('level', { testSwapAtAmplifier: 'stays' }),
    ],
    [
      'trims that somebody set do not',
      { ...QUIET, alignmentBy: 'automatic' },
      lowers('level', { testSwapAtAmplifier: 'stays' }, 1),
    ],
    [
      'a meter outweighs the ear',
      { ...QUIET, voiceLoudness: 'softer' },
      lowers('level', { measuredCenterLevel: 75, measuredLeftLevel: 75, measuredRightLevel: 75 }, 4),
    ],
    ['noise that sounds alike clears the level', QUIET, lowers('level', { testNoiseEach: 'alike' }, 3)],
    ['softer noise tells it', QUIET, raises('level', { testNoiseEach: 'softer' }, 5)],
  ],
  'channels and devices': [
    [
      'a missing voice is a channel first, not a mix',
      MISSING,
      leads('routing'),
      outweighs('routing', 'programme'),
    ],
    [
      'silent on the left output too, it is the box or its cable',
      { ...MISSING, channelCheck: 'silent', testSwapAtAmplifier: 'stays' },
      leads('driver-fault'),
      unlikely('routing'),
    ],
    [
      'silent on its own output only, it is the channel',
      { ...MISSING, channelCheck: 'silent', testSwapAtAmplifier: 'moves-left' },
      leads('routing'),
      unlikely('driver-fault'),
    ],
    [
      'a voice missing without the center too never came in',
      MISSING,
      raises('routing', { testPhantom: 'same' }),
      lowers('driver-fault', { testPhantom: 'same' }, 5),
    ],
    ['a voice at the picture accuses no channel', QUIET, leaves('routing', { voiceDirection: 'picture' })],
    ['a voice in the box proves the channel', QUIET, lowers('routing', { voiceDirection: 'center-box' }, 2)],
    [
      'noise from the wrong loudspeaker is the wiring, and mended first',
      { ...MISSING, channelCheck: 'swapped' },
      likely('routing'),
      plans('routing/put-channels-right'),
    ],
    [
      'as full with the center silenced in a film, nothing came through it',
      MISSING,
      raises('routing', { testUnplugged: 'voice-full' }, 5),
    ],
    [
      'muting the display cures a voice that comes from below',
      { complaints: ['voice-low-or-high'], ...FILM, displaySpeakers: 'playing', testMuteDisplay: 'gone' },
      leads('double-playback'),
      unlikely('height'),
      plans('double-playback/mute-display-for-good'),
    ],
    [
      'muted in vain, the display is innocent',
      { complaints: ['echo'], playedContent: 'television' },
      lowers('double-playback', { testMuteDisplay: 'same' }, 5),
    ],
    [
      'an all-channel mode puts the voice everywhere',
      { complaints: ['no-middle', 'voice-from-behind'], playedContent: 'television' },
      raises('surround-spill', { allChannelMode: 'yes' }, 7),
    ],
    [
      'an echo that goes with the upmix comes from the loudspeakers it feeds',
      { complaints: ['echo'], playedContent: 'television', sourceFormat: 'two-channel', upmixUse: 'on' },
      raises('surround-spill', { testUpmixOff: 'gone' }, 2),
    ],
  ],
  'box and amplifier': [
    [
      'a silent tweeter is the fault seen: have it mended',
      { complaints: ['dull'], ...FILM, driversHeard: 'tweeter-silent' },
      leads('driver-fault'),
      plans('driver-fault/repair-driver'),
    ],
    [
      'a loose strap is tightened first',
      { complaints: ['dull'], ...FILM, jumpers: 'loose' },
      plans('driver-fault/tighten-terminals'),
      raises('driver-fault', { onset: 'sudden' }, 3),
    ],
    [
      'all drivers clean clears it',
      { complaints: ['dull'], ...FILM },
      lowers('driver-fault', { testEarToDrivers: 'all' }, 6),
    ],
    [
      'a rattle that came at once is a part, though loud first',
      { complaints: ['rattles', 'distorts-when-loud'], ...FILM, troubleWhenLoud: 'yes', onset: 'sudden' },
      outweighs('driver-fault', 'overload'),
    ],
    [
      'trim at its end, a boost and five meters strain a center',
      STRAIN,
      raises('overload', { centerTrim: 12, voiceBoost: 'on', seatDistance: '5 m' }, 5),
    ],
    ['the same at any volume is no strain', STRAIN, lowers('overload', { troubleWhenLoud: 'no' }, 5)],
    [
      'without a subwoofer the mains take the bass of a small center set to large',
      { ...STRAIN, subwoofer: 'none', centerBassSize: 'large', centerSizeAgainstMains: 'smaller' },
      leads('overload'),
      offers('overload', 'bass-to-the-mains'),
      offersNot('overload', 'send-bass-to-subwoofer'),
    ],
    [
      'with one, the subwoofer does',
      { ...STRAIN, subwoofer: 'one', centerBassSize: 'large', centerSizeAgainstMains: 'smaller' },
      offers('overload', 'send-bass-to-subwoofer'),
      offersNot('overload', 'bass-to-the-mains'),
    ],
  ],
  'low voice': [
    [
      'a boom that goes with the subwoofer off is its level',
      BOOMY,
      raises('bass-management', { testSubOff: 'gone' }, 7),
      offers('bass-management', 'turn-subwoofer-down'),
    ],
    ['one that stays is not', BOOMY, lowers('bass-management', { testSubOff: 'same' }, 3)],
    [
      'a port crossed at its limit by steep filters leaves a hole',
      {
        complaints: ['hollow'],
        ...FILM,
        subwoofer: 'one',
        centerBassSize: 'small',
        centerBassCrossover: '80 Hz',
        centerLowLimit: '80 Hz',
        centerEnclosure: 'vented',
        subTiming: 'untouched',
      },
      leads('bass-management'),
    ],
    [
      'a closed box crossed well above it does not',
      {
        complaints: ['hollow'],
        ...FILM,
        subwoofer: 'one',
        centerBassSize: 'small',
        centerBassCrossover: '100 Hz',
        centerLowLimit: '50 Hz',
        centerEnclosure: 'sealed',
        subTiming: 'automatic',
      },
      unlikely('bass-management'),
    ],
    [
      'a voice from the subwoofer is a crossover too high',
      { complaints: ['voice-pulled-aside'], ...FILM, subwoofer: 'one' },
      raises('bass-management', { voiceDirection: 'subwoofer' }, 4.5),
      raises('bass-management', { voiceDirection: 'subwoofer', centerBassCrossover: '120 Hz' }, 10),
      tellsMore(
        'bass-management',
        { voiceDirection: 'subwoofer', centerBassCrossover: '120 Hz' },
        { voiceDirection: 'subwoofer', centerBassCrossover: '60 Hz' },
      ),
    ],
    [
      'without a subwoofer nothing is sent to one',
      {
        complaints: ['distorts-when-loud'],
        ...FILM,
        subwoofer: 'none',
        centerBassSize: 'large',
        centerLowLimit: '130 Hz',
        centerEnclosure: 'vented',
      },
      offersNot('bass-management', 'set-small', 'turn-subwoofer-down'),
      offers('bass-management', 'bass-to-the-mains'),
    ],
  ],
  'the program': [
    [
      'news clear and films buried is the mix',
      { ...QUIET, speechOrder: 'news-clear-film-buried', troubleTitles: 'some' },
      leads('programme'),
    ],
    [
      'good near the box says nothing against the mix: the voice is loud there',
      { ...QUIET, speechOrder: 'news-clear-film-buried', troubleTitles: 'some' },
      leaves('programme', { testNearCenter: 'good-near' }),
      leaves('programme', { testNearCenter: 'still-bad' }),
    ],
    ['every title alike is no mix', QUIET, lowers('programme', { troubleTitles: 'all' }, 3)],
    [
      'a voice aside on some titles was put there',
      { complaints: ['voice-pulled-aside'], ...FILM, troubleTitles: 'some', channelCheck: 'right' },
      outweighs('programme', 'routing'),
    ],
    [
      'so was one from behind',
      {
        complaints: ['voice-from-behind'],
        ...FILM,
        troubleTitles: 'some',
        channelCheck: 'right',
        upmixAmbience: 'no',
      },
      leads('programme'),
    ],
    [
      'what stays without a center is not the center',
      { ...QUIET, troubleTitles: 'some' },
      raises('programme', { testPhantom: 'same' }, 3),
      lowers('level', { testPhantom: 'same' }, 4),
    ],
  ],
  people: [
    [
      'what goes along with one person is that person',
      {
        complaints: ['voice-unclear-everywhere'],
        ...FILM,
        testSwapSeats: 'goes-with-person',
        whoHears: 'one-person',
      },
      leads('listener'),
    ],
    [
      'a voice pulled aside for one person alone is his ears',
      {
        complaints: ['voice-pulled-aside'],
        ...FILM,
        testSwapSeats: 'goes-with-person',
        whoHears: 'one-person',
      },
      leads('listener'),
    ],
    [
      'one listener alone can be compared with nobody',
      { complaints: ['dull'], ...FILM },
      leaves('listener', { whoHears: 'only-me' }),
    ],
    [
      'who stays with two channels when all is matched likes them',
      { complaints: ['just-prefer-two-channels'], playedContent: 'two-channel-music' },
      raises('preference', { testStillTwo: 'still-two' }, 4),
      lowers('preference', { testStillTwo: 'shared-pleases' }, 4),
    ],
    [
      'who says that something is wrong is not asked to like it',
      { complaints: ['just-prefer-two-channels'], playedContent: 'two-channel-music' },
      lowers('preference', { likesTwoChannel: 'something-wrong' }, 5),
    ],
  ],
};
