/** What one recording tells, and what is not trusted. */
import type { Side } from './polarities.js';
import type { SignalKind } from './sequence.js';

/** Why something cannot be trusted. */
export type Reason =
  | 'not-the-signal'
  | 'cut'
  | 'channel-silent'
  | 'phone-moved'
  | 'clock-slips'
  | 'noisy'
  | 'talking'
  | 'gain-rides'
  | 'clipped'
  | 'downmixed'
  | 'route-unsure';

/** What is worth a sentence but spoils no value. */
export type Remark =
  | 'center-very-late'
  | 'center-very-early'
  | 'direct-sound-weak'
  | 'in-bands-only'
  | 'low-sample-rate'
  | 'mains-unlike'
  | 'sums-differ'
  | 'slips-unseen'
  | 'share-only'
  | 'end-cut';

/** Clocks of players and recorders are nearer, parts in a million: beyond, the playback lost or doubled sound. */
export const MOST_PPM = 151;

type Known = number | null;

export interface Measurement {
  readonly signal: SignalKind | null;
  readonly trusted: boolean;
  readonly reasons: readonly Reason[];
  readonly remarks: readonly Remark[];
  /** The channel that was not heard, where one was not. */
  readonly silent: readonly Side[];
  /** Positive: the center is late. */
  readonly delayMs: {
    readonly centerMinusLeft: Known;
    readonly centerMinusRight: Known;
    readonly leftMinusRight: Known;
    readonly uncertainty: Known;
  };
  readonly polarity: {
    readonly left: 1 | -1 | null;
    readonly center: 1 | -1 | null;
    readonly right: 1 | -1 | null;
    readonly undecided: readonly Side[];
  };
  /** Mean of the third octaves 500 to 2000 Hz, room included. */
  readonly levelDb: {
    readonly centerMinusMains: Known;
    readonly leftMinusRight: Known;
    readonly uncertainty: Known;
  };
  /** Third octaves, level made equal first. */
  readonly toneDb: {
    readonly hz: readonly number[];
    readonly centerMinusMains: readonly Known[];
    readonly uncertainty: Known;
  };
  /** Strongest reflection of the center within 30 ms, and the first notch that it makes. */
  readonly reflection: { readonly delayMs: Known; readonly levelDb: Known; readonly notchHz: Known };
  readonly clarity: { readonly c50Db: Known; readonly d50: Known };
  readonly distortionPercent: { readonly left: Known; readonly center: Known; readonly right: Known };
  readonly middleFrom: 'center' | 'all' | 'mains' | null;
  /** First sweep against the quiet between the sweeps. */
  readonly snrDb: Known;
  /** Recorder against player: positive, the recorder runs fast. */
  readonly clockPpm: Known;
}

/** Envelope of the direct sound and what follows, for a picture: times against the arrival of left. */
export interface Trace {
  readonly side: Side;
  readonly timesMs: readonly number[];
  /** Level against the largest of the three, dB. */
  readonly levelsDb: readonly number[];
}

export interface Measured {
  readonly measurement: Measurement;
  readonly traces: readonly Trace[];
}

const NOTHING: Measurement = {
  signal: null,
  trusted: false,
  reasons: [],
  remarks: [],
  silent: [],
  delayMs: { centerMinusLeft: null, centerMinusRight: null, leftMinusRight: null, uncertainty: null },
  polarity: { left: null, center: null, right: null, undecided: [] },
  levelDb: { centerMinusMains: null, leftMinusRight: null, uncertainty: null },
  toneDb: { hz: [], centerMinusMains: [], uncertainty: null },
  reflection: { delayMs: null, levelDb: null, notchHz: null },
  clarity: { c50Db: null, d50: null },
  distortionPercent: { left: null, center: null, right: null },
  middleFrom: null,
  snrDb: null,
  clockPpm: null,
};

/** Nothing can be read from this recording. */
export const refused = (reasons: readonly Reason[], known: Partial<Measurement> = {}): Measurement => ({
  ...NOTHING,
  ...known,
  reasons,
});
