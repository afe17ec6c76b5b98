/** Calculators about the image: where it is heard between two loudspeakers, and what an upmix makes of it. */
import { phantom } from '../../acoustics/phantom.js';
import { UPMIX_LAWS, upmix } from '../../acoustics/upmix.js';
import type { Problem } from '../../lib/user-error.js';
import { SOURCES } from '../../rules/sources.js';
import { level, share } from './bounds.js';
import { define } from './calculator.js';
import { choice, number, optional, usually } from './input-kinds.js';

export const phantomCalculator = define({
  name: 'phantom',
  title: 'Image between two loudspeakers',
  answers: 'Where is a sound heard that both mains play with this difference of level and time?',
  inputs: {
    levelDb: usually(0, level('how much louder left is than right', '6')),
    timeMs: usually(
      0,
      number('how much earlier left is than right', '0.3', { unit: 'ms', min: -1000, max: 1000 }),
    ),
    halfAngleDeg: usually(
      30,
      number('direction of each main from the middle, seen from the seat', '30', {
        unit: 'deg',
        above: 0,
        max: 90,
      }),
    ),
  },
  outputs: {
    imageDeg: { unit: 'deg', meaning: 'where the sound is heard, left positive' },
    crosstalkNullHz: { unit: 'Hz', meaning: 'first dip of a phantom center at each ear' },
  },
  formula:
    'shift = level / 17 dB + time / full time (1 ms at +-30 deg, scaled by the ear delay a (t + sin t) / c); two thirds of the half base at half shift, the rest at half the rate; dip at 1 / (2 ear delay)',
  validity:
    'Speech and music from a pair of loudspeakers in front. Beyond full shift the sound sits in one of them.',
  source: SOURCES['time-image'],
  example: 'levelDb=6 timeMs=0.2',
  run: (values) => phantom(values),
});

function upmixConflicts(values: {
  readonly law: string;
  readonly extraction: number | undefined;
  readonly matrixDeg: number | undefined;
}): Problem[] {
  const where = 'calc upmix';
  if (values.law === 'matrix' && values.matrixDeg === undefined) {
    return [
      {
        where: `${where}, matrixDeg`,
        what: 'is missing: the law matrix needs its angle',
        accepted: 'a number from 0 to 90',
        example: 'center-audit calc upmix panDeg=45 law=matrix matrixDeg=54.7356',
      },
    ];
  }
  if (values.law !== 'matrix' && values.extraction === undefined) {
    return [
      {
        where: `${where}, extraction`,
        what: 'is missing: part of the common content that goes to the center',
        accepted: 'a number from 0 to 1',
        example: `center-audit calc upmix ${UPMIX_EXAMPLE}`,
      },
    ];
  }
  return [];
}

const UPMIX_EXAMPLE = 'panDeg=22.5 extraction=0.5';

export const upmixCalculator = define({
  name: 'upmix',
  title: 'Two channels to three',
  answers:
    'What do left, center and right play of a panned source, where is it heard, how much width is left?',
  inputs: {
    panDeg: number('place in the mix: 0 left, 45 center, 90 right', '22.5', { unit: 'deg', min: 0, max: 90 }),
    extraction: optional(share('part of the common content taken to the center', '0.5')),
    law: usually('power', choice(UPMIX_LAWS, 'what the center gets for what the mains lose', 'power')),
    matrixDeg: optional(
      number('angle of the law matrix: 90 is plain stereo, 0 all in the center', '54.7356', {
        unit: 'deg',
        min: 0,
        max: 90,
      }),
    ),
  },
  outputs: {
    left: { unit: '', meaning: 'amplitude' },
    center: { unit: '', meaning: 'amplitude' },
    right: { unit: '', meaning: 'amplitude' },
    velocityDeg: { unit: 'deg', meaning: 'image below about 700 Hz, left positive' },
    energyDeg: { unit: 'deg', meaning: 'image above about 700 Hz, left positive' },
    widthRetainedEnergy: { unit: '', meaning: 'stage width left, energy vector, 1 is all' },
    widthRetainedVelocity: { unit: '', meaning: 'stage width left, velocity vector, 1 is all' },
  },
  formula:
    'a = cos pan, b = sin pan, m = extraction * min(a, b); left a - m, right b - m (law add: a, b); center keeps the power, keeps the pressure, or sqrt2 m; loudspeakers at +-30 and 0 deg; width = rms image angle over pans 0 to 90 against plain stereo',
  validity: 'An idealized upmix of one source at a time; real ones vary with the music.',
  source: SOURCES['upmix-arithmetic'],
  example: UPMIX_EXAMPLE,
  conflicts: upmixConflicts,
  run: ({ panDeg, extraction, law, matrixDeg }, { tell }) => {
    const idle = law === 'matrix' ? { extraction } : { matrixDeg };
    for (const [key, value] of Object.entries(idle)) {
      if (value !== undefined) tell(`The law ${law} has no ${key}: not used.`);
    }
    return upmix({
      panDeg,
      law,
      ...(extraction === undefined ? {} : { extraction }),
      ...(matrixDeg === undefined ? {} : { matrixDeg }),
    });
  },
});
