/** Calculators about tone: equalizer filters, bass, speech, and measured responses. */
import { BASS_HIGH_PASSES, bassSum, ENCLOSURES } from '../../acoustics/bass.js';
import { FILTER_TYPES, filter, SAMPLE_RATE_HZ } from '../../acoustics/filter.js';
import { speechLoss } from '../../acoustics/speech.js';
import { tonalMatch } from '../../acoustics/tonal.js';
import { SOURCES } from '../../rules/sources.js';
import { FREQUENCY, frequency, LEVEL } from './bounds.js';
import { define } from './calculator.js';
import { choice, flag, number, numbers, optional, path, usually } from './input-kinds.js';
import { readResponses } from './response-files.js';

export const filterCalculator = define({
  name: 'filter',
  title: 'Equalizer filter',
  answers: 'What does one filter of an equalizer do at these frequencies?',
  inputs: {
    type: choice(FILTER_TYPES, 'type of the filter', 'peaking'),
    frequencyHz: frequency('center of a peak, middle of the slope of a shelf', '1000'),
    gainDb: number('boost, or cut where negative', '-4', { unit: 'dB', min: -60, max: 60 }),
    q: number('narrowness', '2', { above: 0, max: 1000 }),
    sampleRateHz: usually(
      SAMPLE_RATE_HZ,
      number('sample rate of the processor', '48000', { ...FREQUENCY, max: 10_000_000 }),
    ),
    frequenciesHz: numbers(
      'frequencies at which the result is wanted, up to half the sample rate',
      '100,1000,10000',
      { unit: 'Hz', min: 0, max: 10_000_000 },
    ),
  },
  outputs: { magnitudeDb: { unit: 'dB', meaning: 'gain at each frequency' } },
  formula:
    'digital second-order filter; all of the gain at the center of a peak, half of it at the corner of a shelf',
  validity: 'A processor that works at this sample rate.',
  source: {
    cite: 'W3C Audio EQ Cookbook (peaking terms read, shelf terms from memory and proved by tests)',
    mark: 'read',
  },
  example: 'type=peaking frequencyHz=2500 gainDb=-4 q=2 frequenciesHz=1000,2500,5000',
  run: (values) => filter(values),
});

export const bassSumCalculator = define({
  name: 'bass-sum',
  title: 'Hole between center and subwoofer',
  answers: 'How deep is the hole around the crossover, and where?',
  inputs: {
    crossoverHz: number('crossover set for the center', '80', { unit: 'Hz', min: 10, max: 1000 }),
    enclosure: choice(ENCLOSURES, 'enclosure of the center', 'sealed'),
    lowLimitHz: number('low limit of the center, at -3 dB', '90', { unit: 'Hz', min: 1, max: 1000 }),
    highPass: usually('LR4', choice(BASS_HIGH_PASSES, 'high-pass of the processor for the center', 'LR4')),
    subDelayMs: usually(
      0,
      number('delay of the subwoofer against the center, late positive', '3', {
        unit: 'ms',
        min: -1000,
        max: 1000,
      }),
    ),
    subInverted: usually(false, flag('whether the subwoofer has reversed polarity', 'true')),
  },
  outputs: {
    dipDb: { unit: 'dB', meaning: 'deepest point between 40 and 300 Hz' },
    dipHz: { unit: 'Hz', meaning: 'where it is' },
  },
  formula:
    'high-pass * box + low-pass (LR4) * sub (second-order Butterworth, 15 Hz) * exp(-j omega delay); box sealed second order Q 0.707, vented fourth-order Butterworth',
  validity: 'The loudspeakers alone; the room adds its own peaks and dips.',
  source: SOURCES['bass-sum'],
  example: 'crossoverHz=80 enclosure=sealed lowLimitHz=90',
  run: (values) => bassSum(values),
});

export const speechLossCalculator = define({
  name: 'speech-loss',
  title: 'What speech loses',
  answers: 'How much does a loss in each band cost speech?',
  inputs: {
    bandLossDb: numbers(
      'loss in the third-octave bands 160 Hz to 8 kHz',
      '0,0,0,0,0,0,0,0,0,0,0,6,6,6,0,0,0,0',
      { ...LEVEL, lengths: [18] },
    ),
  },
  outputs: { lossDb: { unit: 'dB', meaning: 'weighted mean loss' } },
  formula: 'sum of importance * loss; the importances sum to 1',
  validity: 'Where the voice is above noise and room; a loss of x dB then costs up to x / 30 of the index.',
  source: SOURCES['speech-index'],
  example: 'bandLossDb=0,0,0,0,0,0,0,0,0,0,0,6,6,6,0,0,0,0',
  run: (values) => speechLoss(values),
});

const response = (channel: string) =>
  path(`response of ${channel} as text: frequency in Hz and level in dB on each line`, `${channel}.txt`);

export const tonalMatchCalculator = define({
  name: 'tonal-match',
  title: 'Center against mains, measured',
  answers: 'Does the center sound like the mains, and which filters would bring it closer?',
  inputs: {
    left: response('left'),
    center: response('center'),
    right: response('right'),
    lowLimitHz: optional(
      number('where the bass of the center ends, usually 80 Hz; nothing is boosted below', '80', {
        ...FREQUENCY,
        max: 1000,
      }),
    ),
  },
  outputs: {
    levelOffsetDb: { unit: 'dB', meaning: 'center minus mains, median over 300 to 3000 Hz' },
    rmsDb: { unit: 'dB', meaning: 'rms of the third-octave differences, offset taken out' },
    worstBandHz: { unit: 'Hz', meaning: 'band with the largest difference' },
    worstBandDb: { unit: 'dB', meaning: 'that difference, center above mains positive' },
    bandsOver3Db: { unit: '', meaning: 'bands that differ by more than 3 dB' },
    filters: {
      unit: '',
      meaning: 'filters for the center (48 kHz); set its level again after them; none where none helps',
    },
  },
  formula:
    'each response on a grid of 48 points per octave; mains = power mean of left and right; offset = median; differences of third-octave power means 200 Hz to 8 kHz; at most 2 shelves and 3 peaks within bounds',
  validity: 'Three measurements from the same place, at least 300 to 3000 Hz.',
  source: { cite: 'method of this project, tested against a synthetic case', mark: 'computed' },
  example: 'left=left.txt center=center.txt right=right.txt',
  run: ({ left, center, right, lowLimitHz }, port) => {
    const responses = readResponses({ left, center, right }, port);
    const match = tonalMatch({ ...responses, lowLimitHz });
    for (const warning of match.warnings) port.tell(warning);
    return match;
  },
});
