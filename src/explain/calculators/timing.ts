/** Calculators about time: speed of sound, combing, and arrival. */
import { soundSpeed } from '../../acoustics/air.js';
import { arrival, type Triple } from '../../acoustics/arrival.js';
import { comb } from '../../acoustics/comb.js';
import type { Problem } from '../../lib/user-error.js';
import { SOURCES } from '../../rules/sources.js';
import { level, POSITION } from './bounds.js';
import { define } from './calculator.js';
import { type Channels, channels, number, numbers, optional, usually } from './input-kinds.js';

export const soundSpeedCalculator = define({
  name: 'sound-speed',
  title: 'Speed of sound',
  answers: 'How fast does sound travel at this temperature?',
  inputs: {
    temperatureC: usually(20, number('temperature of the air', '25', { unit: 'C', min: -50, max: 60 })),
  },
  outputs: { metersPerSecond: { unit: 'm/s', meaning: 'speed of sound in dry air' } },
  formula: 'c = 331.3 sqrt(1 + T / 273.15)',
  validity: 'Dry air at everyday pressure; humid air is up to 0.4 percent faster.',
  source: { cite: 'ideal gas, textbook', mark: 'memory' },
  example: 'temperatureC=25',
  run: ({ temperatureC }) => ({ metersPerSecond: soundSpeed(temperatureC) }),
});

export const combCalculator = define({
  name: 'comb',
  title: 'Comb filter of a sound and its late copy',
  answers: 'Which frequencies cancel when the same sound arrives twice, and how strong is the ripple?',
  inputs: {
    delayMs: number('delay of the copy', '1', { unit: 'ms', min: 0, max: 1000 }),
    relativeLevelDb: usually(0, level('level of the copy against the first sound', '-6')),
  },
  outputs: {
    nullsHz: { unit: 'Hz', meaning: 'first three nulls; none without delay' },
    peaksHz: { unit: 'Hz', meaning: 'first three peaks above 0 Hz' },
    peakDb: { unit: 'dB', meaning: 'peaks, against the stronger sound alone' },
    dipDb: {
      unit: 'dB',
      meaning: 'nulls, against the stronger sound alone; two equal sounds cancel without a number',
    },
    rippleDb: { unit: 'dB', meaning: 'from null to peak' },
  },
  formula: 'nulls (2 n + 1) / (2 delay), peaks n / delay, levels 20 lg(1 +- a), a = 10^(-|level| / 20)',
  validity: 'Two sounds, one ear, no room. Hearing smooths the ripple toward high frequencies.',
  source: { cite: 'interference of two paths, closed form', mark: 'computed' },
  example: 'delayMs=1 relativeLevelDb=-6',
  run: (values) => comb(values),
});

const place = (meaning: string, example: string) =>
  numbers(`[x, y] or [x, y, z]: ${meaning}`, example, { ...POSITION, lengths: [2, 3] });

/** A list that is checked to name all three. */
const complete = (entered: Partial<Record<Channels, number>>) => entered as Triple<number>;

function mixedPlaces(
  values: Readonly<Record<'left' | 'center' | 'right' | 'seat', readonly number[]>>,
): Problem[] {
  const places = [values.left, values.center, values.right, values.seat];
  if (new Set(places.map(({ length }) => length)).size === 1) return [];
  return [
    {
      where: 'calc arrival',
      what: 'some places have two numbers and some three',
      accepted: 'left, center, right and seat all as [x, y] or all as [x, y, z]',
      example: `center-audit calc arrival ${ARRIVAL_EXAMPLE}`,
    },
  ];
}

const ARRIVAL_EXAMPLE =
  'left=-1.5,0 center=0,0 right=1.5,0 seat=0,3 entered.left=3.35 entered.center=3 entered.right=3.35';

export const arrivalCalculator = define({
  name: 'arrival',
  title: 'Arrival times at a seat',
  answers: 'How much earlier or later than the mains does the center arrive, with the distances entered?',
  inputs: {
    left: place('left loudspeaker, x to the right, y back from the line between the mains', '-1.5,0'),
    center: place('center', '0,0'),
    right: place('right loudspeaker', '1.5,0'),
    seat: place('ear', '0,3'),
    entered: optional(
      channels(
        'distances as entered in the menu; without them nothing is delayed',
        '\'{"left":3.35,"center":3,"right":3.35}\'',
        { unit: 'm', min: 0, max: 1000, partial: false },
      ),
    ),
    latencyMs: optional(
      channels("delay of a loudspeaker's own processing, 0 where it has none", '\'{"center":2.5}\'', {
        unit: 'ms',
        min: 0,
        max: 10_000,
        partial: true,
      }),
    ),
    processorSpeed: usually(
      343.2,
      number('speed of sound the processor reckons with', '345', { unit: 'm/s', min: 100, max: 1000 }),
    ),
  },
  outputs: {
    centerMinusMeanMs: { unit: 'ms', meaning: 'center against the mean of left and right; positive is late' },
    centerMinusLeftMs: { unit: 'ms', meaning: 'center against left' },
    centerMinusRightMs: { unit: 'ms', meaning: 'center against right' },
    leftMinusRightMs: { unit: 'ms', meaning: 'left against right' },
  },
  formula: 'arrival = distance / c + (longest entry - entry) / processor speed + latency',
  validity: 'Delay set by distances. A processor that adds a common delay changes none of the differences.',
  source: SOURCES.geometry,
  example: ARRIVAL_EXAMPLE,
  conflicts: mixedPlaces,
  run: ({ entered, ...values }) =>
    arrival({ ...values, entered: entered === undefined ? undefined : complete(entered) }),
});
