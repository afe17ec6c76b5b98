/** Holes as they are heard in a room. */
import { describe, expect, it } from 'vitest';
import { DEEPEST_DB, heardDepthDb } from '../../src/acoustics/holes.js';

describe('the depth of a hole', () => {
  it('is told without its sign, and no deeper than a room leaves it', () => {
    expect([-3, 3, 0, -20, -45].map(heardDepthDb)).toEqual([3, 3, 0, DEEPEST_DB, DEEPEST_DB]);
  });

  it('is the deepest a room leaves where nothing at all is left', () => {
    expect(heardDepthDb(null)).toBe(DEEPEST_DB);
    expect(heardDepthDb(Number.NEGATIVE_INFINITY)).toBe(DEEPEST_DB);
  });
});
