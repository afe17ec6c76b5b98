/**
 * Guards for the inputs of the acoustic models. A number that no room can have
 * (NaN, a negative distance) is refused here, with its name, so that nothing downstream
 * has to wonder where a NaN came from.
 */

function refuse(name: string, value: unknown, accepted: string): never {
  throw new RangeError(`${name} is ${String(value)}; accepted: ${accepted}`);
}

/** Returns `value` when it is finite. Throws RangeError otherwise. */
export function finite(name: string, value: number): number {
  return Number.isFinite(value) ? value : refuse(name, value, 'a finite number');
}

/** Returns `value` when it is finite and above zero. Throws RangeError otherwise. */
export function positive(name: string, value: number): number {
  return Number.isFinite(value) && value > 0 ? value : refuse(name, value, 'a finite number above 0');
}

/** Returns `value` when it is finite and not negative. Throws RangeError otherwise. */
export function notNegative(name: string, value: number): number {
  return Number.isFinite(value) && value >= 0 ? value : refuse(name, value, 'a finite number, 0 or above');
}

/** Returns `value` when min <= value <= max. Throws RangeError otherwise. */
export function within(name: string, value: number, min: number, max: number): number {
  return value >= min && value <= max ? value : refuse(name, value, `a number from ${min} to ${max}`);
}

/** Returns `value` when it is one of `allowed`. Throws RangeError otherwise. */
export function oneOf<T extends string>(name: string, value: T, allowed: readonly T[]): T {
  return allowed.includes(value) ? value : refuse(name, value, allowed.join(', '));
}
