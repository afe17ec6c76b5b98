/** Calculators about tone: screens, equalizer filters, bass, speech, and measured responses. */
import { BASS_HIGH_PASSES, bassSum, ENCLOSURES } from '../../acoustics/bass.js';
import { FILTER_TYPES, filter, SAMPLE_RATE_HZ } from '../../acoustics/filter.js';
import { HOLE_INTERACTION, type Screen, screen } from '../../acoustics/screen.js';
import { speechLoss } from '../../acoustics/speech.js';
import { tonalMatch } from '../../acoustics/tonal.js';
import type { Problem } from '../../facts/user-error.js';
import { SOURCES } from '../../rules/sources.js';
import { FREQUENCY, LEVEL, SHARE } from './bounds.js';
import { define } from './calculator.js';
import { choice, flag, number, numbers, optional, path, usually } from './input-kinds.js';
import { readResponses } from './response-files.js';

const frequenciesHz = numbers({
  ...FREQUENCY,
  meaning: 'frequencies at which the result is wanted',
  example: '2000,8000,16000',
});

const PERFORATED = [
  'holeDiameterM',
  'thicknessM',
  'openArea',
  'holesPerM2',
  'sheetMassKgM2',
  'holeInteraction',
] as const;
const WOVEN = ['flowResistance', 'massKgM2', 'effectiveLengthM'] as const;
const NEEDED = { perforated: ['holeDiameterM', 'thicknessM'], woven: WOVEN } as const;

const SCREEN_EXAMPLES = {
  perforated:
    'kind=perforated holeDiameterM=0.0005 thicknessM=0.0003 holesPerM2=323000 sheetMassKgM2=0.4 frequenciesHz=2000,8000,16000',
  woven: 'kind=woven flowResistance=100 massKgM2=0.35 effectiveLengthM=0.007 frequenciesHz=2000,8000,16000',
} as const;

type ScreenValues = { readonly kind: 'perforated' | 'woven' } & {
  readonly [K in (typeof PERFORATED)[number] | (typeof WOVEN)[number]]: number | undefined;
};

function screenConflicts(values: ScreenValues): Problem[] {
  const { kind } = values;
  const example = `center-audit calc screen ${SCREEN_EXAMPLES[kind]}`;
  const foreign = (kind === 'perforated' ? WOVEN : PERFORATED).filter((key) => values[key] !== undefined);
  const own: readonly string[] = kind === 'perforated' ? PERFORATED : WOVEN;
  const problems: Problem[] = [
    ...NEEDED[kind]
      .filter((key) => values[key] === undefined)
      .map((key) => ({
        where: `calc screen, ${key}`,
        what: `is missing: a ${kind} screen needs it`,
        accepted: own.join(', '),
        example,
      })),
    ...foreign.map((key) => ({
      where: `calc screen, ${key}`,
      what: `does not belong to a ${kind} screen`,
      accepted: own.join(', '),
      example,
    })),
  ];
  const areas = [values.openArea, values.holesPerM2].filter((given) => given !== undefined).length;
  if (kind === 'perforated' && areas !== 1) {
    problems.push({
      where: 'calc screen',
      what: `openArea and holesPerM2 are ${areas === 0 ? 'both missing' : 'both given'}`,
      accepted: 'one of the two',
      example,
    });
  }
  return problems;
}

/** A value that the check has made sure of. */
function sure(value: number | undefined): number {
  if (value === undefined) throw new Error('checked before');
  return value;
}

function screenOf(values: ScreenValues): Screen {
  if (values.kind === 'woven') {
    return {
      kind: 'woven',
      flowResistance: sure(values.flowResistance),
      massKgM2: sure(values.massKgM2),
      effectiveLengthM: sure(values.effectiveLengthM),
    };
  }
  const { openArea, holesPerM2, sheetMassKgM2, holeInteraction } = values;
  return {
    kind: 'perforated',
    holeDiameterM: sure(values.holeDiameterM),
    thicknessM: sure(values.thicknessM),
    openArea,
    holesPerM2,
    sheetMassKgM2,
    holeInteraction,
  };
}

