/** Where sounds between left and right are heard: straight, with the upmix as it is, and as advised. */
import { type UpmixSetting, upmix, widthRetained } from '../../acoustics/upmix.js';
import type { Reader } from '../../compute/reader.js';
import type { FactBook } from '../../facts/book.js';
import { told } from '../../facts/book.js';
import type { FactId } from '../../facts/catalog.js';
import { voiceBy } from '../../rules/derived/sharing.js';
import type { View } from '../../rules/view.js';
import type { Report } from '../report-types.js';
import { linearAxis, signedText, tenth } from './axes.js';
import type { Curve, LineChart } from './chart.js';
import { type Ask, assumedNotes } from './known.js';

/** From fully left to fully right in steps of two degrees. */
const PANS_DEG = Array.from({ length: 46 }, (_, i) => 2 * i);
const TABLE_EVERY = 5;

/** Extraction that the remedies name: half spread for one seat, a fifth of spread for a row. Judgement. */
const ONE_SEAT: UpmixSetting = { extraction: 0.5 };
const ROW: UpmixSetting = { extraction: 0.8 };
const STRAIGHT: UpmixSetting = { extraction: 0 };

const upmixNow = (r: Reader<FactId>): UpmixSetting => {
  const by = r.from(voiceBy);
  return by === 'center' || by === 'mains' ? r.stop() : by;
};

interface Advice {
  readonly name: string;
  readonly setting: UpmixSetting;
}

/** What the remedies ask for; nothing where only two channels straight are better than now. */
function advised(book: FactBook, view: View): Advice | undefined {
  if (view.read('upmixKind').value !== 'adjustable-center') return undefined;
  if (told(book, 'seating') === 'single-seat') return { name: 'half spread (advised)', setting: ONE_SEAT };
  return { name: 'a fifth of spread (advised)', setting: ROW };
}

export function stageChart(ask: Ask, view: View, report: Report): LineChart | undefined {
  const known = ask(upmixNow);
  if (!known) return undefined;
  const now = known.value;
  const advice = advised(view.book, view);
  const better = advice && widthRetained(advice.setting).energy > widthRetained(now).energy;
  const curves = [
    stageCurve('two channels straight', STRAIGHT),
    stageCurve('upmix now', now),
    ...(advice && better ? [stageCurve(advice.name, advice.setting)] : []),
  ];
  const keptPct = (setting: UpmixSetting): number => Math.round(100 * widthRetained(setting).energy);
  const after =
    advice && better ? `; with ${advice.name.replace(' (advised)', '')} ${keptPct(advice.setting)}%` : '';
  return {
    kind: 'lines',
    id: 'stage',
    title: 'How wide the upmix leaves the stage',
    says: `The upmix as it is keeps ${keptPct(now)}% of the width of two channels${after}.`,
    notes: [
      'By energy vectors, which hold above about 700 Hz, for a seat in the middle and loudspeakers at 30° to each side.',
      ...assumedNotes(report.units, known),
    ],
    x: linearAxis('place in the recording (0 left, 90 right)', 0, 90, 15),
    y: linearAxis('heard at (degrees, left is up)', -30, 30, 10),
    curves,
    thresholds: [],
    table: {
      caption: 'Angle at which a sound is heard, in degrees, left positive',
      head: ['place', ...curves.map(({ name }) => name)],
      rows: PANS_DEG.filter((_, i) => i % TABLE_EVERY === 0).map((pan, row) => [
        signedText(pan),
        ...curves.map(({ points }) => tenth(points[row * TABLE_EVERY]?.[1] ?? Number.NaN)),
      ]),
    },
  };
}

function stageCurve(name: string, setting: UpmixSetting): Curve {
  const points = PANS_DEG.flatMap((panDeg) => {
    const { energyDeg } = upmix({ panDeg, ...setting });
    return energyDeg === null ? [] : [[panDeg, energyDeg] as const];
  });
  return { name, points, marked: false };
}
