/** What the place of the center does: height, aim, shelf, bay, walls, things in the way. */
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
  raises,
  type Table,
  tellsMore,
  unlikely,
} from './claim.js';

const FILM = { playedContent: 'multichannel-film' } as const;
const LOW = {
  ...FILM,
  complaints: ['voice-low-or-high'],
  centerTweeterHeight: '30 cm',
  mainsTweeterHeight: '1 m',
  displayMiddleHeight: '1.2 m',
  seatDistance: '2.6 m',
  seating: 'single-seat',
} as const;
const SHELF = {
  ...FILM,
  complaints: ['voice-changes-tone', 'boomy'],
  centerPlacement: 'shelf-top',
  shelfSetback: '30 cm',
  centerAboveShelf: '10 cm',
  centerTweeterHeight: '60 cm',
  earHeight: '1.05 m',
  seatDistance: '3 m',
} as const;
const BAY = {
  ...FILM,
  complaints: ['boomy'],
  centerPlacement: 'bay',
  bayWidth: '60 cm',
  bayHeight: '22 cm',
  bayDepth: '45 cm',
  centerWidth: '50 cm',
  centerHeight: '18 cm',
  centerDepth: '30 cm',
} as const;
const BUILT_IN = { ...BAY, bayRecess: '0 cm', bayStuffing: 'sealed', equalization: 'none' } as const;
const CORRECTED = {
  equalization: 'automatic',
  equalizationReach: 'all-alike',
  correctionState: 'as-now',
} as const;
const ON_WALL = {
  ...FILM,
  complaints: ['boomy'],
  centerPlacement: 'wall',
  wallDistance: '20 cm',
  centerTweeterHeight: '70 cm',
  mainsTweeterHeight: '95 cm',
} as const;
const OBJECT = {
  ...FILM,
  complaints: ['dull'],
  obstacle: 'object',
  obstacleHeight: '75 cm',
  obstacleDistance: '30 cm',
  centerTweeterHeight: '60 cm',
  earHeight: '1.05 m',
  seatDistance: '3 m',
  seating: 'single-seat',
} as const;
const BACK_ROW = {
  ...FILM,
  complaints: ['dull', 'voice-unclear-everywhere'],
  seating: 'several-rows',
  seatCount: 3,
  rowSpacing: '1.4 m',
  rowRiser: '0 m',
  obstacle: 'seat-row',
  centerTweeterHeight: '45 cm',
  seatDistance: '3 m',
} as const;
const BEAMING = {
  ...FILM,
  complaints: ['dull'],
  centerLayout: 'full-range',
  centerMidSize: '10 cm',
  centerTweeterHeight: '20 cm',
  earHeight: '1.05 m',
  seatDistance: '2 m',
  centerTilt: '0 deg',
  centerPlacement: 'floor',
  seating: 'single-seat',
} as const;

