/** What the calculators say at the edges: on the axis, without delay, with nothing entered, and beyond sense. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readResponseFile } from '../../../src/disk/response-files.js';
import { CALCULATORS } from '../../../src/explain/calculators/index.js';
import { check, readWords } from '../../../src/explain/calculators/read-inputs.js';
import { calc, calcJson } from '../../support/calc.js';

/** Keys of the contract, letter by letter. */
const CONTRACT: Record<string, { inputs: string; outputs: string }> = {
  'sound-speed': { inputs: 'temperatureC', outputs: 'metersPerSecond' },
  comb: { inputs: 'delayMs relativeLevelDb', outputs: 'nullsHz peaksHz peakDb dipDb rippleDb' },
  'pair-null': { inputs: 'spacingM angleDeg', outputs: 'firstNullHz' },
  'lobing-angle': { inputs: 'spacingM crossoverHz filter targetDipDb', outputs: 'angleDeg' },
  'off-axis': {
    inputs:
      'layout drivers azimuthDeg elevationDeg distanceM spacingM tweeterSpacingM crossoverHz lowCrossoverHz filter',
    outputs: 'dipDb dipHz speechLossDb',
  },
  elevation: {
    inputs: 'sourceHeightM earHeightM distanceM tiltUpDeg',
    outputs: 'elevationDeg offAxisDeg',
  },
  'floor-bounce': {
    inputs: 'sourceHeightM earHeightM distanceM reflection',
    outputs: 'pathDifferenceM delayMs firstNullHz specularM nullDepthDb',
  },
  'front-wall': { inputs: 'wallDistanceM listeningDistanceM reflection', outputs: 'firstNullHz nullDepthDb' },
  bay: {
    inputs: 'bayWidthM bayHeightM bayDepthM speakerWidthM speakerHeightM speakerDepthM recessM',
    outputs: 'resonanceHz',
  },
  recess: { inputs: 'recessM mouthWidthM mouthHeightM', outputs: 'resonanceHz' },
  barrier: { inputs: 'fresnelNumber', outputs: 'attenuationDb maekawaDb' },
  sightline: {
    inputs: 'sourceHeightM earHeightM earDistanceM headDistanceM headTopM',
    outputs: 'clearanceM',
  },
  arrival: {
    inputs: 'left center right seat entered latencyMs processorSpeed',
    outputs: 'centerMinusMeanMs centerMinusLeftMs centerMinusRightMs leftMinusRightMs',
  },
  phantom: { inputs: 'levelDb timeMs halfAngleDeg', outputs: 'imageDeg crosstalkNullHz' },
  screen: {
    inputs:
      'kind holeDiameterM thicknessM openArea holesPerM2 sheetMassKgM2 holeInteraction flowResistance massKgM2 effectiveLengthM angleDeg frequenciesHz',
    outputs: 'lossDb',
  },
  upmix: {
    inputs: 'panDeg extraction law matrixDeg',
    outputs: 'left center right velocityDeg energyDeg widthRetainedEnergy widthRetainedVelocity',
  },
  filter: { inputs: 'type frequencyHz gainDb q sampleRateHz frequenciesHz', outputs: 'magnitudeDb' },
  'bass-sum': {
    inputs: 'crossoverHz enclosure lowLimitHz highPass subDelayMs subInverted',
    outputs: 'dipDb dipHz',
  },
  'speech-loss': { inputs: 'bandLossDb', outputs: 'lossDb' },
  'tonal-match': {
    // lowLimitHz is an extra of ours: below it nothing is boosted.
    inputs: 'left center right lowLimitHz',
    outputs: 'levelOffsetDb rmsDb worstBandHz worstBandDb bandsOver3Db filters',
  },
};

const PORT = { tell: () => {}, readResponse: readResponseFile };

describe('the table of calculators', () => {
  it('has the names and keys of the contract, in its order', () => {
    const ours = CALCULATORS.map(({ name, inputs, outputs }) => [
      name,
      { inputs: Object.keys(inputs).join(' '), outputs: Object.keys(outputs).join(' ') },
    ]);
    expect(ours).toEqual(Object.entries(CONTRACT));
  });

  it('has an example that works for each', () => {
    for (const calculator of CALCULATORS) {
      const values = check(calculator, readWords(calculator, calculator.example.split(' ')));
      if (calculator.name === 'tonal-match') continue;
      const result = calculator.run(values, PORT);
      expect(Object.keys(result)).toEqual(Object.keys(calculator.outputs));
      expect(Object.values(result)).not.toContain(null);
    }
  });

  it('names a source and says where each formula holds', () => {
    for (const { source, validity, formula } of CALCULATORS) {
      for (const text of [source.cite, validity, formula]) expect(text.length).toBeGreaterThan(3);
    }
  });
});