export const screenCalculator = define({
  name: 'screen',
  title: 'Loss through a screen',
  answers: 'How much treble does an acoustically transparent screen take?',
  inputs: {
    kind: choice({ words: ['perforated', 'woven'], meaning: 'kind of the screen', example: 'perforated' }),
    holeDiameterM: optional(
      number({ unit: 'm', above: 0, max: 0.1, meaning: 'diameter of a hole', example: '0.0005' }),
    ),
    thicknessM: optional(
      number({ unit: 'm', above: 0, max: 0.1, meaning: 'thickness of the sheet', example: '0.0003' }),
    ),
    openArea: optional(
      number({
        above: 0,
        max: 0.9069,
        meaning: 'open part of the area; this or holesPerM2',
        example: '0.06',
      }),
    ),
    holesPerM2: optional(
      number({
        unit: '1/m2',
        above: 0,
        max: 1e9,
        meaning: 'number of holes; this or openArea',
        example: '323000',
      }),
    ),
    sheetMassKgM2: optional(
      number({
        unit: 'kg/m2',
        above: 0,
        max: 1000,
        meaning: 'mass of the sheet; without it the sheet does not move',
        example: '0.4',
      }),
    ),
    holeInteraction: optional(
      number({
        ...SHARE,
        meaning: `how far neighboring holes relieve each other, usually ${HOLE_INTERACTION}`,
        example: String(HOLE_INTERACTION),
      }),
    ),
    flowResistance: optional(
      number({ unit: 'Pa s/m', min: 0, max: 1e6, meaning: 'flow resistance of the cloth', example: '100' }),
    ),
    massKgM2: optional(
      number({ unit: 'kg/m2', above: 0, max: 1000, meaning: 'mass of the cloth', example: '0.35' }),
    ),
    effectiveLengthM: optional(
      number({
        unit: 'm',
        min: 0,
        max: 1,
        meaning: 'length of the air that moves with the openings',
        example: '0.007',
      }),
    ),
    angleDeg: usually(
      0,
      number({
        unit: 'deg',
        min: -89,
        max: 89,
        meaning: 'direction of the sound from square on',
        example: '30',
      }),
    ),
    frequenciesHz,
  },
  outputs: { lossDb: { unit: 'dB', meaning: 'loss at each frequency' } },
  formula:
    'T = 1 / (1 + z cos(angle) / (2 rho c)); z = openings in parallel with the mass of the sheet; round holes with viscous flow, 1 - 2 J1(q) / (q J0(q)), end mass 0.85 d * interaction; cloth R + j omega rho L',
  validity: 'A single sheet in free air; the gap to the loudspeaker behind adds ripple.',
  source: SOURCES['screen-sheet'],
  example: SCREEN_EXAMPLES.perforated,
  conflicts: screenConflicts,
  run: ({ angleDeg, frequenciesHz: wanted, ...sheet }) =>
    screen({ ...screenOf(sheet), angleDeg, frequenciesHz: wanted }),
});

export const filterCalculator = define({
  name: 'filter',
  title: 'Equalizer filter',
  answers: 'What does one filter of an equalizer do at these frequencies?',
  inputs: {
    type: choice({ words: FILTER_TYPES, meaning: 'type of the filter', example: 'peaking' }),
    frequencyHz: number({
      ...FREQUENCY,
      meaning: 'center of a peak, middle of the slope of a shelf',
      example: '1000',
    }),
    gainDb: number({ unit: 'dB', min: -60, max: 60, meaning: 'boost, or cut where negative', example: '-4' }),
    q: number({ above: 0, max: 1000, meaning: 'narrowness', example: '2' }),
    sampleRateHz: usually(
      SAMPLE_RATE_HZ,
      number({ ...FREQUENCY, max: 10_000_000, meaning: 'sample rate of the processor', example: '48000' }),
    ),
    frequenciesHz: numbers({
      unit: 'Hz',
      min: 0,
      max: 10_000_000,
      meaning: 'frequencies at which the result is wanted, up to half the sample rate',
      example: '100,1000,10000',
    }),
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
    crossoverHz: number({
      unit: 'Hz',
      min: 10,
      max: 1000,
      meaning: 'crossover set for the center',
      example: '80',
    }),
    enclosure: choice({ words: ENCLOSURES, meaning: 'enclosure of the center', example: 'sealed' }),
    lowLimitHz: number({
      unit: 'Hz',
      min: 1,
      max: 1000,
      meaning: 'low limit of the center, at -3 dB',
      example: '90',
    }),
    highPass: usually(
      'LR4',
      choice({
        words: BASS_HIGH_PASSES,
        meaning: 'high-pass of the processor for the center',
        example: 'LR4',
      }),
    ),
    subDelayMs: usually(
      0,
      number({
        unit: 'ms',
        min: -1000,
        max: 1000,
        meaning: 'delay of the subwoofer against the center, late positive',
        example: '3',
      }),
    ),
    subInverted: usually(
      false,
      flag({ meaning: 'whether the subwoofer has reversed polarity', example: 'true' }),
    ),
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
    bandLossDb: numbers({
      ...LEVEL,
      lengths: [18],
      meaning: 'loss in the third-octave bands 160 Hz to 8 kHz',
      example: '0,0,0,0,0,0,0,0,0,0,0,6,6,6,0,0,0,0',
    }),
  },
  outputs: { lossDb: { unit: 'dB', meaning: 'weighted mean loss' } },
  formula: 'sum of importance * loss; the importances sum to 1',
  validity: 'Where the voice is above noise and room; a loss of x dB then costs up to x / 30 of the index.',
  source: SOURCES['speech-index'],
  example: 'bandLossDb=0,0,0,0,0,0,0,0,0,0,0,6,6,6,0,0,0,0',
  run: (values) => speechLoss(values),
});

const response = (channel: string) =>
  path({
    meaning: `response of ${channel} as text: frequency in Hz and level in dB on each line`,
    example: `${channel}.txt`,
  });

export const tonalMatchCalculator = define({
  name: 'tonal-match',
  title: 'Center against mains, measured',
  answers: 'Does the center sound like the mains, and which filters would bring it closer?',
  inputs: {
    left: response('left'),
    center: response('center'),
    right: response('right'),
    lowLimitHz: optional(
      number({
        ...FREQUENCY,
        max: 1000,
        meaning: 'where the bass of the center ends, usually 80 Hz; nothing is boosted below',
        example: '80',
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
  run: async ({ left, center, right, lowLimitHz }, tell) => {
    const responses = await readResponses({ left, center, right }, tell);
    const match = tonalMatch({ ...responses, lowLimitHz });
    for (const warning of match.warnings) tell(warning);
    return match;
  },
});
