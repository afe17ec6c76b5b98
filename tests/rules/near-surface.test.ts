import { nearSurface } from '../../src/rules/causes/near-surface.js';
import { testCause } from '../support/testCause.js';

const room = { seatDistance: 3, earHeight: 1.05, mainsTweeterHeight: 1, mainsBase: 2.6 } as const;

testCause(nearSurface, {
  firstPosts: [
    {
      complaints: ['hollow'],
      facts: { floorCover: 'bare', centerTweeterHeight: '0.4 m', seatDistance: '3 m' },
    },
  ],
  fires: [
    {
      name: 'a reflection as late as the way over the floor is the floor',
      facts: { centerTweeterHeight: 0.5, seatDistance: 3, earHeight: 1.05, reflectionMeasuredMs: 0.95 },
      rules: ['measured-reflection'],
    },
    {
      name: 'a hole measured where the floor puts one is the floor',
      facts: { ...room, centerTweeterHeight: 0.55, measuredHoleHz: 480, measuredHoleDb: 9 },
      rules: ['measured-hole'],
    },
    {
      name: 'hung flat on the wall, a box made to stand free has its low voice lifted',
      facts: {
        centerPlacement: 'wall',
        wallDistance: 0.2,
        equalization: 'none',
        toneAcrossPan: 'boxier',
        testMainInPlace: 'wrong',
        testBesideMain: 'alike',
      },
      rules: ['walls-lift-the-low-voice', 'boxy-pan', 'main-wrong-there-too', 'alike-beside-a-main'],
    },
    {
      name: 'high up the ceiling is the nearest surface, and its hole lies in the voice',
      facts: { ...room, centerTweeterHeight: 2.1, ceilingHeight: 2.4 },
      rules: ['another-pitch-than-the-mains'],
    },
    {
      name: 'what stays with the box when the channels are swapped is the box or its place',
      facts: { testSwapAtAmplifier: 'stays' },
      rules: ['stays-in-its-place'],
    },
    {
      name: 'a recording shows a strong reflection a hand width behind the center',
      facts: { reflectionMeasuredMs: 1.2, reflectionMeasuredDb: -3 },
      rules: ['recording-shows-reflection'],
    },
    {
      name: 'a center near a bare floor has its floor hole in the middle of the voice, the mains below it',
      facts: { ...room, centerTweeterHeight: 0.3, floorCover: 'bare' },
      rules: ['floor-ripple', 'another-pitch-than-the-mains'],
    },
    {
      name: 'the wall 45 cm behind a wide box takes a hole out of the lower voice',
      facts: { wallDistance: 0.45, centerWidth: 0.3, seatDistance: 4, centerPlacement: 'floor' },
      rules: ['wall-behind'],
    },
    {
      name: 'a blanket helps, lifting changes the tone only, noise is thin, close up it is better',
      facts: {
        centerPlacement: 'floor',
        testCoverShelf: 'clearer',
        testLift: 'tone-only',
        testNoiseEach: 'thin',
        testNearCenter: 'better',
      },
      rules: ['clearer-with-blanket', 'tone-changes-when-lifted', 'thin-or-boxy-noise', 'good-close-up'],
    },
    {
      name: 'floor and wall color a row alike, so trouble at the end seats speaks against them',
      facts: { troubleSeats: 'off-middle' },
      rules: ['only-off-the-middle'],
    },
  ],
  silent: [
    {
      name: 'a reflection three milliseconds late is not the floor',
      facts: { centerTweeterHeight: 0.5, seatDistance: 3, earHeight: 1.05, reflectionMeasuredMs: 3 },
      rules: ['measured-reflection'],
    },
    {
      name: 'a hole an octave above is not the floor',
      facts: { ...room, centerTweeterHeight: 0.55, measuredHoleHz: 1000, measuredHoleDb: 9 },
      rules: ['measured-hole'],
    },
    {
      name: 'half a meter from the wall the low voice is not lifted',
      facts: {
        centerPlacement: 'stand',
        wallDistance: 0.5,
        toneAcrossPan: 'no-change',
        testMainInPlace: 'right',
        testBesideMain: 'differs',
      },
      rules: ['walls-lift-the-low-voice', 'boxy-pan', 'main-wrong-there-too', 'alike-beside-a-main'],
    },
    {
      name: 'what a wall lifts, an automatic correction run in this state takes back',
      facts: {
        centerPlacement: 'wall',
        wallDistance: 0.2,
        equalization: 'automatic',
        correctionState: 'as-now',
      },
      rules: ['walls-lift-the-low-voice'],
    },
    {
      name: 'a hole lower than that of the mains harms less than theirs',
      facts: { ...room, centerTweeterHeight: 1.6 },
      rules: ['another-pitch-than-the-mains'],
    },
    {
      name: 'what moves to the left loudspeaker with the channel is neither the box nor its place',
      facts: { testSwapAtAmplifier: 'moves-left' },
      rules: ['stays-in-its-place'],
    },
    {
      name: 'what is gone from both after touching the wires is no place',
      facts: { testSwapAtAmplifier: 'gone' },
      rules: ['stays-in-its-place'],
    },
    {
      name: 'the strongest reflection that a recording shows is weak',
      facts: { reflectionMeasuredMs: 1.2, reflectionMeasuredDb: -14 },
      rules: ['recording-shows-reflection'],
    },
    {
      name: 'center and mains at one height over one floor are colored alike: no mismatch',
      facts: { ...room, centerTweeterHeight: 1, floorCover: 'carpet' },
      rules: ['floor-ripple', 'another-pitch-than-the-mains'],
    },
    {
      name: 'right at the wall the hole lies where the box hardly radiates backward',
      facts: { wallDistance: 0.1, centerWidth: 0.5, centerPlacement: 'wall' },
      rules: ['wall-behind'],
    },
    {
      name: 'on a shelf a blanket tests the shelf, not the floor',
      facts: { centerPlacement: 'shelf-top', testCoverShelf: 'clearer' },
      rules: ['clearer-with-blanket'],
    },
    {
      name: 'lifting moves the image, noise is alike, still bad close up, the same everywhere',
      facts: {
        testLift: 'improves',
        testNoiseEach: 'alike',
        testNearCenter: 'still-bad',
        troubleSeats: 'everywhere',
      },
      rules: ['tone-changes-when-lifted', 'thin-or-boxy-noise', 'good-close-up', 'only-off-the-middle'],
    },
  ],
  cannotTell: [
    {
      name: 'no reflection measured',
      facts: { centerTweeterHeight: 0.5, seatDistance: 3, earHeight: 1.05 },
      rule: 'measured-reflection',
      asks: ['reflectionMeasuredMs'],
    },
    {
      name: 'no hole measured',
      facts: { ...room, centerTweeterHeight: 0.55 },
      rule: 'measured-hole',
      asks: ['measuredHoleHz'],
    },
    {
      name: 'the distance to the wall is open',
      facts: { centerPlacement: 'wall' },
      rule: 'walls-lift-the-low-voice',
      asks: ['wallDistance'],
    },
    { name: 'no pan heard', facts: {}, rule: 'boxy-pan', asks: ['toneAcrossPan'] },
    { name: 'no main in its place', facts: {}, rule: 'main-wrong-there-too', asks: ['testMainInPlace'] },
    { name: 'not stood beside a main', facts: {}, rule: 'alike-beside-a-main', asks: ['testBesideMain'] },
    {
      name: 'left and center not swapped',
      facts: {},
      rule: 'stays-in-its-place',
      asks: ['testSwapAtAmplifier'],
    },
    {
      name: 'nothing was recorded',
      facts: {},
      rule: 'recording-shows-reflection',
      asks: ['reflectionMeasuredMs', 'reflectionMeasuredDb'],
    },
    {
      name: 'the floor cover is not told',
      facts: { ...room, centerTweeterHeight: 0.5 },
      rule: 'floor-ripple',
      asks: ['floorCover'],
    },
    {
      name: 'without its height its floor hole has no pitch',
      facts: room,
      rule: 'another-pitch-than-the-mains',
      asks: ['centerTweeterHeight'],
    },
    {
      name: 'the distance to the wall is not told',
      facts: { centerPlacement: 'floor' },
      rule: 'wall-behind',
      asks: ['wallDistance'],
    },
    {
      name: 'no blanket tried',
      facts: { centerPlacement: 'floor' },
      rule: 'clearer-with-blanket',
      asks: ['testCoverShelf'],
    },
    { name: 'not lifted', facts: {}, rule: 'tone-changes-when-lifted', asks: ['testLift'] },
    { name: 'no noise compared', facts: {}, rule: 'thin-or-boxy-noise', asks: ['testNoiseEach'] },
    { name: 'nobody close up', facts: {}, rule: 'good-close-up', asks: ['testNearCenter'] },
    { name: 'seats not told', facts: {}, rule: 'only-off-the-middle', asks: ['troubleSeats'] },
  ],
  boundary: [
    {
      name: 'a rise of 3 dB of the low voice is clear',
      rule: 'walls-lift-the-low-voice',
      derived: { wallRiseDb: 3 },
      at: 'yes',
      below: 'no',
    },
    {
      name: 'only a ripple above the usual counts',
      rule: 'floor-ripple',
      derived: { floorRippleDb: 18 },
      at: 'yes',
      below: 'no',
    },
    {
      name: 'two thirds of an octave apart is clear',
      rule: 'another-pitch-than-the-mains',
      derived: { surfaceNullRatio: 1.6 },
      at: 'yes',
      below: 'no',
    },
    {
      name: 'only a wall hole deeper than usual counts',
      rule: 'wall-behind',
      derived: { wallDipDb: 9 },
      at: 'yes',
      below: 'no',
    },
  ],
});
