/** The usual warning stands beside each step that can hurt someone. */
import { describe, expect, it } from 'vitest';
import { stepCautions } from '../../src/explain/step-cautions.js';
import { CAUTIONS } from '../../src/rules/cautions.js';

describe('cautions of a question or home test', () => {
  it('are whole sentences, in the order of the work', () => {
    expect(stepCautions('testMainInPlace')).toEqual([
      CAUTIONS.lifting,
      CAUTIONS['power-off-wires'],
      CAUTIONS['thin-display'],
    ]);
    expect(stepCautions('testTape')).toEqual([CAUTIONS.laser]);
  });
  it('are none where nothing can happen', () => {
    expect(stepCautions('earHeight')).toEqual([]);
  });
});
