/** One recording tells time, polarity, level and tone, and where it cannot it says why and gives no number. */
import { describe, expect, it } from 'vitest';
import {
  clipped,
  downmixing,
  drifting,
  extracting,
  extractingBand,
  silencing,
  withBurst,
} from '../../eval/recordings/faults.js';
import {
  DEMO_TAKE as DEMO,
  DEMO_ROOM,
  discrete,
  type InventedSpeaker,
  record,
  type Take,
} from '../../src/recording/invented.js';
import { measure } from '../../src/recording/measure.js';
import type { Measurement } from '../../src/recording/measurement.js';
import type { SweepName } from '../../src/recording/sequence.js';

/** Half the work of 48 kHz; the treble up to 12.5 kHz is all there. */
const DEMO_TAKE: Take = { ...DEMO, rateHz: 32_000 };
const STEREO: Take = { ...DEMO_TAKE, kind: 'stereo', plays: extracting(1) };
/** Making a recording costs as much as measuring it: one that several tests change is made once. */
const made = new WeakMap<Take, Float32Array>();
function told(take: Take, edit = (samples: Float32Array): Float32Array => samples): Measurement {
  const samples = made.get(take) ?? record(take);
  made.set(take, samples);
  return measure(edit(samples), take.rateHz).measurement;
}
const room = (
  take: Take,
  changes: Partial<Record<'left' | 'center' | 'right', Partial<InventedSpeaker>>>,
): Take => ({
  ...take,
  room: {
    ...take.room,
    ...Object.fromEntries(
      Object.entries(changes).map(([side, change]) => [side, { ...take.room[side as 'left'], ...change }]),
    ),
  },
});
const noEnergies = (m: Measurement): void => {
  expect(m.levelDb.centerMinusMains).toBeNull();
  expect(m.levelDb.leftMinusRight).toBeNull();
  expect(m.toneDb.centerMinusMains.filter((db) => db !== null)).toEqual([]);
  expect(m.clarity.c50Db).toBeNull();
  expect(Object.values(m.distortionPercent).filter((part) => part !== null)).toEqual([]);
};
const noTimes = ({ delayMs }: Measurement): void => {
  expect(delayMs.centerMinusLeft).toBeNull();
  expect(delayMs.centerMinusRight).toBeNull();
};
const demo = told(DEMO_TAKE);
const stereo = told(STEREO);
const { left, center, right } = DEMO_ROOM;

describe('a good recording', () => {
  it.each([
    ['by channels', demo],
    ['in stereo, with an upmix that moves the middle to the center', stereo],
  ])('%s tells the delay within a twentieth of a millisecond', (_, m) => {
    expect(m.trusted).toBe(true);
    expect(m.reasons).toEqual([]);
    expect(m.delayMs.centerMinusLeft).toBeCloseTo(center.arrivalMs - left.arrivalMs, 1);
    expect(Math.abs((m.delayMs.centerMinusLeft ?? 9) - (center.arrivalMs - left.arrivalMs))).toBeLessThan(
      0.05,
    );
    expect(Math.abs((m.delayMs.centerMinusRight ?? 9) - (center.arrivalMs - right.arrivalMs))).toBeLessThan(
      0.05,
    );
    expect(m.polarity).toEqual({ left: 1, center: -1, right: 1, undecided: [] });
    expect(m.clockPpm).toBeCloseTo(DEMO_TAKE.ppm, 1);
  });

  it('tells the level within 0.7 dB, and 3 dB more in stereo where the center carries both channels', () => {
    expect(Math.abs((demo.levelDb.centerMinusMains ?? 99) + 4.3)).toBeLessThan(0.7);
    expect((stereo.levelDb.centerMinusMains ?? 99) - (demo.levelDb.centerMinusMains ?? 0)).toBeCloseTo(
      3.01,
      1,
    );
  });

  it('tells the tilt of the center against the mains within 1.5 dB a band, the microphone left out', () => {
    const m = told(room(STEREO, { center: { ...left, tiltDb: left.tiltDb - 1 } }));
    for (const [i, hz] of m.toneDb.hz.entries()) {
      if (hz < 300 || hz > 8500) continue;
      // Level is made equal over 500 Hz to 2 kHz, whose middle is 1 kHz.
      expect(Math.abs((m.toneDb.centerMinusMains[i] ?? 99) + Math.log2(hz / 1000))).toBeLessThan(1.5);
    }
  });

  it('finds the reflection of the shelf and the first notch that it makes', () => {
    expect(demo.reflection.delayMs).toBeCloseTo(0.9, 1);
    expect(Math.abs((demo.reflection.levelDb ?? 99) - 20 * Math.log10(0.45))).toBeLessThan(1);
    expect(demo.reflection.notchHz).toBeCloseTo(500 / (demo.reflection.delayMs ?? 1), 6);
  });

  it('tells distortion where it stands out of the floor', () => {
    const loud: Take = { ...room(STEREO, { center: { harmonics: [0.05, 0.02] } }), snrDb: 50 };
    const { distortionPercent } = told(loud);
    expect(Math.abs((distortionPercent.center ?? 99) - 100 * Math.hypot(0.05, 0.02))).toBeLessThan(1);
  });
});

