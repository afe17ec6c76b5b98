import { screenLoss } from '../../src/rules/causes/screen-loss.js';
import { testCause } from '../support/testCause.js';

/** Cinema vinyl: 1.016 mm holes, 5500 a square foot, 0.3 mm thick. */
const vinyl = {
  screenKind: 'perforated',
  screenHoleDiameter: 0.001016,
  screenHolesPerArea: 59_200,
  screenThickness: 0.0003,
  screenCompensation: 0,
} as const;
const heardDuller = {
  testNoiseEach: 'duller',
  toneAcrossPan: 'duller',
  testMainInPlace: 'wrong',
} as const;

testCause(screenLoss, {
  firstPosts: [
    { complaints: ['dull'], facts: { screenKind: 'perforated', screenCovers: 'center-only' } },
    { complaints: ['dull'], facts: { centerPlacement: 'behind-screen', lastChange: 'screen' } },
  ],
  fires: [
    {
      name: 'behind one sheet a sound that changes on its way is not the work of the sheet',
      facts: { screenKind: 'perforated', screenCovers: 'all-three', toneAcrossPan: 'duller' },
      rules: ['unlike-behind-one-sheet'],
    },
    {
      name: 'one meter away, the sheet still between, it is as dull',
      facts: { screenKind: 'perforated', testNearCenter: 'still-bad' },
      rules: ['as-dull-near-by'],
    },
    {
      name: 'a sheet dulls every seat alike, so trouble at the end seats speaks against it',
      facts: { screenKind: 'perforated', troubleSeats: 'off-middle' },
      rules: ['only-off-the-middle'],
    },
    {
      name: 'what stays with the box when the channels are swapped is the box or its place',
      facts: { screenKind: 'perforated', screenCovers: 'center-only', testSwapAtAmplifier: 'stays' },
      rules: ['stays-in-its-place'],
    },
    {
      name: 'cinema vinyl in front of the center alone takes treble and makes it duller than the mains',
      facts: { ...vinyl, screenCovers: 'center-only', ...heardDuller, lastChange: 'screen' },
      rules: [
        'treble-lost',
        'center-against-mains',
        'noise-duller',
        'pan-duller',
        'main-is-dull-there-too',
        'began-with-screen',
      ],
    },
    {
      name: 'in front of all three it is no mismatch, and still dulls everything',
      facts: { ...vinyl, screenCovers: 'all-three' },
      rules: ['treble-lost'],
    },
    {
      name: 'measured treble 6 dB below mains beside the screen',
      facts: {
        ...vinyl,
        screenCovers: 'center-only',
        responseLeft: 'even.txt',
        responseRight: 'even.txt',
        responseCenter: 'dull.txt',
      },
      rules: ['treble-measured'],
    },
    {
      name: 'a solid screen in front is a screen in the way',
      facts: { ...heardDuller, screenKind: 'solid', screenCovers: 'center-only' },
      rules: ['noise-duller'],
    },
  ],
  silent: [
    {
      name: 'behind one sheet center and mains sound alike',
      facts: { screenKind: 'perforated', screenCovers: 'all-three', toneAcrossPan: 'no-change' },
      rules: ['unlike-behind-one-sheet'],
    },
    {
      name: 'good through the sheet one meter away, the sheet is innocent',
      facts: { screenKind: 'perforated', testNearCenter: 'good-near', troubleSeats: 'everywhere' },
      rules: ['as-dull-near-by', 'only-off-the-middle'],
    },
    {
      name: 'what the sheet takes, a correction measured through it gives back',
      facts: {
        screenKind: 'perforated',
        screenHoleDiameter: 0.001,
        screenHolesPerArea: 59_200,
        screenThickness: 0.0003,
        equalization: 'automatic',
        equalizationReach: 'all-alike',
        correctionState: 'as-now',
      },
      rules: ['treble-lost'],
    },
    {
      name: 'what moves to the left loudspeaker with the channel is neither the box nor its place',
      facts: { screenKind: 'perforated', screenCovers: 'center-only', testSwapAtAmplifier: 'moves-left' },
      rules: ['stays-in-its-place'],
    },
    {
      name: 'what is gone from both after touching the wires is no place',
      facts: { screenKind: 'perforated', screenCovers: 'center-only', testSwapAtAmplifier: 'gone' },
      rules: ['stays-in-its-place'],
    },
    {
      name: 'a screen in front of all three is no mismatch',
      facts: { ...vinyl, screenCovers: 'all-three', ...heardDuller },
      rules: ['center-against-mains', 'noise-duller', 'pan-duller', 'main-is-dull-there-too'],
    },
    {
      name: 'a fine weave is innocent',
      facts: {
        screenKind: 'woven',
        screenFlowResistance: 40,
        screenCompensation: 0,
        screenCovers: 'center-only',
      },
      rules: ['treble-lost', 'center-against-mains'],
    },
    {
      name: 'treble that is given back is not missing',
      facts: { ...vinyl, screenCompensation: 5 },
      rules: ['treble-lost'],
    },
    {
      name: 'an even response, even noise and a main that sounds right there acquit the screen',
      facts: {
        ...vinyl,
        screenCovers: 'center-only',
        responseLeft: 'even.txt',
        responseRight: 'even.txt',
        responseCenter: 'nearly-even.txt',
        testNoiseEach: 'alike',
        toneAcrossPan: 'no-change',
        testMainInPlace: 'right',
        lastChange: 'source',
      },
      rules: ['treble-measured', 'noise-duller', 'pan-duller', 'main-is-dull-there-too', 'began-with-screen'],
    },
    {
      name: 'without a screen nothing is lost in one',
      facts: { screenKind: 'none', testNoiseEach: 'duller' },
      rules: ['treble-lost', 'noise-duller'],
    },
    {
      name: 'with all three behind the screen a duller center is not the screen',
      facts: {
        ...vinyl,
        screenCovers: 'all-three',
        responseLeft: 'even.txt',
        responseRight: 'even.txt',
        responseCenter: 'dull.txt',
      },
      rules: ['treble-measured'],
    },
  ],
  cannotTell: [
    {
      name: 'whether a sound changes on its way behind one sheet',
      facts: { screenKind: 'perforated', screenCovers: 'all-three' },
      rule: 'unlike-behind-one-sheet',
      asks: ['toneAcrossPan'],
    },
    {
      name: 'nobody close up',
      facts: { screenKind: 'perforated' },
      rule: 'as-dull-near-by',
      asks: ['testNearCenter'],
    },
    {
      name: 'seats not told',
      facts: { screenKind: 'perforated' },
      rule: 'only-off-the-middle',
      asks: ['troubleSeats'],
    },
    {
      name: 'left and center not swapped',
      facts: { screenKind: 'perforated', screenCovers: 'center-only' },
      rule: 'stays-in-its-place',
      asks: ['testSwapAtAmplifier'],
    },
    {
      name: 'a center behind a screen has one in front, of a kind that is open',
      facts: { centerPlacement: 'behind-screen' },
      rule: 'treble-lost',
      asks: ['screenKind'],
    },
    { name: 'no screen told', facts: {}, rule: 'treble-lost', asks: ['screenKind'] },
    {
      name: 'whether it is a mismatch hangs on what the screen covers',
      facts: vinyl,
      rule: 'center-against-mains',
      asks: ['screenCovers'],
    },
    {
      name: 'nothing measured yet',
      facts: { ...vinyl, screenCovers: 'center-only', responseLeft: 'even.txt', responseRight: 'even.txt' },
      rule: 'treble-measured',
      asks: ['responseCenter'],
    },
    {
      name: 'no noise yet',
      facts: { ...vinyl, screenCovers: 'center-only' },
      rule: 'noise-duller',
      asks: ['testNoiseEach'],
    },
    {
      name: 'dull noise says nothing while it is open what the screen covers',
      facts: { ...vinyl, testNoiseEach: 'duller' },
      rule: 'noise-duller',
      asks: ['screenCovers'],
    },
    {
      name: 'no pan heard',
      facts: { ...vinyl, screenCovers: 'center-only' },
      rule: 'pan-duller',
      asks: ['toneAcrossPan'],
    },
    {
      name: 'no main tried there',
      facts: { ...vinyl, screenCovers: 'center-only' },
      rule: 'main-is-dull-there-too',
      asks: ['testMainInPlace'],
    },
    { name: 'last change unknown', facts: vinyl, rule: 'began-with-screen', asks: ['lastChange'] },
  ],
  boundary: [
    {
      name: '3 dB of treble not given back',
      rule: 'treble-lost',
      facts: vinyl,
      derived: { screenLossDb: 3 },
      at: 'yes',
      below: 'no',
    },
    {
      name: '3 dB between center and mains',
      rule: 'center-against-mains',
      facts: vinyl,
      derived: { screenMismatchDb: 3 },
      at: 'yes',
      below: 'no',
    },
    {
      name: '3 dB measured',
      rule: 'treble-measured',
      facts: { ...vinyl, screenCovers: 'center-only' },
      derived: { trebleDeficitDb: 3 },
      at: 'yes',
      below: 'no',
    },
  ],
});
