/** Other rooms, content and untold settings beside the claims of the other tables: what must lead there, and what must not. */
import {
  leads,
  leaves,
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

const FILM = { playedContent: 'multichannel-film', sourceFormat: 'multichannel' } as const;
const STRAIGHT = { playedContent: 'two-channel-music', upmixUse: 'off' } as const;
const WIDE = { mainsBase: '4.2 m', seatDistance: '2.4 m', seating: 'single-seat' } as const;
const LOUD = {
  ...FILM,
  complaints: ['distorts-when-loud'],
  troubleWhenLoud: 'yes',
  seatDistance: '4.5 m',
  centerSensitivity: '84 dB',
} as const;
const CORNER = {
  ...FILM,
  complaints: ['boomy'],
  centerPlacement: 'stand',
  wallDistance: '25 cm',
  sideWallDistance: '30 cm',
  equalization: 'none',
} as const;
const NOISY = {
  ...FILM,
  complaints: ['voice-unclear'],
  backgroundNoise: 'loud',
  clapRing: 'dry',
  troubleSeats: 'everywhere',
} as const;

export const NEIGHBOR_CLAIMS: Table = {
  'the front, by content': [
    [
      'mains far apart tear music that plays straight, and leave the voice of a film alone',
      { ...WIDE, ...STRAIGHT, complaints: ['no-middle'] },
      leads('mains-layout'),
    ],
    [
      'the same mains, a film: dull is something else',
      { ...WIDE, ...FILM, complaints: ['dull'], testUnplugged: 'voice-gone' },
      unlikely('mains-layout'),
    ],
    [
      'without a center 72 degrees are too wide for two, though the seat is in the middle',
      { complaints: ['no-middle'], centerCount: 'none', mainsBase: '4 m', seatDistance: '2.75 m' },
      leads('mains-layout'),
    ],
    [
      'one main crossed spoils music that plays straight',
      { ...STRAIGHT, complaints: ['no-middle'], testPolarityMains: 'fuller-swapped' },
      leads('polarity'),
      offers('polarity', 'uncross'),
    ],
  ],
  'the box, by its build': [
    [
      'a tweeter inside the cone holds the end of the sofa',
      { ...FILM, complaints: ['voice-unclear-off-side'], centerLayout: 'coaxial', seating: 'one-row' },
      unlikely('driver-layout'),
    ],
    [
      'flat on a low board, tweeter above the cone, the axis passes below the ears',
      {
        ...FILM,
        complaints: ['dull'],
        centerLayout: 'vertical-two-way',
        centerTweeterHeight: '30 cm',
        seatDistance: '2.2 m',
        centerTilt: '0 deg',
      },
      leads('aim'),
      offersFirst('aim', 'wedge'),
    ],
    [
      'the same board, cones and tweeter in one line: it loses nothing there',
      {
        ...FILM,
        complaints: ['dull'],
        centerLayout: 'mid-tweeter-mid',
        centerTweeterHeight: '30 cm',
        seatDistance: '2.2 m',
        centerTilt: '0 deg',
      },
      unlikely('aim'),
    ],
  ],
  'the place, by what is told of it': [
    [
      'a corner lifts the low voice, a correction run there takes it back',
      CORNER,
      leads('near-surface'),
      lowers(
        'near-surface',
        { equalization: 'automatic', equalizationReach: 'all-alike', correctionState: 'as-now' },
        3,
      ),
    ],
    [
      'on a dresser of untold height, pushed far back, the bare wood before it is the first suspect',
      {
        complaints: ['boxy'],
        centerPlacement: 'shelf-top',
        shelfSetback: '38 cm',
        centerAboveShelf: '9 cm',
        lastChange: 'loudspeaker',
      },
      leads('set-back'),
      offersFirst('set-back', 'pull-forward'),
    ],
    [
      'at the edge of the same dresser it is innocent',
      { complaints: ['boxy'], centerPlacement: 'shelf-top', centerAboveShelf: '9 cm' },
      lowers('set-back', { shelfSetback: '1 cm' }, 3),
    ],
    [
      'one screen before all three makes no difference between them',
      {
        ...FILM,
        complaints: ['voice-changes-tone'],
        screenKind: 'perforated',
        screenCovers: 'all-three',
        toneAcrossPan: 'duller',
      },
      unlikely('screen-loss'),
      outweighs('timbre', 'screen-loss'),
    ],
    [
      'heads in front, no backs, cost the back row next to nothing',
      {
        ...FILM,
        complaints: ['voice-unclear-back-row'],
        seating: 'several-rows',
        rowSpacing: '1.5 m',
        rowRiser: '20 cm',
        centerTweeterHeight: '1 m',
        obstacle: 'none',
      },
      unlikely('blocked-path'),
    ],
  ],
  'the room and its noise': [
    [
      'a dry room clears the ring, not the pump behind the wall',
      NOISY,
      leads('room-acoustics'),
      raises('room-acoustics', { whichVoices: 'soft' }, 2),
      offersFirst('room-acoustics', 'quiet-the-noise'),
    ],
    ['a dry and quiet room is innocent', { ...NOISY, backgroundNoise: 'quiet' }, unlikely('room-acoustics')],
    [
      'the same ring hurts far away, hardly near by',
      { ...FILM, complaints: ['voice-unclear-everywhere'], reverberationTime: '800 ms' },
      lowers('room-acoustics', { seatDistance: '0.8 m' }, 2),
      tellsMore('room-acoustics', { seatDistance: '0.8 m' }, { seatDistance: '5 m' }),
    ],
  ],
  'power at the seat': [
    [
      'a weak amplifier, an insensitive box and a far seat: the amplifier ends before the film does',
      LOUD,
      raises('overload', { amplifierPower: '30 W', loudestAtSeat: '90 dB' }, 4),
      tellsMore(
        'overload',
        { amplifierPower: '30 W', loudestAtSeat: '82 dB' },
        { amplifierPower: '150 W', loudestAtSeat: '82 dB' },
      ),
    ],
    [
      'power enough clears the amplifier, hardly the box',
      LOUD,
      lowers('overload', { amplifierPower: '300 W', loudestAtSeat: '78 dB' }, 0.5),
      leads('overload'),
    ],
  ],
  'signal and settings, by what is untold': [
    [
      'a wireless center whose automatic entry is longer than the tape is right',
      {
        playedContent: 'two-channel-music',
        upmixUse: 'on',
        complaints: ['hollow'],
        alignmentBy: 'automatic',
        centerPowered: 'yes',
        centerLatency: '20 ms',
        tapedCenter: '3 m',
        tapedMains: '3.2 m',
        enteredCenter: '9.86 m',
        enteredLeft: '3.2 m',
        enteredRight: '3.2 m',
      },
      unlikely('delay'),
      offersNot('delay', 'enter-taped-distances'),
    ],
    [
      'crossed at 40 Hz, a box that ends at 85 Hz leaves a hole with a port and without',
      {
        ...FILM,
        complaints: ['thin', 'weak-bass'],
        subwoofer: 'one',
        centerBassSize: 'small',
        centerBassCrossover: '40 Hz',
        centerLowLimit: '85 Hz',
        centerLowLimitDrop: '6 dB',
      },
      leads('bass-management'),
      offers('bass-management', 'raise-crossover'),
    ],
    [
      'crossed well above its limit the port stays to be asked',
      {
        ...FILM,
        complaints: ['thin'],
        subwoofer: 'one',
        centerBassSize: 'small',
        centerLowLimit: '60 Hz',
      },
      leaves('bass-management', { centerBassCrossover: '100 Hz' }),
    ],
    [
      'small cones set to large beside a subwoofer need no look at the mains',
      { ...FILM, complaints: ['boomy'], subwoofer: 'one', centerBassSize: 'large' },
      raises('bass-management', { centerMidSize: '5 in' }, 1),
      raises('overload', { centerMidSize: '5 in' }, 4),
    ],
    [
      'five decibels too loud collapse the stage, and taste does not raise it further',
      { ...FILM, complaints: ['image-collapses-to-center'], centerAgainstMainsDb: '5 dB' },
      leads('level'),
      offersNot('level', 'taste-trim'),
    ],
    [
      'a mode that plays all loudspeakers speaks from behind',
      { complaints: ['voice-from-behind'], allChannelMode: 'yes' },
      leads('surround-spill'),
    ],
    [
      'news clear, films buried, the same film fine from a disc: the mix, nobody’s ears',
      {
        ...FILM,
        complaints: ['whispers-lost-effects-loud'],
        speechOrder: 'news-clear-film-buried',
        testOtherSource: 'gone',
      },
      leads('programme'),
      outweighs('programme', 'listener'),
    ],
    [
      'missing with the center and without it: lost before the receiver',
      { ...FILM, complaints: ['voice-missing'], testPhantom: 'same' },
      leads('routing'),
      offers('routing', 'walk-the-path'),
    ],
  ],
};
