/** What a recording told, in words: every value with its uncertainty, every refusal with its reason. */
import type { Measurement, Reason, Remark } from '../../recording/measurement.js';
import { type Block, bullets, heading, type Line, pairs, paragraph, withoutEmpty } from '../document.js';
import { listText } from '../words.js';

export interface NamedMeasurement {
  readonly file: string;
  readonly seat: string | null;
  readonly measurement: Measurement;
}

/** Why a value is not told, and what to do about it. */
export const REASON_TEXT: Readonly<Record<Reason, string>> = {
  'not-the-signal':
    'The test signal was not found in this recording. Play the file that `center-audit signal` wrote, from its start, and record all of it.',
  cut: 'The recording begins too late or ends too early: a part of the test is missing. Start it before the file plays and let it run on for three seconds.',
  'channel-silent':
    'A loudspeaker was not heard where its sweep should be. Check that it plays: the file, the channel, the cable; and that this is the recording, not the file that was played.',
  'phone-moved':
    'The first and the last sweep of the left loudspeaker do not match: the phone moved, or somebody walked through. Lay it down and do not touch it.',
  'clock-slips':
    'The playback lost or doubled a piece of sound between the sweeps, so times cannot be trusted. Play from a file or a disc instead of a wireless link.',
  noisy:
    'The sound does not stand far enough over the noise. Switch off fans, turn up a little, and record again.',
  talking: 'Somebody talked, or something banged, during the test. Record again in silence.',
  'gain-rides':
    'The recorder changed its gain by itself. Switch off automatic gain, voice enhancement or noise reduction, or use another recorder app.',
  clipped: 'The recording is clipped. Put the phone further from the loudspeakers or turn the volume down.',
  downmixed:
    'The player mixed the center into left and right, so the center was not heard by itself. Use the stereo file, or a player that passes six channels on.',
  'route-unsure':
    'It cannot be told who played the middle: the upmix may work in a part of the frequencies only. Use the file by channels, or switch other processing off.',
};

const REMARK_TEXT: Readonly<Record<Remark, string>> = {
  'center-very-late':
    'The center is so late that no wrong distance explains it: look for a wireless link or processing of its own.',
  'center-very-early':
    'The center is so early that left and right must be delayed by something: look for processing of the mains.',
  'direct-sound-weak':
    'The direct sound of a loudspeaker is weaker than a reflection: something stands in its way. Its arrival may be that of the reflection.',
  'in-bands-only':
    'The upmix moves only a part of the frequencies to the center, so one delay cannot describe it.',
  'low-sample-rate':
    'The recorder keeps no treble. Arrival comes from 1 to 5.5 kHz, where crossovers add a few tenths of a millisecond.',
  'mains-unlike':
    'Left and right do not agree over frequency, as two different models would. Polarity is not decided from that: turn no wire on this recording.',
  'sums-differ':
    'Center and left together are not what the two are alone: a processor treats them jointly, or noise got in. The values above come from single sweeps.',
  'slips-unseen':
    'The stereo file repeats only the left loudspeaker. Where the playback loses time between other sweeps (wireless links do), it cannot notice: play from a cable or a disc, or record twice.',
  'share-only':
    'Center and mains share the middle. Arrival and polarity are those of the center’s share; its level cannot be told apart.',
  'end-cut':
    'The last two sweeps are missing, which check the others. What is told comes from those that are there.',
};

const fixed = (value: number, digits: number): string =>
  value
    .toFixed(digits)
    .replace('-', '−')
    .replace(/^−(0(\.0+)?)$/, '$1');

function delayText(ms: number): string {
  const size = fixed(Math.abs(ms), 2);
  if (Math.abs(ms) < 0.05) return 'in step, within 0.05 ms';
  return `${size} ms ${ms > 0 ? 'late' : 'early'} (as if ${lengthText(ms)} ${ms > 0 ? 'further away' : 'nearer'})`;
}

const METERS_PER_MS = 0.3432;
const INCHES_PER_METER = 1 / 0.0254;
const lengthText = (ms: number): string => {
  const meters = Math.abs(ms) * METERS_PER_MS;
  return `${fixed(meters * 100, 0)} cm or ${fixed(meters * INCHES_PER_METER, 1)} in`;
};

/** "2.1 dB weaker than right" */
export const levelText = (db: number, than: string): string =>
  Math.abs(db) < 0.5
    ? `as loud as ${than}, within half a decibel`
    : `${fixed(Math.abs(db), 1)} dB ${db > 0 ? 'louder' : 'weaker'} than ${than}`;

export function measurementBlocks({ file, seat, measurement: m }: NamedMeasurement): Block[] {
  return withoutEmpty([
    heading(1, seat === null ? file : `${file}, seat “${seat}”`),
    paragraph(verdictOf(m)),
    bullets(m.reasons.map((reason): Line => REASON_TEXT[reason])),
    ...(m.silent.length === 0 ? [] : [paragraph(`Not heard: ${listText(m.silent)}.`)]),
    pairs([...timeRows(m), ...polarityRows(m), ...levelRows(m), ...roomRows(m), ...routeRows(m)]),
    heading(2, 'Tone of the center against the mains'),
    bullets(toneLines(m)),
    heading(2, 'To know'),
    bullets(m.remarks.map((remark): Line => REMARK_TEXT[remark])),
    pairs(techRows(m)),
  ]);
}

function verdictOf(m: Measurement): string {
  if (m.trusted) return 'The recording is good; everything below can be trusted within what is said.';
  const any = [m.delayMs.leftMinusRight, m.levelDb.leftMinusRight, m.polarity.right].some(
    (value) => value !== null,
  );
  return any
    ? 'Not everything can be trusted; what is missing below is missing for these reasons:'
    : 'Nothing can be told from this recording:';
}

