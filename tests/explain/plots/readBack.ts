/** Reads a drawing back as a person would: the scale from the numbers at the axes, the values from the path. */

const textsOf = (svg: string): { x: number; y: number; text: string; end: boolean }[] =>
  [...svg.matchAll(/<text x="([\d.-]+)" y="([\d.-]+)"([^>]*)>([^<]*)<\/text>/g)].map((match) => ({
    x: Number(match[1]),
    y: Number(match[2]),
    end: (match[3] ?? '').includes('text-anchor="end"'),
    text: match[4] ?? '',
  }));

const numberOf = (text: string): number => {
  const plain = text.replace('−', '-');
  return plain.endsWith('k') ? Number(plain.slice(0, -1)) * 1000 : Number(plain);
};

/** The straight line through the first and the last of some pairs. */
function through(pairs: readonly (readonly [drawn: number, value: number])[]): (drawn: number) => number {
  const [first, last] = [pairs[0], pairs.at(-1)];
  if (!first || !last || first === last) throw new Error('an axis needs two numbers');
  return (drawn) => first[1] + ((drawn - first[0]) / (last[0] - first[0])) * (last[1] - first[1]);
}

export interface Scales {
  readonly x: (drawn: number) => number;
  readonly y: (drawn: number) => number;
}

/** From the base line of a number to its grid line. */
const HALF_LETTER = 4;

/** @param log true where the horizontal axis is logarithmic */
export function scalesOf(svg: string, log: boolean): Scales {
  const numbers = textsOf(svg).filter(({ text }) => text !== '' && Number.isFinite(numberOf(text)));
  const bottom = Math.max(...numbers.map(({ y }) => y));
  const across = numbers.filter(({ y, end }) => y === bottom && !end);
  const up = numbers.filter(({ end }) => end);
  const onAxis = through(
    across.map(({ x, text }) => [x, log ? Math.log(numberOf(text)) : numberOf(text)] as const),
  );
  return {
    x: (drawn) => (log ? Math.exp(onAxis(drawn)) : onAxis(drawn)),
    y:
      up.length < 2
        ? () => Number.NaN
        : through(up.map(({ y, text }) => [y - HALF_LETTER, numberOf(text)] as const)),
  };
}

/** Values of each curve, in the order drawn. */
export function curvesOf(svg: string, log: boolean): [x: number, y: number][][] {
  const { x, y } = scalesOf(svg, log);
  return [...svg.matchAll(/<path class="c-line[^"]*"[^>]* d="([^"]*)"/g)].map(([, d = '']) =>
    [...d.matchAll(/[ML]?(-?[\d.]+),(-?[\d.]+)/g)].map((point) => [x(Number(point[1])), y(Number(point[2]))]),
  );
}

/** Largest amount a tenth of a unit of the drawing can hide, in the unit of the vertical axis. */
export function tenthOfAPixel(svg: string): number {
  const { y } = scalesOf(svg, true);
  return Math.abs(y(0) - y(0.1));
}
