/** The room to scale: one factor for both directions. */
import type { RoomChart, RoomItem, XY } from '../chart.js';
import { type Box, boxOf, crosses, overlap, type Segment } from './boxes.js';
import { drawing, el, fitting, label, line, px, type TextAt, textWidth, WIDTH } from './element.js';

/** Space around the places for their names. */
const MARGIN = { above: { x: 34, top: 40, bottom: 56 }, side: { x: 56, top: 26, bottom: 34 } } as const;
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
  const drawn = sorted.map((item) => draw(item, page, view, items));
  // Seats first: their names are what is looked for.
  const names = drawn.flatMap((each) => each.names).reverse();
  return drawing({
    id,
    title,
    says,
    height: page.height,
    parts: [
      ...drawn.flatMap(({ shapes }) => shapes),
      ...placed(
        names,
        items.flatMap((item) => segmentsOf(item, page)),
        scaleBox(scaleBar, page),
      ),
      ...scaleBarParts(scaleBar, page),
    ],
  });
}

/** A name with the places where it may stand, best first. */
interface Name {
  readonly text: string;
  readonly places: readonly TextAt[];
}

interface Drawn {
  readonly shapes: readonly string[];
  readonly names: readonly Name[];
}

/** Each name at the first of its places that is free of the others and of every line, or at the freest one. */
function placed(names: readonly Name[], lines: readonly Segment[], taken: Box): string[] {
  const boxes: Box[] = [taken];
  return names.flatMap(({ text, places }) => {
    const inside = places.filter((at) => isInside(boxOf(text, at)));
    const costs = (inside.length > 0 ? inside : places).map((at) => {
      const box = boxOf(text, at);
      const onNames = boxes.filter((other) => overlap(box, other)).length;
      return { at, box, cost: ON_A_NAME * onNames + lines.filter((each) => crosses(box, each)).length };
    });
    const best = costs.reduce<(typeof costs)[number] | undefined>(
      (found, each) => (found === undefined || each.cost < found.cost ? each : found),
      undefined,
    );
    if (best === undefined) return [];
    boxes.push(best.box);
    // Where every place lies on a line, the line stops at the name.
    return [...(best.cost > 0 ? [el('rect', { class: 'c-plate', ...best.box })] : []), label(text, best.at)];
  });
}

/** A name on another is worse than any number of lines through it. */
const ON_A_NAME = 1000;
const isInside = ({ x, width }: Box): boolean => x >= 0 && x + width <= WIDTH;

