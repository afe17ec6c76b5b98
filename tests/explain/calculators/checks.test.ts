/**
 * The project's reference checks through `calc`: whoever runs a calculator gets the checked number, under the key
 * of the contract. Rows about models without a calculator are listed at the end.
 */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { analogFilterDb } from '../../../src/acoustics/filter.js';
import { gridHz } from '../../../src/acoustics/response.js';
import published from '../../published/data/acoustics-checks.json' with { type: 'json' };
import { calcJson } from '../../support/calc.js';
import { type CheckRow, expectWithin } from '../../support/checks.js';

type Inputs = CheckRow['inputs'];
const rows = published.cases as CheckRow[];

type CheckDriver = Record<string, unknown> & {
  lp?: unknown[];
  hp?: unknown[];
  hp2?: unknown[][];
  ap?: unknown[];
};
const stage = ([filter, frequencyHz]: unknown[]) => ({ filter, frequencyHz });
const driverOf = ({ x, z, a, w, lp, hp, hp2, ap }: CheckDriver) => ({
  xM: x,
  zM: z,
  radiusM: a,
  weight: w,
  ...(lp ? { lowPass: stage(lp) } : {}),
  ...(hp ? { highPass: stage(hp) } : {}),
  ...(hp2 ? { highPass: hp2.map(stage) } : {}),
  ...(ap ? { allPass: stage(ap) } : {}),
});

const SOUND = 343.2;
const triple = (value: unknown) => {
  const { L, C, R } = value as { L: unknown; C: unknown; R: unknown };
  return { left: L, center: C, right: R };
};
/** A row may say that it has the inputs of another one `as` it. */
const whole = (inputs: Inputs): Inputs => ({ ...rows.find(({ id }) => id === inputs.as)?.inputs, ...inputs });

function sheet(row: Inputs): object {
  const i = whole(row);
  const common = { angleDeg: i.theta_deg ?? 0, frequenciesHz: [i.f].flat() };
  if (i.R !== undefined) {
    const woven = { kind: 'woven', flowResistance: i.R, massKgM2: i.ms, effectiveLengthM: i.Lm };
    return { ...woven, ...common };
  }
  return {
    kind: 'perforated',
    holeDiameterM: i.hole_d,
    thicknessM: i.t,
    openArea: i.openArea ?? null,
    holesPerM2: i.holes_per_m2 ?? null,
    sheetMassKgM2: i.sheetMass,
    holeInteraction: i.psi,
    ...common,
  };
}

const bounce = (i: Inputs) => ({
  sourceHeightM: i.h_source,
  earHeightM: i.h_ear,
  distanceM: i.D,
  reflection: i.reflection,
});
const seatHeights = (i: Inputs) => ({ sourceHeightM: i.h_source, earHeightM: i.h_ear, distanceM: i.D });

/** K = d sin(angle) / wavelength at the crossover, for a pair that is one wavelength apart there. */
async function thresholdK(i: Inputs): Promise<number> {
  const { angleDeg } = await calcJson('lobing-angle', {
    spacingM: SOUND / 1000,
    crossoverHz: 1000,
    filter: i.xo,
    targetDipDb: i.dip_dB,
  });
  return Math.sin(((angleDeg as number) * Math.PI) / 180);
}

async function upmixOf(i: Inputs): Promise<object> {
  const r = await calcJson('upmix', { panDeg: i.pan_deg, extraction: i.extraction, law: i.mode });
  return {
    L2: (r.left as number) ** 2,
    C2: (r.center as number) ** 2,
    R2: (r.right as number) ** 2,
    thetaV: r.velocityDeg,
    thetaE: r.energyDeg,
  };
}

const FILTERS = { pk: 'peaking', hs: 'highShelf', ls: 'lowShelf' } as const;

