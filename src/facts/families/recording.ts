import { family } from '../spec.js';

const RECORDED = {
  minutes: 8,
  usually: 'measured',
} as const;
const HOW = [
  'Write the test file: center-audit signal test.wav',
  'Play it softly and record it with a phone lying at the seat.',
  'Read the recording: center-audit measure RECORDING --case CASE',
];

const DISTORTION = {
  ...RECORDED,
  findOut: HOW,
  unit: '1',
  possible: [0, 100],
  plausible: [0, 20],
  typical: [0.5, 2, 8],
} as const;

/** What one recording of the test signal at the main seat tells. */
export const recordingFacts = family('recording', {
  polarityMeasured: {
    ...RECORDED,
    label: 'polarity by a recording',
    ask: 'Does a recording of the test signal show one loudspeaker with reversed polarity?',
    hint: 'Unknown is fine; a phone can tell it.',
    why: 'A recording compares all three directly, whatever the marks on the cables say.',
    findOut: HOW,
    choices: {
      alike: 'all three alike',
      'center-inverted': 'the center is reversed',
      'left-inverted': 'left is reversed',
      'right-inverted': 'right is reversed',
    },
  },
  reflectionMeasuredMs: {
    ...RECORDED,
    label: 'delay of the strongest early reflection',
    ask: 'How many milliseconds after the center does its strongest reflection arrive, by a recording?',
    hint: 'For example 1.4 ms. Unknown is fine.',
    why: 'It tells how far the surface is that colors the voice.',
    findOut: HOW,
    unit: 'ms',
    possible: [0.5, 30],
    plausible: [0.7, 20],
    typical: [1, 3, 8],
  },
  reflectionMeasuredDb: {
    ...RECORDED,
    label: 'strength of the strongest early reflection',
    ask: 'How strong is that reflection against the direct sound of the center?',
    hint: 'For example -6 dB. Unknown is fine.',
    why: 'A strong one colors the voice, a weak one does not.',
    findOut: HOW,
    unit: 'dB',
    possible: [-60, 20],
    plausible: [-25, 3],
    typical: [-15, -8, -3],
  },
  clarityMeasuredDb: {
    ...RECORDED,
    label: 'clarity C50 of the center',
    ask: 'What clarity (C50) does a recording of the center show at the main seat?',
    hint: 'For example 8 dB. Unknown is fine.',
    why: 'It says how much of a syllable is blurred by the room.',
    findOut: HOW,
    unit: 'dB',
    possible: [-20, 40],
    plausible: [-3, 20],
    typical: [2, 6, 10],
  },
  distortionCenter: {
    ...DISTORTION,
    label: 'distortion of the center, in percent',
    ask: 'How much distortion of the center does a recording show, in percent?',
    hint: 'For example 0.8. Unknown is fine.',
    why: 'Far more than the mains means a driver that rubs or a box that strains.',
  },
  distortionMains: {
    ...DISTORTION,
    label: 'distortion of the mains, in percent',
    ask: 'How much distortion of left or right does the same recording show, in percent?',
    hint: 'The larger of the two. Unknown is fine.',
    why: 'The recorder’s own share is in all three alike.',
  },
  toneMeasuredDb: {
    ...RECORDED,
    label: 'worst third octave of the center against the mains',
    ask: 'By how many decibels does the center differ from the mains in the third octave that differs most, by a recording?',
    hint: 'Levels made equal first: + more, - less. Unknown is fine.',
    why: 'The same recorder hears all three, so what differs is the loudspeakers and their places.',
    findOut: HOW,
    unit: 'dB',
    sides: { plus: 'too much', minus: 'too little' },
    possible: [-60, 60],
    plausible: [-20, 20],
    typical: [-5, -2, 4],
  },
  toneMeasuredHz: {
    ...RECORDED,
    label: 'middle of that third octave',
    ask: 'At what frequency does the center differ most from the mains, by a recording?',
    hint: 'For example 4000 Hz. Unknown is fine.',
    why: 'Presence, body and air of a voice each have their place.',
    findOut: HOW,
    unit: 'Hz',
    possible: [20, 20000],
    plausible: [150, 12000],
    typical: [400, 1600, 5000],
  },
});
