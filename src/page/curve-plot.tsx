/** The curve that is played: level over frequency, with its parts named and their deepest and highest points. */
import type { Heard, HeardPart } from './protocol.js';

const WIDTH = 560;
const HEIGHT = 210;
const LEFT = 44;
const BOTTOM = 30;
const TOP = 10;
const FROM_HZ = 60;
const TO_HZ = 16_000;
const FREQUENCIES_HZ = [100, 200, 500, 1000, 2000, 5000, 10_000];
const LEVELS_DB = [12, 6, 0, -6, -12, -18];

const x = (hz: number): number =>
  LEFT + ((WIDTH - LEFT - 8) * Math.log(hz / FROM_HZ)) / Math.log(TO_HZ / FROM_HZ);
const y = (db: number): number => TOP + ((HEIGHT - TOP - BOTTOM) * (14 - db)) / 36;
const hertz = (hz: number): string =>
  hz >= 1000 ? `${Number((hz / 1000).toPrecision(2))} kHz` : `${Math.round(hz / 10) * 10} Hz`;

export function CurvePlot({ heard }: { readonly heard: Heard }) {
  const path = heard.total
    .map(([hz, db], i) => `${i === 0 ? 'M' : 'L'}${x(hz).toFixed(1)} ${y(db).toFixed(1)}`)
    .join('');
  return (
    <figure>
      <figcaption>
        <strong>What “{heard.seat}” gets of the voice</strong>
        <ul>
          {heard.parts.map((part) => (
            <li key={part.name}>{partText(part)}</li>
          ))}
        </ul>
      </figcaption>
      <svg
        class="c-plot"
        viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
        role="img"
        aria-label={heard.parts.map(partText).join('; ')}
      >
        {LEVELS_DB.map((db) => (
          <g key={db}>
            <line class={db === 0 ? 'c-zero' : 'c-grid'} x1={LEFT} x2={WIDTH - 8} y1={y(db)} y2={y(db)} />
            <text x={LEFT - 6} y={y(db) + 4} text-anchor="end">
              {String(db).replace('-', '−')}
            </text>
          </g>
        ))}
        {FREQUENCIES_HZ.map((hz) => (
          <g key={hz}>
            <line class="c-grid" x1={x(hz)} x2={x(hz)} y1={TOP} y2={HEIGHT - BOTTOM} />
            <text x={x(hz)} y={HEIGHT - 10} text-anchor="middle">
              {hertz(hz)}
            </text>
          </g>
        ))}
        <path class="c-line c-0" d={path} />
      </svg>
    </figure>
  );
}

/** "the screen: down to −3.4 dB near 9 kHz" */
function partText({ name, points }: HeardPart): string {
  const deepest = points.reduce((a, b) => (b[1] < a[1] ? b : a));
  const highest = points.reduce((a, b) => (b[1] > a[1] ? b : a));
  const words = [
    ...(deepest[1] < -0.5 ? [`down to ${level(deepest[1])} near ${hertz(deepest[0])}`] : []),
    ...(highest[1] > 0.5 ? [`up to ${level(highest[1])} near ${hertz(highest[0])}`] : []),
  ];
  return `${name}: ${words.length === 0 ? 'next to nothing' : words.join(', ')}`;
}

const level = (db: number): string => `${db < 0 ? '−' : ''}${Math.abs(db).toFixed(1)} dB`;
