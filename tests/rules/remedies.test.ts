/** Which remedies suit a system, first one first: those that cannot help it are not offered. */
import { describe, expect, it } from 'vitest';
import type { Cause } from '../../src/rules/cause.js';
import { level } from '../../src/rules/causes/level.js';
import { viewOf } from '../../src/rules/derived/view.js';
import { verdictOf } from '../../src/rules/plain.js';
import { bookOf, type TestFacts } from '../support/causeClaims.js';

function offered(cause: Cause, facts: TestFacts): string[] {
  const view = viewOf(bookOf(facts));
  return cause.remedies.filter((r) => !r.when || verdictOf(r.when, view).truth !== 'no').map((r) => r.id);
}

describe('level', () => {
  const mains = { measuredLeftLevel: 75, measuredRightLevel: 75 } as const;
  it('comes right by test noise first, whether a boost is on or not known', () => {
    expect(offered(level, {})[0]).toBe('trim-to-the-mains');
    expect(offered(level, { voiceBoost: 'on' }).slice(0, 2)).toEqual(['trim-to-the-mains', 'boost-off']);
  });
  it.each<TestFacts>([
    { ...mains, measuredCenterLevel: 72 },
    { measuredLeftLevel: 75, measuredCenterLevel: 72 },
    { voiceLoudness: 'softer' },
    { testNoiseEach: 'softer' },
    // The meter sees less than it tells apart, the ear more.
    { ...mains, measuredCenterLevel: 74.5, voiceLoudness: 'softer' },
  ])('no boost is taken from a center that is too soft already: %o', (facts) => {
    expect(offered(level, facts)).not.toContain('boost-off');
    expect(offered(level, { ...facts, voiceBoost: 'on' })).not.toContain('boost-off');
  });
  it.each<TestFacts>([
    { ...mains, measuredCenterLevel: 79, voiceLoudness: 'softer' },
    { voiceLoudness: 'louder' },
    { testNoiseEach: 'louder' },
    { testNoiseEach: 'alike' },
    { ...mains, measuredCenterLevel: 75 },
  ])('a boost may go where the center is not too soft: %o', (facts) => {
    expect(offered(level, { ...facts, voiceBoost: 'on' })).toContain('boost-off');
    expect(offered(level, { ...facts, voiceBoost: 'off' })).not.toContain('boost-off');
  });
});
