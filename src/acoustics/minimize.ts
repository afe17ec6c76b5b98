/**
 * Minima. Of a sum of squares within bounds: Levenberg-Marquardt with numeric derivatives and steps cut at the
 * bounds, for small problems only (up to some 15 parameters): the corrections and shelves this project fits.
 * Of one variable: golden section.
 */

export type Parameter = { readonly start: number; readonly min: number; readonly max: number };
type Fit = { readonly values: number[]; readonly cost: number };

const MOST_STEPS = 40;
const FIRST_DAMPING = 1e-2;
const DAMPING_FACTOR = 4;
const MOST_DAMPING = 1e8;
/** Stop when a step betters the cost by less than this part. */
const SMALLEST_GAIN = 1e-6;
/** Step of the numeric derivative as a part of a parameter's range. */
const DERIVATIVE_STEP = 1e-5;

const sumOfSquares = (values: ArrayLike<number>): number => {
  let sum = 0;
  for (let i = 0; i < values.length; i += 1) sum += (values[i] ?? 0) ** 2;
  return sum;
};

/** Solves the symmetric system by Gauss elimination with pivots; null when singular. */
function solve(matrix: number[][], right: number[]): number[] | null {
  const n = right.length;
  const rows = matrix.map((row, i) => [...row, right[i] ?? 0]);
  for (let column = 0; column < n; column += 1) {
    let best = column;
    for (let r = column + 1; r < n; r += 1) {
      if (Math.abs(rows[r]?.[column] ?? 0) > Math.abs(rows[best]?.[column] ?? 0)) best = r;
    }
    const pivotRow = rows[best] ?? [];
    const pivot = pivotRow[column] ?? 0;
    if (Math.abs(pivot) < 1e-300) return null;
    rows[best] = rows[column] ?? [];
    rows[column] = pivotRow;
    for (let r = 0; r < n; r += 1) {
      const row = rows[r];
      if (r === column || row === undefined) continue;
      const factor = (row[column] ?? 0) / pivot;
      for (let k = column; k <= n; k += 1) row[k] = (row[k] ?? 0) - factor * (pivotRow[k] ?? 0);
    }
  }
  return rows.map((row, i) => (row[n] ?? 0) / (row[i] ?? 1));
}

/** Derivatives of all residuals by each parameter, toward the inside where a parameter sits on a bound. */
function derivatives(
  residuals: (values: readonly number[]) => Float64Array,
  parameters: readonly Parameter[],
  values: readonly number[],
  here: Float64Array,
): Float64Array[] {
  return parameters.map(({ min, max }, i) => {
    const value = values[i] ?? 0;
    const step = (max - min) * DERIVATIVE_STEP * (value + (max - min) * DERIVATIVE_STEP > max ? -1 : 1);
    const moved = [...values];
    moved[i] = value + step;
    return residuals(moved).map((there, k) => (there - (here[k] ?? 0)) / step);
  });
}

const dot = (a: Float64Array, b: Float64Array): number => {
  let sum = 0;
  for (let i = 0; i < a.length; i += 1) sum += (a[i] ?? 0) * (b[i] ?? 0);
  return sum;
};

/** Least sum of squared residuals within the bounds, from the given start. Never worse than the start. */
export function leastSquares(
  residuals: (values: readonly number[]) => Float64Array,
  parameters: readonly Parameter[],
): Fit {
  const clip = (value: number, { min, max }: Parameter) => Math.min(max, Math.max(min, value));
  let values = parameters.map((parameter) => clip(parameter.start, parameter));
  let here = residuals(values);
  let cost = sumOfSquares(here);
  let damping = FIRST_DAMPING;
  for (let step = 0; step < MOST_STEPS && cost > 0; step += 1) {
    const slopes = derivatives(residuals, parameters, values, here);
    const gradient = slopes.map((slope) => dot(slope, here));
    // A parameter that presses against its bound stays there for this step: the others move freely.
    const free = parameters.map((parameter, i) => {
      const value = values[i] ?? 0;
      const downhill = -(gradient[i] ?? 0);
      return !((value <= parameter.min && downhill < 0) || (value >= parameter.max && downhill > 0));
    });
    const normal = slopes.map((a, i) => slopes.map((b, k) => (free[i] && free[k] ? dot(a, b) : 0)));
    let better = false;
    let gain = 0;
    while (!better && damping < MOST_DAMPING) {
      const damped = normal.map((row, i) =>
        row.map((entry, k) => (i === k ? (free[i] ? entry * (1 + damping) + 1e-12 : 1) : entry)),
      );
      const move = solve(
        damped,
        gradient.map((g, i) => (free[i] ? -g : 0)),
      );
      const next = parameters.map((parameter, i) => clip((values[i] ?? 0) + (move?.[i] ?? 0), parameter));
      const there = residuals(next);
      const nextCost = sumOfSquares(there);
      better = nextCost < cost;
      if (better) {
        gain = (cost - nextCost) / cost;
        [values, here, cost] = [next, there, nextCost];
        damping /= DAMPING_FACTOR;
      } else damping *= DAMPING_FACTOR;
    }
    if (!better || gain < SMALLEST_GAIN) break;
  }
  return { values, cost };
}

const GOLDEN = (Math.sqrt(5) - 1) / 2;
/** Leaves 5e-9 of the interval. */
const GOLDEN_STEPS = 40;

/** Where `f` is least between `from` and `to`, with one minimum there (textbook). */
export function goldenMinimum(f: (x: number) => number, from: number, to: number): number {
  let [low, high] = [from, to];
  let left = high - GOLDEN * (high - low);
  let right = low + GOLDEN * (high - low);
  let [atLeft, atRight] = [f(left), f(right)];
  for (let i = 0; i < GOLDEN_STEPS; i += 1) {
    if (atLeft <= atRight) {
      [high, right, atRight] = [right, left, atLeft];
      left = high - GOLDEN * (high - low);
      atLeft = f(left);
    } else {
      [low, left, atLeft] = [left, right, atRight];
      right = low + GOLDEN * (high - low);
      atRight = f(right);
    }
  }
  return (low + high) / 2;
}
