/** What mains, seats and the drivers of the center do. */
import {
  leads,
  leaves,
  likely,
  lowers,
  notApplicable,
  offers,
  offersFirst,
  offersNot,
  outweighs,
  raises,
  type Table,
  unlikely,
} from './claim.js';

const SIDE_SEATS_OF_TWO_CHANNELS = {
  complaints: ['voice-pulled-aside'],
  playedContent: 'television',
  sourceFormat: 'two-channel',
  upmixUse: 'off',
  centerMode: 'present',
  seating: 'one-row',
  seatCount: 3,
  seatDistance: '2.8 m',
  mainsBase: '2.8 m',
  troubleSeats: 'off-middle',
} as const;
const SEAT_ASIDE = {
  complaints: ['voice-pulled-aside'],
  mainSeatOffset: '60 cm right',
  seatDistance: '3 m',
  mainsBase: '2.6 m',
  alignmentBy: 'nobody',
} as const;
const FILM = {
  playedContent: 'multichannel-film',
  sourceFormat: 'multichannel',
  centerMode: 'present',
} as const;

const NEAR_SOFA = {
  ...FILM,
  complaints: ['voice-unclear-off-side'],
  seatDistance: '2.4 m',
  seating: 'one-row',
  seatCount: 3,
  seatSpacing: '65 cm',
  troubleSeats: 'off-middle',
} as const;
const TWINS = {
  ...FILM,
  complaints: ['hollow', 'voice-unclear-off-side'],
  centerCount: 'two',
  earHeight: '1.05 m',
  seatDistance: '3 m',
  seating: 'one-row',
  seatCount: 3,
  seatSpacing: '60 cm',
  troubleSeats: 'off-middle',
} as const;

