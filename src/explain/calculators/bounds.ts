/** Ranges shared by the inputs: wide enough for any room, narrow enough to catch a slip of units. Ours. */
import { type Input, number } from './input-kinds.js';

/** A length that cannot be zero, m. */
export const LENGTH = { unit: 'm', above: 0, max: 1000 } as const;
/** A coordinate, m. */
export const POSITION = { unit: 'm', min: -1000, max: 1000 } as const;
export const FREQUENCY = { unit: 'Hz', above: 0, max: 1_000_000 } as const;
export const LEVEL = { unit: 'dB', min: -200, max: 200 } as const;

/** A required number within these bounds: what it means, and a good value as it is typed. */
const within =
  (bounds: Parameters<typeof number>[2]) =>
  (meaning: string, example: string): Input<number> =>
    number(meaning, example, bounds);

export const length = within(LENGTH);
/** A height above the floor or a depth, m; zero is possible. */
export const height = within({ unit: 'm', min: 0, max: 1000 });
export const frequency = within(FREQUENCY);
export const level = within(LEVEL);
/** An angle in front of a loudspeaker or listener, deg. */
export const frontAngle = within({ unit: 'deg', min: -90, max: 90 });
/** A share or an amplitude reflection. */
export const share = within({ min: 0, max: 1 });