type Row = readonly [string, Line];

/** A row for a value that is told; none for one that is not. */
const rowOf = <T>(label: string, value: T | null, text: (value: T) => string): Row[] =>
  value === null ? [] : [[label, text(value)]];

function timeRows({
  delayMs: { centerMinusLeft, centerMinusRight, leftMinusRight, uncertainty },
}: Measurement): Row[] {
  const within = uncertainty === null ? '' : `, ±${uncertainty} ms`;
  const delay = (ms: number): string => delayText(ms) + within;
  return [
    ...rowOf('Center against left', centerMinusLeft, delay),
    ...rowOf('Center against right', centerMinusRight, delay),
    ...rowOf('Left against right', leftMinusRight, delay),
  ];
}

function polarityRows({ polarity: { left, center, right, undecided } }: Measurement): Row[] {
  const signs = { left, center, right };
  const odd = Object.entries(signs).flatMap(([side, sign]) => (sign === -1 ? [side] : []));
  const open =
    undecided.length === 0
      ? ''
      : ` Undecided: ${undecided.join(' and ')}; move the phone by 20 cm (8 in) and record again.`;
  if (left === null && undecided.length === 0) return [];
  const known = Object.values(signs).filter((sign) => sign !== null).length;
  if (odd.length > 0) return [['Polarity', `${odd.join(' and ')} inverted against the others.${open}`]];
  return known < 2 ? [['Polarity', open.trim()]] : [['Polarity', `alike, as far as told.${open}`]];
}

function levelRows({
  signal,
  levelDb: { centerMinusMains, leftMinusRight, uncertainty },
}: Measurement): Row[] {
  const within = uncertainty === null ? '' : `, ±${uncertainty} dB with an ordinary phone`;
  // In the stereo file the center plays both channels: an upmix that keeps the power gives 3 dB more than one.
  const own =
    signal === 'stereo' ? ' (an upmix that keeps the power plays the middle 3 dB louder than one main)' : '';
  return [
    ...rowOf('Level of the center', centerMinusMains, (db) => `${levelText(db, 'a main')}${within}${own}`),
    ...rowOf('Level of left', leftMinusRight, (db) => levelText(db, 'right') + within),
  ];
}

/** Far enough over the 1.1 dB of C50 that are just noticed to be a word (Bradley et al. 1999). */
const CLARITY_GOOD_DB = 3;

function roomRows({ reflection, clarity, distortionPercent: { left, center, right } }: Measurement): Row[] {
  const rows: Row[] = [];
  if (reflection.delayMs !== null && reflection.levelDb !== null && reflection.notchHz !== null) {
    rows.push([
      'Strongest reflection',
      `${fixed(reflection.delayMs, 1)} ms behind the center, ${fixed(reflection.levelDb, 0)} dB against it, ±1 dB (${fixed(reflection.delayMs * METERS_PER_MS * 100, 0)} cm of detour; first notch near ${fixed(reflection.notchHz, 0)} Hz)`,
    ]);
  }
  if (clarity.c50Db !== null && clarity.d50 !== null) {
    rows.push([
      'Clarity of the center',
      `C50 ${fixed(clarity.c50Db, 1)} dB, ±1 dB, D50 ${fixed(100 * clarity.d50, 0)}%: ${clarity.c50Db >= CLARITY_GOOD_DB ? 'speech is clear' : clarity.c50Db >= 0 ? 'speech is a little blurred by the room' : 'the room drowns speech'}`,
    ]);
  }
  const parts = [
    ['left', left],
    ['center', center],
    ['right', right],
  ].flatMap(([side, value]) => (typeof value === 'number' ? [`${side} ${fixed(value, 1)}%`] : []));
  if (parts.length > 0)
    rows.push(['Distortion', `${parts.join(', ')} (second and third harmonic, 600 to 6000 Hz)`]);
  return rows;
}

const MIDDLE_TEXT = {
  center: 'from the center alone',
  all: 'from center and mains together',
  mains: 'from the mains alone; the center is silent in two-channel sound',
} as const;

const routeRows = ({ middleFrom }: Measurement): Row[] =>
  rowOf('The middle comes', middleFrom, (from) => MIDDLE_TEXT[from]);

/** Bands beyond are told, dB: what is promised for a band with an ordinary phone. */
const TOLD_BAND_DB = 2.5;

function toneLines({ toneDb: { hz, centerMinusMains, uncertainty } }: Measurement): Line[] {
  if (uncertainty === null) return [];
  const far = hz.flatMap((band, i) => {
    const db = centerMinusMains[i];
    return db === null || db === undefined || Math.abs(db) < TOLD_BAND_DB ? [] : [{ band, db }];
  });
  if (far.length === 0)
    return [`All third octaves lie within ${TOLD_BAND_DB} dB, which is what a phone can tell.`];
  const [low, high] = [far.filter(({ db }) => db < 0), far.filter(({ db }) => db > 0)];
  const told = (list: typeof far): string =>
    list.map(({ band, db }) => `${Math.round(band)} Hz ${fixed(db, 1)} dB`).join(', ');
  return [
    ...(high.length > 0 ? [`Too much: ${told(high)}.`] : []),
    ...(low.length > 0 ? [`Too little: ${told(low)}.`] : []),
    `Each band ±${uncertainty} dB with an ordinary phone; level made equal first.`,
  ];
}

const techRows = ({ signal, snrDb, clockPpm }: Measurement): Row[] => [
  ...rowOf('Test file', signal, (kind) => (kind === 'stereo' ? 'stereo' : 'by channels')),
  ...rowOf('Signal over noise', snrDb, (db) => `${fixed(db, 0)} dB`),
  ...rowOf('Recorder’s clock', clockPpm, (ppm) => `${fixed(ppm, 0)} ppm, corrected`),
];
