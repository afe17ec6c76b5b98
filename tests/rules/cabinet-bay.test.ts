import { cabinetBay } from '../../src/rules/causes/cabinet-bay.js';
import { testCause } from '../support/testCause.js';

const bay = {
  centerPlacement: 'bay',
  bayWidth: 0.6,
  bayHeight: 0.22,
  bayDepth: 0.45,
  centerWidth: 0.5,
  centerHeight: 0.18,
  centerDepth: 0.3,
} as const;

/** The tunnel in front makes the note, not the gaps. */
const deep = { ...bay, bayRecess: 0.2, bayDepth: 0.55, bayStuffing: 'filled' } as const;

testCause(cabinetBay, {
  firstPosts: [
    { complaints: ['boomy'], facts: { centerPlacement: 'bay' } },
    {
      complaints: ['boomy'],
      facts: { testPullForward: 'clearer', bayWidth: '60 cm', bayHeight: '25 cm', bayDepth: '45 cm' },
    },
  ],
  fires: [
    {
      name: 'a peak measured where the gaps sing is the bay',
      facts: { ...bay, bayRecess: 0, measuredPeakHz: 112 },
      rules: ['measured-peak'],
    },
    {
      name: 'flush with the furniture front and uncorrected, the low voice rises though no cavity sings',
      facts: { ...bay, bayRecess: 0, bayStuffing: 'sealed', equalization: 'none' },
      rules: ['front-rise'],
    },
    {
      name: 'beside a main, at its height, the center sounds like it: its place makes the difference',
      facts: { centerPlacement: 'bay', testBesideMain: 'alike' },
      rules: ['alike-beside-a-main'],
    },
    {
      name: 'pulled out of a deep recess it did become clearer',
      facts: { ...deep, testPullForward: 'clearer' },
      rules: ['clearer-pulled-forward', 'no-clearer-at-the-edge'],
    },
    {
      name: 'clearer at the edge of a bay that nobody has measured',
      facts: { centerPlacement: 'bay', testPullForward: 'clearer' },
      rules: ['clearer-pulled-forward', 'no-clearer-in-an-untold-bay'],
    },
    {
      name: 'what stays with the box when the channels are swapped is the box or its place',
      facts: { centerPlacement: 'bay', testSwapAtAmplifier: 'stays' },
      rules: ['stays-in-its-place'],
    },
    {
      name: 'open gaps in front of a hollow resonate like a bottle',
      facts: { ...bay, bayRecess: 0, bayStuffing: 'open' },
      rules: ['cavity-note'],
    },
    {
      name: 'twenty centimeters of recess speak through a tunnel, filled gaps or not',
      facts: { ...bay, bayRecess: 0.2, bayDepth: 0.55, bayStuffing: 'filled' },
      rules: ['cavity-note'],
    },
    {
      name: 'boxy noise and pans, clearer at the edge, a main sounds wrong there too',
      facts: {
        centerPlacement: 'bay',
        testNoiseEach: 'boxy',
        toneAcrossPan: 'boxier',
        testPullForward: 'clearer',
        testMainInPlace: 'wrong',
      },
      rules: ['boxy-noise', 'boxy-pan', 'clearer-pulled-forward', 'main-wrong-there-too'],
    },
    {
      name: 'a bay colors every seat alike, so trouble at the end seats speaks against it',
      facts: { centerPlacement: 'bay', troubleSeats: 'off-middle' },
      rules: ['only-off-the-middle'],
    },
  ],
  silent: [
    {
      name: 'a peak two octaves above is not',
      facts: { ...bay, bayRecess: 0, measuredPeakHz: 450 },
      rules: ['measured-peak'],
    },
    {
      name: 'flush and closed, with the rise taken back by an automatic correction, a bay is the best place',
      facts: {
        ...bay,
        bayRecess: 0,
        bayStuffing: 'sealed',
        equalization: 'automatic',
        equalizationReach: 'all-alike',
        correctionState: 'as-now',
      },
      rules: ['cavity-note', 'front-rise'],
    },
    {
      name: 'flush and closed a quiet cavity does not clear the front that lifts the voice',
      facts: { ...bay, bayRecess: 0, bayStuffing: 'sealed', equalization: 'none' },
      rules: ['cavity-note'],
    },
    {
      name: 'a switch for furniture takes most of the rise',
      facts: { ...bay, bayRecess: 0, bayStuffing: 'sealed', boundarySwitch: 'wall' },
      rules: ['front-rise'],
    },
    {
      name: 'far behind the furniture front there is a tunnel and no baffle',
      facts: deep,
      rules: ['front-rise'],
    },
    {
      name: 'what differs beside a main too is no bay',
      facts: { centerPlacement: 'bay', testBesideMain: 'differs' },
      rules: ['alike-beside-a-main'],
    },
    {
      name: 'pulled out of a deep recess it should become clearer, so no change speaks against the bay',
      facts: { ...deep, testPullForward: 'same' },
      rules: ['no-clearer-at-the-edge'],
    },
    {
      name: 'of a bay that nobody has measured no change at the edge takes out the half with a tunnel',
      facts: { ...bay, testPullForward: 'same' },
      rules: ['no-clearer-in-an-untold-bay'],
    },
    {
      name: 'where the gaps alone sing, no change at the edge says nothing',
      facts: { ...bay, bayRecess: 0.08, testPullForward: 'same' },
      rules: ['no-clearer-at-the-edge'],
    },
    {
      name: 'what moves to the left loudspeaker with the channel is neither the box nor its place',
      facts: { centerPlacement: 'bay', testSwapAtAmplifier: 'moves-left' },
      rules: ['stays-in-its-place'],
    },
    {
      name: 'what is gone from both after touching the wires is no place',
      facts: { centerPlacement: 'bay', testSwapAtAmplifier: 'gone' },
      rules: ['stays-in-its-place'],
    },
    {
      name: 'loose filling in the gaps cures the resonance',
      facts: { ...bay, bayRecess: 0, bayStuffing: 'filled', boundarySwitch: 'wall' },
      rules: ['cavity-note'],
    },
    {
      name: 'a tight bay barely sings',
      facts: {
        ...bay,
        bayWidth: 0.52,
        bayHeight: 0.19,
        bayRecess: 0,
        bayStuffing: 'open',
        boundarySwitch: 'wall',
      },
      rules: ['cavity-note'],
    },
    {
      name: 'on a stand there is no bay, whatever the tests say',
      facts: { centerPlacement: 'stand', testNoiseEach: 'boxy', testPullForward: 'clearer' },
      rules: ['cavity-note', 'boxy-noise', 'clearer-pulled-forward'],
    },
    {
      name: 'noise alike, no change at the edge, a main is right there, the same everywhere',
      facts: {
        centerPlacement: 'bay',
        testNoiseEach: 'alike',
        toneAcrossPan: 'no-change',
        testPullForward: 'same',
        testMainInPlace: 'right',
        troubleSeats: 'everywhere',
      },
      rules: [
        'boxy-noise',
        'boxy-pan',
        'clearer-pulled-forward',
        'main-wrong-there-too',
        'only-off-the-middle',
      ],
    },
  ],
  cannotTell: [
    {
      name: 'no peak measured',
      facts: { ...bay, bayRecess: 0 },
      rule: 'measured-peak',
      asks: ['measuredPeakHz'],
    },
    {
      name: 'without the recess the front is open',
      facts: { centerPlacement: 'bay' },
      rule: 'front-rise',
      asks: ['bayRecess'],
    },
    {
      name: 'not stood beside a main',
      facts: { centerPlacement: 'bay' },
      rule: 'alike-beside-a-main',
      asks: ['testBesideMain'],
    },
    {
      name: 'left and center not swapped',
      facts: { centerPlacement: 'bay' },
      rule: 'stays-in-its-place',
      asks: ['testSwapAtAmplifier'],
    },
    {
      name: 'the inside of the bay is not told',
      facts: { centerPlacement: 'bay' },
      rule: 'cavity-note',
      asks: ['bayWidth', 'bayHeight', 'bayDepth', 'bayRecess'],
    },
    {
      name: 'the place decides what a center pulled to the edge can show',
      facts: { testPullForward: 'same' },
      rule: 'no-clearer-at-the-edge',
      asks: ['centerPlacement'],
    },
    {
      name: 'of an untold bay the center has to be pulled to the edge first',
      facts: { centerPlacement: 'bay' },
      rule: 'no-clearer-in-an-untold-bay',
      asks: ['testPullForward'],
    },
    {
      name: 'no noise compared',
      facts: { centerPlacement: 'bay' },
      rule: 'boxy-noise',
      asks: ['testNoiseEach'],
    },
    { name: 'no pan heard', facts: { centerPlacement: 'bay' }, rule: 'boxy-pan', asks: ['toneAcrossPan'] },
    {
      name: 'not pulled forward, and the place not told',
      facts: {},
      rule: 'clearer-pulled-forward',
      asks: ['centerPlacement', 'testPullForward'],
    },
    {
      name: 'no main put in its place',
      facts: { centerPlacement: 'bay' },
      rule: 'main-wrong-there-too',
      asks: ['testMainInPlace'],
    },
    {
      name: 'seats not told',
      facts: { centerPlacement: 'bay' },
      rule: 'only-off-the-middle',
      asks: ['troubleSeats'],
    },
  ],
  boundary: [
    {
      name: 'a rise of 3 dB of the low voice is clear',
      rule: 'front-rise',
      facts: { centerPlacement: 'bay' },
      derived: { frontRiseDb: 3 },
      at: 'yes',
      below: 'no',
    },
    {
      name: 'a note of 4 dB is clear',
      rule: 'cavity-note',
      facts: { centerPlacement: 'bay' },
      derived: { cavityPeakDb: 4, frontRiseDb: 0 },
      at: 'yes',
      below: 'no',
    },
  ],
});
