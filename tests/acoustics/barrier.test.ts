import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { C_AIR } from '../../src/acoustics/air.js';
import {
  barrier,
  barrierLossAtSeat,
  headLossAtSeat,
  rigidSphereDb,
  sightline,
} from '../../src/acoustics/barrier.js';
import { SPEECH_BANDS_HZ } from '../../src/acoustics/speech.js';

/** Second row 3.4 m away behind a head of 1.27 m at 2.4 m, flat floor. */
const SECOND_ROW = { earHeightM: 1.05, earDistanceM: 3.4, headDistanceM: 2.4, headTopM: 1.27 } as const;

describe('sight line', () => {
  it('from a center below the screen is cut for the second row, riser or not', () => {
    // Clearance (m) on a flat floor, with a 0.2 m and a 0.3 m riser. Computed, project reference, printed to
    // 0.01 (its -0.24 is -0.2347).
    for (const [sourceHeightM, clearances] of [
      [0.55, [-0.37, -0.23, -0.16]],
      [1.0, [-0.24, -0.09, -0.02]],
    ] as const) {
      [0, 0.2, 0.3].forEach((riserM, i) => {
        const got = sightline({ ...SECOND_ROW, sourceHeightM, earHeightM: 1.05 + riserM });
        expect(Math.abs(got.clearanceM - (clearances[i] ?? 0))).toBeLessThan(0.0055);
      });
    }
  });

  it('refuses a head behind the ear', () => {
    expect(() => sightline({ ...SECOND_ROW, sourceHeightM: 0.5, headDistanceM: 4 })).toThrow(
      /headDistanceM is 4; accepted/,
    );
  });
});

describe('a wide edge', () => {
  it('costs 5 dB when it just grazes, nothing when well clear', () => {
    expect(barrier({ fresnelNumber: 0 }).attenuationDb).toBeCloseTo(5, 9);
    expect(barrier({ fresnelNumber: -0.2 })).toEqual({ attenuationDb: 0, maekawaDb: 0 });
  });

  it('costs more the deeper the shadow, without a step and without a cap', () => {
    fc.assert(
      fc.property(fc.double({ min: -0.3, max: 100, noNaN: true }), (fresnelNumber) => {
        const here = barrier({ fresnelNumber });
        const deeper = barrier({ fresnelNumber: fresnelNumber + 0.01 });
        expect(deeper.attenuationDb).toBeGreaterThanOrEqual(here.attenuationDb);
        expect(deeper.attenuationDb - here.attenuationDb).toBeLessThan(0.5);
        expect(deeper.maekawaDb).toBeGreaterThanOrEqual(here.maekawaDb);
      }),
      { numRuns: 300 },
    );
    expect(barrier({ fresnelNumber: 1000 }).attenuationDb).toBeGreaterThan(40);
    // Maekawa and Kurze-Anderson at 10: 23.1 and 23.0 dB. Computed, project reference.
    expect(barrier({ fresnelNumber: 10 }).maekawaDb).toBeCloseTo(23.1, 1);
    expect(barrier({ fresnelNumber: 10 }).attenuationDb).toBeCloseTo(23.0, 1);
  });

  it('at a seat takes more treble than bass, at most 20 dB', () => {
    const { attenuationDb, speechLossDb } = barrierLossAtSeat({ ...SECOND_ROW, sourceHeightM: 0.55 });
    expect(attenuationDb).toHaveLength(18);
    attenuationDb.forEach((loss, i) => {
      expect(loss).toBeGreaterThanOrEqual(attenuationDb[i - 1] ?? 0);
      expect(loss).toBeLessThanOrEqual(20);
    });
    expect(speechLossDb).toBeGreaterThan(5);
    const clear = barrierLossAtSeat({ ...SECOND_ROW, sourceHeightM: 3.5 });
    expect(clear.speechLossDb).toBeLessThan(0.5);
  });

  it('refuses NaN', () => {
    expect(() => barrier({ fresnelNumber: Number.NaN })).toThrow(/fresnelNumber is NaN; accepted/);
  });
});

