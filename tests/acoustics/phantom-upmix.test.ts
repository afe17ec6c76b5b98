import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { phantom, phantomAtSeat } from '../../src/acoustics/phantom.js';
import {
  offSeatImage,
  sharedContent,
  UPMIX_LAWS,
  type UpmixLaw,
  upmix,
  upmixGains,
  widthRetained,
} from '../../src/acoustics/upmix.js';
import { energyVector, velocityVector } from '../../src/acoustics/vectors.js';
import { diffuse, sweetSpotWidthM } from '../support/heldModels.js';
import { erfc, lagWeight, levelToRecenterDb, lowerGamma, precedenceImage } from '../support/precedence.js';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const pan = number(0, 90);
const share = number(0, 1);
const law = fc.constantFrom(...UPMIX_LAWS);
const energy = (panDeg: number, l: UpmixLaw, extraction: number, matrixDeg = 54.7) => {
  const { left, center, right } = upmixGains(panDeg, { law: l, extraction, matrixDeg });
  return left ** 2 + center ** 2 + right ** 2;
};

describe('phantom image', () => {
  it('is odd in level and time, stays between the loudspeakers and follows the cue', () => {
    fc.assert(
      fc.property(number(-40, 40), number(-3, 3), number(5, 90), (levelDb, timeMs, halfAngleDeg) => {
        const { imageDeg } = phantom({ levelDb, timeMs, halfAngleDeg });
        expect(phantom({ levelDb: -levelDb, timeMs: -timeMs, halfAngleDeg }).imageDeg).toBeCloseTo(
          -imageDeg,
          9,
        );
        expect(Math.abs(imageDeg)).toBeLessThanOrEqual(halfAngleDeg + 1e-9);
        expect(phantom({ levelDb: levelDb + 1, timeMs, halfAngleDeg }).imageDeg).toBeGreaterThanOrEqual(
          imageDeg - 1e-9,
        );
      }),
    );
  });

  it('turns continuously from the inner to the outer rate, at half shift', () => {
    expect(phantom({ levelDb: 8.5 }).imageDeg).toBeCloseTo(20, 9);
    expect(phantom({ levelDb: 8.5 + 1e-9 }).imageDeg).toBeCloseTo(20, 6);
  });

  it('moves toward the nearer main, mirrored on the other side', () => {
    const seat = (seatXM: number) => phantomAtSeat({ halfBaseM: 1.5, distanceM: 3, seatXM }).imageDeg;
    expect(seat(0)).toBe(0);
    expect(seat(0.2)).toBeLessThan(-5);
    expect(seat(-0.2)).toBeCloseTo(-seat(0.2), 9);
  });

  it('allows a wider seat farther away, and the whole base when any shift will do', () => {
    const at = (distanceM: number) => sweetSpotWidthM({ halfBaseM: 1.5, distanceM });
    expect(at(4)).toBeGreaterThan(at(2));
    expect(sweetSpotWidthM({ halfBaseM: 1.5, distanceM: 3, maxShiftDeg: 89 })).toBeCloseTo(3, 6);
  });

  it('refuses an angle that is none', () => {
    expect(() => phantom({ halfAngleDeg: 0 })).toThrow(/halfAngleDeg is 0; accepted/);
    expect(() => phantom({ halfAngleDeg: 91 })).toThrow(
      /halfAngleDeg is 91; accepted: a number from 0 to 90/,
    );
    expect(() => phantom({ levelDb: Number.NaN })).toThrow(/levelDb/);
  });
});