describe('what does not exist is null, a list of nothing is empty', () => {
  it('a pair has no null on its axis, and the same one on both sides', async () => {
    expect(await calcJson('pair-null', { spacingM: 0.26, angleDeg: 0 })).toEqual({ firstNullHz: null });
    const right = await calcJson('pair-null', { spacingM: 0.26, angleDeg: 20 });
    expect(await calcJson('pair-null', { spacingM: 0.26, angleDeg: -20 })).toEqual(right);
  });

  it('two equal sounds cancel without a depth in dB', async () => {
    const r = await calcJson('comb', { delayMs: 1 });
    expect(r.dipDb).toBeNull();
    expect(r.rippleDb).toBeNull();
    expect(r.peakDb).toBeCloseTo(6.0206, 4);
  });

  it('a copy without delay combs nothing', async () => {
    const r = await calcJson('comb', { delayMs: 0, relativeLevelDb: -6 });
    expect(r.nullsHz).toEqual([]);
    expect(r.peaksHz).toEqual([]);
    expect(r.rippleDb).toBe(0);
  });

  it('a louder copy ripples as much as one that is weaker by the same', async () => {
    const weak = await calcJson('comb', { delayMs: 1, relativeLevelDb: -6 });
    expect(await calcJson('comb', { delayMs: 1, relativeLevelDb: 6 })).toEqual(weak);
  });

  it('a short pair with a low crossover never reaches 6 dB', async () => {
    expect(await calcJson('lobing-angle', { spacingM: 0.02, crossoverHz: 1000 })).toEqual({ angleDeg: null });
    expect(
      await calcJson('lobing-angle', { spacingM: 0.3, crossoverHz: 2500, filter: 'BW3', targetDipDb: 200 }),
    ).toEqual({ angleDeg: null });
  });

  it('nothing dips on the axis of a symmetric layout', async () => {
    const r = await calcJson('off-axis', { layout: 'mid-tweeter-mid', azimuthDeg: 0 });
    expect(r).toEqual({ dipDb: 0, dipHz: null, speechLossDb: 0 });
  });

  it('a loudspeaker on the floor has no floor null', async () => {
    const r = await calcJson('floor-bounce', { sourceHeightM: 0, distanceM: 3 });
    expect(r).toEqual({
      pathDifferenceM: 0,
      delayMs: 0,
      firstNullHz: null,
      specularM: 0,
      nullDepthDb: null,
    });
  });

  it('a floor that swallows everything leaves a null of no depth', async () => {
    const r = await calcJson('floor-bounce', { sourceHeightM: 0.4, distanceM: 3, reflection: 0 });
    expect(r.nullDepthDb).toBe(0);
  });

  it('a loudspeaker in the wall has no wall null', async () => {
    expect(await calcJson('front-wall', { wallDistanceM: 0 })).toEqual({
      firstNullHz: null,
      nullDepthDb: null,
    });
  });

  it('a bay without a gap and a recess of nothing do not resonate', async () => {
    const bay = { bayWidthM: 0.5, bayHeightM: 0.2, bayDepthM: 0.4 };
    const box = { speakerWidthM: 0.5, speakerHeightM: 0.2, speakerDepthM: 0.3 };
    expect(await calcJson('bay', { ...bay, ...box })).toEqual({ resonanceHz: null });
    const flush = await calcJson('recess', { recessM: 0, mouthWidthM: 0.6, mouthHeightM: 0.2 });
    expect(flush).toEqual({ resonanceHz: null });
  });

  it('an upmix of a hard-left source by the law add leaves the others silent', async () => {
    const r = await calcJson('upmix', { panDeg: 0, extraction: 1, law: 'add' });
    expect(r).toMatchObject({ left: 1, center: 0, right: 0 });
    expect(r.velocityDeg).toBeCloseTo(30, 9);
    expect(r.energyDeg).toBeCloseTo(30, 9);
  });
});

