/** A drawing to scale whose places can be taken with the pointer or the arrow keys. */
import { useRef } from 'preact/hooks';

type XY = readonly [number, number];

export interface Place {
  readonly kind: 'main' | 'center' | 'seat' | 'main-seat';
  readonly name: string;
  /** Meters: from above to the right and back, from the side back and up. */
  readonly at: XY;
  readonly to: (at: XY) => void;
}

interface Props {
  readonly label: string;
  readonly describedBy: string;
  readonly view: 'above' | 'side';
  readonly places: readonly Place[];
  readonly picture?: readonly [number, number, number, number] | undefined;
  /** Where the axis of the center begins, seen from above. */
  readonly axis?: XY | undefined;
}

const WIDTH = 420;
const HEIGHTS = { above: 360, side: 230 } as const;
const EDGE = 30;
/** The room is drawn at least so large, so that the scale does not jump while something is dragged, m. */
const LEAST = { above: [4, 3.5], side: [4, 1.8] } as const;
const STEP_M = 0.05;
const LARGE_STEP_M = 0.25;

interface Scale {
  readonly pxPerM: number;
  readonly x: (meters: number) => number;
  readonly y: (meters: number) => number;
  readonly back: (px: XY) => XY;
}

/** Half meters around what is there: moving by a little leaves the scale alone. */
function scaleOf(view: Props['view'], places: readonly Place[]): Scale {
  const height = HEIGHTS[view];
  const xs = places.map(({ at }) => at[0]);
  const ys = places.map(({ at }) => at[1]);
  const out = (m: number): number => Math.ceil(2 * m) / 2;
  const [leastX, leastY] = LEAST[view];
  const high = Math.max(leastY, out(Math.max(...ys) + 0.2));
  const low = view === 'above' ? -out(Math.max(0.5, -Math.min(...ys))) : 0;
  const reach = view === 'above' ? Math.max(leastX / 2, out(Math.max(...xs.map(Math.abs)) + 0.2)) : 0;
  const [left, right] =
    view === 'above'
      ? [-reach, reach]
      : [-out(Math.max(0.5, -Math.min(...xs))), Math.max(leastX, out(Math.max(...xs) + 0.3))];
  const pxPerM = Math.min((WIDTH - 2 * EDGE) / (right - left), (height - 2 * EDGE) / (high - low));
  const middle = (left + right) / 2;
  const x = (m: number): number => WIDTH / 2 + (m - middle) * pxPerM;
  const y = (m: number): number =>
    view === 'above' ? EDGE + (m - low) * pxPerM : height - EDGE - (m - low) * pxPerM;
  const back = ([px, py]: XY): XY => [
    (px - WIDTH / 2) / pxPerM + middle,
    view === 'above' ? (py - EDGE) / pxPerM + low : (height - EDGE - py) / pxPerM + low,
  ];
  return { pxPerM, x, y, back };
}

export function Drawing({ label, describedBy, view, places, picture, axis }: Props) {
  const svg = useRef<SVGSVGElement>(null);
  const held = useRef<{ readonly name: string; readonly scale: Scale } | undefined>(undefined);
  const scale = held.current?.scale ?? scaleOf(view, places);
  const { x, y } = scale;
  const height = HEIGHTS[view];

  const meters = (event: PointerEvent): XY | undefined => {
    const matrix = svg.current?.getScreenCTM();
    if (!matrix) return undefined;
    const point = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
    return scale.back([point.x, point.y]);
  };
  const onMove = (event: PointerEvent): void => {
    const place = places.find(({ name }) => name === held.current?.name);
    const at = place && meters(event);
    if (place && at) place.to(at);
  };
  const letGo = (): void => {
    held.current = undefined;
  };
  const onKeyDown = (event: KeyboardEvent, { at: [atX, atY], to }: Place): void => {
    const step = event.shiftKey ? LARGE_STEP_M : STEP_M;
    const down = view === 'above' ? step : -step;
    const moves: Readonly<Record<string, XY>> = {
      ArrowLeft: [-step, 0],
      ArrowRight: [step, 0],
      ArrowUp: [0, -down],
      ArrowDown: [0, down],
    };
    const by = moves[event.key];
    if (!by) return;
    event.preventDefault();
    to([atX + by[0], atY + by[1]]);
  };

  return (
    <svg
      ref={svg}
      class="c-plot c-drawing"
      viewBox={`0 0 ${WIDTH} ${height}`}
      role="group"
      aria-label={label}
      aria-describedby={describedBy}
      onPointerMove={onMove}
      onPointerUp={letGo}
      onPointerCancel={letGo}
    >
      {view === 'side' && <line class="c-floor" x1={8} x2={WIDTH - 8} y1={y(0)} y2={y(0)} />}
      {picture && (
        <line class="c-picture" x1={x(picture[0])} y1={y(picture[1])} x2={x(picture[2])} y2={y(picture[3])} />
      )}
      {axis && <line class="c-axis" x1={x(axis[0])} y1={y(axis[1])} x2={x(axis[0])} y2={height - 12} />}
      <ScaleBar pxPerM={scale.pxPerM} y={height - 10} />
      {places.map((place) => (
        <g
          key={place.name}
          class="c-place"
          role="button"
          tabindex={0}
          aria-roledescription="movable"
          aria-label={spoken(view, place)}
          onPointerDown={(event) => {
            held.current = { name: place.name, scale };
            svg.current?.setPointerCapture(event.pointerId);
          }}
          onKeyDown={(event) => onKeyDown(event, place)}
        >
          <Shape place={place} x={x(place.at[0])} y={y(place.at[1])} />
          <Name
            place={place}
            view={view}
            x={x(place.at[0])}
            y={y(place.at[1])}
            row={nameRow(places, place, x)}
          />
        </g>
      ))}
    </svg>
  );
}