describe('a head', () => {
  it('in the line, as a perfect ball, makes a bright spot', () => {
    // Source 2.1 m before, ear 0.9 m behind: 1, 2, 4, 8 kHz. Computed, project reference.
    for (const [frequencyHz, level] of [
      [1000, 0.3],
      [2000, 0.6],
      [4000, 1.0],
      [8000, 1.4],
    ] as const) {
      const got = rigidSphereDb({ sourceDistanceM: 2.1, receiverDistanceM: 0.9, cosAngle: -1, frequencyHz });
      expect(Math.abs(got - level)).toBeLessThan(0.05);
    }
  });

  it('works the same in both directions', () => {
    const distance = fc.double({ min: 0.3, max: 4, noNaN: true });
    const cosine = fc.double({ min: -1, max: 1, noNaN: true });
    fc.assert(
      fc.property(
        distance,
        distance,
        cosine,
        fc.double({ min: 100, max: 8000, noNaN: true }),
        (a, b, cosAngle, frequencyHz) => {
          if (Math.abs(a - b) < 0.01 && cosAngle > 0.99) return;
          const there = rigidSphereDb({ sourceDistanceM: a, receiverDistanceM: b, cosAngle, frequencyHz });
          const back = rigidSphereDb({ sourceDistanceM: b, receiverDistanceM: a, cosAngle, frequencyHz });
          expect(there).toBeCloseTo(back, 6);
        },
      ),
    );
  });

  it('far away it is not there', () => {
    const far = { sourceDistanceM: 50, receiverDistanceM: 50, cosAngle: 0, frequencyHz: 1000 };
    expect(Math.abs(rigidSphereDb(far))).toBeLessThan(0.1);
  });

  it('costs speech well under 1 dB, where a wide edge in its place costs several', () => {
    for (const sourceHeightM of [0.55, 0.8, 1.0]) {
      for (const earHeightM of [1.05, 1.15, 1.25]) {
        const place = { ...SECOND_ROW, sourceHeightM, earHeightM };
        expect(headLossAtSeat(place).speechLossDb).toBeLessThan(1);
        expect(barrierLossAtSeat(place).speechLossDb).toBeGreaterThan(4);
      }
    }
  });
});

describe('the geometry behind both', () => {
  /** Loudspeaker 0.8 m high, ear 1.1 m high 6 m away, an edge after 2 m: the sight line passes it at 0.9 m. */
  const place = { sourceHeightM: 0.8, earHeightM: 1.1, earDistanceM: 6, headDistanceM: 2 } as const;
  const lossAt = (headTopM: number, frequencyHz: number): number => {
    const over = Math.sqrt(2 ** 2 + (headTopM - 0.8) ** 2) + Math.sqrt(4 ** 2 + (headTopM - 1.1) ** 2);
    const detourM = over - Math.sqrt(6 ** 2 + 0.3 ** 2);
    const fresnelNumber = ((headTopM > 0.9 ? 2 : -2) * detourM * frequencyHz) / C_AIR;
    return Math.min(20, barrier({ fresnelNumber }).attenuationDb);
  };
  it.each([1.3, 1.0, 0.85, 0.6])(
    'an edge %f m high lengthens the way as two sides of a triangle do',
    (headTopM) => {
      const { attenuationDb } = barrierLossAtSeat({ ...place, headTopM });
      SPEECH_BANDS_HZ.forEach((hz, i) => {
        expect(attenuationDb[i]).toBeCloseTo(lossAt(headTopM, hz), 9);
      });
    },
  );
  it('a head is a ball whose middle lies 14 cm below its top, between source and ear', () => {
    const { attenuationDb, speechLossDb } = headLossAtSeat({ ...place, headTopM: 1.04 });
    // From the middle at 0.9 m: the source 2 m before and 0.1 m below, the ear 4 m behind and 0.2 m above.
    const [sourceDistanceM, receiverDistanceM] = [Math.hypot(2, 0.1), Math.hypot(4, 0.2)];
    const cosAngle = (-2 * 4 - 0.1 * 0.2) / (sourceDistanceM * receiverDistanceM);
    SPEECH_BANDS_HZ.forEach((frequencyHz, i) => {
      const level = rigidSphereDb({
        sourceDistanceM,
        receiverDistanceM,
        cosAngle: Math.max(-1, cosAngle),
        frequencyHz,
      });
      expect(attenuationDb[i]).toBeCloseTo(Math.max(0, -level), 9);
    });
    expect(speechLossDb).toBeGreaterThanOrEqual(0);
  });
  it('a head beside the line costs what the ball costs at that angle', () => {
    const { attenuationDb } = headLossAtSeat({ ...place, headTopM: 1.3 });
    const [sourceDistanceM, receiverDistanceM] = [Math.hypot(2, 0.36), Math.hypot(4, 0.06)];
    const cosAngle = (-2 * 4 + 0.36 * 0.06) / (sourceDistanceM * receiverDistanceM);
    const levels = SPEECH_BANDS_HZ.map((frequencyHz) =>
      rigidSphereDb({ sourceDistanceM, receiverDistanceM, cosAngle, frequencyHz }),
    );
    expect(Math.min(...levels)).toBeLessThan(-0.5);
    levels.forEach((level, i) => {
      expect(attenuationDb[i]).toBeCloseTo(Math.max(0, -level), 9);
    });
  });
});