describe('usual values', () => {
  it('sound travels at 20 C, an image without differences is in the middle', async () => {
    expect((await calcJson('sound-speed', {})).metersPerSecond).toBeCloseTo(343.2, 1);
    expect((await calcJson('phantom', {})).imageDeg).toBe(0);
  });

  it('without entries nothing is delayed: distances alone count', async () => {
    const places = { left: [-1.5, 0], center: [0, 0], right: [1.5, 0], seat: [0, 3] };
    const bare = await calcJson('arrival', places);
    const equal = await calcJson('arrival', { ...places, entered: { left: 3, center: 3, right: 3 } });
    expect(bare).toEqual(equal);
    expect(bare.centerMinusMeanMs).toBeCloseTo(-1.03177, 4);
  });

  it('a latency of the center alone makes it late by just that', async () => {
    const places = { left: [-1.5, 0], center: [0, 0], right: [1.5, 0], seat: [0, 3] };
    const bare = await calcJson('arrival', places);
    const late = await calcJson('arrival', { ...places, latencyMs: { center: 2.5 } });
    expect((late.centerMinusMeanMs as number) - (bare.centerMinusMeanMs as number)).toBeCloseTo(2.5, 9);
    expect(late.leftMinusRightMs).toBe(0);
  });

  it('heights count where all places have one', async () => {
    const flat = { left: [-1.5, 0], center: [0, 0], right: [1.5, 0], seat: [0, 3] };
    const level = Object.fromEntries(Object.entries(flat).map(([key, at]) => [key, [...at, 1]]));
    expect(await calcJson('arrival', level)).toEqual(await calcJson('arrival', flat));
    const low = await calcJson('arrival', { ...level, center: [0, 0, 0] });
    expect(low.centerMinusMeanMs).toBeGreaterThan(-1.03);
  });

  it('a hole wider than a third of a wave is no plug of air, and is refused', async () => {
    const told = 'kind=perforated holeDiameterM=0.05 thicknessM=0.001 openArea=0.3 frequenciesHz=';
    expect((await calc('screen', `${told}2000`.split(' '))).code).toBe(0);
    await expect(calc('screen', `${told}20000`.split(' '))).rejects.toThrow('no small hole at 20000 Hz');
  });

  it('null in a JSON object counts as not given', async () => {
    const given = { delayMs: 1, relativeLevelDb: null };
    expect(await calcJson('comb', given)).toEqual(await calcJson('comb', { delayMs: 1 }));
  });

  it('a screen without a mass does not move, and loses more than one that does', async () => {
    const sheet = { kind: 'perforated', holeDiameterM: 0.001, thicknessM: 0.0003, openArea: 0.05 };
    const frequenciesHz = [4000];
    const [stiff] = (await calcJson('screen', { ...sheet, frequenciesHz })).lossDb as number[];
    const limp = await calcJson('screen', { ...sheet, sheetMassKgM2: 0.4, frequenciesHz });
    expect((limp.lossDb as number[])[0]).toBeLessThan(stiff ?? 0);
  });

  it('holes per area and the open area they make are the same screen', async () => {
    const sheet = {
      kind: 'perforated',
      holeDiameterM: 0.001,
      thicknessM: 0.0003,
      frequenciesHz: [1000, 9000],
    };
    const counted = await calcJson('screen', { ...sheet, holesPerM2: 60_000 });
    const stated = await calcJson('screen', { ...sheet, openArea: (60_000 * Math.PI * 1e-6) / 4 });
    (counted.lossDb as number[]).forEach((loss, i) => {
      expect(loss).toBeCloseTo((stated.lossDb as number[])[i] ?? Number.NaN, 9);
    });
  });

  it('filters reach half the sample rate and 0 Hz: a shelf keeps all its gain on its side', async () => {
    const shelf = { frequencyHz: 4000, gainDb: 6, q: Math.SQRT1_2, frequenciesHz: [0, 24_000] };
    const high = await calcJson('filter', { type: 'highShelf', ...shelf });
    const low = await calcJson('filter', { type: 'lowShelf', ...shelf });
    expect((high.magnitudeDb as number[])[0]).toBeCloseTo(0, 9);
    expect((high.magnitudeDb as number[])[1]).toBeCloseTo(6, 9);
    expect((low.magnitudeDb as number[])[0]).toBeCloseTo(6, 9);
    expect((low.magnitudeDb as number[])[1]).toBeCloseTo(0, 9);
  });

  it('well clear of an edge nothing is lost; on the line 5 dB', async () => {
    expect(await calcJson('barrier', { fresnelNumber: -1 })).toEqual({ attenuationDb: 0, maekawaDb: 0 });
    const grazing = await calcJson('barrier', { fresnelNumber: 0 });
    expect(grazing.attenuationDb).toBe(5);
    expect(grazing.maekawaDb).toBeCloseTo(4.771, 3);
  });

  it('a loudspeaker at ear height stands at zero, printed without a sign', async () => {
    const { out } = await calc('elevation', ['sourceHeightM=1.05', 'distanceM=3'], { json: true });
    expect(out).not.toContain('-0');
  });

  it('a sub that is inverted where sub and box added leaves a hole at the crossover', async () => {
    const box = { crossoverHz: 80, enclosure: 'sealed', lowLimitHz: 80, highPass: 'BW2' };
    const right = await calcJson('bass-sum', box);
    const wrong = await calcJson('bass-sum', { ...box, subInverted: true });
    expect(right.dipDb).toBeGreaterThan(-1);
    // Not complete: the sub's own lower limit turns its phase a little.
    expect(wrong.dipDb).toBeLessThan(-15);
    expect(wrong.dipHz).toBeGreaterThan(75);
    expect(wrong.dipHz).toBeLessThan(85);
  });

  it('a value that a layout or law does not have is told, not silently dropped', async () => {
    const r = await calc('off-axis', ['layout=coaxial', 'azimuthDeg=20', 'spacingM=0.2']);
    expect(r.err).toContain('coaxial has no spacingM');
    const idle = async (...words: readonly string[]) =>
      (await calc('off-axis', ['azimuthDeg=20', ...words])).err;
    expect(await idle('layout=mid-tweeter-mid')).toBe('');
    expect(await idle('layout=mid-tweeter-mid', 'spacingM=0.3', 'crossoverHz=2000')).toBe('');
    expect(
      await idle('layout=mid-tweeter-mid', 'lowCrossoverHz=500', 'tweeterSpacingM=0.1', 'spacingM=0.3'),
    ).toContain('mid-tweeter-mid has no tweeterSpacingM, lowCrossoverHz: not used.');
    // One cone between two tweeters: how far it is from them can be told although none is usual.
    expect(await idle('layout=tweeter-mid-tweeter', 'spacingM=0.1')).toBe('');
    expect(await idle('layout=tweeter-mid-tweeter', 'lowCrossoverHz=500')).toContain('no lowCrossoverHz');
    expect(await idle('layout=full-range', 'crossoverHz=2000')).toContain('full-range has no crossoverHz');
    const matrix = ['panDeg=45', 'law=matrix', 'matrixDeg=54.7356'];
    expect((await calc('upmix', matrix)).err).toBe('');
    expect((await calc('upmix', [...matrix, 'extraction=0.5'])).err).toContain('matrix has no extraction');
    expect((await calc('upmix', ['panDeg=45', 'extraction=1', 'matrixDeg=20'])).err).toContain(
      'no matrixDeg',
    );
  });
});

