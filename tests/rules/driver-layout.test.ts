import { driverLayout } from '../../src/rules/causes/driver-layout.js';
import { testCause } from '../support/testCause.js';

const sofa = { seating: 'one-row', seatCount: 3, seatSpacing: 0.6 } as const;
const lying = { centerOrientation: 'level' } as const;
const common = {
  centerLayout: 'mid-tweeter-mid',
  centerDriverSpacing: 0.26,
  centerCrossover: 2500,
  centerMidSize: 0.133,
  ...lying,
} as const;
const threeWay = {
  centerLayout: 'woofer-mid-tweeter-woofer',
  centerMidSize: 0.1,
  centerCrossover: 2500,
  ...lying,
} as const;
const wideSofa = { seating: 'one-row', seatCount: 5, seatSpacing: 0.7, seatDistance: 2.2 } as const;
const kind = { layoutKind: 'shared-band-side-by-side' } as const;
const computed = ['dip-at-worst-seat', 'seat-beyond-its-angle'] as const;

testCause(driverLayout, {
  firstPosts: [
    {
      complaints: ['voice-unclear-off-side'],
      facts: { centerLayout: 'mid-tweeter-mid', seatDistance: '2.4 m', seatCount: 4 },
    },
    {
      complaints: ['voice-unclear-off-side'],
      facts: { centerLayout: 'mid-tweeter-mid', troubleSeats: 'off-middle' },
    },
    {
      complaints: ['voice-unclear-off-side'],
      facts: { testSitMiddle: 'clear-in-middle', centerLayout: 'horizontal-two-way' },
    },
  ],
  fires: [
    {
      name: 'an end seat that loses what the layout takes there loses it to the layout',
      facts: {
        centerLayout: 'mid-tweeter-mid',
        centerDriverSpacing: 0.26,
        centerCrossover: 2500,
        seatDistance: 2,
        seatCount: 3,
        seatSpacing: 0.7,
        centerAgainstMainsDb: 0,
        centerAgainstMainsSideDb: -3.5,
      },
      rules: ['measured-drop'],
    },
    {
      name: 'a hole measured at the end seat where this layout puts one is the layout',
      facts: {
        centerLayout: 'mid-tweeter-mid',
        centerDriverSpacing: 0.26,
        seatDistance: 2.4,
        seatCount: 3,
        seatSpacing: 0.65,
        measuredHoleSeat: 'side',
        measuredHoleHz: 2100,
      },
      rules: ['measured-hole'],
    },
    {
      name: 'what stays with the box when the channels are swapped is the box or its place',
      facts: { centerLayout: 'mid-tweeter-mid', testSwapAtAmplifier: 'stays' },
      rules: ['stays-in-its-place'],
    },
    {
      name: 'a lying pair of cones fails the ends of a three-seat sofa seen from 2.2 m',
      facts: { ...common, ...sofa, seatDistance: 2.2 },
      rules: [...computed, 'speech-lost-at-worst-seat'],
    },
    {
      name: 'a three-way whose outer cones hand over at 800 Hz, 44 cm apart, fails a wide sofa seen from near',
      facts: { ...threeWay, ...wideSofa, centerDriverSpacing: 0.44, centerLowCrossover: 800 },
      rules: computed,
    },
    {
      name: 'a small box on its side is a pair of cone and tweeter that share the crossover',
      facts: {
        centerLayout: 'horizontal-two-way',
        centerDriverSpacing: 0.15,
        centerCrossover: 2500,
        ...lying,
        ...sofa,
        seatDistance: 2,
      },
      rules: ['dip-at-worst-seat'],
    },
    {
      name: 'clear in the middle, worse at the end, staying with the seat: the signature of an angle',
      facts: {
        ...common,
        troubleSeats: 'off-middle',
        testSitMiddle: 'clear-in-middle',
        testSwapSeats: 'stays-with-seat',
      },
      rules: ['worse-off-the-middle', 'clear-in-the-middle', 'stays-with-the-seat'],
    },
    {
      name: 'bad on its own axis too, or come overnight: remarks that acquit a layout',
      facts: { ...common, testNearCenter: 'still-bad', onset: 'sudden' },
      rules: ['bad-on-its-axis-too', 'came-suddenly'],
    },
  ],
  silent: [
    {
      name: 'an end seat that loses far more than the layout takes loses it to something else',
      facts: {
        centerLayout: 'mid-tweeter-mid',
        centerDriverSpacing: 0.26,
        centerCrossover: 2500,
        seatDistance: 2,
        seatCount: 3,
        seatSpacing: 0.7,
        centerAgainstMainsDb: 0,
        centerAgainstMainsSideDb: -14,
      },
      rules: ['measured-drop'],
    },
    {
      name: 'a hole at the main seat, on the axis, is not the layout',
      facts: {
        centerLayout: 'mid-tweeter-mid',
        centerDriverSpacing: 0.26,
        centerCrossover: 2500,
        seatDistance: 2,
        seatCount: 1,
        seatSpacing: 0.7,
        measuredHoleSeat: 'main',
        measuredHoleHz: 2000,
      },
      rules: ['measured-hole'],
    },
    {
      name: 'a hole in the low voice is not the layout',
      facts: {
        centerLayout: 'mid-tweeter-mid',
        centerDriverSpacing: 0.26,
        seatDistance: 2.4,
        seatCount: 3,
        seatSpacing: 0.65,
        measuredHoleSeat: 'side',
        measuredHoleHz: 250,
      },
      rules: ['measured-hole'],
    },
    {
      name: 'what moves to the left loudspeaker with the channel is neither the box nor its place',
      facts: { centerLayout: 'mid-tweeter-mid', testSwapAtAmplifier: 'moves-left' },
      rules: ['stays-in-its-place'],
    },
    {
      name: 'what is gone from both after touching the wires is no place',
      facts: { centerLayout: 'mid-tweeter-mid', testSwapAtAmplifier: 'gone' },
      rules: ['stays-in-its-place'],
    },
    {
      name: 'distance decides: the same center and sofa are only mild from 3 m',
      facts: { ...common, ...sofa, seatDistance: 3 },
      rules: [...computed, 'speech-lost-at-worst-seat'],
    },
    {
      name: 'a horizontal mid-tweeter-mid is innocent at a single seat on its axis',
      facts: { ...common, seating: 'single-seat', seatDistance: 2.2, mainSeatOffset: 0 },
      rules: [...computed, 'speech-lost-at-worst-seat'],
    },
    {
      name: 'outer cones that hand over at 300 Hz, 36 cm apart, cannot harm even a wide sofa',
      facts: { ...threeWay, ...wideSofa, centerDriverSpacing: 0.36, centerLowCrossover: 300 },
      rules: computed,
    },
    {
      name: 'cones nearly touching with the tweeter raised between them serve a sofa at 2.2 m',
      facts: {
        centerLayout: 'nested-mid-tweeter-mid',
        centerDriverSpacing: 0.115,
        centerCrossover: 2200,
        centerMidSize: 0.1,
        ...lying,
        ...sofa,
        seatDistance: 2.2,
      },
      rules: computed,
    },
    {
      name: 'a low crossover rescues a lying pair',
      facts: { ...common, ...sofa, centerDriverSpacing: 0.24, centerCrossover: 1600, seatDistance: 2.2 },
      rules: ['dip-at-worst-seat'],
    },
    {
      name: 'drivers in one spot cannot cancel sideways, whatever is heard',
      facts: { centerLayout: 'coaxial', troubleSeats: 'off-middle', ...wideSofa },
      rules: [...computed, 'worse-off-the-middle'],
    },
    {
      name: 'trouble at every seat, near by gone, and always there: nothing of an angle',
      facts: {
        ...common,
        troubleSeats: 'everywhere',
        testSitMiddle: 'same-everywhere',
        testSwapSeats: 'goes-with-person',
        testNearCenter: 'good-near',
        onset: 'always',
      },
      rules: [
        'worse-off-the-middle',
        'clear-in-the-middle',
        'stays-with-the-seat',
        'bad-on-its-axis-too',
        'came-suddenly',
      ],
    },
  ],
  cannotTell: [
    {
      name: 'no level measured at the side',
      facts: {
        centerLayout: 'mid-tweeter-mid',
        centerDriverSpacing: 0.26,
        centerCrossover: 2500,
        seatDistance: 2,
        seatCount: 3,
        seatSpacing: 0.7,
        centerAgainstMainsDb: 0,
      },
      rule: 'measured-drop',
      asks: ['centerAgainstMainsSideDb'],
    },
    {
      name: 'no hole measured',
      facts: {
        centerLayout: 'mid-tweeter-mid',
        centerDriverSpacing: 0.26,
        seatDistance: 2.4,
        seatCount: 3,
        seatSpacing: 0.65,
        measuredHoleSeat: 'side',
      },
      rule: 'measured-hole',
      asks: ['measuredHoleHz'],
    },
    {
      name: 'left and center not swapped',
      facts: { centerLayout: 'mid-tweeter-mid' },
      rule: 'stays-in-its-place',
      asks: ['testSwapAtAmplifier'],
    },
    {
      name: 'without the layout no dip can be computed',
      facts: { ...sofa, seatDistance: 2.2 },
      rule: 'dip-at-worst-seat',
      asks: ['centerLayout'],
    },
    {
      name: 'without the layout no angle can be compared',
      facts: { ...sofa, seatDistance: 2.2 },
      rule: 'seat-beyond-its-angle',
      asks: ['centerLayout'],
    },
    {
      name: 'with a cone that plays bass only, its side decides which end of the sofa suffers',
      facts: { ...common, centerLayout: 'two-and-a-half-way', ...sofa, seatDistance: 2.2 },
      rule: 'speech-lost-at-worst-seat',
      asks: ['fullRangeMidSide'],
    },
    {
      name: 'where it is heard has not been told',
      facts: common,
      rule: 'worse-off-the-middle',
      asks: ['troubleSeats'],
    },
    {
      name: 'middle and end have not been compared',
      facts: common,
      rule: 'clear-in-the-middle',
      asks: ['testSitMiddle'],
    },
    {
      name: 'nobody has changed places',
      facts: common,
      rule: 'stays-with-the-seat',
      asks: ['testSwapSeats'],
    },
    {
      name: 'nobody has listened close up',
      facts: common,
      rule: 'bad-on-its-axis-too',
      asks: ['testNearCenter'],
    },
    { name: 'its beginning has not been told', facts: common, rule: 'came-suddenly', asks: ['onset'] },
  ],
  boundary: [
    {
      name: 'a dip of 4 dB is clear, less is not',
      rule: 'dip-at-worst-seat',
      derived: { layoutDipDb: 4, ...kind },
      at: 'yes',
      below: 'no',
    },
    {
      name: 'the seat exactly at the angle this center serves is outside',
      rule: 'seat-beyond-its-angle',
      derived: { seatAngleMaxDeg: 12.5, layoutFailDeg: 12.5, ...kind },
      at: 'yes',
      below: 'no',
    },
    {
      name: 'two decibels of speech are clear, less is not',
      rule: 'speech-lost-at-worst-seat',
      derived: { layoutSpeechLossDb: 2, ...kind },
      at: 'yes',
      below: 'no',
    },
  ],
});
