/**
 * The project's reference checks (independent numerical prototype, closed forms, published values; each row
 * carries basis and source) for drivers and placement. Rows of the other models are tested beside this file.
 */
import { describe, expect, it } from 'vitest';
import { soundSpeed } from '../../src/acoustics/air.js';
import { barrier, rigidSphereDb, sightline } from '../../src/acoustics/barrier.js';
import { bay, flushGainDb, recess } from '../../src/acoustics/bay.js';
import { abs, add, type Complex, levelDb } from '../../src/acoustics/complex.js';
import { type CrossoverFilter, highPass, lowPass } from '../../src/acoustics/crossover.js';
import { azimuthDeg, elevation } from '../../src/acoustics/elevation.js';
import type { Driver, FilterStage } from '../../src/acoustics/layouts.js';
import { lobingAngle, mtmThresholdK, pairNull } from '../../src/acoustics/lobing.js';
import { offAxis } from '../../src/acoustics/offaxis.js';
import {
  DISTANCE_STEPS_M,
  display16x9,
  METERS_PER_FOOT,
  METERS_PER_INCH,
  SEATED_EAR_HEIGHT_M,
} from '../../src/acoustics/practice.js';
import { floorBounce, frontWall } from '../../src/acoustics/reflection.js';
import { fresnelHalf, shelfEffect, shelfSpecular, shelfStrip } from '../../src/acoustics/shelf.js';
import { fresnel, jincFast } from '../../src/acoustics/special.js';
import { SPEECH_IMPORTANCE, speechLoss } from '../../src/acoustics/speech.js';
import { besselJ1, boundaryGainDb, mtmFirstNullRatio, mtmPointDb } from '../support/heldModels.js';
import published from './data/acoustics-checks.json' with { type: 'json' };

type Inputs = Record<string, unknown>;
type Row = {
  id: string;
  model: string;
  inputs: Inputs;
  expected: unknown;
  tolerance: unknown;
  basis: string;
  source: string;
};

const OURS = ['core', 'piston', 'xo', 'null', 'mtm', 'off', 'pl', 'pr'];
const rows = (published.cases as Row[]).filter((row) => OURS.includes(row.id.split('-')[0] ?? ''));

/** An input that must be a number; the checks say `infinite` for the depth of an exact null. */
function num(inputs: Inputs, key: string): number {
  const value = inputs[key];
  if (value === 'infinite') return Number.POSITIVE_INFINITY;
  if (typeof value !== 'number') throw new Error(`check has no number ${key}`);
  return value;
}
const list = (inputs: Inputs, key: string): number[] => inputs[key] as number[];
const xo = (inputs: Inputs, key: string): CrossoverFilter => inputs[key] as CrossoverFilter;

type Stage = [CrossoverFilter, number];
type CheckDriver = { x: number; z: number; a: number; w: number } & Record<
  'lp' | 'hp' | 'ap',
  Stage | undefined
> & {
    hp2?: Stage[];
  };
const stage = ([filter, frequencyHz]: Stage): FilterStage => ({ filter, frequencyHz });

function driverOf(d: CheckDriver): Driver {
  const high = d.hp2?.map(stage) ?? (d.hp === undefined ? undefined : stage(d.hp));
  return {
    xM: d.x,
    zM: d.z,
    radiusM: d.a,
    weight: d.w,
    ...(d.lp === undefined ? {} : { lowPass: stage(d.lp) }),
    ...(high === undefined ? {} : { highPass: high }),
    ...(d.ap === undefined ? {} : { allPass: stage(d.ap) }),
  };
}

function analyse(inputs: Inputs): Record<string, number | null> {
  const result = offAxis({
    drivers: (inputs.drivers as CheckDriver[]).map(driverOf),
    azimuthDeg: num(inputs, 'az_deg'),
    elevationDeg: num(inputs, 'el_deg'),
    distanceM: num(inputs, 'R'),
    speedOfSound: num(inputs, 'c'),
  });
  return { thirdOctDip_dB: result.dipDb, thirdOctDip_f: result.dipHz, siiLoss_dB: result.speechLossDb };
}

function bounce(inputs: Inputs): Record<string, number | null> {
  const r = floorBounce({
    sourceHeightM: num(inputs, 'h_source'),
    earHeightM: num(inputs, 'h_ear'),
    distanceM: num(inputs, 'D'),
    reflection: num(inputs, 'reflection'),
  });
  return {
    delta: r.pathDifferenceM,
    delay_ms: r.delayMs,
    f_null1: r.firstNullHz,
    spec_x: r.specularM,
    r: r.reflectionRatio,
    depth_null: r.nullDepthDb,
  };
}