describe('input that no room can have is refused with what is accepted', () => {
  const HOLES = { kind: 'perforated', holeDiameterM: 0.001, thicknessM: 0.0003, frequenciesHz: [8000] };
  const refused: [string, object, RegExp][] = [
    ['sound-speed', { temperatureC: -300 }, /temperatureC.*below -50/],
    ['comb', { delayMs: -1 }, /delayMs.*below 0/],
    ['comb', {}, /delayMs.*missing/],
    ['pair-null', { spacingM: -0.2, angleDeg: 10 }, /spacingM.*not above 0/],
    ['pair-null', { spacingM: 0.2, angleDeg: 91 }, /angleDeg.*above 90/],
    ['lobing-angle', { spacingM: 0.2, crossoverHz: 2500, targetDipDb: -6 }, /targetDipDb/],
    ['lobing-angle', { spacingM: 0.2, crossoverHz: 2500, filter: 'LR5' }, /filter.*not known/],
    ['off-axis', { azimuthDeg: 10 }, /neither layout nor drivers/],
    [
      'off-axis',
      { layout: 'coaxial', drivers: [{ xM: 0, zM: 0, radiusM: 0, weight: 1 }], azimuthDeg: 1 },
      /together/,
    ],
    ['off-axis', { drivers: [], azimuthDeg: 1 }, /no driver/],
    [
      'off-axis',
      { drivers: [{ xM: 0, zM: 0, radiusM: -1, weight: 1 }], azimuthDeg: 1 },
      /drivers\[0\]\.radiusM/,
    ],
    [
      'off-axis',
      { drivers: [{ xM: 0, zM: 0, radiusM: 0.05, weight: 1, lowPass: { filter: 'LR4' } }], azimuthDeg: 1 },
      /lowPass\.frequencyHz.*missing/,
    ],
    [
      'off-axis',
      {
        drivers: [
          { xM: -0.1, zM: 0, radiusM: 0.05, weight: 1 },
          { xM: 0.1, zM: 0, radiusM: 0.05, weight: -1 },
        ],
        azimuthDeg: 1,
      },
      /cancel on the design axis/,
    ],
    ['off-axis', { layout: 'paired-boxes', azimuthDeg: 10, distanceM: 0.1 }, /distanceM/],
    ['elevation', { sourceHeightM: 1, distanceM: 0 }, /distanceM.*not above 0/],
    ['floor-bounce', { sourceHeightM: -1, distanceM: 3 }, /sourceHeightM.*below 0/],
    ['floor-bounce', { sourceHeightM: 1, distanceM: 3, reflection: 1.2 }, /reflection.*above 1/],
    ['front-wall', { wallDistanceM: '0.4' }, /wallDistanceM.*no number/],
    [
      'bay',
      {
        bayWidthM: 0.4,
        bayHeightM: 0.2,
        bayDepthM: 0.4,
        speakerWidthM: 0.5,
        speakerHeightM: 0.18,
        speakerDepthM: 0.3,
      },
      /speakerWidthM/,
    ],
    ['recess', { recessM: -0.1, mouthWidthM: 0.6, mouthHeightM: 0.2 }, /recessM/],
    ['barrier', { fresnelNumber: 'far' }, /fresnelNumber.*no number/],
    [
      'sightline',
      { sourceHeightM: 0.5, earHeightM: 1, earDistanceM: 3, headDistanceM: 4, headTopM: 1 },
      /headDistanceM/,
    ],
    ['arrival', { left: [0], center: [0, 0], right: [1, 0], seat: [0, 3] }, /left.*1 numbers/],
    ['arrival', { left: [0, 0, 1], center: [0, 0], right: [1, 0], seat: [0, 3] }, /some places/],
    [
      'arrival',
      { left: [-1, 0], center: [0, 0], right: [1, 0], seat: [0, 3], entered: { left: 3, center: 3 } },
      /entered\.right.*missing/,
    ],
    [
      'arrival',
      { left: [-1, 0], center: [0, 0], right: [1, 0], seat: [0, 3], latencyMs: { centre: 2 } },
      /"centre" is not known/,
    ],
    ['phantom', { halfAngleDeg: 0 }, /halfAngleDeg/],
    ['screen', { kind: 'perforated', frequenciesHz: [1000] }, /holeDiameterM.*missing/],
    [
      'screen',
      { kind: 'perforated', holeDiameterM: 0.001, thicknessM: 0.0003, frequenciesHz: [1000] },
      /both missing/,
    ],
    [
      'screen',
      {
        kind: 'perforated',
        holeDiameterM: 0.001,
        thicknessM: 0.0003,
        openArea: 0.05,
        holesPerM2: 5000,
        frequenciesHz: [1000],
      },
      /both given/,
    ],
    [
      'screen',
      { kind: 'perforated', holeDiameterM: 0.01, thicknessM: 0.0003, holesPerM2: 1e6, frequenciesHz: [1000] },
      /open area/,
    ],
    [
      'screen',
      { kind: 'woven', flowResistance: 100, massKgM2: 0.3, frequenciesHz: [1000] },
      /effectiveLengthM.*missing/,
    ],
    [
      'screen',
      {
        kind: 'woven',
        flowResistance: 100,
        massKgM2: 0.3,
        effectiveLengthM: 0.01,
        thicknessM: 0.001,
        frequenciesHz: [1000],
      },
      /thicknessM.*does not belong/,
    ],
    ['screen', { kind: 'glass', frequenciesHz: [1000] }, /kind.*not known/],
    ['upmix', { panDeg: 45 }, /extraction.*missing/],
    ['upmix', { panDeg: 45, extraction: 1.1 }, /extraction.*above 1/],
    ['upmix', { panDeg: 45, law: 'matrix' }, /matrixDeg.*missing/],
    ['upmix', { panDeg: 100, extraction: 0.5 }, /panDeg/],
    [
      'filter',
      { type: 'peaking', frequencyHz: 24_000, gainDb: 3, q: 1, frequenciesHz: [100] },
      /frequencyHz/,
    ],
    [
      'filter',
      { type: 'peaking', frequencyHz: 1000, gainDb: 3, q: 1, frequenciesHz: [25_000] },
      /frequenciesHz/,
    ],
    [
      'filter',
      { type: 'peaking', frequencyHz: 1000, gainDb: 3, q: 0, frequenciesHz: [100] },
      /q.*not above 0/,
    ],
    ['filter', { type: 'peaking', frequencyHz: 1000, gainDb: 3, q: 1, frequenciesHz: [] }, /0 numbers/],
    ['bass-sum', { crossoverHz: 80, enclosure: 'open', lowLimitHz: 80 }, /enclosure.*not known/],
    ['bass-sum', { crossoverHz: 80, enclosure: 'sealed', lowLimitHz: 80, subInverted: 1 }, /subInverted/],
    ['speech-loss', { bandLossDb: [1, 2, 3] }, /3 numbers/],
    ['speech-loss', { bandLossDb: Array(18).fill('1') }, /bandLossDb\[0\]/],
    ['tonal-match', { left: 'no-such.txt', center: 'no-such.txt', right: 3 }, /right.*no path/],
    [
      'tonal-match',
      { left: 'no-such.txt', center: 'no-such.txt', right: 'src' },
      /is not there[\s\S]*is a folder/,
    ],
    ['comb', { delayMS: 1 }, /did you mean delayMs/],
    ['upmix', { panDeg: 45, law: 'matrix', extraction: 0.5 }, /matrixDeg.*missing/],
    ['upmix', { panDeg: 45, matrixDeg: 20 }, /extraction.*missing/],
    [
      'screen',
      { ...HOLES, openArea: 0.05, flowResistance: 100 },
      /flowResistance.*not belong to a perforated screen[\s\S]*accepted: .*holeDiameterM/,
    ],
    [
      'screen',
      { kind: 'woven', massKgM2: 0.3, frequenciesHz: [8000] },
      /flowResistance.*missing: a woven screen[\s\S]*accepted: .*effectiveLengthM/,
    ],
  ];
  for (const [name, inputs, message] of refused) {
    it(`${name} ${JSON.stringify(inputs).slice(0, 80)}`, async () => {
      await expect(calcJson(name, inputs)).rejects.toThrow(message);
      await expect(calcJson(name, inputs)).rejects.toHaveProperty('name', 'UserError');
    });
  }

  it('tells everything that is wrong at once', async () => {
    await expect(calcJson('pair-null', { spacingM: -1, angleDeg: 'x', angel: 3 })).rejects.toThrow(
      /"angel"[\s\S]*spacingM[\s\S]*angleDeg/,
    );
  });
});

