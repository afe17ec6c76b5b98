/** Center against mains by third octaves, measured: before and after the equalization, or a correction proposed. */
import { thirdOctaveDifferences, tonalMatch } from '../../acoustics/tonal.js';
import type { Reader } from '../../compute/reader.js';
import type { FactId } from '../../facts/catalog.js';
import { LIMITS } from '../../rules/limits.js';
import { quantityText } from '../words.js';
import { curvesTable, frequencyAxis, levelAxis } from './axes.js';
import type { Curve, LineChart, XY } from './chart.js';
import type { Ask } from './known.js';

const FROM_HZ = 180;
const TO_HZ = 8900;

const matchNow = (r: Reader<FactId>) => {
  const [left, center, right] = r.responses('responseLeft', 'responseCenter', 'responseRight');
  const lowLimitHz = r.toldNumber('centerLowLimit');
  return tonalMatch({ left, center, right, lowLimitHz });
};
const differenceBefore = (r: Reader<FactId>) => {
  const [left, center, right] = r.responses(
    'responseLeftBefore',
    'responseCenterBefore',
    'responseRightBefore',
  );
  return thirdOctaveDifferences({ left, center, right });
};

export function toneChart(ask: Ask): LineChart | undefined {
  const known = ask(matchNow);
  if (!known) return undefined;
  const { bands, filters, worstBandDb, worstBandHz, residualWorstDb, warnings } = known.value;
  const before = ask(differenceBefore)?.value;
  const curve = (name: string, points: readonly XY[]): Curve => ({ name, points, marked: true });
  const curves = [
    ...(before ? [curve('equalization off', [...before])] : []),
    curve(
      'now',
      bands.map(({ hz, diffDb }): XY => [hz, diffDb]),
    ),
    ...(filters.length > 0
      ? [
          curve(
            'corrected',
            bands.map(({ hz, afterDb }): XY => [hz, afterDb]),
          ),
        ]
      : []),
  ];
  const levels = curves.flatMap(({ points }) => points.map(([, level]) => level));
  const side = worstBandDb > 0 ? 'louder' : 'weaker';
  const after =
    filters.length > 0
      ? ` A correction with ${filters.length === 1 ? 'one filter' : `${filters.length} filters`} would leave ${quantityText(Math.abs(residualWorstDb), 'dB', 'metric')} at most, once its level is set again.`
      : '';
  const band = LIMITS.bandDb.clear;
  return {
    kind: 'lines',
    id: 'tone',
    title: 'Does the center sound like the mains?',
    says: `The center is ${quantityText(Math.abs(worstBandDb), 'dB', 'metric')} ${side} than the mains near ${quantityText(worstBandHz, 'Hz', 'metric')}, the worst of the bands.${after}`,
    notes: ['Measured at the main seat, loudness made equal first.', ...warnings],
    x: frequencyAxis(FROM_HZ, TO_HZ),
    y: levelAxis('center against mains (dB)', levels, { step: 3, atLeast: [-6, 6] }),
    curves,
    thresholds: [
      { at: band, name: 'clear' },
      { at: -band, name: '' },
    ],
    table: curvesTable(
      'Center against mains by third octaves, in dB',
      bands.map(({ hz }) => hz),
      curves,
    ),
  };
}
