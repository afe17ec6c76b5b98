/** `npm run eval -- --recordings [SEEDS]`: how well recordings of invented rooms are measured, as a table. */
import {
  discrete,
  type InventedRoom,
  type InventedSpeaker,
  record,
  type Take,
} from '../../src/recording/invented.js';
import { measure } from '../../src/recording/measure.js';
import type { Measurement } from '../../src/recording/measurement.js';
import { type Random, randomFrom } from '../random.js';
import { table } from '../table.js';
import { clipped, downmixing, drifting, extracting, extractingBand, silencing, withBurst } from './faults.js';

const RATES_HZ = [44_100, 48_000] as const;

function speaker(random: Random, like?: InventedSpeaker): InventedSpeaker {
  return {
    arrivalMs: 9 + random.between(-0.5, 0.5),
    levelDb: random.between(-1, 1),
    polarity: random.chance(0.9) ? 1 : -1,
    lowLimitHz: like?.lowLimitHz ?? random.between(45, 110),
    crossovers: like?.crossovers ?? [{ hz: random.between(1500, 3500), order: 4 }],
    tiltDb: like?.tiltDb ?? random.between(-0.8, 0.8),
    reflections: Array.from(
      { length: 4 },
      () => [random.between(0.4, 14), random.between(0.08, 0.5)] as const,
    ),
    harmonics: [10 ** random.between(-2.7, -1.5), 10 ** random.between(-2.9, -1.7)],
  };
}

function takeOf(seed: number): Take {
  const random = randomFrom(seed);
  const left = { ...speaker(random), polarity: 1 as const };
  const room: InventedRoom = {
    left,
    right: speaker(random, left),
    center: {
      ...speaker(random),
      arrivalMs: 9 + random.between(-6, 6),
      levelDb: random.between(-8, 6),
      polarity: random.chance(0.6) ? 1 : -1,
    },
    rt60S: random.between(0.25, 0.7),
    reverbDb: random.between(-6, 3),
  };
  const kind = random.chance(1 / 3) ? 'stereo' : 'channels';
  return {
    kind,
    room,
    rateHz: random.pick(RATES_HZ),
    ppm: random.between(-120, 120),
    snrDb: random.between(12, 45),
    seed,
    plays: kind === 'stereo' ? extracting(random.pick([0, 0.5, 1])) : discrete,
  };
}

/** What was measured against what is true; undefined where nothing was told. */
function judged({ room, kind, plays }: Take, m: Measurement) {
  const hasCenter =
    kind === 'channels' || plays([1, 1, 0]).some(({ side, gain }) => side === 'center' && gain !== 0);
  const { centerMinusLeft } = m.delayMs;
  const votes = [m.polarity.left, m.polarity.center, m.polarity.right];
  const truth = room.left.polarity * room.center.polarity;
  const [left, center] = votes;
  return {
    hasCenter,
    delayMs:
      centerMinusLeft === null
        ? undefined
        : Math.abs(centerMinusLeft - (room.center.arrivalMs - room.left.arrivalMs)),
    polarity: !hasCenter
      ? undefined
      : center === null || center === undefined || left === null || left === undefined
        ? 'undecided'
        : left * center === truth
          ? 'right'
          : 'wrong',
  } as const;
}

const quantile = (values: readonly number[], part: number): string => {
  const sorted = [...values].sort((a, b) => a - b);
  const value = sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))];
  return value === undefined ? '-' : value.toFixed(3);
};

const FAULTS: Readonly<
  Record<
    string,
    { take?: Partial<Take>; edit?: (samples: Float32Array, rateHz: number) => Float32Array; told: string }
  >
> = {
  'gain drifts by 3 dB': { edit: (x) => drifting(x, 3), told: 'gain-rides' },
  clipping: { edit: (x) => clipped(x, 0.5), told: 'clipped' },
  'a bark on the center': { edit: (x, rate) => withBurst(x, rate, 11, 0.05), told: 'talking' },
  'center mixed down': { take: { kind: 'channels', plays: downmixing }, told: 'downmixed' },
  'center silent': { take: { kind: 'channels', plays: silencing('center') }, told: 'channel-silent' },
  'end cut off': { edit: (x, rate) => x.slice(0, 14 * rate), told: 'cut' },
  'playback loses 1.2 ms': {
    take: {
      kind: 'channels',
      plays: discrete,
      lateS: (name) => (name === 'left' || name === 'right' ? 0 : 0.0012),
    },
    told: 'clock-slips',
  },
  'upmix in a band': { take: { kind: 'stereo', plays: extractingBand(300, 8000) }, told: 'route-unsure' },
};

const FIRST_SEED = 40_000;
const FAULT_SEEDS = 3;

export function recordingsPart(seeds = 30): string {
  const takes = Array.from({ length: seeds }, (_, i) => takeOf(FIRST_SEED + i));
  const results = takes.map((take) => ({
    take,
    ...judged(take, measure(record(take), take.rateHz).measurement),
  }));
  const row = (name: string, list: typeof results) => {
    const centers = list.filter(({ hasCenter }) => hasCenter);
    const delays = centers.flatMap(({ delayMs }) => delayMs ?? []);
    const count = (verdict: string): number => centers.filter(({ polarity }) => polarity === verdict).length;
    return [
      name,
      centers.length,
      delays.length,
      `${quantile(delays, 0.5)} / ${quantile(delays, 0.95)}`,
      `${count('wrong')} / ${count('undecided')}`,
    ];
  };
  const faults = Object.entries(FAULTS).map(([name, { take, edit, told }]) => {
    const seen = Array.from({ length: FAULT_SEEDS }, (_, i) => {
      const base = { ...takeOf(FIRST_SEED + 500 + i), ...take };
      const sound = record(base);
      return measure(edit ? edit(sound, base.rateHz) : sound, base.rateHz).measurement;
    });
    return [
      name,
      told,
      `${seen.filter(({ reasons }) => (reasons as string[]).includes(told)).length} of ${FAULT_SEEDS}`,
    ];
  });
  return [
    '## Recordings of invented rooms',
    table(
      [
        'signal over noise',
        'with a center',
        'delay told',
        'delay off, ms, 50 % / 95 %',
        'polarity wrong / undecided',
      ],
      [
        row(
          'under 20 dB',
          results.filter(({ take }) => take.snrDb < 20),
        ),
        row(
          '20 dB and more',
          results.filter(({ take }) => take.snrDb >= 20),
        ),
      ],
    ),
    table(['fault', 'reason', 'told'], faults),
  ].join('\n\n');
}
