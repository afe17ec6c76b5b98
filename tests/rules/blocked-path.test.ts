import { blockedPath } from '../../src/rules/causes/blocked-path.js';
import { testCause } from '../support/testCause.js';

const low = { centerTweeterHeight: 0.5, earHeight: 1.05, seatDistance: 3 } as const;
const row = { obstacle: 'seat-row' } as const;

testCause(blockedPath, {
  firstPosts: [
    { complaints: ['dull'], facts: { obstacle: 'object' } },
    {
      complaints: ['dull'],
      facts: {
        obstacle: 'table',
        obstacleHeight: '0.6 m',
        obstacleDistance: '1.5 m',
        centerTweeterHeight: '0.45 m',
        seatDistance: '3 m',
      },
    },
  ],
  fires: [
    {
      name: 'worse in the back row, as behind the row in front',
      facts: { obstacle: 'seat-row', troubleSeats: 'back-row' },
      rules: ['single-seat-trouble'],
    },
    {
      name: 'the edge of a display that hangs into the line shades like a seat back',
      facts: {
        ...low,
        obstacle: 'object',
        obstacleFrom: 'above',
        obstacleWidth: 1.4,
        obstacleHeight: 0.4,
        obstacleDistance: 0.1,
        seating: 'single-seat',
      },
      rules: ['speech-in-the-shade'],
    },
    {
      name: 'what stays with the box when the channels are swapped is the box or its place',
      facts: { obstacle: 'seat-row', testSwapAtAmplifier: 'stays' },
      rules: ['stays-in-its-place'],
    },
    {
      name: 'a table just below the line of sight mirrors the voice',
      facts: {
        ...low,
        centerTweeterHeight: 0.58,
        obstacle: 'table',
        obstacleHeight: 0.48,
        obstacleDistance: 0.5,
        seating: 'single-seat',
        testCoverShelf: 'clearer',
      },
      rules: ['table-mirrors', 'clearer-with-cloth'],
    },
    {
      name: 'lifted over what is in the way, the tone clears even where the place stays',
      facts: { ...row, testLift: 'tone-only' },
      rules: ['better-when-lifted'],
    },
    {
      name: 'what goes along with one person is hardly made by the system',
      facts: { ...row, testSwapSeats: 'goes-with-person' },
      rules: ['one-person-alone'],
    },
    {
      name: 'the backs of a first row cut the second row off from a low center',
      facts: {
        ...low,
        ...row,
        seating: 'several-rows',
        seatCount: 4,
        rowSpacing: 1.2,
        rowRiser: 0,
        obstacleHeight: 1.1,
        obstacleDistance: 3,
      },
      rules: ['speech-in-the-shade'],
    },
    {
      name: 'one place suffers, one seat, dull noise, good in front of it, better lifted, since the furniture came',
      facts: {
        ...row,
        whoHears: 'one-place',
        troubleSeats: 'one-seat',
        testNoiseEach: 'duller',
        testNearCenter: 'good-near',
        testLift: 'improves',
        lastChange: 'furniture',
      },
      rules: [
        'one-place-suffers',
        'single-seat-trouble',
        'duller-noise',
        'good-in-front-of-it',
        'better-when-lifted',
        'new-furniture',
      ],
    },
  ],
  silent: [
    {
      name: 'sound goes around a narrow vase',
      facts: {
        ...low,
        obstacle: 'object',
        obstacleWidth: 0.06,
        obstacleHeight: 1,
        obstacleDistance: 0.5,
        seating: 'single-seat',
      },
      rules: ['speech-in-the-shade'],
    },
    {
      name: 'a door of open cloth takes next to nothing',
      facts: {
        ...low,
        obstacle: 'object',
        obstacleMake: 'cloth',
        obstacleHeight: 1,
        obstacleDistance: 0.03,
        seating: 'single-seat',
      },
      rules: ['speech-in-the-shade'],
    },
    {
      name: 'what moves to the left loudspeaker with the channel is neither the box nor its place',
      facts: { obstacle: 'seat-row', testSwapAtAmplifier: 'moves-left' },
      rules: ['stays-in-its-place'],
    },
    {
      name: 'what is gone from both after touching the wires is no place',
      facts: { obstacle: 'seat-row', testSwapAtAmplifier: 'gone' },
      rules: ['stays-in-its-place'],
    },
    {
      name: 'half way to the seat a table mirrors less, and cloth changes nothing',
      facts: {
        ...low,
        centerTweeterHeight: 0.58,
        obstacle: 'table',
        obstacleHeight: 0.48,
        obstacleDistance: 1.5,
        seating: 'single-seat',
        testCoverShelf: 'same',
      },
      rules: ['table-mirrors', 'clearer-with-cloth'],
    },
    {
      name: 'what others hear as well stays possible',
      facts: { ...row, testSwapSeats: 'stays-with-seat' },
      rules: ['one-person-alone'],
    },
    {
      name: 'a clear view cannot shade anything',
      facts: { ...low, obstacle: 'none', testLift: 'improves', whoHears: 'one-place' },
      rules: ['speech-in-the-shade', 'better-when-lifted', 'one-place-suffers'],
    },
    {
      name: 'with a clear view over the heads of a first row there is nothing to shade',
      facts: {
        ...low,
        seating: 'several-rows',
        seatCount: 3,
        rowSpacing: 1.5,
        rowRiser: 0,
        obstacle: 'none',
      },
      rules: ['speech-in-the-shade'],
    },
    {
      name: 'an object well below the line costs nothing',
      facts: {
        ...low,
        obstacle: 'object',
        obstacleWidth: 1,
        obstacleHeight: 0.2,
        obstacleDistance: 1.5,
        seating: 'single-seat',
      },
      rules: ['speech-in-the-shade'],
    },
    {
      name: 'everyone hears it, everywhere, noise is alike, still bad close up, no better lifted',
      facts: {
        ...row,
        whoHears: 'everyone',
        troubleSeats: 'everywhere',
        testNoiseEach: 'alike',
        testNearCenter: 'still-bad',
        testLift: 'same',
        lastChange: 'nothing',
      },
      rules: [
        'one-place-suffers',
        'single-seat-trouble',
        'duller-noise',
        'good-in-front-of-it',
        'better-when-lifted',
        'new-furniture',
      ],
    },
    {
      name: 'with nothing in the way dull noise has another reason',
      facts: { ...row, obstacle: 'none', testNoiseEach: 'duller' },
      rules: ['duller-noise'],
    },
  ],
  cannotTell: [
    {
      name: 'how wide the object is decides',
      facts: { ...low, obstacle: 'object', obstacleHeight: 1, obstacleDistance: 0.5, seating: 'single-seat' },
      rule: 'speech-in-the-shade',
      asks: ['obstacleWidth'],
    },
    {
      name: 'left and center not swapped',
      facts: { obstacle: 'seat-row' },
      rule: 'stays-in-its-place',
      asks: ['testSwapAtAmplifier'],
    },
    {
      name: 'height and place of the table are not told',
      facts: { ...low, obstacle: 'table' },
      rule: 'table-mirrors',
      asks: ['obstacleHeight', 'obstacleDistance'],
    },
    {
      name: 'no cloth on the table yet',
      facts: { obstacle: 'table' },
      rule: 'clearer-with-cloth',
      asks: ['testCoverShelf'],
    },
    {
      name: 'nobody said whether it is one person alone',
      facts: row,
      rule: 'one-person-alone',
      asks: ['testSwapSeats'],
    },
    {
      name: 'the size and place of the obstacle are not told',
      facts: { ...low, obstacle: 'object' },
      rule: 'speech-in-the-shade',
      asks: ['obstacleHeight', 'obstacleDistance'],
    },
    { name: 'who hears it is not told', facts: row, rule: 'one-place-suffers', asks: ['whoHears'] },
    { name: 'seats not told', facts: row, rule: 'single-seat-trouble', asks: ['troubleSeats'] },
    { name: 'no noise compared', facts: row, rule: 'duller-noise', asks: ['testNoiseEach'] },
    { name: 'nobody close up', facts: row, rule: 'good-in-front-of-it', asks: ['testNearCenter'] },
    {
      name: 'not lifted, and the view not told',
      facts: {},
      rule: 'better-when-lifted',
      asks: ['obstacle', 'testLift'],
    },
    { name: 'the last change is not told', facts: row, rule: 'new-furniture', asks: ['lastChange'] },
  ],
  boundary: [
    {
      name: 'a dip of four decibels off the table is clear',
      rule: 'table-mirrors',
      facts: { obstacle: 'table' },
      derived: { tableDipDb: 4 },
      at: 'yes',
      below: 'no',
    },
    {
      name: 'two decibels of speech are clear',
      rule: 'speech-in-the-shade',
      facts: row,
      derived: { blockedSpeechLossDb: 2 },
      at: 'yes',
      below: 'no',
    },
  ],
});
