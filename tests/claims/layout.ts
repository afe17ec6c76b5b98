/** What mains, seats and the drivers of the center do. */
import {
  leads,
  leaves,
  lowers,
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
};