export const LAYOUT_CLAIMS: Table = {
  'left and right against the seat': [
    [
      'a film gives its voice to the center, so a seat off the middle does not make the mains pull it',
      { ...SEAT_ASIDE, ...FILM, voiceDirection: 'aside' },
      unlikely('mains-layout'),
    ],
    [
      'the voice is gone with the center silenced, so the mains never had it',
      SEAT_ASIDE,
      lowers('mains-layout', { testUnplugged: 'voice-gone' }, 5),
      raises('mains-layout', { testUnplugged: 'voice-full' }),
    ],
    [
      'two channels played straight lean to the nearer main at a seat off the middle',
      { ...SEAT_ASIDE, playedContent: 'two-channel-music', upmixUse: 'off' },
      leads('mains-layout'),
    ],
    [
      'unequal mains tilt what they play, and not the voice of a film',
      { playedContent: 'two-channel-music', upmixUse: 'off' },
      raises('mains-layout', { measuredLeftLevel: 78, measuredRightLevel: 72 }, 3),
    ],
    [
      'unequal mains leave the voice of a film where it is',
      { ...FILM, complaints: ['voice-pulled-aside'], measuredLeftLevel: 78, measuredRightLevel: 72 },
      unlikely('mains-layout'),
    ],
    [
      'for side seats of two-channel programs the cure is to give the voice to the center',
      SIDE_SEATS_OF_TWO_CHANNELS,
      leads('mains-layout'),
      offersFirst('mains-layout', 'let-center-hold-voice'),
      offersNot('mains-layout', 'main-seat-to-middle'),
    ],
    [
      'a sound triangle at the main seat clears nothing that only the side seats hear',
      SIDE_SEATS_OF_TWO_CHANNELS,
      lowers('mains-layout', { troubleSeats: 'middle-only' }, 2),
    ],
    [
      'one seat in the middle needs no center to hold the voice',
      { ...SIDE_SEATS_OF_TWO_CHANNELS, seating: 'single-seat', seatCount: 1 },
      offersNot('mains-layout', 'let-center-hold-voice'),
    ],
    [
      'with music played straight a seat off the middle outweighs a center off the middle by a hand',
      { ...SEAT_ASIDE, playedContent: 'two-channel-music', upmixUse: 'off', centerSideOffset: '10 cm right' },
      outweighs('mains-layout', 'off-midline'),
    ],
  ],
  'drivers side by side': [
    [
      'an upright two-way, told to stand upright, cancels nothing along the row',
      { ...NEAR_SOFA, centerLayout: 'vertical-two-way', centerOrientation: 'upright' },
      notApplicable('driver-layout'),
    ],
    [
      'the same drivers on their side do',
      { ...NEAR_SOFA, centerLayout: 'horizontal-two-way' },
      leads('driver-layout'),
      offersFirst('driver-layout', 'sit-inside-its-angle'),
    ],
    [
      'a common pair serves a far row and fails a near sofa',
      { ...NEAR_SOFA, centerLayout: 'mid-tweeter-mid' },
      leads('driver-layout'),
      likely('driver-layout'),
      lowers('driver-layout', { seatDistance: '5 m' }, 4),
    ],
    [
      'straight in front of a pair nothing cancels',
      {
        ...NEAR_SOFA,
        centerLayout: 'mid-tweeter-mid',
        seating: 'single-seat',
        seatCount: 1,
        troubleSeats: 'everywhere',
      },
      unlikely('driver-layout'),
      offersNot('driver-layout', 'sit-inside-its-angle', 'stand-upright'),
    ],
    [
      'what is as bad on its axis is not the layout',
      { ...NEAR_SOFA, centerLayout: 'mid-tweeter-mid' },
      lowers('driver-layout', { testNearCenter: 'still-bad' }, 4),
      raises('driver-layout', { testSitMiddle: 'clear-in-middle' }),
      lowers('driver-layout', { testSitMiddle: 'same-everywhere' }, 4),
    ],
    [
      'standing the box up takes the dip from the row, so it is offered',
      { ...NEAR_SOFA, centerLayout: 'mid-tweeter-mid', centerOrientation: 'level' },
      offers('driver-layout', 'stand-upright'),
      offersNot('driver-layout', 'turn-over'),
    ],
    [
      'a layout does not come overnight',
      { ...NEAR_SOFA, centerLayout: 'mid-tweeter-mid' },
      lowers('driver-layout', { onset: 'sudden' }, 2),
    ],
    [
      'two whole boxes side by side cost more words than treble alone would',
      {
        ...NEAR_SOFA,
        centerLayout: 'paired-boxes',
        centerDriverSpacing: '45 cm',
        centerTweeterSpacing: '45 cm',
      },
      leads('outer-tweeters'),
      likely('outer-tweeters'),
    ],
    [
      'steadier with one tweeter covered names two tweeters, no steadier clears them',
      { ...FILM, complaints: ['swishes-with-head-movement'], centerLayout: 'tweeter-mid-mid-tweeter' },
      leads('outer-tweeters'),
      raises('outer-tweeters', { testCoverTweeter: 'steadier' }, 4),
      lowers('outer-tweeters', { testCoverTweeter: 'same' }, 5),
    ],
  ],
  'two centers': [
    [
      'side by side a meter apart they cancel along the row',
      { ...TWINS, twinArrangement: 'side-by-side', twinSpacing: '1 m' },
      leads('twin-centers'),
      likely('twin-centers'),
      offersFirst('twin-centers', 'use-one'),
      offers('twin-centers', 'close-together'),
    ],
    [
      'how they stand is not guessed',
      { ...TWINS, centerTweeterHeight: '90 cm', displayMiddleHeight: '1.05 m' },
      leads('twin-centers'),
    ],
    [
      'one in the middle hears both alike',
      {
        ...FILM,
        complaints: ['hollow'],
        centerCount: 'two',
        twinArrangement: 'side-by-side',
        twinSpacing: '1 m',
        mainSeatOffset: '0 m',
        centerSideOffset: '0 m',
        seatDistance: '3 m',
        seating: 'single-seat',
      },
      unlikely('twin-centers'),
      offersNot('twin-centers', 'use-one'),
    ],
    [
      'a covered tweeter is no test of two boxes, one of them disconnected is',
      TWINS,
      leaves('twin-centers', { testCoverTweeter: 'same' }),
      lowers('twin-centers', { testOneCenterOff: 'same' }, 6),
      raises('twin-centers', { testOneCenterOff: 'steadier' }, 6),
    ],
    [
      'above each other they change from sitting to standing, side by side they do not',
      {
        ...TWINS,
        twinArrangement: 'above-below',
        centerTweeterHeight: '55 cm',
        displayMiddleHeight: '1.2 m',
      },
      raises('twin-centers', { testPosture: 'changes' }, 3),
      lowers('twin-centers', { testPosture: 'same' }, 4),
    ],
    ['one center cannot fight itself', { ...TWINS, centerCount: 'one' }, notApplicable('twin-centers')],
  ],
};
