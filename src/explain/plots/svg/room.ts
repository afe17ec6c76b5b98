/** The room to scale: one factor for both directions. */
import type { RoomChart, RoomItem, XY } from '../chart.js';
import { drawing, el, fitting, label, line, textWidth, WIDTH } from './element.js';

/** Space around the places for their names. */
const MARGIN = { above: { x: 34, top: 40, bottom: 44 }, side: { x: 24, top: 26, bottom: 34 } } as const;
/** No taller than this, so that a phone shows it at once. */
const TALLEST = 380;

interface Page {
  readonly x: (meters: number) => number;
  readonly y: (meters: number) => number;
  readonly pxPerM: number;
  readonly height: number;
}

const pointsOf = (item: RoomItem): readonly XY[] => {
  if (item.kind === 'line') return item.points;
  return item.kind === 'picture' || item.kind === 'obstacle' ? [item.from, item.to] : [item.at];
};

export function drawRoom({ id, title, says, view, items, scaleBar }: RoomChart): string {
  const page = pageFor(view, items);
  const order: readonly RoomItem['kind'][] = ['line', 'picture', 'obstacle', 'loudspeaker', 'seat'];
  const sorted = [...items].sort((a, b) => order.indexOf(a.kind) - order.indexOf(b.kind));
  return drawing({
    id,
    title,
    says,
    height: page.height,
    parts: [...sorted.flatMap((item) => draw(item, page, view, items)), ...scaleBarParts(scaleBar, page)],
  });
}

function pageFor(view: RoomChart['view'], items: readonly RoomItem[]): Page {
  const all = items.flatMap(pointsOf);
  const [left, right] = [Math.min(...all.map(([x]) => x)), Math.max(...all.map(([x]) => x))];
  const [low, high] = [Math.min(...all.map(([, y]) => y)), Math.max(...all.map(([, y]) => y))];
  const margin = MARGIN[view];
  const across = (WIDTH - 2 * margin.x) / Math.max(0.5, right - left);
  const down = (TALLEST - margin.top - margin.bottom) / Math.max(0.5, high - low);
  const pxPerM = Math.min(across, down);
  const middle = (left + right) / 2;
  const height = margin.top + (high - low) * pxPerM + margin.bottom;
  return {
    pxPerM,
    height,
    x: (meters) => WIDTH / 2 + (meters - middle) * pxPerM,
    y: (meters) =>
      view === 'above' ? margin.top + (meters - low) * pxPerM : margin.top + (high - meters) * pxPerM,
  };
}

function draw(item: RoomItem, page: Page, view: RoomChart['view'], items: readonly RoomItem[]): string[] {
  switch (item.kind) {
    case 'line':
      return roomLine(item, page);
    case 'picture':
      return picture(item, page, view);
    case 'obstacle':
      return obstacle(item, page);
    case 'loudspeaker':
      return view === 'above' ? speakerAbove(item, page) : speakerSide(item, page);
    case 'seat':
      return seat(item, page, view, items);
  }
}

type Of<K extends RoomItem['kind']> = Extract<RoomItem, { kind: K }>;

const DASH_OF_ROLE: Readonly<Record<Of<'line'>['role'], string | undefined>> = {
  sight: undefined,
  axis: '8 4',
  bounce: '2 3',
  floor: undefined,
};

function roomLine({ role, points, name }: Of<'line'>, { x, y }: Page): string[] {
  const written = points
    .map(([a, b], i) => `${i === 0 ? 'M' : 'L'}${x(a).toFixed(1)},${y(b).toFixed(1)}`)
    .join('');
  const path = el('path', { class: `c-room c-${role}`, 'stroke-dasharray': DASH_OF_ROLE[role], d: written });
  const last = points.at(-1);
  if (name === '' || last === undefined) return [path];
  if (role === 'axis') return [path, label(name, { x: x(last[0]), y: y(last[1]) + 30, anchor: 'middle' })];
  if (role === 'bounce') {
    const [a, b] = points[1] ?? last;
    return [path, label(name, { x: x(a), y: y(b) + 14, anchor: 'middle' })];
  }
  return [path];
}