/** Calculator results in the words of each model of the table. */
const THROUGH_CALC: Record<string, (i: Inputs) => Promise<unknown>> = {
  'air.speedOfSound': async (i) => (await calcJson('sound-speed', { temperatureC: i.T_C })).metersPerSecond,
  'speech.weightedLoss': async (i) => (await calcJson('speech-loss', { bandLossDb: i.bandLoss_dB })).lossDb,
  'lobing.firstNull_Hz': async (i) =>
    (await calcJson('pair-null', { spacingM: i.d, angleDeg: i.theta_deg })).firstNullHz,
  'lobing.mtmThresholdK': thresholdK,
  'lobing.mtmThresholdAngle_deg': async (i) =>
    (
      await calcJson('lobing-angle', {
        spacingM: i.d,
        crossoverHz: i.fc,
        filter: i.xo,
        targetDipDb: i.dip_dB,
      })
    ).angleDeg,
  'offaxis.analyse': async (i) => {
    const r = await calcJson('off-axis', {
      drivers: (i.drivers as CheckDriver[]).map(driverOf),
      azimuthDeg: i.az_deg,
      elevationDeg: i.el_deg,
      distanceM: i.R,
    });
    return { thirdOctDip_dB: r.dipDb, thirdOctDip_f: r.dipHz, siiLoss_dB: r.speechLossDb };
  },
  'placement.elevation_deg': async (i) => (await calcJson('elevation', seatHeights(i))).elevationDeg,
  'placement.verticalOffAxis_deg': async (i) =>
    (await calcJson('elevation', { ...seatHeights(i), tiltUpDeg: i.tiltUp_deg })).offAxisDeg,
  'placement.bounce': async (i) => {
    const r = await calcJson('floor-bounce', bounce(i));
    return {
      delta: r.pathDifferenceM,
      delay_ms: r.delayMs,
      f_null1: r.firstNullHz,
      spec_x: r.specularM,
      r: 1 - 10 ** ((r.nullDepthDb as number) / 20),
      depth_null: r.nullDepthDb,
    };
  },
  'placement.frontWall': async (i) => {
    const r = await calcJson('front-wall', {
      wallDistanceM: i.d_wall,
      listeningDistanceM: i.D,
      reflection: i.reflection,
    });
    return {
      f_null1: r.firstNullHz,
      r: 1 - 10 ** ((r.nullDepthDb as number) / 20),
      depth_null: r.nullDepthDb,
    };
  },
  'placement.barrier_dB': async (i) => {
    const r = await calcJson('barrier', { fresnelNumber: i.N });
    return i.formula === undefined
      ? { kurzeAnderson: r.attenuationDb, maekawa: r.maekawaDb }
      : r.attenuationDb;
  },
  'placement.sightlineClearance_m': async (i) =>
    (
      await calcJson('sightline', {
        sourceHeightM: i.h_source,
        earHeightM: i.h_ear,
        earDistanceM: i.D_ear,
        headDistanceM: i.D_head,
        headTopM: i.h_headTop,
      })
    ).clearanceM,
  'placement.bayResonance_Hz': async (i) =>
    (
      await calcJson('bay', {
        bayWidthM: i.bayW,
        bayHeightM: i.bayH,
        bayDepthM: i.bayDepth,
        speakerWidthM: i.spkW,
        speakerHeightM: i.spkH,
        speakerDepthM: i.spkDepth,
      })
    ).resonanceHz,
  'placement.recessResonance_Hz': async (i) =>
    (await calcJson('recess', { recessM: i.recess, mouthWidthM: i.mouthW, mouthHeightM: i.mouthH }))
      .resonanceHz,
  'timing.residual_ms': async (i) => {
    const r = await calcJson('arrival', {
      ...triple(i.speakers),
      seat: i.seat,
      entered: triple(i.entered_m),
      processorSpeed: i.c,
    });
    return {
      'C-mean': r.centerMinusMeanMs,
      'C-L': r.centerMinusLeftMs,
      'C-R': r.centerMinusRightMs,
      'L-R': r.leftMinusRightMs,
    };
  },
  'timing.combRipple_dB': async (i) => {
    const r = await calcJson('comb', { delayMs: 1, relativeLevelDb: i.g_dB });
    return { peak: r.peakDb, null: r.dipDb };
  },
  'timing.combNulls_Hz': async (i) => (await calcJson('comb', { delayMs: i.tau_ms })).nullsHz,
  'timing.phantomCrosstalkNull_Hz': async (i) =>
    (await calcJson('phantom', { halfAngleDeg: i.halfAngle_deg })).crosstalkNullHz,
  'screen.TL_dB': async (i) => (await calcJson('screen', sheet(i))).lossDb,
  'eq.biquad_dB': async (i) =>
    (
      await calcJson('filter', {
        type: FILTERS[i.type as keyof typeof FILTERS],
        frequencyHz: i.f0,
        gainDb: i.gain_dB,
        q: i.Q,
        sampleRateHz: i.fs,
        frequenciesHz: i.f,
      })
    ).magnitudeDb,
  'bass.deepest_dB': async (i) => {
    const r = await calcJson('bass-sum', {
      crossoverHz: i.fx,
      enclosure: i.speaker,
      lowLimitHz: i.f3,
      highPass: i.electricalHP,
      subDelayMs: i.tau,
    });
    return { dip: r.dipDb, f: r.dipHz };
  },
  'upmix.source': upmixOf,
  'upmix.stereoVectors': async (i) => {
    const r = await calcJson('upmix', { panDeg: i.pan_deg, extraction: 0 });
    return { thetaV: r.velocityDeg, thetaE: r.energyDeg };
  },
  'upmix.widthRetained': async (i) => {
    const r = await calcJson('upmix', { panDeg: 45, extraction: i.extraction, law: i.mode });
    return { energy: r.widthRetainedEnergy, velocity: r.widthRetainedVelocity };
  },
  'upmix.linear3': async (i) => {
    const r = await calcJson('upmix', { panDeg: 0, law: 'matrix', matrixDeg: i.phi_deg });
    return [r.left, r.center, r.right];
  },
};

