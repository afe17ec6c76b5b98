import { setBack } from '../../src/rules/causes/set-back.js';
import { testCause } from '../support/testCause.js';

const shelf = {
  centerPlacement: 'shelf-top',
  centerAboveShelf: 0.12,
  centerTweeterHeight: 0.67,
  earHeight: 1.05,
  seatDistance: 3,
} as const;
const place = { centerPlacement: 'shelf-top' } as const;

testCause(setBack, {
  firstPosts: [
    {
      complaints: ['hollow'],
      facts: { centerPlacement: 'shelf-top', shelfSetback: '25 cm', centerAboveShelf: '10 cm' },
    },
    { complaints: ['dull'], facts: { shelfSetback: '30 cm', testPullForward: 'clearer' } },
  ],
  fires: [
    {
      name: 'a hole measured where the strip puts one is the strip',
      facts: { ...shelf, shelfSetback: 0.3, measuredHoleHz: 2500 },
      rules: ['measured-hole'],
    },
    {
      name: 'thirty centimeters of set-back: a rise and a dip just under their limits are plain together',
      facts: { ...shelf, shelfSetback: 0.3 },
      rules: ['shelf-ripple'],
    },
    {
      name: 'what stays with the box when the channels are swapped is the box or its place',
      facts: { centerPlacement: 'shelf-top', testSwapAtAmplifier: 'stays' },
      rules: ['stays-in-its-place'],
    },
    {
      name: 'a meter of bare top reaches the mirror point: there the textbook null exists',
      facts: { ...shelf, shelfSetback: 1 },
      rules: ['shelf-ripple', 'reaches-the-mirror-point'],
    },
    {
      name: 'clearer at the edge and with a blanket, boxy pans, a main sounds wrong there too',
      facts: {
        ...place,
        testPullForward: 'clearer',
        testCoverShelf: 'clearer',
        toneAcrossPan: 'boxier',
        testMainInPlace: 'wrong',
      },
      rules: ['clearer-pulled-forward', 'clearer-with-blanket', 'boxy-pan', 'main-wrong-there-too'],
    },
    {
      name: 'a shelf colors every seat alike, so trouble at the end seats speaks against it',
      facts: { ...place, troubleSeats: 'off-middle' },
      rules: ['only-off-the-middle'],
    },
  ],
  silent: [
    {
      name: 'a hole in the low voice is not the strip',
      facts: { ...shelf, shelfSetback: 0.3, measuredHoleHz: 400 },
      rules: ['measured-hole'],
    },
    {
      name: 'an automatic correction run in this state has taken the rise',
      facts: {
        ...shelf,
        shelfSetback: 0.3,
        equalization: 'automatic',
        equalizationReach: 'all-alike',
        correctionState: 'as-now',
      },
      rules: ['shelf-ripple'],
    },
    {
      name: 'what moves to the left loudspeaker with the channel is neither the box nor its place',
      facts: { centerPlacement: 'shelf-top', testSwapAtAmplifier: 'moves-left' },
      rules: ['stays-in-its-place'],
    },
    {
      name: 'what is gone from both after touching the wires is no place',
      facts: { centerPlacement: 'shelf-top', testSwapAtAmplifier: 'gone' },
      rules: ['stays-in-its-place'],
    },
    {
      name: 'eight centimeters of set-back make a shallow wave and no null',
      facts: { ...shelf, shelfSetback: 0.08 },
      rules: ['shelf-ripple', 'reaches-the-mirror-point'],
    },
    {
      name: 'flush with the edge there is no strip',
      facts: { ...shelf, shelfSetback: 0 },
      rules: ['shelf-ripple', 'reaches-the-mirror-point'],
    },
    {
      name: 'a shelf above the ears reflects nothing toward them',
      facts: { ...shelf, centerTweeterHeight: 1.7, shelfSetback: 0.6 },
      rules: ['shelf-ripple'],
    },
    {
      name: 'no change at the edge or with a blanket, a main is right there',
      facts: {
        ...place,
        testPullForward: 'same',
        testCoverShelf: 'same',
        toneAcrossPan: 'no-change',
        testMainInPlace: 'right',
        troubleSeats: 'everywhere',
      },
      rules: [
        'clearer-pulled-forward',
        'clearer-with-blanket',
        'boxy-pan',
        'main-wrong-there-too',
        'only-off-the-middle',
      ],
    },
    {
      name: 'in a bay it is the bay, not the set-back',
      facts: { centerPlacement: 'bay', testPullForward: 'clearer' },
      rules: ['clearer-pulled-forward'],
    },
  ],
  cannotTell: [
    {
      name: 'no hole measured',
      facts: { ...shelf, shelfSetback: 0.3 },
      rule: 'measured-hole',
      asks: ['measuredHoleHz'],
    },
    {
      name: 'left and center not swapped',
      facts: { centerPlacement: 'shelf-top' },
      rule: 'stays-in-its-place',
      asks: ['testSwapAtAmplifier'],
    },
    {
      name: 'the set-back is not told; a usual height of the furniture stands in for it',
      facts: place,
      rule: 'shelf-ripple',
      asks: ['shelfSetback'],
    },
    {
      name: 'the mirror point needs them too',
      facts: place,
      rule: 'reaches-the-mirror-point',
      asks: ['shelfSetback'],
    },
    { name: 'not pulled forward', facts: place, rule: 'clearer-pulled-forward', asks: ['testPullForward'] },
    { name: 'not covered', facts: place, rule: 'clearer-with-blanket', asks: ['testCoverShelf'] },
    { name: 'no pan heard', facts: place, rule: 'boxy-pan', asks: ['toneAcrossPan'] },
    { name: 'no main in its place', facts: place, rule: 'main-wrong-there-too', asks: ['testMainInPlace'] },
    { name: 'seats not told', facts: place, rule: 'only-off-the-middle', asks: ['troubleSeats'] },
  ],
  boundary: [
    {
      name: 'six decibels from peak to dip are clear',
      rule: 'shelf-ripple',
      facts: place,
      derived: { shelfRippleDb: 6 },
      at: 'yes',
      below: 'no',
    },
    {
      name: 'a null exists from the mirror point on',
      rule: 'reaches-the-mirror-point',
      facts: place,
      derived: { shelfReach: 1 },
      at: 'yes',
      below: 'no',
    },
  ],
});