function picture({ from, to, name }: Of<'picture'>, { x, y }: Page, view: RoomChart['view']): string[] {
  const lift = view === 'above' ? 11 : 0;
  const thick = line(x(from[0]), y(from[1]) - lift, x(to[0]), y(to[1]) - lift, { class: 'c-picture' });
  const text =
    view === 'above'
      ? label(name, { x: x((from[0] + to[0]) / 2), y: y(from[1]) - lift - 6, anchor: 'middle' })
      : label(name, { x: x(to[0]) - 4, y: y(to[1]) - 6 });
  return [thick, text];
}

function obstacle({ from, to, name }: Of<'obstacle'>, { x, y }: Page): string[] {
  return [
    line(x(from[0]), y(from[1]), x(to[0]), y(to[1]), { class: 'c-obstacle' }),
    label(name, { x: x(to[0]), y: y(to[1]) - 5, anchor: 'middle' }),
  ];
}

const speakerClass = (center: boolean): string => (center ? 'c-speaker c-speaker-center' : 'c-speaker');

function speakerAbove({ at, name, center }: Of<'loudspeaker'>, { x, y }: Page): string[] {
  const [width, depth] = center ? [22, 10] : [14, 12];
  const [left, top] = [x(at[0]), y(at[1])];
  const box = el('rect', {
    class: speakerClass(center),
    x: left - width / 2,
    y: top - depth + 3,
    width,
    height: depth,
  });
  const text = center
    ? label(name, { x: left + width / 2 + 5, y: top + 12, className: 'c-strong' })
    : label(name, { x: left, y: top - 15, anchor: 'middle', className: 'c-strong' });
  return [box, text];
}

function speakerSide({ at, name, center }: Of<'loudspeaker'>, { x, y }: Page): string[] {
  const [left, top] = [x(at[0]), y(at[1])];
  const box = el('rect', { class: speakerClass(center), x: left - 9, y: top - 6, width: 10, height: 12 });
  return [box, label(name, { x: left + 6, y: top + (center ? 17 : -9), className: 'c-strong' })];
}

/** The middle of a text, moved so that none of it leaves the drawing. */
const inPage = (x: number, text: string): number =>
  Math.min(WIDTH - textWidth(text) / 2, Math.max(textWidth(text) / 2, x));

const HEAD = 7;
/** Names keep this far from the next seat's. */
const NAME_GAP = 6;
/** Seats nearer to each other than this, front to back, stand in one row, m. Our own bound. */
const ONE_ROW_M = 0.4;
/** Room for a name beside which no other seat is, m. */
const FREE_M = 3;

function seat(
  { at, name, main }: Of<'seat'>,
  { x, y, pxPerM }: Page,
  view: RoomChart['view'],
  items: readonly RoomItem[],
): string[] {
  const [left, top] = [x(at[0]), y(at[1])];
  const head = el('circle', { class: main ? 'c-seat c-seat-main' : 'c-seat', cx: left, cy: top, r: HEAD });
  const named = (text: string, base: number): string[] => [
    head,
    label(text, { x: inPage(left, text), y: base, anchor: 'middle', className: 'c-strong' }),
  ];
  if (view === 'side') return named(name, top - 12);
  const row = items
    .filter((item) => item.kind === 'seat')
    .filter((item) => Math.abs(item.at[1] - at[1]) < ONE_ROW_M)
    .sort((a, b) => a.at[0] - b.at[0]);
  const apart = row.map((each) => Math.abs(each.at[0] - at[0])).filter((meters) => meters > 0);
  const room = Math.min(...apart, FREE_M) * pxPerM - NAME_GAP;
  // Names too long for their neighbors stand on two lines in turn.
  const inTurn = row.some((each) => textWidth(each.name) > room);
  const lower = inTurn && row.findIndex((each) => each.at === at) % 2 === 1;
  const text = fitting(name, Math.max((inTurn ? 2 : 1) * room, textWidth('00')));
  return named(text, top + HEAD + (lower ? 28 : 14));
}

function scaleBarParts({ lengthM, text }: RoomChart['scaleBar'], { pxPerM, height }: Page): string[] {
  const [start, y] = [4, height - 6];
  const end = start + lengthM * pxPerM;
  return [
    el('path', {
      class: 'c-scale',
      d: `M${start},${(y - 4).toFixed(1)}V${y.toFixed(1)}H${end.toFixed(1)}V${(y - 4).toFixed(1)}`,
    }),
    label(text, { x: end + 5, y: y + 1 }),
  ];
}
