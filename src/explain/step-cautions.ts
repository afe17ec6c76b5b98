/** Cautions of questions and home tests: the usual warning stands beside each step that can hurt someone. */
import type { FactId } from '../facts/catalog.js';
import { CAUTIONS, type CautionId } from '../rules/cautions.js';

const STEP_CAUTIONS: Readonly<Partial<Record<FactId, readonly CautionId[]>>> = {
  upmixCommonPart: ['volume-down'],
  testNearCenter: ['volume-down'],
  testPhantom: ['photograph-menu'],
  testUnplugged: ['power-off-wires'],
  testSpreadOn: ['photograph-menu'],
  testEqBypass: ['photograph-menu', 'test-noise'],
  testTape: ['laser'],
  testSwapAtAmplifier: ['photograph-menu', 'power-off-wires', 'volume-down'],
  testSwapAtLoudspeakers: ['power-off-wires', 'volume-down'],
  testMainInPlace: ['lifting', 'power-off-wires', 'thin-display'],
  testNoiseEach: ['volume-down', 'test-noise'],
  testPolarity: ['power-off-wires', 'test-noise'],
  testEarToDrivers: ['volume-down', 'domes'],
  testTilt: ['thin-display'],
  testLift: ['lifting', 'thin-display'],
  testPullForward: ['thin-display', 'lifting'],
  testCoverShelf: ['heat'],
  testCoverTweeter: ['domes', 'volume-down'],
  driversHeard: ['volume-down', 'domes'],
  jumpers: ['power-off-wires'],
  polarityMarks: ['power-off-wires'],
};

export const stepCautions = (id: FactId): readonly string[] =>
  (STEP_CAUTIONS[id] ?? []).map((caution) => CAUTIONS[caution]);