/** The lines that an item draws. */
function segmentsOf(item: RoomItem, { x, y }: Page): Segment[] {
  const points = pointsOf(item).map(([a, b]) => [x(a), y(b)] as const);
  return points.slice(1).map((to, i): Segment => [points[i] as readonly [number, number], to]);
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

function draw(item: RoomItem, page: Page, view: RoomChart['view'], items: readonly RoomItem[]): Drawn {
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

function roomLine({ role, points, name }: Of<'line'>, { x, y }: Page): Drawn {
  const written = points.map(([a, b], i) => `${i === 0 ? 'M' : 'L'}${px(x(a))},${px(y(b))}`).join('');
  const path = el('path', { class: `c-room c-${role}`, 'stroke-dasharray': DASH_OF_ROLE[role], d: written });
  const at = role === 'bounce' ? points[1] : undefined;
  if (name === '' || at === undefined) return { shapes: [path], names: [] };
  return {
    shapes: [path],
    names: [{ text: name, places: [{ x: x(at[0]), y: y(at[1]) + 15, anchor: 'middle' }] }],
  };
}

function picture({ from, to, name }: Of<'picture'>, { x, y }: Page, view: RoomChart['view']): Drawn {
  const lift = view === 'above' ? 11 : 0;
  const [top, bottom] = [y(to[1]) - lift, y(from[1]) - lift];
  const left = x(to[0]) - 4;
  const places: TextAt[] =
    view === 'above'
      ? [{ x: x((from[0] + to[0]) / 2), y: top - 6, anchor: 'middle' }]
      : [
          { x: left, y: top - 6 },
          { x: left, y: bottom + 15 },
          { x: left + 10, y: (2 * top + bottom) / 3 },
          { x: left + 10, y: (top + 2 * bottom) / 3 },
        ];
  return {
    shapes: [line(x(from[0]), bottom, x(to[0]), top, { class: 'c-picture' })],
    names: [{ text: name, places }],
  };
}

function obstacle({ from, to, name }: Of<'obstacle'>, { x, y }: Page): Drawn {
  const [left, top] = [x(to[0]), y(to[1])];
  const places: TextAt[] = [
    { x: left, y: top - 5, anchor: 'middle' },
    { x: left - 7, y: top + 14, anchor: 'end' },
    { x: left + 7, y: top + 14 },
    { x: left - 7, y: top + 30, anchor: 'end' },
    { x: left + 7, y: y(from[1]) - 6 },
    { x: left - 7, y: y(from[1]) - 6, anchor: 'end' },
    { x: left, y: y(from[1]) + 15, anchor: 'middle' },
  ];
  return {
    shapes: [line(x(from[0]), y(from[1]), left, top, { class: 'c-obstacle' })],
    names: [{ text: name, places }],
  };
}

const speakerClass = (center: boolean): string => (center ? 'c-speaker c-speaker-center' : 'c-speaker');

function speakerAbove({ at, name, center }: Of<'loudspeaker'>, { x, y }: Page): Drawn {
  const [width, depth] = center ? [22, 10] : [14, 12];
  const [left, top] = [x(at[0]), y(at[1])];
  const box = { class: speakerClass(center), x: left - width / 2, y: top - depth + 3, width, height: depth };
  const strong = { className: 'c-strong' };
  const places: TextAt[] = center
    ? [
        { x: left + width / 2 + 5, y: top + 12, ...strong },
        { x: left - width / 2 - 5, y: top + 12, anchor: 'end', ...strong },
      ]
    : [{ x: left, y: top - 15, anchor: 'middle', ...strong }];
  return { shapes: [el('rect', box)], names: [{ text: name, places }] };
}

function speakerSide({ at, name, center }: Of<'loudspeaker'>, { x, y }: Page): Drawn {
  const [left, top] = [x(at[0]), y(at[1])];
  const box = { class: speakerClass(center), x: left - 9, y: top - 6, width: 10, height: 12 };
  const [above, below] = [
    { x: left + 6, y: top - 10, className: 'c-strong' },
    { x: left + 6, y: top + 19, className: 'c-strong' },
  ];
  const before = { x: left - 14, y: top + 4, anchor: 'end' as const, className: 'c-strong' };
  return {
    shapes: [el('rect', box)],
    names: [{ text: name, places: center ? [before, below, above] : [above, below, before] }],
  };
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
): Drawn {
  const [left, top] = [x(at[0]), y(at[1])];
  const head = el('circle', { class: main ? 'c-seat c-seat-main' : 'c-seat', cx: left, cy: top, r: HEAD });
  const named = (text: string, ...bases: readonly number[]): Drawn => ({
    shapes: [head],
    names: [
      {
        text,
        places: [
          ...bases.map((base) => ({ x: inPage(left, text), y: base, anchor: 'middle' as const })),
          { x: left + HEAD + 5, y: top + 4 },
          { x: left - HEAD - 5, y: top + 4, anchor: 'end' as const },
          { x: inPage(left, text), y: top - HEAD - 6, anchor: 'middle' as const },
        ].map((at) => ({ ...at, className: 'c-strong' })),
      },
    ],
  });
  if (view === 'side') return named(name, top - 12, top + 22);
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
  return named(text, top + HEAD + (lower ? 28 : 14), top + HEAD + 28);
}

const SCALE_START = 4;
function scaleBox({ lengthM, text }: RoomChart['scaleBar'], { pxPerM, height }: Page): Box {
  const width = lengthM * pxPerM + 5 + textWidth(text);
  return { x: SCALE_START, y: height - 18, width, height: 18 };
}

function scaleBarParts({ lengthM, text }: RoomChart['scaleBar'], { pxPerM, height }: Page): string[] {
  const [start, y] = [SCALE_START, height - 6];
  const end = start + lengthM * pxPerM;
  return [
    el('path', {
      class: 'c-scale',
      d: `M${start},${(y - 4).toFixed(1)}V${y.toFixed(1)}H${end.toFixed(1)}V${(y - 4).toFixed(1)}`,
    }),
    label(text, { x: end + 5, y: y + 1 }),
  ];
}
