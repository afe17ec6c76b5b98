/**
 * Order by computed numbers. The last bits of a sum differ between one engine of JavaScript and another, and the order
 * of a report must not: what differs by less than a billionth is level, and keeps the order it came in.
 */
const LEVEL = 1e-9;

const stepsOf = (value: number): number => Math.round(value / LEVEL);

/** For `sort`: the larger first; level ones as they came. */
export const largestFirst = (a: number, b: number): number => stepsOf(b) - stepsOf(a);