describe('precedence', () => {
  it('starts in the middle and moves to the earlier loudspeaker with delay', () => {
    const at = (delayMs: number) => precedenceImage({ leadDeg: 30, lagDeg: -30, delayMs }).angleDeg ?? 0;
    expect(at(0)).toBeCloseTo(0, 9);
    fc.assert(
      fc.property(number(0, 5), (delayMs) => {
        expect(at(delayMs + 0.1)).toBeGreaterThanOrEqual(at(delayMs) - 1e-9);
      }),
    );
  });

  it('asks for more level with more delay, up to about 10 dB', () => {
    fc.assert(
      fc.property(number(0.01, 5), (delayMs) => {
        expect(levelToRecenterDb(delayMs * 1.1)).toBeGreaterThanOrEqual(levelToRecenterDb(delayMs) - 1e-6);
        expect(levelToRecenterDb(delayMs)).toBeLessThan(10.3);
      }),
    );
  });

  it('is back in the middle when the later loudspeaker is louder by as much as that', () => {
    for (const delayMs of [0.1, 0.5, 1, 3]) {
      const levelDb = levelToRecenterDb(delayMs);
      const image = (db: number) =>
        precedenceImage({ leadDeg: 30, lagDeg: -30, delayMs, levelDb: db }).angleDeg;
      expect(image(levelDb)).toBeCloseTo(0, 6);
      expect(image(levelDb + 1)).toBeLessThan(-1);
      expect(image(levelDb - 1)).toBeGreaterThan(1);
    }
  });

  it('a lag that drowns the lead keeps all of its weight, and one from the same direction too', () => {
    expect(lagWeight(5, 40, 1)).toBeCloseTo(1, 9);
    expect(lagWeight(5, 0, 0)).toBe(1);
    expect(lagWeight(5, 20 * Math.log10(4.5), 2)).toBeCloseTo(0.5, 9);
    expect(lagWeight(5, 12, 2)).toBeLessThan(0.45);
    expect(lagWeight(5, 14, 2)).toBeGreaterThan(0.55);
    expect(() => lagWeight(5, 0, Number.NaN)).toThrow(/direction is NaN/);
  });

  it('its functions run from one end to the other of what they are: 1 to 0, 0 to 1', () => {
    // erfc(3) 2.20905e-5, P(0.1, 1) 0.975873: from memory (textbook tables, computed).
    expect([erfc(0), erfc(30)]).toEqual([1, 0]);
    expect(erfc(3)).toBeCloseTo(2.20905e-5, 10);
    expect([lowerGamma(0), lowerGamma(1e6)]).toEqual([0, 1]);
    expect(lowerGamma(39.9)).toBeCloseTo(lowerGamma(40.1), 12);
  });
});

describe('vectors', () => {
  it('point at a lone loudspeaker, are firm there, and mirror', () => {
    fc.assert(
      fc.property(number(-90, 90), number(-2, 2), number(0.01, 2), (angleDeg, other, gain) => {
        expect(energyVector([{ angleDeg, gain }]).angleDeg).toBeCloseTo(angleDeg, 9);
        expect(velocityVector([{ angleDeg, gain }]).length).toBeCloseTo(1, 9);
        const feeds = [
          { angleDeg, gain },
          { angleDeg: 10, gain: other },
        ];
        const mirrored = feeds.map((feed) => ({ ...feed, angleDeg: -feed.angleDeg }));
        expect(energyVector(mirrored).angleDeg).toBeCloseTo(-(energyVector(feeds).angleDeg ?? 0), 9);
      }),
    );
  });

  it('do not exist where everything cancels', () => {
    const feeds = [
      { angleDeg: 30, gain: 1 },
      { angleDeg: -30, gain: -1 },
    ];
    expect(velocityVector(feeds)).toEqual({ angleDeg: null, length: null });
    expect(energyVector(feeds).angleDeg).toBeCloseTo(0, 12);
  });
});