const shelfOf = (inputs: Inputs) => ({
  heightAboveShelfM: num(inputs, 'h_above_shelf'),
  earAboveShelfM: num(inputs, 'ear_above_shelf'),
  distanceM: num(inputs, 'D'),
  exposedDepthM: num(inputs, 'exposedDepth'),
});

function specular(inputs: Inputs): Record<string, number> {
  const found = shelfSpecular({ ...shelfOf({ ...inputs, exposedDepth: 0 }) });
  if (found === null) throw new Error('no mirror ray');
  return {
    spec_x: found.specularM,
    delta: found.pathDifferenceM,
    f_null1: num(inputs, 'c') / (2 * found.pathDifferenceM),
  };
}

const arg = ({ re, im }: Complex): number => Math.atan2(im, re);

function phaseDifferenceDeg(inputs: Inputs): number {
  const at = [xo(inputs, 'type'), num(inputs, 'fc'), num(inputs, 'f')] as const;
  const difference = Math.abs(arg(highPass(...at)) - arg(lowPass(...at)));
  return (Math.min(difference, 2 * Math.PI - difference) * 180) / Math.PI;
}

const compute: Record<string, (inputs: Inputs) => unknown> = {
  'air.speedOfSound': (i) => soundSpeed(num(i, 'T_C')),
  'math.besselJ1': (i) => besselJ1(num(i, 'x')),
  'math.fresnel': (i) => ({ C: fresnel(num(i, 'v')).c, S: fresnel(num(i, 'v')).s }),
  'speech.bandImportance': () => SPEECH_IMPORTANCE.reduce((sum, value) => sum + value, 0),
  'speech.weightedLoss': (i) => speechLoss({ bandLossDb: list(i, 'bandLoss_dB') }).lossDb,
  'directivity.piston_dB': (i) => 20 * Math.log10(Math.abs(jincFast(num(i, 'ka_sinTheta')))),
  'directivity.piston_abs': (i) => Math.abs(jincFast(num(i, 'ka_sinTheta'))),
  'crossover.magnitude_dB': (i) =>
    list(i, 'f').map((f) => levelDb((i.pass === 'low' ? lowPass : highPass)(xo(i, 'type'), num(i, 'fc'), f))),
  'crossover.sumRipple_dB': (i) => {
    const levels = list(i, 'f').map((f) =>
      levelDb(add(lowPass(xo(i, 'type'), num(i, 'fc'), f), highPass(xo(i, 'type'), num(i, 'fc'), f))),
    );
    return Math.max(...levels) - Math.min(...levels);
  },
  'crossover.phaseDiff_deg': phaseDifferenceDeg,
  'lobing.firstNull_Hz': (i) =>
    pairNull({ spacingM: num(i, 'd'), angleDeg: num(i, 'theta_deg') }).firstNullHz,
  'lobing.mtmPoint_dB': (i) =>
    mtmPointDb({
      filter: xo(i, 'xo'),
      frequencyRatio: num(i, 'x_f_over_fc'),
      spacingInWavelengths: num(i, 'dSin_over_lambdaC'),
    }),
  'lobing.mtmThresholdK': (i) => mtmThresholdK(xo(i, 'xo'), num(i, 'dip_dB')),
  'lobing.mtmFirstNullRatio': (i) => mtmFirstNullRatio(xo(i, 'xo'), num(i, 'dSin_over_lambdaC')),
  'lobing.mtmThresholdAngle_deg': (i) =>
    lobingAngle({
      spacingM: num(i, 'd'),
      crossoverHz: num(i, 'fc'),
      filter: xo(i, 'xo'),
      targetDipDb: num(i, 'dip_dB'),
    }).angleDeg,
  'offaxis.analyse': analyse,
  'placement.elevation_deg': (i) =>
    elevation({ sourceHeightM: num(i, 'h_source'), earHeightM: num(i, 'h_ear'), distanceM: num(i, 'D') })
      .elevationDeg,
  'placement.verticalOffAxis_deg': (i) =>
    elevation({
      sourceHeightM: num(i, 'h_source'),
      earHeightM: num(i, 'h_ear'),
      distanceM: num(i, 'D'),
      tiltUpDeg: num(i, 'tiltUp_deg'),
    }).offAxisDeg,
  'placement.bounce': bounce,
  'placement.shelfSpecular': specular,
  'placement.shelfStrip_absR': (i) =>
    list(i, 'f').map((frequencyHz) => shelfStrip({ ...shelfOf(i), frequencyHz }).reflectionAbs),
  'placement.fresnelHalf_abs': (i) => abs(fresnelHalf(num(i, 'v'))),
  'placement.shelf_thirdOctDip_dB': (i) => shelfEffect(shelfOf(i)).dipDb,
  'placement.waterhouse_dB': (i) =>
    boundaryGainDb({ distancesM: list(i, 'distances'), frequencyHz: num(i, 'f') }),
  'placement.frontWall': (i) => {
    const r = frontWall({
      wallDistanceM: num(i, 'd_wall'),
      listeningDistanceM: num(i, 'D'),
      reflection: num(i, 'reflection'),
    });
    return { f_null1: r.firstNullHz, r: r.reflectionRatio, depth_null: r.nullDepthDb };
  },
  'placement.barrier_dB': (i) => {
    const r = barrier({ fresnelNumber: num(i, 'N') });
    return i.formula === 'Kurze-Anderson'
      ? r.attenuationDb
      : { kurzeAnderson: r.attenuationDb, maekawa: r.maekawaDb };
  },
  'placement.rigidSphere_dB': (i) =>
    list(i, 'f').map((frequencyHz) =>
      rigidSphereDb({
        radiusM: num(i, 'a'),
        sourceDistanceM: num(i, 'source_dist'),
        receiverDistanceM: num(i, 'receiver_dist'),
        cosAngle: num(i, 'cosAngle'),
        frequencyHz,
      }),
    ),
  'placement.sightlineClearance_m': (i) =>
    sightline({
      sourceHeightM: num(i, 'h_source'),
      earHeightM: num(i, 'h_ear'),
      earDistanceM: num(i, 'D_ear'),
      headDistanceM: num(i, 'D_head'),
      headTopM: num(i, 'h_headTop'),
    }).clearanceM,
  'placement.bayResonance_Hz': (i) =>
    bay({
      bayWidthM: num(i, 'bayW'),
      bayHeightM: num(i, 'bayH'),
      bayDepthM: num(i, 'bayDepth'),
      speakerWidthM: num(i, 'spkW'),
      speakerHeightM: num(i, 'spkH'),
      speakerDepthM: num(i, 'spkDepth'),
    }).resonanceHz,
  'placement.recessResonance_Hz': (i) =>
    recess({ recessM: num(i, 'recess'), mouthWidthM: num(i, 'mouthW'), mouthHeightM: num(i, 'mouthH') })
      .resonanceHz,
  'placement.centreAzimuth_deg': (i) => azimuthDeg({ offsetM: num(i, 'x0'), distanceM: num(i, 'D') }),
  'placement.flushBaffleGain_dB': (i) => list(i, 'f').map(flushGainDb),
  'practice.tv16x9_m': (i) => {
    const { widthM, heightM } = display16x9({ diagonalM: num(i, 'diag_in') * METERS_PER_INCH });
    return { w: widthM, h: heightM };
  },
  'practice.seatAzimuth_deg': (i) => azimuthDeg({ offsetM: num(i, 'seat_x'), distanceM: num(i, 'D') }),
  'practice.feetToMetres': (i) => num(i, 'ft') * METERS_PER_FOOT,
  'practice.seatedEarHeight_m': () => ({
    default: SEATED_EAR_HEIGHT_M.usual,
    min: SEATED_EAR_HEIGHT_M.least,
    max: SEATED_EAR_HEIGHT_M.most,
  }),
  'practice.distanceSteps_m': () => DISTANCE_STEPS_M,
};

