/** Every number a model takes is refused by name when it is no number: no NaN gets downstream, and the message says which. */
import { describe, expect, it } from 'vitest';
import * as arrival from '../../src/acoustics/arrival.js';
import * as bands from '../../src/acoustics/bands.js';
import * as barrier from '../../src/acoustics/barrier.js';
import * as bass from '../../src/acoustics/bass.js';
import * as bay from '../../src/acoustics/bay.js';
import * as comb from '../../src/acoustics/comb.js';
import * as crossover from '../../src/acoustics/crossover.js';
import * as elevation from '../../src/acoustics/elevation.js';
import * as filter from '../../src/acoustics/filter.js';
import * as layouts from '../../src/acoustics/layouts.js';
import * as lobing from '../../src/acoustics/lobing.js';
import * as offaxis from '../../src/acoustics/offaxis.js';
import * as phantom from '../../src/acoustics/phantom.js';
import * as polarity from '../../src/acoustics/polarity.js';
import * as reflection from '../../src/acoustics/reflection.js';
import * as screen from '../../src/acoustics/screen.js';
import * as extras from '../../src/acoustics/screen-extras.js';
import * as shelf from '../../src/acoustics/shelf.js';
import * as speech from '../../src/acoustics/speech.js';
import * as upmix from '../../src/acoustics/upmix.js';
import * as vectors from '../../src/acoustics/vectors.js';
import * as held from '../support/heldModels.js';
import * as precedence from '../support/precedence.js';
import * as speechIndex from '../support/speechIndex.js';

type Numbers = Record<string, number>;
/** A model as a function of numbers by name, and numbers it takes. */
type Row = readonly [name: string, numbers: Numbers, call: (numbers: Numbers) => unknown];

const SIGHT = { sourceHeightM: 0.6, earHeightM: 1.1, earDistanceM: 3, headDistanceM: 2, headTopM: 1.2 };
const BAY = {
  bayWidthM: 0.8,
  bayHeightM: 0.3,
  bayDepthM: 0.4,
  speakerWidthM: 0.5,
  speakerHeightM: 0.2,
  speakerDepthM: 0.3,
  recessM: 0.05,
};
const HOLES = { holeDiameterM: 0.001, thicknessM: 0.0004, openArea: 0.05, holeInteraction: 0.9 };
const WOVEN = { flowResistance: 40, effectiveLengthM: 0.0005, massKgM2: 0.3 };
const STRIP = { heightAboveShelfM: 0.1, earAboveShelfM: 0.4, distanceM: 2.5, reflection: 0.9 };
const BOX = { enclosure: 'sealed', highPass: 'BW2' } as const;
const PERFORATED = { kind: 'perforated', ...HOLES } as const;
const at = (x: number): arrival.Point => [x, 0];
const places = { left: at(-1.5), center: at(0), right: at(1.5), seat: [0.2, 3] as arrival.Point };

const pick = (n: Numbers, key: string): number => n[key] as number;
const DRIVER = { xM: 0, zM: 0, yM: 0, radiusM: 0.05, weight: 1 };

