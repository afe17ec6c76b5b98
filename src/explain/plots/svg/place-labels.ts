/** Puts each curve's name beside it where it covers nothing: tried at many places, the freest one wins. */
import type { Frame } from './frame.js';

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Points on the drawing. */
export type Drawn = readonly (readonly [x: number, y: number])[];

export interface Placed {
  readonly x: number;
  /** Base line. */
  readonly y: number;
}

const HEIGHT = 14;
/** Offsets of the base line from the curve: above it, beside it, or below; and further off where all is full. */
const SHIFTS: readonly number[] = [-6, 4, 15, -20, 30, 45, 60];
/** Names keep this far from each other. */
const APART = 8;
/** From the curve to a name beside it. */
const ASIDE = 7;
const BASE_TO_TOP = 11;
/** Places tried along a curve. */
const TRIED = 40;
/** A place on top of another name is worse than any number of covered points. */
const ON_A_NAME = 1_000_000;
const ACROSS_A_CURVE = 10;
/** Points nearer than this to the middle of the name would make it doubtful which curve is meant. */
const NEAR = 26;

const FAR_AWAY = 1000;

export function placeLabels(
  curves: readonly Drawn[],
  widths: readonly number[],
  frame: Frame,
  taken: readonly Box[],
): Placed[] {
  const boxes: Box[] = [...taken];
  const thin = curves.map(thinned);
  return thin.map((own, index) => {
    const width = widths[index] ?? 0;
    const others = thin.filter((_, i) => i !== index);
    const places = candidates(own, width, frame);
    const best = places.reduce<{ place: Placed; cost: number } | undefined>((found, place) => {
      const cost = costOf(place, width, own, others, boxes);
      return found === undefined || cost < found.cost ? { place, cost } : found;
    }, undefined);
    const place = best?.place ?? { x: frame.left, y: frame.top + HEIGHT };
    boxes.push(boxAt(place, width));
    return place;
  });
}

/** Enough points to see where a curve runs. */
const LOOKED_AT = 160;
function thinned(curve: Drawn): Drawn {
  const every = Math.max(1, Math.floor(curve.length / LOOKED_AT));
  return curve.filter((_, i) => i % every === 0);
}

const boxAt = ({ x, y }: Placed, width: number): Box => ({
  x,
  y: y - BASE_TO_TOP,
  width: width + APART,
  height: HEIGHT,
});

function candidates(own: Drawn, width: number, { left, right, top, bottom }: Frame): Placed[] {
  const every = Math.max(1, Math.floor(own.length / TRIED));
  return own
    .filter((_, i) => i % every === 0)
    .flatMap(([x, y]) =>
      SHIFTS.flatMap((shift) =>
        [x - width / 2, x + ASIDE, x - width - ASIDE].map((start) => ({
          x: Math.min(right - width - 2, Math.max(left + 2, start)),
          y: y + shift,
        })),
      ),
    )
    .filter(({ y }) => y - BASE_TO_TOP >= top && y + 2 <= bottom);
}

function costOf(
  place: Placed,
  width: number,
  own: Drawn,
  others: readonly Drawn[],
  boxes: readonly Box[],
): number {
  const box = boxAt(place, width);
  const onNames = boxes.filter((other) => overlap(box, other)).length;
  const crossed = [own, ...others].flat().filter(([x, y]) => holds(box, x, y)).length;
  const middle = { x: box.x + width / 2, y: box.y + HEIGHT / 2 };
  const near = others.flat().filter(([x, y]) => Math.hypot(x - middle.x, y - middle.y) < NEAR).length;
  const away = own.reduce(
    (least, [x, y]) => Math.min(least, Math.hypot(x - middle.x, y - middle.y)),
    FAR_AWAY,
  );
  return ON_A_NAME * onNames + ACROSS_A_CURVE * crossed + near + away;
}

export const overlap = (a: Box, b: Box): boolean =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
export const holds = (box: Box, x: number, y: number): boolean =>
  x >= box.x && x <= box.x + box.width && y >= box.y && y <= box.y + box.height;
