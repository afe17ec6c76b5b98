import { delay } from '../../src/rules/causes/delay.js';
import { testCause } from '../support/testCause.js';

const room = {
  mainsBase: 3,
  seatDistance: 3,
  seating: 'single-seat',
  mainSeatOffset: 0,
  centerBehindMains: 0,
} as const;
/** Half of the singer stays in the mains. */
const shared = { playedContent: 'two-channel-music', upmixUse: 'on', upmixCommonPart: 'shares' } as const;
const discrete = { playedContent: 'multichannel-film', sourceFormat: 'multichannel' } as const;
const taped = { tapedCenter: 3, tapedMains: 3.354 } as const;
const asTaped = { enteredLeft: 3.354, enteredCenter: 3, enteredRight: 3.354 } as const;

testCause(delay, {
  fires: [
    {
      name: 'a latency of 40 ms that entries from a tape cannot know is left over in full',
      facts: { ...room, ...shared, alignmentBy: 'by-hand', centerPowered: 'yes', centerLatency: 40 },
      rules: ['latency-left'],
    },
    {
      name: 'entries as taped leave the latency in full',
      facts: { ...room, ...shared, ...taped, ...asTaped, centerPowered: 'yes', centerLatency: 40 },
      rules: ['latency-left', 'arrival-error'],
    },
    {
      name: 'what goes along with one person is hardly made by the system',
      facts: { testSwapSeats: 'goes-with-person' },
      rules: ['one-person-alone'],
    },
    {
      name: 'a powered center between mains that are not is late by its own processing',
      facts: { centerPowered: 'yes' },
      rules: ['only-center-is-powered'],
    },
    {
      name: 'steps of a whole foot can leave as much as no entry at all',
      facts: { ...shared, entryStep: 0.3048 },
      rules: ['step-too-coarse'],
    },
    {
      name: 'with distances never set, a center on the line between the mains comes a millisecond early',
      facts: { ...room, ...shared, alignmentBy: 'nobody' },
      rules: ['arrival-error', 'something-is-shared', 'little-is-shared'],
    },
    {
      name: 'feet typed into the meter field of the center alone are found by their ratio',
      facts: { ...room, ...shared, ...taped, enteredLeft: 3.354, enteredCenter: 9.84, enteredRight: 3.354 },
      rules: ['wrong-unit', 'arrival-error'],
    },
    {
      name: 'the latency of a powered center counts although tape and entries agree',
      facts: {
        ...room,
        ...shared,
        ...taped,
        enteredLeft: 3.354,
        enteredCenter: 3,
        enteredRight: 3.354,
        centerPowered: 'yes',
        centerLatency: 3,
      },
      rules: ['arrival-error'],
    },
    {
      name: 'tape, phantom test and middle seat speak for it',
      facts: {
        testTape: 'off',
        testPhantom: 'gone',
        testSitMiddle: 'same-everywhere',
        alignmentBy: 'automatic',
        calibrationSpot: 'elsewhere',
        centerPowered: 'no',
      },
      rules: ['tape-disagrees', 'phantom-cures', 'middle-suffers-too', 'measured-elsewhere'],
    },
    {
      name: 'feet in a field of meters part center and subwoofer in films, whose voice has no copy in the mains',
      facts: {
        ...room,
        ...discrete,
        ...taped,
        ...asTaped,
        enteredCenter: 9.84,
        subwoofer: 'one',
        centerBassSize: 'small',
        centerBassCrossover: 100,
        centerEnclosure: 'sealed',
        centerLowLimit: 80,
      },
      rules: ['against-the-subwoofer', 'arrival-error', 'wrong-unit'],
    },
    {
      name: 'a setup run before something was moved is as good as one run elsewhere',
      facts: { alignmentBy: 'automatic', calibrationSpot: 'changed-since' },
      rules: ['measured-elsewhere'],
    },
    {
      name: 'a middle that is worst of all is no seat in the clear',
      facts: { testSitMiddle: 'worse-in-middle' },
      rules: ['middle-suffers-too'],
    },
  ],
  silent: [
    {
      name: 'an entry of the center that is 13.72 m longer makes up for 40 ms',
      facts: {
        ...room,
        ...shared,
        ...taped,
        ...asTaped,
        enteredCenter: 3 + 13.72,
        centerPowered: 'yes',
        centerLatency: 40,
      },
      rules: ['latency-left', 'arrival-error'],
    },
    {
      name: 'what the center plays alone has no latency against anything',
      facts: {
        ...room,
        playedContent: 'two-channel-music',
        upmixUse: 'on',
        upmixCommonPart: 'takes-out',
        alignmentBy: 'by-hand',
        centerPowered: 'yes',
        centerLatency: 40,
      },
      rules: ['latency-left'],
    },
    {
      name: 'what others hear as well stays possible',
      facts: { whoHears: 'everyone', testSwapSeats: 'stays-with-seat' },
      rules: ['one-person-alone'],
    },
    {
      name: 'center and mains driven alike bring no latency of their own',
      facts: { centerPowered: 'no' },
      rules: ['only-center-is-powered'],
    },
    {
      name: 'a tape that agrees says nothing about a center with its own processing',
      facts: { centerPowered: 'yes', testTape: 'agrees' },
      rules: ['tape-disagrees'],
    },
    {
      name: 'steps of a tenth of a foot leave nothing that is heard',
      facts: { ...shared, entryStep: 0.03048 },
      rules: ['step-too-coarse'],
    },
    {
      name: 'half a millisecond is hardly heard in a film, whose voice only the center plays',
      facts: { ...room, ...discrete, ...taped, ...asTaped, enteredCenter: 3.17 },
      rules: ['arrival-error', 'something-is-shared', 'little-is-shared'],
    },
    {
      name: 'a latency of 20 ms that the entry makes up for is no slip of the unit, though its ratio is three',
      facts: {
        ...room,
        ...shared,
        ...taped,
        ...asTaped,
        enteredCenter: 3 + 6.86,
        centerPowered: 'yes',
        centerLatency: 20,
      },
      rules: ['wrong-unit', 'arrival-error'],
    },
    {
      name: 'an automatic entry of a powered center that is longer than the tape is its latency',
      facts: {
        ...room,
        ...shared,
        ...taped,
        ...asTaped,
        enteredCenter: 4.4,
        alignmentBy: 'automatic',
        centerPowered: 'yes',
      },
      rules: ['arrival-error', 'latency-left'],
    },
    {
      name: 'a hand width of difference means nothing where the menu moves by the foot',
      facts: { testTape: 'off', entryStep: 0.3048 },
      rules: ['tape-disagrees'],
    },
    {
      name: 'a center that is in step leaves no hole at the subwoofer that was not there',
      facts: {
        ...room,
        ...taped,
        ...asTaped,
        subwoofer: 'one',
        centerBassSize: 'small',
        centerBassCrossover: 100,
        centerEnclosure: 'sealed',
        centerLowLimit: 80,
      },
      rules: ['against-the-subwoofer'],
    },
    {
      name: 'taped distances leave nothing at the seat they were made for',
      facts: { ...room, ...shared, ...taped, enteredLeft: 3.354, enteredCenter: 3, enteredRight: 3.354 },
      rules: ['arrival-error', 'wrong-unit'],
    },
    {
      name: 'it is judged at the seat of the entries, not at the end of a row, where every system is out of step',
      facts: { ...room, ...shared, ...taped, enteredLeft: 3.354, enteredCenter: 3, enteredRight: 3.354 },
      seats: [
        { xM: 0, yM: 3, main: true },
        { xM: 1.2, yM: 3, main: false },
      ],
      rules: ['arrival-error'],
    },
    {
      name: 'a clear middle seat and entries that agree with the tape leave the entries innocent',
      facts: {
        testTape: 'agrees',
        testPhantom: 'same',
        testSitMiddle: 'clear-in-middle',
        alignmentBy: 'automatic',
        calibrationSpot: 'main-seat',
        centerPowered: 'no',
      },
      rules: ['tape-disagrees', 'phantom-cures', 'middle-suffers-too', 'measured-elsewhere'],
    },
  ],
  cannotTell: [
    {
      name: 'an automatic entry longer than the tape may be latency: first ask whether the center is powered',
      facts: { ...room, ...shared, ...taped, ...asTaped, enteredCenter: 4.34, alignmentBy: 'automatic' },
      rule: 'arrival-error',
      asks: ['centerPowered'],
    },
    {
      name: 'automatic entries of the mains longer than the tape may be theirs',
      facts: {
        ...room,
        ...shared,
        ...taped,
        enteredLeft: 4.57,
        enteredCenter: 3,
        enteredRight: 4.57,
        alignmentBy: 'automatic',
        centerPowered: 'no',
      },
      rule: 'arrival-error',
      asks: ['mainsPowered'],
    },
    {
      name: 'what the error does at the subwoofer hangs on whether there is one',
      facts: { ...room, alignmentBy: 'nobody' },
      rule: 'against-the-subwoofer',
      asks: ['subwoofer'],
    },
    {
      name: 'a latency that an automatic setup may have made up for',
      facts: { ...room, ...shared, alignmentBy: 'automatic', centerPowered: 'yes', centerLatency: 40 },
      rule: 'latency-left',
      asks: ['enteredCenter', 'enteredLeft', 'enteredRight'],
    },
    {
      name: 'nobody said whether it is one person alone',
      facts: {},
      rule: 'one-person-alone',
      asks: ['whoHears', 'testSwapSeats'],
    },
    {
      name: 'a coarse step matters only to what is shared',
      facts: { entryStep: 0.3048 },
      rule: 'step-too-coarse',
      asks: ['playedContent', 'sourceFormat'],
    },
    {
      name: 'without the entries the arrival cannot be computed',
      facts: { ...room, ...shared },
      rule: 'arrival-error',
      asks: ['enteredLeft', 'enteredCenter', 'enteredRight'],
    },
    {
      name: 'an error of arrival says nothing while it is open whether anything is shared',
      facts: { ...room, alignmentBy: 'nobody', playedContent: 'two-channel-music', upmixUse: 'on' },
      rule: 'arrival-error',
      asks: ['upmixCommonPart'],
    },
    {
      name: 'whether anything is shared hangs on what the upmix leaves in the mains',
      facts: { playedContent: 'two-channel-music', upmixUse: 'on' },
      rule: 'something-is-shared',
      asks: ['upmixCommonPart'],
    },
    {
      name: 'so does whether too little is',
      facts: { playedContent: 'two-channel-music', upmixUse: 'on' },
      rule: 'little-is-shared',
      asks: ['upmixCommonPart'],
    },
    {
      name: 'a unit error needs the entry of the center',
      facts: { ...room, ...taped, enteredLeft: 3.354, enteredRight: 3.354 },
      rule: 'wrong-unit',
      asks: ['enteredCenter'],
    },
    { name: 'no tape, no comparison', facts: {}, rule: 'tape-disagrees', asks: ['testTape'] },
    {
      name: 'where the microphone stood may be forgotten',
      facts: { alignmentBy: 'automatic' },
      rule: 'measured-elsewhere',
      asks: ['calibrationSpot'],
    },
    { name: 'phantom not tried', facts: {}, rule: 'phantom-cures', asks: ['testPhantom'] },
    { name: 'middle and end not compared', facts: {}, rule: 'middle-suffers-too', asks: ['testSitMiddle'] },
  ],
  boundary: [
    {
      name: 'a quarter of a millisecond of latency left is clear',
      rule: 'latency-left',
      derived: { latencyLeftMs: 0.25, sharedSound: 0.5 },
      at: 'yes',
      below: 'no',
    },
    {
      name: 'a step that can leave a quarter of a millisecond is the fair coin',
      rule: 'step-too-coarse',
      derived: { entryStepErrorMs: 0.25, sharedSound: 1 },
      at: 'yes',
      below: 'no',
    },
    {
      name: 'a quarter of a millisecond of fully shared content is the fair coin',
      rule: 'arrival-error',
      derived: { delayErrorMs: 0.25, sharedSound: 1 },
      at: 'yes',
      below: 'no',
    },
    {
      name: 'with half of the voice shared it takes twice the error',
      rule: 'arrival-error',
      derived: { delayErrorMs: 0.5, sharedSound: 0.5 },
      at: 'yes',
      below: 'no',
    },
    {
      name: 'half of the sound shared is the fair coin for hearing an error in it',
      rule: 'something-is-shared',
      derived: { sharedSound: 0.5 },
      at: 'yes',
      below: 'no',
    },
    {
      name: 'less than half of the sound shared begins to speak against it',
      rule: 'little-is-shared',
      derived: { sharedSound: 0.5 },
      at: 'yes',
      below: 'no',
    },
    {
      name: 'a hole of 4 dB at the subwoofer is the fair coin',
      rule: 'against-the-subwoofer',
      derived: { entryBassHoleDb: 4 },
      at: 'yes',
      below: 'no',
    },
  ],
});