describe('who plays the middle of a stereo file', () => {
  it.each([
    ['center', stereo],
    ['all', told({ ...STEREO, plays: extracting(0.5) })],
    ['mains', told({ ...STEREO, plays: extracting(0) })],
  ] as const)('%s', (from, m) => {
    expect(m.middleFrom).toBe(from);
    expect(m.trusted).toBe(true);
    if (from === 'mains') noTimes(m);
    else expect(Math.abs((m.delayMs.centerMinusLeft ?? 9) - 1.6)).toBeLessThan(0.1);
    if (from !== 'center') expect(m.levelDb.centerMinusMains).toBeNull();
  });

  it('gives no time where the upmix works in a band: the treble would come from the mains', () => {
    const m = told({
      ...room(STEREO, { center: { arrivalMs: 9.4 } }),
      plays: extractingBand(300, 8000),
    });
    expect(m.reasons).toContain('route-unsure');
    expect(m.remarks).toContain('in-bands-only');
    noTimes(m);
  });
});

describe('polarity', () => {
  it('names the odd one: left, when center and right agree against it', () => {
    const { polarity } = told(room(STEREO, { left: { polarity: -1 }, center: { polarity: 1 } }));
    expect(polarity).toEqual({ left: -1, center: 1, right: 1, undecided: [] });
  });

  it('names right', () => {
    const { polarity } = told(room(STEREO, { right: { polarity: -1 }, center: { polarity: 1 } }));
    expect(polarity).toEqual({ left: 1, center: 1, right: -1, undecided: [] });
  });

  it.each([
    [300, 1],
    [420, -1],
  ] as const)(
    'is not decided with a three-way left that crosses at %d Hz and another right',
    (hz, polarity) => {
      const m = told(
        room(STEREO, {
          left: {
            crossovers: [
              { hz, order: 4 },
              { hz: 2400, order: 4 },
            ],
          },
          center: { polarity },
        }),
      );
      expect(m.polarity.center).toBeNull();
      expect(m.polarity.right).toBeNull();
      expect(m.polarity.undecided).toEqual(['center', 'right']);
      expect(m.remarks).toContain('mains-unlike');
    },
  );
});

describe('a playback that loses time between the sweeps', () => {
  const losing = (first: SweepName, lostS: number): NonNullable<Take['lateS']> => {
    const order: SweepName[] = ['left', 'right', 'middle', 'center', 'repeat', 'sum', 'difference'];
    return (name) => (order.indexOf(name) >= order.indexOf(first) ? lostS : 0);
  };

  it.each([0.0005, -0.002])('is told by the sums of the file by channels: %d s', (lostS) => {
    const m = told({ ...DEMO_TAKE, lateS: losing('center', lostS) });
    expect(m.reasons).toEqual(['clock-slips']);
    noTimes(m);
    expect(m.polarity.center).toBe(-1);
    expect(m.levelDb.centerMinusMains).not.toBeNull();
  });

  it('is told in stereo where it reads as a clock that no recorder has', () => {
    const m = told({ ...STEREO, lateS: losing('repeat', 0.0031) });
    expect(m.reasons).toEqual(['clock-slips']);
    expect(m.clockPpm).toBeNull();
    noTimes(m);
  });

  it('is told in stereo as what the file cannot see', () => {
    expect(stereo.remarks).toContain('slips-unseen');
    expect(demo.remarks).not.toContain('slips-unseen');
  });
});