/** Allowed difference: a number is absolute, "n%" is of the expected value. */
function allowance(tolerance: unknown, expected: number): number {
  if (typeof tolerance === 'string') return (Math.abs(expected) * Number.parseFloat(tolerance)) / 100;
  return tolerance as number;
}

function compare(got: unknown, expected: unknown, tolerance: unknown, where: string): void {
  if (typeof expected === 'object' && expected !== null) {
    for (const [key, value] of Object.entries(expected)) {
      const own =
        typeof tolerance === 'object' && tolerance !== null ? (tolerance as Inputs)[key] : tolerance;
      compare((got as Inputs)[key], value, own, `${where} ${key}`);
    }
    return;
  }
  expect(typeof got, `${where} is a number`).toBe('number');
  const off = Math.abs((got as number) - (expected as number));
  // One ulp of slack, so that a tolerance of 0 compares decimal literals and not their last bit.
  const allowed = allowance(tolerance, expected as number) + Number.EPSILON;
  expect(off <= allowed, `${where}: got ${String(got)}, expected ${String(expected)} within ${allowed}`).toBe(
    true,
  );
}

describe('reference checks of drivers and placement', () => {
  it('has every row of these families', () => {
    expect(published.cases).toHaveLength(141);
    expect(rows).toHaveLength(83);
  });
  for (const row of rows) {
    it(`${row.id} ${row.model} (${row.basis})`, () => {
      const model = compute[row.model];
      if (model === undefined) throw new Error(`no model for ${row.model}`);
      compare(model(row.inputs), row.expected, row.tolerance, row.id);
    });
  }
});
