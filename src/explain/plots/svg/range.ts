/** A value among its grades: three named blocks and a marker. */
import { gaugeText } from '../../document.js';
import type { RangeBar } from '../../report-types.js';
import { drawing, el, label, WIDTH } from './element.js';

const TOP = 20;
const BLOCK = 20;
const HEIGHT = 60;
/** Room beyond the last grade, as a part of it. */
const BEYOND = 1.15;

export function drawRange(bar: RangeBar, id: string): string {
  const end = BEYOND * Math.max(bar.value, bar.lowIsBad ? bar.noticeable : bar.severe);
  const x = (value: number): number => (WIDTH * Math.max(0, value)) / end;
  const [first, second] = bar.lowIsBad ? [bar.clear, bar.noticeable] : [bar.noticeable, bar.clear];
  const words = bar.lowIsBad
    ? (['poor', 'borderline', 'good'] as const)
    : (['good', 'borderline', 'poor'] as const);
  const edges = [0, x(first), x(second), WIDTH];
  const at = Math.max(5, x(bar.value));
  const anchor = at < 60 ? 'start' : at > WIDTH - 60 ? 'end' : 'middle';
  const textAt = anchor === 'start' ? 0 : anchor === 'end' ? WIDTH : at;
  const [firstText, secondText] = bar.lowIsBad
    ? [bar.clearText, bar.noticeableText]
    : [bar.noticeableText, bar.clearText];
  return drawing({
    id,
    title: `${bar.label}: ${bar.valueText}`,
    says: gaugeText(bar),
    height: HEIGHT,
    parts: [
      ...words.flatMap((word, i) => {
        const [from, to] = [edges[i] ?? 0, edges[i + 1] ?? WIDTH];
        return [
          el('rect', { class: `c-block c-${word}`, x: from, y: TOP, width: to - from, height: BLOCK }),
          label(word, { x: (from + to) / 2, y: TOP + 14, anchor: 'middle', className: 'c-word' }),
        ];
      }),
      el('path', {
        class: 'c-marker',
        d: `M${at.toFixed(1)},${TOP + 6}l-5,-8h10z M${at.toFixed(1)},${TOP}v${BLOCK}`,
      }),
      label(bar.valueText, { x: textAt, y: TOP - 7, anchor, className: 'c-strong' }),
      label(firstText, { x: edges[1] ?? 0, y: TOP + BLOCK + 14, anchor: 'middle' }),
      label(secondText, { x: edges[2] ?? 0, y: TOP + BLOCK + 14, anchor: 'middle' }),
    ],
  });
}