describe('a warning takes the values that it concerns, and no others', () => {
  it.each([2.6, 10.5, 11.2])('a bark %d s into the file', (atS) => {
    const m = told(STEREO, (samples) => withBurst(samples, STEREO.rateHz, atS, 0.05));
    expect(m.reasons).toEqual(['talking']);
    noEnergies(m);
    expect(m.delayMs.centerMinusLeft).toBeCloseTo(1.6, 1);
    expect(m.polarity.center).toBe(-1);
  });

  it('a recorder that rides the gain', () => {
    const m = told(STEREO, (samples) => drifting(samples, 3));
    expect(m.reasons).toEqual(['gain-rides']);
    noEnergies(m);
    expect(m.delayMs.centerMinusLeft).toBeCloseTo(1.6, 1);
  });

  it('clipping', () => {
    const m = told(STEREO, (samples) => clipped(samples, 0.6));
    expect(m.reasons).toContain('clipped');
    noEnergies(m);
    expect(m.polarity.center).toBe(-1);
  });

  it('a phone that moved: nothing can be compared', () => {
    const moved = room(STEREO, {
      left: {
        arrivalMs: 8.2,
        reflections: [
          [1.7, 0.5],
          [5.1, 0.4],
        ],
      },
    }).room;
    const m = told({
      ...STEREO,
      roomAt: (name) => (name === 'left' ? DEMO_ROOM : { ...moved, rt60S: 0.39 }),
    });
    expect(m.reasons).toEqual(['phone-moved']);
    noTimes(m);
    noEnergies(m);
    expect(m.polarity.center).toBeNull();
  });

  it('noise: arrival holds longest, level goes first', () => {
    const m = told({ ...STEREO, snrDb: -5 });
    expect(m.reasons).toEqual(['noisy']);
    noEnergies(m);
    expect(m.delayMs.centerMinusLeft).toBeCloseTo(1.6, 1);
  });

  it('a player that mixes the center into left and right', () => {
    const m = told({ ...DEMO_TAKE, plays: downmixing });
    expect(m.reasons).toEqual(['downmixed']);
    noTimes(m);
    expect(m.polarity.center).toBeNull();
    expect(m.levelDb.leftMinusRight).not.toBeNull();
  });
});

describe('a recording that cannot serve', () => {
  it.each(['left', 'center', 'right'] as const)('tells that %s was silent', (side) => {
    const m = told({ ...DEMO_TAKE, plays: silencing(side) });
    expect(m.reasons).toEqual(['channel-silent']);
    expect(m.silent).toEqual([side]);
  });

  it('tells that left was silent in stereo, where only two sweeps are left', () => {
    expect(told({ ...STEREO, plays: ([, right, both]) => discrete([0, right, both]) }).silent).toEqual([
      'left',
    ]);
  });

  it('tells that its beginning or its end is missing', () => {
    const rate = STEREO.rateHz;
    expect(told(STEREO, (samples) => samples.slice(4.5 * rate)).reasons).toEqual(['cut']);
    expect(told(STEREO, (samples) => samples.slice(0, 14 * rate)).reasons).toEqual(['cut']);
  });

  it('measures what is there when only the last sweeps are missing, and says so', () => {
    const m = told(DEMO_TAKE, (samples) => samples.slice(0, 19 * DEMO_TAKE.rateHz));
    expect(m.remarks).toContain('end-cut');
    expect(m.delayMs.centerMinusLeft).toBeCloseTo(1.6, 1);
  });

  it.each([
    ['silence', () => 0],
    ['a steady tone', (i: number) => 0.3 * Math.sin(i / 20)],
    ['noise', (i: number) => Math.sin(i * i * 12.9898) * 0.3],
  ])('is told that it is not the signal: %s', (_, of) => {
    const samples = new Float32Array(20 * 32_000).map((_, i) => of(i));
    const { measurement } = measure(samples, 32_000);
    expect(measurement.reasons).toEqual(['not-the-signal']);
    expect(measurement.signal).toBeNull();
  });
});

describe('unusual recorders and unusual systems', () => {
  it.each([24_000, 16_000])(
    'a recorder at %d Hz serves arrival from the middle band, and polarity',
    (rateHz) => {
      const m = told({ ...STEREO, rateHz });
      expect(m.remarks).toContain('low-sample-rate');
      expect(m.delayMs.uncertainty).toBeGreaterThan(0.1);
      expect(Math.abs((m.delayMs.centerMinusLeft ?? 9) - 1.6)).toBeLessThan(m.delayMs.uncertainty ?? 0);
      expect(m.polarity.center).toBe(-1);
    },
  );

  it('a recorder over 50 kHz, which is heard at a part of its rate, tells the same', () => {
    const m = told({ ...STEREO, rateHz: 64_000 });
    expect(Math.abs((m.delayMs.centerMinusLeft ?? 9) - 1.6)).toBeLessThan(0.05);
    expect(m.polarity.center).toBe(-1);
  });

  it.each([
    [25, STEREO],
    [150, STEREO],
    [-30, STEREO],
  ] as const)('a center %d ms late is timed and told', (lateMs, take) => {
    const m = told(room(take, { center: { arrivalMs: left.arrivalMs + lateMs } }));
    expect(Math.abs((m.delayMs.centerMinusLeft ?? 999) - lateMs)).toBeLessThan(0.1);
    expect(m.remarks).toContain(lateMs > 0 ? 'center-very-late' : 'center-very-early');
  });
});