describe('upmix', () => {
  it('keeps the power for every pan with the laws that claim to', () => {
    fc.assert(
      fc.property(pan, share, number(0, 90), (panDeg, extraction, matrixDeg) => {
        expect(energy(panDeg, 'power', extraction)).toBeCloseTo(1, 12);
        expect(energy(panDeg, 'matrix', extraction, matrixDeg)).toBeCloseTo(1, 12);
      }),
    );
  });

  it('keeps the pressure with the pressure law', () => {
    fc.assert(
      fc.property(pan, share, (panDeg, extraction) => {
        const { left, center, right } = upmixGains(panDeg, { law: 'pressure', extraction });
        const before = upmixGains(panDeg, { extraction: 0 });
        expect(left + center + right).toBeCloseTo(before.left + before.right, 12);
      }),
    );
  });

  it('mirrors left and right, images too, and is never NaN', () => {
    fc.assert(
      fc.property(pan, share, law, number(10, 90), (panDeg, extraction, l, matrixDeg) => {
        const here = upmix({ panDeg, extraction, law: l, matrixDeg });
        const there = upmix({ panDeg: 90 - panDeg, extraction, law: l, matrixDeg });
        expect(there.left).toBeCloseTo(here.right, 9);
        expect(there.center).toBeCloseTo(here.center, 6);
        expect(there.energyDeg).toBeCloseTo(-(here.energyDeg ?? 0), 5);
        expect(there.velocityDeg).toBeCloseTo(-(here.velocityDeg ?? 0), 5);
        for (const value of Object.values(here)) expect(Number.isFinite(value)).toBe(true);
      }),
      { numRuns: 60 },
    );
  });

  it('leaves hard-panned sources alone unless it is a matrix', () => {
    fc.assert(
      fc.property(share, fc.constantFrom<UpmixLaw>('power', 'pressure', 'sqrt2', 'add'), (extraction, l) => {
        expect(upmixGains(0, { extraction, law: l })).toEqual({ left: 1, center: 0, right: 0 });
        expect(upmixGains(90, { extraction, law: l })).toEqual({ left: 0, center: 0, right: 1 });
      }),
    );
    expect(upmixGains(0, { law: 'matrix', matrixDeg: 54.7 }).center).toBeGreaterThan(0.4);
  });

  it('narrows the more it extracts with the power law, by the energy vector', () => {
    fc.assert(
      fc.property(number(0, 0.95), (extraction) => {
        const at = (e: number) => widthRetained({ extraction: e, law: 'power' }).energy;
        expect(at(extraction + 0.05)).toBeLessThan(at(extraction));
      }),
      { numRuns: 40 },
    );
  });

  // Computed, acoustic model of this project: width retained by energy / velocity vector.
  it.each<[UpmixLaw, number, number | undefined, number, number]>([
    ['power', 0, undefined, 1, 1],
    ['power', 0.25, undefined, 0.9, 0.85],
    ['power', 0.75, undefined, 0.74, 0.83],
    ['pressure', 1, undefined, 0.78, 0.96],
    ['sqrt2', 0.5, undefined, 1.03, 1.03],
    ['add', 1, undefined, 0.89, 0.84],
    ['matrix', 0, 54.7, 0.81, 0.79],
    ['matrix', 0, 35.3, 0.57, 0.82],
  ])('keeps this much width: %s %f', (l, extraction, matrixDeg, byEnergy, byVelocity) => {
    const r = widthRetained({ law: l, extraction, ...(matrixDeg === undefined ? {} : { matrixDeg }) });
    expect(Math.abs(r.energy - byEnergy)).toBeLessThan(0.0051);
    expect(Math.abs(r.velocity - byVelocity)).toBeLessThan(0.0051);
  });

  it('refuses settings that are none', () => {
    expect(() => upmix({ panDeg: 91, extraction: 0.5 })).toThrow(
      /panDeg is 91; accepted: a number from 0 to 90/,
    );
    expect(() => upmix({ panDeg: 45, extraction: 1.2 })).toThrow(/extraction is 1.2/);
    expect(() => upmix({ panDeg: 45 })).toThrow(/extraction is missing; accepted: 0 to 1/);
    expect(() => upmix({ panDeg: 45, law: 'matrix' })).toThrow(/matrixDeg is missing/);
    expect(() => widthRetained({ extraction: 1 }, 91)).toThrow(/halfAngleDeg is 91; accepted/);
    expect(() => upmix({ panDeg: 45, extraction: 0.5, law: 'loud' as UpmixLaw })).toThrow(
      /law is loud; accepted: power/,
    );
  });
});

describe('content that mains and center share', () => {
  it('is nothing at full extraction and cannot comb without a center', () => {
    expect(sharedContent({ extraction: 1 })).toMatchObject({ ratio: 0, ratioDb: null });
    expect(sharedContent({ extraction: 0 })).toMatchObject({ centerGain: 0, ratio: null });
  });

  it('shrinks with extraction; adding a center shares it all', () => {
    fc.assert(
      fc.property(number(0.05, 0.9), (extraction) => {
        const at = (e: number) => sharedContent({ extraction: e }).ratio ?? Number.POSITIVE_INFINITY;
        expect(at(extraction + 0.05)).toBeLessThan(at(extraction));
      }),
    );
    expect(sharedContent({ extraction: 1, law: 'add' }).ratioDb).toBeCloseTo(3.0103, 4);
    expect(sharedContent({ law: 'matrix', matrixDeg: 54.7356 }).ratio).toBeCloseTo(2, 4);
    // At 90 deg the matrix is plain stereo: the center is silent, up to rounding.
    expect(sharedContent({ law: 'matrix', matrixDeg: 90 })).toMatchObject({ centerGain: 0, ratio: null });
  });
});