const ROWS: readonly Row[] = [
  ['stepError', { stepM: 0.1, speedOfSound: 343 }, (n) => arrival.stepError(n as never)],
  [
    'unitErrorRatio',
    { enteredM: 3, trueM: 3 },
    (n) => arrival.unitErrorRatio(pick(n, 'enteredM'), pick(n, 'trueM')),
  ],
  ['unitSlip', { ratio: 1 }, (n) => arrival.unitSlip(pick(n, 'ratio'))],
  ['arrival', { speedOfSound: 343, processorSpeed: 343 }, (n) => arrival.arrival({ ...places, ...n })],
  [
    'arrival with entries',
    { 'entered.left': 3, 'entered.center': 3, 'entered.right': 3 },
    (n) => arrival.arrival({ ...places, entered: trio(n, 'entered.') }),
  ],
  [
    'arrival with latencies',
    { 'latencyMs.left': 0, 'latencyMs.center': 3, 'latencyMs.right': 0 },
    (n) => arrival.arrival({ ...places, latencyMs: trio(n, 'latencyMs.') }),
  ],
  ['thirdOctaveEdgesHz', { centerHz: 1000 }, (n) => bands.thirdOctaveEdgesHz(pick(n, 'centerHz'))],
  ['logGrid', { fromHz: 100, toHz: 1000 }, (n) => bands.logGrid(pick(n, 'fromHz'), pick(n, 'toHz'), 5)],
  ['barrier', { fresnelNumber: 1 }, (n) => barrier.barrier(n as never)],
  ['sightline', SIGHT, (n) => barrier.sightline(n as never)],
  ['headLossAtSeat', SIGHT, (n) => barrier.headLossAtSeat(n as never)],
  ['barrierLossAtSeat', SIGHT, (n) => barrier.barrierLossAtSeat(n as never)],
  [
    'rigidSphereDb',
    { radiusM: 0.09, sourceDistanceM: 2, receiverDistanceM: 1, cosAngle: -1, frequencyHz: 1000 },
    (n) => barrier.rigidSphereDb(n as never),
  ],
  [
    'bassSum',
    { crossoverHz: 80, lowLimitHz: 60, subDelayMs: 1 },
    (n) => bass.bassSum({ ...BOX, ...n } as never),
  ],
  [
    'lowestCrossoverHz',
    { lowLimitHz: 60, maxHoleDb: 3 },
    (n) => bass.lowestCrossoverHz({ ...BOX, ...n } as never),
  ],
  [
    'delayErrorAtCrossoverDb',
    { crossoverHz: 80 },
    (n) => held.delayErrorAtCrossoverDb(pick(n, 'crossoverHz'), 1),
  ],
  ['bay', BAY, (n) => bay.bay(n as never)],
  ['bayResponse', { ...BAY, stuffingPaSPerM2: 1000 }, (n) => bay.bayResponse(n as never)],
  ['recess', { recessM: 0.2, mouthWidthM: 0.8, mouthHeightM: 0.3 }, (n) => bay.recess(n as never)],
  ['flushGainDb', { frequencyHz: 200 }, (n) => bay.flushGainDb(pick(n, 'frequencyHz'))],
  ['comb', { delayMs: 1, relativeLevelDb: -3 }, (n) => comb.comb(n as never)],
  [
    'smoothedRippleDb',
    { delayMs: 1, relativeLevelDb: -3, frequencyHz: 500 },
    (n) => comb.smoothedRippleDb(n as never),
  ],
  ['erbHz', { frequencyHz: 500 }, (n) => comb.erbHz(pick(n, 'frequencyHz'))],
  ['erbNumber', { frequencyHz: 500 }, (n) => held.erbNumber(pick(n, 'frequencyHz'))],
  [
    'sharedCombAtSeat',
    { centerGain: 1, sideGain: 0.5, speedOfSound: 343 },
    (n) => comb.sharedCombAtSeat({ ...places, delaysMs: { left: 0, center: 0, right: 0 }, ...n } as never),
  ],
  [
    'lowPass',
    { frequencyHz: 500, crossoverHz: 1000 },
    (n) => crossover.lowPass('LR4', pick(n, 'crossoverHz'), pick(n, 'frequencyHz')),
  ],
  [
    'elevation',
    { sourceHeightM: 0.5, earHeightM: 1, tiltUpDeg: 3, distanceM: 3 },
    (n) => elevation.elevation(n as never),
  ],
  ['azimuthDeg', { offsetM: 0.5, distanceM: 3 }, (n) => elevation.azimuthDeg(n as never)],
  [
    'filter',
    { frequencyHz: 1000, gainDb: 3, q: 1, sampleRateHz: 48_000 },
    (n) => filter.filter({ type: 'peaking', frequenciesHz: [500], ...n } as never),
  ],
  [
    'layoutDrivers',
    { spacingM: 0.3, tweeterSpacingM: 0.1, crossoverHz: 2500, lowCrossoverHz: 400, midRadiusM: 0.05 },
    (n) => layouts.layoutDrivers('full-range', n),
  ],
  ['mtmThresholdK', { targetDipDb: 3 }, (n) => lobing.mtmThresholdK('LR4', pick(n, 'targetDipDb'))],
  [
    'mtmFirstNullRatio',
    { spacingInWavelengths: 1 },
    (n) => held.mtmFirstNullRatio('LR4', pick(n, 'spacingInWavelengths')),
  ],
  ['pairNull', { spacingM: 0.3, angleDeg: 20 }, (n) => lobing.pairNull(n as never)],
  [
    'lobingAngle',
    { spacingM: 0.3, crossoverHz: 2500, targetDipDb: 3 },
    (n) => lobing.lobingAngle(n as never),
  ],
  [
    'offAxis',
    { azimuthDeg: 10, elevationDeg: 2, distanceM: 3, speedOfSound: 343 },
    (n) => offaxis.offAxis({ drivers: [DRIVER], ...n } as never),
  ],
  [
    'offAxisDip',
    { fromHz: 300, toHz: 4000 },
    (n) => offaxis.offAxisDip({ drivers: [DRIVER], azimuthDeg: 10, ...n } as never),
  ],
  [
    'thresholdAngle',
    { targetDipDb: 3 },
    (n) => offaxis.thresholdAngle({ drivers: [DRIVER], plane: 'horizontal', ...n } as never),
  ],
  [
    'interauralDelayMs',
    { angleDeg: 30, speedOfSound: 343 },
    (n) => phantom.interauralDelayMs(pick(n, 'angleDeg'), pick(n, 'speedOfSound')),
  ],
  ['crosstalkNullHz', { halfAngleDeg: 30 }, (n) => phantom.crosstalkNullHz(pick(n, 'halfAngleDeg'))],
  ['phantom', { halfAngleDeg: 30, timeMs: 0.2, levelDb: 2 }, (n) => phantom.phantom(n)],
  ['phantomAtSeat', { halfBaseM: 1.5, distanceM: 3, seatXM: 0.2 }, (n) => phantom.phantomAtSeat(n as never)],
  [
    'sweetSpotWidthM',
    { halfBaseM: 1.5, distanceM: 3, maxShiftDeg: 5 },
    (n) => held.sweetSpotWidthM(n as never),
  ],
  [
    'sharedPolarityChangeDb',
    { sideGain: 0.5, centerGain: 1 },
    (n) => polarity.sharedPolarityChangeDb(n as never),
  ],
  ['erfc', { x: 1 }, (n) => precedence.erfc(pick(n, 'x'))],
  [
    'precedenceImage',
    { leadDeg: 30, lagDeg: -30, delayMs: 1, levelDb: 3 },
    (n) => precedence.precedenceImage(n as never),
  ],
  [
    'levelToRecenterDb',
    { delayMs: 1, halfAngleDeg: 30 },
    (n) => precedence.levelToRecenterDb(pick(n, 'delayMs'), pick(n, 'halfAngleDeg')),
  ],
  [
    'floorBounce',
    { sourceHeightM: 0.5, earHeightM: 1, distanceM: 3, reflection: 0.9 },
    (n) => reflection.floorBounce(n as never),
  ],
  [
    'frontWall',
    { wallDistanceM: 0.3, listeningDistanceM: 3, reflection: 0.9 },
    (n) => reflection.frontWall(n as never),
  ],
  ['boundaryGainDb', { frequencyHz: 100 }, (n) => held.boundaryGainDb({ distancesM: [0.5], ...n } as never)],
  [
    'boundaryGainDb of two walls',
    { 'distancesM[0]': 0.5, 'distancesM[1]': 0.7 },
    (n) => held.boundaryGainDb({ distancesM: Object.values(n), frequencyHz: 100 }),
  ],
  [
    'screenBackWave',
    { gapM: 0.1, distanceM: 3, backReflection: 0.9 },
    (n) => held.screenBackWave({ screen: PERFORATED, ...n } as never),
  ],
  ['shelfCompensation', { maxBoostDb: 6 }, (n) => extras.shelfCompensation({ lossDb: () => 2, ...n })],
  [
    'perforated screen',
    { ...HOLES, angleDeg: 10, sheetMassKgM2: 0.4 },
    (n) => screen.screen({ kind: 'perforated', frequenciesHz: [5000], ...n } as never),
  ],
  ['woven screen', WOVEN, (n) => screen.screen({ kind: 'woven', frequenciesHz: [5000], ...n } as never)],
  [
    'screenImpedance',
    { frequencyHz: 5000 },
    (n) => screen.screenImpedance(PERFORATED, pick(n, 'frequencyHz')),
  ],
  ['openArea', { holesPerM2: 50_000, holeDiameterM: 0.001 }, (n) => screen.openArea(n as never)],
  ['screenF3Hz', HOLES, (n) => held.screenF3Hz(n as never)],
  ['massLawDb', { massKgM2: 0.4, frequencyHz: 5000 }, (n) => screen.massLawDb(n as never)],
  ['tweeterPowerFactor', { boostDb: 3 }, (n) => held.tweeterPowerFactor(pick(n, 'boostDb'))],
  ['shelfStrip', { ...STRIP, exposedDepthM: 0.3, frequencyHz: 1000 }, (n) => shelf.shelfStrip(n as never)],
  [
    'tableStrip',
    { ...STRIP, nearEdgeM: 0.5, farEdgeM: 1.2, widthM: 1, frequencyHz: 1000 },
    (n) => shelf.tableStrip(n as never),
  ],
  [
    'speechLoss',
    { 'bandLossDb[3]': 2 },
    (n) =>
      speech.speechLoss({
        bandLossDb: Array.from({ length: 18 }, (_, i) => (i === 3 ? pick(n, 'bandLossDb[3]') : 1)),
      }),
  ],
  [
    'speechIndex',
    { 'speechDb[17]': 40, 'noiseDb[0]': 30, 'hearingLossDb[5]': 10, 'importance[2]': 0.1 },
    (n) =>
      speechIndex.speechIndex({
        speechDb: bandsWith(n, 'speechDb', 17),
        noiseDb: bandsWith(n, 'noiseDb', 0),
        hearingLossDb: bandsWith(n, 'hearingLossDb', 5),
        importance: bandsWith(n, 'importance', 2),
      }),
  ],
  ['upmixGains', { panDeg: 30, extraction: 0.5 }, (n) => upmix.upmixGains(pick(n, 'panDeg'), n as never)],
  [
    'upmixGains of the matrix',
    { matrixDeg: 30 },
    (n) => upmix.upmixGains(30, { law: 'matrix', ...n } as never),
  ],
  [
    'widthRetained',
    { halfAngleDeg: 30 },
    (n) => upmix.widthRetained({ extraction: 1 } as never, pick(n, 'halfAngleDeg')),
  ],
  ['diffuse', { leak: 0.5, extraction: 0.5 }, (n) => held.diffuse(n as never)],
  [
    'offSeatImage',
    { seatXM: 0.3, distanceM: 3, halfBaseM: 1.5, speedOfSound: 343 },
    (n) => upmix.offSeatImage({ extraction: 0.5, ...n } as never),
  ],
  ['energyVector', { gain: 1, angleDeg: 10 }, (n) => vectors.energyVector([n as never])],
];

const bandsWith = (n: Numbers, name: string, band: number) =>
  Array.from({ length: 18 }, (_, i) => (i === band ? pick(n, `${name}[${band}]`) : 1));

const trio = (n: Numbers, prefix: string) => ({
  left: pick(n, `${prefix}left`),
  center: pick(n, `${prefix}center`),
  right: pick(n, `${prefix}right`),
});

describe('what is no number is refused by its name', () => {
  for (const [name, numbers, call] of ROWS)
    describe(name, () => {
      it('and good numbers are taken', () => {
        expect(() => call(numbers)).not.toThrow();
      });
      it.each(Object.keys(numbers))('%s', (key) => {
        expect(() => call({ ...numbers, [key]: Number.NaN })).toThrow(`${key} is NaN; accepted: `);
      });
    });
});