/** Widths of letters on average, px at the size of the names: names of neighbors must not meet. */
const LETTER_PX = 7;

/** Seats side by side have their names on two lines where they would touch. */
function nameRow(places: readonly Place[], place: Place, x: (m: number) => number): 0 | 1 {
  const row = places.filter(({ kind }) => kind === 'seat' || kind === 'main-seat');
  const index = row.indexOf(place);
  const meets = (other: Place | undefined): boolean =>
    other !== undefined &&
    Math.abs(x(other.at[0]) - x(place.at[0])) < (LETTER_PX * (other.name.length + place.name.length)) / 2;
  return index % 2 === 1 && (meets(row[index - 1]) || meets(row[index + 1])) ? 1 : 0;
}

interface NameProps {
  readonly place: Place;
  readonly view: Props['view'];
  readonly x: number;
  readonly y: number;
  readonly row: 0 | 1;
}

function Name({ place: { kind, name }, view, x, y, row }: NameProps) {
  const isSeat = kind === 'seat' || kind === 'main-seat';
  const [textX, textY, anchor] =
    view === 'side' && !isSeat
      ? ([x + 18, y + 4, 'start'] as const)
      : ([x, isSeat ? y + 24 + 14 * row : y - 14, 'middle'] as const);
  return (
    <text class="c-name" x={textX} y={textY} text-anchor={anchor}>
      {name}
    </text>
  );
}

function Shape({ place: { kind }, x, y }: { readonly place: Place; readonly x: number; readonly y: number }) {
  if (kind === 'main' || kind === 'center') {
    const isCenter = kind === 'center';
    const [w, h] = isCenter ? [26, 12] : [14, 18];
    return (
      <rect
        class={isCenter ? 'c-speaker c-speaker-center' : 'c-speaker'}
        x={x - w / 2}
        y={y - h / 2}
        width={w}
        height={h}
        rx={2}
      />
    );
  }
  return <circle class={kind === 'main-seat' ? 'c-seat c-seat-main' : 'c-seat'} cx={x} cy={y} r={9} />;
}

function ScaleBar({ pxPerM, y }: { readonly pxPerM: number; readonly y: number }) {
  return (
    <g>
      <path class="c-scale" d={`M12 ${y - 4}v4h${pxPerM.toFixed(1)}v-4`} />
      <text x={18 + pxPerM} y={y}>
        1 m
      </text>
    </g>
  );
}

function spoken(view: Props['view'], { name, at: [a, b] }: Place): string {
  const m = (value: number): string => `${Math.abs(value).toFixed(2)} m`;
  if (view === 'side') return `height of ${name}: ${m(b)}`;
  const side = Math.abs(a) < 0.005 ? 'in the middle' : `${m(a)} ${a > 0 ? 'right' : 'left'}`;
  return `${name}, ${side}, ${m(b)} ${b < 0 ? 'behind the line of the mains' : 'back'}`;
}