describe('for any input of accepted ranges', () => {
  const share = fc.double({ min: 0, max: 1, noNaN: true });
  const meters = fc.double({ min: 0.01, max: 20, noNaN: true });
  const degrees = fc.double({ min: -60, max: 60, noNaN: true });
  const finiteOrNull = (value: unknown): boolean =>
    value === null ||
    (typeof value === 'number' ? Number.isFinite(value) : Array.isArray(value) && value.every(finiteOrNull));
  const holds = (name: string, inputs: Record<string, fc.Arbitrary<unknown>>) =>
    fc.assert(
      fc.asyncProperty(fc.record(inputs), async (given) => {
        const result = await calcJson(name, given);
        expect(Object.values(result).every(finiteOrNull), JSON.stringify({ given, result })).toBe(true);
      }),
      { numRuns: 60 },
    );

  it('results are finite numbers or null', async () => {
    await holds('off-axis', {
      layout: fc.constantFrom('mid-tweeter-mid', 'coaxial', 'two-and-a-half-way', 'paired-boxes'),
      azimuthDeg: degrees,
      elevationDeg: degrees,
      distanceM: fc.double({ min: 0.5, max: 20, noNaN: true }),
    });
    await holds('floor-bounce', { sourceHeightM: meters, distanceM: meters, reflection: share });
    await holds('upmix', {
      panDeg: fc.double({ min: 0, max: 90, noNaN: true }),
      extraction: share,
      law: fc.constantFrom('power', 'pressure', 'sqrt2', 'add'),
    });
    await holds('phantom', { levelDb: degrees, timeMs: share, halfAngleDeg: fc.constantFrom(1, 30, 90) });
    await holds('barrier', { fresnelNumber: fc.double({ min: -3, max: 300, noNaN: true }) });
    await holds('front-wall', { wallDistanceM: meters, reflection: share });
  });
});