/** An exact null cannot be asked for: the target must be a number of dB. */
const NOT_ASKABLE = ['mtm-K-LR4-null'];
const askable = rows.filter(({ id, model }) => model in THROUGH_CALC && !NOT_ASKABLE.includes(id));

describe('the reference checks through calc', () => {
  it('covers 69 of the 141 rows; the others have no calculator', () => {
    expect(askable).toHaveLength(69);
  });
  for (const row of askable) {
    it(`${row.id} (${row.basis})`, async () => {
      expectWithin(await THROUGH_CALC[row.model]?.(row.inputs), row.expected, row.tolerance, row.id);
    });
  }
});

describe('layouts by name are the drivers of the reference table', () => {
  const named: [string, string, number, object?][] = [
    ['off-mtm-15', 'mid-tweeter-mid', 15],
    ['off-mtm-bw3-20', 'mid-tweeter-mid', 20, { filter: 'BW3' }],
    ['off-nested-30', 'nested-mid-tweeter-mid', 30],
    ['off-wtmw-45', 'woofer-mid-tweeter-woofer', 45],
    ['off-tmmt-15', 'tweeter-mid-mid-tweeter', 15],
    ['off-fr-30', 'full-range', 30],
  ];
  for (const [id, layout, azimuthDeg, more] of named) {
    it(`${layout} gives ${id}`, async () => {
      const row = rows.find((candidate) => candidate.id === id);
      const r = await calcJson('off-axis', { layout, azimuthDeg, ...more });
      const got = { thirdOctDip_dB: r.dipDb, thirdOctDip_f: r.dipHz, siiLoss_dB: r.speechLossDb };
      expectWithin(got, row?.expected, row?.tolerance, id);
    });
  }
});

describe('the synthetic measurement of the reference through tonal-match', () => {
  const folder = mkdtempSync(join(tmpdir(), 'calc-tonal-'));
  afterAll(() => rmSync(folder, { recursive: true }));
  const slope = (hz: number) => -0.5 * Math.log2(hz / 1000);
  const faults = [
    { type: 'peaking', frequencyHz: 2300, gainDb: -6, q: 1.8 },
    { type: 'highShelf', frequencyHz: 8000, gainDb: -3, q: 0.7 },
    { type: 'peaking', frequencyHz: 180, gainDb: 4, q: 1.5 },
  ] as const;
  const curves: Record<string, (hz: number) => number> = {
    left: (hz) => slope(hz) + 0.5 * Math.sin(6 * Math.log2(hz)),
    right: (hz) => slope(hz) + 0.4 * Math.sin(6 * Math.log2(hz) + 0.3),
    center: (hz) => slope(hz) + 6.3 + faults.reduce((sum, fault) => sum + analogFilterDb(fault, hz), 0),
  };
  const files = Object.fromEntries(
    Object.entries(curves).map(([channel, level]) => {
      const file = join(folder, `${channel}.txt`);
      const lines = Array.from({ length: 479 }, (_, n) => `${gridHz(n)} ${level(gridHz(n))}`);
      writeFileSync(file, `* made for a test\n${lines.join('\n')}\n`);
      return [channel, file];
    }),
  );

  it('finds the offset of row to-offset and the hole at 2.5 kHz', async () => {
    const r = await calcJson('tonal-match', files);
    const row = rows.find(({ id }) => id === 'to-offset');
    const { median } = Object(row?.expected) as { median: number };
    expectWithin(r.levelOffsetDb, median, row?.tolerance, 'to-offset');
    expect(r.worstBandHz).toBe(2500);
    expect(r.worstBandDb).toBeLessThan(-4);
    expect(Object.keys(r)).toEqual([
      'levelOffsetDb',
      'rmsDb',
      'worstBandHz',
      'worstBandDb',
      'bandsOver3Db',
      'filters',
    ]);
  });
});