describe('ambience', () => {
  // Computed, acoustic model of this project: correlation and lateral share of a passive subtraction.
  it.each([
    [0.25, -0.28, 0.96],
    [0.5, -0.6, 0.83],
    [0.75, -0.88, 0.65],
    [1, -1, 0.5],
  ])('turns out of phase when %f of the middle is subtracted', (extraction, correlation, lateral) => {
    const r = diffuse({ extraction });
    expect(Math.abs(r.correlation - correlation)).toBeLessThan(0.0051);
    expect(Math.abs(r.lateralFraction - lateral)).toBeLessThan(0.0051);
    expect(r.shares.reduce((sum, s) => sum + s, 0)).toBeCloseTo(1, 12);
  });

  it('is left alone by ideal extraction; adding keeps it uncorrelated (0.89 lateral at half, 0.67 at full)', () => {
    expect(diffuse({ extraction: 1, leak: 0 })).toEqual({
      shares: [0.5, 0, 0.5],
      correlation: -0,
      lateralFraction: 1,
    });
    expect(diffuse({ extraction: 0.5, law: 'add' }).lateralFraction).toBeCloseTo(0.889, 3);
    expect(diffuse({ extraction: 1, law: 'add' })).toMatchObject({ correlation: 0 });
    expect(diffuse({ extraction: 1, law: 'add' }).lateralFraction).toBeCloseTo(0.667, 3);
  });

  // The matrix keeps the power of two uncorrelated channels: cos^2 / 2 of it goes to the center (arithmetic).
  it.each([
    [90, 0, 0],
    [54.7356, -0.2, 1 / 6],
    [35.2644, -0.5, 1 / 3],
    [0, -1, 0.5],
  ])(
    'of a matrix at %d deg has a correlation of %d and this part in the center',
    (matrixDeg, correlation, part) => {
      const r = diffuse({ law: 'matrix', matrixDeg });
      expect(r.shares[1]).toBeCloseTo(part, 5);
      expect(r.shares[0]).toBeCloseTo((1 - part) / 2, 5);
      expect(r.correlation).toBeCloseTo(correlation, 5);
      expect(r.lateralFraction).toBeCloseTo(1 - part, 5);
      expect(() => diffuse({ law: 'loud' as UpmixLaw })).toThrow(/law is loud/);
    },
  );
});

describe('image at seats off the middle', () => {
  const at = (extraction: number, seatXM: number, panDeg = 45) =>
    offSeatImage({ extraction, seatXM, panDeg, distanceM: 3, halfBaseM: 1.5 }).imageM;

  // Computed, acoustic model of this project: m from the center for a centered source.
  it.each([
    [0, [0.76, 1.21, 1.4, 1.47, 1.48]],
    [0.25, [0.44, 0.81, 1.08, 1.4, 1.46]],
    [0.5, [0.2, 0.41, 0.65, 1.23, 1.39]],
    [0.7, [0.07, 0.16, 0.29, 0.89, 1.23]],
    [0.8, [0.03, 0.07, 0.14, 0.58, 0.99]],
    [0.9, [0.01, 0.02, 0.04, 0.2, 0.49]],
    [1, [0, 0, 0, 0, 0]],
  ])('moves by this much with an extraction of %f', (extraction, images) => {
    [0.1, 0.2, 0.3, 0.6, 1.2].forEach((seatXM, i) => {
      expect(Math.abs(at(extraction, seatXM) - (images[i] ?? Number.NaN))).toBeLessThan(0.0055);
    });
  });

  // Same source: a source half left, at seats -0.6, -0.3, 0, 0.3, 0.6, 1.2 m.
  it.each([
    [0, [-1.49, -1.48, -1.06, 0.99, 1.34, 1.39]],
    [0.5, [-1.46, -1.29, -0.71, 0.19, 0.84, 1.11]],
    [1, [-1.39, -1.01, -0.41, -0.1, -0.02, -0.01]],
  ])('carries a half-left source with an extraction of %f', (extraction, images) => {
    [-0.6, -0.3, 0, 0.3, 0.6, 1.2].forEach((seatXM, i) => {
      expect(Math.abs(at(extraction, seatXM, 22.5) - (images[i] ?? Number.NaN))).toBeLessThan(0.0055);
    });
  });

  it('mirrors, and extracting more never makes a centered source less firm', () => {
    fc.assert(
      fc.property(number(0.01, 1.4), number(0, 0.95), (seatXM, extraction) => {
        expect(at(extraction, -seatXM)).toBeCloseTo(-at(extraction, seatXM), 9);
        expect(at(extraction + 0.05, seatXM)).toBeLessThanOrEqual(at(extraction, seatXM) + 1e-9);
      }),
    );
  });
});
