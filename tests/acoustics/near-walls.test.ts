/** What walls close by, an object of limited width and a room that rings do to a voice, against closed forms. */
import { describe, expect, it } from 'vitest';
import { barrierLossAtSeat, objectLossAtSeat } from '../../src/acoustics/barrier.js';
import { lateVoicePart } from '../../src/acoustics/late-voice.js';
import { nearbyWallsDb } from '../../src/acoustics/reflection.js';
import { MATCHING, matchDb } from '../../src/rules/weight.js';

describe('walls close to a loudspeaker', () => {
  const far = { listeningDistanceM: 1e6, frequenciesHz: [100] } as const;
  // Image sources in step: pressure doubles with each wall (closed form, 20 lg 2 and 20 lg 4).
  it('double the pressure in a wall, and again in a corner', () => {
    expect(nearbyWallsDb({ ...far, wallDistanceM: 0 })).toBeCloseTo(6.02, 2);
    expect(nearbyWallsDb({ ...far, wallDistanceM: 0, sideWallDistanceM: 0 })).toBeCloseTo(12.04, 2);
  });
  it('cancel a quarter of a wave away, and reinforce half a wave away', () => {
    const wave = 343.2 / 100;
    expect(nearbyWallsDb({ ...far, wallDistanceM: wave / 4 })).toBeLessThan(-30);
    expect(nearbyWallsDb({ ...far, wallDistanceM: wave / 2 })).toBeGreaterThan(5.9);
  });
  it('refuse a distance that cannot be', () => {
    expect(() => nearbyWallsDb({ ...far, wallDistanceM: -1 })).toThrow(RangeError);
  });
});

describe('an object in the line', () => {
  const line = { sourceHeightM: 0.6, earHeightM: 1.05, earDistanceM: 3, headDistanceM: 0.3, headTopM: 0.9 };
  it('shades like an endless edge when it is wide', () => {
    const wide = objectLossAtSeat({ ...line, widthM: 50 });
    expect(wide.speechLossDb).toBeCloseTo(barrierLossAtSeat(line).speechLossDb, 1);
  });
  it('shades next to nothing when it is far narrower than the first Fresnel zone', () => {
    // Half width of the first zone at 1 kHz: sqrt(0.343 * 0.3 * 2.7 / 3) = 0.30 m (closed form).
    expect(objectLossAtSeat({ ...line, widthM: 0.02 }).speechLossDb).toBeLessThan(0.5);
  });
  it('shades the more the wider it is', () => {
    const losses = [0.05, 0.1, 0.2, 0.4, 0.8].map(
      (widthM) => objectLossAtSeat({ ...line, widthM }).speechLossDb,
    );
    expect(losses).toEqual([...losses].sort((a, b) => a - b));
  });
});

describe('the late part of a voice', () => {
  const room = { reverberationS: 0.5, volumeM3: 60, distanceM: 3, directivity: 4 } as const;
  // Far from the source only the decay counts: exp(-13.8 * 0.05 / T) (definition of D50, ISO 3382, from memory).
  it('is that of an exponential decay far away', () => {
    expect(lateVoicePart({ ...room, distanceM: 1e4 })).toBeCloseTo(Math.exp((-13.8155 * 0.05) / 0.5), 4);
  });
  it('is half as much where direct sound and room are equal, at the critical distance', () => {
    // r = sqrt(Q A / (16 pi)), textbook.
    const criticalM = Math.sqrt((4 * 0.161 * 60) / 0.5 / (16 * Math.PI));
    const late = lateVoicePart({ ...room, distanceM: criticalM });
    expect(late).toBeCloseTo(Math.exp((-13.8155 * 0.05) / 0.5) / 2, 4);
  });
  it('grows with distance and with the ring', () => {
    expect(lateVoicePart({ ...room, distanceM: 6 })).toBeGreaterThan(lateVoicePart(room));
    expect(lateVoicePart({ ...room, reverberationS: 1 })).toBeGreaterThan(lateVoicePart(room));
  });
});

describe('a told frequency against a computed one', () => {
  it('speaks for the cause by some ten decibans where both agree and were measured', () => {
    expect(matchDb(0, 0.05, 'measured')).toBeGreaterThan(9);
    expect(matchDb(0, 0.05, 'measured')).toBeLessThan(12);
  });
  it('speaks against it by no more than five where they do not', () => {
    expect(matchDb(1.5, 0.05, 'measured')).toBeCloseTo(10 * Math.log10(0.3), 1);
  });
  it('says less the less is known, and never turns by that alone where they agree', () => {
    const weights = [0.05, 0.2, 0.5, 1].map((spread) => matchDb(0, spread, 'measured'));
    expect(weights).toEqual([...weights].sort((a, b) => b - a));
    expect(weights.at(-1)).toBeGreaterThan(0);
  });
  it('forgives half a third octave', () => {
    expect(matchDb(MATCHING.ratio.doubt, 0, 'measured')).toBeGreaterThan(7);
  });
});