export const PLACE_CLAIMS: Table = {
  height: [
    [
      'a center on the floor heard low is its height',
      { ...LOW, voiceDirection: 'low' },
      likely('height'),
      leads('height'),
    ],
    [
      'for one seat in the middle the first thing to try is no center at all',
      { ...LOW, voiceDirection: 'low' },
      offersFirst('height', 'do-without'),
    ],
    ['several seats need the center', { ...LOW, seating: 'one-row' }, offersNot('height', 'do-without')],
    [
      'no center at all is no help where it was tried and the voice stayed',
      LOW,
      lowers('height', { testPhantom: 'same' }, 6),
      raises('height', { testPhantom: 'gone' }, 2),
    ],
    [
      'after that it is not offered again',
      { ...LOW, testPhantom: 'same' },
      offersNot('height', 'do-without'),
    ],
    [
      'a film has nothing to share with the mains, so the spread of the upmix lifts no voice',
      { ...LOW, upmixCenterControl: 'present' },
      offersNot('height', 'share-with-mains'),
    ],
    [
      'with music the mains can carry part of the voice up',
      { ...LOW, playedContent: 'two-channel-music', upmixCenterControl: 'present' },
      offers('height', 'share-with-mains'),
    ],
    [
      'a receiver that can lift the voice is asked to before anything is carried',
      { ...LOW, seating: 'one-row', voiceLift: 'off' },
      offersFirst('height', 'lift-by-receiver'),
    ],
    [
      'no lift is offered where there is none',
      { ...LOW, voiceLift: 'none' },
      offersNot('height', 'lift-by-receiver'),
    ],
    [
      'a wedge moves no voice, so height offers none',
      LOW,
      offersNot('height', 'tilt-meanwhile', 'tilt-on-wall'),
    ],
    [
      'a voice heard at the picture outweighs what the tape says',
      LOW,
      lowers('height', { voiceDirection: 'picture' }, 3),
      raises('height', { voiceDirection: 'low' }, 1),
    ],
    [
      'raised for a moment and no better, height is hardly it',
      LOW,
      lowers('height', { testLift: 'same' }, 4),
      raises('height', { testLift: 'improves' }, 4),
    ],
    [
      'near the height of mains and picture nothing is wrong with it',
      { ...LOW, complaints: [], centerTweeterHeight: '95 cm', voiceDirection: 'picture' },
      unlikely('height'),
      offersNot('height', 'raise-or-lower'),
    ],
  ],
  aim: [
    [
      'a single small driver far off its axis, clearer when tilted, is its aim',
      { ...BEAMING, testTilt: 'clearer' },
      leads('aim'),
      likely('aim'),
      outweighs('aim', 'height', 'timbre'),
    ],
    [
      'what changes when one stands up or slides low is the aim',
      BEAMING,
      raises('aim', { testPosture: 'better-lower' }, 4),
      lowers('aim', { testPosture: 'same' }, 5),
    ],
    [
      'a wrong tilt is shared by the row, so a trouble of the side seats speaks against it',
      { ...BEAMING, seating: 'one-row' },
      lowers('aim', { troubleSeats: 'off-middle' }, 2),
      lowers('aim', { testSitMiddle: 'clear-in-middle' }, 3),
    ],
    [
      'with the head at its height the fault of aim is gone',
      BEAMING,
      lowers('aim', { testNearCenter: 'still-bad' }, 4),
      raises('aim', { testNearCenter: 'good-near' }),
    ],
    [
      'a tweeter inside a cone at ear height has no aim to mend',
      { ...BEAMING, centerLayout: 'coaxial', centerTweeterHeight: '1.05 m', centerMidSize: '13 cm' },
      unlikely('aim'),
      offersNot('aim', 'wedge', 'turn-upside-down'),
    ],
    [
      'tilting tells more than dull noise does',
      BEAMING,
      tellsMore('aim', { testTilt: 'clearer' }, { testNoiseEach: 'duller' }),
    ],
  ],
  'shelf in front': [
    ['thirty centimeters of bare shelf are heard', SHELF, leads('set-back'), outweighs('set-back', 'timbre')],
    [
      'a correction run in this state has taken the rise off',
      { ...SHELF, equalization: 'none' },
      lowers('set-back', CORRECTED, 2),
    ],
    [
      'one that was run before the box was pushed back has not',
      { ...SHELF, equalization: 'none' },
      leaves('set-back', { ...CORRECTED, correctionState: 'changed' }),
    ],
    [
      'blocks under such a box make the wave no smaller',
      SHELF,
      offersNot('set-back', 'raise-and-tilt'),
      offersFirst('set-back', 'pull-forward'),
    ],
    [
      'pulled to the edge and clearer names the strip, the same there clears it',
      SHELF,
      raises('set-back', { testPullForward: 'clearer' }, 5),
      lowers('set-back', { testPullForward: 'same' }, 4),
    ],
    [
      'at the edge there is nothing to pull',
      { ...SHELF, shelfSetback: '0 cm' },
      unlikely('set-back'),
      offersNot('set-back', 'pull-forward'),
    ],
    [
      'pulling forward tells more than a blanket does',
      SHELF,
      tellsMore('set-back', { testPullForward: 'clearer' }, { testCoverShelf: 'clearer' }),
    ],
    ['a shelf colors a row alike', SHELF, lowers('set-back', { troubleSeats: 'off-middle' }, 2)],
  ],
  'bay of furniture': [
    [
      'flush and closed without a correction the furniture front lifts the low voice',
      { ...BUILT_IN, testNoiseEach: 'boxy', toneAcrossPan: 'boxier' },
      leads('cabinet-bay'),
      outweighs('cabinet-bay', 'bass-management'),
    ],
    ['a correction run in this state takes that back', BUILT_IN, lowers('cabinet-bay', CORRECTED, 4)],
    [
      'a switch for furniture takes most of it',
      BUILT_IN,
      lowers('cabinet-bay', { boundarySwitch: 'wall' }, 3),
    ],
    [
      'the switch comes first where it is set for free standing, else a cut of the low voice',
      BUILT_IN,
      offersFirst('cabinet-bay', 'boundary-switch'),
      offers('cabinet-bay', 'cut-the-low-voice'),
      offersNot('cabinet-bay', 'try-filling', 'pull-forward'),
    ],
    [
      'a box without such a switch is not asked to set it',
      { ...BUILT_IN, boundarySwitch: 'none' },
      offersFirst('cabinet-bay', 'cut-the-low-voice'),
    ],
    [
      'open gaps before a deep cavity sing, a correction tames the note and not the fault',
      { ...BAY, bayRecess: '15 cm', bayStuffing: 'open', equalization: 'none' },
      leads('cabinet-bay'),
      lowers('cabinet-bay', CORRECTED, 4),
      offers('cabinet-bay', 'try-filling'),
    ],
    [
      'beside a main at its height it sounds like it: the bay makes it',
      { ...BAY, bayRecess: '5 cm' },
      raises('cabinet-bay', { testBesideMain: 'alike' }, 3),
      lowers('cabinet-bay', { testBesideMain: 'differs' }, 4),
      lowers('timbre', { testBesideMain: 'alike' }, 4),
      raises('timbre', { testBesideMain: 'differs' }, 3),
    ],
    ['a bay colors every seat alike', BAY, lowers('cabinet-bay', { troubleSeats: 'off-middle' }, 2)],
    [
      'boxy noise points to the bay',
      BAY,
      raises('cabinet-bay', { testNoiseEach: 'boxy' }, 5),
      lowers('cabinet-bay', { testNoiseEach: 'alike' }, 3),
    ],
    [
      'where only the gaps sing, no change at the edge proves nothing',
      { ...BAY, bayRecess: '8 cm' },
      leaves('cabinet-bay', { testPullForward: 'same' }),
    ],
    [
      'a peak measured where the bay has its note names the bay',
      { ...BAY, bayRecess: '0 cm', bayStuffing: 'open' },
      raises('cabinet-bay', { measuredPeakHz: 110 }, 5),
      lowers('cabinet-bay', { measuredPeakHz: 450 }, 2),
    ],
  ],
  'walls, floor and ceiling': [
    [
      'a box made to stand free, hung flat on the wall, booms by the wall',
      {
        ...ON_WALL,
        equalization: 'none',
        testNoiseEach: 'boxy',
        toneAcrossPan: 'boxier',
        testMainInPlace: 'wrong',
      },
      leads('near-surface'),
      outweighs('near-surface', 'bass-management'),
    ],
    [
      'a correction run there takes the rise back',
      { ...ON_WALL, equalization: 'none' },
      lowers('near-surface', CORRECTED, 2),
    ],
    [
      'for a boomy voice nobody pushes the center to the wall',
      { ...ON_WALL, wallDistance: '50 cm', testNoiseEach: 'boxy' },
      offersNot('near-surface', 'shift-from-wall', 'pull-from-wall'),
    ],
    [
      'close to a wall it is pulled away',
      ON_WALL,
      offers('near-surface', 'pull-from-wall', 'cut-the-low-voice'),
    ],
    [
      'half a meter away the wall lifts nothing to be cut',
      { ...ON_WALL, wallDistance: '50 cm' },
      offersNot('near-surface', 'cut-the-low-voice', 'boundary-switch'),
    ],
    [
      'in a corner the low voice rises twice',
      { ...ON_WALL, wallDistance: '30 cm' },
      raises('near-surface', { sideWallDistance: '30 cm' }, 3),
    ],
    [
      'high up the ceiling is the nearest surface',
      {
        ...FILM,
        complaints: ['hollow'],
        centerTweeterHeight: '2.1 m',
        mainsTweeterHeight: '95 cm',
        seatDistance: '3 m',
      },
      raises('near-surface', { ceilingHeight: '2.4 m' }),
    ],
    [
      'a hole lower than that of the mains is no fault of the center',
      { ...FILM, mainsTweeterHeight: '95 cm', seatDistance: '3 m' },
      lowers('near-surface', { centerTweeterHeight: '1.6 m' }, 2),
      raises('near-surface', { centerTweeterHeight: '40 cm' }, 2),
    ],
    [
      'a hole measured where the floor puts one is the floor, one two octaves away is not',
      {
        ...FILM,
        complaints: ['hollow'],
        centerTweeterHeight: '55 cm',
        earHeight: '1.05 m',
        seatDistance: '3 m',
        measuredHoleDb: 9,
      },
      raises('near-surface', { measuredHoleHz: 480 }, 6),
      lowers('near-surface', { measuredHoleHz: 2000 }, 3),
    ],
    [
      'a hole that moves with the box is a surface, one that nothing moves is none',
      FILM,
      raises('near-surface', { holeFollows: 'box' }, 3),
      lowers('near-surface', { holeFollows: 'nothing' }),
      raises('driver-layout', { centerLayout: 'mid-tweeter-mid', holeFollows: 'seat' }, 3),
    ],
  ],
  'things in the way': [
    ['how wide an object is has to be asked', OBJECT, atMost('blocked-path', 0.6)],
    ['sound goes around a vase', { ...OBJECT, obstacleWidth: '6 cm' }, unlikely('blocked-path')],
    [
      'a wide box before the tweeter shades it',
      { ...OBJECT, obstacleWidth: '1 m', obstacleMake: 'solid', obstacleHeight: '90 cm' },
      leads('blocked-path'),
      likely('blocked-path'),
    ],
    [
      'a door of open cloth takes next to nothing',
      { ...OBJECT, obstacleMake: 'cloth', obstacleDistance: '3 cm' },
      unlikely('blocked-path'),
    ],
    [
      'the edge of a display over the tweeter shades what sits higher',
      { ...OBJECT, obstacleWidth: '1.4 m', obstacleHeight: '58 cm', obstacleDistance: '10 cm' },
      raises('blocked-path', { obstacleFrom: 'above', obstacleMake: 'solid' }, 3),
    ],
    [
      'worse in the back row is the chief sign of a row in front',
      BACK_ROW,
      leads('blocked-path'),
      raises('blocked-path', { troubleSeats: 'back-row' }, 3),
      leaves('blocked-path', { troubleSeats: 'everywhere' }),
    ],
    [
      'blocked seats get the center raised where that helps',
      BACK_ROW,
      offers('blocked-path', 'raise-back-row'),
    ],
    [
      'good one meter in front of it, with nothing between, is a shadow',
      BACK_ROW,
      raises('blocked-path', { testNearCenter: 'good-near' }, 2),
      lowers('blocked-path', { testNearCenter: 'still-bad' }, 2),
    ],
  ],
  'off the middle': [
    [
      'a center right under a picture that hangs off the middle is in its place',
      { ...FILM, complaints: ['voice-pulled-aside'], centerSideOffset: '50 cm right', seatDistance: '3 m' },
      lowers('off-midline', { pictureSideOffset: '50 cm right' }, 5),
    ],
    [
      'half a meter aside is heard there',
      { ...FILM, complaints: ['voice-pulled-aside'], centerSideOffset: '50 cm right', seatDistance: '3 m' },
      leads('off-midline'),
      offersFirst('off-midline', 'move-to-middle'),
    ],
    [
      'a wall on one side only leans the front wherever the center stands',
      FILM,
      lowers('off-midline', { sideWalls: 'one-side' }),
    ],
    [
      'in the middle there is nothing to move',
      { ...FILM, centerSideOffset: '0 m' },
      offersNot('off-midline', 'move-to-middle'),
      unlikely('off-midline'),
    ],
  ],
  'what is tried in vain': [
    [
      'a wedge does nothing for a box that points at the ears already',
      { ...BEAMING, centerTweeterHeight: '1.05 m', centerTilt: '0 deg' },
      offersNot('aim', 'wedge', 'raise-to-ears'),
    ],
    [
      'a rug takes little of the hole of a floor, and raising the box takes the hole away',
      {
        ...FILM,
        centerTweeterHeight: '40 cm',
        mainsTweeterHeight: '1 m',
        seatDistance: '3 m',
        floorCover: 'bare',
      },
      offers('near-surface', 'raise-center'),
      tellsMore('near-surface', { testLift: 'tone-only' }, { floorCover: 'carpet' }),
    ],
    [
      'a center as high as the mains is raised no further for its floor',
      { ...FILM, centerTweeterHeight: '1 m', mainsTweeterHeight: '1 m', seatDistance: '3 m' },
      offersNot('near-surface', 'raise-center'),
    ],
  ],
};
