/** Pictures of a recording that a layman reads: what arrives when, the tone against its thresholds, clarity. */
import type { Measurement, Trace } from '../../recording/measurement.js';
import { LIMITS } from '../../rules/limits.js';
import { frequencyAxis, levelAxis, linearAxis, tenth } from '../plots/axes.js';
import type { BarChart, Chart, LineChart, XY } from '../plots/chart.js';
import { levelText } from './words.js';

const FROM_MS = -3;
const TO_MS = 25;
const LOWEST_DB = -35;

export function recordingCharts(m: Measurement, traces: readonly Trace[]): Chart[] {
  return [impulseChart(m, traces), toneChart(m), clarityChart(m)].filter((chart) => chart !== undefined);
}

function impulseChart(m: Measurement, traces: readonly Trace[]): LineChart | undefined {
  if (m.delayMs.leftMinusRight === null) return undefined;
  const heard = traces.filter(({ side }) => side !== 'center' || m.delayMs.centerMinusLeft !== null);
  const largest = Math.max(...heard.flatMap(({ levelsDb }) => levelsDb));
  const curves = heard.map(({ side, timesMs, levelsDb }) => ({
    name: side,
    marked: false,
    points: timesMs
      .map((time, i): XY => [time, Math.max(LOWEST_DB, (levelsDb[i] ?? LOWEST_DB) - largest)])
      .filter(([time]) => time >= FROM_MS && time <= TO_MS),
  }));
  const { centerMinusLeft } = m.delayMs;
  return {
    kind: 'lines',
    id: 'recorded-arrivals',
    title: 'What arrives when',
    says:
      centerMinusLeft === null
        ? 'The first peak of each loudspeaker is its direct sound; what follows comes from walls and furniture.'
        : `The first peak of each loudspeaker is its direct sound. That of the center comes ${tenth(Math.abs(centerMinusLeft))} ms ${centerMinusLeft < 0 ? 'before' : 'after'} that of left; what follows comes from walls and furniture.`,
    notes: ['Envelope of the treble, 3 to 9 kHz; time zero is the arrival of left.'],
    x: linearAxis('time after left (ms)', FROM_MS, TO_MS, 5),
    y: linearAxis('level (dB)', LOWEST_DB, 0, 5),
    curves,
    thresholds: [],
    table: {
      caption: 'Arrival against left, in ms',
      head: ['loudspeaker', 'arrival'],
      rows: [
        ['left', '0'],
        ...(centerMinusLeft === null ? [] : [['center', centerMinusLeft.toFixed(2)]]),
        ['right', (-m.delayMs.leftMinusRight).toFixed(2)],
      ],
    },
  };
}

function toneChart({ toneDb: { hz, centerMinusMains }, levelDb }: Measurement): LineChart | undefined {
  const points = hz.flatMap((band, i): XY[] => {
    const db = centerMinusMains[i];
    return db === null || db === undefined ? [] : [[band, db]];
  });
  if (points.length === 0) return undefined;
  const worst = points.reduce((most, point) => (Math.abs(point[1]) > Math.abs(most[1]) ? point : most));
  const { clear } = LIMITS.bandDb;
  const level = levelDb.centerMinusMains;
  return {
    kind: 'lines',
    id: 'recorded-tone',
    title: 'Does the center sound like the mains?',
    says: `The center differs most near ${Math.round(worst[0])} Hz, by ${tenth(worst[1])} dB.${level === null ? '' : ` It is ${levelText(level, 'a main')}.`}`,
    notes: [
      'Third octaves, room included, level made equal first. An ordinary phone adds up to 2.5 dB a band.',
    ],
    x: frequencyAxis(180, 11_200),
    y: levelAxis(
      'center against mains (dB)',
      points.map(([, db]) => db),
      { step: 3, atLeast: [-6, 6] },
    ),
    curves: [{ name: 'center', points, marked: true }],
    thresholds: [
      { at: clear, name: 'clear' },
      { at: -clear, name: '' },
    ],
    table: {
      caption: 'Center against mains by third octaves, in dB',
      head: ['Hz', 'difference'],
      rows: points.map(([band, db]) => [String(Math.round(band)), tenth(db)]),
    },
  };
}

/** Energy within 50 ms against what follows: equal at 0 dB. */
function clarityChart({ clarity: { c50Db, d50 } }: Measurement): BarChart | undefined {
  if (c50Db === null || d50 === null) return undefined;
  return {
    kind: 'bars',
    id: 'recorded-clarity',
    title: 'How clear is the center at this seat?',
    says: `Of the sound of a syllable ${Math.round(100 * d50)}% arrives within 50 ms, which the ear adds to it; the rest blurs the next one.`,
    notes: [
      'C50 and D50 after ISO 3382-1, mean of the octaves 500 Hz to 4 kHz. A change of 1.1 dB is just noticed.',
    ],
    x: linearAxis('part of the energy (%)', 0, 100, 20),
    groups: [
      {
        label: 'center',
        bars: [
          { label: 'helps', value: 100 * d50, text: `${Math.round(100 * d50)}%` },
          { label: 'blurs', value: 100 * (1 - d50), text: `${Math.round(100 * (1 - d50))}%` },
        ],
      },
    ],
    thresholds: [{ at: 50, name: 'more than half' }],
    table: {
      caption: 'Clarity',
      head: ['measure', 'value'],
      rows: [
        ['C50', `${c50Db.toFixed(1)} dB`],
        ['D50', `${Math.round(100 * d50)}%`],
      ],
    },
  };
}
