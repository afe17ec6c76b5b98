/** Treble lost in the screen, and what a shelf can give back. */
import { logGrid } from '../../acoustics/bands.js';
import { analogFilterDb } from '../../acoustics/filter.js';
import { shelfCompensation } from '../../acoustics/screen-extras.js';
import type { Reader } from '../../compute/reader.js';
import type { FactId } from '../../facts/catalog.js';
import { lossOf } from '../../rules/derived/tone.js';
import type { View } from '../../rules/view.js';
import type { Report } from '../report-types.js';
import { quantityText } from '../words.js';
import { curvesTable, frequencyAxis, levelAxis, nearHz } from './axes.js';
import type { Curve, LineChart, XY } from './chart.js';
import { type Ask, assumedNotes } from './known.js';

const FROM_HZ = 500;
const TO_HZ = 16_000;
const POINTS = 121;
const TABLE_HZ: readonly number[] = [
  500, 1000, 1600, 2000, 2500, 3150, 4000, 5000, 6300, 8000, 10_000, 12_500, 16_000,
];
/** Above it a loss is counted as lost treble, Hz. */
const TREBLE_HZ = 4000;

const sheetInFront = (r: Reader<FactId>) => {
  const kind = r.choice('screenKind');
  const loss = kind === 'none' ? r.stop() : lossOf(r, kind);
  // Holes that cannot be told apart are found out by computing, which has to happen here: then there is no chart.
  loss([TREBLE_HZ]);
  return loss;
};

export function screenChart(ask: Ask, view: View, report: Report): LineChart | undefined {
  const known = ask(sheetInFront);
  if (!known) return undefined;
  const frequenciesHz = [...logGrid(FROM_HZ, TO_HZ, POINTS)];
  const lossDb = known.value(frequenciesHz);
  const shelf = shelfCompensation({ lossDb: (hz) => known.value([hz])[0] ?? 0 });
  const filter = { type: 'highShelf', ...shelf } as const;
  const lost: Curve = {
    name: 'through the screen',
    points: frequenciesHz.map((hz, i): XY => [hz, -(lossDb[i] ?? 0)]),
    marked: false,
  };
  const restored: Curve = {
    name: 'with a shelf',
    points: frequenciesHz.map((hz, i): XY => [hz, analogFilterDb(filter, hz) - (lossDb[i] ?? 0)]),
    marked: false,
  };
  const curves = [lost, restored];
  const levels = curves.flatMap(({ points }) => points.map(([, level]) => level));
  const at = (hz: number): string => quantityText(known.value([hz])[0] ?? 0, 'dB', 'metric');
  const givenBackDb = view.read('screenCompensation').value;
  const givenBack =
    typeof givenBackDb === 'number' && givenBackDb > 0
      ? [`${quantityText(givenBackDb, 'dB', 'metric')} are given back already; that is not drawn.`]
      : [];
  return {
    kind: 'lines',
    id: 'screen',
    title: 'What the screen takes, and what can be given back',
    says: `The screen takes ${at(TREBLE_HZ)} at 4 kHz and ${at(10_000)} at 10 kHz. A high shelf of ${quantityText(shelf.gainDb, 'dB', 'metric')} around ${nearHz(shelf.frequencyHz)} leaves at most ${quantityText(shelf.worstDb, 'dB', 'metric')} of it.`,
    notes: [
      'Sound straight through the sheet. Each 3 dB of boost asks the tweeter for twice the power; the shelf is held to 6 dB.',
      ...givenBack,
      ...assumedNotes(report.units, known),
    ],
    x: frequencyAxis(FROM_HZ, TO_HZ),
    y: levelAxis('level of the treble (dB)', levels, { step: 3, atLeast: [-6, 3] }),
    curves,
    thresholds: [],
    table: curvesTable('Level against no screen, in dB', TABLE_HZ, curves),
  };
}
